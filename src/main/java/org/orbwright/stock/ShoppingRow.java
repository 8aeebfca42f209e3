package org.orbwright.stock;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;
import org.orbwright.stock.ShoppingList.MissingStrips;
import org.orbwright.stock.ShoppingList.PurchaseTotal;
import org.orbwright.stock.StockPlan.Purchase;
import org.orbwright.stock.StockPlan.UnplannedLamination;

/**
 * A shopping list's purchases, total, missing strips and laminations without a plan in one shape, as the rows of a
 * table. The name is that of an offer or of a lamination's face. What a row does not have, or has several of, is null.
 */
public record ShoppingRow(
        Kind row,
        int count,
        String name,
        String species,

        @Describe(value = "Length.", quantity = Quantity.LENGTH)
        Double length,

        @Describe(value = "Width.", quantity = Quantity.LENGTH)
        Double width,

        @Describe(value = "Thickness.", quantity = Quantity.LENGTH)
        Double thickness,

        @Describe(value = "Volume.", quantity = Quantity.BOARD_FEET)
        Double boardFeet,

        @Describe(value = "Volume.", quantity = Quantity.CUBIC_METRES)
        Double cubicMetres,

        @Describe(value = "Cost of one.", quantity = Quantity.MONEY)
        Double costEach,

        @Describe(value = "Cost of all.", quantity = Quantity.MONEY)
        Double cost) {

    /** What a row is about. */
    public enum Kind {
        /** Boards to buy. */
        PURCHASE,
        /** All purchases together. */
        TOTAL,
        /** Strips that are short after all. */
        MISSING,
        /** Segments whose blank is too short, so that nothing is planned for them. */
        UNPLANNED
    }

    /** A row without wood and size. */
    private ShoppingRow(Kind row, int count, String name, Double boardFeet, Double cubicMetres, Double cost) {
        this(row, count, name, null, null, null, null, boardFeet, cubicMetres, null, cost);
    }

    static ShoppingRow of(Purchase purchase) {
        return new ShoppingRow(
                Kind.PURCHASE,
                purchase.count(),
                purchase.name(),
                purchase.species(),
                purchase.length(),
                purchase.width(),
                purchase.thickness(),
                purchase.boardFeet(),
                purchase.cubicMetres(),
                purchase.cost() / purchase.count(),
                purchase.cost());
    }

    static ShoppingRow of(PurchaseTotal total) {
        return new ShoppingRow(Kind.TOTAL, total.count(), null, total.boardFeet(), total.cubicMetres(), total.cost());
    }

    static ShoppingRow of(MissingStrips strips) {
        return new ShoppingRow(
                Kind.MISSING,
                strips.count(),
                null,
                strips.species(),
                strips.length(),
                strips.width(),
                strips.thickness(),
                strips.boardFeet(),
                strips.cubicMetres(),
                null,
                null);
    }

    static ShoppingRow of(UnplannedLamination lamination) {
        return new ShoppingRow(Kind.UNPLANNED, lamination.segments(), lamination.face(), null, null, null);
    }
}
