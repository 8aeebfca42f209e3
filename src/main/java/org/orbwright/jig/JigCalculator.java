package org.orbwright.jig;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.Panel;
import org.orbwright.jig.JigPlan.BevelCut;
import org.orbwright.jig.JigPlan.ClosingTest;
import org.orbwright.jig.JigPlan.JigFace;
import org.orbwright.jig.JigPlan.JigSegment;
import org.orbwright.jig.JigPlan.LegCut;
import org.orbwright.jig.JigPlan.UprightCut;
import org.orbwright.jig.JigPlan.WoodFace;
import org.orbwright.segment.AngleCalculator;
import org.orbwright.segment.SawAngles.FaceAngles;
import org.orbwright.segment.SawAngles.SegmentAngles;
import org.orbwright.solid.SegmentKind;

/** Sets up the saw for the segments and the panels of a design. */
public final class JigCalculator {
    /** How far the blades of most saws tilt. Common practice, no source. */
    public static final double STEEPEST_TILT = Math.toRadians(45);
    /** A tilt that is exactly the steepest can be set; in radians. */
    private static final double EXACT = 1e-9;

    private final Design design;
    private final double sineBar;
    private final double run;

    private JigCalculator(JigRequest request, Design design) {
        this.design = design;
        this.sineBar = design.unit().toMillimetres(request.sineBar());
        this.run = design.unit().toMillimetres(request.run());
    }

    /**
     * Plans the set-ups of a request.
     *
     * @param request a request that keeps its Bean Validation constraints
     * @param design the request's design
     */
    public static JigPlan plan(JigRequest request, Design design) {
        design.require("the set-ups of the saw depend", DesignPart.THICKNESS);
        return new JigCalculator(request.filled(design.unit()), design).plan();
    }

    private JigPlan plan() {
        List<FaceAngles> angles = AngleCalculator.calculate(design).faces();
        List<Panel> panels = design.facePanels();
        List<JigFace> faces = new ArrayList<>();
        for (int i = 0; i < panels.size(); i++) {
            faces.add(face(panels.get(i), angles.get(i)));
        }
        return new JigPlan(sineBar, run, JigSetting.STACK_ERROR, JigSetting.TRIAL_ERROR, faces);
    }

    private JigFace face(Panel panel, FaceAngles angles) {
        List<JigSegment> segments = new ArrayList<>();
        for (int i = 0; i < angles.segments().size(); i++) {
            segments.add(
                    segment(panel.kind().segments().get(i), angles.segments().get(i)));
        }
        return new JigFace(
                panel.face(), angles.sides(), segments, closing(panel, angles.sides()), bevel(panel, angles));
    }

    /** With its left leg cut first, a segment has its right corner at the stop, and its left corner afterwards. */
    private JigSegment segment(SegmentKind kind, SegmentAngles angles) {
        double left = kind.baseLeft() * design.edge();
        double right = kind.baseRight() * design.edge();
        double base = left + right;
        double centroidHeight = kind.baseDistance() * design.edge() / 3;
        return new JigSegment(
                angles.segment(),
                base,
                TipAngle.of(angles.tipAngle(), sineBar, run),
                new LegCut(mitre(angles.mitreGaugeLeft()), WoodFace.OUTER, (base + right) / 3, centroidHeight),
                new LegCut(mitre(angles.mitreGaugeRight()), WoodFace.INNER, (base + left) / 3, centroidHeight),
                TipCut.of(angles.mitreGaugeLeft(), angles.mitreGaugeRight()));
    }

    private static ClosingTest closing(Panel panel, int sides) {
        double g = panel.jointDistance();
        double longestLeg = Math.sqrt((panel.cornerRadius() - g) * (panel.cornerRadius() + g));
        double gapAngle = 2 * sides * JigSetting.TRIAL_ERROR;
        return new ClosingTest(2 * sides, gapAngle, 2 * longestLeg * Math.sin(gapAngle / 2));
    }

    private BevelCut bevel(Panel panel, FaceAngles angles) {
        double below = design.thickness() - design.land();
        double sideways = panel.baseDistance() / panel.jointDistance();
        return new BevelCut(
                tilt(angles.bladeTilt()),
                WoodFace.INNER,
                below,
                below * panel.seamRadius() / panel.jointDistance(),
                design.land(),
                below * sideways,
                design.thickness() * sideways,
                design.land() * sideways,
                panel.baseDistance(),
                angles.bladeTilt() > STEEPEST_TILT + EXACT ? upright(angles, below * sideways) : null);
    }

    /** With the panel upright the blade runs along the same seam, at the complement from upright. */
    private UprightCut upright(FaceAngles angles, double inset) {
        return new UprightCut(tilt(Math.PI / 2 - angles.bladeTilt()), WoodFace.OUTER, design.land(), inset);
    }

    private JigSetting mitre(double angle) {
        return JigSetting.ofMitre(angle, sineBar, run);
    }

    private JigSetting tilt(double angle) {
        return JigSetting.ofTilt(angle, sineBar, run);
    }
}
