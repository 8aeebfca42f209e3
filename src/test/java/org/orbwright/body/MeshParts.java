package org.orbwright.body;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What a mesh is made of, found without the code that makes it. */
final class MeshParts {
    private MeshParts() {}

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
