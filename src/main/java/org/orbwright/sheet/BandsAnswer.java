package org.orbwright.sheet;

import java.util.List;
import org.orbwright.band.BandSurvival;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;

/** What is left of every band of a design on the sphere. */
@Describe("What is left of every band of a design on the sphere.")
public record BandsAnswer(
        @Describe("The design as it was understood, with everything filled in that was left out.")
        DesignRequest design,

        BandSurvival bands,

        @Describe("What this part of the design gets wrong or nearly wrong, gravest first.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the steps that this part is about.")
        List<Caution> cautions) {}
