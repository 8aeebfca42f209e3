package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The tones by which woods are told apart: a colour, a lightness that differs from the neighbours' when printed in
 * black and white, and a hatch. Eight of each; after eight woods the hatches move on, so that 64 can be told apart.
 */
public final class Tones {
    private static final String[] FILLS = {
        "#f3ead3", "#5b3f2b", "#c58a55", "#8fa08a", "#e3c39a", "#7d8590", "#a4563f", "#d9d9d9"
    };
    private static final String[] LINES = {
        "#b9a678", "#a98b6f", "#6e4622", "#4f5d4b", "#9a7442", "#c9ced6", "#e0b3a4", "#6f6f6f"
    };
    /** Side of the square that a hatch is drawn in. */
    public static final double HATCH_SIZE = 8;

    /** Strokes of hatches in a square of eight by eight, those across drawn beyond its corners so that tiles join. */
    private static final double[][][] HATCHES = {
        {{1, 2, 4, 2}, {5, 6, 8, 6}},
        {{-2, 10, 10, -2}, {-2, 2, 2, -2}, {6, 10, 10, 6}},
        {{0, 4, 8, 4}},
        {{4, 0, 4, 8}},
        {{-2, -2, 10, 10}, {-2, 6, 2, 10}, {6, -2, 10, 2}},
        {{-2, 10, 10, -2}, {-2, -2, 10, 10}},
        {{0, 2, 8, 2}, {0, 6, 8, 6}},
        {{0, 4, 8, 4}, {4, 0, 4, 8}}
    };

    /** Words of a wood's name with the tones that suit it, the best first. */
    private static final Map<String, int[]> SUITABLE = suitable();

    private Tones() {}

    /** The colour of this tone. */
    public static String fill(int tone) {
        return FILLS[tone % FILLS.length];
    }

    /** The colour of its hatch. */
    public static String line(int tone) {
        return LINES[tone % LINES.length];
    }

    /** The course of its hatch, in a square of eight by eight. */
    public static PathData hatch(int tone) {
        PathData path = new PathData();
        for (double[] stroke : HATCHES[(tone + tone / FILLS.length) % HATCHES.length]) {
            path.moveTo(stroke[0], stroke[1]).lineTo(stroke[2], stroke[3]);
        }
        return path;
    }

    /** A tone for each wood: a free one that suits its name, else the next free one, which is chosen last. */
    static List<Integer> of(List<String> species) {
        List<Integer> tones = new ArrayList<>(species.size());
        for (String name : species) {
            tones.add(suiting(name, tones));
        }
        int next = 0;
        for (int i = 0; i < tones.size(); i++) {
            if (tones.get(i) < 0) {
                while (tones.contains(next)) {
                    next++;
                }
                tones.set(i, next);
            }
        }
        return List.copyOf(tones);
    }

    /** A free tone that suits the name; -1 if there is none. */
    private static int suiting(String name, List<Integer> taken) {
        return Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^a-z]+", -1))
                .filter(SUITABLE::containsKey)
                .flatMapToInt(word -> Arrays.stream(SUITABLE.get(word)))
                .filter(tone -> !taken.contains(tone))
                .findFirst()
                .orElse(-1);
    }

    private static Map<String, int[]> suitable() {
        Map<String, int[]> tones = new TreeMap<>();
        put(tones, "maple holly birch sycamore basswood lime aspen hornbeam boxwood", 0, 4, 7);
        put(tones, "ash beech pine spruce fir poplar hickory tulipwood pearwood", 4, 0, 7);
        put(tones, "walnut wenge ebony rosewood blackwood bog", 1, 5);
        put(tones, "cherry padauk mahogany bloodwood redwood jatoba bubinga yew sapele purpleheart", 6, 2);
        put(tones, "alder oak elm teak iroko chestnut larch cedar plum apple", 2, 4);
        put(tones, "locust robinia mulberry olive laburnum", 3, 2);
        return tones;
    }

    private static void put(Map<String, int[]> tones, String words, int... suitable) {
        for (String word : words.split(" ", -1)) {
            tones.put(word, suitable);
        }
    }
}
