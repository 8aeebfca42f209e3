package org.orbwright.api.query;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.api.wire.RequestException;

class QueryTest {
    private static double deviation(String text) {
        return Query.number("deviation", text, 1e-6, 1000, "1");
    }

    @ParameterizedTest
    @CsvSource({"0.1, 0.1", "1e-3, 0.001", "1E+2, 100", "2.5e0, 2.5", "1000, 1000"})
    void numbersMayHaveAnExponent(String text, double number) {
        assertEquals(number, deviation(text), 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "1e-7", "1001", "-1", "x", "1e", "1e999", "0x1p3", "NaN", "1d", " 1", "1,5"})
    void otherTextsAreRefused(String text) {
        RequestException refusal = assertThrows(RequestException.class, () -> deviation(text));
        assertEquals(
                "The query parameter deviation must be 0.000001 to 1000, but is \"" + text + "\".",
                refusal.getMessage());
    }
}
