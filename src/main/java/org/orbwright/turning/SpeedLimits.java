package org.orbwright.turning;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe(
        "Speeds to stay under, each with what it rests on. None of them says that a speed is safe: the lathe's manual,"
                + " local rules and the state of the work come first, and glued-up, hollow or cracked work"
                + " starts at the lathe's"
                + " lowest speed. Imbalance has no part in them: the operation balanceWork answers what it does.")
public record SpeedLimits(
        SpeedLimit solid,
        SpeedLimit sphere,

        @Describe(
                value = "The lowest limit of both bodies, of the low end of the rule of thumb and of the glue.",
                quantity = Quantity.TURNS,
                example = "586.4")
        double lowest) {

    @Describe("Speeds to stay under for one body.")
    public record SpeedLimit(
            @Describe(
                    value = "Diameter that swings: of the solid about its axis, or of the sphere as it leaves the tool."
                            + " Masses and seams of the sphere are those of the finished one, whose"
                            + " seams are smallest.",
                    quantity = Quantity.LENGTH,
                    example = "259.8749")
            double diameter,

            @Describe(
                    value = "Diameter in inches times turns a minute is 6000: the low end of the rule of thumb (common"
                            + " practice, no source), where segmented and hollow work stays below.",
                    quantity = Quantity.TURNS,
                    example = "586.4")
            double thumbLow,

            @Describe(
                    value = "The same with 9000: the upper end, for sound, balanced, solid work.",
                    quantity = Quantity.TURNS,
                    example = "879.7")
            double thumbHigh,

            @Describe(
                    value = "Speed of the surface at the stated speed; left out without one.",
                    quantity = Quantity.SURFACE_SPEED,
                    example = "4.762",
                    optional = true)
            Double surfaceSpeed,

            @Describe(
                    value = "Stress in a thin ring of the densest wood that turns by itself at the stated speed:"
                            + " density times the square of its surface speed, whatever its wall is. Left out without"
                            + " a speed or a density.",
                    quantity = Quantity.STRESS,
                    example = "0.016258",
                    optional = true)
            Double ringStress,

            @Describe(
                    value = "Pull of the heaviest panel on its seams at the stated speed: its mass times the distance"
                            + " of its centre of mass times the square of the angular speed. It is taken to stand"
                            + " square to the axis, with nothing else to hold it. Left out without a speed or a"
                            + " density, or where the sphere breaks through to the hollow.",
                    quantity = Quantity.FORCE,
                    example = "15.4338",
                    optional = true)
            Double panelPull,

            @Describe(
                    value = "Area of the seams around that panel; left out without a density, or where the sphere"
                            + " breaks through to the hollow.",
                    quantity = Quantity.AREA,
                    example = "10268.249",
                    optional = true)
            Double seamArea,

            @Describe(
                    value = "That pull over that area. Left out without a speed or a density, or where the sphere"
                            + " breaks through to the hollow.",
                    quantity = Quantity.STRESS,
                    example = "0.001503",
                    optional = true)
            Double seamStress,

            @Describe(
                    value = "Speed at which the greater of both stresses is the stated strength over its divisor. It"
                            + " knows of no void, crack, catch or imbalance. Left out without a strength or a density.",
                    quantity = Quantity.TURNS,
                    example = "1063.1",
                    optional = true)
            Double glueLimit) {}
}
