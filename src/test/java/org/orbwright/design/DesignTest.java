package org.orbwright.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.ORACLE;
import static org.orbwright.source.Kind.PUBLISHED;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.source.Source;

/** What a request becomes once it is checked against its solid. */
@Source(CONTRACT)
class DesignTest {
    private static final double INRADIUS = 1.1135163644116068;
    private static final double BASE_DISTANCE = 0.6881909602355868;
    private static final double ACCURACY = 1e-12;

    /** A design in inches, of one band. */
    private static RequestSketch imperial() {
        return sketch().unit(LengthUnit.IN)
                .size(SizeBy.ACROSS_FLATS, 7)
                .panel(1, null)
                .allowance(0.1)
                .wall(0.25)
                .laminations(lamination(null, null, (Double) null));
    }

    @Nested
    class Size {
        @Test
        @Source(value = HAND, text = "the dodecahedron of edge 1 has the inradius sqrt((25 + 11 sqrt 5) / 40)")
        void acrossFlatsIsTwiceTheFaceDistance() {
            Design design = sketch().design();
            assertClose(90, design.smallestFaceDistance());
            assertClose(90 / INRADIUS, design.edge());
        }

        @Test
        @Source(
                value = HAND,
                text = "a pentagon of side 1 has the apothem 1 / (2 tan 36 degrees), a dodecahedron the inradius "
                        + "1.1135")
        void edgeIsTheSolidsShortestEdge() {
            Design design = sketch().size(SizeBy.EDGE, 80).design();
            assertEquals(80, design.edge());
            assertClose(80 * INRADIUS, design.smallestFaceDistance());
            assertClose(80 * BASE_DISTANCE, design.panels().get(0).baseDistance());
        }

        @Test
        void sphereDiameterLiesBelowTheFacesByTheTurningAllowance() {
            Design design = sketch().size(SizeBy.SPHERE_DIAMETER, 176).design();
            assertEquals(88, design.sphereRadius());
            assertClose(90, design.smallestFaceDistance());
        }

        @Test
        @Source(INVARIANT)
        void threeWaysToStateTheSameSizeGiveTheSameSolid() {
            Design flats = sketch().panel(28, 4.0).design();
            Design edge =
                    sketch().panel(28, 4.0).size(SizeBy.EDGE, 86 / INRADIUS).design();
            Design sphere =
                    sketch().panel(28, 4.0).size(SizeBy.SPHERE_DIAMETER, 176).design();
            assertSameDesign(flats, edge);
            assertSameDesign(flats, sphere);
        }

        @ParameterizedTest
        @MethodSource("org.orbwright.design.DesignTest#names")
        @Source(INVARIANT)
        void threeWaysAgreeForEverySolid(String name) {
            Design flats = plain(name).design();
            Design edge = plain(name).size(SizeBy.EDGE, flats.edge()).design();
            Design sphere = plain(name)
                    .size(SizeBy.SPHERE_DIAMETER, 2 * flats.sphereRadius())
                    .design();
            assertSameDesign(flats, edge);
            assertSameDesign(flats, sphere);
        }
    }

    @Nested
    class Units {
        @Test
        @Source(INVARIANT)
        void millimetresAndInchesAgree() {
            Design metric = sketch().size(SizeBy.ACROSS_FLATS, 177.8)
                    .panel(25.4, 2.54)
                    .allowance(2.54)
                    .wall(6.35)
                    .laminations(lamination(null, null, 12.7, null, 6.35))
                    .design();
            Design imperial = sketch().unit(LengthUnit.IN)
                    .size(SizeBy.ACROSS_FLATS, 7)
                    .panel(1, 0.1)
                    .allowance(0.1)
                    .wall(0.25)
                    .laminations(lamination(null, null, 0.5, null, 0.25))
                    .design();
            assertSameDesign(metric, imperial);
            assertClose(metric.thickness(), imperial.thickness());
            assertClose(metric.minimumWall(), imperial.minimumWall());
        }

