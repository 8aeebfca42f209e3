package org.orbwright.body;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a mesh is made of, found without the code that makes it. */
final class MeshParts {
    private MeshParts() {}

    /** Whether each directed edge is there once, and once in the opposite direction. */
    static boolean isClosed(Mesh mesh) {
        Set<List<Integer>> edges = new HashSet<>();
        for (Triangle t : mesh.triangles()) {
            for (int i = 0; i < 3; i++) {
                if (!edges.add(List.of(t.corner(i), t.corner(i + 1)))) {
                    return false;
                }
            }
        }
        return edges.stream().allMatch(edge -> edges.contains(List.of(edge.get(1), edge.get(0))));
    }

    /** The parts that have no corner in common. */
    static List<Mesh> of(Mesh mesh) {
        int[] part = new int[mesh.vertices().size()];
        for (int i = 0; i < part.length; i++) {
            part[i] = i;
        }
        boolean changed = true;
        while (changed) {
            changed = false;
            for (Triangle t : mesh.triangles()) {
                int least = Math.min(part[t.a()], Math.min(part[t.b()], part[t.c()]));
                changed |= part[t.a()] + part[t.b()] + part[t.c()] > 3 * least;
                part[t.a()] = least;
                part[t.b()] = least;
                part[t.c()] = least;
            }
        }
        Map<Integer, List<Triangle>> parts = new HashMap<>();
        for (Triangle t : mesh.triangles()) {
            parts.computeIfAbsent(part[t.a()], key -> new ArrayList<>()).add(t);
        }
        return parts.values().stream()
                .map(triangles -> new Mesh(mesh.vertices(), triangles))
                .toList();
    }

    /** The volumes of the parts, the smallest first. */
    static double[] volumes(Mesh mesh) {
        return of(mesh).stream().mapToDouble(Mesh::volume).sorted().toArray();
    }
}
