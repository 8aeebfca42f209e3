package org.orbwright.assembly;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.assembly.AssemblyPlan.AxisThrough;
import org.orbwright.assembly.AssemblyPlan.Cap;
import org.orbwright.solid.Edge;
import org.orbwright.solid.Solid;

/**
 * A solid parted into two caps.
 *
 * @param through what the axis runs through
 * @param number number of that face, corner or edge
 * @param heights heights of the panels along the axis
 * @param first for each panel whether it is in the first cap
 */
record Caps(Solid solid, AxisThrough through, int number, Heights heights, List<Boolean> first) {
    /** Three directions that lie in one plane span a volume of 1e-15, others of more than 1e-3. */
    private static final double FLAT = 1e-9;

    Caps {
        first = List.copyOf(first);
    }

    /** Seams between the caps that lie along the axis. */
    int sliding() {
        int sliding = 0;
        for (Edge edge : between()) {
            sliding += heights.of(edge.face()) == heights.of(edge.neighbour()) ? 1 : 0;
        }
        return sliding;
    }

    /** Length of the seam between the caps, at unit edge. */
    double length() {
        return between().stream()
                .mapToDouble(edge -> corner(edge.from()).distance(corner(edge.to())))
                .sum();
    }

    /** The seams between the caps. */
    List<Edge> between() {
        return solid.edges().stream().filter(this::isBetween).toList();
    }

    private boolean isBetween(Edge edge) {
        return !first.get(edge.face()).equals(first.get(edge.neighbour()));
    }

    /**
     * Numbers of the seams between the caps in order around the loop, the first cap on the left. Both caps hang
     * together, so that there is one loop and it passes no corner twice.
     */
    List<Integer> loop() {
        int[] seamFrom = new int[solid.vertices().size()];
        int[] next = new int[solid.vertices().size()];
        int start = -1;
        for (int seam = 0; seam < solid.edges().size(); seam++) {
            Edge edge = solid.edges().get(seam);
            if (isBetween(edge)) {
                boolean forward = first.get(edge.face());
                int from = forward ? edge.from() : edge.to();
                seamFrom[from] = seam;
                next[from] = forward ? edge.to() : edge.from();
                start = start < 0 ? from : start;
            }
        }
        List<Integer> loop = new ArrayList<>();
        int corner = start;
        do {
            loop.add(seamFrom[corner]);
            corner = next[corner];
        } while (corner != start);
        return loop;
    }

    /** The panel of a cap at a seam between the caps. */
    int panel(int seam, Cap cap) {
        Edge edge = solid.edges().get(seam);
        return first.get(edge.face()) == (cap == Cap.FIRST) ? edge.face() : edge.neighbour();
    }

    /** Whether the seam between the caps lies in one plane, which then runs through the centre as all seams do. */
    boolean flat() {
        return liesSquareTo(normal());
    }

    /** Whether the seam lies in the plane square to the axis, so that it closes all over at once. */
    boolean squareToAxis() {
        return liesSquareTo(heights.axis());
    }

    /** Square to the plane through the centre and one of the seams between the caps. */
    private Vector3D normal() {
        Edge edge = between().get(0);
        return corner(edge.from()).cross(corner(edge.to())).normalize();
    }

    private boolean liesSquareTo(Vector3D normal) {
        return between().stream()
                .allMatch(edge -> Math.abs(normal.dot(corner(edge.from()))) < FLAT
                        && Math.abs(normal.dot(corner(edge.to()))) < FLAT);
    }

    private Vector3D corner(int number) {
        return solid.vertices().get(number).vector();
    }
}
