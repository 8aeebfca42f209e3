package org.orbwright.segment;

import java.util.List;
import org.orbwright.segment.SegmentPlan.Cut;

/** How the segments of one piece lie along a blank. */
sealed interface BlankLayout permits AlternatingLayout, StickLayout {
    /** The most cuts that are listed one by one. */
    int MOST_CUTS = 400;
    /** A blank that is exactly long enough is long enough, whatever the last bit of a sum says; in millimetres. */
    double EXACT_FIT = 1e-6;

    /** Whole segments that one blank gives. */
    int perBlank();

    /** Length that they take, end trims included; 0 if there is none. */
    double lengthUsed();

    /** Shortest blank that gives one segment. */
    double shortestBlank();

    /** The first cuts along the blank. */
    List<Cut> cuts();
}
