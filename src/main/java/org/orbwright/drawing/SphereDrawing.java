package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.SphereKind;
import org.orbwright.drawing.Drawing.Area;
import org.orbwright.drawing.Drawing.Line;
import org.orbwright.drawing.Drawing.Mark;
import org.orbwright.drawing.Drawing.Pen;
import org.orbwright.drawing.PlanPolygon.Point;
import org.orbwright.drawing.SegmentPatches.Patch;
import org.orbwright.notice.Article;
import org.orbwright.quantity.Numbering;
import org.orbwright.solid.Face;

/**
 * The finished sphere in orthographic projection, with the bands of every panel, the seams and the panels' numbers at
 * their poles. A number that would be too small to read, or that would hide much of its panel, gives way to a ring.
 * Curves are flattened to within 0.05 mm; what lies behind is left out.
 */
public final class SphereDrawing {
    /** Radius of the ring that marks a pole, as a share of the sphere's. */
    private static final double POLE_SIZE = 0.012;
    /** Where the eye stands around the third axis where nobody says so; in radians. */
    public static final double AZIMUTH = Math.toRadians(25);
    /** How far it stands above the plane of the first two axes; in radians. */
    public static final double ELEVATION = Math.toRadians(20);

    /** Radius of a panel's number as a share of its base distance as it is seen, and its bounds in letters. */
    private static final double NUMBER_PER_BASE = 0.3;

    private static final double SMALLEST_NUMBER = 0.55;
    private static final double LARGEST_NUMBER = 0.8;

    private final Design design;
    private final SphereKind sphere;
    private final boolean numbered;
    private final SphereView view;
    private final double radius;
    private final double middle;
    private final Legend legend;
    private final Map<SegmentPatches, List<Patch>> patches = new HashMap<>();
    private final PathData[] areas;
    private final PathData joints = new PathData();
    private final PathData seams = new PathData();
    private final PathData poles = new PathData();
    private final List<Mark> numbers = new ArrayList<>();

    private SphereDrawing(Design design, SphereKind sphere, double azimuth, double elevation, boolean numbered) {
        this.design = design;
        this.sphere = sphere;
        this.numbered = numbered;
        this.radius = design.sphereRadius();
        this.view = new SphereView(azimuth, elevation, radius);
        this.legend = new Legend(design);
        this.middle = radius * (1 + Legend.MARGIN);
        this.areas = new PathData[legend.species().size()];
        for (int i = 0; i < areas.length; i++) {
            areas[i] = new PathData();
        }
    }

    /**
     * Draws a sphere.
     *
     * @param design the design
     * @param sphere which set each of its panels is made from
     * @param azimuth where the eye stands around the solid's third axis, in radians
     * @param elevation how far above the plane of the first two axes, in radians
     * @param numbered whether the panels' numbers stand on discs, which hide what is below
     */
    public static Drawing draw(Design design, SphereKind sphere, double azimuth, double elevation, boolean numbered) {
        return new SphereDrawing(design, sphere, azimuth, elevation, numbered).drawing();
    }

    /**
     * Draws a sphere with the middle of one panel towards the eye.
     *
     * @param design the design
     * @param sphere which set each of its panels is made from
     * @param panel the panel's number, from 1
     * @param numbered whether the panels' numbers stand on discs
     */
    public static Drawing facing(Design design, SphereKind sphere, int panel, boolean numbered) {
        Vector3D normal = design.solid().normal(design.solid().faces().get(panel - 1));
        double elevation = Math.asin(Math.max(-1, Math.min(1, normal.getZ())));
        return draw(design, sphere, Math.atan2(normal.getY(), normal.getX()), elevation, numbered);
    }

