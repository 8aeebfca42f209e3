package org.orbwright.sheet;

import java.util.List;
import org.orbwright.design.DesignRequest;
import org.orbwright.diagnosis.Diagnosis;
import org.orbwright.quantity.Describe;

/** What measurements say of a design's settings. */
@Describe("What measurements on test pieces and shells say of a design's settings.")
public record DiagnosisAnswer(
        @Describe("The design as it was understood, with everything filled in that was left out.")
        DesignRequest design,

        Diagnosis diagnosis,

        @Describe("What this part of the design gets wrong or nearly wrong, gravest first.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the steps that this part is about.")
        List<Caution> cautions) {}
