package org.orbwright.api.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.quantity.Rounding;

/** JSON reads as the answer that it was written from. */
class AnswerJsonTest {
    record Numbers(
            @Describe(value = "A length.", quantity = Quantity.LENGTH)
            double length,

            @Describe(value = "An angle.", quantity = Quantity.ANGLE)
            Double angle,

            @Describe(value = "Lengths.", quantity = Quantity.LENGTH)
            List<Double> lengths,

            @Describe(value = "Which one.", quantity = Quantity.NUMBER)
            int place,

            @Describe(value = "May be left out.", optional = true)
            String note) {}

    record Text(@Describe("A text.") String text) {}

    record Constants(
            @Describe("The unit.") LengthUnit unit,
            @Describe("All units.") List<LengthUnit> all) {}

    @Test
    void numbersAreConvertedOnceAndPlacesCountFromOne() {
        Numbers numbers = new Numbers(58.28252558853899, Math.PI / 6, Arrays.asList(0.00005, -0.0625), 0, null);
        assertEquals("{\"length\":58.2825,\"angle\":30,\"lengths\":[0,-0.0625],\"place\":1}", json(numbers));
    }

    @Test
    void unitsAreWrittenAsSymbols() {
        assertEquals(
                "{\"unit\":\"in\",\"all\":[\"mm\",\"in\"]}",
                json(new Constants(LengthUnit.IN, List.of(LengthUnit.MM, LengthUnit.IN))));
    }

    @Test
    void anAnswerThatLacksAPartIsOurFault() {
        Exception fault = assertThrows(IllegalStateException.class, () -> json(new Text(null)));
        String told = fault.getCause().getMessage();
        assertTrue(told.startsWith("an answer lacks its text"), told);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "-0.00004, 0",
        "1, 1",
        "100, 100",
        "58.28252558853899, 58.2825",
        "0.00005, 0",
        "0.00016, 0.0002",
        "-0.0625, -0.0625",
        "4503599627370495, 4503599627370495"
    })
    void numbersArePlain(double value, String text) {
        assertEquals(text, number(value));
    }

    @Property
    void numbersAreTheRoundedOnes(@ForAll double value) {
        assertEquals(Rounding.round(value, 4), Double.parseDouble(number(value)));
    }

    @Property
    void smallNumbersAreTheRoundedOnes(@ForAll @IntRange(min = -999_999) int hundredThousandths) {
        double value = hundredThousandths / 100_000.0;
        assertEquals(Rounding.round(value, 4), Double.parseDouble(number(value)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void thereIsNoJsonForWhatIsNotFinite(double value) {
        assertThrows(IllegalStateException.class, () -> number(value));
    }

    @Property
    void textsReadBackAsTheyWere(@ForAll String text) throws IOException {
        assertEquals(
                text,
                new ObjectMapper()
                        .readTree(AnswerJson.write(new Text(text)))
                        .path("text")
                        .asText());
    }

    @Test
    void halfASurrogatePairIsEscaped() {
        assertEquals("{\"text\":\"a\\uD800\\u0000\"}", json(new Text("a\ud800\u0000")));
    }

    private static String number(double value) {
        String json = json(new Numbers(value, 0.0, List.of(), 0, null));
        return json.substring("{\"length\":".length(), json.indexOf(",\"angle"));
    }

    private static String json(Record answer) {
        return new String(AnswerJson.write(answer), StandardCharsets.UTF_8);
    }
}
