package org.orbwright.sheet;

import java.util.List;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.sphere.SphereSizing;

/** The sphere that comes out of a design. */
@Describe("The sphere that comes out of a design.")
public record SphereAnswer(
        @Describe("The design as it was understood, with everything filled in that was left out.")
        DesignRequest design,

        SphereSizing sphere,

        @Describe("What this part of the design gets wrong or nearly wrong, gravest first.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the steps that this part is about.")
        List<Caution> cautions) {}
