package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.orbwright.drawing.Drawing.Anchor;
import org.orbwright.drawing.Drawing.Label;
import org.orbwright.drawing.Drawing.Mark;

/** Labels in a column beside a plot, each with a leader to what it names, moved apart so that none hides another. */
final class SideLabels {
    private static final double SPACING = 1.6;

    private SideLabels() {}

    /**
     * What a label names.
     *
     * @param x where its leader points
     * @param y where its leader points
     * @param text the label
     * @param seen whether there is anything to point at
     */
    record Target(double x, double y, String text, boolean seen) {}

    /** The labels from x to the sheet's right margin, between two heights. */
    static List<Mark> marks(
            List<Target> targets, double x, double top, double bottom, double sheetWidth, double letters) {
        List<Target> ordered = new ArrayList<>(targets);
        ordered.sort(Comparator.comparingDouble(Target::y));
        double room = bottom - top;
        double spacing = Math.min(SPACING * letters, room / ordered.size());
        double size = Math.min(letters, spacing / SPACING * 1.3);
        double[] heights = heights(ordered, top + spacing / 2, bottom - spacing / 2, spacing);
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < heights.length; i++) {
            Target target = ordered.get(i);
            if (target.seen()) {
                marks.addAll(Callout.leader(x - letters / 3, heights[i], target.x(), target.y(), letters / 6));
            }
            String text = Lettering.fit(target.text(), sheetWidth * 0.98 - x, size);
            marks.add(new Label(x, heights[i] + 0.36 * size, size, Anchor.START, text));
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
