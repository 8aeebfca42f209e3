package org.orbwright.drawing;

import static org.orbwright.drawing.TemplateSheet.LETTERS;
import static org.orbwright.drawing.TemplateSheet.MARGIN;

import java.util.List;
import java.util.Locale;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.drawing.PanelPlan.Place;
import org.orbwright.turning.Roughing.RingGauge;

/** Outlines to be printed at true size and cut out, with letters outside what is cut. */
public final class TemplateDrawing {
    /** Width of the card that is left around a gauge's edge; in millimetres. */
    private static final double CARD = 15;
    /** A gauge for the outside shows a quarter of a circle: half of its angle. */
    private static final double HALF_ARC = Math.PI / 4;

    private TemplateDrawing() {}

    /** The outline of a panel with its joints, seen from outside. */
    public static Drawing panel(Design design, Panel panel) {
        TemplateSheet sheet = new TemplateSheet();
        PanelPlan plan = PanelPlan.of(design, panel);
        Box flat = Box.around(plan.corners());
        List<Point> corners = plan.corners().stream()
                .map(point -> new Point(point.x() - flat.left() + MARGIN, point.y() - flat.top() + MARGIN))
                .toList();
        sheet.outline(corners);
        Point centre = new Point(MARGIN - flat.left(), MARGIN - flat.top());
        for (Point corner : corners) {
            sheet.line(Callout.line(centre.x(), centre.y(), corner.x(), corner.y()), Pen.THIN);
        }
        Place first = plan.places().get(0);
        sheet.label(
                centre.x() + (first.piece().right() - first.piece().left()) / 2,
                flat.height() + MARGIN + 2 * LETTERS,
                Anchor.MIDDLE,
                "base " + design.say(first.piece().baseLength()));
        String name =
                capital(panel.face()) + " panel, full-size outline, across corners " + design.say(plan.acrossCorners());
        return sheet.drawing(name, flat.width() + 2 * MARGIN, flat.height() + 2 * MARGIN);
    }

    /** Ring gauges: the holes of all of them around one centre. */
    public static Drawing rings(Design design, List<RingGauge> gauges) {
        TemplateSheet sheet = new TemplateSheet();
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

    /** A quarter of each ring gauge, between two lines through the centre, for rings that take several pages. */
    public static Drawing quarterRings(Design design, List<RingGauge> gauges) {
        TemplateSheet sheet = new TemplateSheet();
        double widest = gauges.stream().mapToDouble(RingGauge::chord).max().orElseThrow() / 2 + CARD;
        double centre = MARGIN + widest;
        quarter(sheet, centre, widest);
        for (RingGauge gauge : gauges) {
            double radius = gauge.chord() / 2;
            quarter(sheet, centre, radius);
            double diagonal = centre - (radius - 1.4 * LETTERS) * Math.sqrt(0.5);
            sheet.label(diagonal, diagonal, Anchor.START, design.say(gauge.chord()));
        }
        sheet.line(Callout.line(MARGIN, centre, centre, centre), Pen.THIN);
        sheet.line(Callout.line(centre, MARGIN, centre, centre), Pen.THIN);
        sheet.label(MARGIN, centre + 2 * LETTERS, Anchor.START, "A quarter: lay its corner and sides");
        sheet.label(MARGIN, centre + 3.4 * LETTERS, Anchor.START, "onto two lines at right angles, four times.");
        return sheet.drawing("Ring gauges, a quarter of each", centre + MARGIN, centre + 1.5 * MARGIN);
    }

    /** A quarter of a circle up and left of a centre that lies as far from the left as from the top. */
    private static void quarter(TemplateSheet sheet, double centre, double radius) {
        sheet.line(
                new PathData()
                        .moveTo(centre - radius, centre)
                        .arcTo(radius, radius, false, true, centre, centre - radius),
                Pen.MEDIUM);
    }

    /** A gauge for the outside of a sphere of a diameter: an edge that follows a quarter of its outline. */
    public static Drawing profile(Design design, double diameter, String name) {
        TemplateSheet sheet = new TemplateSheet();
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

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
