package org.orbwright.diagnosis;

import static java.util.Objects.requireNonNullElse;
import static org.orbwright.quantity.Quantity.ANGLE;
import static org.orbwright.quantity.Quantity.LENGTH;
import static org.orbwright.quantity.Quantity.NUMBER;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.orbwright.design.Copies;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Numbering;
import org.orbwright.tolerance.PanelSide;
import org.orbwright.tolerance.SeamSide;

@Describe("What was measured on test pieces and on the shell: any of the measurements, at least one. Each reading may"
        + " state its resolution.")
public record DiagnosisRequest(
        @Describe(value = "The gap of a test panel.", optional = true) @Valid
        PanelTestRequest panel,

        @Describe(value = "The gaps of a test pair or trio of panels.", optional = true) @Valid
        SeamTestRequest seam,

        @Describe(
                value = "Measures across flats, one for each pair of opposite faces that was measured. They say how"
                        + " large and how unequal the shell is and nothing of its centre.",
                optional = true)
        @Size(min = 1, max = 60)
        List<@NotNull @Valid FlatsReadingRequest> acrossFlats,

        @Describe(value = "Distances of faces from a point of reference.", optional = true) @Valid
        FaceDistancesRequest faceDistances,

        @Describe(value = "The blade tilt as an angle gauge reads it.", optional = true) @Valid
        TiltReadingRequest tilt,

        @Describe(value = "Settings that are dialled in, each with the trials that were made so far.", optional = true)
        @Size(min = 1, max = 20)
        List<@NotNull @Valid DialInRequest> dialIn) {

    public DiagnosisRequest {
        acrossFlats = Copies.of(acrossFlats);
        dialIn = Copies.of(dialIn);
    }

    /** Whether anything of it depends on the panel's thickness. */
    public boolean needsThickness() {
        return seam != null
                || tilt != null
                || (dialIn != null
                        && dialIn.stream().anyMatch(dial -> dial.setting().needsThickness()));
    }

    /** The same with everything filled in. */
    public DiagnosisRequest filled(LengthUnit unit) {
        double usual = unit.usual(0.1, 0.004);
        return new DiagnosisRequest(
                panel == null ? null : panel.filled(usual),
                seam == null ? null : seam.filled(usual),
                acrossFlats == null
                        ? null
                        : acrossFlats.stream().map(each -> each.filled(usual)).toList(),
                faceDistances == null ? null : faceDistances.filled(usual),
                tilt == null
                        ? null
                        : new TiltReadingRequest(tilt.face(), tilt.value(), requireNonNullElse(tilt.resolution(), 0.5)),
                dialIn == null
                        ? null
                        : dialIn.stream().map(each -> each.filled(unit)).toList());
    }

    @Describe("A length as it was read.")
    public record LengthReadingRequest(
            @Describe(
                    value = "The reading.",
                    quantity = LENGTH,
                    usual = {0.001, 1500},
                    example = "0.35")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double value,

            @Describe(
                    value = "Resolution of the reading: the step of the scale or of the feeler gauges. The standard"
                            + " uncertainty is this over the root of 12 (JCGM 100:2008). If left out 0.1 mm or 0.004"
                            + " in: a rough feeler gauge or a vernier read by eye (common practice, no source).",
                    quantity = LENGTH,
                    usual = {0.001, 2},
                    example = "0.05",
                    optional = true)
            @DecimalMin("0.000001")
            @DecimalMax("1000")
            Double resolution) {

        LengthReadingRequest filled(double usual) {
            return new LengthReadingRequest(value, requireNonNullElse(resolution, usual));
        }
    }

    @Describe("A test panel: all of its segments dry, closed but for one joint.")
    public record PanelTestRequest(
            @Describe(
                    value = "The face kind of the panel; may be left out for a solid that has only one.",
                    example = "\"triangle\"",
                    optional = true)
            @Size(max = 40)
            String face,

            @Describe("The gap at the open end of the joint.") @NotNull @Valid
            LengthReadingRequest gap,

            @Describe(value = "Where the joint is open.", example = "\"RIM\"") @NotNull
            PanelSide opensAt,

            @Describe(
                    value = "How far along the joint from its closed end the gap was measured; the whole joint if left"
                            + " out, from the tips to the corner of the rim.",
                    optional = true)
            @Valid
            LengthReadingRequest distance) {

        PanelTestRequest filled(double usual) {
            return new PanelTestRequest(
                    face, gap.filled(usual), opensAt, distance == null ? null : distance.filled(usual));
        }
    }

    @Describe("A test pair or trio of panels, bevelled and held together dry. A pair is a hinge: a template has to hold"
            + " it to the dihedral angle. It tells just the sum of two bevels, and half of that is taken for"
            + " each. A trio stands at a corner where just three faces meet, and is held by its own outlines."
            + " Its three gaps tell the bevel of each panel.")
    public record SeamTestRequest(
            @Describe(
                    value = "The face kinds of the two or three panels; may be left out for a solid that has only one.",
                    example = "[\"triangle\",\"triangle\"]",
                    optional = true)
            @Size(min = 2, max = 3)
            List<@NotNull @NotBlank @Size(max = 40) String> faces,

            @Describe(
                    "The gaps: one for a pair; for a trio three, between the first and the second panel, the second and"
                            + " the third, the third and the first.")
            @NotNull
            @Size(min = 1, max = 3)
            List<@NotNull @Valid SeamGapRequest> gaps,

            @Describe(
                    value = "How far along the seam from its closed end the gaps were measured; the whole length over"
                            + " which the panels touch if left out.",
                    optional = true)
            @Valid
            LengthReadingRequest distance) {

        public SeamTestRequest {
            faces = Copies.of(faces);
            gaps = Copies.of(gaps);
        }

        SeamTestRequest filled(double usual) {
            return new SeamTestRequest(
                    faces,
                    gaps.stream().map(gap -> gap.filled(usual)).toList(),
                    distance == null ? null : distance.filled(usual));
        }
    }

    @Describe("The gap of one seam as it was read.")
    public record SeamGapRequest(
            @Describe(
                    value = "The gap at the open end of the seam.",
                    quantity = LENGTH,
                    usual = {0.02, 5},
                    example = "0.2")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double value,

            @Describe(
                    value = "Resolution of the reading; 0.1 mm or 0.004 in if left out, as for every length.",
                    quantity = LENGTH,
                    usual = {0.001, 2},
                    example = "0.05",
                    optional = true)
            @DecimalMin("0.000001")
            @DecimalMax("1000")
            Double resolution,

            @Describe(value = "Where the seam is open.", example = "\"INSIDE\"") @NotNull
            SeamSide opensAt) {

        SeamGapRequest filled(double usual) {
            return new SeamGapRequest(value, requireNonNullElse(resolution, usual), opensAt);
        }
    }

    @Describe("What callipers read over a pair of opposite faces.")
    public record FlatsReadingRequest(
            @Describe(
                    value = "The face kind of the pair; may be left out for a solid that has only one.",
                    example = "\"triangle\"",
                    optional = true)
            @Size(max = 40)
            String face,

            @Describe(
                    value = "The measure across flats.",
                    quantity = LENGTH,
                    usual = {25, 1500},
                    example = "212.1")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double value,

            @Describe(
                    value = "Resolution of the reading; 0.1 mm or 0.004 in if left out, as for every length.",
                    quantity = LENGTH,
                    usual = {0.001, 2},
                    example = "0.05",
                    optional = true)
            @DecimalMin("0.000001")
            @DecimalMax("1000")
            Double resolution) {

        FlatsReadingRequest filled(double usual) {
            return new FlatsReadingRequest(face, value, requireNonNullElse(resolution, usual));
        }
    }

    @Describe("Distances of faces from one point of reference in the hollow, square to each face: the point where the"
            + " discs hold the shell now.")
    public record FaceDistancesRequest(
            @Describe(
                    value = "Number of the face that carries the first mounting disc, as the solid's catalogue page"
                            + " numbers the faces; 1 if left out.",
                    quantity = NUMBER,
                    example = "1",
                    optional = true)
            @Min(1)
            @Max(200)
            Integer discFace,

            @Describe("The faces that were measured.") @NotNull @Size(min = 4, max = 120)
            List<@NotNull @Valid FaceReadingRequest> faces) {

        public FaceDistancesRequest {
            faces = Copies.of(faces);
        }

        FaceDistancesRequest filled(double usual) {
            return new FaceDistancesRequest(
                    requireNonNullElse(discFace, Numbering.FIRST),
                    faces.stream().map(each -> each.filled(usual)).toList());
        }
    }

    @Describe("The distance of one face as it was read.")
    public record FaceReadingRequest(
            @Describe(
                    value = "Number of the face, as the solid's catalogue page numbers the faces.",
                    quantity = NUMBER,
                    example = "1")
            @NotNull
            @Min(1)
            @Max(200)
            Integer face,

            @Describe(
                    value = "Distance of the face from the point of reference, square to the face.",
                    quantity = LENGTH,
                    usual = {12, 800},
                    example = "106.05")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double value,

            @Describe(
                    value = "Resolution of the reading; 0.1 mm or 0.004 in if left out, as for every length.",
                    quantity = LENGTH,
                    usual = {0.001, 2},
                    example = "0.05",
                    optional = true)
            @DecimalMin("0.000001")
            @DecimalMax("1000")
            Double resolution) {

        FaceReadingRequest filled(double usual) {
            return new FaceReadingRequest(face, value, requireNonNullElse(resolution, usual));
        }
    }

    @Describe("The blade tilt as an angle gauge reads it, and its resolution.")
    public record TiltReadingRequest(
            @Describe(
                    value = "The face kind whose panels are bevelled; may be left out for a solid that has only one.",
                    example = "\"triangle\"",
                    optional = true)
            @Size(max = 40)
            String face,

            @Describe(value = "The blade's lean from upright.", quantity = ANGLE, example = "21.1")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("90")
            Double value,

            @Describe(
                    value =
                            "Resolution of the gauge; 0.5 if left out, the step of a plain protractor (common practice, no"
                                    + " source).",
                    quantity = ANGLE,
                    example = "0.1",
                    optional = true)
            @DecimalMin("0.000001")
            @DecimalMax("10")
            Double resolution) {}
}
