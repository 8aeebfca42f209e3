package org.orbwright.assembly;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.orbwright.assembly.Net.Hinge;
import org.orbwright.assembly.Net.NetCorner;
import org.orbwright.assembly.Net.NetEdge;
import org.orbwright.assembly.Net.NetPanel;
import org.orbwright.assembly.Unfolding.HingedFace;
import org.orbwright.design.Design;
import org.orbwright.solid.Solid;

/**
 * Lays the outer faces of a design's panels flat. A land is square to the face, so that the outer faces are as large as
 * the solid's faces at the joint distance, but moved outwards by the land: in the closed solid the outer rims of two
 * neighbours stand twice the land times the sine of half the fold apart. Hinged panels lie that far apart. The layout
 * spreads around the first face of the largest kind around which faces do not overlap.
 */
public final class NetCalculator {
    private final Design design;
    private final Solid solid;
    private final Neighbourhood neighbourhood;
    private final Unfolding unfolding;
    private final double left;
    private final double bottom;

    private NetCalculator(Design design) {
        this.design = design;
        this.solid = design.solid();
        this.neighbourhood = new Neighbourhood(solid);
        this.unfolding = unfold();
        this.left = corners().stream().mapToDouble(Vector2D::getX).min().orElseThrow();
        this.bottom = corners().stream().mapToDouble(Vector2D::getY).min().orElseThrow();
    }

    /** The flat layout of a design's panels. */
    public static Net calculate(Design design) {
        return new NetCalculator(design).net();
    }

    private Unfolding unfold() {
        String largest = CapFinder.largestKind(solid);
        int[] roots = IntStream.range(0, solid.faces().size())
                .filter(face -> solid.faces().get(face).kind().equals(largest))
                .toArray();
        for (int root : roots) {
            Unfolding tried = Unfolding.around(solid, neighbourhood, root, design.land() / design.edge());
            if (tried != null) {
                return tried;
            }
        }
        throw new IllegalStateException("No layout without overlap was found for the " + solid.name());
    }

    private List<Vector2D> corners() {
        return unfolding.faces().stream()
                .flatMap(face -> face.corners().stream())
                .toList();
    }

    private Net net() {
        Set<Integer> hinged = new HashSet<>();
        unfolding.hinges().forEach(hinge -> hinged.add(hinge.seam()));
        List<NetPanel> panels = new ArrayList<>();
        for (FlatFace face : unfolding.faces()) {
            panels.add(panel(panels.size(), face, hinged));
        }
        double right = corners().stream().mapToDouble(Vector2D::getX).max().orElseThrow();
        double top = corners().stream().mapToDouble(Vector2D::getY).max().orElseThrow();
        return new Net(
                (right - left) * design.edge(),
                (top - bottom) * design.edge(),
                unfolding.root(),
                panels,
                unfolding.hinges().stream().map(this::hinge).toList());
    }

    private NetPanel panel(int number, FlatFace face, Set<Integer> hinged) {
        List<NetCorner> corners = face.corners().stream()
                .map(corner ->
                        new NetCorner((corner.getX() - left) * design.edge(), (corner.getY() - bottom) * design.edge()))
                .toList();
        List<NetEdge> edges = new ArrayList<>();
        for (int place = 0; place < neighbourhood.sides(number); place++) {
            int seam = neighbourhood.seam(number, place);
            edges.add(new NetEdge(seam, neighbourhood.panel(number, place), hinged.contains(seam)));
        }
        return new NetPanel(number, corners, edges);
    }

    private Hinge hinge(HingedFace hinge) {
        return new Hinge(hinge.seam(), hinge.panel(), hinge.neighbour(), hinge.fold(), hinge.gap() * design.edge());
    }
}