        @Test
        @Source(
                value = PUBLISHED,
                text = "L. V. Judson, addendum to NBS Circular 572, effective 1 July 1959: one inch equals 25.4 mm")
        void sawAndBlankAreBroughtToMillimetres() {
            Design design = imperial().design();
            assertClose(3.2 * 25.4, design.kerf());
            assertClose(584 * 25.4, design.blankLength());
            assertEquals(0, design.endTrim());
        }
    }

    @Nested
    class Land {
        @Test
        @Source(INVARIANT)
        void landRaisesTheFaceOverTheSamePanel() {
            Design without = sketch().size(SizeBy.EDGE, 80).design();
            Design with = sketch().size(SizeBy.EDGE, 80).panel(28, 5.0).design();
            assertClose(without.smallestFaceDistance() + 5, with.smallestFaceDistance());
            assertEquals(
                    without.panels().get(0).baseDistance(), with.panels().get(0).baseDistance());
            assertEquals(
                    without.panels().get(0).jointDistance(),
                    with.panels().get(0).jointDistance());
            assertEquals(without.seamRadius(), with.seamRadius());
        }

        @Test
        @Source(value = HAND, text = "the dodecahedron of edge 1 has the inradius sqrt((25 + 11 sqrt 5) / 40)")
        void acrossFlatsIncludesTheLandOnBothSides() {
            Design design = sketch().panel(28, 5.0).design();
            assertClose(85 / INRADIUS, design.edge());
            assertClose(90, design.panels().get(0).faceDistance());
            assertClose(85, design.panels().get(0).jointDistance());
        }

        @Test
        void landThatIsLeftOutIsNone() {
            assertEquals(0, sketch().design().land());
        }
    }

    @Nested
    class Sphere {
        @Test
        void diameterThatIsLeftOutIsTheLargestLessTwiceTheAllowance() {
            assertClose(88, sketch().design().sphereRadius());
        }

        @Test
        @DisplayName("with a high land the seams, not the faces, limit the largest sphere")
        @Source(value = HAND, text = "the dodecahedron of edge 1 has the midradius phi^2 / 2")
        void seamsLimitTheLargestSphereUnderAHighLand() {
            Design design = sketch().size(SizeBy.EDGE, 80).panel(28, 20.0).design();
            assertClose(80 * 1.3090169943749475 - 2, design.sphereRadius());
        }

        @Test
        void diameterThatIsStatedIsKept() {
            assertEquals(86, sketch().diameter(172.0).design().sphereRadius());
        }

        @Test
        void anotherSphereIsTurnedFromTheSameSolid() {
            Design design = imperial().copies(3).design();
            Design smaller = design.withSphereRadius(80);
            assertEquals(80, smaller.sphereRadius());
            assertEquals(design, smaller.withSphereRadius(design.sphereRadius()));
            assertEquals(3, smaller.copies());
            assertEquals(LengthUnit.IN, smaller.unit());
            assertEquals("1 in", smaller.say(25.4));
        }

        @Test
        void diameterThatRepeatsTheSizeIsAccepted() {
            assertEquals(
                    85,
                    sketch().size(SizeBy.SPHERE_DIAMETER, 170)
                            .diameter(170.0)
                            .design()
                            .sphereRadius());
        }
    }

    @Nested
    class Bands {
        @Test
        @Source(value = HAND, text = "apothem of the pentagon, 1 / (2 tan 36 degrees) for a side of 1")
        void bandWithoutAWidthTakesTheRest() {
            Lamination lamination = sketch().design().panels().get(0).lamination();
            double base = 90 / INRADIUS * BASE_DISTANCE;
            assertEquals(14, lamination.bands().get(0).width());
            assertClose(base - 24, lamination.bands().get(1).width());
            assertEquals(10, lamination.bands().get(2).width());
            assertClose(base, lamination.width());
        }

        @Test
        void bandsMayMissTheBaseDistanceByAHundredthOfAMillimetre() {
            double base = 90 / INRADIUS * BASE_DISTANCE;
            for (double miss : new double[] {-0.0099, 0.0099}) {
                Design design = sketch().laminations(lamination(null, null, 20.0, base - 20 + miss))
                        .design();
                assertClose(base + miss, design.panels().get(0).lamination().width());
            }
        }

