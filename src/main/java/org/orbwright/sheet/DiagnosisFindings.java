package org.orbwright.sheet;

import static org.orbwright.sheet.Finding.Severity.NOTE;
import static org.orbwright.sheet.Finding.Severity.WARN;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.diagnosis.AngleEstimate;
import org.orbwright.diagnosis.CentreDiagnosis;
import org.orbwright.diagnosis.Diagnosis;
import org.orbwright.diagnosis.Diagnosis.CorrectedBevel;
import org.orbwright.diagnosis.LengthEstimate;
import org.orbwright.quantity.Rounding;
import org.orbwright.sphere.SphereSizing.SphereLimit;

/** What measurements find wrong or nearly wrong. */
final class DiagnosisFindings {
    private static final int SHOWN_DECIMALS = 3;
    /** What answered diameters are rounded to, in millimetres. */
    private static final double EXACT = 2e-4;

    private final Design design;
    private final List<Finding> findings = new ArrayList<>();

    private DiagnosisFindings(Design design) {
        this.design = design;
    }

    static List<Finding> of(Design design, Diagnosis diagnosis) {
        DiagnosisFindings finder = new DiagnosisFindings(design);
        if (diagnosis.panel() != null) {
            finder.unclear("error of the tip angle", diagnosis.panel().tipAngleError(), "/panel");
        }
        if (diagnosis.seam() != null) {
            List<CorrectedBevel> panels = diagnosis.seam().panels();
            for (int i = 0; i < panels.size(); i++) {
                finder.unclear(
                        "error of the bevel of panel " + (i + 1), panels.get(i).bevelError(), "/seam");
            }
        }
        if (diagnosis.acrossFlats() != null) {
            finder.sphere(
                    "the measures across flats",
                    diagnosis.acrossFlats().largestDiameter(),
                    diagnosis.acrossFlats().largestLimitedBy(),
                    "/acrossFlats");
        }
        if (diagnosis.faceDistances() != null) {
            finder.centre(diagnosis.faceDistances());
        }
        if (diagnosis.tilt() != null) {
            finder.unclear(
                    "error of the bevel by the angle gauge", diagnosis.tilt().bevelError(), "/tilt");
        }
        return finder.findings;
    }

    private void centre(CentreDiagnosis centre) {
        sphere(
                "the distances of the faces from the best centre",
                centre.largestDiameter(),
                centre.largestLimitedBy(),
                "/faceDistances");
        if (centre.discs().shift().unclear()) {
            findings.add(new Finding(
                    FindingCode.BELOW_RESOLUTION,
                    NOTE,
                    "The shift of the discs of "
                            + design.say(centre.discs().shift().value())
                            + " is within its uncertainty of "
                            + design.say(centre.discs().shift().expanded()) + ": leave them where they are.",
                    "/faceDistances"));
        }
    }

    private void unclear(String what, AngleEstimate error, String field) {
        if (error.unclear()) {
            findings.add(new Finding(
                    FindingCode.BELOW_RESOLUTION,
                    NOTE,
                    "The " + what + ", " + degrees(error.value()) + ", is within its uncertainty of "
                            + degrees(error.expanded())
                            + " and cannot be told from 0: do not correct it before it is measured more finely.",
                    field));
        }
    }

    private void sphere(String measures, LengthEstimate largest, SphereLimit limit, String field) {
        double wanted = 2 * design.sphereRadius();
        boolean flats = limit == SphereLimit.FLATS;
        if (wanted > largest.value() + EXACT) {
            findings.add(new Finding(
                    FindingCode.SPHERE_BEYOND_SHELL,
                    WARN,
                    "By " + (flats ? measures : "its designed seams") + " the shell leaves room for a sphere of "
                            + design.sayAtMost(largest.value()) + ", less than the designed " + design.say(wanted)
                            + (flats ? ": a flat would stay." : ": the seams would be open."),
                    field));
        }
    }

    private static String degrees(double radians) {
        return Rounding.plain(Math.toDegrees(radians), SHOWN_DECIMALS) + " degrees";
    }
}
