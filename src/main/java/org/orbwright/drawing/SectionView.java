package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** One section on the sheet: a panel, perhaps its neighbour beyond the seam, the sphere, and lettered dimensions. */
final class SectionView {
    /** A face distance of more than this many widths is not shown as a whole: the solid's centre is left out. */
    private static final double TALLEST = 1.45;
    /** How much of the hollow is shown then, in widths. */
    private static final double HOLLOW = 0.4;

    private static final double ARC_BEYOND = 0.05;
    private static final double LEFT = 8;
    private static final double RIGHT = 4;
    private static final double ABOVE = 4.5;
    private static final double BELOW = 2.5;
    private static final double BALLOON = 0.85;

    private final SectionPanel main;
    private final SectionPanel neighbour;
    private final double radius;
    private final Legend legend;
    private final double letters;
    private final double lowest;
    private final boolean whole;
    private final SectionFrame frame;
    private final double height;
    private final List<Mark> marks = new ArrayList<>();

    /**
     * A panel and its neighbour beyond the seam, or null, with the sphere's radius. The room on the sheet starts at x
     * and y; no more than the tallest height is used.
     */
    SectionView(
            SectionPanel main,
            SectionPanel neighbour,
            double radius,
            Legend legend,
            double x,
            double y,
            double width,
            double tallest,
            double letters) {
        this.main = main;
        this.neighbour = neighbour;
        this.radius = radius;
        this.legend = legend;
        this.letters = letters;
        Box shown = Box.around(shown());
        double right = shown.right();
        double top = -shown.top();
        double bottom = -shown.bottom();
        this.whole = main.panel().faceDistance() <= TALLEST * right;
        this.lowest = Math.min(bottom, whole ? 0 : main.innerFace() - HOLLOW * right);
        double scale = Math.min(
                (width - (LEFT + RIGHT) * letters) / right, (tallest - (ABOVE + BELOW) * letters) / (top - lowest));
        double spare = width - (LEFT + RIGHT) * letters - scale * right;
        this.frame =
                new SectionFrame(x + LEFT * letters + spare / 2, y + ABOVE * letters + scale * top, scale, 0, false);
        this.height = (ABOVE + BELOW) * letters + scale * (top - lowest);
    }

    /** The height that is used. */
    double height() {
        return height;
    }

    /** What has to have room, with the solid's centre at 0. */
    private List<Point> shown() {
        SectionFrame plain = new SectionFrame(0, 0, 1, 0, false);
        List<Point> points = new ArrayList<>();
        main.wood().points().forEach(point -> points.add(plain.at(point)));
        if (neighbour != null) {
            SectionFrame beyond = beyond(plain);
            neighbour.wood().points().forEach(point -> points.add(beyond.at(point)));
        }
        for (int i = 0; i <= 20; i++) {
            points.add(plain.polar(radius, lastAngle() * i / 20));
        }
        return points;
    }

    private SectionFrame beyond(SectionFrame from) {
        return new SectionFrame(from.x(), from.y(), from.scale(), main.angle() + neighbour.angle(), true);
    }

    /** The angle from the normal at which the wood that is shown ends. */
    private double lastAngle() {
        if (neighbour == null) {
            return main.angle();
        }
        double start = Math.atan2(neighbour.from(), neighbour.panel().faceDistance());
        return main.angle() + neighbour.angle() - start;
    }

    List<Mark> marks() {
        wood(main, frame);
        if (neighbour != null) {
            wood(neighbour, beyond(frame));
        }
        marks.add(new Line(
                frame.path(List.of(
                        new Point(0, lowest), new Point(0, Math.max(main.panel().faceDistance(), radius)))),
                Pen.DASHED));
        marks.add(new Line(arc(-ARC_BEYOND, lastAngle() + ARC_BEYOND), Pen.CASED));
        surface();
        double seam = Math.min(radius, main.jointRadius());
        if (seam > main.innerRadius()) {
            marks.add(new Line(
                    frame.path(List.of(direction(main.innerRadius(), main.angle()), direction(seam, main.angle()))),
                    Pen.THICK));
        }
        centre();
        distances();
        alongRays();
        return marks;
    }

    private void wood(SectionPanel panel, SectionFrame place) {
        marks.add(new Paper(place.path(panel.wood()), 1, Pen.DASHED));
        panel.strips()
                .forEach(strip ->
                        marks.add(new Area(place.path(strip.polygon()), legend.tone(strip.species()), Pen.THIN)));
        PlanPolygon left = panel.left();
        if (!left.isEmpty()) {
            marks.add(new Line(place.path(left), Pen.MEDIUM));
        }
    }

