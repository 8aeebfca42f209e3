package org.orbwright.body;

import org.orbwright.design.BandSet;

/**
 * What is asked of a body beside its kind. The set of segments that it is made from is null for that of the design's
 * first sphere. A whole body has all woods in one part. The deviation is the farthest that a mesh may lie from what is
 * round, in millimetres; null for the usual one.
 */
public record BodyOptions(BandSet set, boolean whole, Double deviation) {}