        @ParameterizedTest(name = "{0} degrees take {1} of the edge")
        @CsvSource({
            "90, 1",
            "-90, 1",
            // Bands square to a leg take its length, 1 / (2 sin(36 deg)).
            "36, 0.8506508083520399",
            "-36, 0.8506508083520399",
            // Bands along a leg take the height over it, cos(36 deg).
            "54, 0.8090169943749475",
            // cos(30 deg) / (2 tan(36 deg)) + sin(30 deg) / 2
            "30, 0.8459908542188247",
            // Beyond 54 degrees the other corner lies below the tip: sin(72 deg).
            "72, 0.9510565162951535"
        })
        @Source(value = HAND, text = "trigonometry of the triangle with a tip of 72 degrees, as beside each row")
        void tiltedLaminationCoversTheExtentOfTheSegmentSquareToTheBands(double degrees, double extent) {
            Lamination lamination = sketch().size(SizeBy.EDGE, 80)
                    .laminations(lamination(null, degrees, 20.0, null))
                    .design()
                    .panels()
                    .get(0)
                    .lamination();
            assertEquals(Math.toRadians(degrees), lamination.bandAngle());
            assertEquals(80 * extent, lamination.width(), 1e-10);
        }

        @Test
        void tiltedBandsMayBeWiderThanTheExtent() {
            Lamination lamination = sketch().size(SizeBy.EDGE, 80)
                    .laminations(lamination(null, 90.0, 50.0, 50.0))
                    .design()
                    .panels()
                    .get(0)
                    .lamination();
            assertEquals(100, lamination.width());
            assertFalse(lamination.straight());
        }

        @Test
        @Source(value = ORACLE, text = "its three corners, measured square to the bands")
        void tiltedLaminationOfAScaleneFaceCoversTheWidestOfItsSegmentsInBothHands() {
            Design design = plain("disdyakis-dodecahedron")
                    .laminations(lamination(null, 40.0, (Double) null))
                    .design();
            Panel panel = design.panels().get(0);
            double widest = panel.pieces().stream()
                    .mapToDouble(p -> extentOfCorners(p, Math.toRadians(40)))
                    .max()
                    .orElseThrow();
            assertEquals(6, panel.pieces().size());
            assertClose(widest, panel.lamination().width());
        }

        @Test
        void palindromicLaminationGivesOneSetAndAnyOtherTwo() {
            assertEquals(2, sketch().design().panels().get(0).lamination().sets());
            Lamination one = sketch().laminations(lamination(null, null, (Double) null))
                    .design()
                    .panels()
                    .get(0)
                    .lamination();
            assertTrue(one.palindromic());
            assertEquals(1, one.sets());
        }

        private static double extentOfCorners(Piece piece, double angle) {
            double left = piece.base() * Math.cos(angle) - piece.left() * Math.sin(angle);
            double right = piece.base() * Math.cos(angle) + piece.right() * Math.sin(angle);
            return Math.max(0, Math.max(left, right)) - Math.min(0, Math.min(left, right));
        }
    }

    @Nested
    class Panels {
        @Test
        @Source(value = HAND, text = "apothem of the hexagon, sqrt 3 / 2 for a side of 1")
        void solidWithTwoFaceKindsHasAPanelAndALaminationForEach() {
            Design design = sketch().solid("truncated-icosahedron")
                    .size(SizeBy.EDGE, 50)
                    .laminations(lamination("hexagon", null, 20.0, null), lamination("pentagon", 90.0, 30.0, null))
                    .design();
            Panel pentagon = design.panels().get(0);
            Panel hexagon = design.panels().get(1);
            assertEquals(
                    List.of("pentagon", "hexagon"),
                    design.panels().stream().map(Panel::face).toList());
            assertEquals("/laminations/1", pentagon.lamination().pointer());
            assertEquals("/laminations/0", hexagon.lamination().pointer());
            assertClose(50, pentagon.lamination().width());
            assertClose(25 * Math.sqrt(3), hexagon.lamination().width());
            assertTrue(hexagon.jointDistance() < pentagon.jointDistance());
            assertClose(hexagon.seamRadius(), pentagon.seamRadius());
            assertClose(hexagon.faceDistance(), design.smallestFaceDistance());
        }

