/**
 * What is left of every band once the panels are turned to a sphere. {@link org.orbwright.band.SegmentSurface} holds
 * the closed forms for one segment, {@link org.orbwright.band.SegmentVolume} those for the wood below it, and
 * {@link org.orbwright.band.BandCalculator} applies them to a design. Start with the calculator.
 * {@link org.orbwright.band.WidthSolver} goes the other way, from what should be seen to widths.
 *
 * <p><b>Coordinates of a segment.</b> The origin is at the panel's centre. x runs from the tip to the base, and y along
 * the base, to the right seen from outside. z is measured along the panel's normal from the solid's centre.
 *
 * <p><b>Survival</b> is the share of a band's flat area that remains, seen square to the panel. The ratio of sphere
 * area to flat area would exceed 1 near the tip, and rise as the sphere shrinks. The share falls, as the word says.
 * Both areas are answered too.
 *
 * <p><b>Visible width</b> is measured square to the band. {@link org.orbwright.band.VisibleWidths} says why it is the
 * same all along a band but where the seam shortens it.
 *
 * <p><b>Widths for wishes.</b> What is seen of a band is the difference of rising curves between its two cuts, upright
 * or inverted. So a limit ties two cuts that move together, and such rules have a least solution.
 * {@link org.orbwright.band.CutSearch} finds it or proves that there is none. {@link org.orbwright.band.Compromise}
 * halves the largest deviation to bracket the best. In steps this is exact. Without a step cuts may creep, and
 * {@code proved} says what is certain. A wish on a mixed sphere counts where least is seen.
 */
package org.orbwright.band;
