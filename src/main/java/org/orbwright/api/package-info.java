/**
 * The service's face: the only package that knows HTTP, JSON and OpenAPI. Requests come in through
 * {@link org.orbwright.api.RequestReader}, resources hand them to the calculators in three lines, answers go out
 * through {@link org.orbwright.api.AnswerWriter}, everything that goes wrong leaves as a
 * {@link org.orbwright.api.Problem}, and {@link org.orbwright.api.ContractFilter} writes down what is promised. Nothing
 * is computed here.
 */
package org.orbwright.api;