    private Drawing drawing() {
        List<Face> faces = design.solid().faces();
        for (int number = 0; number < faces.size(); number++) {
            BandSet set = sphere.panels().get(number);
            List<SegmentFrame> frames = SegmentFrame.of(design, faces.get(number));
            frames.forEach(frame -> segment(frame, set));
            pole(frames.get(0), number);
        }
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < areas.length; i++) {
            if (!areas[i].isEmpty()) {
                marks.add(new Area(areas[i], legend.tone(legend.species().get(i)), Pen.THIN));
            }
        }
        marks.add(new Line(joints, Pen.THIN));
        marks.add(new Line(seams, Pen.MEDIUM));
        marks.add(new Line(poles, Pen.THIN));
        marks.addAll(numbers);
        marks.add(new Line(new PathData().circle(middle, middle, radius), Pen.THICK));
        Legend shown = legend.drawn(marks);
        marks.addAll(shown.marks(2 * middle, 2 * middle));
        String name = Article.with(design.solid().name());
        return new Drawing(
                "Sphere from " + name + ", " + Legend.setName(sphere.set()),
                "The finished sphere of " + design.say(2 * radius) + " in diameter, made from "
                        + Legend.setName(sphere.set())
                        + " segments of " + name + ", seen from outside."
                        + (numbered ? " On discs: the panels' numbers." : "")
                        + (shown.species().isEmpty() ? "" : " Woods: " + String.join(", ", shown.species()) + "."),
                2 * middle,
                2 * middle + shown.height(2 * middle),
                shown.species(),
                marks);
    }

    private void segment(SegmentFrame frame, BandSet set) {
        BandSet used = frame.panel().lamination().used(set);
        SegmentPatches segment = new SegmentPatches(frame.panel(), frame.piece(), used);
        List<Patch> bands = patches.computeIfAbsent(segment, each -> each.onSphere(radius, Flattening.TOLERANCE));
        for (Patch patch : bands) {
            List<Vector3D> outline =
                    view.visibleArea(lift(frame, patch.polygon().points(), true));
            int wood = legend.species().indexOf(patch.layer().band().species());
            add(areas[wood], outline, true);
        }
        List<Point> reach = segment.reach(radius, Flattening.TOLERANCE);
        line(seams, lift(frame, reach, false));
        line(joints, lift(frame, List.of(new Point(0, 0), reach.get(0)), false));
    }

    private void line(PathData path, List<Vector3D> points) {
        view.visibleLines(points).forEach(part -> add(path, part, false));
    }

    private void pole(SegmentFrame frame, int panel) {
        Vector3D pole = view.project(frame.lift(new Point(0, 0), radius));
        double letters = Legend.letters(2 * middle);
        double room = NUMBER_PER_BASE * frame.piece().base() * pole.getZ() / radius;
        double ring = POLE_SIZE * radius;
        if (numbered && room >= SMALLEST_NUMBER * letters) {
            numbers.addAll(Callout.disc(
                    middle + pole.getX(),
                    middle - pole.getY(),
                    Math.min(room, LARGEST_NUMBER * letters),
                    String.valueOf(Numbering.of(panel))));
        } else if (pole.getZ() > 0 && Math.hypot(pole.getX(), pole.getY()) + ring < radius) {
            poles.circle(middle + pole.getX(), middle - pole.getY(), ring);
        }
    }

    /** Points of the panel lifted to the finished surface, with enough steps between them to follow it. */
    private List<Vector3D> lift(SegmentFrame frame, List<Point> points, boolean closed) {
        double longest = radius * Flattening.step(radius, Flattening.TOLERANCE);
        List<Vector3D> lifted = new ArrayList<>();
        int count = closed ? points.size() : points.size() - 1;
        for (int i = 0; i < count; i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            Vector3D start = frame.lift(a, radius);
            int steps = (int) Math.max(1, Math.ceil(start.distance(frame.lift(b, radius)) / longest));
            lifted.add(view.project(start));
            for (int k = 1; k < steps; k++) {
                double share = (double) k / steps;
                Point between = new Point(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
                lifted.add(view.project(frame.lift(between, radius)));
            }
        }
        if (!closed) {
            lifted.add(view.project(frame.lift(points.get(points.size() - 1), radius)));
        }
        return lifted;
    }

    private void add(PathData path, List<Vector3D> points, boolean closed) {
        if (points.size() < (closed ? 3 : 2)) {
            return;
        }
        path.lines(points.stream()
                .map(point -> new Point(middle + point.getX(), middle - point.getY()))
                .toList());
        if (closed) {
            path.close();
        }
    }
}
