package org.orbwright.body;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.body.BallCut.Cut;
import org.orbwright.body.WoodCutter.Facet;
import org.orbwright.body.WoodCutter.Wood;

/**
 * Pieces of wood that are glued together. Their corners are shared, each edge ends where a neighbour's begins, and what
 * two pieces have in common is known, so that it can be left out of a body of both.
 */
final class WoodComplex {
    /** Corners that are nearer than this share of the body's size are one: what a saw cannot cut. */
    private static final double SAME_CORNER = 1e-7;

    /**
     * A flat part of the surface of a piece by its number; the plane's normal points out of the wood. The loop has its
     * canonical direction, which is turned if that is clockwise seen from outside.
     */
    private record Polygon(int wood, Side plane, List<Integer> loop, boolean turned) {
        /** The plane around whose normal the loop runs counter-clockwise. */
        Side loopPlane() {
            return turned ? plane.reversed() : plane;
        }

        List<Integer> outwards(List<Integer> canonical) {
            return turned ? Loops.reversed(canonical) : canonical;
        }
    }

    private final List<Wood> woods;
    private final Corners corners;
    private final List<Polygon> polygons = new ArrayList<>();
    private final Map<List<Integer>, List<Polygon>> shared = new HashMap<>();

    WoodComplex(List<Wood> woods) {
        this.woods = woods;
        double size = 0;
        for (Wood wood : woods) {
            for (Facet facet : wood.facets()) {
                for (Vector3D corner : facet.corners()) {
                    size = Math.max(size, corner.norm());
                }
            }
        }
        this.corners = new Corners(SAME_CORNER * size);
        connect();
    }

    private void connect() {
        List<List<List<Integer>>> loops = new ArrayList<>();
        for (Wood wood : woods) {
            loops.add(wood.facets().stream()
                    .map(facet -> facet.corners().stream().map(corners::of).toList())
                    .toList());
        }
        EdgePoints edges = new EdgePoints(corners);
        for (int wood = 0; wood < woods.size(); wood++) {
            for (int facet = 0; facet < loops.get(wood).size(); facet++) {
                List<Integer> loop = edges.complete(loops.get(wood).get(facet));
                if (!loop.isEmpty()) {
                    Side plane = woods.get(wood).facets().get(facet).side();
                    Polygon polygon = new Polygon(wood, plane, Loops.canonical(loop), Loops.isTurned(loop));
                    polygons.add(polygon);
                    shared.computeIfAbsent(polygon.loop, key -> new ArrayList<>(2))
                            .add(polygon);
                }
            }
        }
    }

    /** The surfaces of bodies, and the farthest that one lies from what is round. */
    record Surfaces(List<Mesh> meshes, double deviation) {}

    /** The flat bodies; for each piece there is the number of the body that it is part of. */
    Surfaces flat(List<Integer> bodies, int count) {
        List<List<Triangle>> triangles = lists(count);
        for (Polygon polygon : polygons) {
            if (!isInside(polygon, bodies)) {
                triangles
                        .get(bodies.get(polygon.wood))
                        .addAll(PolygonMesher.convex(polygon.outwards(polygon.loop), corners, polygon.plane.normal()));
            }
        }
        return new Surfaces(meshes(triangles), 0);
    }

    /** The same bodies, turned to a sphere. */
    Surfaces turned(List<Integer> bodies, int count, double radius, Fineness fineness) {
        List<List<Triangle>> triangles = lists(count);
        List<Map<Integer, List<Integer>>> outlines = new ArrayList<>();
        woods.forEach(wood -> outlines.add(new HashMap<>()));
        BallCut ball = new BallCut(corners, radius, fineness);
        Map<List<Integer>, Cut> cuts = new HashMap<>();
        for (Polygon polygon : polygons) {
            Cut cut = cuts.get(polygon.loop);
            if (cut == null) {
                cut = ball.cut(polygon.loop, polygon.loopPlane());
                cuts.put(polygon.loop, cut);
            }
            if (!cut.loop().isEmpty() && !isInside(polygon, bodies)) {
                triangles
                        .get(bodies.get(polygon.wood))
                        .addAll(PolygonMesher.convex(polygon.outwards(cut.loop()), corners, polygon.plane.normal()));
            }
            for (List<Integer> arc : cut.arcs()) {
                addReversed(polygon.outwards(arc), outlines.get(polygon.wood));
            }
        }
        PatchMesher patches = new PatchMesher(corners, radius, fineness);
        double deviation = ball.deviation();
        for (int wood = 0; wood < woods.size(); wood++) {
            for (List<Integer> loop : loops(outlines.get(wood))) {
                List<Triangle> patch = patches.triangles(loop);
                for (Triangle triangle : patch) {
                    deviation = Math.max(deviation, patches.deviation(triangle));
                }
                triangles.get(bodies.get(wood)).addAll(patch);
            }
        }
        return new Surfaces(meshes(triangles), deviation);
    }

    private static List<List<Triangle>> lists(int count) {
        List<List<Triangle>> lists = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            lists.add(new ArrayList<>());
        }
        return lists;
    }

    private List<Mesh> meshes(List<List<Triangle>> triangles) {
        return triangles.stream()
                .map(each -> new MeshBuilder(corners, each).build())
                .toList();
    }

    /** Whether a part of a surface lies between two pieces of the same body. */
    private boolean isInside(Polygon polygon, List<Integer> bodies) {
        for (Polygon other : shared.get(polygon.loop)) {
            if (other.turned != polygon.turned && bodies.get(other.wood).equals(bodies.get(polygon.wood))) {
                return true;
            }
        }
        return false;
    }

    private static void addReversed(List<Integer> arc, Map<Integer, List<Integer>> next) {
        for (int i = 0; i + 1 < arc.size(); i++) {
            next.computeIfAbsent(arc.get(i + 1), key -> new ArrayList<>(1)).add(arc.get(i));
        }
    }

    /** Strings directed edges together to closed loops. */
    private static List<List<Integer>> loops(Map<Integer, List<Integer>> next) {
        List<List<Integer>> loops = new ArrayList<>();
        for (int start : List.copyOf(next.keySet())) {
            while (!next.get(start).isEmpty()) {
                List<Integer> loop = new ArrayList<>();
                int at = start;
                do {
                    loop.add(at);
                    List<Integer> ways = next.get(at);
                    at = ways.remove(ways.size() - 1);
                } while (at != start);
                List<Integer> clean = Loops.withoutSpurs(loop);
                if (!clean.isEmpty()) {
                    loops.add(clean);
                }
            }
        }
        return loops;
    }
}
