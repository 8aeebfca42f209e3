package org.orbwright.sheet;

import java.util.List;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.stock.CutStep;

/** The cut list for a design. */
@Describe("The cut list for a design.")
public record CutsAnswer(
        @Describe("The design as it was understood, with everything filled in that was left out.")
        DesignRequest design,

        @Describe("The steps in working order, one board after the other.")
        List<CutStep> cuts,

        @Describe("What is wrong or nearly wrong with the stock or the blanks, gravest first.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the steps that this part is about.")
        List<Caution> cautions)
        implements Table {

    @Override
    public Class<CutStep> rowType() {
        return CutStep.class;
    }

    @Override
    public List<CutStep> rows() {
        return cuts;
    }
}
