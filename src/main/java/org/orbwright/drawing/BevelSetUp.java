package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.jig.JigPlan.BevelCut;

/**
 * A bevel cut seen along the blade: the panel flat on the table with its rim against a fence above the blade, and the
 * blade leaning towards the fence. The fence's face is at 0, the table's top at 0.
 */
final class BevelSetUp {
    private static final double BALLOON = 2.7;
    /** The panel is shown so many thicknesses beyond the cut. */
    private static final double SHOWN = 1.6;

    private final Design design;
    private final BevelCut cut;
    private final SetUpFrame frame;
    private final double end;
    private final double fence;
    private final double below;
    private final List<Mark> marks = new ArrayList<>();

    BevelSetUp(Design design, BevelCut cut) {
        this.design = design;
        this.cut = cut;
        double thickness = design.thickness();
        this.end = cut.inset() + SHOWN * thickness;
        this.fence = 0.6 * thickness;
        this.below = 0.35 * thickness;
        Box room = SawSetUpDrawing.ROOM;
        this.frame = SetUpFrame.fitting(
                List.of(new Point(-2 * fence, -below), new Point(end, 1.3 * thickness)),
                new Box(room.left() + 4, room.top() + 2, room.right() - 4, room.bottom() - 7));
    }

    List<Mark> marks() {
        double height = cut.bladeHeight();
        double thickness = design.thickness();
        double table = 2 * fence;
        PathData panel = frame.path(
                        new Point(0, height),
                        new Point(0, thickness),
                        new Point(end, thickness),
                        new Point(end, 0),
                        new Point(cut.inset(), 0))
                .close();
        marks.add(new Paper(panel, 1, Pen.MEDIUM));
        marks.add(new Line(frame.path(new Point(0, height), new Point(0, 0), new Point(cut.inset(), 0)), Pen.DASHED));
        marks.add(new Paper(
                frame.path(
                                new Point(-fence, height),
                                new Point(0, height),
                                new Point(0, 1.3 * thickness),
                                new Point(-fence, 1.3 * thickness))
                        .close(),
                1,
                Pen.MEDIUM));
        blade();
        marks.add(new Line(frame.path(new Point(-table, 0), new Point(end, 0)), Pen.THICK));
        measures();
        name("fence", -fence / 2, 1.15 * thickness);
        name("panel", cut.inset() + thickness, thickness / 3);
        name("table", -1.4 * fence, -below / 2);
        return marks;
    }

    private void name(String text, double x, double y) {
        Point at = frame.at(x, y);
        double letters = SawSetUpDrawing.LETTERS;
        marks.add(new Label(at.x(), at.y() + 0.36 * letters, letters, Anchor.MIDDLE, text));
    }

    /** The blade from below the table to its highest tooth, as wide as the kerf away from the seam. */
    private void blade() {
        double slope = Math.tan(cut.tilt().angle());
        double kerf = design.kerf() / Math.cos(cut.tilt().angle());
        Point out = new Point(cut.inset() + below * slope, -below);
        Point top = new Point(cut.inset() - cut.bladeHeight() * slope, cut.bladeHeight());
        PathData body = frame.path(out, top, new Point(top.x() - kerf, top.y()), new Point(out.x() - kerf, out.y()))
                .close();
        marks.add(new Paper(body, 1, Pen.MEDIUM));
        marks.add(new Line(frame.path(out, top), Pen.THICK));
    }

    private void measures() {
        double height = cut.bladeHeight();
        marks.add(new Line(frame.path(new Point(cut.inset(), 0), new Point(cut.inset(), height)), Pen.DASHED));
        Point foot = frame.at(cut.inset(), 0);
        double half = cut.tilt().angle() / 2;
        double radius = 0.7 * height * frame.scale();
        PathData arc = new PathData()
                .moveTo(foot.x(), foot.y() - radius)
                .arcTo(
                        radius,
                        radius,
                        false,
                        false,
                        foot.x() - radius * Math.sin(2 * half),
                        foot.y() - radius * Math.cos(2 * half));
        marks.add(new Line(arc, Pen.CASED));
        marks.add(new Line(
                Callout.line(
                        foot.x() - radius * Math.sin(half),
                        foot.y() - radius * Math.cos(half),
                        foot.x() + 3 * BALLOON,
                        foot.y() - radius),
                Pen.CASED));
        marks.addAll(Callout.balloon(foot.x() + 3 * BALLOON, foot.y() - radius, BALLOON, "A"));
        double low = frame.y() + frame.scale() * below + 2;
        Point rim = frame.at(0, 0);
        marks.add(new Line(Callout.line(rim.x(), rim.y(), rim.x(), low + 1), Pen.THIN));
        marks.add(new Line(Callout.line(foot.x(), foot.y(), foot.x(), low + 1), Pen.THIN));
        marks.add(Callout.dimension(rim.x(), low, foot.x(), low, 1));
        marks.addAll(Callout.balloon(rim.x() - BALLOON - 2, low, BALLOON, "B"));
        Point tooth = frame.at(-1.5 * fence, height);
        marks.add(new Line(Callout.line(tooth.x() - 1, tooth.y(), rim.x(), tooth.y()), Pen.THIN));
        marks.add(Callout.dimension(tooth.x(), rim.y(), tooth.x(), tooth.y(), 1));
        marks.addAll(Callout.balloon(tooth.x(), (rim.y() + tooth.y()) / 2, BALLOON, "C"));
        Point land = frame.at(0, (height + design.thickness()) / 2);
        marks.add(new Line(Callout.line(land.x(), land.y(), land.x() + 2.5 * BALLOON, land.y()), Pen.CASED));
        marks.addAll(Callout.balloon(land.x() + 2.5 * BALLOON, land.y(), BALLOON, "D"));
    }
}
