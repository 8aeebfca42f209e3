package org.orbwright.movement;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("Mass of one wood, for all copies, at the stock's moisture content and at the home's mean one: 1000 kg/m3"
        + " times specific gravity times volume times (1 + moisture content / 100). The designed volume is taken"
        + " for that at 12 % moisture content. Left out where the density is not known.")
public record SpeciesMass(
        @Describe(value = "The wood.", example = "\"white ash\"")
        String species,

        @Describe(
                value = "Mass of its strips at the stock's moisture content; left out where a blank is too short.",
                quantity = Quantity.MASS,
                example = "2.8903",
                optional = true)
        Double blanksAtStock,

        @Describe(
                value = "Mass of its strips at the home's mean moisture content; left out where a blank is too short.",
                quantity = Quantity.MASS,
                example = "2.8616",
                optional = true)
        Double blanksAtHome,

        @Describe(
                value = "Mass of it in the glued-up solids at the stock's moisture content.",
                quantity = Quantity.MASS,
                example = "1.3764",
                optional = true)
        Double solidsAtStock,

        @Describe(
                value = "Mass of it in the glued-up solids at the home's mean moisture content.",
                quantity = Quantity.MASS,
                example = "1.3628",
                optional = true)
        Double solidsAtHome,

        @Describe(
                value = "Mass of it in the finished spheres at the stock's moisture content; left out where they"
                        + " break through to the hollow.",
                quantity = Quantity.MASS,
                example = "0.7346",
                optional = true)
        Double spheresAtStock,

        @Describe(
                value = "Mass of it in the finished spheres at the home's mean moisture content; left out where"
                        + " they break through to the hollow.",
                quantity = Quantity.MASS,
                example = "0.7273",
                optional = true)
        Double spheresAtHome) {}
