package org.orbwright.segment;

import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest.BlankRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.segment.SegmentPlan.FaceSegments;
import org.orbwright.segment.SegmentPlan.SegmentCut;

/** Lengths of blanks that come out well. */
public final class BlankLengths {
    /** A length shorter than another one by this, in the design's unit, is another one. */
    public static final double STEP = 1e-3;

    private BlankLengths() {}

    /**
     * The shortest length of blanks that gives as many segments of every kind, or where they are too short, one of
     * each; in millimetres, rounded up to what answers are rounded to.
     */
    public static double shortest(Design design) {
        double longest = 0;
        for (FaceSegments face : SegmentCalculator.calculate(design).faces()) {
            for (SegmentCut segment : face.segments()) {
                double needed = segment.perBlank() > 0 ? segment.lengthUsed() : segment.shortestBlank();
                longest = Math.max(longest, needed);
            }
        }
        LengthUnit unit = design.unit();
        double steps = Math.pow(10, Quantity.LENGTH.decimals(unit));
        return unit.toMillimetres(Math.ceil(unit.fromMillimetres(longest) * steps) / steps);
    }

    /**
     * The shortest length of blanks that gives as many segments as blanks that are a little too short for those of a
     * design; in millimetres, 0 if there is none.
     */
    public static double next(Design design) {
        LengthUnit unit = design.unit();
        double now = shortest(design);
        double less = unit.fromMillimetres(now) - STEP;
        if (less <= 0) {
            return 0;
        }
        try {
            double length = shortest(Design.of(design.request().withBlank(new BlankRequest(less))));
            return length < now ? length : 0;
        } catch (ImpossibleDesignException none) {
            return 0;
        }
    }
}
