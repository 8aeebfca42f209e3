package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.jig.JigPlan.BevelCut;
import org.orbwright.jig.JigPlan.JigFace;
import org.orbwright.jig.JigPlan.JigSegment;
import org.orbwright.jig.JigPlan.LegCut;
import org.orbwright.jig.JigPlan.UprightCut;
import org.orbwright.jig.JigPlan.WoodFace;
import org.orbwright.jig.TipCut.CutSide;
import org.orbwright.quantity.Rounding;

/**
 * The set-up at the saw for one cut, as a strip that fits across a sheet: the picture on the left, what its letters
 * mean on the right. Every number is the plan's own. It shows what fits, not what is safe.
 */
public final class SawSetUpDrawing {
    /** Width of the strip in millimetres: an A4 sheet less its margins. */
    static final double WIDTH = 180;

    static final double HEIGHT = 70;
    /** Height of the letters in millimetres, so that they are read at a bench. */
    static final double LETTERS = 3;
    /** Room for the picture. */
    static final Box ROOM = new Box(3, 8, 100, 60);

    static final String GUARDS =
            "Guards are left out, and of a hold-down only its place is shown. Use both as the machine's manual says.";

    private static final double TEXT = 104;

    private SawSetUpDrawing() {}

    /**
     * Draws the crosscut along one leg of a segment of a panel, or of the half of it with the segment's lamination. It
     * is seen from above by an operator who stands below the picture. The side is as seen from outside with the base
     * down.
     */
    public static Drawing leg(Design design, Panel panel, JigSegment segment, CutSide side) {
        design.require("the picture of a set-up depends", DesignPart.KERF);
        boolean left = side == CutSide.LEFT;
        LegCut cut = left ? segment.left() : segment.right();
        Piece piece = panel.pieces().stream()
                .filter(each -> each.segment().equals(segment.segment()) && !each.mirrored())
                .findFirst()
                .orElseThrow();
        String title = "Segment " + segment.segment() + " of the " + DrawnFace.name(panel) + ", "
                + (left ? "left" : "right") + " leg, from above";
        List<String> texts = new ArrayList<>();
        texts.add("A: mitre gauge " + angle(cut.mitre().angle()) + " from square.");
        texts.add("B: stop to blade, along the edge with the base: " + length(design, segment.stopDistance()) + ".");
        texts.add("C: a hold-down presses here, " + length(design, cut.holdDownFromStop()) + " from the stop and "
                + length(design, cut.holdDownFromBase()) + " from that edge.");
        String rest = panel.lamination().straight() ? "the rest of the blank" : "what is left of the stick";
        texts.add("D: blade, " + length(design, design.kerf()) + " kerf. Left of it: offcut side, " + rest + ".");
        texts.add(faceName(cut.faceUp(), "up") + " The base is against the gauge's fence.");
        if (panel.pieces().stream().anyMatch(each -> each.segment().equals(segment.segment()) && each.mirrored())) {
            texts.add("For its mirror image left and right change.");
        }
        List<Mark> marks = new LegSetUp(design, panel, piece, segment, cut, left).marks();
        return strip(title, texts, marks);
    }

    /** Draws the bevel cut of a panel that lies flat, seen along the blade from the operator's side. */
    public static Drawing bevel(Design design, JigFace face) {
        design.require("the picture of a set-up depends", DesignPart.KERF);
        BevelCut cut = face.bevel();
        List<String> texts = new ArrayList<>();
        texts.add("A: blade tilts " + angle(cut.tilt().angle()) + " from upright.");
        texts.add("B: inset, fence to where the blade comes out: " + length(design, cut.inset()) + ".");
        texts.add("C: highest tooth above the table: " + length(design, cut.bladeHeight()) + ".");
        texts.add(
                cut.land() > 0
                        ? "D: land left for the fence: " + length(design, cut.land()) + "."
                        : "D: no land, so the fence has only an edge to bear on.");
        texts.add(faceName(cut.faceDown(), "down on the table"));
        texts.add("A hold-down presses " + length(design, cut.holdDownFromRim()) + " from the fence.");
        UprightCut upright = cut.upright();
        if (upright != null) {
            texts.add("If the blade does not tilt so far: panel upright, tilt "
                    + angle(upright.tilt().angle()) + ".");
        }
        return strip(
                "Bevel of the " + face.face() + ", seen along the blade", texts, new BevelSetUp(design, cut).marks());
    }

    private static Drawing strip(String title, List<String> texts, List<Mark> picture) {
        List<Mark> marks = new ArrayList<>(picture);
        marks.addAll(Callout.text(ROOM.left(), 1, 1.2 * LETTERS, Anchor.START, List.of(title)));
        List<String> lines = texts.stream()
                .flatMap(text -> Lettering.wrap(text, WIDTH - TEXT - 2, LETTERS).stream())
                .toList();
        marks.addAll(Callout.text(TEXT, ROOM.top() - 4, LETTERS, Anchor.START, lines));
        List<String> guards = Lettering.wrap(GUARDS, WIDTH - 2 * ROOM.left(), LETTERS);
        double top = HEIGHT - 1 - Callout.textHeight(guards.size(), LETTERS);
        marks.addAll(Callout.text(ROOM.left(), top, LETTERS, Anchor.START, guards));
        String description = title + ", the set-up at the saw. " + String.join(" ", texts) + " " + GUARDS;
        return new Drawing(title, description, WIDTH, HEIGHT, List.of(), marks);
    }

    private static String angle(double radians) {
        return Rounding.plain(Math.toDegrees(radians), 2) + " degrees";
    }

    private static String length(Design design, double length) {
        return Lettering.length(design.unit(), length);
    }

    private static String faceName(WoodFace face, String where) {
        return (face == WoodFace.OUTER ? "Outer" : "Inner") + " face " + where + ".";
    }
}
