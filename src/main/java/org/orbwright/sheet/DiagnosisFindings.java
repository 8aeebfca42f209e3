package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.diagnosis.AngleEstimate;
import org.orbwright.diagnosis.CentreDiagnosis;
import org.orbwright.diagnosis.CentreDiagnosis.Roomiest;
import org.orbwright.diagnosis.ComparedMeasures;
import org.orbwright.diagnosis.Comparison;
import org.orbwright.diagnosis.Diagnosis;
import org.orbwright.diagnosis.Diagnosis.FaceBevel;
import org.orbwright.diagnosis.Diagnosis.FlatsDiagnosis;
import org.orbwright.diagnosis.Diagnosis.TiltDiagnosis;
import org.orbwright.diagnosis.LengthEstimate;
import org.orbwright.quantity.Rounding;
import org.orbwright.sphere.SphereSizing.SphereLimit;

/** What measurements find wrong or nearly wrong. */
final class DiagnosisFindings {
    private static final int SHOWN_DECIMALS = 3;
    /** What answered diameters are rounded to, in millimetres. */
    static final double EXACT = 2e-4;

    private final Design design;
    private final List<Finding> findings = new ArrayList<>();

    private DiagnosisFindings(Design design) {
        this.design = design;
    }

    static List<Finding> of(Design design, Diagnosis diagnosis) {
        DiagnosisFindings finder = new DiagnosisFindings(design);
        if (diagnosis.panel() != null) {
            finder.unclear("error of the tip angle", diagnosis.panel().tipAngleError(), "/diagnosis/panel");
        }
        if (diagnosis.seam() != null) {
            for (FaceBevel face : diagnosis.seam().faces()) {
                finder.unclear(
                        "mean error of the bevel of the " + face.face() + " panels",
                        face.bevelError(),
                        "/diagnosis/seam");
            }
        }
        if (diagnosis.acrossFlats() != null) {
            finder.flats(diagnosis.acrossFlats());
        }
        if (diagnosis.faceDistances() != null) {
            finder.centre(diagnosis.faceDistances());
        }
        if (diagnosis.tilt() != null) {
            finder.tilt(diagnosis.tilt());
        }
        if (diagnosis.dialIn() != null) {
            finder.findings.addAll(DialInFindings.of(design, diagnosis.dialIn()));
        }
        if (diagnosis.comparisons() != null) {
            diagnosis.comparisons().stream()
                    .filter(comparison -> !comparison.agree())
                    .forEach(finder::disagreement);
        }
        return finder.findings;
    }

    private void flats(FlatsDiagnosis flats) {
        sphere(
                "the measures across flats",
                flats.largestDiameter(),
                flats.largestLimitedBy(),
                "/diagnosis/acrossFlats");
        missing(flats.pairs() - flats.measured(), "pairs of faces", "/diagnosis/acrossFlats");
    }

    private void centre(CentreDiagnosis centre) {
        String field = "/diagnosis/faceDistances";
        Roomiest roomiest = centre.roomiest();
        if (roomiest == null) {
            sphere(
                    "the distances of the faces from the best centre",
                    centre.largestDiameter(),
                    centre.largestLimitedBy(),
                    field);
        } else {
            sphere(
                    "the distances of the faces from the centre that leaves most room",
                    roomiest.largestDiameter(),
                    roomiest.largestLimitedBy(),
                    field);
        }
        missing(centre.faces() - centre.measured(), "faces", field);
        LengthEstimate shift = centre.discs().shift();
        if (shift.unclear()) {
            findings.add(FindingCode.BELOW_RESOLUTION.note(
                    "The shift of the discs of " + design.unit().sayApart(shift.value(), shift.expanded())
                            + " is within its uncertainty of "
                            + design.unit().sayApart(shift.expanded(), shift.value()) + ": leave them where they are.",
                    field));
        }
    }

    private void missing(int count, String what, String field) {
        if (count > 0) {
            findings.add(FindingCode.FACES_NOT_MEASURED.note(
                    count + " " + what + " of the solid were not measured, and may limit the largest sphere further.",
                    field));
        }
    }

    private void unclear(String what, AngleEstimate error, String field) {
        if (error.unclear()) {
            unclear(what, error, "its uncertainty of " + degrees(error.expanded(), Math.abs(error.value())), field);
        }
    }

    private void unclear(String what, AngleEstimate error, String limit, String field) {
        findings.add(FindingCode.BELOW_RESOLUTION.note(
                "The " + what + ", " + degrees(error.value(), Math.signum(error.value()) * error.expanded())
                        + ", is within " + limit
                        + " and cannot be told from 0: do not correct it before it is measured more finely.",
                field));
    }

    /** One reading has bounds, which are narrower than twice its standard uncertainty. */
    private void tilt(TiltDiagnosis tilt) {
        if (tilt.unclear()) {
            unclear(
                    "error of the bevel by the angle gauge",
                    tilt.bevelError(),
                    "half of the gauge's resolution",
                    "/diagnosis/tilt");
        }
    }

    private void disagreement(Comparison comparison) {
        String apart = comparison.angle() == null
                ? design.unit()
                                .sayApart(
                                        Math.abs(comparison.length().value()),
                                        comparison.length().expanded())
                        + ". Their uncertainty is only "
                        + design.unit()
                                .sayApart(
                                        comparison.length().expanded(),
                                        Math.abs(comparison.length().value()))
                : degrees(
                                Math.abs(comparison.angle().value()),
                                comparison.angle().expanded())
                        + ". Their uncertainty is only "
                        + degrees(
                                comparison.angle().expanded(),
                                Math.abs(comparison.angle().value()));
        String said = switch (comparison.measures()) {
            case TILT_AND_SEAM ->
                "The bevel by the angle gauge and by the gaps of the test seams differ by " + apart
                        + ". Gauge, template or clamping is off, or the blade moved.";
            case PANELS_OF_TRIO ->
                "The bevels of the trio's " + comparison.face() + " panels differ by " + apart
                        + ". They were not cut alike, or a gap was misread. One setting corrects only their mean.";
            case SMALLEST_FLATS, LARGEST_FLATS ->
                "The "
                        + (comparison.measures() == ComparedMeasures.SMALLEST_FLATS ? "smallest" : "largest")
                        + " measure across the " + comparison.face()
                        + " faces and the distances of two opposite ones together differ by " + apart
                        + ". Measure again.";
        };
        String field = comparison.length() == null ? "/diagnosis/seam" : "/diagnosis/acrossFlats";
        findings.add(FindingCode.MEASURES_DISAGREE.warn(said, field));
    }

    private void sphere(String measures, LengthEstimate largest, SphereLimit limit, String field) {
        double wanted = 2 * design.sphereRadius();
        boolean flats = limit == SphereLimit.FLATS;
        if (wanted > largest.value() + EXACT) {
            findings.add(FindingCode.SPHERE_BEYOND_SHELL.warn(
                    "By " + (flats ? measures : "its designed seams") + " the shell leaves room for a sphere of "
                            + design.sayAtMost(largest.value()) + ", less than the designed "
                            + design.unit().sayApart(wanted, largest.value())
                            + (flats ? ": a flat would stay." : ": the seams would be open."),
                    field));
        }
    }

    /** An angle beside another one, as finely as it takes to tell them apart. */
    private static String degrees(double radians, double other) {
        double angle = Math.toDegrees(radians);
        int decimals = Rounding.decimalsApart(angle, Math.toDegrees(other), SHOWN_DECIMALS);
        return Rounding.plain(angle, decimals) + " degrees";
    }
}
