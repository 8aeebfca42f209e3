package org.orbwright.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Measures a bare polyhedron and sorts its faces, edges and segments into kinds. */
final class SolidBuilder {
    private final Polyhedron polyhedron;
    private final List<FaceOutline> outlines;
    private final List<Vector3D> normals;
    private final List<FaceKindDraft> drafts = new ArrayList<>();
    private final List<Face> faces = new ArrayList<>();

    private SolidBuilder(Polyhedron polyhedron) {
        this.polyhedron = polyhedron;
        this.outlines = polyhedron.faces().stream()
                .map(face -> FaceOutline.of(polyhedron, face))
                .toList();
        this.normals = polyhedron.faces().stream().map(polyhedron::normal).toList();
    }

    static Solid build(String name, SolidFamily family, String dual, boolean chiral, Polyhedron polyhedron) {
        return new SolidBuilder(polyhedron).build(name, family, dual, chiral);
    }

    private Solid build(String name, SolidFamily family, String dual, boolean chiral) {
        sortFaces();
        List<FaceKind> kinds = drafts.stream()
                .map(FaceKindDraft::finish)
                .sorted(Comparator.comparingInt(FaceKind::sides))
                .toList();
        List<Edge> edges = edges();
        FaceOutline first = outlines.get(0);
        double volume = kinds.stream()
                .mapToDouble(k -> k.count() * k.area() * k.distance() / 3)
                .sum();
        return new Solid(
                name,
                family,
                dual,
                chiral,
                kinds.stream().mapToDouble(FaceKind::distance).min().orElseThrow(),
                Math.hypot(first.distance(), first.baseDistance()),
                kinds.stream().mapToDouble(FaceKind::cornerRadius).max().orElseThrow(),
                kinds.stream().mapToDouble(k -> k.count() * k.area()).sum(),
                volume,
                kinds,
                edgeKinds(edges, kinds),
                corners(),
                faces,
                edges);
    }

    private List<Vertex> corners() {
        List<Vertex> corners = new ArrayList<>();
        polyhedron.vertices().forEach(point -> corners.add(Vertex.of(corners.size(), point)));
        return corners;
    }

    /** Lists the faces of each kind from the same segment on, so that places in their lists mean the same. */
    private void sortFaces() {
        for (int f = 0; f < outlines.size(); f++) {
            FaceOutline outline = outlines.get(f);
            FaceKindDraft draft = drafts.stream()
                    .filter(d -> d.first.sameAs(outline) || d.first.mirrored().sameAs(outline))
                    .findFirst()
                    .orElseGet(() -> newDraft(outline));
            int start = draft.first.startOf(outline);
            List<Integer> corners = new ArrayList<>(polyhedron.faces().get(f));
            Collections.rotate(corners, -start);
            faces.add(draft.add(f, outline.startingAt(start), corners, hasOpposite(f)));
        }
    }

    private FaceKindDraft newDraft(FaceOutline first) {
        FaceKindDraft draft = new FaceKindDraft(first);
        drafts.add(draft);
        return draft;
    }

    private boolean hasOpposite(int face) {
        for (int other = 0; other < outlines.size(); other++) {
            double apart = outlines.get(other).distance() - outlines.get(face).distance();
            double sum = normals.get(face).add(normals.get(other)).norm();
            if (sum < FaceOutline.SAME && Math.abs(apart) < FaceOutline.SAME) {
                return true;
            }
        }
        return false;
    }

    private List<Edge> edges() {
        Map<Long, Integer> faceOnLeft = new HashMap<>();
        for (int f = 0; f < faces.size(); f++) {
            List<Integer> corners = faces.get(f).vertices();
            for (int i = 0; i < corners.size(); i++) {
                faceOnLeft.put(key(corners.get(i), corners.get((i + 1) % corners.size())), f);
            }
        }
        List<Edge> edges = new ArrayList<>();
        for (int f = 0; f < faces.size(); f++) {
            List<Integer> corners = faces.get(f).vertices();
            for (int i = 0; i < corners.size(); i++) {
                int from = corners.get(i);
                int to = corners.get((i + 1) % corners.size());
                if (from < to) {
                    edges.add(new Edge(edges.size(), from, to, f, faceOnLeft.get(key(to, from))));
                }
            }
        }
        return edges;
    }

    private static long key(int from, int to) {
        return (long) from << Integer.SIZE | to;
    }

    private List<EdgeKind> edgeKinds(List<Edge> edges, List<FaceKind> kinds) {
        Map<String, FaceKind> byName = new HashMap<>();
        kinds.forEach(kind -> byName.put(kind.face(), kind));
        List<EdgeKind> found = new ArrayList<>();
        for (Edge edge : edges) {
            FaceKind a = byName.get(faces.get(edge.face()).kind());
            FaceKind b = byName.get(faces.get(edge.neighbour()).kind());
            boolean inOrder = a.sides() <= b.sides();
            EdgeKind kind = edgeKind(edge, inOrder ? a : b, inOrder ? b : a);
            int at = indexOf(found, kind);
            if (at < 0) {
                found.add(kind);
            } else {
                found.set(at, counted(found.get(at)));
            }
        }
        found.sort(Comparator.comparing(EdgeKind::length).reversed());
        return found;
    }

    private EdgeKind edgeKind(Edge edge, FaceKind a, FaceKind b) {
        double length = polyhedron
                .vertices()
                .get(edge.from())
                .distance(polyhedron.vertices().get(edge.to()));
        double bevel = Math.atan2(a.distance(), a.baseDistance());
        double neighbourBevel = Math.atan2(b.distance(), b.baseDistance());
        return new EdgeKind(a.face(), b.face(), 1, length, bevel + neighbourBevel, bevel, neighbourBevel);
    }

    private static int indexOf(List<EdgeKind> found, EdgeKind kind) {
        for (int i = 0; i < found.size(); i++) {
            EdgeKind other = found.get(i);
            if (other.face().equals(kind.face())
                    && other.neighbour().equals(kind.neighbour())
                    && Math.abs(other.length() - kind.length()) < FaceOutline.SAME) {
                return i;
            }
        }
        return -1;
    }

    private static EdgeKind counted(EdgeKind k) {
        return new EdgeKind(
                k.face(), k.neighbour(), k.count() + 1, k.length(), k.dihedral(), k.bevel(), k.neighbourBevel());
    }
}
