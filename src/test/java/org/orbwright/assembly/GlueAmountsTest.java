package org.orbwright.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.assembly.AssemblyPlan.AssembledSpheres;
import org.orbwright.assembly.AssemblyPlan.GluedSeam;
import org.orbwright.assembly.AssemblyPlan.SolidStage;
import org.orbwright.assembly.AssemblyRequest.GlueRequest;
import org.orbwright.assembly.PanelGluing.PanelJoint;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.SphereSet;
import org.orbwright.fixture.Designs;
import org.orbwright.segment.AngleCalculator;
import org.orbwright.segment.SawAngles.FaceAngles;
import org.orbwright.solid.Edge;
import org.orbwright.solid.Solid;

/** Lengths, areas and masses of glue. */
class GlueAmountsTest {

    @Test
    @DisplayName("hand calculation: a cube of 200 mm, 25 mm thick, has seams of 35.3553 mm by (200 + 150) / 2 mm")
    void cube() {
        AssemblyPlan plan = Assemblies.plan(Designs.of("cube"));
        GluedSeam seam = plan.stages().get(0).seams().get(0);
        assertEquals(200, seam.length(), 1e-9);
        assertEquals(25 * Math.sqrt(2), seam.depth(), 1e-9);
        assertEquals(25 * Math.sqrt(2) * 175, seam.area(), 1e-8);
        PanelJoint joint = plan.panelGluings().get(0).joints().get(0);
        assertEquals(100 * Math.sqrt(2), joint.length(), 1e-9);
        assertEquals(100 * Math.sqrt(2) * 25, joint.area(), 1e-9);
        assertEquals(24, plan.totals().joints());
        assertEquals(12, plan.totals().seams());
        double length = 24 * 100 * Math.sqrt(2) + 12 * 200;
        double area = 24 * 100 * Math.sqrt(2) * 25 + 12 * 25 * Math.sqrt(2) * 175;
        assertEquals(length, plan.totals().glueLength(), 1e-8);
        assertEquals(area, plan.totals().glueArea(), 1e-7);
        // 200 g/m2 are 2e-7 kg/mm2.
        assertEquals(area * 2e-7, plan.totals().glueMass(), 1e-12);
    }

    /**
     * Dodecahedron 177.8 mm across flats with a land of 4 mm: joint distance 84.9, and an inradius of 1.11352 edges
     * (VIAS, Computational Geometry, Dodecahedron; it is phi^2 / (2 sqrt(3 - phi))). Thickness 28: the bevelled part is
     * 24 thick, and the inner edges lie at 60.9 of 84.9.
     */
    @Test
    @DisplayName("hand calculation: the dodecahedron with a land has 30 seams of its edge by 24 / sin 58.2825 degrees")
    void dodecahedronWithLand() {
        double phi = (1 + Math.sqrt(5)) / 2;
        double edge = 84.9 / (phi * phi / (2 * Math.sqrt(3 - phi)));
        double bevel = Math.atan(2) / 2 + Math.PI / 2 - Math.atan(2);
        assertEquals(58.2825, Math.toDegrees(bevel), 1e-4);
        AssemblyPlan plan = Assemblies.plan(Designs.example("dodecahedron-with-land"));
        for (GluedSeam seam : Assemblies.seams(plan).values()) {
            assertEquals(edge, seam.length(), 1e-9);
            assertEquals(24 / Math.sin(bevel), seam.depth(), 1e-9);
            assertEquals(edge * (1 + 60.9 / 84.9) / 2 * 24 / Math.sin(bevel), seam.area(), 1e-8);
        }
        double leg = edge / (2 * Math.sin(Math.PI / 5));
        assertEquals(30 * edge + 60 * leg, plan.totals().glueLength(), 1e-8);
        assertEquals(
                List.of(10 * edge, 10 * edge, 10 * edge),
                plan.stages().stream()
                        .map(stage -> (double) Math.round(stage.glue().glueLength() / edge) * edge)
                        .toList());
        assertEquals(
                2 * plan.totals().glueMass() + plan.totals().blankMass(),
                plan.totals().glueMassOfCopies(),
                1e-15);
    }

    /** 200 g/m2 are 2e-7 kg/mm2. */
    @Test
    @DisplayName(
            "hand calculation: ten blanks of five strips, 584 long and 28 thick, have 10 x 4 x 584 x 28 mm2 of joint")
    void blanksOfTheDodecahedron() {
        AssemblyPlan plan = Assemblies.plan(Designs.example("dodecahedron-with-land"));
        BlankGluing blank = plan.blankGluings().get(0);
        assertEquals(10, blank.blanks());
        assertEquals(4, blank.joints());
        assertEquals(1, blank.stages().size());
        assertEquals(4, blank.stages().get(0).seams());
        assertEquals(4 * 584, blank.stages().get(0).glueLength(), 1e-9);
        assertEquals(4 * 584 * 28, blank.stages().get(0).glueArea(), 1e-9);
        assertEquals(654080, blank.glueArea(), 1e-9);
        assertEquals(654080 * 2e-7, plan.totals().blankMass(), 1e-12);
    }

