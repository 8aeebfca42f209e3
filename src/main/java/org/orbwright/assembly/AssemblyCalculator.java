package org.orbwright.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.orbwright.assembly.AssemblyPlan.AssembledPanel;
import org.orbwright.assembly.AssemblyPlan.AssembledSpheres;
import org.orbwright.assembly.AssemblyPlan.Cap;
import org.orbwright.assembly.AssemblyPlan.CapSeam;
import org.orbwright.assembly.AssemblyPlan.GlueTotals;
import org.orbwright.assembly.AssemblyPlan.PanelNeighbour;
import org.orbwright.assembly.AssemblyPlan.SolidStage;
import org.orbwright.assembly.PanelGluing.PanelJoint;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.segment.YieldCalculator;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;

/** Plans how a design is glued up. The same design and glue always have the same plan. */
public final class AssemblyCalculator {
    private final Design design;
    private final Solid solid;
    private final AssemblyRequest request;
    private final Glue glue;
    private final Neighbourhood neighbourhood;
    private final Caps caps;

    private AssemblyCalculator(AssemblyRequest request, Design design) {
        this.design = design;
        this.solid = design.solid();
        this.request = request.filled();
        this.glue = Glue.of(this.request.glue());
        this.neighbourhood = new Neighbourhood(solid);
        this.caps = CapFinder.find(solid);
    }

    /**
     * The order of gluing, and the flat layout of the panels.
     *
     * @param request a section that keeps its Bean Validation constraints
     */
    public static AssemblyPlan plan(AssemblyRequest request, Design design) {
        design.require("the gluing depends", DesignPart.THICKNESS, DesignPart.LAMINATIONS);
        return new AssemblyCalculator(request, design).plan();
    }

    private AssemblyPlan plan() {
        List<PanelGluing> gluings = design.facePanels().stream()
                .map(panel -> PanelStages.of(design, panel, glue))
                .toList();
        List<BlankGluing> blanks = blanks();
        GluingOrder order = GluingOrder.of(caps, neighbourhood);
        List<SolidStage> stages = SolidStages.of(design, glue, caps, order);
        return new AssemblyPlan(
                glue,
                spheres(),
                blanks,
                gluings,
                panels(),
                new CapSeam(caps.through(), caps.number(), caps.flat(), caps.loop()),
                stages,
                totals(blanks, gluings, stages),
                NetCalculator.nets(request, design, neighbourhood, caps, order));
    }

    private List<AssembledSpheres> spheres() {
        return design.spheres().stream()
                .map(kind -> new AssembledSpheres(kind.set(), kind.count(), kind.inverted()))
                .toList();
    }

    /** How blanks are glued up; nothing is known of them before a yield is. */
    private List<BlankGluing> blanks() {
        if (!design.has(DesignPart.KERF) || !design.has(DesignPart.BLANK_LENGTH)) {
            return List.of();
        }
        return YieldCalculator.calculate(design).laminations().stream()
                .map(lamination -> BlankGluing.of(lamination, design.layers(), glue))
                .toList();
    }

    private List<AssembledPanel> panels() {
        List<AssembledPanel> panels = new ArrayList<>();
        for (Face face : solid.faces()) {
            int number = panels.size();
            List<PanelNeighbour> neighbours = new ArrayList<>();
            for (int place = 0; place < neighbourhood.sides(number); place++) {
                neighbours.add(
                        new PanelNeighbour(neighbourhood.panel(number, place), neighbourhood.seam(number, place)));
            }
            Cap cap = caps.first().get(number) ? Cap.FIRST : Cap.SECOND;
            panels.add(new AssembledPanel(number, face.kind(), face.mirrored(), cap, neighbours));
        }
        return panels;
    }

    private GlueTotals totals(List<BlankGluing> blanks, List<PanelGluing> gluings, List<SolidStage> stages) {
        int joints = gluings.stream()
                .mapToInt(panel -> panel.perSphere() * panel.joints().size())
                .sum();
        double length = inPanels(gluings, PanelJoint::length)
                + stages.stream()
                        .mapToDouble(stage -> stage.glue().glueLength())
                        .sum();
        double area = inPanels(gluings, PanelJoint::area)
                + stages.stream().mapToDouble(stage -> stage.glue().glueArea()).sum();
        boolean known = !blanks.isEmpty() && blanks.stream().allMatch(blank -> blank.glueArea() != null);
        double blankArea =
                known ? blanks.stream().mapToDouble(BlankGluing::glueArea).sum() : 0;
        return new GlueTotals(
                joints,
                solid.edges().size(),
                length,
                area,
                glue.mass(area),
                known ? blankArea : null,
                known ? glue.mass(blankArea) : null,
                glue.mass(blankArea + area * design.copies()));
    }

    private static double inPanels(List<PanelGluing> gluings, ToDoubleFunction<PanelJoint> size) {
        return gluings.stream()
                .mapToDouble(panel -> panel.perSphere()
                        * panel.joints().stream().mapToDouble(size).sum())
                .sum();
    }
}
