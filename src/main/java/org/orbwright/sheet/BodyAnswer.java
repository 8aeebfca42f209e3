package org.orbwright.sheet;

import java.util.List;
import org.orbwright.body.Body;
import org.orbwright.body.BodyNumbers;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.sphere.SphereCalculator;

/** The numbers of a body of a design. */
@Describe("The numbers of a body of a design.")
public record BodyAnswer(
        @Describe("The design as it was understood, with everything filled in that was left out.")
        DesignRequest design,

        BodyNumbers body,

        @Describe("What makes the whole work useless, if anything does.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the steps that this part is about.")
        List<Caution> cautions) {

    /** Copies the lists. */
    public BodyAnswer {
        findings = List.copyOf(findings);
        cautions = List.copyOf(cautions);
    }

    /** The numbers of a body that was made for a design. */
    public static BodyAnswer of(Design design, Body body) {
        List<Finding> stops = SphereFindings.of(design, SphereCalculator.calculate(design)).stream()
                .filter(finding -> finding.severity() == Finding.Severity.STOP)
                .toList();
        return new BodyAnswer(design.request(), BodyNumbers.of(body), stops, List.of());
    }
}
