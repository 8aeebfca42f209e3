package org.orbwright.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Looks through all choices of half of every kind that have no more than so many like seams. */
final class EvenSharing {
    private final int limit;
    private final int[] kinds;
    private final int[][] neighbours;
    private final int[] order;
    /** Panels of each set and kind that are still to be chosen. */
    private final int[][] room;
    /** For each panel 0 or 1, or -1 as long as it is open. */
    private final int[] sets;

    EvenSharing(Solid solid, int limit) {
        this.limit = limit;
        List<String> names = solid.faceKinds().stream().map(FaceKind::face).toList();
        kinds = solid.faces().stream()
                .mapToInt(face -> names.indexOf(face.kind()))
                .toArray();
        int[] halves =
                solid.faceKinds().stream().mapToInt(kind -> kind.count() / 2).toArray();
        room = new int[][] {halves, halves.clone()};
        sets = new int[kinds.length];
        Arrays.fill(sets, -1);
        neighbours = IntStream.range(0, sets.length)
                .mapToObj(panel -> neighbours(solid, panel))
                .toArray(int[][]::new);
        order = order();
    }

    boolean exists() {
        return exists(0, 0);
    }

    private boolean exists(int step, int likeSeams) {
        if (step == sets.length || likeSeams > limit) {
            return likeSeams <= limit;
        }
        // Exchanging both sets changes no seam, so that the first panel may stay in the first set.
        return with(step, 0, likeSeams) || (step > 0 && with(step, 1, likeSeams));
    }

    private boolean with(int step, int set, int likeSeams) {
        int panel = order[step];
        if (room[set][kinds[panel]] == 0) {
            return false;
        }
        int more = 0;
        for (int other : neighbours[panel]) {
            more += sets[other] == set ? 1 : 0;
        }
        sets[panel] = set;
        room[set][kinds[panel]]--;
        boolean found = exists(step + 1, likeSeams + more);
        room[set][kinds[panel]]++;
        sets[panel] = -1;
        return found;
    }

    /** From panel 0 on always the panel with the largest part of its neighbours listed. */
    private int[] order() {
        List<Integer> listed = new ArrayList<>();
        while (listed.size() < sets.length) {
            listed.add(IntStream.range(0, sets.length)
                    .filter(panel -> !listed.contains(panel))
                    .boxed()
                    .max(Comparator.comparingDouble(panel -> Arrays.stream(neighbours[panel])
                            .map(other -> listed.contains(other) ? 1 : 0)
                            .average()
                            .orElseThrow()))
                    .orElseThrow());
        }
        return listed.stream().mapToInt(Integer::intValue).toArray();
    }

    private static int[] neighbours(Solid solid, int panel) {
        return solid.edges().stream()
                .filter(edge -> edge.face() == panel || edge.neighbour() == panel)
                .mapToInt(edge -> edge.face() == panel ? edge.neighbour() : edge.face())
                .toArray();
    }
}
