package org.orbwright.sheet;

import java.util.List;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.stock.CutList;
import org.orbwright.stock.CutStep;
import org.orbwright.stock.StockPlan;

/** The stock for a design. */
@Describe("The stock for a design.")
public record StockAnswer(
        @Describe("The design as it was understood, with everything filled in that was left out.")
        DesignRequest design,

        StockPlan stock,

        @Describe("What is wrong or nearly wrong with the stock or the blanks, gravest first.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the steps that this part is about.")
        List<Caution> cautions)
        implements Table {

    @Override
    public Class<CutStep> rowType() {
        return CutStep.class;
    }

    /** The cut list. */
    @Override
    public List<CutStep> rows() {
        return CutList.of(stock, design.unit());
    }
}
