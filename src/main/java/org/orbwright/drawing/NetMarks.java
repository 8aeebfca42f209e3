package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.assembly.Net;
import org.orbwright.assembly.Net.Closing;
import org.orbwright.assembly.Net.Hinge;
import org.orbwright.assembly.Net.NetCorner;
import org.orbwright.assembly.Net.NetEdge;
import org.orbwright.assembly.Net.NetPanel;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.SphereKind;
import org.orbwright.drawing.SegmentPatches.Patch;
import org.orbwright.quantity.Numbering;

/**
 * The panels of a net where they lie on a sheet: bands, joints, numbers, hinges and free edges. A panel's own number is
 * white on a disc, those of partners are plain.
 */
final class NetMarks {
    /** Radius of a panel's number, as a share of the base distance, and in letters. */
    private static final double NUMBER_PER_BASE = 0.3;

    private static final double LARGEST_NUMBER = 0.9;

    private final Design design;
    private final SphereKind sphere;
    private final Net net;
    private final Legend legend;
    private final double letters;
    private final double left;
    private final double bottom;
    private final PathData[] woods;
    private final PathData joints = new PathData();
    private final PathData hinges = new PathData();
    private final PathData folded = new PathData();
    private final PathData last = new PathData();
    private final List<Mark> numbers = new ArrayList<>();

    /** A net at the left of a place on the sheet, above its bottom. */
    NetMarks(Design design, SphereKind sphere, Net net, Legend legend, double letters, double left, double bottom) {
        this.design = design;
        this.sphere = sphere;
        this.net = net;
        this.legend = legend;
        this.letters = letters;
        this.left = left;
        this.bottom = bottom;
        this.woods = new PathData[legend.species().size()];
        for (int i = 0; i < woods.length; i++) {
            woods[i] = new PathData();
        }
    }

    List<Mark> marks() {
        net.panels().forEach(this::panel);
        net.hinges().forEach(this::hinge);
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < woods.length; i++) {
            if (!woods[i].isEmpty()) {
                marks.add(new Area(woods[i], legend.tone(legend.species().get(i)), Pen.THIN));
            }
        }
        marks.add(new Line(joints, Pen.THIN));
        marks.add(new Line(folded, Pen.MEDIUM));
        marks.add(new Line(last, Pen.THICK));
        marks.add(new Line(hinges, Pen.DASHED));
        marks.addAll(numbers);
        return marks;
    }

    private void panel(NetPanel panel) {
        List<SegmentPlace> places = places(panel);
        for (int i = 0; i < places.size(); i++) {
            SegmentPlace place = places.get(i);
            for (Patch patch : place.patches(sphere.panels().get(panel.panel()))) {
                int wood = legend.species().indexOf(patch.layer().band().species());
                woods[wood]
                        .lines(patch.polygon().points().stream().map(place::at).toList())
                        .close();
            }
            joints.lines(List.of(place.centre(), place.left()));
            NetEdge edge = panel.edges().get(i);
            if (edge.closing() != Closing.TAPED) {
                (edge.closing() == Closing.FOLDED ? folded : last).lines(List.of(place.left(), place.right()));
                partner(place, edge.partner());
            }
        }
        double room = NUMBER_PER_BASE * places.get(0).frame().piece().base();
        Point centre = places.get(0).centre();
        numbers.addAll(Callout.disc(
                centre.x(),
                centre.y(),
                Math.min(room, LARGEST_NUMBER * letters),
                String.valueOf(Numbering.of(panel.panel()))));
    }

    /** Each hinge is drawn once, midway between the rims of its two panels. */
    private void hinge(Hinge hinge) {
        List<Point> one = rim(hinge.panel(), hinge.seam());
        List<Point> other = rim(hinge.neighbour(), hinge.seam());
        hinges.lines(List.of(midway(one.get(0), other.get(1)), midway(one.get(1), other.get(0))));
    }

    private List<Point> rim(int number, int seam) {
        NetPanel panel = net.panel(number);
        int place = panel.edges().stream().map(NetEdge::seam).toList().indexOf(seam);
        return List.of(
                onSheet(panel.corners().get(place)),
                onSheet(panel.corners().get((place + 1) % panel.corners().size())));
    }

    private static Point midway(Point one, Point other) {
        return new Point((one.x() + other.x()) / 2, (one.y() + other.y()) / 2);
    }

    private Point onSheet(NetCorner corner) {
        return new Point(left + corner.x(), bottom - corner.y());
    }

    private List<SegmentPlace> places(NetPanel panel) {
        List<SegmentFrame> frames =
                SegmentFrame.of(design, design.solid().faces().get(panel.panel()));
        List<Point> corners = panel.corners().stream().map(this::onSheet).toList();
        List<SegmentPlace> places = new ArrayList<>();
        for (int i = 0; i < frames.size(); i++) {
            places.add(new SegmentPlace(frames.get(i), corners.get(i), corners.get((i + 1) % corners.size())));
        }
        return places;
    }

    /** The number of the panel that a free edge is glued to, beside the middle of the edge. */
    private void partner(SegmentPlace place, int number) {
        String text = String.valueOf(Numbering.of(number));
        double base = place.frame().piece().base();
        double room = Math.min(0.28 * base, 0.2 * place.frame().piece().baseLength());
        double radius = Math.min(room, 0.65 * letters);
        Point at = place.at(new Point(base - 1.25 * radius, 0));
        double size = radius * (text.length() > 2 ? 0.95 : 1.25);
        numbers.add(new Label(at.x(), at.y() + 0.36 * size, size, Anchor.MIDDLE, text, Letters.CASED));
    }

    /** A segment on the sheet between the left and right corner of its base, seen with the base down. */
    private record SegmentPlace(SegmentFrame frame, Point left, Point right) {
        List<Patch> patches(BandSet set) {
            return SegmentPatches.used(frame.panel(), frame.piece(), set).flat();
        }

        Point centre() {
            return at(new Point(0, 0));
        }

        /** Where a point of the segment lies: along the base from its left end, and inwards from there. */
        Point at(Point point) {
            double length = Math.hypot(right.x() - left.x(), right.y() - left.y());
            double cos = (right.x() - left.x()) / length;
            double sin = (right.y() - left.y()) / length;
            double along = frame.piece().left() + point.y();
            double inwards = frame.piece().base() - point.x();
            return new Point(left.x() + along * cos + inwards * sin, left.y() + along * sin - inwards * cos);
        }
    }
}
