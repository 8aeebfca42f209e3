/** The catalogue of solids. */
package org.orbwright.solid;
