package org.orbwright.segment;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.segment.SegmentPlan.FaceSegments;
import org.orbwright.segment.SegmentPlan.SegmentCut;

/** The segments of a design, and where they lie along a blank. */
public final class SegmentCalculator {
    private SegmentCalculator() {}

    /** Lists every kind of segment with its measures, counts and cuts. */
    public static SegmentPlan calculate(Design design) {
        List<FaceSegments> faces = new ArrayList<>();
        int perSphere = 0;
        int total = 0;
        for (Panel panel : design.panels()) {
            List<SegmentCut> cuts = new ArrayList<>();
            for (Piece piece : panel.sawn()) {
                cuts.add(cut(design, panel, piece));
                perSphere += piece.perSphere();
            }
            total += cuts.stream().mapToInt(SegmentCut::total).sum();
            faces.add(face(design, panel, cuts));
        }
        return new SegmentPlan(faces, perSphere, total);
    }

    /** How one piece of a panel is laid out along a blank. */
    static BlankLayout layout(Design design, Panel panel, Piece piece) {
        return panel.lamination().straight()
                ? new AlternatingLayout(design, piece)
                : new StickLayout(design, panel.lamination(), piece);
    }

    private static FaceSegments face(Design design, Panel panel, List<SegmentCut> cuts) {
        boolean straight = panel.lamination().straight();
        return new FaceSegments(
                panel.face(),
                panel.places(),
                panel.kind().count(),
                panel.kind().count() * design.copies(),
                panel.baseDistance(),
                panel.blankWidth(),
                straight ? SegmentPlan.Layout.ALONG_BLANK : SegmentPlan.Layout.STICKS,
                cuts);
    }

    private static SegmentCut cut(Design design, Panel panel, Piece piece) {
        boolean laidOut = design.has(DesignPart.KERF) && design.has(DesignPart.BLANK_LENGTH);
        BlankLayout layout = laidOut ? layout(design, panel, piece) : null;
        return new SegmentCut(
                piece.segment(),
                piece.mirrored(),
                piece.baseLength(),
                piece.left(),
                piece.right(),
                Math.hypot(piece.base(), piece.left()),
                Math.hypot(piece.base(), piece.right()),
                piece.baseLength(),
                piece.area(),
                piece.perSphere(),
                piece.turnedPerSphere(),
                SegmentCount.of(design, panel, piece).total(),
                layout == null ? null : Integer.valueOf(layout.perBlank()),
                layout == null ? null : Double.valueOf(layout.lengthUsed()),
                layout == null ? null : Double.valueOf(design.blankLength() - layout.lengthUsed()),
                layout == null ? null : Double.valueOf(layout.shortestBlank()),
                layout == null ? null : layout.cuts());
    }
}
