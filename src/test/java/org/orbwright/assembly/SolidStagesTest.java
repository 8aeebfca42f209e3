package org.orbwright.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.assembly.AssemblyPlan.AssembledPanel;
import org.orbwright.assembly.AssemblyPlan.Cap;
import org.orbwright.assembly.AssemblyPlan.CapSeam;
import org.orbwright.assembly.AssemblyPlan.GluedSeam;
import org.orbwright.assembly.AssemblyPlan.PanelNeighbour;
import org.orbwright.assembly.AssemblyPlan.SolidStage;
import org.orbwright.assembly.AssemblyPlan.SolidWork;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.solid.Edge;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;

/** Panels to caps and caps to the solid, on every solid, against the catalogue's edges and faces. */
@Slow
class SolidStagesTest {
    private static final String SOLIDS = "org.orbwright.assembly.Assemblies#solids";

    private static AssemblyPlan plan(String solid) {
        return Assemblies.plan(Assemblies.small(solid));
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void everySeamIsGluedOnceBetweenItsTwoPanels(String name) {
        List<Edge> edges = Designs.solid(name).edges();
        for (int most : new int[] {1000, 10, 5, 1}) {
            Map<Integer, GluedSeam> seams = Assemblies.seams(Assemblies.plan(Assemblies.small(name), most));
            assertEquals(
                    IntStream.range(0, edges.size()).boxed().toList(), List.copyOf(seams.keySet()), "most " + most);
            seams.forEach((number, seam) -> {
                Edge edge = edges.get(number);
                assertEquals(Set.of(edge.face(), edge.neighbour()), Set.of(seam.panel(), seam.neighbour()));
            });
        }
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void everyPanelIsAddedOnceToItsCapAndTouchesIt(String name) {
        for (int most : new int[] {1000, 10, 5, 1}) {
            AssemblyPlan plan = Assemblies.plan(Assemblies.small(name), most);
            Set<Integer> there = new HashSet<>();
            SolidWork before = null;
            for (SolidStage stage : plan.stages()) {
                if (stage.work() != before && stage.work() == SolidWork.SECOND_CAP) {
                    there.removeIf(panel -> Assemblies.cap(plan, panel) == Cap.FIRST);
                }
                boolean starts = stage.work() != before && stage.work() != SolidWork.ONTO_FIRST_CAP;
                before = stage.work();
                List<GluedSeam> open = new ArrayList<>(stage.seams());
                for (int panel : stage.panels()) {
                    List<GluedSeam> touching = touching(open, panel);
                    assertEquals(seamsTo(plan, panel, there), numbers(touching), name + " panel " + panel);
                    assertTrue(starts || !touching.isEmpty(), name + " panel " + panel + " touches its cap");
                    starts = false;
                    assertTrue(there.add(panel));
                }
                assertTrue(open.isEmpty() || stage.work() == SolidWork.CLOSING, open::toString);
            }
        }
    }

    /** Takes the seams at the start of the list that are glued with a panel. */
    private static List<GluedSeam> touching(List<GluedSeam> open, int panel) {
        List<GluedSeam> taken = new ArrayList<>();
        while (!open.isEmpty() && open.get(0).panel() == panel) {
            taken.add(open.remove(0));
        }
        return taken;
    }

    private static Set<Integer> numbers(List<GluedSeam> seams) {
        return new HashSet<>(seams.stream().map(GluedSeam::seam).toList());
    }

    private static Set<Integer> seamsTo(AssemblyPlan plan, int panel, Set<Integer> there) {
        return new HashSet<>(plan.panels().get(panel).neighbours().stream()
                .filter(neighbour -> there.contains(neighbour.panel()))
                .map(PanelNeighbour::seam)
                .toList());
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void bothCapsHaveEquallyManyPanels(String name) {
        AssemblyPlan plan = plan(name);
        long first =
                plan.panels().stream().filter(panel -> panel.cap() == Cap.FIRST).count();
        assertEquals(plan.panels().size(), 2 * first);
        for (SolidStage stage : plan.stages()) {
            for (int panel : stage.panels()) {
                Cap cap = stage.work() == SolidWork.FIRST_CAP ? Cap.FIRST : Cap.SECOND;
                assertEquals(cap, Assemblies.cap(plan, panel));
            }
        }
    }

    /** Corners less edges plus faces of a disc are 1 (Euler). */
    @ParameterizedTest
    @MethodSource(SOLIDS)
    void bothCapsAreDiscs(String name) {
        Solid solid = Designs.solid(name);
        AssemblyPlan plan = plan(name);
        for (Cap cap : Cap.values()) {
            Set<Integer> corners = new HashSet<>();
            int faces = 0;
            for (AssembledPanel panel : plan.panels()) {
                if (panel.cap() == cap) {
                    corners.addAll(solid.faces().get(panel.panel()).vertices());
                    faces++;
                }
            }
            long edges = solid.edges().stream()
                    .filter(edge ->
                            Assemblies.cap(plan, edge.face()) == cap || Assemblies.cap(plan, edge.neighbour()) == cap)
                    .count();
            assertEquals(1, corners.size() - edges + faces, name + " " + cap);
        }
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void closingSeamIsOneLoopThatPassesNoCornerTwice(String name) {
        Solid solid = Designs.solid(name);
        AssemblyPlan plan = plan(name);
        List<Integer> loop = plan.caps().loop();
        SolidStage closing = plan.stages().get(plan.stages().size() - 1);
        assertEquals(SolidWork.CLOSING, closing.work());
        assertEquals(List.of(), closing.panels());
        assertEquals(loop, closing.seams().stream().map(GluedSeam::seam).toList());
        List<Integer> starts = new ArrayList<>();
        for (int i = 0; i < loop.size(); i++) {
            Edge edge = solid.edges().get(loop.get(i));
            boolean firstOnLeft = Assemblies.cap(plan, edge.face()) == Cap.FIRST;
            assertTrue(firstOnLeft != (Assemblies.cap(plan, edge.neighbour()) == Cap.FIRST));
            starts.add(firstOnLeft ? edge.from() : edge.to());
            Edge next = solid.edges().get(loop.get((i + 1) % loop.size()));
            boolean nextOnLeft = Assemblies.cap(plan, next.face()) == Cap.FIRST;
            assertEquals(firstOnLeft ? edge.to() : edge.from(), nextOnLeft ? next.from() : next.to());
        }
        assertEquals(loop.size(), new HashSet<>(starts).size());
    }

    /**
     * The second cap moves along the axis against the first: from every seam's plane, which runs through the centre and
     * the edge, the way of the second cap leads to the side of the first one's panel.
     */
    @ParameterizedTest
    @MethodSource(SOLIDS)
    void everyClosingSeamLeansSoThatItCloses(String name) {
        Solid solid = Designs.solid(name);
        AssemblyPlan plan = plan(name);
        Vector3D axis = axis(solid, plan.caps()).normalize();
        for (int number : plan.caps().loop()) {
            Edge edge = solid.edges().get(number);
            Vector3D across =
                    vertex(solid, edge.from()).cross(vertex(solid, edge.to())).normalize();
            int first = Assemblies.cap(plan, edge.face()) == Cap.FIRST ? edge.face() : edge.neighbour();
            Vector3D towardsFirst = across.dot(middle(solid, solid.faces().get(first))) > 0 ? across : across.negate();
            assertTrue(towardsFirst.dot(axis) > 1e-3, name + " seam " + number);
        }
    }

    private static Vector3D axis(Solid solid, CapSeam caps) {
        return switch (caps.axisThrough()) {
            case FACE -> middle(solid, solid.faces().get(caps.axisNumber()));
            case CORNER -> vertex(solid, caps.axisNumber());
            case EDGE -> {
                Edge edge = solid.edges().get(caps.axisNumber());
                yield vertex(solid, edge.from()).add(vertex(solid, edge.to()));
            }
        };
    }

    private static Vector3D middle(Solid solid, Face face) {
        Vector3D normal = solid.normal(face);
        return normal.multiply(normal.dot(solid.corner(face, 0)));
    }

    private static Vector3D vertex(Solid solid, int number) {
        return solid.vertices().get(number).vector();
    }

    @ParameterizedTest
    @CsvSource({
        "tetrahedron, 4, false, one seam a cap and a zigzag of four",
        "cube, 6, false, three squares around a corner against three",
        "octahedron, 4, true, two pyramids",
        "dodecahedron, 10, false, six pentagons against six",
        "cuboctahedron, 6, true, its hexagonal equator",
        "icosidodecahedron, 10, true, its decagonal equator"
    })
    @DisplayName(
            "loops seen on a model; equators from memory: Coxeter, Regular Polytopes, 3rd edition 1973, 2.2 and 2.3")
    void knownLoops(String name, int seams, boolean flat, String why) {
        CapSeam caps = plan(name).caps();
        assertEquals(seams, caps.loop().size(), why);
        assertEquals(flat, caps.flat(), why);
    }

    /** A loop in one plane closes all over at once where the caps are pushed together square to it. */
    @ParameterizedTest
    @MethodSource(SOLIDS)
    void flatLoopsArePushedTogetherSquareToTheirPlane(String name) {
        Solid solid = Designs.solid(name);
        CapSeam caps = plan(name).caps();
        if (caps.flat()) {
            Vector3D axis = axis(solid, caps).normalize();
            for (int seam : caps.loop()) {
                Edge edge = solid.edges().get(seam);
                assertEquals(0, axis.dot(vertex(solid, edge.from())), 1e-9, name);
                assertEquals(0, axis.dot(vertex(solid, edge.to())), 1e-9, name);
            }
        }
    }

    @Test
    void dodecahedronStartsAtTheFaceOnItsAxis() {
        AssemblyPlan plan = plan("dodecahedron");
        assertEquals(
                plan.caps().axisNumber(), plan.stages().get(0).panels().get(0).intValue());
        assertEquals(
                List.of(SolidWork.FIRST_CAP, SolidWork.SECOND_CAP, SolidWork.CLOSING),
                plan.stages().stream().map(SolidStage::work).toList());
        assertEquals(
                List.of(6, 6, 0),
                plan.stages().stream().map(stage -> stage.panels().size()).toList());
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void neighboursAreThoseOfTheSolidInOrderOfTheFacesEdges(String name) {
        Solid solid = Designs.solid(name);
        AssemblyPlan plan = plan(name);
        assertEquals(solid.faces().size(), plan.panels().size());
        for (int number = 0; number < plan.panels().size(); number++) {
            AssembledPanel panel = plan.panels().get(number);
            Face face = solid.faces().get(number);
            assertEquals(number, panel.panel());
            assertEquals(face.kind(), panel.face());
            assertEquals(face.mirrored(), panel.mirrored());
            assertEquals(face.vertices().size(), panel.neighbours().size());
            for (int i = 0; i < panel.neighbours().size(); i++) {
                PanelNeighbour neighbour = panel.neighbours().get(i);
                Set<Integer> corners = Set.of(
                        face.vertices().get(i),
                        face.vertices().get((i + 1) % face.vertices().size()));
                Edge edge = solid.edges().get(neighbour.seam());
                assertEquals(corners, Set.of(edge.from(), edge.to()));
                assertTrue(solid.faces().get(neighbour.panel()).vertices().containsAll(corners));
                assertTrue(neighbour.panel() != number);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"truncated-icosidodecahedron", "snub-cube", "disdyakis-triacontahedron"})
    void theSameRequestHasTheSamePlan(String name) {
        assertEquals(plan(name), plan(name));
    }
}
