package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.orbwright.stock.CutBoard.StripCut;

/**
 * The parts of a board in one view of it, none of which hides another. What looks alike is one mark, since a long board
 * has more parts than a picture may have marks.
 */
final class BoardParts {
    private final StripKey key;
    /** Parts of the board's wood by how much of its tone is hidden. */
    private final Map<Double, PathData> woods = new TreeMap<>();

    private final PathData waste = new PathData();
    private final List<Mark> above = new ArrayList<>();

    BoardParts(StripKey key) {
        this.key = key;
    }

    /** A strip, or what is kept of a lane's thickness. */
    void strip(StripCut strip, Box box) {
        wood(key.covered(strip), box);
    }

    /** Wood that is left over and kept. */
    void kept(Box box) {
        wood(StripKey.KEPT, box);
    }

    private void wood(double covered, Box box) {
        woods.computeIfAbsent(covered, some -> new PathData()).append(box.path());
    }

    void waste(Box box) {
        waste.append(StripKey.crossed(box));
    }

    /** What is drawn over all parts. */
    void above(List<Mark> marks) {
        above.addAll(marks);
    }

    List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        woods.forEach((covered, path) -> marks.addAll(key.wood(covered, path)));
        if (!waste.isEmpty()) {
            marks.add(new Line(waste, Pen.THIN));
        }
        marks.addAll(above);
        return marks;
    }
}
