package org.orbwright.tolerance;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** What errors of cutting do to a solid. */
@Describe("What errors of cutting do to a solid: by linear theory in closed form, and by a simulation.")
public record Tolerance(
        @Describe(value = "Largest gap that the glue bridges.", quantity = Quantity.LENGTH, example = "0.1")
        double glueBridges,

        @Describe("What they do to the panels, per face kind.")
        List<PanelTolerance> panels,

        @Describe("What they do to the seams between panels, per edge kind.")
        List<SeamTolerance> seams,

        @Describe("What they do to the lines between bands, per lamination.")
        List<LaminationTolerance> laminations,

        SolidTolerance solid,

        SettingLimits limits,

        GapSimulation simulation) {

    /** Copies the lists. */
    public Tolerance {
        panels = List.copyOf(panels);
        seams = List.copyOf(seams);
        laminations = List.copyOf(laminations);
    }

    /** What errors do to the solid and its sphere. */
    @Describe("What errors do to the solid and its sphere.")
    public record SolidTolerance(
            @Describe("What they do to across flats, over one pair of opposite faces of the lowest kind.")
            ErrorBudget acrossFlats,

            @Describe(
                    "What they do to the diameter of the largest sphere without flats and with closed seams, where one"
                            + " face limits it.")
            ErrorBudget largestDiameter,

            @Describe("What they do to the thinnest wall of the chosen sphere, at one face.")
            ErrorBudget thinnestWall) {}

    /** How exactly the saw has to be set. */
    @Describe("How exactly the saw has to be set: the largest setting errors, of either sign, whose gaps the glue still"
            + " bridges everywhere, without any scatter.")
    public record SettingLimits(
            @Describe(
                    value = "Largest setting error of the tip angle.",
                    quantity = Quantity.ANGLE,
                    example = "0.0177",
                    max = 1e18)
            double tipAngle,

            @Describe(
                    value = "Largest setting error of a mitre gauge that gives both legs: half of the tip angle's.",
                    quantity = Quantity.ANGLE,
                    example = "0.0088",
                    max = 1e18)
            double mitreGauge,

            @Describe(
                    value = "Largest setting error of the bevel, and of the blade tilt.",
                    quantity = Quantity.ANGLE,
                    example = "0.1015",
                    max = 1e18)
            double bevel) {}
}
