package org.orbwright.turning;

import java.util.List;
import org.orbwright.design.BandSet;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("Where the masses of the work lie about the axis that it turns about. It is about the static imbalance, which"
        + " turns the heavy side down; a couple, which does not show at rest, may remain. Glue, voids and what the"
        + " boards differ by are not in these numbers.")
public record Balance(
        @Describe("Density of each wood that is in the work.")
        List<DensityTaken> densities,

        @Describe("The panels, in the order of the solid's faces.")
        List<PanelMass> panels,

        HeldBody solid,

        @Describe(value = "The finished sphere; left out where it breaks through to the hollow.", optional = true)
        HeldBody sphere) {

    public Balance {
        densities = List.copyOf(densities);
        panels = List.copyOf(panels);
    }

    @Describe("The density that was taken for a wood.")
    public record DensityTaken(
            @Describe(value = "The wood.", example = "\"white ash\"")
            String species,

            @Describe(value = "Its density.", quantity = Quantity.DENSITY, example = "672")
            double density,

            @Describe(
                    value = "Whether the document's woods state it; from the table of woods otherwise.",
                    example = "false")
            boolean stated) {}

    @Describe("The mass of a panel.")
    public record PanelMass(
            @Describe(value = "Number of the panel.", quantity = Quantity.NUMBER, example = "1", max = 200)
            int panel,

            @Describe(value = "The face kind.", example = "\"triangle\"")
            String face,

            @Describe(value = "The set of segments that it is made of.", example = "\"UPRIGHT\"")
            BandSet set,

            @Describe(value = "Mass in the glued-up solid.", quantity = Quantity.MASS, example = "0.1223")
            double inSolid,

            @Describe(
                    value = "Mass in the finished sphere; left out where it breaks through to the hollow.",
                    quantity = Quantity.MASS,
                    example = "0.0756",
                    optional = true)
            Double inSphere) {}

    @Describe("A body that turns about the axis.")
    public record HeldBody(
            @Describe(value = "Mass of the work.", quantity = Quantity.MASS, example = "2.4832")
            double mass,

            @Describe(value = "The same with what holds it.", quantity = Quantity.MASS, example = "3.2832")
            double turningMass,

            @Describe(
                    value = "How far the work's centre of mass lies from the axis.",
                    quantity = Quantity.LENGTH,
                    example = "0.3114")
            double offAxis,

            @Describe(
                    value = "How far it lies along the axis from the solid's centre, above 0 towards the face, corner"
                            + " or edge that the axis is named after.",
                    quantity = Quantity.LENGTH,
                    example = "-0.0581",
                    min = -1e18)
            double alongAxis,

            @Describe(
                    value = "The panel whose middle is nearest to the heavy side, seen along the axis; left out where"
                            + " the work is in balance.",
                    quantity = Quantity.NUMBER,
                    example = "13",
                    optional = true,
                    max = 200)
            Integer heavyPanel,

            @Describe(
                    value = "From that panel's middle to the heavy side about the axis, counter-clockwise seen against"
                            + " the axis from its named end; left out where the work is in balance.",
                    quantity = Quantity.ANGLE,
                    example = "-3.0808",
                    optional = true,
                    min = -180,
                    max = 180)
            Double fromHeavyPanel,

            @Describe(
                    value = "Imbalance: the work's mass times its distance from the axis. Divided by the distance from"
                            + " the axis at which a counterweight is fixed opposite the heavy side, it is the"
                            + " counterweight's mass.",
                    quantity = Quantity.IMBALANCE,
                    example = "773.314")
            double imbalance,

            @Describe(
                    value = "Eccentricity of all that turns: the imbalance over the turning mass. With the speed in"
                            + " radians per second it makes the balance quality grade of ISO 21940-11:2016.",
                    quantity = Quantity.LENGTH,
                    example = "0.2355")
            double eccentricity,

            @Describe(
                    value = "At the stated speed, the eccentricity times the angular speed: the grade G of ISO"
                            + " 21940-11:2016; left out without a speed.",
                    quantity = Quantity.VELOCITY,
                    example = "8.633",
                    optional = true)
            Double grade,

            @Describe(
                    value = "At the stated speed, the force that goes round with the work and shakes the lathe; left"
                            + " out without a speed.",
                    quantity = Quantity.FORCE,
                    example = "1.0388",
                    optional = true)
            Double force,

            @Describe(
                    value = "That force over the weight of the work and what holds it; left out without a speed.",
                    quantity = Quantity.RATIO,
                    example = "0.032265",
                    optional = true)
            Double forceToWeight) {}
}
