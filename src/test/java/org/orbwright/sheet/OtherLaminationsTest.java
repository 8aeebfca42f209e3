package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.band.BandSurvival.BandView;
import org.orbwright.band.BandSurvival.FaceBands;
import org.orbwright.band.BandSurvival.SegmentBands;
import org.orbwright.band.BandSurvival.SpeciesShare;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.RequestSketch;
import org.orbwright.design.SizeBy;
import org.orbwright.document.Document;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.source.Source;

/** Whole sheets of panels of one wood, of tilted bands and of mirrored segments. */
@Source(INVARIANT)
class OtherLaminationsTest {
    private static final double ACCURACY = 1e-11;

    @Nested
    class OneWood {
        @Test
        void panelOfOneWoodIsAllThatIsSeen() {
            Answer sheet = sheet(sketch().laminations(lamination(null, null, (Double) null)));
            SegmentBands segment = sheet.bands().faces().get(0).segments().get(0);
            assertNull(segment.inverted(), "upright and inverted are alike");
            BandView only = segment.upright().get(0);
            assertEquals(1, only.shareOfSphere(), ACCURACY);
            assertEquals(segment.sphereArea(), only.sphereArea(), ACCURACY * segment.sphereArea());
            assertEquals(segment.flatArea(), only.flatArea(), ACCURACY * segment.flatArea());
            assertEquals(1, sheet.bands().spheres().size());
            assertEquals(1, sheet.bands().spheres().get(0).species().get(0).share(), ACCURACY);
            assertTrue(sheet.findings().stream().noneMatch(f -> f.code().name().startsWith("BAND")));
            assertEquals(1, sheet.yield().laminations().get(0).sets());
            assertEquals(1, sheet.yield().laminations().get(0).strips().size());
        }

        @Test
        @Source(
                value = HAND,
                text = "Girard: a spherical polygon's area is what its angles exceed those of a flat one by")
        void woodOfEachFaceKindTakesTheShareOfItsFaces() {
            Answer sheet = sheet(sketch().solid("truncated-icosahedron")
                    .size(SizeBy.EDGE, 50)
                    .laminations(plain("pentagon", "black walnut"), plain("hexagon", "sugar maple")));
            List<SpeciesShare> shares = sheet.bands().spheres().get(0).species();
            // Solid angle of a pentagon: 2 pi - 10 asin(cos(36 deg) cos(half the angle of an edge)), see a
            // spherical pyramid's excess; of all twelve, the rest is the hexagons'. Half an edge seen from the
            // centre: asin(1 / (2 * 2.478019)).
            double half = Math.asin(1 / (2 * 2.4780186590676156));
            double corner = 2 * Math.asin(Math.cos(Math.PI / 5) / Math.cos(half));
            double pentagons = 12 * (5 * corner - 3 * Math.PI) / (4 * Math.PI);
            assertEquals("black walnut", shares.get(0).species());
            assertEquals(pentagons, shares.get(0).share(), 1e-9);
            assertEquals(1 - pentagons, shares.get(1).share(), 1e-9);
        }

        private static LaminationRequest plain(String face, String wood) {
            return new LaminationRequest(face, null, List.of(new BandRequest(wood, null)));
        }
    }

    @Nested
    class TiltedBands {
        @ParameterizedTest
        @MethodSource("org.orbwright.sheet.OtherLaminationsTest#solids")
        void bandsOfEverySolidCoverTheSphereOnce(Solid solid) {
            for (double angle : new double[] {-90, -60, -36, 12.5, 45, 54, 90}) {
                RequestSketch sketch = tilted(solid, angle);
                Answer sheet = sheet(sketch);
                double share = 0;
                double area = 0;
                for (FaceBands face : sheet.bands().faces()) {
                    for (SegmentBands segment : face.segments()) {
                        area += segment.perSphere() * segment.sphereArea();
                        share += segment.upright().stream()
                                .mapToDouble(BandView::shareOfSphere)
                                .sum();
                    }
                }
                double radius = sketch.design().sphereRadius();
                assertEquals(1, share, ACCURACY, () -> solid.name() + " at " + angle);
                assertEquals(4 * Math.PI * radius * radius, area, ACCURACY * area);
            }
        }

        @ParameterizedTest
        @ValueSource(doubles = {5, 36, 45, 72, 90})
        void bandsTurnedTheOtherWayAreTheMirrorImageOnASymmetricSegment(double angle) {
            SegmentBands there = segment(tiltedDodecahedron(angle));
            SegmentBands back = segment(tiltedDodecahedron(-angle));
            for (int i = 0; i < there.upright().size(); i++) {
                BandView one = there.upright().get(i);
                BandView other = back.upright().get(i);
                assertEquals(one.sphereArea(), other.sphereArea(), 1e-9);
                assertEquals(one.flatArea(), other.flatArea(), 1e-9);
                assertEquals(one.survival(), other.survival(), ACCURACY);
                assertEquals(
                        one.visibleWidth().leftCorner(), other.visibleWidth().rightCorner(), 1e-9);
                assertEquals(
                        one.visibleWidth().edgeMiddle(), other.visibleWidth().edgeMiddle(), 1e-9);
            }
        }

