/**
 * Tolerances: what errors of cutting do to the joints, the size and the bands of a solid, by linear theory and by
 * simulation, and how exactly saws have to be set. Start with {@link org.orbwright.tolerance.ToleranceCalculator},
 * whose comment states the model.
 */
package org.orbwright.tolerance;
