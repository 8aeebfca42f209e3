package org.orbwright.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EquilibriumMoistureTest {
    @ParameterizedTest(name = "21.1 C and {0} %: {1} % (Wood Handbook, Table 4-2; Simpson 1998, from memory)")
    @CsvSource({"30, 6.2", "50, 9.2", "65, 12.0", "80, 16.0"})
    void publishedValues(double relativeHumidity, double moisture) {
        assertEquals(moisture, EquilibriumMoisture.of(21.1, relativeHumidity), 0.1);
    }

    @Test
    void dryAirLeavesNothing() {
        assertEquals(0, EquilibriumMoisture.of(20, 0));
    }

    @Property(tries = 300)
    void risesWithHumidityAndStaysBelowFibreSaturation(
            @ForAll @DoubleRange(min = -1.1, max = 100) double celsius,
            @ForAll @DoubleRange(min = 0, max = 97) double humidity,
            @ForAll @DoubleRange(min = 0.01, max = 1) double more) {
        double dry = EquilibriumMoisture.of(celsius, humidity);
        double damp = EquilibriumMoisture.of(celsius, humidity + more);
        assertTrue(dry >= 0);
        assertTrue(damp > dry);
        assertTrue(damp < 30);
    }

    @Property(tries = 200)
    void warmAirOfTheSameHumidityDriesWood(
            @ForAll @DoubleRange(min = 10, max = 90) double celsius,
            @ForAll @DoubleRange(min = 20, max = 90) double humidity) {
        assertTrue(EquilibriumMoisture.of(celsius + 5, humidity) < EquilibriumMoisture.of(celsius, humidity));
    }
}
