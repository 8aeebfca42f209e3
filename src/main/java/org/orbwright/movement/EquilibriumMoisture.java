package org.orbwright.movement;

/**
 * The moisture content that wood comes to in still air: the two-hydrate Hailwood-Horrobin equation with the constants
 * of the Forest Products Laboratory (Wood Handbook, FPL-GTR-282, 2021, p. 4-3). It agrees with Table 4-2, which covers
 * -1.1 to 132.2 degrees Celsius and 5 % to 95 % relative humidity, to what that is rounded to.
 *
 * <p>The equation is for Sitka spruce, midway between adsorption and desorption (the same, p. 4-4). Other woods depart
 * from it. Hysteresis alone is 1 to 4 percentage points at 50 % relative humidity (Swedish Wood, moisture content and
 * sorption curves): wood that dries to the air keeps more water than wood that takes it up.
 */
final class EquilibriumMoisture {
    private EquilibriumMoisture() {}

    /**
     * Equilibrium moisture content in percent of the ovendry mass.
     *
     * @param celsius temperature in degrees Celsius, -1.1 to 100
     * @param relativeHumidity relative humidity in percent, 0 to 98
     */
    static double of(double celsius, double relativeHumidity) {
        double square = celsius * celsius;
        double mass = 349 + 1.29 * celsius + 0.0135 * square;
        double k = 0.805 + 0.000736 * celsius - 0.00000273 * square;
        double k1 = 6.27 - 0.00938 * celsius - 0.000303 * square;
        double k2 = 1.91 + 0.0407 * celsius - 0.000293 * square;
        double dissolved = k * relativeHumidity / 100;
        double single = k1 * dissolved;
        double twice = k1 * k2 * dissolved * dissolved;
        double hydrated = (single + 2 * twice) / (1 + single + twice);
        return 1800 / mass * (dissolved / (1 - dissolved) + hydrated);
    }
}