    private PathData arc(double from, double to) {
        Point end = frame.polar(radius, to);
        Point start = frame.polar(radius, from);
        double onSheet = radius * frame.scale();
        return new PathData()
                .moveTo(start.x(), start.y())
                .arcTo(onSheet, onSheet, to - from > Math.PI, true, end.x(), end.y());
    }

    /** The finished surface: the sphere where there is wood below it. */
    private void surface() {
        double step = Flattening.step(radius, Flattening.TOLERANCE) / 4;
        double start = Double.NaN;
        for (double angle = 0; angle <= lastAngle() + step; angle += step) {
            boolean onWood = angle <= lastAngle() && onWood(angle);
            if (onWood && Double.isNaN(start)) {
                start = angle;
            } else if (!onWood && !Double.isNaN(start)) {
                marks.add(new Line(arc(start, angle - step), Pen.THICK));
                start = Double.NaN;
            }
        }
    }

    private boolean onWood(double angle) {
        if (angle <= main.angle()) {
            return main.wood().clearance(direction(radius, angle)) >= 0;
        }
        return neighbour != null
                && neighbour.wood().clearance(direction(radius, main.angle() + neighbour.angle() - angle)) >= 0;
    }

    private static Point direction(double distance, double angle) {
        return new Point(distance * Math.sin(angle), distance * Math.cos(angle));
    }

    private void centre() {
        double x = frame.x();
        double y = frame.y() - lowest * frame.scale();
        PathData path = new PathData();
        if (whole) {
            y = frame.y();
            path.moveTo(x - letters, y)
                    .lineTo(x + letters, y)
                    .moveTo(x, y - letters)
                    .lineTo(x, y + letters);
        } else {
            path.moveTo(x - 7 * letters, y);
            for (int i = 1; i <= 14; i++) {
                path.lineTo(x + (i - 7) * letters, y + (i % 2 == 0 ? 0 : letters / 2));
            }
        }
        marks.add(new Line(path, Pen.THIN));
        String text = whole ? "centre of the solid" : "broken off: the centre lies below";
        marks.add(new Label(x + 1.5 * letters, y + 1.8 * letters, letters, Anchor.START, text));
    }

    /** Thickness, joint distance and face distance, on dimension lines to the left of the normal. */
    private void distances() {
        double face = main.panel().faceDistance();
        double joint = main.panel().jointDistance();
        double base = whole ? 0 : lowest;
        extension(face, 6);
        extension(main.innerFace(), 2);
        if (whole) {
            extension(0, 6);
        }
        vertical(6, base, face, "A");
        if (joint < face) {
            extension(joint, 4);
            vertical(4, base, joint, "B");
        }
        vertical(2, main.innerFace(), face, "C");
    }

    private void extension(double distance, double columns) {
        Point start = frame.at(new Point(0, distance));
        marks.add(new Line(
                Callout.line(start.x(), start.y(), start.x() - (columns + 0.4) * letters, start.y()), Pen.THIN));
    }

    private void vertical(double columns, double from, double to, String letter) {
        Point low = frame.at(new Point(0, from));
        Point high = frame.at(new Point(0, to));
        double x = low.x() - columns * letters;
        marks.add(Callout.dimension(x, low.y(), x, high.y(), letters / 3));
        marks.addAll(Callout.balloon(x, (low.y() + high.y()) / 2, BALLOON * letters, letter));
    }

    /** The sphere's radius, the walls and what is turned away, on rays from the solid's centre. */
    private void alongRays() {
        double apart = 1.9 * letters / frame.scale();
        double face = main.panel().faceDistance();
        double middle = main.angle() / 2;
        double start = whole ? 0 : Math.max(0, lowest / Math.cos(middle));
        ray(middle, start, radius, start + 0.55 * (main.innerFace() - start), "D");
        ray(0, main.innerFace(), Math.min(radius, face), main.innerFace() - apart, "E");
        double inner = Math.min(main.innerRadius(), radius);
        ray(main.angle(), main.innerRadius(), radius, inner - apart, "F");
        if (radius < face) {
            ray(0, radius, face, face + apart, "G");
        }
        double corner = Math.atan2(main.across(), face);
        if (radius < main.outerRadius()) {
            ray(corner, radius, main.outerRadius(), main.outerRadius() + apart, "H");
        }
    }

    private void ray(double angle, double from, double to, double balloon, String letter) {
        Point start = frame.polar(from, angle);
        Point end = frame.polar(to, angle);
        Point at = frame.polar(balloon, angle);
        marks.add(Callout.dimension(start.x(), start.y(), end.x(), end.y(), letters / 3));
        Point near = Math.abs(balloon - from) < Math.abs(balloon - to) ? start : end;
        marks.add(new Line(Callout.line(at.x(), at.y(), near.x(), near.y()), Pen.THIN));
        marks.addAll(Callout.balloon(at.x(), at.y(), BALLOON * letters, letter));
    }
}
