package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.drawing.Outline.At;
import org.orbwright.drawing.Outline.Chain;
import org.orbwright.drawing.Outline.Layer;
import org.orbwright.drawing.Outline.LayerKind;
import org.orbwright.drawing.Outline.Round;
import org.orbwright.drawing.Outline.Shape;
import org.orbwright.drawing.PanelPlan.Place;
import org.orbwright.drawing.SegmentPatches.Patch;

/** A panel or one segment of it as outlines for a CAD program, seen from outside, the panel's centre at the origin. */
public final class PanelOutline {
    /** Length of the strokes of a centre, as a share of the base distance. */
    private static final double CENTRE_STROKE = 0.05;

    private final Design design;
    private final Panel panel;
    private final BandSet set;
    private final Legend legend;
    private final List<Shape> shapes = new ArrayList<>();

    private PanelOutline(Design design, Panel panel, BandSet set) {
        this.design = design;
        this.panel = panel;
        this.set = set;
        this.legend = new Legend(design);
    }

    /** The panel of a face kind, made from a set of segments. */
    public static Outline of(Design design, String face, BandSet set) {
        Panel panel = DrawnFace.of(design, face);
        return new PanelOutline(design, panel, set).panel();
    }

    /** One segment of a panel from a set, with its tip at the origin and its base down, for a CAD program. */
    public static Outline ofSegment(Design design, Panel panel, Piece piece, BandSet set) {
        return new PanelOutline(design, panel, set).segment(piece);
    }

    private Outline panel() {
        PanelPlan plan = PanelPlan.of(design, panel);
        add(LayerKind.OUTLINE, plan.corners(), true);
        bevel(plan.corners());
        List<Point> rim = new ArrayList<>();
        for (Place place : plan.places()) {
            add(LayerKind.JOINT, List.of(new Point(0, 0), place.leftCorner()), false);
            bands(place);
            List<Point> reach = reach(place);
            rim.addAll(reach.subList(0, reach.size() - 1));
        }
        add(LayerKind.SPHERE_RIM, rim, true);
        centre();
        String which = panel.lamination().sets() == 2 ? ", " + Legend.setName(set) : "";
        return new Outline("Panel " + panel.face() + " of the " + design.solid().name() + which, shapes);
    }

    private Outline segment(Piece piece) {
        Place place = new Place(panel, piece, 0);
        Point left = place.leftCorner();
        Point right = place.at(new Point(piece.base(), piece.right()));
        add(LayerKind.OUTLINE, List.of(new Point(0, 0), left, right), true);
        if (inner() > 0) {
            add(LayerKind.BEVEL, List.of(scaled(left), scaled(right)), false);
        }
        bands(place);
        add(LayerKind.SPHERE_RIM, reach(place), false);
        return new Outline(segmentTitle(design, panel, piece, set), shapes);
    }

    /** What a picture or an outline of a segment is called. */
    static String segmentTitle(Design design, Panel panel, Piece piece, BandSet set) {
        return "Segment " + piece.segment() + " of the " + panel.face() + " panel of the "
                + design.solid().name()
                + (panel.lamination().sets() == 2 ? ", " + Legend.setName(set) : "");
    }

    /** The measures of a segment, and what its lines are. */
    static String segmentCaption(Design design, Panel panel, Piece piece) {
        double inner = inner(design, panel);
        String bevel = inner > 0
                ? " Dashes and dots: where the bevel leaves the inner face, " + design.say((1 - inner) * piece.base())
                        + " from the base."
                : "";
        return "Base " + design.say(piece.baseLength()) + ", base distance " + design.say(piece.base()) + ", legs "
                + design.say(Math.hypot(piece.base(), piece.left())) + " and "
                + design.say(Math.hypot(piece.base(), piece.right()))
                + ", seen from outside. Dashed: beyond this line the wood is turned away." + bevel;
    }

    /** How much smaller the inner face is than the outer one; 0 or less where the bevels meet. */
    static double inner(Design design, Panel panel) {
        return (panel.faceDistance() - design.thickness()) / panel.jointDistance();
    }

    private double inner() {
        return inner(design, panel);
    }

    private Point scaled(Point point) {
        return new Point(inner() * point.x(), inner() * point.y());
    }

    private void bevel(List<Point> corners) {
        add(LayerKind.BEVEL, corners.stream().map(this::scaled).toList(), true);
    }

    private void bands(Place place) {
        SegmentPatches patches = SegmentPatches.used(place.panel(), place.piece(), set);
        for (Patch patch : patches.flat()) {
            List<At> points = patch.polygon().points().stream()
                    .map(place::at)
                    .map(PanelOutline::up)
                    .toList();
            String wood = patch.layer().band().species();
            shapes.add(new Chain(Layer.band(wood, legend.tone(wood)), points, true));
        }
    }

    private List<Point> reach(Place place) {
        return SegmentPatches.used(place.panel(), place.piece(), set)
                .reach(design.sphereRadius(), Flattening.TOLERANCE)
                .stream()
                .map(place::at)
                .toList();
    }

    private void centre() {
        double stroke = CENTRE_STROKE * panel.baseDistance();
        add(LayerKind.CENTRE, List.of(new Point(-stroke, 0), new Point(stroke, 0)), false);
        add(LayerKind.CENTRE, List.of(new Point(0, -stroke), new Point(0, stroke)), false);
        double h = panel.faceDistance();
        double r = design.sphereRadius();
        if (r > h) {
            shapes.add(new Round(Layer.of(LayerKind.FLAT), new At(0, 0), Math.sqrt((r - h) * (r + h))));
        }
    }

    private void add(LayerKind kind, List<Point> points, boolean closed) {
        shapes.add(
                new Chain(Layer.of(kind), points.stream().map(PanelOutline::up).toList(), closed));
    }

    /** On a sheet y runs down, in a CAD program up. */
    private static At up(Point point) {
        return new At(point.x(), -point.y());
    }
}
