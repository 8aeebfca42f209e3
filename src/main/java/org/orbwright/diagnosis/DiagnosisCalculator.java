package org.orbwright.diagnosis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.diagnosis.Diagnosis.FlatsDiagnosis;
import org.orbwright.diagnosis.Diagnosis.PanelDiagnosis;
import org.orbwright.diagnosis.Diagnosis.SeamDiagnosis;
import org.orbwright.diagnosis.Diagnosis.TiltDiagnosis;
import org.orbwright.diagnosis.DiagnosisRequest.FlatsReadingRequest;
import org.orbwright.diagnosis.DiagnosisRequest.PanelTestRequest;
import org.orbwright.diagnosis.DiagnosisRequest.TiltReadingRequest;
import org.orbwright.solid.FaceKind;
import org.orbwright.tolerance.JointLengths;
import org.orbwright.tolerance.PanelSide;

/**
 * From measurements back to errors; the geometry is that of {@link org.orbwright.tolerance.ToleranceCalculator}, with
 * exact angles. What can be inferred from what:
 *
 * <ul>
 *   <li>The gap of a panel tells the sum of its tip angles. That all are off alike is assumed; which segment is off
 *       cannot be told.
 *   <li>The gap of a pair of panels that a template holds to the dihedral angle tells the sum of two bevels, half of
 *       which is taken for each. Three gaps of a trio, at a corner of three faces, tell the bevel of each panel, if its
 *       two edges are bevelled alike.
 *   <li>Measures across flats tell how large and how unequal a shell is, and nothing of its centre.
 *   <li>Distances of faces from one point tell the centre too.
 *   <li>An angle gauge tells the bevel to within its resolution, and so an interval for the gap.
 *   <li>Trials at several settings tell where a scale has its zero, and how far a step of it moves the setting.
 * </ul>
 *
 * <p>A reading of the resolution r has the standard uncertainty r / sqrt(12) (JCGM 100:2008, F.2.2.1, the clause from
 * memory); what follows from readings is propagated linearly. Only resolution counts: what the wood, the clamps and the
 * hand add is not known here. Only what is dialled in counts how well the saw comes back to a setting.
 */
public final class DiagnosisCalculator {
    private final DiagnosisRequest request;
    private final Design design;
    private final double glueBridges;
    private final Checks checks;

    private DiagnosisCalculator(DiagnosisRequest request, Design design, double glueBridges) {
        this.request = request;
        this.design = design;
        this.glueBridges = glueBridges;
        this.checks = new Checks(design);
    }

    /**
     * What the measurements of a request say.
     *
     * @param request a request that keeps its Bean Validation constraints
     * @param design the request's design
     * @param glueBridges largest gap that the glue bridges, in millimetres
     * @throws ImpossibleDesignException if there is no measurement, or one that cannot be
     */
    public static Diagnosis calculate(DiagnosisRequest request, Design design, double glueBridges) {
        return new DiagnosisCalculator(request.filled(design.unit()), design, glueBridges).diagnosis();
    }

    private Diagnosis diagnosis() {
        boolean empty = request.panel() == null
                && request.seam() == null
                && request.acrossFlats() == null
                && request.faceDistances() == null
                && request.tilt() == null
                && request.dialIn() == null;
        if (empty) {
            checks.refuse(
                    "/diagnosis",
                    "NOTHING_MEASURED",
                    "There is no measurement to infer anything from.",
                    null,
                    "at least one of panel, seam, acrossFlats, faceDistances, tilt, dialIn");
        }
        PanelDiagnosis panel = request.panel() == null ? null : panel(request.panel());
        SeamDiagnosis seam = request.seam() == null ? null : SeamTest.of(request.seam(), design, checks);
        FlatsDiagnosis flats = request.acrossFlats() == null ? null : flats(request.acrossFlats());
        CentreDiagnosis centre =
                request.faceDistances() == null ? null : CentreFit.of(request.faceDistances(), design, checks);
        TiltDiagnosis tilt = request.tilt() == null ? null : tilt(request.tilt());
        List<DialIn> dialIn = request.dialIn() == null ? null : dialIn(request.dialIn());
        if (!checks.broken().isEmpty()) {
            throw new ImpossibleDesignException(checks.broken());
        }
        return new Diagnosis(
                panel, seam, flats, centre, tilt, dialIn, Comparisons.of(request, design, checks, seam, tilt));
    }

