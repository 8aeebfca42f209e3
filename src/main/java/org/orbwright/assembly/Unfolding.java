package org.orbwright.assembly;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.orbwright.solid.Solid;

/**
 * A solid at unit edge unfolded ring by ring around a face: each face hangs on the one from which it was reached first.
 * Faces may touch but not overlap.
 */
final class Unfolding {

    /**
     * A hinge.
     *
     * @param seam its number
     * @param panel the face nearer to the root
     * @param neighbour the face that hangs on it
     */
    record HingedFace(int seam, int panel, int neighbour) {}

    private final Solid solid;
    private final Neighbourhood neighbourhood;
    private final int root;
    private final FlatFace[] laid;
    private final List<HingedFace> hinges = new ArrayList<>();

    private Unfolding(Solid solid, Neighbourhood neighbourhood, int root) {
        this.solid = solid;
        this.neighbourhood = neighbourhood;
        this.root = root;
        this.laid = new FlatFace[solid.faces().size()];
    }

    /** Unfolds a solid around a face; null if faces would overlap. */
    static Unfolding around(Solid solid, Neighbourhood neighbourhood, int root) {
        Unfolding unfolding = new Unfolding(solid, neighbourhood, root);
        return unfolding.grow() ? unfolding : null;
    }

    /** The faces where they lie. */
    List<FlatFace> faces() {
        return List.of(laid);
    }

    /** The hinges, from the root outwards. */
    List<HingedFace> hinges() {
        return hinges;
    }

    int root() {
        return root;
    }

    private boolean grow() {
        Deque<Integer> reached = new ArrayDeque<>(List.of(root));
        laid[root] = FlatFace.of(solid, solid.faces().get(root));
        while (!reached.isEmpty()) {
            int panel = reached.remove();
            for (int place = 0; place < neighbourhood.sides(panel); place++) {
                int neighbour = neighbourhood.panel(panel, place);
                if (laid[neighbour] == null) {
                    FlatFace face = hung(neighbour, panel, place);
                    if (overlapsAny(face)) {
                        return false;
                    }
                    laid[neighbour] = face;
                    hinges.add(new HingedFace(neighbourhood.seam(panel, place), panel, neighbour));
                    reached.add(neighbour);
                }
            }
        }
        return true;
    }

    private FlatFace hung(int neighbour, int panel, int place) {
        int othersPlace = neighbourhood.place(neighbour, neighbourhood.seam(panel, place));
        return FlatFace.of(solid, solid.faces().get(neighbour)).hungOn(laid[panel], place, othersPlace);
    }

    private boolean overlapsAny(FlatFace face) {
        for (FlatFace other : laid) {
            if (other != null && face.overlaps(other)) {
                return true;
            }
        }
        return false;
    }
}
