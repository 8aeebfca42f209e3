package org.orbwright.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.wood.WoodSpecies;
import org.orbwright.wood.WoodTable;
import org.orbwright.wood.Woods;

class DimensionalChangeTest {
    /** As a share of the dimension: what is left of a sum or product of a few terms. */
    private static final double EXACT = 1e-15;

    private static WoodSpecies wood(String name) {
        return Woods.TABLE.find(name).orElseThrow();
    }

    @Test
    @DisplayName(
            "equation 13-2 by hand: beech 0.00431 a point, from 6 % to 14 %: 8 x 0.00431 (FPL-GTR-190, Table 13-5)")
    void withinTheTableTheChangeIsLinear() {
        assertEquals(8 * 0.00431, DimensionalChange.strain(0.00431, 6, 14), EXACT);
        assertEquals(-8 * 0.00431, DimensionalChange.strain(0.00431, 14, 6), EXACT);
        assertEquals(3 * 0.00431, DimensionalChange.strain(0.00431, 8, 11), EXACT);
    }

    /** The shrinkages are those of Table 4-3, the equation that of chapter 13: 100 (M - M0) / (3000 / S - 30 + M0). */
    @ParameterizedTest(
            name = "equation 13-3 by hand: 100 mm of {0}, S {1} %, from {2} % to {3} %: {4} mm (FPL-GTR-190)")
    @CsvSource({
        "american beech, 11.9, 20, 8, -4.9566",
        "american beech, 11.9, 30, 0, -11.9000",
        "red alder, 7.3, 12, 4, -2.0358",
        "black walnut, 7.8, 5, 11, 1.6684",
        "overcup oak, 12.7, 14, 16, 0.9082",
        "quaking aspen, 6.7, 3, 2, -0.2377"
    })
    void beyondTheTableTheChangeRestsOnShrinkage(String name, double shrinkage, double from, double to, double change) {
        assertEquals(change, 100 * (to - from) / (3000 / shrinkage - 30 + from), 5e-5, "the hand calculation");
        double strain =
                DimensionalChange.strain(wood(name).tangentialCoefficient().orElseThrow(), from, to);
        assertEquals(change, 100 * strain, 0.005);
    }

    @ParameterizedTest(name = "{0}: {1} % radial, {2} % tangential, to {3} (FPL-GTR-190, Table 4-3)")
    @CsvFileSource(resources = "/org/orbwright/wood/table-4-3.csv", numLinesToSkip = 1)
    void shrinkageFollowsFromTheCoefficient(String name, double radial, double tangential, double within) {
        assertEquals(
                radial,
                -100 * DimensionalChange.strain(wood(name).radialCoefficient().orElseThrow(), 30, 0),
                within);
        assertEquals(
                tangential,
                -100
                        * DimensionalChange.strain(
                                wood(name).tangentialCoefficient().orElseThrow(), 30, 0),
                within);
    }

    @Test
    void aboveFibreSaturationWoodDoesNotMove() {
        assertEquals(0, DimensionalChange.strain(0.00353, 45, 30));
        assertEquals(0, DimensionalChange.strain(0.00353, 31, 249));
        assertEquals(DimensionalChange.strain(0.00353, 30, 8), DimensionalChange.strain(0.00353, 90, 8));
        assertEquals(DimensionalChange.strain(0.00353, 8, 30), DimensionalChange.strain(0.00353, 8, 31));
    }

    @Test
    void whatAnswersAreRoundedToKeepsTheLimits() {
        assertFalse(DimensionalChange.isOutside(6));
        assertFalse(DimensionalChange.isOutside(14.0001));
        assertTrue(DimensionalChange.isOutside(5.99));
        assertTrue(DimensionalChange.isOutside(14.01));
    }

    /** The change by equation 13-3 over that by equation 13-2, for a start within the table. */
    private static double jump(double coefficient, double from) {
        double beyond = DimensionalChange.strain(coefficient, from, 14.001) / (14.001 - from);
        return beyond / coefficient - 1;
    }

    @Test
    void theJumpAtTheLimitsIsAtMostTwoHundredthsOfTheChange() {
        double largest = 0;
        for (WoodSpecies wood : WoodTable.all()) {
            for (double from : new double[] {6, 8, 10, 12, 14}) {
                double jump = jump(wood.tangentialCoefficient().orElseThrow(), from);
                assertEquals(
                        1 / (1 + wood.tangentialCoefficient().orElseThrow() * (from - 10)) - 1,
                        jump,
                        1e-9,
                        wood.name());
                largest = Math.max(largest, Math.abs(jump));
            }
        }
        assertEquals(0.019, largest, 0.0005);
        assertEquals(0.042, jump(0.01, 6), 0.0005);
    }

    /** From the least of the table to its largest. */
    @Provide
    Arbitrary<Double> coefficients() {
        return Arbitraries.doubles().between(0.00081, 0.00462).ofScale(5);
    }

    @Property(tries = 500)
    void moreMoistureMeansMoreWoodOnEachSideOfTheLimits(
            @ForAll("coefficients") double coefficient,
            @ForAll @DoubleRange(min = 0, max = 30) double from,
            @ForAll @DoubleRange(min = 0, max = 30) double one,
            @ForAll @DoubleRange(min = 0, max = 30) double other) {
        double dry = Math.min(one, other);
        double damp = Math.max(one, other);
        double drier = DimensionalChange.strain(coefficient, from, dry);
        double damper = DimensionalChange.strain(coefficient, from, damp);
        boolean alike = DimensionalChange.isOutside(dry) == DimensionalChange.isOutside(damp);
        double jump = alike || DimensionalChange.isOutside(from) ? 0 : 0.02 * Math.max(-drier, damper);
        assertTrue(drier <= damper + Math.max(0, jump), () -> drier + " to " + damper);
    }

    @Property(tries = 500)
    void woodThatMovesMoreMovesMoreByBothEquations(
            @ForAll("coefficients") double coefficient,
            @ForAll @DoubleRange(min = 0, max = 40) double from,
            @ForAll @DoubleRange(min = 0, max = 40) double to) {
        double less = Math.abs(DimensionalChange.strain(coefficient, from, to));
        double more = Math.abs(DimensionalChange.strain(coefficient * 1.1, from, to));
        assertTrue(less <= more);
    }

    @Property(tries = 500)
    void beyondTheTableWoodMovesBackExactlyAndByAnyWay(
            @ForAll("coefficients") double coefficient,
            @ForAll @DoubleRange(min = 0, max = 5.9) double dry,
            @ForAll @DoubleRange(min = 6, max = 14) double between,
            @ForAll @DoubleRange(min = 14.1, max = 40) double damp) {
        double there = 1 + DimensionalChange.strain(coefficient, dry, damp);
        assertEquals(1, there * (1 + DimensionalChange.strain(coefficient, damp, dry)), EXACT);
        double first = 1 + DimensionalChange.strain(coefficient, dry, between);
        assertEquals(there, first * (1 + DimensionalChange.strain(coefficient, between, damp)), EXACT);
    }
}
