package org.orbwright.sheet;

import java.util.List;
import org.orbwright.design.DesignRequest;
import org.orbwright.inlay.InlayPlan;
import org.orbwright.quantity.Describe;

/** The inlays of a design. */
@Describe("The inlays of a design.")
public record InlayAnswer(
        @Describe("The design as it was understood, with everything filled in that was left out.")
        DesignRequest design,

        InlayPlan inlay,

        @Describe("What the sphere of this design gets wrong or nearly wrong, gravest first.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the steps that this part is about.")
        List<Caution> cautions) {}
