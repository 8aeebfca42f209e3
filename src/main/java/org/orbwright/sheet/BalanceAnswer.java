package org.orbwright.sheet;

import java.util.List;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.turning.Balance;

/** How the work on the lathe is in balance. */
@Describe("How the work on the lathe is in balance.")
public record BalanceAnswer(
        @Describe("The design as it was understood, with everything filled in that was left out.")
        DesignRequest design,

        Balance balance,

        @Describe("What this part of the design gets wrong or nearly wrong, gravest first.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the steps that this part is about.")
        List<Caution> cautions) {}
