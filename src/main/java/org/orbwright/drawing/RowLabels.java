package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Labels in a row below a drawing, each with a line to what it names, moved apart so that none hides another. */
final class RowLabels {
    /** Height of the row with its lines, in letters. */
    static final double HEIGHT = 3.2;

    private static final double GAP = 0.8;
    private static final double SMALLEST = 0.75;

    private RowLabels() {}

    /** Where something is along the row, and what it is called. */
    record Target(double x, String text) {}

    /** The labels, from the left, between two margins; their lines start at the top. */
    static List<Mark> marks(List<Target> targets, double top, double left, double right, double letters) {
        double size = letters;
        List<Target> shown = targets;
        for (int every = 1; room(shown, size) > right - left; ) {
            if (size > SMALLEST * letters) {
                size = Math.max(SMALLEST * letters, 0.95 * size);
            } else {
                // Of very many, every second or third and so on, as on a rule: they lie in order.
                every++;
                shown = thinned(targets, every);
            }
        }
        double[] middles = middles(shown, size, left, right);
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < middles.length; i++) {
            Target target = shown.get(i);
            double bend = top + 0.5 * letters;
            double bottom = top + 1.7 * letters;
            PathData leader = new PathData().moveTo(target.x(), top).lineTo(target.x(), bend);
            leader.lineTo(middles[i], bottom);
            marks.add(new Line(leader, Pen.THIN));
            marks.add(new Label(middles[i], bottom + 0.3 * letters + 0.75 * size, size, Anchor.MIDDLE, target.text()));
        }
        return marks;
    }

    private static List<Target> thinned(List<Target> targets, int every) {
        List<Target> kept = new ArrayList<>();
        for (int i = 0; i < targets.size(); i += every) {
            kept.add(targets.get(i));
        }
        return kept;
    }

    private static double room(List<Target> targets, double size) {
        return targets.stream().mapToDouble(target -> room(target, size)).sum();
    }

    private static double room(Target target, double size) {
        return Lettering.width(target.text(), size) + GAP * size;
    }

    /** As near to the targets as the room allows: pushed on from the left, then back from the right. */
    private static double[] middles(List<Target> targets, double size, double left, double right) {
        double[] middles = new double[targets.size()];
        double least = left;
        for (int i = 0; i < middles.length; i++) {
            double half = room(targets.get(i), size) / 2;
            middles[i] = Math.max(least + half, targets.get(i).x());
            least = middles[i] + half;
        }
        double most = right;
        for (int i = middles.length - 1; i >= 0; i--) {
            double half = room(targets.get(i), size) / 2;
            middles[i] = Math.min(most - half, middles[i]);
            most = middles[i] - half;
        }
        return middles;
    }
}
