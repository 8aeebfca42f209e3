package org.orbwright.stock;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;
import org.orbwright.stock.ShoppingList.MissingStrips;
import org.orbwright.stock.ShoppingList.PurchaseTotal;
import org.orbwright.stock.StockPlan.Purchase;

/**
 * A shopping list's purchases, total and missing strips in one shape, as the rows of a table.
 *
 * @param row what the row is about
 * @param count how many
 * @param name name of the offer, or null
 * @param species the wood, or null for the total
 * @param length length of one, or null for the total
 * @param width width of one, or null for the total
 * @param thickness thickness of one, or null for the total
 * @param boardFeet volume of all
 * @param cubicMetres volume of all
 * @param costEach cost of one, or null where there is none
 * @param cost cost of all, or null where there is none
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
        MISSING
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
        return new ShoppingRow(
                Kind.TOTAL,
                total.count(),
                null,
                null,
                null,
                null,
                null,
                total.boardFeet(),
                total.cubicMetres(),
                null,
                total.cost());
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
}
