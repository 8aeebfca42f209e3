/**
 * Tolerances: what errors of cutting do to the joints, the size and the bands of a solid, and how exactly saws have to
 * be set. Linear theory and a simulation answer it. Start with {@link org.orbwright.tolerance.ToleranceCalculator},
 * whose comment states the model.
 *
 * <p><b>Where a gap is measured.</b> A panel's gap is counted in one joint and at the corner, where a feeler gauge
 * finds it. The package {@code movement} counts at the base distance.
 *
 * <p><b>Bevels that are too large hold the panels apart.</b> Bevels that are too small do not. That shift is one-sided,
 * and has no part in uncertainties.
 *
 * <p><b>A lamination with one set.</b> Neighbours along a blank share a cut and may come into one panel. Its scatter is
 * then larger by the root of {@code 2 - 1/n}. That is said, and not counted.
 *
 * <p><b>Limits of settings are rounded down here</b>, so that they hold as they are answered.
 *
 * <p><b>Simulation.</b> {@link org.orbwright.tolerance.GapSimulator} draws the sums on which a panel and a seam depend.
 * That is exact for normal errors, and three times cheaper than every cut. In linear theory all gaps are independent.
 * So the share without a gap is a product, and stands beside the simulated one.
 */
package org.orbwright.tolerance;
