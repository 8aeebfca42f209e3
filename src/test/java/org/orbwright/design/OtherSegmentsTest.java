package org.orbwright.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.source.Source;

/** Segments in their places around a panel: every other one of another lamination, or turned face down. */
@Source(CONTRACT)
class OtherSegmentsTest {
    private static final double EXACT = 1e-9;
    private static final double TILT = 30;

    static Stream<Solid> solids() {
        return SolidCatalogue.all().stream();
    }

    private static LaminationRequest lamination(String face, Places places, double angle, boolean chevron) {
        return new LaminationRequest(face, places, angle, chevron, List.of(new BandRequest("sugar maple", null)));
    }

    private static RequestSketch plain(Solid solid, double angle) {
        return sketch().solid(solid.name())
                .size(SizeBy.EDGE, 60)
                .panel(5, null)
                .laminations(solid.faceKinds().stream()
                        .map(kind -> lamination(kind.face(), null, angle, false))
                        .toArray(LaminationRequest[]::new));
    }

    private static RequestSketch cube(LaminationRequest... laminations) {
        return sketch().solid("cube").laminations(laminations);
    }

    private static RequestSketch rhombic(LaminationRequest... laminations) {
        return sketch().solid("rhombic-triacontahedron").laminations(laminations);
    }

    private static double leg(PlacedPiece placed, double part) {
        return Math.hypot(placed.piece().base(), part);
    }

    private static double angle(PlacedPiece placed, double part) {
        return Math.atan(part / placed.piece().base());
    }

    @Nested
    class Around {
        @ParameterizedTest(name = "{0}")
        @MethodSource("org.orbwright.design.OtherSegmentsTest#solids")
        @Source(INVARIANT)
        void segmentsCloseAroundEveryPanelLegToLeg(Solid solid) {
            for (double tilt : new double[] {0, TILT}) {
                Design design = plain(solid, tilt).design();
                for (FaceKind kind : solid.faceKinds()) {
                    List<PlacedPiece> around = PlacedPiece.around(design, kind.face());
                    assertEquals(kind.sides(), around.size());
                    assertEquals(0, around.get(0).direction());
                    for (int i = 0; i < around.size(); i++) {
                        PlacedPiece one = around.get(i);
                        PlacedPiece next = around.get((i + 1) % around.size());
                        double turn = i + 1 == around.size() ? 2 * Math.PI : 0;
                        double tips = angle(one, one.piece().right())
                                + angle(next, next.piece().left());
                        assertEquals(one.direction() + tips, next.direction() + turn, EXACT);
                        assertEquals(
                                leg(one, one.piece().right()),
                                leg(next, next.piece().left()),
                                EXACT);
                    }
                }
            }
        }

        @Test
        @Source(INVARIANT)
        void aMirroredFaceGoesAroundTheOtherWay() {
            Design design = plain(
                            SolidCatalogue.find("disdyakis-triacontahedron").orElseThrow(), TILT)
                    .design();
            List<PlacedPiece> plain = PlacedPiece.around(design, "triangle", false);
            List<PlacedPiece> mirrored = PlacedPiece.around(design, "triangle", true);
            for (PlacedPiece one : plain) {
                Piece other = mirrored.stream()
                        .map(PlacedPiece::piece)
                        .filter(piece -> piece.segment().equals(one.piece().segment()))
                        .findFirst()
                        .orElseThrow();
                assertEquals(!one.piece().mirrored(), other.mirrored());
                assertEquals(one.piece().left(), other.right(), EXACT);
                assertEquals(one.piece().right(), other.left(), EXACT);
            }
        }

        @Test
        void aFaceThatTheSolidDoesNotHaveHasNoPanel() {
            Design design = sketch().design();
            assertThrows(IllegalArgumentException.class, () -> design.panelAt("square", 0));
        }
    }

    @Nested
    class EveryOther {
        private final Design halves = cube(
                        lamination(null, Places.ODD, 0, false), lamination(null, Places.EVEN, TILT, false))
                .design();

        @Test
        @Source(value = HAND, text = "counting: half of 6 squares of 4 segments")
        void halfOfTheSegmentsGoToEachLamination() {
            assertEquals(
                    List.of(Places.ODD, Places.EVEN),
                    halves.panels().stream().map(Panel::places).toList());
            for (Panel half : halves.panels()) {
                // 6 faces with 4 segments each.
                assertEquals(1, half.pieces().size());
                assertEquals(12, half.pieces().get(0).perSphere());
            }
            assertEquals(List.of(halves.panels().get(0)), halves.facePanels());
        }

        @Test
        void theLaminationsTakeTurnsAroundThePanel() {
            List<Places> turns = PlacedPiece.around(halves, "square").stream()
                    .map(placed -> placed.panel().places())
                    .toList();
            assertEquals(List.of(Places.ODD, Places.EVEN, Places.ODD, Places.EVEN), turns);
        }

        @Test
        @Source(value = HAND, text = "counting: 30 rhombi of four right triangles, left and right in turn")
        void everyOtherSegmentOfARhombusHasOneHand() {
            List<Panel> panels = rhombic(
                            lamination(null, Places.ODD, 0, false), lamination(null, Places.EVEN, 0, false))
                    .design()
                    .panels();
            // 30 rhombi of two left-handed and two right-handed right triangles, in turn.
            Piece odd = panels.get(0).pieces().get(0);
            Piece even = panels.get(1).pieces().get(0);
            assertEquals(60, odd.perSphere());
            assertEquals(60, even.perSphere());
            assertEquals(60, odd.turnedPerSphere() + even.turnedPerSphere());
            assertEquals(0, odd.turnedPerSphere() * even.turnedPerSphere());
        }

