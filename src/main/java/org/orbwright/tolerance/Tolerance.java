package org.orbwright.tolerance;

import static org.orbwright.quantity.Quantity.ANGLE;
import static org.orbwright.quantity.Quantity.LENGTH;

import java.util.List;
import org.orbwright.quantity.Describe;

@Describe("What errors of cutting do to a solid: by linear theory in closed form, and by a simulation.")
public record Tolerance(
        @Describe(value = "Largest gap that the glue bridges.", quantity = LENGTH, example = "0.1")
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

    /** A gap this much larger still counts as bridged, in millimetres: limits that were answered can be asked with. */
    public static final double STILL_BRIDGED = 1e-6;

    public Tolerance {
        panels = List.copyOf(panels);
        seams = List.copyOf(seams);
        laminations = List.copyOf(laminations);
    }

    /** Whether the glue bridges a gap. */
    public boolean bridges(double gap) {
        return gap <= glueBridges + STILL_BRIDGED;
    }

    @Describe("What errors do to the solid and its sphere.")
    public record SolidTolerance(
            @Describe(
                    "What they do to across flats, over one pair of opposite faces of the lowest kind. Where no lowest"
                            + " face has a parallel one opposite, it is twice one face distance, and so is its"
                            + " uncertainty.")
            ErrorBudget acrossFlats,

            @Describe(
                    "What they do to the diameter of the largest sphere without flats and with closed seams, where one"
                            + " face limits it.")
            ErrorBudget largestDiameter,

            @Describe(
                    "What they do to the thinnest wall of the chosen sphere, at one face. The panels' thickness counts"
                            + " only where a flat stays: beneath the sphere it is the inner faces that matter, and"
                            + " they stay where the saw's table held them.")
            ErrorBudget thinnestWall) {}

    @Describe("How exactly the saw has to be set: the largest setting errors, of either sign, whose gaps the glue still"
            + " bridges everywhere, without any scatter. They are rounded down, so that they can be set as they are"
            + " answered, and are no larger than a request may state: 30 degrees, and less than what leaves nothing of"
            + " what is cut.")
    public record SettingLimits(
            @Describe(value = "Largest setting error of the tip angle.", quantity = ANGLE, example = "0.0242", max = 30)
            double tipAngle,

            @Describe(
                    value = "Largest setting error of a mitre gauge that gives both legs: half of the tip angle's.",
                    quantity = ANGLE,
                    example = "0.0121",
                    max = 30)
            double mitreGauge,

            @Describe(
                    value = "Largest setting error of the bevel, and of the blade tilt.",
                    quantity = ANGLE,
                    example = "0.0991",
                    max = 30)
            double bevel,

            @Describe(
                    value = "Largest lean of the sawn legs from square.",
                    quantity = ANGLE,
                    example = "0.0954",
                    max = 30)
            double square) {}
}
