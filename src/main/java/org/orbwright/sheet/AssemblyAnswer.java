package org.orbwright.sheet;

import java.util.List;
import org.orbwright.assembly.AssemblyPlan;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;

/** The assembly of a design. */
@Describe("The assembly of a design.")
public record AssemblyAnswer(
        @Describe("The design as it was understood, with everything filled in that was left out.")
        DesignRequest design,

        AssemblyPlan assembly,

        @Describe("What is wrong or nearly wrong with the order of gluing, gravest first.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the steps that this part is about.")
        List<Caution> cautions) {}
