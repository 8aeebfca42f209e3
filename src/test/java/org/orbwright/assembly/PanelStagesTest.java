package org.orbwright.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.assembly.PanelGluing.PanelJoint;
import org.orbwright.assembly.PanelGluing.PanelStage;
import org.orbwright.assembly.PanelGluing.PanelWork;
import org.orbwright.fixture.Designs;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;

/** Segments to panels. */
class PanelStagesTest {
    private static PanelGluing gluing(String solid, String face, int most) {
        return Assemblies.plan(Assemblies.small(solid), most).panelGluings().stream()
                .filter(panel -> panel.face().equals(face))
                .findFirst()
                .orElseThrow();
    }

    private static List<PanelWork> works(PanelGluing gluing) {
        return gluing.stages().stream().map(PanelStage::work).toList();
    }

    private static List<List<Integer>> joints(PanelGluing gluing) {
        return gluing.stages().stream().map(PanelStage::joints).toList();
    }

    @Test
    void oddPanelsCloseInOneGo() {
        PanelGluing pentagon = gluing("dodecahedron", "pentagon", 1000);
        assertFalse(pentagon.inHalves());
        assertEquals(12, pentagon.perSphere());
        assertEquals(List.of(PanelWork.WHOLE), works(pentagon));
        assertEquals(List.of(List.of(1, 2, 3, 4, 0)), joints(pentagon));
    }

    @Test
    void evenPanelsAreMadeInHalves() {
        PanelGluing hexagon = gluing("truncated-icosahedron", "hexagon", 1000);
        assertTrue(hexagon.inHalves());
        assertEquals(List.of(PanelWork.FIRST_HALF, PanelWork.SECOND_HALF, PanelWork.STRAIGHT_JOINT), works(hexagon));
        assertEquals(List.of(List.of(1, 2), List.of(4, 5), List.of(0, 3)), joints(hexagon));
    }

    @Test
    void aSquareHasHalvesOfOneJointEach() {
        assertEquals(List.of(List.of(1), List.of(3), List.of(0, 2)), joints(gluing("cube", "square", 1)));
    }

    /**
     * The straight joint of a kite is its axis of symmetry: the two joints there have segments that mirror each other.
     */
    @Test
    void aKiteIsHalvedAlongItsAxisAlone() {
        PanelGluing kite = gluing("deltoidal-hexecontahedron", "kite", 1000);
        assertTrue(kite.inHalves());
        List<Integer> straight = kite.stages().get(2).joints();
        List<Double> lengths = kite.joints().stream().map(PanelJoint::length).toList();
        int one = straight.get(0);
        assertEquals(lengths.get((one + 1) % 4), lengths.get((one + 3) % 4), 1e-12);
        assertTrue(Math.abs(lengths.get(one) - lengths.get((one + 2) % 4)) > 1);
    }

    @Test
    void whatDoesNotFitIsSharedOut() {
        assertEquals(List.of(List.of(1, 2), List.of(3), List.of(4, 0)), joints(gluing("dodecahedron", "pentagon", 2)));
        assertEquals(List.of(List.of(1, 2, 3), List.of(4, 0)), joints(gluing("dodecahedron", "pentagon", 3)));
        PanelGluing decagon = gluing("truncated-icosidodecahedron", "decagon", 3);
        assertEquals(
                List.of(List.of(1, 2, 3), List.of(4), List.of(6, 7, 8), List.of(9), List.of(0, 5)), joints(decagon));
        assertEquals(
                List.of(1, 2, 3, 4, 5),
                decagon.stages().stream().map(PanelStage::stage).toList());
    }

    @Test
    void theLastSegmentClosesTwoJointsAtOnce() {
        PanelGluing triangle = gluing("octahedron", "triangle", 1);
        assertEquals(List.of(List.of(1), List.of(2, 0)), joints(triangle));
        assertTrue(triangle.stages().get(0).glue().fits());
        assertFalse(triangle.stages().get(1).glue().fits());
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.assembly.Assemblies#solids")
    void everyJointIsGluedOnceAndReachesFromTheCentreToItsCorner(String name) {
        Solid solid = Designs.solid(name);
        for (int most : new int[] {1000, 3, 1}) {
            for (PanelGluing gluing :
                    Assemblies.plan(Assemblies.small(name), most).panelGluings()) {
                List<Integer> glued = new ArrayList<>();
                gluing.stages().forEach(stage -> glued.addAll(stage.joints()));
                int sides = gluing.joints().size();
                assertEquals(
                        IntStream.range(0, sides).boxed().toList(),
                        glued.stream().sorted().toList());
                Face face = solid.faces().stream()
                        .filter(each -> each.kind().equals(gluing.face()))
                        .findFirst()
                        .orElseThrow();
                Vector3D normal = solid.normal(face);
                Vector3D centre = normal.multiply(normal.dot(solid.corner(face, 0)));
                for (PanelJoint joint : gluing.joints()) {
                    double leg = 10 * centre.distance(solid.corner(face, joint.joint()));
                    assertEquals(leg, joint.length(), 1e-9);
                    // The small designs are 1 mm thick.
                    assertEquals(leg, joint.area(), 1e-9);
                    assertEquals((joint.joint() + sides - 1) % sides, joint.segment());
                }
                assertEquals(sides % 2 == 0, gluing.inHalves());
            }
        }
    }

    /** The two corners of the straight joint and the panel's centre lie in one line. */
    @ParameterizedTest
    @MethodSource("org.orbwright.assembly.Assemblies#solids")
    void straightJointsAreStraight(String name) {
        Solid solid = Designs.solid(name);
        for (PanelGluing gluing : Assemblies.plan(Assemblies.small(name)).panelGluings()) {
            if (!gluing.inHalves()) {
                continue;
            }
            List<Integer> straight = gluing.stages().get(2).joints();
            Face face = solid.faces().stream()
                    .filter(each -> each.kind().equals(gluing.face()))
                    .findFirst()
                    .orElseThrow();
            double across = solid.corner(face, straight.get(0)).distance(solid.corner(face, straight.get(1)));
            assertEquals(10 * across, gluing.stages().get(2).glue().glueLength(), 1e-9);
        }
    }
}
