package org.orbwright.solid;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * Finds the panels that {@link PanelMix} describes: decides panel after panel along a walk, tries each inverted first,
 * and turns back as soon as the choice cannot become better than the best one so far.
 */
final class PanelMixSearch {
    private static final int UPRIGHT = 0;
    private static final int INVERTED = 1;
    /** Sums of normals are accurate to 1e-11; only what is shorter by more than this counts as shorter. */
    private static final double SAME = 1e-9;
    /** Panels to decide before the search is content with the best so far: under a second. */
    private static final int MOST_STEPS = 1_200_000;
    /** The fewest like seams where half of every kind needs more of them than the corners do. */
    private static final Map<String, Integer> MORE_THAN_AT_CORNERS = Map.of(
            "cuboctahedron", 6,
            "rhombicuboctahedron", 8,
            "truncated-cuboctahedron", 26,
            "icosidodecahedron", 10,
            "rhombicosidodecahedron", 16);

    private final LikeSeams seams;
    private final int[] kinds;
    private final Vector3D[] normals;
    private final int[] walk;
    /** For each step of the walk how far the panels from there on reach along each axis. */
    private final Vector3D[] reach;
    /** Panels of each set and kind that are still to be decided. */
    private final int[][] left;

    private int limit;
    private int steps;
    private double shortest = Double.POSITIVE_INFINITY;
    private SortedSet<Integer> best = Collections.emptySortedSet();

    private PanelMixSearch(Solid solid) {
        List<Face> faces = solid.faces();
        List<String> names = solid.faceKinds().stream().map(FaceKind::face).toList();
        seams = new LikeSeams(solid);
        kinds = faces.stream().mapToInt(face -> names.indexOf(face.kind())).toArray();
        normals = new Vector3D[kinds.length];
        for (int panel = 0; panel < kinds.length; panel++) {
            double area = solid.faceKinds().get(kinds[panel]).area();
            normals[panel] = solid.normal(faces.get(panel)).multiply(area);
        }
        walk = walk();
        reach = reach();
        left = new int[2][names.size()];
        for (int kind = 0; kind < names.size(); kind++) {
            int count = solid.faceKinds().get(kind).count();
            left[INVERTED][kind] = count / 2;
            left[UPRIGHT][kind] = count - count / 2;
        }
    }

    /** Numbers of the inverted panels. */
    static SortedSet<Integer> inverted(Solid solid) {
        PanelMixSearch search = new PanelMixSearch(solid);
        search.limit = Math.max(search.seams.atLeast(), MORE_THAN_AT_CORNERS.getOrDefault(solid.name(), 0));
        while (search.best.isEmpty()) {
            search.steps = 0;
            search.put(0, UPRIGHT, Vector3D.ZERO);
            search.limit++;
        }
        return Collections.unmodifiableSortedSet(search.best);
    }

    /**
     * Decides the panel at a step of the walk and all after it.
     *
     * @param sum the normals of the inverted panels so far less those of the upright ones; in the end it is twice the
     *     sum of the inverted ones, as all normals together are nothing
     */
    private void decide(int step, Vector3D sum) {
        steps++;
        double length = shortest(step, sum);
        if (steps > MOST_STEPS || length > shortest - SAME) {
            return;
        }
        if (step == walk.length) {
            shortest = length;
            best = IntStream.range(0, walk.length)
                    .filter(panel -> seams.set(panel) == INVERTED)
                    .boxed()
                    .collect(Collectors.toCollection(TreeSet::new));
            return;
        }
        put(step, INVERTED, sum);
        put(step, UPRIGHT, sum);
    }

    private void put(int step, int set, Vector3D sum) {
        int panel = walk[step];
        if (left[set][kinds[panel]] == 0) {
            return;
        }
        left[set][kinds[panel]]--;
        seams.decide(panel, set);
        if (seams.atLeast() <= limit) {
            decide(step + 1, set == INVERTED ? sum.add(normals[panel]) : sum.subtract(normals[panel]));
        }
        seams.undo(panel);
        left[set][kinds[panel]]++;
    }

    /** The length that a sum keeps at least, whatever is decided from a step on. */
    private double shortest(int step, Vector3D sum) {
        Vector3D can = reach[step];
        return Vector3D.of(
                        Math.max(0, Math.abs(sum.getX()) - can.getX()),
                        Math.max(0, Math.abs(sum.getY()) - can.getY()),
                        Math.max(0, Math.abs(sum.getZ()) - can.getZ()))
                .norm();
    }

    private Vector3D[] reach() {
        Vector3D[] sums = new Vector3D[walk.length + 1];
        sums[walk.length] = Vector3D.ZERO;
        for (int step = walk.length - 1; step >= 0; step--) {
            Vector3D normal = normals[walk[step]];
            sums[step] = sums[step + 1].add(
                    Vector3D.of(Math.abs(normal.getX()), Math.abs(normal.getY()), Math.abs(normal.getZ())));
        }
        return sums;
    }

    /**
     * From the first panel always on to the panel whose corners have been passed most, the lower number among equals.
     */
    private int[] walk() {
        int[] order = new int[kinds.length];
        boolean[] passed = new boolean[kinds.length];
        int[] atCorner = new int[seams.corners()];
        for (int step = 0; step < order.length; step++) {
            int next = -1;
            double most = -1;
            for (int panel = 0; panel < order.length; panel++) {
                double closeness = passed[panel] ? -1 : closeness(panel, atCorner);
                if (closeness > most) {
                    next = panel;
                    most = closeness;
                }
            }
            order[step] = next;
            passed[next] = true;
            for (int corner : seams.corners(next)) {
                atCorner[corner]++;
            }
        }
        return order;
    }

    /** Mean over the corners of a panel: 3 where it is the last to be passed, 1 where others have been passed. */
    private double closeness(int panel, int[] passedAt) {
        int sum = 0;
        int[] corners = seams.corners(panel);
        for (int corner : corners) {
            if (passedAt[corner] == seams.meeting(corner) - 1) {
                sum += 3;
            } else if (passedAt[corner] > 0) {
                sum += 1;
            }
        }
        return (double) sum / corners.length;
    }
}
