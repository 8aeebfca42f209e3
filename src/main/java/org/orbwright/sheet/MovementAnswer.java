package org.orbwright.sheet;

import java.util.List;
import org.orbwright.design.DesignRequest;
import org.orbwright.movement.Movement;
import org.orbwright.quantity.Describe;

/** The movement of a design. */
@Describe("The movement of a design's wood between the stock and the seasons of its home.")
public record MovementAnswer(
        @Describe("The design as it was understood, with everything filled in that was left out.")
        DesignRequest design,

        Movement movement,

        @Describe("What this part of the design gets wrong or nearly wrong, gravest first.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the steps that this part is about.")
        List<Caution> cautions) {}