        @Test
        void bandsAlongTheTipAxisAreTheSameLeftAndRight() {
            // 80 mm of edge in four strips of 20 mm: the middle two are alike, and so are the outer two.
            SegmentBands segment =
                    segment(sketch().size(SizeBy.EDGE, 80).laminations(lamination(null, 90.0, 20.0, 20.0, 20.0, null)));
            List<BandView> bands = segment.upright();
            assertEquals(bands.get(0).sphereArea(), bands.get(3).sphereArea(), 1e-9);
            assertEquals(bands.get(1).sphereArea(), bands.get(2).sphereArea(), 1e-9);
            assertEquals(
                    bands.get(0).visibleWidth().rightCorner(),
                    bands.get(3).visibleWidth().leftCorner(),
                    1e-9);
        }

        @Test
        void angleNextToNoneGivesNearlyTheStraightBands() {
            SegmentBands straight = segment(tiltedDodecahedron(0));
            SegmentBands tilted = segment(tiltedDodecahedron(1e-7));
            for (int i = 0; i < 3; i++) {
                assertEquals(
                        straight.upright().get(i).sphereArea(),
                        tilted.upright().get(i).sphereArea(),
                        1e-4);
            }
        }

        private static RequestSketch tiltedDodecahedron(double angle) {
            return sketch().size(SizeBy.EDGE, 80).laminations(lamination(null, angle, 15.0, 12.0, null));
        }
    }

    @Nested
    class MirroredSegments {
        @Test
        @Source(value = HAND, text = "counting: 30 rhombi of four right triangles, two of each hand")
        void mirroredSegmentsOfTiltedBandsAreSawnAndCountedApart() {
            Answer sheet = sheet(rhombic(25));
            List<SegmentBands> segments = sheet.bands().faces().get(0).segments();
            assertEquals(
                    List.of(false, true),
                    segments.stream().map(SegmentBands::mirrored).toList());
            assertEquals(
                    List.of(60, 60),
                    segments.stream().map(SegmentBands::perSphere).toList());
            assertEquals(2, sheet.segments().faces().get(0).segments().size());
        }

        @ParameterizedTest
        @ValueSource(doubles = {10, 25, 60})
        void mirroredSegmentIsThePlainOneWithTheBandsTurnedTheOtherWay(double angle) {
            SegmentBands mirrored =
                    sheet(rhombic(angle)).bands().faces().get(0).segments().get(1);
            SegmentBands plain =
                    sheet(rhombic(-angle)).bands().faces().get(0).segments().get(0);
            for (int i = 0; i < plain.upright().size(); i++) {
                BandView one = mirrored.upright().get(i);
                BandView other = plain.upright().get(i);
                assertEquals(other.sphereArea(), one.sphereArea(), 1e-9);
                assertEquals(other.flatArea(), one.flatArea(), 1e-9);
                assertEquals(
                        other.visibleWidth().leftCorner(), one.visibleWidth().rightCorner(), 1e-9);
            }
        }

        @Test
        @Source(value = HAND, text = "counting: 30 rhombi of four right triangles")
        void mirroredSegmentsOfStraightBandsAreTheSamePieceTurnedOver() {
            List<SegmentBands> segments =
                    sheet(rhombic(0)).bands().faces().get(0).segments();
            assertEquals(1, segments.size());
            assertEquals(120, segments.get(0).perSphere());
        }

        private static RequestSketch rhombic(double angle) {
            return sketch().solid("rhombic-triacontahedron")
                    .size(SizeBy.EDGE, 70)
                    .panel(20, null)
                    .laminations(lamination(null, angle, 12.0, 8.0, null));
        }
    }

    static Stream<Solid> solids() {
        return SolidCatalogue.all().stream();
    }

    private static RequestSketch tilted(Solid solid, double angle) {
        return sketch().solid(solid.name())
                .size(SizeBy.EDGE, 100)
                .panel(20 * solid.inradius(), null)
                .laminations(solid.faceKinds().stream()
                        .map(kind -> lamination(kind.face(), angle, 9.0, 7.0, null))
                        .toArray(LaminationRequest[]::new));
    }

    private static SegmentBands segment(RequestSketch sketch) {
        return sheet(sketch).bands().faces().get(0).segments().get(0);
    }

    private static Answer sheet(RequestSketch sketch) {
        return SheetCalculator.sheet(Document.of(sketch.request()), 5);
    }
}
