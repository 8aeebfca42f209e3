package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.band.BandStack;
import org.orbwright.band.BandStack.Layer;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.drawing.PanelPlan.Place;

/**
 * A rule at true size beside a picture: the bands of one segment square to their glue lines, with the distance of each
 * glue line on its left and the width of each band on its right. Straight bands are measured from the base, tilted ones
 * from the corner that is farthest on the first band's side.
 */
final class BandRule {
    /** Width of the strip and of the room for leaders at each side, in letters. */
    private static final double STRIP = 1.8;

    private static final double LEADER = 1.8;
    private static final double SPACING = 1.3;
    /** Height of the heads of the columns, in letters. */
    private static final double HEADS = 3.4;
    /** Letters rise above the middle of a line by this share of their size. */
    private static final double RISE = 0.36;

    private final Design design;
    private final Place place;
    private final BandSet set;
    private final List<Layer> layers;
    private final double zero;
    private final List<String> distances = new ArrayList<>();
    private final List<String> widths = new ArrayList<>();
    private final List<String> leftHead;
    private final List<String> rightHead;

    BandRule(Design design, Place place, BandSet set) {
        this.design = design;
        this.place = place;
        this.set = place.panel().lamination().used(set);
        this.layers = BandStack.of(place.panel().lamination(), place.piece(), this.set)
                .layers();
        this.zero = layers.isEmpty() ? 0 : layers.get(0).outer().offset();
        distances.add(design.unit().sayNumber(0));
        for (Layer layer : layers) {
            distances.add(design.unit().sayNumber(distance(layer)));
            widths.add(
                    layer.number() + ": " + design.unit().sayNumber(layer.band().width()));
        }
        String unit = design.unit().symbol();
        this.leftHead = List.of("from the", (straight() ? "base, " : "ring, ") + unit);
        this.rightHead = List.of("band:", "width, " + unit);
    }

    private boolean straight() {
        return place.panel().lamination().straight();
    }

    /** Distance of the line on a band's inner side from where the rule starts. */
    private double distance(Layer layer) {
        return zero - layer.inner().offset();
    }

    /** Length of the rule; a design without bands has none. */
    double length() {
        return layers.isEmpty() ? 0 : distance(layers.get(layers.size() - 1));
    }

    /** Width that it takes, in letters. */
    double width() {
        return layers.isEmpty() ? 0 : widest(distances, leftHead) + widest(widths, rightHead) + STRIP + 2 * LEADER;
    }

    private static double widest(List<String> texts, List<String> head) {
        return Math.max(
                texts.stream().mapToDouble(t -> Lettering.width(t, 1)).max().orElse(0),
                head.stream().mapToDouble(t -> Lettering.width(t, 1)).max().orElseThrow());
    }

    /** How far its letters reach above its lower end. */
    double above(double letters) {
        if (layers.isEmpty()) {
            return 0;
        }
        double highest = Math.max(heights(ends(), letters)[layers.size()], length());
        return highest + (HEADS + 1) * letters;
    }

    /** How far its letters reach below its lower end. */
    double below(double letters) {
        return layers.isEmpty() ? 0 : letters - heights(ends(), letters)[0];
    }

    /** Where the lines are, upwards from the lower end. */
    private double[] ends() {
        double[] ends = new double[layers.size() + 1];
        for (int i = 0; i < layers.size(); i++) {
            ends[i + 1] = distance(layers.get(i));
        }
        return ends;
    }

    private double[] middles() {
        double[] ends = ends();
        double[] middles = new double[layers.size()];
        for (int i = 0; i < middles.length; i++) {
            middles[i] = (ends[i] + ends[i + 1]) / 2;
        }
        return middles;
    }

