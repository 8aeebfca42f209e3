/**
 * What is left of every band once the panels are turned to a sphere. {@link org.orbwright.band.SegmentSurface} holds
 * the closed forms for one segment, {@link org.orbwright.band.SegmentVolume} those for the wood below it, and
 * {@link org.orbwright.band.BandCalculator} applies them to a design. Start with the calculator.
 * {@link org.orbwright.band.WidthSolver} goes the other way, from what should be seen to widths.
 *
 * <p>Coordinates of a segment: the origin at the panel's centre, x from the tip to the base, y along the base to the
 * right seen from outside, z along the panel's normal from the solid's centre.
 */
package org.orbwright.band;
