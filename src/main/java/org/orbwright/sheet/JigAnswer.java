package org.orbwright.sheet;

import java.util.List;
import org.orbwright.design.DesignRequest;
import org.orbwright.jig.JigPlan;
import org.orbwright.quantity.Describe;

/** The set-ups of the saw for a design. */
@Describe("The set-ups of the saw for a design.")
public record JigAnswer(
        @Describe("The design as it was understood, with everything filled in that was left out.")
        DesignRequest design,

        JigPlan jig,

        @Describe("What this part of the design gets wrong or nearly wrong, gravest first.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the steps that this part is about.")
        List<Caution> cautions) {}
