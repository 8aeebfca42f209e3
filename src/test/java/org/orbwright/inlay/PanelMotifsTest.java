package org.orbwright.inlay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.inlay.Inlays.disc;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.SizeBy;
import org.orbwright.inlay.InlayPlan.InlaidPanel;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;

/** How motifs are shared out, and which panels are said to be neighbours and opposite, against the faces' normals. */
class PanelMotifsTest {
    private static final DesignRequest DODECAHEDRON =
            sketch().size(SizeBy.EDGE, 80).request();

    @Nested
    class Motifs {
        @Test
        void twelveMotifsOnTwelvePanelsAreAllDifferent() {
            List<InlaidPanel> panels =
                    disc(DODECAHEDRON, 20).motifs(names(12)).plan().panels();
            assertEquals(12, panels.size());
            assertEquals(12, panels.stream().map(InlaidPanel::motif).distinct().count());
        }

        @ParameterizedTest
        @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
        void everyMotifComesAsOftenAsTheOthersToWithinOne(int motifs) {
            Map<String, Long> counts = disc(DODECAHEDRON, 20).motifs(names(motifs)).plan().panels().stream()
                    .collect(Collectors.groupingBy(InlaidPanel::motif, Collectors.counting()));
            assertEquals(motifs, counts.size());
            long most = counts.values().stream().max(Long::compare).orElseThrow();
            long least = counts.values().stream().min(Long::compare).orElseThrow();
            assertTrue(most - least <= 1, counts::toString);
        }

        @Test
        void sameRequestGivesTheSamePanels() {
            assertEquals(
                    disc(DODECAHEDRON, 20).motifs(names(5)).plan(),
                    disc(DODECAHEDRON, 20).motifs(names(5)).plan());
        }

        @Test
        void withoutMotifsThePanelsHaveNone() {
            assertTrue(disc(DODECAHEDRON, 20).plan().panels().stream().allMatch(p -> p.motif() == null));
        }

        @Test
        void chosenPanelsAreInAscendingOrderAndShareTheMotifsAmongThem() {
            List<InlaidPanel> panels = disc(DODECAHEDRON, 20)
                    .panels(8, 1, 4, 12)
                    .motifs(names(2))
                    .plan()
                    .panels();
            assertEquals(
                    List.of(0, 3, 7, 11),
                    panels.stream().map(InlaidPanel::panel).toList());
            assertEquals(
                    2, panels.stream().filter(p -> p.motif().equals("motif 1")).count());
        }

        private static String[] names(int count) {
            return IntStream.rangeClosed(1, count).mapToObj(i -> "motif " + i).toArray(String[]::new);
        }
    }

    @Nested
    class Geometry {
        @ParameterizedTest
        @MethodSource("org.orbwright.inlay.PanelMotifsTest#faces")
        void everyPanelOfTheKindIsListedOnce(Solid solid, String face) {
            List<Integer> expected = IntStream.range(0, solid.faces().size())
                    .filter(i -> solid.faces().get(i).kind().equals(face))
                    .boxed()
                    .toList();
            assertEquals(
                    expected,
                    panels(solid, face).stream().map(InlaidPanel::panel).toList());
        }

        @ParameterizedTest
        @MethodSource("org.orbwright.inlay.PanelMotifsTest#faces")
        void oppositePanelHasTheOppositeNormal(Solid solid, String face) {
            for (InlaidPanel panel : panels(solid, face)) {
                Vector3D normal = normal(solid, panel.panel());
                List<Integer> opposite = IntStream.range(0, solid.faces().size())
                        .filter(i -> solid.faces().get(i).kind().equals(face))
                        .filter(i -> normal.add(normal(solid, i)).norm() < 1e-6)
                        .boxed()
                        .toList();
                if (opposite.isEmpty()) {
                    assertNull(panel.opposite());
                } else {
                    assertEquals(opposite, List.of(panel.opposite()));
                }
            }
        }

        @ParameterizedTest
        @MethodSource("org.orbwright.inlay.PanelMotifsTest#faces")
        void neighboursShareTwoCorners(Solid solid, String face) {
            for (InlaidPanel panel : panels(solid, face)) {
                Set<Integer> corners =
                        new HashSet<>(solid.faces().get(panel.panel()).vertices());
                TreeSet<Integer> expected = new TreeSet<>();
                for (int i = 0; i < solid.faces().size(); i++) {
                    long shared = solid.faces().get(i).vertices().stream()
                            .filter(corners::contains)
                            .count();
                    if (shared == 2) {
                        expected.add(i);
                    }
                }
                assertEquals(List.copyOf(expected), panel.neighbours());
            }
        }

        @Test
        void neighboursOfADodecahedronsPanelAreTheFiveWithTheNearestNormals() {
            Solid solid = SolidCatalogue.find("dodecahedron").orElseThrow();
            for (InlaidPanel panel : panels(solid, "pentagon")) {
                Vector3D normal = normal(solid, panel.panel());
                Function<Integer, Double> angle = i -> normal.angle(normal(solid, i));
                assertEquals(5, panel.neighbours().size());
                // Supplement of the dihedral angle pi - arctan 2 (GNU 3DLDF, user manual, Dodecahedron).
                panel.neighbours().forEach(i -> assertEquals(63.4349, Math.toDegrees(angle.apply(i)), 5e-5));
            }
        }

        private static List<InlaidPanel> panels(Solid solid, String face) {
            DesignRequest design = sketch().solid(solid.name())
                    .size(SizeBy.EDGE, 100)
                    .panel(90 * solid.inradius(), null)
                    .laminations(solid.faceKinds().stream()
                            .map(kind -> lamination(kind.face(), null, (Double) null))
                            .toArray(DesignRequest.LaminationRequest[]::new))
                    .request();
            return disc(design, 1).face(face).plan().panels();
        }
    }

    static Stream<Arguments> faces() {
        return SolidCatalogue.all().stream()
                .flatMap(solid -> solid.faceKinds().stream().map(kind -> Arguments.of(solid, kind.face())));
    }

    /** Newell's normal, from all corners. */
    private static Vector3D normal(Solid solid, int number) {
        Face face = solid.faces().get(number);
        Vector3D sum = Vector3D.ZERO;
        for (int i = 0; i < face.vertices().size(); i++) {
            sum = sum.add(solid.corner(face, i)
                    .cross(solid.corner(face, (i + 1) % face.vertices().size())));
        }
        return sum.normalize();
    }
}
