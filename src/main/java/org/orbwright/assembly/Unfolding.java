package org.orbwright.assembly;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.orbwright.solid.Solid;

/**
 * A solid at unit edge unfolded ring by ring around a face: each face hangs on the first one from which it was reached
 * without overlap. Faces may touch but not overlap.
 */
final class Unfolding {

    /**
     * A hinge.
     *
     * @param seam its number
     * @param panel the face nearer to the root
     * @param neighbour the face that hangs on it
     * @param fold angle between the normals of the two faces
     * @param gap distance of their edges in the flat layout, at unit edge
     */
    record HingedFace(int seam, int panel, int neighbour, double fold, double gap) {}

    private final Solid solid;
    private final Neighbourhood neighbourhood;
    private final int root;
    private final double land;
    private final FlatFace[] laid;
    private final List<HingedFace> hinges = new ArrayList<>();

    private Unfolding(Solid solid, Neighbourhood neighbourhood, int root, double land) {
        this.solid = solid;
        this.neighbourhood = neighbourhood;
        this.root = root;
        this.land = land;
        this.laid = new FlatFace[solid.faces().size()];
    }

    /**
     * Unfolds a solid around a face.
     *
     * @param land how far the faces are moved outwards, at unit edge
     * @return null if a face finds no place without overlap
     */
    static Unfolding around(Solid solid, Neighbourhood neighbourhood, int root, double land) {
        Unfolding unfolding = new Unfolding(solid, neighbourhood, root, land);
        unfolding.grow();
        return unfolding.isWhole() ? unfolding : null;
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

    private boolean isWhole() {
        return hinges.size() == laid.length - 1;
    }

    private void grow() {
        Deque<Integer> reached = new ArrayDeque<>(List.of(root));
        laid[root] = FlatFace.of(solid, solid.faces().get(root));
        while (!reached.isEmpty()) {
            int panel = reached.remove();
            for (int place = 0; place < neighbourhood.sides(panel); place++) {
                int neighbour = neighbourhood.panel(panel, place);
                if (laid[neighbour] == null && hang(neighbour, panel, place)) {
                    reached.add(neighbour);
                }
            }
        }
    }

    /** Hangs a face on another one, unless it would overlap a third. */
    private boolean hang(int neighbour, int panel, int place) {
        int seam = neighbourhood.seam(panel, place);
        double fold = solid.normal(solid.faces().get(panel))
                .angle(solid.normal(solid.faces().get(neighbour)));
        double gap = 2 * land * Math.sin(fold / 2);
        FlatFace face = FlatFace.of(solid, solid.faces().get(neighbour))
                .hungOn(laid[panel], place, neighbourhood.place(neighbour, seam), gap);
        if (overlapsAny(face)) {
            return false;
        }
        laid[neighbour] = face;
        hinges.add(new HingedFace(seam, panel, neighbour, fold, gap));
        return true;
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
