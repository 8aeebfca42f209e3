package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.stock.CutBoard;
import org.orbwright.stock.CutBoard.LaneCut;
import org.orbwright.stock.CutBoard.Section;
import org.orbwright.stock.CutBoard.StripCut;

/**
 * A section of a board seen from the clear end, the jointed edge at the left and the upper face on top: how the strips
 * lie in the thickness. The kerf is that of a rip. The bottom of the room on the sheet is not regarded.
 */
record BoardEnd(
        CutBoard board, Section section, StripKey key, LengthUnit unit, double kerf, Box sheet, double letters) {
    /** The board is at most so thick on the sheet, and at least. */
    static final double HIGHEST = 48;

    private static final double LOWEST = 9;

    private double across() {
        return Math.min(sheet.width() / board.clearWidth(), HIGHEST / board.surfacedThickness());
    }

    private double deep() {
        return Math.max(across(), LOWEST / board.surfacedThickness());
    }

    /** How many times larger it is in the thickness than across. */
    double stretch() {
        return deep() / across();
    }

    /** Where the labels below it end. */
    double end() {
        return y(board.surfacedThickness()) + (2.2 + RowLabels.HEIGHT) * letters;
    }

    private double x(double fromJointedEdge) {
        return sheet.left() + across() * fromJointedEdge;
    }

    private double y(double fromUpperFace) {
        return sheet.top() + deep() * fromUpperFace;
    }

    private Box box(double from, double to, double upper, double lower) {
        return new Box(x(from), y(upper), x(to), y(lower));
    }

    List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        double thickness = board.surfacedThickness();
        double width = board.clearWidth();
        Box whole = box(0, width, 0, thickness);
        marks.add(new Line(StripKey.crossed(whole), Pen.THIN));
        BoardParts parts = new BoardParts(key);
        for (LaneCut lane : section.lanes()) {
            double beyond = Math.min(lane.to() + kerf, width);
            marks.add(new Paper(box(lane.from(), beyond, 0, thickness).path(), 1, Pen.NONE));
            strips(lane, parts);
        }
        marks.addAll(parts.marks());
        marks.add(new Line(whole.path(), Pen.MEDIUM));
        marks.add(new Line(Callout.line(x(0), y(0), x(0), y(thickness)), Pen.THICK));
        double side = x(0) - 0.9 * letters;
        marks.add(Callout.dimension(side, y(0), side, y(thickness), letters / 3));
        String thick = unit.sayNumber(thickness);
        double size = Lettering.size(thick, BoardDrawing.LEFT - 2.4 * letters, 0.9 * letters);
        marks.add(new Label(side - 0.6 * letters, y(thickness / 2) + 0.36 * size, size, Anchor.END, thick));
        dimensions(marks);
        return marks;
    }

    private void strips(LaneCut lane, BoardParts parts) {
        double thickness = board.surfacedThickness();
        if (lane.isKept()) {
            Box box = box(lane.from(), lane.to(), 0, thickness);
            parts.kept(box);
            parts.above(box.label(List.of("keep", "k"), letters, BoardDrawing.SMALLEST));
        }
        if (lane.thicknessWaste() > 0) {
            parts.waste(box(lane.from(), lane.to(), thickness - lane.thicknessWaste(), thickness));
        }
        for (StripCut strip : lane.strips()) {
            Box box = box(lane.from(), lane.to(), strip.from(), strip.to());
            parts.strip(strip, box);
            parts.above(box.label(key.labels(strip), letters, BoardDrawing.SMALLEST));
        }
    }

    /** The width of each lane, and below it where it ends, from the jointed edge. */
    private void dimensions(List<Mark> marks) {
        double y = y(board.surfacedThickness()) + letters;
        List<RowLabels.Target> rips = new ArrayList<>();
        rips.add(new RowLabels.Target(x(0), "0"));
        for (LaneCut lane : section.lanes()) {
            marks.add(Callout.dimension(x(lane.from()), y, x(lane.to()), y, letters / 3));
            String width = unit.sayNumber(lane.to() - lane.from());
            double size = Lettering.size(width, 0.9 * (x(lane.to()) - x(lane.from())), 0.9 * letters);
            if (size >= BoardDrawing.SMALLEST) {
                double middle = (x(lane.from()) + x(lane.to())) / 2;
                marks.add(new Label(middle, y + 1.2 * size, size, Anchor.MIDDLE, width));
            }
            rips.add(new RowLabels.Target(x(lane.to()), unit.sayNumber(lane.to())));
        }
        if (section.widthWaste() > 0) {
            rips.add(new RowLabels.Target(x(board.clearWidth()), unit.sayNumber(board.clearWidth())));
        }
        marks.addAll(
                RowLabels.marks(rips, y + 0.6 * letters, sheet.left() - 2 * letters, sheet.right() + letters, letters));
    }
}
