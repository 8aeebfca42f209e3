package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.drawing.Drawing.Anchor;
import org.orbwright.drawing.Drawing.Label;
import org.orbwright.drawing.Drawing.Line;
import org.orbwright.drawing.Drawing.Mark;
import org.orbwright.drawing.Drawing.Pen;
import org.orbwright.drawing.PanelPlan.Place;
import org.orbwright.drawing.PlanPolygon.Point;
import org.orbwright.segment.SegmentPlan.Cut;
import org.orbwright.segment.SegmentPlan.FaceSegments;
import org.orbwright.segment.SegmentPlan.Layout;
import org.orbwright.segment.SegmentPlan.SegmentCut;
import org.orbwright.turning.Roughing.RingGauge;

/**
 * Outlines to be printed at true size and cut out: thin lines, with letters outside what is cut. The letters have one
 * height whatever the size is.
 */
public final class TemplateDrawing {
    /** Height of the letters; in millimetres. */
    private static final double LETTERS = 3;
    /** Room around the outline for letters; in millimetres. */
    private static final double MARGIN = 12;
    /** Width of the card that is left around a gauge's edge; in millimetres. */
    private static final double CARD = 15;
    /** A gauge for the outside shows a quarter of a circle: half of its angle. */
    private static final double HALF_ARC = Math.PI / 4;

    private final List<Mark> marks = new ArrayList<>();

    private TemplateDrawing() {}

    /**
     * A segment with its base down, seen from outside.
     *
     * @param design the design
     * @param face the segments of its face kind
     * @param segment the segment
     */
    public static Drawing segment(Design design, FaceSegments face, SegmentCut segment) {
        TemplateDrawing sheet = new TemplateDrawing();
        double left = MARGIN;
        double foot = left + segment.baseLeft();
        double right = left + segment.base();
        double top = MARGIN;
        double base = top + face.baseDistance();
        sheet.outline(List.of(new Point(foot, top), new Point(left, base), new Point(right, base)));
        sheet.line(Callout.line(foot, base - LETTERS, foot, base), Pen.THIN);
        sheet.label(foot, top - LETTERS, Anchor.MIDDLE, "tip");
        sheet.label((left + right) / 2, base + 2 * LETTERS, Anchor.MIDDLE, "base " + design.say(segment.base()));
        String name = "Segment " + segment.segment() + (segment.mirrored() ? "*" : "") + " of the " + face.face()
                + " panel, base distance " + design.say(face.baseDistance());
        return sheet.drawing(name, right + MARGIN, base + MARGIN);
    }

    /**
     * The outline of a panel with its joints, seen from outside.
     *
     * @param design the design
     * @param panel the panel
     */
    public static Drawing panel(Design design, Panel panel) {
        TemplateDrawing sheet = new TemplateDrawing();
        PanelPlan plan = PanelPlan.of(design, panel);
        double left = plan.corners().stream().mapToDouble(Point::x).min().orElseThrow();
        double right = plan.corners().stream().mapToDouble(Point::x).max().orElseThrow();
        double above = plan.corners().stream().mapToDouble(Point::y).min().orElseThrow();
        double below = plan.corners().stream().mapToDouble(Point::y).max().orElseThrow();
        List<Point> corners = plan.corners().stream()
                .map(point -> new Point(point.x() - left + MARGIN, point.y() - above + MARGIN))
                .toList();
        sheet.outline(corners);
        Point centre = new Point(MARGIN - left, MARGIN - above);
        for (Point corner : corners) {
            sheet.line(Callout.line(centre.x(), centre.y(), corner.x(), corner.y()), Pen.THIN);
        }
        Place first = plan.places().get(0);
        sheet.label(
                centre.x() + (first.piece().right() - first.piece().left()) / 2,
                below - above + MARGIN + 2 * LETTERS,
                Anchor.MIDDLE,
                "base " + design.say(first.piece().baseLength()));
        String name =
                capital(panel.face()) + " panel, full-size outline, across corners " + design.say(plan.acrossCorners());
        return sheet.drawing(name, right - left + 2 * MARGIN, below - above + 2 * MARGIN);
    }

    /**
     * The cuts of a blank, the edge of its first band below: where finished edges lie, and how far the kerf goes.
     *
     * @param design the design
     * @param face the segments of its face kind
     * @param segment the segment that is cut from it
     */
    public static Drawing blank(Design design, FaceSegments face, SegmentCut segment) {
        TemplateDrawing sheet = new TemplateDrawing();
        double length = design.blankLength();
        double first = MARGIN + face.blankWidth();
        sheet.outline(List.of(
                new Point(MARGIN, MARGIN),
                new Point(MARGIN + length, MARGIN),
                new Point(MARGIN + length, first),
                new Point(MARGIN, first)));
        for (Cut cut : segment.cuts()) {
            double x = MARGIN + cut.firstBandEdge();
            double far = MARGIN + cut.lastBandEdge();
            sheet.line(Callout.line(x, first, far, MARGIN), Pen.THIN);
            double kerf = design.kerf() * Math.hypot(far - x, face.blankWidth()) / face.blankWidth();
            // The first cut leaves its kerf before the first segment, all others behind theirs.
            double beyond = cut.number() == 0 ? -kerf : kerf;
            if (Math.min(x, far) + beyond >= MARGIN && Math.max(x, far) + beyond <= MARGIN + length) {
                sheet.line(Callout.line(x + beyond, first, far + beyond, MARGIN), Pen.DASHED);
            }
            double row = cut.number() % 2 == 0 ? 1.5 : 2.7;
            sheet.label(x, first + row * LETTERS, Anchor.MIDDLE, Integer.toString(cut.number()));
        }
        String edges = face.layout() == Layout.STICKS ? "sides of sticks" : "finished legs";
        sheet.label(
                MARGIN,
                MARGIN - 2.4 * LETTERS,
                Anchor.START,
                "The edge of the first band is below. Full lines are " + edges + ";");
        sheet.label(
                MARGIN,
                MARGIN - LETTERS,
                Anchor.START,
                "the kerf of " + design.say(design.kerf())
                        + " takes what lies between a full line and its dashed one.");
        String name = "Marks on a blank for segment " + segment.segment() + (segment.mirrored() ? "*" : "") + " of the "
                + face.face() + " panel";
        return sheet.drawing(name, length + 2 * MARGIN, first + MARGIN);
    }

