package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.stock.CutBoard;
import org.orbwright.stock.CutBoard.LaneCut;
import org.orbwright.stock.CutBoard.Section;
import org.orbwright.stock.CutBoard.StripCut;

/**
 * A board seen from above with its crosscuts and rips: the clear end at the left, the jointed edge at the top. Along
 * and across it has scales of its own where a long and narrow board could not be read otherwise. The jointing is lost
 * at the jointed edge, the kerf is that of a crosscut. The bottom of the room on the sheet is not regarded.
 */
record BoardView(
        CutBoard board,
        StripKey key,
        SectionKinds kinds,
        LengthUnit unit,
        double jointing,
        double kerf,
        Box sheet,
        double letters) {
    /** The board is at least so high on the sheet, and at most. */
    private static final double LOWEST = 62;

    private static final double HIGHEST = 110;
    /** Distance of the hatch that marks sticks to be turned. */
    private static final double HATCH = 4;

    private double top() {
        return sheet.top() + 1.6 * letters;
    }

    private double along() {
        return Math.min(sheet.width() / board.length(), HIGHEST / board.width());
    }

    private double across() {
        return Math.max(along(), LOWEST / board.width());
    }

    /** How many times larger it is across than along. */
    double stretch() {
        return across() / along();
    }

    double bottom() {
        return top() + across() * board.width();
    }

    /** Where the labels below it end. */
    double end() {
        return bottom() + (2.2 + RowLabels.HEIGHT) * letters;
    }

    private double x(double fromClearEnd) {
        return sheet.left() + along() * ((board.length() - board.clearLength()) / 2 + fromClearEnd);
    }

    private double y(double fromJointedEdge) {
        return top() + across() * (jointing + fromJointedEdge);
    }

    private Box box(double from, double to, double nearer, double farther) {
        return new Box(x(from), y(nearer), x(to), y(farther));
    }

    List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        Box rough = new Box(sheet.left(), top(), sheet.left() + along() * board.length(), bottom());
        marks.add(new Line(StripKey.crossed(rough), Pen.THIN));
        BoardParts parts = new BoardParts(key);
        for (int s = 0; s < board.sections().size(); s++) {
            Section section = board.sections().get(s);
            double beyond = Math.min(section.to() + kerf, board.clearLength());
            marks.add(
                    new Paper(box(section.from(), beyond, 0, board.clearWidth()).path(), 1, Pen.NONE));
            section(section, parts);
            Box above = new Box(x(section.from()), top() - 1.7 * letters, x(section.to()), top() - 0.2 * letters);
            parts.above(above.label(List.of(kinds.letterOf(s)), 1.2 * letters, BoardDrawing.SMALLEST / 2));
        }
        marks.addAll(parts.marks());
        waste(marks);
        marks.add(new Line(rough.path(), Pen.DASHED));
        marks.add(new Line(box(0, board.clearLength(), 0, board.clearWidth()).path(), Pen.MEDIUM));
        marks.add(new Line(Callout.line(x(0), y(0), x(board.clearLength()), y(0)), Pen.THICK));
        dimensions(marks);
        return marks;
    }

    private void section(Section section, BoardParts parts) {
        for (LaneCut lane : section.lanes()) {
            lane(section, lane, parts);
        }
        if (section.isKept()) {
            Box whole = box(section.from(), section.to(), 0, board.clearWidth());
            kept(whole, section.to() - section.from(), parts);
        }
        if (section.widthWaste() > 0) {
            parts.waste(
                    box(section.from(), section.to(), board.clearWidth() - section.widthWaste(), board.clearWidth()));
        }
    }

    private void lane(Section section, LaneCut lane, BoardParts parts) {
        Box box = box(section.from(), section.to(), lane.from(), lane.to());
        if (lane.isKept()) {
            kept(box, lane.to() - lane.from(), parts);
            return;
        }
        parts.strip(lane.strips().get(0), box);
        if (lane.rotated()) {
            parts.above(List.of(new Line(box.hatch(HATCH), Pen.CASED)));
        }
        parts.above(box.label(labels(lane), letters, BoardDrawing.SMALLEST));
    }

    private void kept(Box box, double measure, BoardParts parts) {
        parts.kept(box);
        String size = unit.sayNumber(measure);
        parts.above(box.label(List.of("keep " + size, "keep", "k"), letters, BoardDrawing.SMALLEST));
    }

    /** Of several strips one above the other, those that are alike are counted. */
    private List<String> labels(LaneCut lane) {
        if (lane.strips().size() == 1) {
            return key.labels(lane.strips().get(0));
        }
        return List.of(counted(lane, false), counted(lane, true), lane.strips().size() + " strips");
    }

    private String counted(LaneCut lane, boolean brief) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (StripCut strip : lane.strips()) {
            List<String> labels = key.labels(strip);
            counts.merge(labels.get(brief ? labels.size() - 1 : 0), 1, Integer::sum);
        }
        return counts.entrySet().stream()
                .map(count -> (count.getValue() > 1 ? count.getValue() + " x " : "") + count.getKey())
                .collect(Collectors.joining(", "));
    }

    /** What is waste of the length. */
    private void waste(List<Mark> marks) {
        if (board.lengthWaste() > 0) {
            Box rest = box(board.clearLength() - board.lengthWaste(), board.clearLength(), 0, board.clearWidth());
            String length = unit.sayNumber(board.lengthWaste());
            marks.add(new Line(rest.path(), Pen.THIN));
            marks.addAll(rest.label(List.of("waste " + length, length), letters, BoardDrawing.SMALLEST));
        }
    }

    /** The length of each section, and below it where each crosscut is, from the clear end. */
    private void dimensions(List<Mark> marks) {
        double y = bottom() + letters;
        List<RowLabels.Target> cuts = new ArrayList<>();
        cuts.add(new RowLabels.Target(x(0), "0"));
        for (Section section : board.sections()) {
            Box below = new Box(x(section.from()), y, x(section.to()), y + 1.6 * letters);
            marks.add(Callout.dimension(below.left(), y, below.right(), y, letters / 3));
            String length = unit.sayNumber(section.to() - section.from());
            double size = Lettering.size(length, 0.9 * below.width(), 0.9 * letters);
            if (size >= BoardDrawing.SMALLEST) {
                marks.add(new Label(below.middle(), y + 1.2 * size, size, Anchor.MIDDLE, length));
            }
            cuts.add(new RowLabels.Target(x(section.to()), unit.sayNumber(section.to())));
        }
        if (board.lengthWaste() > 0) {
            cuts.add(new RowLabels.Target(x(board.clearLength()), unit.sayNumber(board.clearLength())));
        }
        marks.addAll(
                RowLabels.marks(cuts, y + 0.6 * letters, sheet.left() - 3 * letters, sheet.right() + letters, letters));
    }
}