    private List<DialIn> dialIn(List<DialInRequest> asked) {
        List<DialIn> dialled = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            DialIn dial = DialInCalculator.of(asked.get(i), design, glueBridges, checks, "/diagnosis/dialIn/" + i);
            if (dial != null) {
                dialled.add(dial);
            }
        }
        return dialled;
    }

    private PanelDiagnosis panel(PanelTestRequest asked) {
        Panel panel = checks.panel(asked.face(), "/diagnosis/panel/face");
        if (panel == null) {
            return null;
        }
        Reading gap = checks.length(asked.gap());
        Reading distance =
                checks.distance(asked.distance(), JointLengths.joint(design, panel), "/diagnosis/panel/distance");
        if (!checks.fits(gap, distance, "/diagnosis/panel/gap/value")) {
            return null;
        }
        OpenAngle sum = OpenAngle.of(gap, distance).times(asked.opensAt() == PanelSide.RIM ? -1 : 1);
        return new PanelDiagnosis(
                panel.face(),
                sum.estimate(),
                sum.times(1.0 / panel.kind().sides()).estimate(),
                sum.times(-0.5 / panel.kind().sides()).estimate());
    }

    private FlatsDiagnosis flats(List<FlatsReadingRequest> asked) {
        List<Reading> measured = new ArrayList<>();
        List<Double> designed = new ArrayList<>();
        Map<String, Integer> counts = new HashMap<>();
        for (int i = 0; i < asked.size(); i++) {
            String pointer = "/diagnosis/acrossFlats/" + i;
            Panel panel = checks.panel(asked.get(i).face(), pointer + "/face");
            if (panel != null && isPair(panel, counts.merge(panel.face(), 1, Integer::sum), pointer)) {
                Reading flats = checks.length(asked.get(i).value(), asked.get(i).resolution());
                checks.near(flats, 2 * panel.faceDistance(), pointer + "/value");
                checks.fine(asked.get(i).value(), asked.get(i).resolution(), pointer);
                measured.add(flats);
                designed.add(2 * panel.faceDistance());
            }
        }
        return measured.size() < asked.size() ? null : FlatsFit.of(design, measured, designed);
    }

    private boolean isPair(Panel panel, int count, String pointer) {
        FaceKind kind = panel.kind();
        int pairs = kind.opposite() ? kind.count() / 2 : 0;
        if (count <= pairs) {
            return true;
        }
        checks.refuse(
                pointer,
                kind.opposite() ? "TOO_MANY_PAIRS" : "NO_OPPOSITE_FACES",
                kind.opposite()
                        ? "The solid has no more than " + pairs + " pairs of " + kind.face() + " faces."
                        : "No " + kind.face() + " has a parallel one opposite, so callipers have nothing to read.",
                kind.face(),
                kind.opposite() ? "at most " + pairs + " pairs" : "a face kind with parallel faces, or faceDistances");
        return false;
    }

    private TiltDiagnosis tilt(TiltReadingRequest asked) {
        Panel panel = checks.panel(asked.face(), "/diagnosis/tilt/face");
        if (panel == null) {
            return null;
        }
        checks.nearTilt(asked.value(), Math.PI / 2 - panel.bevel(), "/diagnosis/tilt/value");
        checks.fine(asked.value(), asked.resolution(), "/diagnosis/tilt");
        Reading tilt = Reading.of(Math.toRadians(asked.value()), Math.toRadians(asked.resolution()));
        double error = Math.PI / 2 - panel.bevel() - tilt.value();
        double reach = Math.toRadians(asked.resolution()) / 2;
        double lever = JointLengths.seamFace(design, panel);
        double least = opening(error + reach, lever);
        double most = opening(error - reach, lever);
        return new TiltDiagnosis(
                panel.face(),
                AngleEstimate.of(error, tilt.uncertainty()),
                LengthEstimate.of(opening(error, lever), 2 * lever * Math.cos(error) * tilt.uncertainty()),
                least,
                most,
                Math.max(Math.abs(least), Math.abs(most)));
    }

    /** Opening of a seam whose two bevels are off by an error each; above 0 inside. */
    private static double opening(double error, double lever) {
        double bounded = Math.max(-Math.PI / 2, Math.min(Math.PI / 2, error));
        return -2 * lever * Math.sin(bounded);
    }
}
