package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.REFERENCE;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.orbwright.band.BandSurvival.BandView;
import org.orbwright.band.BandSurvival.FaceBands;
import org.orbwright.band.BandSurvival.SegmentBands;
import org.orbwright.fixture.Designs;
import org.orbwright.segment.SawAngles.FaceAngles;
import org.orbwright.segment.SawAngles.SegmentAngles;
import org.orbwright.segment.SegmentPlan.FaceSegments;
import org.orbwright.segment.SegmentPlan.SegmentCut;
import org.orbwright.segment.Yield.SpeciesInSphere;
import org.orbwright.source.Source;
import org.orbwright.sphere.SphereSizing.FaceSizing;

/** Whole sheets against answers that another program worked out in another way; each table's head says how. */
class SheetAgainstReferenceTest {
    private static final double ACCURACY = 1e-11;
    private static final String CORNER =
            "mpmath 1.3, 30 digits, src/test/python/answers.py: by the trigonometry of one corner";

    private static void assertClose(double expected, double actual) {
        assertEquals(expected, actual, ACCURACY * Math.max(1, Math.abs(expected)));
    }

    private static Answer plain(ArgumentsAccessor row) {
        return SheetCalculator.sheet(Designs.of(row.getString(0)).document(), 2);
    }

    private static <T> T only(List<T> found) {
        assertEquals(1, found.size(), found::toString);
        return found.get(0);
    }

    /** The kind of segment with these parts of its base, of the face that is named or of the only one. */
    private static SegmentCut cut(Answer sheet, String face, double left, double right) {
        return only(sheet.segments().faces().stream()
                .filter(kind -> face == null || kind.face().equals(face))
                .flatMap(kind -> kind.segments().stream())
                .filter(cut -> Math.abs(cut.baseLeft() - left) < 1e-6 && Math.abs(cut.baseRight() - right) < 1e-6)
                .toList());
    }

    private static SegmentCut cut(Answer sheet, ArgumentsAccessor row) {
        return cut(sheet, row.getString(1), row.getDouble(4), row.getDouble(5));
    }

    @ParameterizedTest(name = "{0} {1}, base {4} + {5}")
    @CsvFileSource(resources = "segments.csv", useHeadersInDisplayName = true)
    @Source(value = REFERENCE, text = CORNER)
    void sizesAndCountsOfSegments(ArgumentsAccessor row) {
        Answer sheet = plain(row);
        SegmentCut cut = cut(sheet, row);
        double base = row.getDouble(3);
        double left = row.getDouble(4);
        double right = row.getDouble(5);
        FaceSegments face = only(sheet.segments().faces().stream()
                .filter(kind -> kind.segments().contains(cut))
                .toList());
        assertEquals(row.getInteger(2), cut.perSphere());
        assertClose(base, face.baseDistance());
        assertClose(base, face.blankWidth());
        assertClose(left, cut.baseLeft());
        assertClose(right, cut.baseRight());
        assertClose(left + right, cut.base());
        assertClose(left + right, cut.stopDistance());
        assertClose(Math.hypot(base, left), cut.legLeft());
        assertClose(Math.hypot(base, right), cut.legRight());
        assertClose(base * (left + right) / 2, cut.area());
    }

    @ParameterizedTest(name = "{0} {1}: bevel {7}, mitre {8} and {9}")
    @CsvFileSource(resources = "segments.csv", useHeadersInDisplayName = true)
    @Source(value = REFERENCE, text = CORNER)
    void anglesOfTheSaw(ArgumentsAccessor row) {
        Answer sheet = plain(row);
        FaceAngles face = only(sheet.angles().faces().stream()
                .filter(kind -> row.getString(1) == null || kind.face().equals(row.getString(1)))
                .toList());
        String letter = cut(sheet, row).segment();
        SegmentAngles segment = only(face.segments().stream()
                .filter(kind -> kind.segment().equals(letter))
                .toList());
        double mitreLeft = row.getDouble(8);
        double mitreRight = row.getDouble(9);
        assertClose(row.getDouble(7), Math.toDegrees(face.bevel()));
        assertClose(90 - row.getDouble(7), Math.toDegrees(face.bladeTilt()));
        assertClose(mitreLeft, Math.toDegrees(segment.mitreGaugeLeft()));
        assertClose(mitreRight, Math.toDegrees(segment.mitreGaugeRight()));
        assertClose(mitreLeft + mitreRight, Math.toDegrees(segment.tipAngle()));
        assertClose(90 - mitreLeft, Math.toDegrees(segment.baseAngleLeft()));
        assertClose(90 - mitreRight, Math.toDegrees(segment.baseAngleRight()));
    }

