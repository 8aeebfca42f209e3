package org.orbwright.drawing;

import static org.orbwright.drawing.TemplateSheet.LETTERS;
import static org.orbwright.drawing.TemplateSheet.MARGIN;

import java.util.List;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.drawing.SegmentPatches.Patch;

/**
 * A segment at true size with its glue lines, base down, seen from outside. Where bands run parallel to the base the
 * distance of each glue line from the base stands at its left end.
 */
public final class SegmentTemplate {
    /** Letters as a share of the band that they stand in. */
    private static final double LETTERS_PER_BAND = 0.8;
    /** Thinner bands have no letters: they would hide the lines. In millimetres. */
    private static final double THINNEST_LETTERED = 2.4;

    private SegmentTemplate() {}

    /** The template of a segment from a set; the panel may be the half with the segment's lamination. */
    public static Drawing draw(Design design, Panel panel, Piece piece, BandSet set) {
        TemplateSheet sheet = new TemplateSheet();
        Point tip = new Point(MARGIN + piece.left(), MARGIN);
        double base = MARGIN + piece.base();
        double right = MARGIN + piece.baseLength();
        sheet.outline(List.of(tip, new Point(MARGIN, base), new Point(right, base)));
        SegmentPatches patches = SegmentPatches.used(panel, piece, set);
        boolean parallel = panel.lamination().straight();
        for (Patch patch : patches.flat()) {
            band(sheet, tip, patch);
            if (parallel && !patch.layer().innermost()) {
                distance(design, sheet, piece, patch.layer().inner().offset());
            }
        }
        sheet.line(Callout.line(tip.x(), base - LETTERS, tip.x(), base), Pen.THIN);
        sheet.label(tip.x(), tip.y() - LETTERS, Anchor.MIDDLE, "tip");
        sheet.label(
                (MARGIN + right) / 2,
                base + 2 * LETTERS,
                Anchor.MIDDLE,
                "base " + design.say(piece.baseLength())
                        + (parallel ? "; at the left: from the base to each glue line" : ""));
        String which = panel.lamination().sets() == 2 ? Legend.setName(set) + ", " : "";
        String name = "Segment " + piece.segment() + (piece.mirrored() ? "*" : "") + " of the " + DrawnFace.name(panel)
                + ", " + which + "base distance " + design.say(piece.base());
        return sheet.drawing(name, right + MARGIN, base + MARGIN);
    }

    private static void band(TemplateSheet sheet, Point tip, Patch patch) {
        List<Point> corners = patch.polygon().points().stream()
                .map(point -> new Point(tip.x() + point.y(), tip.y() + point.x()))
                .toList();
        sheet.line(new PathData().lines(corners).close(), Pen.THIN);
        double width = patch.layer().band().width();
        if (width >= THINNEST_LETTERED) {
            Point middle = patch.polygon().roomiest();
            double size = Math.min(LETTERS, LETTERS_PER_BAND * width);
            String number = Integer.toString(patch.layer().number());
            String named = number + " " + patch.layer().band().species();
            boolean fits = Lettering.width(named, size) < across(patch, middle.x());
            sheet.cased(
                    tip.x() + middle.y(), tip.y() + middle.x() + size / 3, size, Anchor.MIDDLE, fits ? named : number);
        }
    }

    /** How wide a band is along the base's direction, at a distance from the tip. */
    private static double across(Patch patch, double at) {
        List<Point> points = patch.polygon().points();
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            if (Math.min(a.x(), b.x()) <= at && at <= Math.max(a.x(), b.x()) && a.x() != b.x()) {
                double y = a.y() + (at - a.x()) / (b.x() - a.x()) * (b.y() - a.y());
                left = Math.min(left, y);
                right = Math.max(right, y);
            }
        }
        return right - left;
    }

    /** The distance of a glue line from the base, outside the left leg. */
    private static void distance(Design design, TemplateSheet sheet, Piece piece, double offset) {
        double left = MARGIN + piece.left() * (1 - offset / piece.base());
        sheet.cased(
                left - LETTERS / 2,
                MARGIN + offset + LETTERS / 3,
                LETTERS,
                Anchor.END,
                design.unit().sayNumber(piece.base() - offset));
    }
}
