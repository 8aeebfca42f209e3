package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.api.wire.Csv;

class CsvTest {

    @ParameterizedTest
    @ValueSource(strings = {"walnut", "7 x 8", "a-b", "Ahorn, weiß", "6\" wide", "two\r\nlines", ""})
    void textsAreReadAgainAsTheyWere(String text) {
        assertEquals(List.of(List.of(text, "next")), CsvReader.read(Csv.line(List.of(Csv.text(text), "next"))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+49 30", "-x", "@SUM(A1)", "\tx", "\r=1", " =1+1", "=\"a\",\"b\""})
    void whatASpreadsheetMightComputeFollowsAnApostrophe(String text) {
        assertEquals(List.of(List.of("'" + text)), CsvReader.read(Csv.line(List.of(Csv.text(text)))));
    }

    @Test
    void onlyWhatNeedsQuotesHasThem() {
        assertEquals(
                "plain,\"a,b\",\"6\"\"\"\r\n", Csv.line(List.of(Csv.text("plain"), Csv.text("a,b"), Csv.text("6\""))));
    }

    @Test
    void numbersHaveNoExponent() {
        assertEquals("0.0000001", Csv.plain(1e-7));
        assertEquals("120000000000", Csv.plain(1.2e11));
        assertEquals("0", Csv.plain(-0.0));
    }
}
