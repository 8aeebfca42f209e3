package org.orbwright.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The fewest seams between two panels of the same set that are still possible while panels are put into one of two
 * sets, one after the other.
 *
 * <p>Once round a corner the set changes an even number of times. The seams that meet there and change nothing are
 * therefore odd in number where an odd number of faces meet. The same holds between two decided panels of a corner.
 * Each seam has two corners, so half the sum over all corners is a lower bound. Where no seam joins two of a class of
 * odd corners, the whole sum over that class is another, and seams clear of the class add to it.
 */
final class LikeSeams {
    private static final int UNDECIDED = -1;
    /** Undecided and the two sets. */
    private static final int CHOICES = 3;

    private final int[][] corners;
    private final int[][] neighbours;
    private final int[][] rings;
    private final boolean[] apart;
    private final int[] sets;
    /** For each corner the fewest like seams there by its code. */
    private final int[][] tables;
    /** For each corner a number in base three whose digits are the sets of the panels around it, 0 for undecided. */
    private final int[] codes;
    /** What a digit of each panel counts in the code of each of its corners. */
    private final int[][] weights;

    private int atCorners;
    private int apartOrClear;

    LikeSeams(Solid solid) {
        List<Face> faces = solid.faces();
        corners = faces.stream().map(face -> numbers(face.vertices())).toArray(int[][]::new);
        neighbours = neighbours(solid, corners);
        rings = new int[solid.vertices().size()][];
        for (int face = 0; face < corners.length; face++) {
            for (int corner : corners[face]) {
                rings[corner] = rings[corner] == null ? ring(corner, face) : rings[corner];
            }
        }
        apart = apart(solid.edges());
        sets = new int[corners.length];
        Arrays.fill(sets, UNDECIDED);
        tables = tables();
        codes = new int[rings.length];
        weights = weights();
        for (int corner = 0; corner < rings.length; corner++) {
            atCorners += tables[corner][0];
            apartOrClear += apart[corner] ? tables[corner][0] : 0;
        }
    }

    /** Number of corners. */
    int corners() {
        return rings.length;
    }

    int[] corners(int panel) {
        return corners[panel];
    }

    /** Number of panels that meet at a corner. */
    int meeting(int corner) {
        return rings[corner].length;
    }

    /** Puts an undecided panel into set 0 or 1. */
    void decide(int panel, int set) {
        apartOrClear += clear(panel, set);
        sets[panel] = set;
        mark(panel, set - UNDECIDED);
    }

    /** Makes a panel undecided again. */
    void undo(int panel) {
        apartOrClear -= clear(panel, sets[panel]);
        mark(panel, UNDECIDED - sets[panel]);
        sets[panel] = UNDECIDED;
    }

    /** The set of a panel that is decided. */
    int set(int panel) {
        return sets[panel];
    }

    /** No way to decide the other panels leaves fewer like seams than this; exact when all are decided. */
    int atLeast() {
        return Math.max((atCorners + 1) / 2, apartOrClear);
    }

    /** Adds to the code of each corner of a panel. */
    private void mark(int panel, int digit) {
        int[] around = corners[panel];
        for (int side = 0; side < around.length; side++) {
            int corner = around[side];
            int[] table = tables[corner];
            int before = table[codes[corner]];
            codes[corner] += digit * weights[panel][side];
            int more = table[codes[corner]] - before;
            atCorners += more;
            apartOrClear += apart[corner] ? more : 0;
        }
    }

    /** Seams of a panel with others of a set that do not touch the class of corners that lie apart. */
    private int clear(int panel, int set) {
        int clear = 0;
        int[] around = corners[panel];
        for (int side = 0; side < around.length; side++) {
            boolean touches = apart[around[side]] || apart[around[(side + 1) % around.length]];
            clear += !touches && sets[neighbours[panel][side]] == set ? 1 : 0;
        }
        return clear;
    }

