package org.orbwright.sheet;

import java.util.List;
import org.orbwright.band.BandSurvival;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.segment.SawAngles;
import org.orbwright.segment.SegmentPlan;
import org.orbwright.segment.Yield;
import org.orbwright.sphere.SphereSizing;

/** Everything that is needed before the first cut. */
@Describe("Everything that is needed before the first cut.")
public record Sheet(
        @Describe("The design as it was understood, with everything filled in that was left out.")
        DesignRequest design,

        SawAngles angles,
        SegmentPlan segments,
        Yield yield,
        SphereSizing sphere,
        BandSurvival bands,

        @Describe("What the design gets wrong or nearly wrong, gravest first.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the work, in the order of its steps.")
        List<Caution> cautions) {}
