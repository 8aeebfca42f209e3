package org.orbwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class LengthUnitTest {
    @Test
    @DisplayName("an inch is exactly 25.4 mm (international yard and pound agreement, 1959)")
    void inch() {
        assertEquals(25.4, LengthUnit.IN.millimetres());
        assertEquals(177.8, LengthUnit.IN.toMillimetres(7), 1e-13);
        assertEquals(7, LengthUnit.IN.fromMillimetres(177.8), 1e-15);
    }

    @Test
    void aMillimetreStaysAsItIs() {
        assertEquals(12.3, LengthUnit.MM.toMillimetres(12.3));
        assertEquals(12.3, LengthUnit.MM.fromMillimetres(12.3));
    }

    @Test
    void unitsAreNamedAsInADesign() {
        assertEquals("mm", LengthUnit.MM.symbol());
        assertEquals("in", LengthUnit.IN.symbol());
    }

    @Test
    void sentencesGiveAHundredthOfAMillimetre() {
        assertEquals("12.5 mm", LengthUnit.MM.say(12.5));
        assertEquals("12.35 mm", LengthUnit.MM.say(12.3456));
        assertEquals("172 mm", LengthUnit.MM.say(172));
        assertEquals("0 mm", LengthUnit.MM.say(-0.001));
    }

    @Test
    void sentencesGiveAThousandthOfAnInch() {
        assertEquals("7 in", LengthUnit.IN.say(177.8));
        assertEquals("0.125 in", LengthUnit.IN.say(3.175));
        assertEquals("0.039 in", LengthUnit.IN.say(1));
    }
}
