/**
 * Segments: the angles they are sawn at ({@link org.orbwright.segment.AngleCalculator}), where they lie along a blank
 * ({@link org.orbwright.segment.SegmentCalculator}), and how much has to be glued up for the wanted spheres
 * ({@link org.orbwright.segment.YieldCalculator}).
 */
package org.orbwright.segment;
