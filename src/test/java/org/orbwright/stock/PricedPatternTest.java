package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.stock.CuttingColumns.CrossSection;

/** The best pattern at given prices, against the complete list of patterns. */
class PricedPatternTest {
    private static final String SEED = "20261125";

    @Property(tries = 300, seed = SEED)
    void bestListedPatternLiesBetweenTheChoiceAndTheBound(
            @ForAll @Size(min = 1, max = 3) List<@DoubleRange(min = 10, max = 60) Double> widths,
            @ForAll @Size(value = 3) List<@DoubleRange(min = 0, max = 9) Double> worths,
            @ForAll @DoubleRange(min = 10, max = 40) double stick,
            @ForAll @DoubleRange(min = 1, max = 200) double width,
            @ForAll @DoubleRange(min = 1, max = 80) double thickness) {
        double[] worth =
                worths.stream().limit(widths.size()).mapToDouble(w -> w).toArray();
        Ripping ripping = new Ripping(widths, Collections.nCopies(widths.size(), 100), stick, 3);
        RipPatterns.Found found = RipPatterns.of(ripping, width, thickness, 1_000_000);
        double most = found.patterns().stream()
                .mapToDouble(pattern -> CuttingColumns.worth(pattern, worth))
                .max()
                .orElse(0);
        CrossSection section = new CrossSection(width, thickness);
        RipPattern choice = PricedPattern.of(ripping, section, worth);
        assertTrue(CuttingColumns.worth(choice, worth)
                <= PricedPattern.bound(Knapsack.FINE, ripping, section, worth) + 1e-9);
        if (found.complete()) {
            assertTrue(most <= PricedPattern.bound(Knapsack.FINE, ripping, section, worth) + 1e-9);
            assertTrue(CuttingColumns.worth(choice, worth) <= most + 1e-9);
        }
        assertFits(ripping, section, choice);
    }

    private static void assertFits(Ripping ripping, CrossSection section, RipPattern pattern) {
        double across = pattern.lanes().stream().mapToDouble(Lane::width).sum();
        assertTrue(across + ripping.kerf() * (pattern.lanes().size() - 1) <= section.width() + 1e-5);
        for (Lane lane : pattern.lanes()) {
            double deep = lane.items().stream()
                    .mapToDouble(item -> lane.rotated() ? ripping.widths().get(item) : ripping.stick())
                    .sum();
            assertTrue(deep + ripping.kerf() * (lane.items().size() - 1) <= section.thickness() + 1e-5);
        }
    }

    @Test
    void choiceFollowsThePrices() {
        // 108 mm give 2 of 40 mm (83), 1 and 2 (96), or 3 of 25 mm (81): worth 10, 5 + 6 and 9.
        Ripping ripping = new Ripping(List.of(40.0, 25.0), List.of(9, 9), 20, 3);
        CrossSection section = new CrossSection(108, 20);
        assertEquals(
                List.of(1, 2),
                PricedPattern.of(ripping, section, new double[] {5, 3}).counts());
        assertEquals(11, PricedPattern.bound(Knapsack.FINE, ripping, section, new double[] {5, 3}), 1e-12);
        assertEquals(
                List.of(2, 0),
                PricedPattern.of(ripping, section, new double[] {7, 3}).counts());
        assertEquals(14, PricedPattern.bound(Knapsack.FINE, ripping, section, new double[] {7, 3}), 1e-12);
    }

    @Test
    @DisplayName("hand calculation: two sticks of 20 mm and a kerf are 43 mm, two slices of 30 mm and a kerf 63 mm")
    void sticksAreSliced() {
        Ripping ripping = new Ripping(List.of(50.0, 30.0), List.of(9, 9), 20, 3);
        CrossSection section = new CrossSection(43, 63);
        double[] worth = {1, 5};
        Lane stick = new Lane(true, 20, List.of(1, 1));
        assertEquals(
                List.of(stick, stick), PricedPattern.of(ripping, section, worth).lanes());
        assertEquals(20, PricedPattern.bound(Knapsack.FINE, ripping, section, worth), 1e-12);
        // A third stick would take 20 mm and a kerf more, for which there are 22 mm.
        CrossSection wider = new CrossSection(65, 63);
        assertEquals(2, PricedPattern.of(ripping, wider, worth).lanes().size());
        assertEquals(20, PricedPattern.bound(Knapsack.FINE, ripping, wider, worth), 1e-12);
    }

    @Test
    @DisplayName("hand calculation: 66 mm are three layers of 20 mm and two kerfs, but only two slices of 30 mm")
    void wideLanesAreResawn() {
        Ripping ripping = new Ripping(List.of(30.0), List.of(9), 20, 3);
        CrossSection section = new CrossSection(30, 66);
        double[] worth = {5};
        assertEquals(
                List.of(new Lane(false, 30, List.of(0, 0, 0))),
                PricedPattern.of(ripping, section, worth).lanes());
        assertEquals(15, PricedPattern.bound(Knapsack.FINE, ripping, section, worth), 1e-12);
    }
}