    /** Heights of labels near what they name: neighbours that are too close are pooled around their mean. */
    private static double[] heights(double[] wanted, double letters) {
        double spacing = SPACING * letters;
        double[] means = new double[wanted.length];
        int[] counts = new int[wanted.length];
        int pools = 0;
        for (int i = 0; i < wanted.length; i++) {
            means[pools] = wanted[i] - i * spacing;
            counts[pools++] = 1;
            while (pools > 1 && means[pools - 2] > means[pools - 1]) {
                pools--;
                int both = counts[pools - 1] + counts[pools];
                means[pools - 1] = (means[pools - 1] * counts[pools - 1] + means[pools] * counts[pools]) / both;
                counts[pools - 1] = both;
            }
        }
        double[] heights = new double[wanted.length];
        int next = 0;
        for (int pool = 0; pool < pools; pool++) {
            for (int k = 0; k < counts[pool]; k++, next++) {
                heights[next] = means[pool] + next * spacing;
            }
        }
        return heights;
    }

    /** The rule, its left end and its lower end at a place of the sheet. */
    List<Mark> marks(double left, double bottom, double letters, Legend legend) {
        if (layers.isEmpty()) {
            return List.of();
        }
        double x = left + (widest(distances, leftHead) + LEADER) * letters;
        double right = x + STRIP * letters;
        double[] ends = ends();
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < layers.size(); i++) {
            Box box = new Box(x, bottom - ends[i + 1], right, bottom - ends[i]);
            marks.add(new Area(box.path(), legend.tone(layers.get(i).band().species()), Pen.THIN));
        }
        column(marks, distances, ends, x, bottom, -letters);
        column(marks, widths, middles(), right, bottom, letters);
        double head = bottom - above(letters) + letters;
        marks.addAll(Callout.text(x - LEADER * letters, head - letters, letters, Anchor.END, leftHead));
        marks.addAll(Callout.text(right + LEADER * letters, head - letters, letters, Anchor.START, rightHead));
        return marks;
    }

    /** A column of labels, each with a leader to the strip; to the left of it where the step is below 0. */
    private static void column(
            List<Mark> marks, List<String> texts, double[] wanted, double x, double bottom, double step) {
        double letters = Math.abs(step);
        double[] heights = heights(wanted, letters);
        PathData leaders = new PathData();
        for (int i = 0; i < wanted.length; i++) {
            leaders.moveTo(x, bottom - wanted[i]).lineTo(x + 0.3 * step, bottom - wanted[i]);
            leaders.lineTo(x + (LEADER - 0.3) * step, bottom - heights[i]);
            marks.add(new Label(
                    x + LEADER * step,
                    bottom - heights[i] + RISE * letters,
                    letters,
                    step < 0 ? Anchor.END : Anchor.START,
                    texts.get(i)));
        }
        marks.add(new Line(leaders, Pen.THIN));
    }

    /** The ring at the corner that tilted bands are measured from; nothing for straight ones. */
    List<Point> ring() {
        if (straight() || layers.isEmpty()) {
            return List.of();
        }
        double cos = layers.get(0).outer().cos();
        double sin = layers.get(0).outer().sin();
        Point left = new Point(place.piece().base(), -place.piece().left());
        Point right = new Point(place.piece().base(), place.piece().right());
        Point base = left.along(cos, sin) > right.along(cos, sin) ? left : right;
        return List.of(place.at(base.along(cos, sin) > 0 ? base : new Point(0, 0)));
    }

    /** What is measured, in a sentence. */
    String sentence() {
        if (layers.isEmpty()) {
            return "";
        }
        return straight()
                ? "Rule: from the base, square to it."
                : "Rule: from the corner with the ring, square to the bands.";
    }

    /** A line of text for each band with its wood, its width and where it lies; in inches with fractions. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (layers.isEmpty()) {
            return lines;
        }
        lines.add(straight() ? "Bands, from the base:" : "Bands, from the ring:");
        double from = 0;
        for (Layer layer : layers) {
            String wood = layer.number() + " " + layer.band().species();
            String width = Lettering.length(design.unit(), layer.band().width());
            String start = Lettering.unbroken(design.unit().sayWithFraction(from));
            String end = Lettering.length(design.unit(), distance(layer));
            lines.add(wood + ": " + width + " wide, at " + start + " to " + end);
            from = distance(layer);
        }
        return lines;
    }
}
