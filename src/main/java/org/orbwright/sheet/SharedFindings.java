package org.orbwright.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.orbwright.band.BandCalculator;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.segment.SegmentCalculator;
import org.orbwright.segment.SegmentPlan;
import org.orbwright.sphere.SphereCalculator;
import org.orbwright.sphere.SphereSizing;

/** The findings of a design that several parts of an answer tell. What they rest on is worked out once. */
final class SharedFindings {
    /** Stations of a profile that is computed for its findings alone. */
    private static final int FEWEST_STATIONS = 2;

    private final Design design;
    private SphereSizing sizing;
    private SegmentPlan plan;

    SharedFindings(Design design) {
        this.design = design;
    }

    SphereSizing sizing() {
        if (sizing == null) {
            sizing = SphereCalculator.calculate(design);
        }
        return sizing;
    }

    SegmentPlan plan() {
        if (plan == null) {
            plan = SegmentCalculator.calculate(design);
        }
        return plan;
    }

    List<Finding> sphere() {
        return SphereFindings.of(design, sizing());
    }

    List<Finding> segments() {
        return SegmentFindings.of(design, plan());
    }

    /** What happens to the bands, as far as there are any. */
    List<Finding> bands() {
        return design.has(DesignPart.LAMINATIONS)
                ? BandFindings.of(design, BandCalculator.calculate(design, FEWEST_STATIONS))
                : List.of();
    }

    /** What makes wood useless that is cut for the design, as far as it is stated. */
    List<Finding> stops() {
        return Stream.concat(sphereStops().stream(), bands().stream().filter(Finding::isStop))
                .toList();
    }

    /** What makes the whole work useless, whatever part of it is asked for. */
    List<Finding> sphereStops() {
        return sphere().stream().filter(Finding::isStop).toList();
    }
}
