package org.orbwright.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.assembly.CapGrowth.Step;
import org.orbwright.solid.Solid;

/**
 * Panels of a solid at unit edge laid flat in the order in which they are glued. Each hangs on a panel that lies there
 * already, on the one that is the fewest hinges away from the first, so that the layout becomes a rosette; where it
 * would overlap there it hangs on the next. Faces may touch but not overlap.
 */
final class Unfolding {

    /**
     * A hinge.
     *
     * @param seam its number
     * @param panel the face that hangs on it
     * @param neighbour the face that lies there already
     * @param fold angle between the normals of the two faces
     * @param gap distance of their edges in the flat layout, at unit edge
     */
    record HingedFace(int seam, int panel, int neighbour, double fold, double gap) {}

    /**
     * A face where it lies.
     *
     * @param hinges how many hinges it is away from the first face
     */
    private record LaidFace(FlatFace face, int hinges) {}

    private final Solid solid;
    private final Neighbourhood neighbourhood;
    private final double land;
    private final Map<Integer, LaidFace> laid = new HashMap<>();
    private final List<HingedFace> hinges = new ArrayList<>();

    private Unfolding(Solid solid, Neighbourhood neighbourhood, double land) {
        this.solid = solid;
        this.neighbourhood = neighbourhood;
        this.land = land;
    }

    /**
     * Lays panels flat. Every cap of the catalogue and every whole solid finds a layout, which is tested.
     *
     * @param steps the panels in their order, each with the seams to those before it
     * @param land how far the faces are moved outwards, at unit edge
     */
    static Unfolding of(Solid solid, Neighbourhood neighbourhood, List<Step> steps, double land) {
        Unfolding unfolding = new Unfolding(solid, neighbourhood, land);
        unfolding.laid.put(
                steps.get(0).panel(), new LaidFace(unfolding.face(steps.get(0).panel()), 0));
        for (Step step : steps.subList(1, steps.size())) {
            if (!unfolding.hang(step)) {
                throw new IllegalStateException("No layout without overlap was found for the " + solid.name());
            }
        }
        return unfolding;
    }

    /** A face where it lies. */
    FlatFace laid(int panel) {
        return laid.get(panel).face();
    }

    /** The hinges in the order of the panels. */
    List<HingedFace> hinges() {
        return hinges;
    }

    private FlatFace face(int panel) {
        return FlatFace.of(solid, solid.faces().get(panel));
    }

    private boolean hang(Step step) {
        List<Integer> nearest = step.seams().stream()
                .sorted(Comparator.comparing(
                        seam -> laid.get(other(step.panel(), seam)).hinges()))
                .toList();
        return nearest.stream().anyMatch(seam -> hang(step.panel(), other(step.panel(), seam), seam));
    }

    private int other(int panel, int seam) {
        return neighbourhood.panel(panel, neighbourhood.place(panel, seam));
    }

    /** Hangs a face on another one, unless it would overlap a third. */
    private boolean hang(int panel, int neighbour, int seam) {
        double fold = solid.normal(solid.faces().get(panel))
                .angle(solid.normal(solid.faces().get(neighbour)));
        double gap = 2 * land * Math.sin(fold / 2);
        FlatFace face = face(panel)
                .hungOn(laid(neighbour), neighbourhood.place(neighbour, seam), neighbourhood.place(panel, seam), gap);
        if (laid.values().stream().anyMatch(other -> face.overlaps(other.face()))) {
            return false;
        }
        laid.put(panel, new LaidFace(face, laid.get(neighbour).hinges() + 1));
        hinges.add(new HingedFace(seam, panel, neighbour, fold, gap));
        return true;
    }
}
