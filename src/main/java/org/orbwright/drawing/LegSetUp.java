package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.drawing.SegmentPatches.Patch;
import org.orbwright.jig.JigPlan.JigSegment;
import org.orbwright.jig.JigPlan.LegCut;

/**
 * A crosscut from above: the blade runs up the sheet, the segment lies to its right with its base against the gauge's
 * fence and its far corner against the stop. For the right leg the wood is turned over, so that the gauge stays on its
 * side of square.
 */
final class LegSetUp {
    /** How much of the rest of the blank is shown, as a share of the base. */
    private static final double REST = 0.45;
    /** Sizes on the sheet, in millimetres. */
    private static final double BALLOON = 2.7;

    private static final double FENCE = 4;
    private static final double STOP = 5;
    private static final double BLADE_BEYOND = 3;
    /** Room on the sheet around the wood for fence, stop and letters. */
    private static final double AROUND = 9;

    private final Design design;
    private final Panel panel;
    private final Piece piece;
    private final JigSegment segment;
    private final LegCut cut;
    private final boolean left;
    private final double sin;
    private final double cos;
    private final SetUpFrame frame;
    private final List<Mark> marks = new ArrayList<>();

    LegSetUp(Design design, Panel panel, Piece piece, JigSegment segment, LegCut cut, boolean left) {
        this.design = design;
        this.panel = panel;
        this.piece = piece;
        this.segment = segment;
        this.cut = cut;
        this.left = left;
        this.sin = Math.sin(cut.mitre().complement());
        this.cos = Math.cos(cut.mitre().complement());
        double rest = REST * segment.stopDistance();
        Box room = SawSetUpDrawing.ROOM;
        this.frame = SetUpFrame.fitting(
                List.of(at(0, 0), at(segment.stopDistance(), 0), at(-rest, 0), at(-rest, piece.base()), tip()),
                new Box(room.left() + 2, room.top() + AROUND, room.right() - AROUND, room.bottom() - AROUND));
    }

    /** A point so far along the fence from the blade, and so far from the fence. */
    private Point at(double along, double off) {
        return new Point(along * sin - off * cos, along * cos + off * sin);
    }

    private Point sheet(double along, double off) {
        Point point = at(along, off);
        return frame.at(point.x(), point.y());
    }

    /** Base to the left and right of the tip, as the wood lies: turned over for the right leg. */
    private double before() {
        return left ? piece.left() : piece.right();
    }

    private Point tip() {
        return at(before(), piece.base());
    }

    List<Mark> marks() {
        wood();
        gauge();
        blade();
        double base = segment.stopDistance();
        Point hold = sheet(base - cut.holdDownFromStop(), cut.holdDownFromBase());
        marks.add(new Line(new PathData().circle(hold.x(), hold.y(), 1.5 * BALLOON), Pen.DASHED));
        marks.addAll(Callout.balloon(hold.x(), hold.y(), BALLOON, "C"));
        return marks;
    }

    /** The blank with its bands, as far as it is shown, and the segment that is sawn off. */
    private void wood() {
        Legend legend = new Legend(design);
        double end = before() + REST * segment.stopDistance();
        double after = left ? piece.right() : -piece.left();
        double far = left ? -end : end;
        PlanPolygon whole = new PlanPolygon(List.of(
                new Point(piece.base(), after), new Point(0, 0), new Point(0, far), new Point(piece.base(), far)));
        BandSet set = panel.lamination().used(design.set(null));
        for (Patch patch : SegmentPatches.used(panel, piece, set).of(whole)) {
            PathData path = new PathData()
                    .lines(patch.polygon().points().stream().map(this::lying).toList())
                    .close();
            marks.add(new Area(path, legend.tone(patch.layer().band().species()), Pen.THIN));
        }
        PathData outline =
                new PathData().lines(whole.points().stream().map(this::lying).toList());
        marks.add(new Line(outline.close(), Pen.MEDIUM));
    }

    /** Where a point of the segment lies on the sheet. */
    private Point lying(Point point) {
        return sheet((left ? point.y() : -point.y()) + before(), piece.base() - point.x());
    }

    private void gauge() {
        double base = segment.stopDistance();
        double fence = FENCE / frame.scale();
        double stop = STOP / frame.scale();
        Point start = sheet(-REST * base, 0);
        Point end = sheet(base + stop, 0);
        PathData body = new PathData()
                .lines(List.of(start, end, sheet(base + stop, -fence), sheet(-REST * base, -fence)))
                .close();
        marks.add(new Paper(body, 1, Pen.MEDIUM));
        marks.add(new Line(Callout.line(start.x(), start.y(), end.x(), end.y()), Pen.THICK));
        marks.add(new Ink(new PathData()
                .lines(List.of(
                        sheet(base, -fence),
                        sheet(base, stop),
                        sheet(base + 0.6 * stop, stop),
                        sheet(base + 0.6 * stop, -fence)))
                .close()));
        Point from = sheet(0, -1.5 * fence);
        Point to = sheet(base, -1.5 * fence);
        marks.add(Callout.dimension(from.x(), from.y(), to.x(), to.y(), 1));
        Point middle = sheet(0.4 * base, -1.5 * fence);
        // Where the gauge is turned little, the line that the angle is measured from runs below this letter.
        angle(frame.scale() * base);
        marks.addAll(Callout.balloon(middle.x(), middle.y(), BALLOON, "B"));
    }

    /** The angle of the fence from square to the blade. */
    private void angle(double base) {
        double angle = cut.mitre().angle();
        double radius = 0.85 * base;
        Point corner = frame.at(0, 0);
        marks.add(new Line(Callout.line(corner.x(), corner.y(), corner.x() + radius + 4, corner.y()), Pen.DASHED));
        PathData arc = new PathData()
                .moveTo(corner.x() + radius, corner.y())
                .arcTo(
                        radius,
                        radius,
                        false,
                        false,
                        corner.x() + radius * Math.cos(angle),
                        corner.y() - radius * Math.sin(angle));
        marks.add(new Line(arc, Pen.CASED));
        marks.addAll(Callout.balloon(
                corner.x() + radius * Math.cos(0.4 * angle),
                corner.y() - radius * Math.sin(0.4 * angle),
                BALLOON,
                "A"));
    }

    /** The blade's slot, as wide as the kerf, on the far side of the segment. */
    private void blade() {
        double beyond = BLADE_BEYOND / frame.scale();
        double top = Math.max(tip().y(), 0) + beyond;
        double bottom = -beyond;
        double kerf = design.kerf();
        PathData slot = frame.path(
                        new Point(-kerf, bottom), new Point(0, bottom), new Point(0, top), new Point(-kerf, top))
                .close();
        marks.add(new Paper(slot, 1, Pen.MEDIUM));
        marks.add(new Line(frame.path(new Point(0, bottom), new Point(0, top)), Pen.THICK));
        Point end = frame.at(-kerf / 2, top);
        marks.addAll(Callout.balloon(end.x(), end.y() - BALLOON - 0.5, BALLOON, "D"));
    }
}