        /** Midradius and circumradius of a dodecahedron over its edge: phi^2 / 2 and phi sqrt(3) / 2. */
        @Test
        @Source(
                value = HAND,
                text = "midradius phi^2 / 2 and circumradius phi sqrt 3 / 2 for an edge of 1, and Pythagoras")
        void seamsAndCornersOfADodecahedron() {
            double phi = (1 + Math.sqrt(5)) / 2;
            Design design = sketch().size(SizeBy.EDGE, 80).panel(28, 5.0).design();
            Panel panel = design.panels().get(0);
            assertClose(80 * phi * phi / 2, design.seamRadius());
            assertClose(80 * phi * phi / 2, panel.seamRadius());
            assertClose(80 * phi * Math.sqrt(3) / 2, panel.cornerRadius());
            // The rim of the land is as wide as a pentagon's corners are from its middle, 40 / sin(36 deg).
            assertClose(Math.hypot(80 * INRADIUS + 5, 40 / Math.sin(Math.PI / 5)), panel.outerCornerRadius());
        }

        @Test
        @DisplayName("a dodecahedron's panels are bevelled by 58.3 degrees (common practice, no source)")
        @Source(
                value = PUBLISHED,
                text = "GNU 3DLDF, user manual, Dodecahedron: two faces make pi - arctan 2, 116 degrees 34 minutes; "
                        + "half of it is the bevel")
        void dodecahedronIsBevelledByTheAngleThatTheTradeKnows() {
            assertEquals(
                    58.2825, Math.toDegrees(sketch().design().panels().get(0).bevel()), 5e-5);
        }

        @ParameterizedTest
        @MethodSource("org.orbwright.design.DesignTest#names")
        @Source(INVARIANT)
        void piecesOfEveryPanelHaveTheAreaOfTheSolid(String name) {
            Design design = plain(name).design();
            double sum = 0;
            for (Panel panel : design.panels()) {
                for (Piece piece : panel.pieces()) {
                    sum += piece.perSphere() * piece.area();
                }
            }
            double area = design.solid().surfaceArea() * design.edge() * design.edge();
            assertEquals(area, sum, ACCURACY * area);
        }

        @Test
        @Source(value = HAND, text = "counting: 30 rhombi of four right triangles, two of each hand")
        void mirroredSegmentsAreTurnedOverWhereTheBandsAreStraightAndSawnApartWhereTheyAreNot() {
            Piece turned = plain("rhombic-triacontahedron")
                    .design()
                    .panels()
                    .get(0)
                    .pieces()
                    .get(0);
            assertEquals(120, turned.perSphere());
            assertEquals(60, turned.turnedPerSphere());
            List<Piece> apart = plain("rhombic-triacontahedron")
                    .laminations(lamination(null, 30.0, (Double) null))
                    .design()
                    .panels()
                    .get(0)
                    .pieces();
            assertEquals(2, apart.size());
            assertEquals(60, apart.get(0).perSphere());
            assertEquals(60, apart.get(1).perSphere());
            assertEquals(apart.get(0).left(), apart.get(1).right());
        }

        @Test
        @DisplayName("a dodecahedron takes 60 segments (common practice, no source)")
        @Source(value = HAND, text = "counting: 12 pentagons of 5 sides")
        void dodecahedronTakesSixtySegments() {
            assertEquals(60, sketch().design().panels().get(0).pieces().get(0).perSphere());
        }
    }

    @Nested
    class Completed {
        @Test
        void completedRequestStatesWhatWasLeftOut() {
            DesignRequest completed = sketch().design().request();
            assertEquals(1, completed.copies());
            assertEquals(0, completed.panel().land());
            assertEquals(0, completed.saw().endTrim());
            assertEquals("pentagon", completed.laminations().get(0).face());
            assertEquals(0, completed.laminations().get(0).bandAngle());
            assertEquals(176, completed.sphere().diameter(), 1e-9);
            assertTrue(completed.laminations().get(0).bands().stream().allMatch(b -> b.width() != null));
        }