    private int[][] tables() {
        Map<Integer, int[]> byMeeting = new HashMap<>();
        return Arrays.stream(rings)
                .map(ring -> byMeeting.computeIfAbsent(ring.length, LikeSeams::table))
                .toArray(int[][]::new);
    }

    private int[][] weights() {
        int[][] all = new int[corners.length][];
        for (int panel = 0; panel < all.length; panel++) {
            int number = panel;
            all[panel] = Arrays.stream(corners[panel])
                    .map(corner -> power(place(rings[corner], number)))
                    .toArray();
        }
        return all;
    }

    /** The fewest like seams at a corner where so many panels meet, by the code of their sets. */
    private static int[] table(int meeting) {
        int[] table = new int[power(meeting)];
        int[] around = new int[meeting];
        for (int code = 0; code < table.length; code++) {
            for (int place = 0; place < meeting; place++) {
                around[place] = code / power(place) % CHOICES + UNDECIDED;
            }
            table[code] = leastAt(around);
        }
        return table;
    }

    private static int power(int exponent) {
        return exponent == 0 ? 1 : CHOICES * power(exponent - 1);
    }

    /** The fewest like seams at a corner, given the sets of the panels around it. */
    private static int leastAt(int[] around) {
        int first = -1;
        int last = -1;
        int seams = 0;
        for (int place = 0; place < around.length; place++) {
            if (around[place] != UNDECIDED) {
                if (last < 0) {
                    first = place;
                } else {
                    seams += leastBetween(around[last], around[place], place - last);
                }
                last = place;
            }
        }
        return last < 0
                ? around.length % 2
                : seams + leastBetween(around[last], around[first], first + around.length - last);
    }

    /** The fewest like seams among those from one decided panel to the next around a corner. */
    private static int leastBetween(int set, int next, int seams) {
        return (seams + (set == next ? 0 : 1)) % 2;
    }

    /** The largest class of odd corners, from those where the fewest faces meet up, in which no two share a seam. */
    private boolean[] apart(List<Edge> edges) {
        int meeting = 1;
        for (int[] ring : rings) {
            meeting = Math.max(meeting, ring.length);
        }
        boolean[] odd = oddUpTo(meeting);
        while (joined(odd, edges)) {
            meeting--;
            odd = oddUpTo(meeting);
        }
        return odd;
    }

    private boolean[] oddUpTo(int meeting) {
        boolean[] odd = new boolean[rings.length];
        for (int corner = 0; corner < odd.length; corner++) {
            odd[corner] = rings[corner].length % 2 == 1 && rings[corner].length <= meeting;
        }
        return odd;
    }

    private static boolean joined(boolean[] some, List<Edge> edges) {
        return edges.stream().anyMatch(edge -> some[edge.from()] && some[edge.to()]);
    }

    /** The panels around a corner, each beside the next. */
    private int[] ring(int corner, int start) {
        List<Integer> ring = new ArrayList<>();
        int panel = start;
        do {
            ring.add(panel);
            panel = neighbours[panel][place(corners[panel], corner)];
        } while (panel != start);
        return numbers(ring);
    }

    /** For each face the face across each side, from a corner to the next. */
    private static int[][] neighbours(Solid solid, int[][] corners) {
        Map<List<Integer>, Integer> right = new HashMap<>();
        for (Edge edge : solid.edges()) {
            right.put(List.of(edge.from(), edge.to()), edge.neighbour());
            right.put(List.of(edge.to(), edge.from()), edge.face());
        }
        int[][] neighbours = new int[corners.length][];
        for (int face = 0; face < corners.length; face++) {
            int[] around = corners[face];
            neighbours[face] = new int[around.length];
            for (int side = 0; side < around.length; side++) {
                neighbours[face][side] = right.get(List.of(around[side], around[(side + 1) % around.length]));
            }
        }
        return neighbours;
    }

    private static int place(int[] numbers, int number) {
        int place = 0;
        while (numbers[place] != number) {
            place++;
        }
        return place;
    }

    private static int[] numbers(List<Integer> list) {
        return list.stream().mapToInt(Integer::intValue).toArray();
    }
}
