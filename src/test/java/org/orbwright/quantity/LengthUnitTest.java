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
        assertEquals("0 mm", LengthUnit.MM.say(-0.0));
        assertEquals("0.0004 mm", LengthUnit.MM.say(0.0004));
    }

    @Test
    void limitsAreRoundedToTheSideOnWhichTheyHold() {
        assertEquals("12.35 mm", LengthUnit.MM.sayAtLeast(12.3456));
        assertEquals("12.34 mm", LengthUnit.MM.sayAtMost(12.3456));
        assertEquals("12.34 mm", LengthUnit.MM.sayAtLeast(12.34));
        assertEquals("12.34 mm", LengthUnit.MM.sayAtMost(12.34));
        assertEquals("0.126 in", LengthUnit.IN.sayAtLeast(3.18));
        assertEquals("0.125 in", LengthUnit.IN.sayAtMost(3.18));
        assertEquals("0.004 mm", LengthUnit.MM.sayAtMost(0.004));
    }

    @Test
    void inchesHaveTheirFractionBesideThem() {
        assertEquals("3.144 (3 9/64 + 0.003)", LengthUnit.IN.sayWithFraction(3.144 * 25.4));
        assertEquals("3", LengthUnit.IN.sayWithFraction(3 * 25.4));
        assertEquals("3.14", LengthUnit.MM.sayWithFraction(3.14));
        assertEquals("", LengthUnit.MM.fraction(3.14));
    }

    @Test
    void sumsAreWrittenAsFinelyAsAnswers() {
        assertEquals("54.9432 mm", LengthUnit.MM.sayFinely(54.94322));
        assertEquals("2.16312 in", LengthUnit.IN.sayFinely(54.94322));
    }

    @Test
    void sentencesGiveAThousandthOfAnInch() {
        assertEquals("7 in", LengthUnit.IN.say(177.8));
        assertEquals("0.125 in", LengthUnit.IN.say(3.175));
        assertEquals("0.039 in", LengthUnit.IN.say(1));
    }

    @Test
    void lengthsBesideEachOtherAreWrittenApart() {
        assertEquals("12 mm", LengthUnit.MM.sayApart(12, 13));
        assertEquals("12.341 mm", LengthUnit.MM.sayApart(12.341, 12.342));
        assertEquals("1.0001 in", LengthUnit.IN.sayApart(25.40254, 25.4));
        assertEquals("1 in", LengthUnit.IN.sayApart(25.4, 25.40254));
        assertEquals("0.0004 mm", LengthUnit.MM.sayApart(0.0004, 0.0004));
    }
}
