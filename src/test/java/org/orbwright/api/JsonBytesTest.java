package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.quantity.Rounding;

/** JSON as it is written by hand reads as what it should be. */
class JsonBytesTest {

    @ParameterizedTest
    @CsvSource({
        "0, 4, 0",
        "-0.0, 4, 0",
        "-0.00004, 4, 0",
        "1, 4, 1",
        "100, 0, 100",
        "0.5, 0, 0",
        "1.5, 0, 2",
        "58.28252558853899, 4, 58.2825",
        "0.00005, 4, 0",
        "0.00016, 4, 0.0002",
        "-0.0625, 4, -0.0625",
        "10.10, 5, 10.1",
        "0.001, 5, 0.001",
        "1e300, 4, 1.0E300",
        "4503599627370495, 0, 4503599627370495"
    })
    void numbers(double value, int decimals, String text) {
        assertEquals(text, number(value, decimals));
    }

    @Property
    void numbersAreTheRoundedOnes(@ForAll double value, @ForAll @IntRange(max = 12) int decimals) {
        assertEquals(Rounding.round(value, decimals), Double.parseDouble(number(value, decimals)));
    }

    @Property
    void smallNumbersAreTheRoundedOnes(
            @ForAll @IntRange(min = -999_999) int thousandths, @ForAll @IntRange(max = 6) int decimals) {
        double value = thousandths / 1000.0;
        assertEquals(Rounding.round(value, decimals), Double.parseDouble(number(value, decimals)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void thereIsNoJsonForWhatIsNotFinite(double value) {
        assertThrows(IllegalStateException.class, () -> number(value, 4));
    }

    @Property
    void textsReadBackAsTheyWere(@ForAll String text) throws IOException {
        JsonBytes json = new JsonBytes(1);
        json.text(text);
        assertEquals(text, new ObjectMapper().readValue(json.toArray(), String.class));
    }

    @Test
    void halfASurrogatePairIsEscaped() {
        JsonBytes json = new JsonBytes(1);
        json.text("a\ud800\u0000\ud83d\ude80");
        assertEquals("\"a\\ud800\\u0000\ud83d\ude80\"", new String(json.toArray(), StandardCharsets.UTF_8));
    }

    private static String number(double value, int decimals) {
        JsonBytes json = new JsonBytes(1);
        json.number(value, decimals);
        return new String(json.toArray(), StandardCharsets.US_ASCII);
    }
}
