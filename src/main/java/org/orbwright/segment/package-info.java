/**
 * Segments: the angles they are sawn at, where they lie along a blank, and how much has to be glued up for the wanted
 * spheres. Start with {@link org.orbwright.segment.AngleCalculator}, {@link org.orbwright.segment.SegmentCalculator}
 * and {@link org.orbwright.segment.YieldCalculator}.
 *
 * <p><b>Two layouts.</b> Straight bands alternate along the blank ({@link org.orbwright.segment.AlternatingLayout}).
 * Tilted bands come from sticks sawn across a wide blank ({@link org.orbwright.segment.StickLayout}).
 *
 * <p><b>Finished volume and mass</b> are left out where the sphere breaks through
 * ({@link org.orbwright.segment.WholeWall}). There is no finished sphere then.
 */
package org.orbwright.segment;