    @Test
    void aBlankOfOneStripTakesNoGlueAndOneThatIsTooShortHasNone() {
        Designs cube = Designs.of("cube");
        BlankGluing whole = Assemblies.plan(cube).blankGluings().get(0);
        assertEquals(List.of(), whole.stages());
        assertEquals(0, whole.glueArea());
        AssemblyPlan none =
                Assemblies.plan(cube.bands(Designs.widths(20.0, null)).blank(100));
        assertNull(none.blankGluings().get(0).glueMass());
        assertNull(none.totals().blankArea());
        assertEquals(none.totals().glueMass(), none.totals().glueMassOfCopies(), 1e-15);
    }

    @Test
    void theStripsOfABlankAreSharedOutOverTheOpenTime() {
        Designs cube = Designs.of("cube").bands(Designs.widths(20.0, 20.0, 20.0, null));
        List<GlueWork> stages = Assemblies.plan(cube, 2).blankGluings().get(0).stages();
        assertEquals(List.of(2, 1), stages.stream().map(GlueWork::seams).toList());
        assertEquals(List.of(true, true), stages.stream().map(GlueWork::fits).toList());
    }

    @Test
    @DisplayName("hand calculation: a cuboctahedron of edge 100, 20 thick, is bevelled less deep on its triangles")
    void unlikePanels() {
        AssemblyPlan plan =
                Assemblies.plan(Designs.of("cuboctahedron").edge(100).thickness(20));
        GluedSeam seam = plan.stages().get(0).seams().get(0);
        // The triangle is sqrt(2/3) edges from the centre and has a base distance of sqrt(3)/6.
        double triangle = 100 * Math.sqrt(2.0 / 3);
        double depth = 20 / Math.sin(Math.atan(triangle / (100 * Math.sqrt(3) / 6)));
        assertEquals(depth, seam.depth(), 1e-9);
        assertEquals(100 * (1 + (triangle - 20) / triangle) / 2 * depth, seam.area(), 1e-8);
    }

    /** The seam's face as a quadrilateral in space, cut to the panel that reaches less far towards the centre. */
    @ParameterizedTest
    @MethodSource("org.orbwright.assembly.Assemblies#solids")
    void areasAreThoseOfTheFacesInSpace(String name) {
        Designs small = Assemblies.small(name);
        Design design = small.build();
        Solid solid = design.solid();
        Assemblies.seams(Assemblies.plan(small)).forEach((number, seam) -> {
            Edge edge = solid.edges().get(number);
            Vector3D from = solid.vertices().get(edge.from()).vector().multiply(design.edge());
            Vector3D to = solid.vertices().get(edge.to()).vector().multiply(design.edge());
            double inner = 0;
            double depth = Double.POSITIVE_INFINITY;
            for (int face : new int[] {edge.face(), edge.neighbour()}) {
                Panel panel = design.panelAt(solid.faces().get(face).kind(), 0);
                Vector3D normal = solid.normal(solid.faces().get(face));
                double innerFace = panel.faceDistance() - 1;
                inner = Math.max(inner, innerFace / normal.dot(from));
                depth = Math.min(depth, 0.8 / Math.sin(bevel(design, panel.face())));
            }
            Vector3D one = to.multiply(inner).subtract(from);
            Vector3D other = from.multiply(inner).subtract(to);
            assertEquals(one.cross(other).norm() / 2, seam.area(), 1e-9);
            assertEquals(from.distance(to), seam.length(), 1e-9);
            assertEquals(depth, seam.depth(), 1e-9);
        });
    }