        @Test
        void completedRequestKeepsWhatWasStated() {
            DesignRequest request =
                    sketch().copies(3).panel(28, 4.0).diameter(172.0).request();
            DesignRequest completed = Design.of(request).request();
            assertEquals(request.size(), completed.size());
            assertEquals(new DesignRequest.PanelRequest(28.0, 4.0, 1), completed.panel());
            assertEquals(request.copies(), completed.copies());
            assertEquals(request.sphere(), completed.sphere());
        }

        @ParameterizedTest
        @MethodSource("org.orbwright.design.DesignTest#names")
        @Source(INVARIANT)
        void completedRequestIsAcceptedAgainAndGivesTheSameDesign(String name) {
            Design once = plain(name).design();
            assertSameDesign(once, Design.of(once.request()));
        }

        @Test
        @Source(INVARIANT)
        void completedTiltedRequestIsAcceptedAgain() {
            Design once =
                    sketch().laminations(lamination(null, 33.0, 20.0, null)).design();
            assertSameDesign(once, Design.of(once.request()));
        }

        @ParameterizedTest
        @ValueSource(doubles = {6, 6.5, 7, 7.25, 8, 11.9})
        @Source(INVARIANT)
        void completedRequestByAcrossFlatsInInchesIsAcceptedAgain(double value) {
            Design once = inInches(SizeBy.ACROSS_FLATS, value).design();
            assertSameDesign(once, Design.of(once.request()));
        }
    }

    static Stream<String> names() {
        return SolidCatalogue.all().stream().map(Solid::name);
    }

    static RequestSketch inInches(SizeBy by, double value) {
        return sketch().unit(LengthUnit.IN)
                .size(by, value)
                .panel(1, null)
                .allowance(0.1)
                .wall(0.25)
                .laminations(lamination(null, null, 0.5, null));
    }

    /** A sphere of one wood, of any solid. */
    private static RequestSketch plain(String name) {
        return sketch().solid(name)
                .laminations(SolidCatalogue.find(name).orElseThrow().faceKinds().stream()
                        .map(kind -> lamination(kind.face(), null, 5.0, null))
                        .toArray(DesignRequest.LaminationRequest[]::new));
    }

    private static void assertSameDesign(Design expected, Design actual) {
        assertClose(expected.edge(), actual.edge());
        assertClose(expected.land(), actual.land());
        assertClose(expected.sphereRadius(), actual.sphereRadius());
        assertClose(expected.smallestFaceDistance(), actual.smallestFaceDistance());
        assertEquals(expected.panels().size(), actual.panels().size());
        for (int i = 0; i < expected.panels().size(); i++) {
            assertSamePanel(expected.panels().get(i), actual.panels().get(i));
        }
    }

    private static void assertSamePanel(Panel expected, Panel actual) {
        assertClose(expected.jointDistance(), actual.jointDistance());
        assertClose(expected.faceDistance(), actual.faceDistance());
        assertClose(expected.baseDistance(), actual.baseDistance());
        assertClose(expected.cornerRadius(), actual.cornerRadius());
        assertEquals(expected.lamination().index(), actual.lamination().index());
        assertEquals(expected.lamination().bandAngle(), actual.lamination().bandAngle());
        List<Band> bands = expected.lamination().bands();
        assertEquals(bands.size(), actual.lamination().bands().size());
        for (int i = 0; i < bands.size(); i++) {
            assertEquals(
                    bands.get(i).species(), actual.lamination().bands().get(i).species());
            assertEquals(
                    bands.get(i).width(), actual.lamination().bands().get(i).width(), 1e-9);
        }
        assertEquals(expected.pieces().size(), actual.pieces().size());
    }

    private static void assertClose(double expected, double actual) {
        assertEquals(expected, actual, ACCURACY * Math.max(1, Math.abs(expected)));
    }
}
