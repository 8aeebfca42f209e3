package org.orbwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityTest {
    @ParameterizedTest(name = "{0}: 1 mm^{1} is {2} in^{1}")
    @CsvSource({"LENGTH, 1, 0.03937007874015748", "AREA, 2, 0.0015500031000062", "VOLUME, 3, 6.102374409473229e-5"})
    void lengthsAreasAndVolumesFollowTheUnit(Quantity quantity, int power, double inches) {
        assertEquals(inches, quantity.factor(LengthUnit.IN), 1e-14 * inches);
        assertEquals(Math.pow(25.4, -power), quantity.factor(LengthUnit.IN), 1e-14 * inches);
        assertEquals(1, quantity.factor(LengthUnit.MM));
    }

    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    @DisplayName("a board foot is 144 cubic inches, 2359737.216 cubic millimetres, by definition")
    void boardFoot(LengthUnit unit) {
        assertEquals(1, 2_359_737.216 * Quantity.BOARD_FEET.factor(unit), 1e-15);
    }

    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void otherQuantitiesDoNotDependOnTheUnit(LengthUnit unit) {
        assertEquals(1e-9, Quantity.CUBIC_METRES.factor(unit));
        assertEquals(180, Math.PI * Quantity.ANGLE.factor(unit));
        assertEquals(180, Math.PI * Quantity.CATALOGUE_ANGLE.factor(unit));
        assertEquals(1, Quantity.NONE.factor(unit));
        assertEquals(1, Quantity.UNIT_EDGE.factor(unit));
        assertEquals(1, Quantity.RATIO.factor(unit));
        assertEquals(1, Quantity.SHARE.factor(unit));
        assertEquals(1, Quantity.MASS.factor(unit));
        assertEquals(1, Quantity.DENSITY.factor(unit));
        assertEquals(1, Quantity.PERCENT.factor(unit));
        assertEquals(1, Quantity.CELSIUS.factor(unit));
        assertEquals(1, Quantity.MOVEMENT.factor(unit));
        assertEquals(1000, Quantity.GRAMS.factor(unit));
        assertEquals(1, Quantity.SPREAD.factor(unit));
        assertEquals(1, Quantity.MINUTES.factor(unit));
    }

    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void decimalsKeepAHundredthOfAMillimetreAndAThousandthOfADegree(LengthUnit unit) {
        double step = Math.pow(10, -Quantity.LENGTH.decimals(unit)) * unit.millimetres();
        assertTrue(step / 2 < 0.01 / 2);
        assertTrue(Quantity.ANGLE.decimals(unit) >= 3);
    }

    @ParameterizedTest(name = "{0} has {1} decimals in mm and {2} in inches")
    @CsvSource({
        "LENGTH, 4, 5",
        "AREA, 3, 6",
        "VOLUME, 1, 5",
        "BOARD_FEET, 4, 4",
        "CUBIC_METRES, 8, 8",
        "ANGLE, 4, 4",
        "CATALOGUE_ANGLE, 10, 10",
        "UNIT_EDGE, 12, 12",
        "RATIO, 6, 6",
        "SHARE, 4, 4",
        "MASS, 4, 4",
        "DENSITY, 1, 1",
        "NONE, 12, 12",
        "PLAIN, 6, 6",
        "PERCENT, 4, 4",
        "CELSIUS, 4, 4",
        "MOVEMENT, 8, 8",
        "GRAMS, 3, 3",
        "SPREAD, 3, 3",
        "MINUTES, 3, 3"
    })
    void decimals(Quantity quantity, int metric, int inches) {
        assertEquals(metric, quantity.decimals(LengthUnit.MM));
        assertEquals(inches, quantity.decimals(LengthUnit.IN));
    }

    @ParameterizedTest
    @EnumSource(
            value = Quantity.class,
            mode = EnumSource.Mode.EXCLUDE,
            names = {"NONE", "PLAIN"})
    void everyMeasuredQuantityNamesItsUnit(Quantity quantity) {
        assertTrue(quantity.unitPhrase().matches("(in|for|as) .+"));
    }

    @Test
    void whatIsNotMeasuredHasNoUnit() {
        assertEquals("", Quantity.NONE.unitPhrase());
        assertEquals("", Quantity.PLAIN.unitPhrase());
    }
}
