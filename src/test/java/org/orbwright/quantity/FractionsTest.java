package org.orbwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Inches as a rule shows them. */
class FractionsTest {
    /** By arithmetic: 3.143 is 3 + 9.152/64, and 9/64 is 0.140625. */
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "1, 1",
        "0.5, 1/2",
        "-0.75, -3/4",
        "7.109375, 7 7/64",
        "3.143, 3 9/64 + 0.002",
        "6.84, 6 27/32 - 0.004",
        "0.002, 0 + 0.002",
        "-0.002, 0 - 0.002",
        "0.9999, 1",
        "0.995, 1 - 0.005",
        "-1.02, -1 1/64 - 0.004"
    })
    void theNearestSixtyFourthIsReducedWithWhatIsLeftOver(double inches, String written) {
        assertEquals(written, Fractions.of(inches));
    }

    @Property(seed = "1964")
    void fractionAndRestAddUpToTheLength(@ForAll @DoubleRange(min = -100_000, max = 100_000) double inches) {
        String written = Fractions.of(inches);
        double size = 0;
        double rest = 0;
        String before = "";
        for (String word : written.replaceFirst("^-", "").split(" ", -1)) {
            if (before.equals("+") || before.equals("-")) {
                assertTrue(word.matches("0\\.\\d{1,3}"), written);
                rest = Double.parseDouble(before + word);
            } else if (word.contains("/")) {
                int parts = Integer.parseInt(word.substring(0, word.indexOf('/')));
                int of = Integer.parseInt(word.substring(word.indexOf('/') + 1));
                assertTrue(64 % of == 0 && of > 1 && parts % 2 == 1 && parts < of, written);
                size += (double) parts / of;
            } else if (!word.equals("+") && !word.equals("-")) {
                size += Double.parseDouble(word);
            }
            before = word;
        }
        double fraction = written.startsWith("-") ? -size : size;
        assertEquals(inches, fraction + rest, 0.0005 + 1e-9);
        assertTrue(Math.abs(inches - fraction) <= 1.0 / 128 + 1e-9, written);
    }
}
