package org.orbwright.sheet;

import java.util.List;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.stock.ShoppingList;
import org.orbwright.stock.ShoppingRow;

/** The shopping list for a design. */
@Describe("The shopping list for a design.")
public record PurchasesAnswer(
        @Describe("The design as it was understood, with everything filled in that was left out.")
        DesignRequest design,

        ShoppingList shopping,

        @Describe("What is wrong or nearly wrong with the stock or the blanks, gravest first.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the steps that this part is about.")
        List<Caution> cautions)
        implements Table {

    @Override
    public Class<ShoppingRow> rowType() {
        return ShoppingRow.class;
    }

    @Override
    public List<ShoppingRow> rows() {
        return shopping.rows();
    }
}