    private static double bevel(Design design, String face) {
        return AngleCalculator.calculate(design).faces().stream()
                .filter(angles -> angles.face().equals(face))
                .mapToDouble(FaceAngles::bevel)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.assembly.Assemblies#solids")
    void stagesAddUpToTheTotals(String name) {
        for (int most : new int[] {1000, 4}) {
            AssemblyPlan plan = Assemblies.plan(Assemblies.small(name).copies(3), most);
            double length = 0;
            double area = 0;
            double mass = 0;
            int joints = 0;
            int seams = 0;
            for (PanelGluing panel : plan.panelGluings()) {
                for (PanelGluing.PanelStage stage : panel.stages()) {
                    length += panel.perSphere() * stage.glue().glueLength();
                    area += panel.perSphere() * stage.glue().glueArea();
                    mass += panel.perSphere() * stage.glue().glueMass();
                    joints += panel.perSphere() * stage.glue().seams();
                }
            }
            for (SolidStage stage : plan.stages()) {
                length += stage.glue().glueLength();
                area += stage.glue().glueArea();
                mass += stage.glue().glueMass();
                seams += stage.glue().seams();
                assertEquals(stage.seams().size(), stage.glue().seams());
            }
            assertEquals(length, plan.totals().glueLength(), 1e-9 * length);
            assertEquals(area, plan.totals().glueArea(), 1e-9 * area);
            assertEquals(mass, plan.totals().glueMass(), 1e-9 * mass);
            double blanks = plan.blankGluings().stream()
                    .mapToDouble(BlankGluing::glueMass)
                    .sum();
            assertEquals(3 * mass + blanks, plan.totals().glueMassOfCopies(), 1e-9 * mass);
            assertEquals(joints, plan.totals().joints());
            assertEquals(2 * seams, joints);
            assertEquals(seams, plan.totals().seams());
        }
    }

    private static List<Integer> first(int panels) {
        return IntStream.range(0, panels).boxed().toList();
    }

    @Test
    void everySecondSphereIsInvertedWhereThereAreTwoSets() {
        assertEquals(
                List.of(
                        new AssembledSpheres(SphereSet.UPRIGHT, 1, List.of()),
                        new AssembledSpheres(SphereSet.INVERTED, 1, first(12))),
                Assemblies.plan(Designs.example("dodecahedron-with-land")).spheres());
        Designs oneBand = Designs.of("cube").copies(3);
        assertEquals(
                List.of(new AssembledSpheres(SphereSet.UPRIGHT, 3, List.of())),
                Assemblies.plan(oneBand).spheres());
        assertEquals(
                List.of(
                        new AssembledSpheres(SphereSet.UPRIGHT, 2, List.of()),
                        new AssembledSpheres(SphereSet.INVERTED, 1, first(6))),
                Assemblies.plan(oneBand.bands(Designs.widths(20.0, null))).spheres());
    }

    @Test
    void whatIsLeftOutIsCommon() {
        Glue common = new Glue(200, 3, 3, 9);
        assertEquals(common, Glue.of(AssemblyRequest.USUAL.filled().glue()));
        GlueRequest nothing = new GlueRequest(null, null, null);
        assertEquals(common, Glue.of(new AssemblyRequest(nothing, null).filled().glue()));
    }

    @Test
    @DisplayName("hand calculation: two layers of a blank meet on 1000 by 100 mm, their strips on 1000 by 12.5 mm")
    void layersAreGluedFaceToFace() {
        Designs design = Designs.of("cube").copies(2).layers(2).bands(Designs.widths(20.0, 30.0, null));
        BlankGluing gluing = Assemblies.plan(design).blankGluings().get(0);
        assertEquals(2, gluing.layers());
        assertEquals(2, gluing.joints());
        assertEquals(1, gluing.stages().size());
        GlueWork layer = gluing.stages().get(0);
        assertEquals(2, layer.seams());
        assertEquals(2000, layer.glueLength(), 1e-9);
        assertEquals(2 * 12_500, layer.glueArea(), 1e-8);
        assertEquals(1, gluing.layerStages().size());
        GlueWork faces = gluing.layerStages().get(0);
        assertEquals(1, faces.seams());
        assertEquals(1000, faces.glueLength(), 1e-9);
        assertEquals(100_000, faces.glueArea(), 1e-8);
        // 48 segments at 8 a blank.
        assertEquals(6, gluing.blanks());
        double area = 6 * (2 * 2 * 12_500 + 100_000);
        assertEquals(area, gluing.glueArea(), 1e-7);
        assertEquals(area * 2e-7, gluing.glueMass(), 1e-12);
    }

    @Test
    void aSingleLayerHasNoFacesToGlue() {
        BlankGluing gluing = Assemblies.plan(Designs.of("cube").bands(Designs.widths(20.0, 30.0, null)))
                .blankGluings()
                .get(0);
        assertEquals(1, gluing.layers());
        assertEquals(List.of(), gluing.layerStages());
        assertEquals(25_000 * 2, gluing.stages().get(0).glueArea(), 1e-8);
    }

    @Test
    void faceJointsThatDoNotFitIntoTheOpenTimeTakeMoreStages() {
        AssemblyPlan plan = Assemblies.plan(Designs.of("cube").layers(5), 3);
        assertEquals(
                List.of(3, 1),
                plan.blankGluings().get(0).layerStages().stream()
                        .map(GlueWork::seams)
                        .toList());
    }
}
