package org.orbwright.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.quantity.LengthUnit;

class WrittenLengthTest {
    private static final double EXACT = 1e-12;

    /** Converted by hand with the inch of 25.4 mm (L. V. Judson, addendum to NBS Circular 572, 1959). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3.125     | IN | 3.125",
                "3 1/8     | IN | 3.125",
                "3-1/8     | IN | 3.125",
                "3 - 1/8in | IN | 3.125",
                "3-1/8in   | MM | 79.375",
                "3 1/8 \"  | MM | 79.375",
                "79.375mm  | IN | 3.125",
                "7.9375 cm | IN | 3.125",
                "1 m       | MM | 1000",
                "1 inch    | MM | 25.4",
                "2 inches  | MM | 50.8",
                "79,375    | MM | 79.375",
                ".5        | IN | 0.5",
                "7.        | IN | 7",
                "5/64      | IN | 0.078125",
                "-1/4      | IN | -0.25",
                "1.5E-05   | MM | 0.000015",
                "2E+02     | MM | 200",
                "7\u00bd        | IN | 7.5",
                "3 \u215bin     | MM | 79.375",
                "3-\u215b       | IN | 3.125",
                "\u2153         | IN | 0.333333333333333333",
                "-\u00be        | IN | -0.75",
                "7 1\u20442     | IN | 7.5",
                "7 IN      | MM | 177.8",
                "79.375 Mm | IN | 3.125",
                "+7        | IN | 7",
                "+3 1/8    | IN | 3.125",
            })
    void readsWhatPeopleWrite(String text, LengthUnit unit, double length) {
        assertEquals(length, WrittenLength.read(text, unit).orElseThrow(), EXACT);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "x",
                "1/0",
                "1/",
                "/8",
                "3 1/8 1/8",
                "1,234.5",
                "1.2.3",
                "3 ft",
                "7in in",
                "NaN",
                "Infinity",
                "1e999",
                "0x10",
                "1_000",
                "--3",
                "+-3",
                "3 +1/8",
                "\u00bd\u00bd",
                "1/\u00bd",
                "12345678901",
                "3 1.5/8",
                "mm"
            })
    void takesNothingElse(String text) {
        assertTrue(WrittenLength.read(text, LengthUnit.MM).isEmpty());
    }

    @Test
    void everySixtyFourthIsExact() {
        for (int sixtyFourths = 1; sixtyFourths < 640; sixtyFourths++) {
            String text = sixtyFourths / 64 + " " + sixtyFourths % 64 + "/64";
            assertEquals(
                    sixtyFourths / 64.0, WrittenLength.read(text, LengthUnit.IN).orElseThrow(), 0);
        }
    }

    /** A spreadsheet joins a number to a text in the form of its own language. */
    @Test
    void aCommaIsADecimalSign() {
        Random random = new Random(11);
        for (int i = 0; i < 1000; i++) {
            String point = Double.toString(Math.round(random.nextDouble() * 1e7) / 1e4);
            assertEquals(
                    Double.parseDouble(point),
                    WrittenLength.read(point.replace('.', ','), LengthUnit.MM).orElseThrow(),
                    0);
        }
    }
}
