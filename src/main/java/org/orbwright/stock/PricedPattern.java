package org.orbwright.stock;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.orbwright.stock.CuttingColumns.CrossSection;

/**
 * The pattern that is worth most at given prices, for cross-sections that have too many patterns to list: two
 * knapsacks, one over the thickness of a stick and one over the width, as if any number of strips were needed.
 */
final class PricedPattern {
    private final Ripping ripping;
    private final CrossSection section;
    private final List<Double> sizes = new ArrayList<>();
    private final List<Double> values = new ArrayList<>();

    private PricedPattern(Ripping ripping, CrossSection section, double[] worth) {
        this.ripping = ripping;
        this.section = section;
        for (double width : ripping.widths()) {
            values.add(worth[sizes.size()]);
            sizes.add(width + ripping.kerf());
        }
    }

    /**
     * What no pattern of a cross-section is worth more than, if each strip of a width is worth so much.
     *
     * @param parts parts that its measures are divided into; the more, the closer the bound
     */
    static double bound(int parts, Ripping ripping, CrossSection section, double[] worth) {
        PricedPattern pattern = new PricedPattern(ripping, section, worth);
        double sliced = Knapsack.bound(parts, section.thickness() + ripping.kerf(), pattern.sizes, pattern.values);
        pattern.across(sliced);
        return Knapsack.bound(parts, section.width() + ripping.kerf(), pattern.sizes, pattern.values);
    }

    /** A pattern of a cross-section that is worth about as much as any. */
    static RipPattern of(Ripping ripping, CrossSection section, double[] worth) {
        return new PricedPattern(ripping, section, worth).pattern();
    }

    private RipPattern pattern() {
        List<Integer> slices = items(Knapsack.choice(section.thickness() + ripping.kerf(), sizes, values));
        across(slices.stream().mapToDouble(values::get).sum());
        List<Lane> lanes = new ArrayList<>();
        int layers = ripping.layers(section.thickness());
        List<Integer> counts = ripping.none();
        for (int item : items(Knapsack.choice(section.width() + ripping.kerf(), sizes, values))) {
            boolean stick = item == ripping.widths().size();
            Lane lane = stick
                    ? new Lane(true, ripping.stick(), slices)
                    : new Lane(false, ripping.widths().get(item), Collections.nCopies(layers, item));
            lanes.add(lane);
            counts = ripping.with(counts, lane);
        }
        return RipPattern.of(lanes, counts);
    }

    /** Turns from slices of a stick to lanes side by side: each width in all its layers, and the sliced stick. */
    private void across(double sliced) {
        int layers = ripping.layers(section.thickness());
        values.replaceAll(value -> value * layers);
        sizes.add(ripping.stick() + ripping.kerf());
        values.add(sliced);
    }

    private static List<Integer> items(int[] counts) {
        List<Integer> items = new ArrayList<>();
        for (int item = 0; item < counts.length; item++) {
            items.addAll(Collections.nCopies(counts[item], item));
        }
        return items;
    }
}