    /**
     * Ring gauges: the holes of all of them around one centre.
     *
     * @param design the design
     * @param gauges the gauges
     */
    public static Drawing rings(Design design, List<RingGauge> gauges) {
        TemplateDrawing sheet = new TemplateDrawing();
        double widest = gauges.stream().mapToDouble(RingGauge::chord).max().orElseThrow() / 2 + CARD;
        double centre = MARGIN + widest;
        sheet.line(new PathData().circle(centre, centre, widest), Pen.MEDIUM);
        for (RingGauge gauge : gauges) {
            double radius = gauge.chord() / 2;
            sheet.line(new PathData().circle(centre, centre, radius), Pen.MEDIUM);
            sheet.label(centre, centre + radius + 1.2 * LETTERS, Anchor.MIDDLE, design.say(gauge.chord()));
        }
        sheet.line(Callout.line(centre - LETTERS, centre, centre + LETTERS, centre), Pen.THIN);
        sheet.line(Callout.line(centre, centre - LETTERS, centre, centre + LETTERS), Pen.THIN);
        return sheet.drawing("Ring gauges: cut one circle from each print", 2 * centre, 2 * centre);
    }

    /**
     * A quarter of each ring gauge, between two lines through the centre, for rings that take several pages.
     *
     * @param design the design
     * @param gauges the gauges
     */
    public static Drawing quarterRings(Design design, List<RingGauge> gauges) {
        TemplateDrawing sheet = new TemplateDrawing();
        double widest = gauges.stream().mapToDouble(RingGauge::chord).max().orElseThrow() / 2 + CARD;
        double centre = MARGIN + widest;
        sheet.quarter(centre, widest);
        for (RingGauge gauge : gauges) {
            double radius = gauge.chord() / 2;
            sheet.quarter(centre, radius);
            double diagonal = centre - (radius - 1.4 * LETTERS) * Math.sqrt(0.5);
            sheet.label(diagonal, diagonal, Anchor.START, design.say(gauge.chord()));
        }
        sheet.line(Callout.line(MARGIN, centre, centre, centre), Pen.THIN);
        sheet.line(Callout.line(centre, MARGIN, centre, centre), Pen.THIN);
        sheet.label(
                MARGIN,
                centre + 2 * LETTERS,
                Anchor.START,
                "A quarter: lay its corner and sides onto two lines at right angles, four times around.");
        return sheet.drawing("Ring gauges, a quarter of each", centre + MARGIN, centre + MARGIN);
    }

    /** A quarter of a circle up and left of a centre that lies as far from the left as from the top. */
    private void quarter(double centre, double radius) {
        line(
                new PathData()
                        .moveTo(centre - radius, centre)
                        .arcTo(radius, radius, false, true, centre, centre - radius),
                Pen.MEDIUM);
    }

    /**
     * A gauge for the outside of a sphere: an edge that follows a quarter of its outline.
     *
     * @param design the design
     * @param diameter diameter of the sphere
     * @param name which sphere it is
     */
    public static Drawing profile(Design design, double diameter, String name) {
        TemplateDrawing sheet = new TemplateDrawing();
        double radius = diameter / 2;
        double half = radius * Math.sin(HALF_ARC);
        double rise = radius * (1 - Math.cos(HALF_ARC));
        double left = MARGIN;
        double right = left + 2 * (half + CARD);
        double top = MARGIN;
        double foot = top + CARD + rise;
        PathData card = new PathData()
                .moveTo(left, foot)
                .lineTo(left + CARD, foot)
                .arcTo(radius, radius, false, true, right - CARD, foot)
                .lineTo(right, foot)
                .lineTo(right, top)
                .lineTo(left, top)
                .close();
        sheet.line(card, Pen.MEDIUM);
        sheet.label((left + right) / 2, foot + 2 * LETTERS, Anchor.MIDDLE, "diameter " + design.say(diameter));
        return sheet.drawing("Gauge for the outside of the " + name, right + MARGIN, foot + MARGIN);
    }

    private void outline(List<Point> corners) {
        line(new PathData().lines(corners).close(), Pen.MEDIUM);
    }

    private void line(PathData path, Pen pen) {
        marks.add(new Line(path, pen));
    }

    private void label(double x, double y, Anchor anchor, String text) {
        marks.add(new Label(x, y, LETTERS, anchor, text));
    }

    private Drawing drawing(String title, double width, double height) {
        return new Drawing(title, title + ", at true size.", width, height, List.of(), marks);
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