        @Test
        @Source(value = HAND, text = "counting: 6 squares of 4 segments")
        void aLaminationForAllSegmentsIsOnePanel() {
            Design design = cube(lamination(null, Places.ALL, 0, false)).design();
            assertEquals(1, design.panels().size());
            assertEquals(24, design.panels().get(0).pieces().get(0).perSphere());
        }
    }

    @Nested
    class Chevrons {
        @Test
        @Source(value = HAND, text = "a turn face down changes the sign of the angle; half of 6 x 4 segments")
        void everyOtherSegmentOfACubeIsTurnedFaceDown() {
            Design design = cube(lamination(null, null, TILT, true)).design();
            Panel panel = design.panels().get(0);
            assertEquals(
                    List.of(12, 12),
                    panel.pieces().stream().map(Piece::perSphere).toList());
            List<Double> degrees = PlacedPiece.around(design, "square").stream()
                    .map(placed -> Math.toDegrees(placed.piece().angle(panel.lamination())))
                    .toList();
            for (int i = 0; i < degrees.size(); i++) {
                assertEquals(i % 2 == 0 ? TILT : -TILT, degrees.get(i), EXACT);
            }
        }

        @Test
        @Source(INVARIANT)
        void whatIsTurnedIsSawnAlike() {
            for (RequestSketch sketch :
                    List.of(cube(lamination(null, null, TILT, true)), rhombic(lamination(null, null, TILT, true)))) {
                Panel panel = sketch.design().panels().get(0);
                int segments = panel.kind().count() * panel.kind().sides();
                assertEquals(2, panel.pieces().size());
                assertEquals(1, panel.sawn().size());
                assertEquals(segments, panel.sawn().get(0).perSphere());
                assertEquals(segments / 2, panel.sawn().get(0).turnedPerSphere());
            }
        }

        @Test
        void withoutAChevronMirroredSegmentsOfTiltedBandsAreSawnApart() {
            Panel panel = rhombic(lamination(null, null, TILT, false))
                    .design()
                    .panels()
                    .get(0);
            assertEquals(panel.pieces(), panel.sawn());
            assertEquals(2, panel.sawn().size());
            for (Piece piece : panel.pieces()) {
                assertFalse(piece.turned());
                assertEquals(0, piece.turnedPerSphere());
                assertEquals(Math.toRadians(TILT), piece.angle(panel.lamination()), EXACT);
            }
        }

        @Test
        void aChevronOfBandsAlongTheBaseTurnsNothing() {
            Panel panel =
                    cube(lamination(null, null, 0, true)).design().panels().get(0);
            assertEquals(1, panel.pieces().size());
            assertEquals(24, panel.pieces().get(0).perSphere());
            assertEquals(0, panel.pieces().get(0).turnedPerSphere());
        }
    }

    @Nested
    class Refused {
        private static List<Violation> all(RequestSketch sketch) {
            return assertThrows(ImpossibleDesignException.class, sketch::design).violations();
        }

        private static void assertOnly(String path, String code, RequestSketch sketch) {
            List<Violation> all = all(sketch);
            assertEquals(1, all.size(), () -> "violations: " + all);
            assertEquals(path, all.get(0).path());
            assertEquals(code, all.get(0).code());
        }

        private static RequestSketch pentagons(LaminationRequest... laminations) {
            return sketch().laminations(laminations);
        }

        @Test
        void fiveSegmentsDoNotAlternate() {
            assertOnly("/laminations/0/places", "ODD_PANEL", pentagons(lamination(null, Places.ODD, 0, false)));
            assertOnly("/laminations/0/chevron", "ODD_PANEL", pentagons(lamination(null, null, TILT, true)));
            assertOnly(
                    "/laminations/0/places",
                    "ODD_PANEL",
                    pentagons(lamination(null, Places.ODD, 0, false), lamination(null, Places.EVEN, 0, false)));
        }

        @Test
        void sixSegmentsOfAScaleneTriangleInTwoHandsDo() {
            assertEquals(
                    3,
                    sketch().solid("disdyakis-triacontahedron")
                            .laminations(lamination(null, null, TILT, true))
                            .design()
                            .panels()
                            .get(0)
                            .sawn()
                            .size());
        }

        @Test
        void aHalfIsNotTurnedAsWell() {
            assertOnly(
                    "/laminations/1/chevron",
                    "CHEVRON_OF_HALF",
                    cube(lamination(null, Places.ODD, 0, false), lamination(null, Places.EVEN, TILT, true)));
        }

        @Test
        void theOtherHalfIsMissed() {
            RequestSketch odd = cube(lamination(null, Places.ODD, 0, false));
            assertOnly("/laminations", "LAMINATION_MISSING", odd);
            assertTrue(all(odd).get(0).message().contains("the even segments of the square panels"));
            RequestSketch even = cube(lamination(null, Places.EVEN, 0, false));
            assertTrue(all(even).get(0).message().contains("the odd segments of the square panels"));
        }

        @Test
        void segmentsHaveOneLamination() {
            LaminationRequest odd = lamination(null, Places.ODD, 0, false);
            LaminationRequest even = lamination(null, Places.EVEN, 0, false);
            LaminationRequest whole = lamination(null, Places.ALL, 0, false);
            assertOnly("/laminations/2/face", "FACE_TWICE", cube(odd, even, odd));
            assertOnly("/laminations/2/face", "FACE_TWICE", cube(odd, even, whole));
            assertOnly("/laminations/1/face", "FACE_TWICE", cube(whole, even));
        }
    }
}
