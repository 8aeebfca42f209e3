package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.drawing.PanelPlan.Place;
import org.orbwright.drawing.SegmentPatches.Patch;

/** One segment at true size with its base down, and beside it the rule by which its blank is glued up and measured. */
public final class SegmentDrawing {
    private static final String BEVEL = "bevel";
    /** The base's measure lies so many letters below it. */
    private static final double MEASURE = 1.5;

    private final Design design;
    private final Panel panel;
    private final Piece piece;
    private final BandSet set;
    private final Place place;
    private final Legend legend;
    private final BandRule rule;
    private final double width;
    private final double letters;
    private final double tipX;
    private final double baseY;
    private final List<Mark> marks = new ArrayList<>();

    private SegmentDrawing(Design design, Panel panel, Piece piece, BandSet set) {
        this.design = design;
        this.panel = panel;
        this.piece = piece;
        this.set = panel.lamination().used(set);
        this.place = new Place(panel, piece, 0);
        this.legend = new Legend(design);
        this.rule = new BandRule(design, place, this.set);
        double left = Lettering.width(BEVEL, 1) + 2;
        this.width = piece.baseLength() / (1 - Legend.letters(1) * (left + rule.width() + 3));
        this.letters = Legend.letters(width);
        this.tipX = left * letters + piece.left();
        this.baseY = 4 * letters + Math.max(piece.base() + letters, rule.above(letters));
    }

    /** Draws a segment of a panel from a set. */
    public static Drawing draw(Design design, Panel panel, Piece piece, BandSet set) {
        return new SegmentDrawing(design, panel, piece, set).drawing();
    }

    private Drawing drawing() {
        String title = PanelOutline.segmentTitle(design, panel, piece, set);
        marks.add(Callout.heading(title, width, letters));
        SegmentPatches patches = SegmentPatches.used(panel, piece, set);
        for (Patch patch : patches.flat()) {
            PathData path = path(patch.polygon().points()).close();
            marks.add(new Area(path, legend.tone(patch.layer().band().species()), Pen.THIN));
        }
        List<Point> outline = List.of(
                new Point(0, 0), new Point(piece.base(), -piece.left()), new Point(piece.base(), piece.right()));
        marks.add(new Line(path(outline).close(), Pen.THICK));
        marks.add(new Line(path(patches.reach(design.sphereRadius(), Flattening.TOLERANCE)), Pen.DASHED));
        bevel();
        marks.addAll(new PanelNumbers(place, this::onSheet, letters).marks(patches.flat()));
        rule.ring().stream()
                .map(this::onSheet)
                .forEach(at -> marks.add(new Line(new PathData().circle(at.x(), at.y(), letters / 3), Pen.CASED)));
        measure();
        marks.addAll(rule.marks(tipX + piece.right() + 2 * letters, baseY, letters, legend));
        double bottom = baseY + Math.max((MEASURE + 2.5) * letters, rule.below(letters) + letters);
        return Caption.below(design, title, description(), width, bottom, caption(), rule.lines(), legend, marks);
    }

    /** Where the bevel leaves the inner face, with its name outside the segment. */
    private void bevel() {
        double inner = PanelOutline.inner(design, panel);
        if (inner <= 0) {
            return;
        }
        Point left = at(new Point(inner * piece.base(), -inner * piece.left()));
        Point right = at(new Point(inner * piece.base(), inner * piece.right()));
        double name = tipX - piece.left() - letters / 2;
        marks.add(new Line(Callout.line(name + letters / 3, left.y(), left.x(), left.y()), Pen.THIN));
        marks.add(new Line(Callout.line(left.x(), left.y(), right.x(), right.y()), Pen.CHAIN));
        marks.add(new Label(name, left.y() + 0.36 * letters, letters, Anchor.END, BEVEL));
    }

    private void measure() {
        double y = baseY + MEASURE * letters;
        marks.add(Callout.dimension(tipX - piece.left(), y, tipX + piece.right(), y, letters / 3));
        double middle = tipX + (piece.right() - piece.left()) / 2;
        marks.add(new Label(middle, y + 1.5 * letters, letters, Anchor.MIDDLE, design.say(piece.baseLength())));
    }

    private PathData path(List<Point> points) {
        return new PathData().lines(points.stream().map(this::at).toList());
    }

    /** Where a point of the segment lies on the sheet. */
    private Point at(Point point) {
        return onSheet(place.at(point));
    }

    private Point onSheet(Point point) {
        return new Point(tipX + point.x(), baseY - piece.base() + point.y());
    }

    private String caption() {
        return PanelOutline.segmentCaption(design, panel, piece) + " " + rule.sentence();
    }

    private String description() {
        return PanelOutline.segmentTitle(design, panel, piece, set) + ", at true size. " + caption() + " "
                + String.join("; ", rule.lines()) + ".";
    }
}
