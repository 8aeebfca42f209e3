package org.orbwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RoundingTest {
    @ParameterizedTest(name = "{0} to {1} decimals is {2}")
    @CsvSource({
        "0.5, 0, 0",
        "1.5, 0, 2",
        "2.5, 0, 2",
        "-0.5, 0, 0",
        "-1.5, 0, -2",
        "0.125, 2, 0.12",
        "0.375, 2, 0.38",
        "58.28252558853899, 4, 58.2825",
        "76.24495042321358, 4, 76.245",
        "1e-13, 12, 0",
        "6e-13, 12, 1e-12"
    })
    void tiesGoToTheEvenNeighbour(double value, int decimals, double rounded) {
        assertEquals(rounded, Rounding.round(value, decimals));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.0, -1e-9, -0.4})
    void aNegativeZeroBecomesZero(double value) {
        assertEquals(Double.doubleToRawLongBits(0.0), Double.doubleToRawLongBits(Rounding.round(value, 0)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e300, -1e300, 4503599627370497.0, 1.7976931348623157E308, -4503599627370497.0})
    void aLargeValueHasNoDecimalsToLose(double value) {
        assertEquals(value, Rounding.round(value, 12));
        assertEquals(value, Rounding.round(value, 0));
    }

    @Property(tries = 300)
    void roundingMovesByHalfAStepAtMost(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double value, @ForAll @IntRange(max = 8) int decimals) {
        double step = Math.pow(10, -decimals);
        assertEquals(value, Rounding.round(value, decimals), step / 2 + 1e-9);
    }

    @Property(tries = 300)
    void roundingTwiceChangesNothing(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double value, @ForAll @IntRange(max = 8) int decimals) {
        double once = Rounding.round(value, decimals);
        assertEquals(once, Rounding.round(once, decimals));
    }

    @ParameterizedTest(name = "{0} is written {2}")
    @CsvSource({
        "172.0, 2, 172",
        "12.50, 2, 12.5",
        "0.125, 2, 0.12",
        "0.375, 2, 0.38",
        "1e-7, 2, 0",
        "-1e-7, 2, 0",
        "-3.14159, 3, -3.142",
        "1200.0, 2, 1200",
        "1e15, 2, 1000000000000000",
        "1e20, 2, 100000000000000000000",
        "-1e20, 2, -100000000000000000000",
        "1e-7, 7, 0.0000001",
        "100, 0, 100"
    })
    void sentencesHaveNeitherExponentNorTrailingZeros(double value, int decimals, String text) {
        assertEquals(text, Rounding.plain(value, decimals));
    }

    @Test
    void sentencesRoundTheShortestDecimalOfANumber() {
        // 0.285 is a little less than its decimal in binary; a reader sees the decimal, a tie, and the even neighbour.
        assertEquals("0.28", Rounding.plain(0.285, 2));
        assertEquals("0.3", Rounding.plain(0.1 + 0.2, 4));
    }

    @Test
    void limitsAreRoundedDownUnlessTheyAreWholeSteps() {
        assertEquals(0.0176, Rounding.down(0.01769, 4));
        assertEquals(-0.0177, Rounding.down(-0.01769, 4));
        // 0.29 times a hundred is 28.999999999999996.
        assertEquals(0.29, Rounding.down(0.29, 2));
        assertEquals(0.0088, Rounding.down(0.0176 / 2, 4));
    }

    @ParameterizedTest(name = "{0} and {1}: {2} decimals")
    @CsvSource({
        "12, 13, 2",
        "12.34, 12.35, 2",
        "12.341, 12.342, 3",
        "0.1, 0.10001, 5",
        "0.000000001, 0.000000002, 9",
        "1, 1.00000000001, 2",
        "7.5, 7.5, 2"
    })
    void asManyDecimalsAsItTakesToTellNumbersApart(double one, double other, int decimals) {
        assertEquals(decimals, Rounding.decimalsApart(one, other, 2));
        assertEquals(decimals, Rounding.decimalsApart(other, one, 2));
    }
}
