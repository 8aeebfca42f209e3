package org.orbwright.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;
import org.orbwright.stock.StockPlan.Purchase;
import org.orbwright.stock.StockPlan.StripNeed;
import org.orbwright.stock.StockPlan.UnplannedLamination;

/** What to buy, and what is short after all. */
@Describe("What to buy, and what is short after all.")
public record ShoppingList(
        @Describe("The boards to buy, from the offers.") List<Purchase> purchases,
        PurchaseTotal total,

        @Describe(
                value = "Whether the boards at hand and those to buy give all strips that the design needs.",
                example = "true")
        boolean complete,

        @Describe("The strips that neither the boards at hand nor the offers give; none if the plan is complete.")
        List<MissingStrips> missing,

        @Describe("Laminations that no strips are planned for, since the blank is too short for a segment; none if all"
                + " are planned.")
        List<UnplannedLamination> unplanned) {

    /** All boards to buy together. */
    @Describe("All boards to buy together.")
    public record PurchaseTotal(
            @Describe(value = "How many.", example = "1", max = 1e9)
            int count,

            @Describe(value = "Their volume.", quantity = Quantity.BOARD_FEET, example = "2.7779")
            double boardFeet,

            @Describe(value = "Their volume.", quantity = Quantity.CUBIC_METRES, example = "0.006555")
            double cubicMetres,

            @Describe(value = "Their cost.", quantity = Quantity.MONEY, example = "18")
            double cost) {}

    /** Strips of one wood and size that are missing. */
    @Describe("Strips of one wood and size that are missing, as they would leave the saw.")
    public record MissingStrips(
            @Describe(value = "The wood.", example = "\"white ash\"")
            String species,

            @Describe(value = "How many.", example = "2", max = 1e9)
            int count,

            @Describe(value = "Length.", quantity = Quantity.LENGTH, example = "720")
            double length,

            @Describe(value = "Width.", quantity = Quantity.LENGTH, example = "21")
            double width,

            @Describe(value = "Thickness.", quantity = Quantity.LENGTH, example = "30")
            double thickness,

            @Describe(
                    value = "Volume of all, without what boards lose on the way.",
                    quantity = Quantity.BOARD_FEET,
                    example = "0.3119")
            double boardFeet,

            @Describe(
                    value = "Volume of all, without what boards lose on the way.",
                    quantity = Quantity.CUBIC_METRES,
                    example = "0.00073584")
            double cubicMetres) {}

    /** Copies the lists. */
    public ShoppingList {
        purchases = List.copyOf(purchases);
        missing = List.copyOf(missing);
        unplanned = List.copyOf(unplanned);
    }

    /** The shopping list of a plan. */
    public static ShoppingList of(StockPlan plan) {
        List<Purchase> purchases = plan.purchases();
        PurchaseTotal total = new PurchaseTotal(
                purchases.stream().mapToInt(Purchase::count).sum(),
                purchases.stream().mapToDouble(Purchase::boardFeet).sum(),
                purchases.stream().mapToDouble(Purchase::cubicMetres).sum(),
                purchases.stream().mapToDouble(Purchase::cost).sum());
        return new ShoppingList(purchases, total, plan.complete(), missing(plan), plan.unplanned());
    }

    /** A wood, and the size of its strips. */
    private record Kind(String species, double length, double width, double thickness) {}

    private static List<MissingStrips> missing(StockPlan plan) {
        Map<Kind, Integer> counts = new LinkedHashMap<>();
        for (StripNeed strip : plan.strips()) {
            if (strip.missing() > 0) {
                counts.merge(
                        new Kind(strip.species(), strip.length(), strip.width(), strip.thickness()),
                        strip.missing(),
                        Integer::sum);
            }
        }
        List<MissingStrips> missing = new ArrayList<>();
        counts.forEach((kind, count) -> {
            double volume = count * kind.length() * kind.width() * kind.thickness();
            missing.add(new MissingStrips(
                    kind.species(), count, kind.length(), kind.width(), kind.thickness(), volume, volume));
        });
        return missing;
    }

    /** The rows of the list: purchases, their total, what is missing, and what is not planned. */
    public List<ShoppingRow> rows() {
        List<ShoppingRow> rows = new ArrayList<>();
        purchases.forEach(purchase -> rows.add(ShoppingRow.of(purchase)));
        rows.add(ShoppingRow.of(total));
        missing.forEach(strips -> rows.add(ShoppingRow.of(strips)));
        unplanned.forEach(lamination -> rows.add(ShoppingRow.of(lamination)));
        return rows;
    }
}
