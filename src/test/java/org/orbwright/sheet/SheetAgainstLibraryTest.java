package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.LIBRARY;

import java.util.Comparator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.LibrarySolid;
import org.orbwright.segment.SawAngles.FaceAngles;
import org.orbwright.segment.SegmentPlan.FaceSegments;
import org.orbwright.segment.Yield.SpeciesInSphere;
import org.orbwright.segment.Yield.SphereYield;
import org.orbwright.source.Source;
import org.orbwright.sphere.SphereSizing;
import org.orbwright.sphere.SphereSizing.FaceSizing;
import org.orbwright.sphere.SphereSizing.SphereLimit;

/**
 * Sheets of all solids, 200 mm across flats, with panels of 25 mm and a sphere of 196 mm, against the table of a
 * general-purpose library, whose head says which. It gives inradius r, circumradius and volume for a midradius of 1, so
 * that the seams here are closed inside 100 / r.
 */
@Source(value = LIBRARY, text = LibrarySolid.SOURCE)
class SheetAgainstLibraryTest {
    private static final String ALL = "org.orbwright.fixture.LibrarySolid#all";
    /** The hollow of these is a smaller solid. */
    private static final String ONE_DISTANCE = "org.orbwright.fixture.LibrarySolid#ofOneFaceDistance";

    /** The table has twelve digits; the base distance loses one and a half of them where an inradius is close to 1. */
    private static final double TEN_DIGITS = 1e-10;

    private static final double RADIUS = 98;

    private static void assertClose(double expected, double actual) {
        assertEquals(expected, actual, TEN_DIGITS * Math.max(1, Math.abs(expected)));
    }

    private static Answer sheet(LibrarySolid solid) {
        return SheetCalculator.sheet(Designs.of(solid.name()).document(), 2);
    }

    private static double scale(LibrarySolid solid) {
        return 100 / solid.inradius();
    }

    private static String nearest(SphereSizing sphere) {
        return sphere.faces().stream()
                .min(Comparator.comparing(FaceSizing::faceDistance))
                .orElseThrow()
                .face();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource(ALL)
    @DisplayName("centre, middle of the nearest face and middle of its edge: the sine of the bevel is r")
    void bevelAndTiltOfTheNearestFace(LibrarySolid solid) {
        Answer sheet = sheet(solid);
        String nearest = nearest(sheet.sphere());
        FaceAngles face = sheet.angles().faces().stream()
                .filter(kind -> kind.face().equals(nearest))
                .findFirst()
                .orElseThrow();
        assertClose(Math.asin(solid.inradius()), face.bevel());
        assertClose(Math.acos(solid.inradius()), face.bladeTilt());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource(ALL)
    @DisplayName("the base distance of the nearest face is the other leg of that triangle")
    void baseDistanceOfTheNearestFace(LibrarySolid solid) {
        Answer sheet = sheet(solid);
        String nearest = nearest(sheet.sphere());
        FaceSegments face = sheet.segments().faces().stream()
                .filter(kind -> kind.face().equals(nearest))
                .findFirst()
                .orElseThrow();
        assertClose(scale(solid) * Math.sqrt(1 - solid.inradius() * solid.inradius()), face.baseDistance());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource(ALL)
    void seamsSwingAndRemoval(LibrarySolid solid) {
        SphereSizing sphere = sheet(solid).sphere();
        double corner = scale(solid) * solid.circumradius();
        assertClose(2 * scale(solid), sphere.seamDiameter());
        assertClose(2 * corner, sphere.swingDiameter());
        assertClose(200, sphere.largestDiameter());
        assertEquals(SphereLimit.FLATS, sphere.largestLimitedBy());
        double most = 0;
        for (FaceSizing face : sphere.faces()) {
            assertClose(scale(solid) - RADIUS, face.removal().edgeMiddle());
            most = Math.max(most, face.removal().corner());
        }
        assertClose(corner - RADIUS, most);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource(ALL)
    @DisplayName("with the land f the seams are closed inside (100 - f) / r, or inside 100 / r on the same panels")
    void largestLands(LibrarySolid solid) {
        SphereSizing sphere = sheet(solid).sphere();
        assertClose(scale(solid) - 100, sphere.land().largestForPanels());
        assertClose(100 - 100 * solid.inradius(), sphere.land().largestForAcrossFlats());
        assertClose(100 - RADIUS * solid.inradius(), sphere.land().largestForDiameter());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource(ONE_DISTANCE)
    @DisplayName(
            "the hollow's farthest corner is at three quarters of the circumradius; a wall of 5 mm wants it at 93 mm")
    void wallAndSmallestThickness(LibrarySolid solid) {
        SphereSizing sphere = sheet(solid).sphere();
        double corner = scale(solid) * solid.circumradius();
        assertClose(RADIUS - 0.75 * corner, sphere.thinnestWall());
        assertClose(100 - 93 / corner * 100, sphere.smallestThickness());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource(ONE_DISTANCE)
    void woodOfTheSolidIsItsVolumeLessThatOfAHollowThreeQuartersAsLarge(LibrarySolid solid) {
        double whole = solid.volume() * Math.pow(scale(solid), 3);
        double wood = sheet(solid).yield().spheres().get(0).species().stream()
                .mapToDouble(SpeciesInSphere::solidVolume)
                .sum();
        assertClose(whole * (1 - Math.pow(0.75, 3)), wood);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource(ONE_DISTANCE)
    void woodOfTheSphereIsABallLessTheHollow(LibrarySolid solid) {
        double thickness = Math.ceil(100 - 93 / (scale(solid) * solid.circumradius()) * 100);
        SphereYield sphere = SheetCalculator.sheet(
                        Designs.of(solid.name()).thickness(thickness).document(), 2)
                .yield()
                .spheres()
                .get(0);
        double hollow = solid.volume() * Math.pow(scale(solid) * (1 - thickness / 100), 3);
        assertClose(4 * Math.PI / 3 * Math.pow(RADIUS, 3) - hollow, sphere.volume());
    }
}
