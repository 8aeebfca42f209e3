package org.orbwright.diagnosis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.diagnosis.Diagnosis.FaceBevel;
import org.orbwright.diagnosis.Diagnosis.PanelBevel;
import org.orbwright.diagnosis.Diagnosis.SeamDiagnosis;
import org.orbwright.diagnosis.DiagnosisRequest.SeamGapRequest;
import org.orbwright.diagnosis.DiagnosisRequest.SeamTestRequest;
import org.orbwright.notice.Article;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;
import org.orbwright.tolerance.JointLengths;
import org.orbwright.tolerance.SeamSide;

/** From the gaps of a test pair or trio to the bevels of its panels. */
final class SeamTest {
    private static final String POINTER = "/diagnosis/seam";
    private static final int TRIO = 3;

    private final Design design;
    private final SeamTestRequest request;
    private final Checks checks;
    private final List<Panel> panels = new ArrayList<>();

    private SeamTest(SeamTestRequest request, Design design, Checks checks) {
        this.request = request;
        this.design = design;
        this.checks = checks;
    }

    /** What the test says, or null if it breaks a rule, which is noted. */
    static SeamDiagnosis of(SeamTestRequest request, Design design, Checks checks) {
        SeamTest test = new SeamTest(request, design, checks);
        return test.readPanels() && test.areNeighbours() ? test.diagnosis() : null;
    }

    private boolean readPanels() {
        int gaps = request.gaps().size();
        int named =
                request.faces() == null ? Math.max(2, gaps) : request.faces().size();
        for (int i = 0; i < named; i++) {
            Panel panel = request.faces() == null
                    ? checks.panel(null, POINTER + "/faces")
                    : checks.panel(request.faces().get(i), POINTER + "/faces/" + i);
            if (panel == null) {
                return false;
            }
            panels.add(panel);
        }
        if (gaps != (named == TRIO ? TRIO : 1)) {
            checks.refuse(
                    POINTER + "/gaps",
                    "WRONG_NUMBER_OF_GAPS",
                    "Two panels have one seam and three have three, but there are " + gaps + " gaps.",
                    Integer.toString(gaps),
                    "1 gap for a pair, 3 gaps for a trio");
            return false;
        }
        return true;
    }

    private boolean areNeighbours() {
        if (panels.size() == TRIO) {
            return isTrio();
        }
        String one = panels.get(0).face();
        String other = panels.get(1).face();
        boolean meet = design.solid().edgeKinds().stream()
                .anyMatch(edge -> (edge.face().equals(one) && edge.neighbour().equals(other))
                        || (edge.face().equals(other) && edge.neighbour().equals(one)));
        if (!meet) {
            checks.refuse(
                    POINTER + "/faces",
                    "NOT_NEIGHBOURS",
                    "No " + one + " meets " + Article.with(other) + " on this solid.",
                    one + ", " + other,
                    "two face kinds that share an edge");
        }
        return meet;
    }

    /** Outlines hold a trio only at a corner of three faces. */
    private boolean isTrio() {
        List<String> wanted = new ArrayList<>(panels.stream().map(Panel::face).toList());
        Collections.sort(wanted);
        Solid solid = design.solid();
        for (int vertex = 0; vertex < solid.vertices().size(); vertex++) {
            int corner = vertex;
            List<String> around = solid.faces().stream()
                    .filter(face -> face.vertices().contains(corner))
                    .map(Face::kind)
                    .sorted()
                    .toList();
            if (around.equals(wanted)) {
                return true;
            }
        }
        checks.refuse(
                POINTER + "/faces",
                "NO_SUCH_CORNER",
                "At no corner of this solid just these three panels meet, so their outlines do not hold them at the"
                        + " right angles.",
                String.join(", ", wanted),
                "the three panels of a corner where three faces meet, or a pair that is held by a template");
        return false;
    }

    private SeamDiagnosis diagnosis() {
        List<OpenAngle> sums = new ArrayList<>();
        for (int i = 0; i < request.gaps().size(); i++) {
            SeamGapRequest asked = request.gaps().get(i);
            double lever = JointLengths.seam(design, panels.get(i), panels.get((i + 1) % panels.size()));
            Reading gap = checks.length(asked.value(), asked.resolution());
            Reading distance = checks.distance(request.distance(), lever, POINTER + "/distance");
            if (checks.fits(gap, distance, POINTER + "/gaps/" + i + "/value")) {
                sums.add(OpenAngle.of(gap, distance).times(asked.opensAt() == SeamSide.INSIDE ? -1 : 1));
            }
        }
        if (!checks.broken().isEmpty()) {
            return null;
        }
        List<PanelBevel> bevels = new ArrayList<>();
        for (int i = 0; i < panels.size(); i++) {
            AngleEstimate error = combined(sums, share(i)).estimate();
            bevels.add(new PanelBevel(panels.get(i).face(), error));
        }
        List<FaceBevel> faces = panels.stream()
                .map(Panel::face)
                .distinct()
                .map(face -> face(face, sums, bevels))
                .toList();
        return new SeamDiagnosis(sums.stream().map(OpenAngle::estimate).toList(), bevels, faces);
    }

    /** A panel's part of the gaps: half of a pair's; in a trio half of what its two seams have more than the third. */
    private double[] share(int panel) {
        if (panels.size() < TRIO) {
            return new double[] {0.5};
        }
        double[] share = {0.5, 0.5, 0.5};
        share[(panel + 1) % TRIO] = -0.5;
        return share;
    }

    private static OpenAngle combined(List<OpenAngle> sums, double[] factors) {
        OpenAngle combined = sums.get(0).times(factors[0]);
        for (int i = 1; i < factors.length; i++) {
            combined = combined.plus(sums.get(i).times(factors[i]));
        }
        return combined;
    }

    /** The bevel of one face kind: the mean of its panels, and how far they lie apart. */
    private FaceBevel face(String face, List<OpenAngle> sums, List<PanelBevel> bevels) {
        double[] mean = new double[sums.size()];
        int count = 0;
        // The first of the highest and the last of the lowest: two panels, though all may be alike.
        int highest = -1;
        int lowest = -1;
        for (int i = 0; i < panels.size(); i++) {
            if (panels.get(i).face().equals(face)) {
                count++;
                mean = LinearCentre.sum(mean, share(i), 1);
                double error = bevels.get(i).bevelError().value();
                highest =
                        highest < 0 || error > bevels.get(highest).bevelError().value() ? i : highest;
                lowest = lowest < 0 || error <= bevels.get(lowest).bevelError().value() ? i : lowest;
            }
        }
        AngleEstimate error =
                combined(sums, LinearCentre.scaled(mean, 1.0 / count)).estimate();
        AngleEstimate apart = combined(sums, LinearCentre.sum(share(highest), share(lowest), -1))
                .estimate();
        boolean told = panels.size() == TRIO && count > 1;
        return new FaceBevel(face, count, error, told ? apart : null);
    }
}
