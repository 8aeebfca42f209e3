package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.orbwright.design.Band;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;

/** The woods of a design with their tones, or other parts with their looks, and the key to them below a drawing. */
final class Legend {
    /** Margin around a drawing, as a share of half its size. */
    static final double MARGIN = 0.06;

    private static final int MOST_COLUMNS = 3;
    /** Where the columns start, as a share of the width; the same is left free on the other side. */
    private static final double INDENT = 0.03;
    /** Width of a box of tone with its gap, as a share of the width. */
    private static final double BOX = 0.063;

    private static final double ROW = 0.045;

    private final List<String> species;
    private final List<Integer> tones;
    private final List<Function<Box, List<Mark>>> looks;
    private final int columns;

    Legend(Design design) {
        this(woods(design));
    }

    private Legend(List<String> woods) {
        this(woods, Tones.of(woods));
    }

    private Legend(List<String> woods, List<Integer> tones) {
        this(woods, tones, tones.stream().map(Legend::look).toList());
    }

    /** A key to other things than woods, each with its look. */
    Legend(Map<String, Function<Box, List<Mark>>> looks) {
        this(List.copyOf(looks.keySet()), List.of(), List.copyOf(looks.values()));
    }

    private Legend(List<String> names, List<Integer> tones, List<Function<Box, List<Mark>>> looks) {
        this.species = List.copyOf(names);
        this.tones = List.copyOf(tones);
        this.looks = List.copyOf(looks);
        this.columns = columns();
    }

    private static Function<Box, List<Mark>> look(int tone) {
        return box -> List.of(new Area(box.path(), tone, Pen.THIN));
    }

    private static List<String> woods(Design design) {
        Set<String> names = new LinkedHashSet<>();
        for (Panel panel : design.panels()) {
            for (Band band : panel.lamination().bands()) {
                names.add(band.species());
            }
        }
        return List.copyOf(names);
    }

    /** As many columns as the longest name leaves room for. */
    private int columns() {
        double longest = species.stream()
                .mapToDouble(name -> Lettering.width(name, letters(1)))
                .max()
                .orElse(0);
        return Math.max(1, Math.min(MOST_COLUMNS, (int) ((1 - 2 * INDENT) / (BOX + longest + INDENT))));
    }

    /** The key to those woods alone that areas of a picture show; each keeps its tone. */
    Legend drawn(List<Mark> marks) {
        Set<Integer> seen = marks.stream()
                .filter(Area.class::isInstance)
                .map(mark -> ((Area) mark).tone())
                .collect(Collectors.toSet());
        List<String> woods =
                species.stream().filter(wood -> seen.contains(tone(wood))).toList();
        return new Legend(woods, woods.stream().map(this::tone).toList());
    }

    /** The woods. */
    List<String> species() {
        return species;
    }

    /** The tone of a wood. */
    int tone(String name) {
        return tones.get(species.indexOf(name));
    }

    /** The word for a set, or for both. */
    static String setName(Enum<?> set) {
        return set.name().toLowerCase(Locale.ROOT);
    }

    /** Height of letters that suit a sheet of this width. */
    static double letters(double width) {
        return width * 0.028;
    }

    /** Height of the key below a drawing of this width. */
    double height(double width) {
        int rows = (species.size() + columns - 1) / columns;
        return width * ROW * (rows + 0.5);
    }

    /** The key, from the given height downwards. */
    List<Mark> marks(double width, double top) {
        List<Mark> marks = new ArrayList<>();
        double letters = letters(width);
        for (int i = 0; i < species.size(); i++) {
            int row = i / columns;
            double columnWidth = width * (1 - 2 * INDENT) / columns;
            double x = width * INDENT + columnWidth * (i % columns);
            double y = top + width * ROW * row;
            double box = width * ROW * 0.7;
            double room = columnWidth - width * BOX;
            marks.addAll(looks.get(i).apply(new Box(x, y, x + 1.6 * box, y + box)));
            marks.add(new Label(
                    x + 2 * box, y + box * 0.8, letters, Anchor.START, Lettering.fit(species.get(i), room, letters)));
        }
        return marks;
    }
}
