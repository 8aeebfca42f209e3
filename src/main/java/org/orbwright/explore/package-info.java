/**
 * Sweeps over designs: one or two numbers of a design are varied, and chosen numbers of each sheet are read off. Fields
 * and answers are named by JSON pointers (RFC 6901), which are the same as in the JSON of a design and of a sheet.
 * Start with {@link org.orbwright.explore.Sweep}.
 */
package org.orbwright.explore;
