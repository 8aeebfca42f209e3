package org.orbwright.body;

import org.orbwright.design.BandSet;

/**
 * What is asked of a body beside its kind.
 *
 * @param set the set of segments that it is made from, or null for that of the design's first sphere
 * @param whole whether all woods are one part
 * @param deviation the farthest that a mesh may lie from what is round, in millimetres; null for the usual one
 */
public record BodyOptions(BandSet set, boolean whole, Double deviation) {}
