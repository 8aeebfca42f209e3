package org.orbwright.diagnosis;

import static java.util.Objects.requireNonNullElse;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.orbwright.design.Copies;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;

@Describe("One setting of the saw with its trials so far: what the scale stood at, and what was read on the test piece."
        + " Angles are in degrees, lengths in the design's unit.")
public record DialInRequest(
        @Describe(value = "What is dialled in.", example = "\"TIP_ANGLE\"") @NotNull
        DialSetting setting,

        @Describe(
                value = "The face kind; may be left out for a solid that has only one.",
                example = "\"triangle\"",
                optional = true)
        @Size(max = 40)
        String face,

        @Describe(
                value = "For a reading of TIP_ANGLE or STOP the kind of segment, by letter within the face kind; may be"
                        + " left out where there is one.",
                example = "\"A\"",
                optional = true)
        @Size(max = 2)
        String segment,

        @Describe(
                value = "For a gap of BEVEL the face kind of the other panel; the same one if left out.",
                example = "\"triangle\"",
                optional = true)
        @Size(max = 40)
        String neighbour,

        @Describe(
                value = "The scale that the setting is read on; one of degrees, or of the design's unit, if left out.",
                optional = true)
        @Valid
        ScaleRequest scale,

        @Describe("The trials, the first one first.") @NotNull @Size(min = 1, max = 30)
        List<@NotNull @Valid TrialRequest> trials) {

    public DialInRequest {
        trials = Copies.of(trials);
    }

    /** The same with everything filled in that has a default. */
    DialInRequest filled(LengthUnit unit) {
        ScaleRequest filled = requireNonNullElse(scale, new ScaleRequest(null, null, null));
        return new DialInRequest(
                setting,
                face,
                segment,
                neighbour,
                filled.filled(setting.isAngle() ? 0.005 : unit.usual(0.02, 0.001)),
                trials.stream().map(trial -> trial.filled(setting, unit)).toList());
    }

    @Describe("The scale that a setting is read on. Its zero may be anywhere.")
    public record ScaleRequest(
            @Describe(
                    value = "How far the setting moves for one step of the scale: in degrees or in the design's unit;"
                            + " below 0 where it moves back as the scale goes up. 1 if left out: a scale of degrees or"
                            + " of the unit itself.",
                    example = "1",
                    optional = true)
            @DecimalMin("-1000")
            @DecimalMax("1000")
            Double perUnit,

            @Describe(
                    value = "Standard uncertainty of perUnit; a tenth of it if left out (common practice, no source)."
                            + " Trials at settings that lie apart tell it better.",
                    example = "0.1",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("1000")
            Double uncertainty,

            @Describe(
                    value = "How well the saw comes back to a setting and cuts as it did: a standard deviation, in"
                            + " degrees or in the design's unit. 0.005 degrees, 0.02 mm or 0.001 in if left out (common"
                            + " practice, no source).",
                    example = "0.005",
                    optional = true)
            @DecimalMin("0.000001")
            @DecimalMax("10")
            Double repeatability) {

        private ScaleRequest filled(double usual) {
            double each = requireNonNullElse(perUnit, 1.0);
            return new ScaleRequest(
                    each,
                    requireNonNullElse(uncertainty, Math.abs(each) / 10),
                    requireNonNullElse(repeatability, usual));
        }
    }

    @Describe(
            "Where a gap was open: RIM or TIPS of a test panel, INSIDE or OUTSIDE of a seam or of a flat panel's joint.")
    public enum OpenSide {
        RIM,
        TIPS,
        INSIDE,
        OUTSIDE
    }

    @Describe("One trial: the setting, and either the gap of a test piece or a reading of the thing itself.")
    public record TrialRequest(
            @Describe(value = "What the scale stood at.", example = "30.1")
            @NotNull
            @DecimalMin("-1000000000")
            @DecimalMax("1000000000")
            Double set,

            @Describe(
                    value = "The gap. TIP_ANGLE: the one open joint of a dry test panel. BEVEL: the seam of two"
                            + " panels held at the dihedral angle; both are taken to be off alike. BLADE_SQUARE: a joint of a panel that is pressed"
                            + " flat.",
                    example = "0.4",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("1000")
            Double gap,

            @Describe(
                    value = "Where it was open; may be left out for a gap of 0.",
                    example = "\"RIM\"",
                    optional = true)
            OpenSide opensAt,

            @Describe(
                    value = "How far from the closed end the gap was measured; the whole joint or seam if left out."
                            + " For BLADE_SQUARE the thickness of the test piece.",
                    example = "78",
                    optional = true)
            @DecimalMin("0.000001")
            @DecimalMax("100000")
            Double distance,

            @Describe(
                    value = "What was read instead of a gap. TIP_ANGLE: the tip angle of a segment. BEVEL: the blade"
                            + " tilt. STOP: the base of a segment. BLADE_SQUARE: the blade's lean from upright, above"
                            + " 0 the way that opens joints inside. BLANK_WIDTH: the width of the blank.",
                    example = "120.5",
                    optional = true)
            @DecimalMin("-1000")
            @DecimalMax("100000")
            Double reading,

            @Describe(
                    value = "Step of the gauge or the scale that the gap or the reading was read on, to the nearest."
                            + " If left out 0.1 mm or 0.004 in, for an angle 0.5 degrees, the step of a plain"
                            + " protractor (common practice, no source).",
                    example = "0.05",
                    optional = true)
            @DecimalMin("0.000001")
            @DecimalMax("10")
            Double resolution) {

        private TrialRequest filled(DialSetting setting, LengthUnit unit) {
            boolean angle = gap == null && setting.isAngle();
            return new TrialRequest(
                    set,
                    gap,
                    opensAt,
                    distance,
                    reading,
                    requireNonNullElse(resolution, angle ? 0.5 : unit.usual(0.1, 0.004)));
        }
    }
}
