package org.orbwright.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.LIBRARY;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.fixture.LibrarySolid;
import org.orbwright.source.Source;

/**
 * All 31 solids against the table of a general-purpose library; the head of the table says which. Everything here is
 * measured from the coordinates of the corners and scaled to a midradius of 1.
 *
 * <p>By its numbers the table's inradius is the distance of the nearest face, where an Archimedean solid has several
 * kinds, and its circumradius that of the farthest corner, where a Catalan solid has several.
 */
@Source(value = LIBRARY, text = LibrarySolid.SOURCE)
class SolidsAgainstLibraryTest {
    /**
     * Half of the twelfth decimal. Radii are printed to thirteen; of the 93 numbers all but two, which belong to snub
     * solids, are good to half of the last digit that is printed.
     */
    private static final double PRINTED = 5e-13;

    @ParameterizedTest(name = "{0}")
    @MethodSource("org.orbwright.fixture.LibrarySolid#all")
    void inradiusIsThatOfTheNearestFace(LibrarySolid row) {
        Solid solid = Solids.solid(row.name());
        double nearest = IntStream.range(0, solid.faces().size())
                .mapToDouble(face -> distance(solid, face))
                .min()
                .orElseThrow();
        assertEquals(row.inradius(), nearest / midradius(solid), PRINTED);
        assertEquals(row.inradius(), solid.inradius() / solid.midradius(), PRINTED);
        long kindsThere = solid.faceKinds().stream()
                .filter(kind -> Math.abs(kind.distance() / solid.midradius() - row.inradius()) < PRINTED)
                .count();
        assertEquals(1, kindsThere, "other face kinds lie farther out");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("org.orbwright.fixture.LibrarySolid#all")
    void circumradiusIsThatOfTheFarthestCorner(LibrarySolid row) {
        Solid solid = Solids.solid(row.name());
        List<Double> corners =
                Solids.corners(solid).stream().map(Vector3D::norm).sorted().toList();
        double farthest = corners.get(corners.size() - 1) / midradius(solid);
        assertEquals(row.circumradius(), farthest, PRINTED);
        assertEquals(row.circumradius(), solid.circumradius() / solid.midradius(), PRINTED);
        boolean alike = corners.get(corners.size() - 1) - corners.get(0) < PRINTED;
        assertEquals(solid.family() != SolidFamily.CATALAN, alike, "a Catalan solid has nearer corners too");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("org.orbwright.fixture.LibrarySolid#all")
    void volumeAgrees(LibrarySolid row) {
        Solid solid = Solids.solid(row.name());
        double sixfold = 0;
        for (Face face : solid.faces()) {
            List<Vector3D> corners = Solids.corners(solid, face);
            for (int i = 1; i + 1 < corners.size(); i++) {
                sixfold += corners.get(0).dot(corners.get(i).cross(corners.get(i + 1)));
            }
        }
        assertEquals(row.volume(), sixfold / 6 / Math.pow(midradius(solid), 3), PRINTED);
        assertEquals(row.volume(), solid.volume() / Math.pow(solid.midradius(), 3), PRINTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("org.orbwright.fixture.LibrarySolid#all")
    @DisplayName(
            "centre, face and edge make a right triangle: the bevel of the nearest face is asin(inradius / midradius)")
    void bevelOfTheNearestFaceFollowsFromTheInradius(LibrarySolid row) {
        Solid solid = Solids.solid(row.name());
        double bevel = Math.asin(row.inradius());
        double accuracy = 2 * PRINTED / Math.cos(bevel);
        int edges = 0;
        for (EdgeKind edge : solid.edgeKinds()) {
            boolean near = nearest(solid, edge.face());
            boolean neighbourNear = nearest(solid, edge.neighbour());
            if (near) {
                assertEquals(bevel, edge.bevel(), accuracy);
            }
            if (neighbourNear) {
                assertEquals(bevel, edge.neighbourBevel(), accuracy);
            }
            if (near && neighbourNear) {
                assertEquals(2 * bevel, edge.dihedral(), 2 * accuracy);
            }
            edges += near || neighbourNear ? 1 : 0;
        }
        assertTrue(edges > 0);
    }

    @Test
    void tableAndCatalogueHaveTheSameSolidsAndFamilies() {
        List<String> table = LibrarySolid.all()
                .map(solid -> solid.name() + "," + solid.family())
                .sorted()
                .toList();
        assertEquals(
                table,
                SolidCatalogue.all().stream()
                        .map(solid -> solid.name() + "," + solid.family().name().toLowerCase(Locale.ROOT))
                        .sorted()
                        .toList());
    }

    private static boolean nearest(Solid solid, String face) {
        return Solids.kind(solid, face).distance() == solid.inradius();
    }

    private static double distance(Solid solid, int face) {
        return Solids.normal(solid, face)
                .dot(Solids.corner(solid, solid.faces().get(face).vertices().get(0)));
    }

    /** Distance of the first edge's line from the centre. */
    private static double midradius(Solid solid) {
        Edge edge = solid.edges().get(0);
        Vector3D from = Solids.corner(solid, edge.from());
        Vector3D to = Solids.corner(solid, edge.to());
        return from.cross(to).norm() / from.distance(to);
    }
}
