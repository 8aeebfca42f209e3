package org.orbwright.sheet;

import java.util.List;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.turning.TurningPlan;

/** From the glued-up solid to the finished sphere. */
@Describe("From the glued-up solid to the finished sphere.")
public record TurningAnswer(
        @Describe("The design as it was understood, with everything filled in that was left out.")
        DesignRequest design,

        TurningPlan turning,

        @Describe("What this part of the design gets wrong or nearly wrong, gravest first.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the steps that this part is about.")
        List<Caution> cautions) {}
