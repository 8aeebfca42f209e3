package org.orbwright.body;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A body of unit cubes, each given by its least coordinates.
 *
 * @param wood the cubes that are of wood
 */
record Cells(Set<List<Integer>> wood) {
    private static final int[][] NEIGHBOURS = {{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {0, 0, 1}, {0, 0, -1}};

    private static List<Integer> moved(List<Integer> cell, int x, int y, int z) {
        return List.of(cell.get(0) + x, cell.get(1) + y, cell.get(2) + z);
    }

    /** Faces between wood and air. */
    int faces() {
        int faces = 0;
        for (List<Integer> cell : wood) {
            for (int[] n : NEIGHBOURS) {
                faces += wood.contains(moved(cell, n[0], n[1], n[2])) ? 0 : 1;
            }
        }
        return faces;
    }

    /** Edges at which two cubes touch and the two beside them are air. */
    int touchingEdges() {
        int edges = 0;
        for (List<Integer> cell : wood) {
            for (int i = 0; i < 3; i++) {
                for (int sign = -1; sign <= 1; sign += 2) {
                    int[] first = new int[3];
                    int[] second = new int[3];
                    first[i] = 1;
                    second[(i + 1) % 3] = sign;
                    boolean across = wood.contains(
                            moved(cell, first[0] + second[0], first[1] + second[1], first[2] + second[2]));
                    boolean beside = wood.contains(moved(cell, first[0], first[1], first[2]))
                            || wood.contains(moved(cell, second[0], second[1], second[2]));
                    edges += across && !beside ? 1 : 0;
                }
            }
        }
        return edges;
    }

    /** All corners of cubes. */
    Set<List<Integer>> lattice() {
        Set<List<Integer>> points = new HashSet<>();
        for (List<Integer> cell : wood) {
            for (int i = 0; i < 8; i++) {
                points.add(moved(cell, i & 1, i >> 1 & 1, i >> 2));
            }
        }
        return points;
    }

    /**
     * How often the surface passes through a corner of cubes. On a small sphere around it, wood hangs together across
     * sides only, air also across the edges between: so many lines part so many regions of the sphere.
     */
    int passes(List<Integer> point) {
        boolean[] filled = new boolean[8];
        for (int i = 0; i < 8; i++) {
            filled[i] = wood.contains(moved(point, -(i & 1), -(i >> 1 & 1), -(i >> 2)));
        }
        return regions(filled, true, 1) + regions(filled, false, 2) - 1;
    }

    /** Regions of eighths, which hang together where they differ in so many directions at most. */
    private static int regions(boolean[] filled, boolean what, int differences) {
        int regions = 0;
        boolean[] seen = new boolean[8];
        for (int start = 0; start < 8; start++) {
            if (filled[start] == what && !seen[start]) {
                regions++;
                List<Integer> open = new ArrayList<>(List.of(start));
                seen[start] = true;
                while (!open.isEmpty()) {
                    int at = open.remove(open.size() - 1);
                    for (int to = 0; to < 8; to++) {
                        if (filled[to] == what && !seen[to] && Integer.bitCount(at ^ to) <= differences) {
                            seen[to] = true;
                            open.add(to);
                        }
                    }
                }
            }
        }
        return regions;
    }

    /** The mesh over common corners, whose numbers and whose triangles come in any order. */
    Mesh mesh(long seed) {
        Random random = new Random(seed);
        List<List<Integer>> points = new ArrayList<>(lattice());
        Collections.shuffle(points, random);
        Corners corners = new Corners(1e-7);
        Map<List<Integer>, Integer> numbers = new HashMap<>();
        for (List<Integer> p : points) {
            numbers.put(p, corners.add(Vector3D.of(p.get(0), p.get(1), p.get(2))));
        }
        List<Triangle> triangles = new ArrayList<>();
        for (List<Integer> cell : wood) {
            for (int[] n : NEIGHBOURS) {
                if (!wood.contains(moved(cell, n[0], n[1], n[2]))) {
                    addFace(cell, n, numbers, triangles);
                }
            }
        }
        Collections.shuffle(triangles, random);
        return new MeshBuilder(corners, triangles).build();
    }

    private static void addFace(
            List<Integer> cell, int[] normal, Map<List<Integer>, Integer> numbers, List<Triangle> triangles) {
        int axis = normal[0] != 0 ? 0 : normal[1] != 0 ? 1 : 2;
        int outwards = normal[axis];
        int[][] around = outwards > 0
                ? new int[][] {{0, 0}, {1, 0}, {1, 1}, {0, 1}}
                : new int[][] {{0, 0}, {0, 1}, {1, 1}, {1, 0}};
        int[] corner = new int[4];
        for (int i = 0; i < 4; i++) {
            int[] by = new int[3];
            by[axis] = outwards > 0 ? 1 : 0;
            by[(axis + 1) % 3] = around[i][0];
            by[(axis + 2) % 3] = around[i][1];
            corner[i] = numbers.get(moved(cell, by[0], by[1], by[2]));
        }
        triangles.add(new Triangle(corner[0], corner[1], corner[2]));
        triangles.add(new Triangle(corner[2], corner[3], corner[0]));
    }
}
