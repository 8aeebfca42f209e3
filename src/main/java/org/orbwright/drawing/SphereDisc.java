package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.SphereKind;
import org.orbwright.drawing.SegmentPatches.Patch;
import org.orbwright.quantity.Numbering;
import org.orbwright.solid.Face;

/**
 * One finished sphere at its place on a sheet, with the bands of every panel, the seams and the panels' numbers at
 * their poles. A number that would be too small to read, or that would hide much of its panel, gives way to a ring.
 * Curves are flattened to within 0.05 mm; what lies behind is left out.
 */
final class SphereDisc {
    /** Radius of the ring that marks a pole, as a share of the sphere's. */
    private static final double POLE_SIZE = 0.012;
    /** Radius of a panel's number as a share of its base distance as it is seen, and its bounds in letters. */
    private static final double NUMBER_PER_BASE = 0.3;

    private static final double SMALLEST_NUMBER = 0.55;
    private static final double LARGEST_NUMBER = 0.8;

    private final Design design;
    private final SphereKind sphere;
    private final SphereLook look;
    private final SphereView view;
    private final double radius;
    private final double x;
    private final double y;
    private final double letters;
    private final Legend legend;
    private final Map<SegmentPatches, List<Patch>> patches = new HashMap<>();
    private final PathData[] areas;
    private final PathData joints = new PathData();
    private final PathData seams = new PathData();
    private final PathData poles = new PathData();
    private final List<Mark> numbers = new ArrayList<>();

    /** A sphere around a middle on the sheet, whose letters are so high. */
    SphereDisc(Design design, SphereKind sphere, SphereLook look, Point middle, double letters) {
        this.design = design;
        this.sphere = sphere;
        this.look = look;
        this.radius = design.sphereRadius();
        this.view = new SphereView(look.azimuth(), look.elevation(), radius);
        this.x = middle.x();
        this.y = middle.y();
        this.letters = letters;
        this.legend = new Legend(design);
        this.areas = new PathData[legend.species().size()];
        for (int i = 0; i < areas.length; i++) {
            areas[i] = new PathData();
        }
    }

    /** The sphere, from the back to the front. */
    List<Mark> marks() {
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
        if (look.lit()) {
            marks.add(new Shade(x, y, radius));
        }
        marks.add(new Line(joints, Pen.THIN));
        marks.add(new Line(seams, Pen.MEDIUM));
        marks.add(new Line(poles, Pen.THIN));
        marks.addAll(numbers);
        marks.add(new Line(new PathData().circle(x, y, radius), Pen.THICK));
        return marks;
    }

    private void segment(SegmentFrame frame, BandSet set) {
        SegmentPatches segment = SegmentPatches.used(frame.panel(), frame.piece(), set);
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
        double room = NUMBER_PER_BASE * frame.piece().base() * pole.getZ() / radius;
        double ring = POLE_SIZE * radius;
        if (look.numbered() && room >= SMALLEST_NUMBER * letters) {
            numbers.addAll(Callout.disc(
                    x + pole.getX(),
                    y - pole.getY(),
                    Math.min(room, LARGEST_NUMBER * letters),
                    String.valueOf(Numbering.of(panel))));
        } else if (pole.getZ() > 0 && Math.hypot(pole.getX(), pole.getY()) + ring < radius) {
            poles.circle(x + pole.getX(), y - pole.getY(), ring);
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
                .map(point -> new Point(x + point.getX(), y - point.getY()))
                .toList());
        if (closed) {
            path.close();
        }
    }
}
