package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Labels in a column beside a plot, each with a leader to what it names, moved apart so that none hides another. */
final class SideLabels {
    private static final double SPACING = 1.6;
    /** The least spacing that can be read. */
    private static final double CLOSEST = 0.9;
    /** A long label is written smaller, down to this share, before it is cut. */
    private static final double SMALLEST = 0.75;

    private SideLabels() {}

    /** What a label names: where its leader points, if there is anything to be seen. */
    record Target(double x, double y, String text, boolean seen) {}

    /** The labels from x to the sheet's right margin, between two heights. */
    static List<Mark> marks(
            List<Target> targets, double x, double top, double bottom, double sheetWidth, double letters) {
        List<Target> sorted = new ArrayList<>(targets);
        sorted.sort(Comparator.comparingDouble(Target::y));
        // Of very many, every second or third and so on, as on a rule: they lie in order.
        int every = (int) Math.ceil(sorted.size() * CLOSEST * letters / (bottom - top));
        List<Target> ordered = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i += every) {
            ordered.add(sorted.get(i));
        }
        double spacing = Math.min(SPACING * letters, (bottom - top) / ordered.size());
        double size = Math.min(letters, spacing / SPACING * 1.3);
        double[] heights = heights(ordered, top + spacing / 2, bottom - spacing / 2, spacing);
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < heights.length; i++) {
            Target target = ordered.get(i);
            if (target.seen()) {
                marks.addAll(Callout.leader(x - letters / 3, heights[i], target.x(), target.y(), letters / 6));
            }
            double room = sheetWidth * 0.98 - x;
            double fitting = Math.max(SMALLEST * size, Lettering.size(target.text(), room, size));
            String text = Lettering.fit(target.text(), room, fitting);
            marks.add(new Label(x, heights[i] + 0.36 * fitting, fitting, Anchor.START, text));
        }
        return marks;
    }

    /** As near to the targets as the spacing allows: pushed down from above, then up from below. */
    private static double[] heights(List<Target> targets, double top, double bottom, double spacing) {
        double[] heights = new double[targets.size()];
        double least = top;
        for (int i = 0; i < heights.length; i++) {
            heights[i] = Math.max(least, targets.get(i).y());
            least = heights[i] + spacing;
        }
        double most = bottom;
        for (int i = heights.length - 1; i >= 0; i--) {
            heights[i] = Math.min(most, heights[i]);
            most = heights[i] - spacing;
        }
        return heights;
    }
}
