package org.orbwright.assembly;

import static java.util.Objects.requireNonNullElse;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.orbwright.assembly.AssemblyPlan.Cap;
import org.orbwright.assembly.CapGrowth.Step;
import org.orbwright.assembly.Net.Closing;
import org.orbwright.assembly.Net.Hinge;
import org.orbwright.assembly.Net.NetCorner;
import org.orbwright.assembly.Net.NetEdge;
import org.orbwright.assembly.Net.NetPanel;
import org.orbwright.assembly.Net.NetSeam;
import org.orbwright.assembly.Unfolding.HingedFace;
import org.orbwright.design.Design;

/**
 * Lays the outer faces of a design's panels flat, as they are taped together before they are glued. A land is square to
 * the face, so that the outer faces are as large as the solid's faces at the joint distance, but moved outwards by the
 * land: in the closed solid the outer rims of two neighbours stand twice the land times the sine of half the fold
 * apart. Hinged panels lie that far apart.
 */
public final class NetCalculator {
    private final Design design;
    private final Neighbourhood neighbourhood;
    private final Caps caps;
    private final List<Step> steps;
    private final Unfolding unfolding;
    private final double left;
    private final double bottom;

    private NetCalculator(Design design, Neighbourhood neighbourhood, Caps caps, List<Step> steps) {
        this.design = design;
        this.neighbourhood = neighbourhood;
        this.caps = caps;
        this.steps = steps;
        this.unfolding = Unfolding.of(design.solid(), neighbourhood, steps, design.land() / design.edge());
        this.left = corners().stream().mapToDouble(Vector2D::getX).min().orElseThrow();
        this.bottom = corners().stream().mapToDouble(Vector2D::getY).min().orElseThrow();
    }

    /**
     * The nets of a design: of both caps, or of the whole solid.
     *
     * @param request a section that keeps its Bean Validation constraints, or null for what is usual
     */
    public static List<Net> calculate(AssemblyRequest request, Design design) {
        AssemblyRequest filled =
                requireNonNullElse(request, AssemblyRequest.USUAL).filled();
        Neighbourhood neighbourhood = new Neighbourhood(design.solid());
        Caps caps = CapFinder.find(design.solid());
        return nets(filled, design, neighbourhood, caps, GluingOrder.of(caps, neighbourhood));
    }

    static List<Net> nets(
            AssemblyRequest filled, Design design, Neighbourhood neighbourhood, Caps caps, GluingOrder order) {
        boolean oneByOne =
                order.oneByOne(caps.loop().size(), Glue.of(filled.glue()).mostSeams());
        if (filled.net() == NetForm.WHOLE) {
            return List.of(new NetCalculator(design, neighbourhood, caps, order.whole()).net(null, oneByOne));
        }
        return List.of(
                new NetCalculator(design, neighbourhood, caps, order.first()).net(Cap.FIRST, true),
                new NetCalculator(design, neighbourhood, caps, order.second()).net(Cap.SECOND, !oneByOne));
    }

    private List<Vector2D> corners() {
        return steps.stream()
                .flatMap(step -> unfolding.laid(step.panel()).corners().stream())
                .toList();
    }

    private Net net(Cap cap, boolean followsStages) {
        Map<Integer, Closing> closings = new HashMap<>();
        steps.forEach(step -> step.seams().forEach(seam -> closings.put(seam, Closing.FOLDED)));
        unfolding.hinges().forEach(hinge -> closings.put(hinge.seam(), Closing.TAPED));
        double right = corners().stream().mapToDouble(Vector2D::getX).max().orElseThrow();
        double top = corners().stream().mapToDouble(Vector2D::getY).max().orElseThrow();
        return new Net(
                cap,
                followsStages,
                (right - left) * design.edge(),
                (top - bottom) * design.edge(),
                steps.stream().map(step -> panel(step.panel(), closings)).toList(),
                unfolding.hinges().stream().map(this::hinge).toList(),
                folding(closings),
                cap == null ? List.of() : last(cap));
    }

    private NetPanel panel(int panel, Map<Integer, Closing> closings) {
        List<NetCorner> corners = unfolding.laid(panel).corners().stream()
                .map(corner ->
                        new NetCorner((corner.getX() - left) * design.edge(), (corner.getY() - bottom) * design.edge()))
                .toList();
        List<NetEdge> edges = new ArrayList<>();
        for (int place = 0; place < neighbourhood.sides(panel); place++) {
            int seam = neighbourhood.seam(panel, place);
            edges.add(new NetEdge(seam, neighbourhood.panel(panel, place), closings.getOrDefault(seam, Closing.LAST)));
        }
        return new NetPanel(panel, corners, edges);
    }

    private Hinge hinge(HingedFace hinge) {
        return new Hinge(hinge.seam(), hinge.panel(), hinge.neighbour(), hinge.fold(), hinge.gap() * design.edge());
    }

    private List<NetSeam> folding(Map<Integer, Closing> closings) {
        List<NetSeam> folding = new ArrayList<>();
        for (Step step : steps) {
            step.seams().stream()
                    .filter(seam -> closings.get(seam) == Closing.FOLDED)
                    .forEach(seam -> folding.add(seam(seam, step.panel())));
        }
        return folding;
    }

    private List<NetSeam> last(Cap cap) {
        return caps.loop().stream()
                .map(seam -> seam(seam, caps.panel(seam, cap)))
                .toList();
    }

    private NetSeam seam(int seam, int panel) {
        return new NetSeam(seam, panel, neighbourhood.panel(panel, neighbourhood.place(panel, seam)));
    }
}