    @ParameterizedTest(name = "{0} {1}: face distance {6}, base distance {3}")
    @CsvFileSource(resources = "segments.csv", useHeadersInDisplayName = true)
    @DisplayName("the sphere of 98 mm, left out in the document: 2 mm below the faces at 100 mm")
    @Source(value = REFERENCE, text = CORNER)
    void distancesAndRemoval(ArgumentsAccessor row) {
        FaceSizing face = only(plain(row).sphere().faces().stream()
                .filter(kind -> row.getString(1) == null || kind.face().equals(row.getString(1)))
                .toList());
        double seam = Math.hypot(row.getDouble(6), row.getDouble(3));
        assertClose(row.getDouble(6), face.faceDistance());
        assertClose(seam, face.seamRadius());
        assertClose(row.getDouble(6) - 98, face.removal().faceCentre());
        assertClose(seam - 98, face.removal().edgeMiddle());
    }

    private static Designs designs(ArgumentsAccessor row) {
        return Designs.of(row.getString(0))
                .acrossFlats(row.getDouble(1))
                .land(row.getDouble(3))
                .diameter(row.getDouble(2))
                .bands(row.getDouble(4), Designs.widths(row.getDouble(5), row.getDouble(6), null));
    }

    private static Answer banded(ArgumentsAccessor row) {
        return SheetCalculator.sheet(designs(row).document(), 2);
    }

    private static SegmentBands segment(Answer sheet, ArgumentsAccessor row) {
        SegmentCut cut = cut(sheet, row.getString(7), row.getDouble(8), row.getDouble(9));
        return only(sheet.bands().faces().stream()
                .filter(face -> row.getString(7) == null || face.face().equals(row.getString(7)))
                .map(FaceBands::segments)
                .flatMap(List::stream)
                .filter(segment -> segment.segment().equals(cut.segment()) && segment.mirrored() == cut.mirrored())
                .toList());
    }

    private static BandView band(SegmentBands segment, ArgumentsAccessor row) {
        boolean upright = row.getString(10).equals("UPRIGHT");
        return only((upright ? segment.upright() : segment.inverted())
                .stream().filter(band -> band.band() == row.getInteger(11)).toList());
    }

    @ParameterizedTest(name = "{0} at {4} degrees, {7} {8} + {9}, {10}, band {11}")
    @CsvFileSource(resources = "bands.csv", useHeadersInDisplayName = true)
    @Source(value = REFERENCE, text = "mpmath 1.3, 30 digits, src/test/python/answers.py: quadrature over the rays")
    void areasAndSurvivalOfBands(ArgumentsAccessor row) {
        SegmentBands segment = segment(banded(row), row);
        BandView band = band(segment, row);
        assertEquals(row.getDouble(12), band.flatArea(), ACCURACY * segment.flatArea());
        assertEquals(row.getDouble(13), band.sphereArea(), ACCURACY * segment.sphereArea());
        assertEquals(row.getDouble(14), band.survival(), 1e-10);
        double sphere = Math.PI * row.getDouble(2) * row.getDouble(2);
        assertEquals(segment.perSphere() * row.getDouble(13) / sphere, band.shareOfSphere(), 1e-12);
    }

    @ParameterizedTest(name = "{0} at {4} degrees, {7} {8} + {9}, {10}, band {11}: {15}, {16} and {17}")
    @CsvFileSource(resources = "bands.csv", useHeadersInDisplayName = true)
    @Source(value = REFERENCE, text = "mpmath 1.3, 30 digits, src/test/python/answers.py: arcs along three rays")
    void visibleWidthsOfBands(ArgumentsAccessor row) {
        BandView band = band(segment(banded(row), row), row);
        assertEquals(row.getDouble(15), band.visibleWidth().edgeMiddle(), 1e-10);
        assertEquals(row.getDouble(16), band.visibleWidth().leftCorner(), 1e-10);
        assertEquals(row.getDouble(17), band.visibleWidth().rightCorner(), 1e-10);
    }

    @ParameterizedTest(name = "{0} at {4} degrees, panels {7} mm: {8}, {9} and {10} cubic millimetres")
    @CsvFileSource(resources = "woods.csv", useHeadersInDisplayName = true)
    @Source(value = REFERENCE, text = "mpmath 1.3, 30 digits, src/test/python/answers.py: quadrature over the rays")
    void woodOfTheFinishedSphere(ArgumentsAccessor row) {
        List<SpeciesInSphere> woods = SheetCalculator.sheet(
                        designs(row).thickness(row.getDouble(7)).document(), 2)
                .yield()
                .spheres()
                .get(0)
                .species();
        double whole = row.getDouble(8) + row.getDouble(9) + row.getDouble(10);
        List<String> names = List.of("black walnut", "sugar maple", "black cherry");
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            SpeciesInSphere wood = only(woods.stream()
                    .filter(species -> species.species().equals(name))
                    .toList());
            assertEquals(row.getDouble(8 + i), wood.sphereVolume(), ACCURACY * whole);
        }
    }
}
