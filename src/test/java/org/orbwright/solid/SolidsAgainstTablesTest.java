package org.orbwright.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.solid.Approximately.assertClose;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.PUBLISHED;
import static org.orbwright.source.Kind.REFERENCE;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.source.Source;

/**
 * The solids against tables to 22 digits, made by another program in another way: from the trigonometry of one corner,
 * without coordinates. It confirms closed forms of the literature that are quoted from memory; the head of each table
 * names them.
 */
@Source(value = REFERENCE, text = "mpmath 1.3, 40 digits, src/test/python/solids.py: by the trigonometry of one corner")
class SolidsAgainstTablesTest {

    @Nested
    @DisplayName("Platonic solids, from the trigonometry of a corner")
    class Platonic {

        @ParameterizedTest(name = "{0}")
        @CsvFileSource(resources = "platonic.csv", useHeadersInDisplayName = true)
        void countsAgree(ArgumentsAccessor row) {
            Solid solid = Solids.solid(row.getString(0));
            FaceKind kind = Solids.kind(solid, row.getString(1));
            assertEquals(SolidFamily.PLATONIC, solid.family());
            assertEquals(row.getInteger(2), kind.sides());
            assertEquals(row.getInteger(3), kind.count());
            assertCounts(solid, row.getInteger(3), row.getInteger(4), row.getInteger(5));
        }

        @ParameterizedTest(name = "{0}")
        @CsvFileSource(resources = "platonic.csv", useHeadersInDisplayName = true)
        void dihedralAngleAndThreeRadiiAgree(ArgumentsAccessor row) {
            Solid solid = Solids.solid(row.getString(0));
            assertEquals(1, solid.edgeKinds().size());
            assertDihedral(row.getDouble(6), solid.edgeKinds().get(0));
            assertClose(row.getDouble(7), solid.inradius(), "inradius");
            assertClose(row.getDouble(8), solid.midradius(), "midradius");
            assertClose(row.getDouble(9), solid.circumradius(), "circumradius");
        }

        @ParameterizedTest(name = "{0}")
        @CsvFileSource(resources = "platonic.csv", useHeadersInDisplayName = true)
        void volumeAndAreaAgree(ArgumentsAccessor row) {
            Solid solid = Solids.solid(row.getString(0));
            assertClose(row.getDouble(10), solid.volume(), "volume");
            assertClose(row.getDouble(11), solid.surfaceArea(), "area");
        }
    }

    @Nested
    @DisplayName("Archimedean solids, from the trigonometry of a corner")
    class Archimedean {

        @ParameterizedTest(name = "{0}")
        @CsvFileSource(resources = "archimedean.csv", useHeadersInDisplayName = true)
        void countsAgree(ArgumentsAccessor row) {
            Solid solid = Solids.solid(row.getString(0));
            assertEquals(SolidFamily.ARCHIMEDEAN, solid.family());
            assertCounts(solid, row.getInteger(2), row.getInteger(3), row.getInteger(4));
        }

        @ParameterizedTest(name = "{0}")
        @CsvFileSource(resources = "archimedean.csv", useHeadersInDisplayName = true)
        void sameFacesMeetAroundEveryCorner(ArgumentsAccessor row) {
            Solid solid = Solids.solid(row.getString(0));
            List<Integer> expected = List.of(row.getString(1).split("\\.")).stream()
                    .map(Integer::valueOf)
                    .sorted()
                    .toList();
            for (int corner = 0; corner < solid.vertices().size(); corner++) {
                int number = corner;
                List<Integer> around = solid.faces().stream()
                        .filter(face -> face.vertices().contains(number))
                        .map(face -> face.vertices().size())
                        .sorted()
                        .toList();
                assertEquals(expected, around, "corner " + number);
            }
        }

        @ParameterizedTest(name = "{0}")
        @CsvFileSource(resources = "archimedean.csv", useHeadersInDisplayName = true)
        void midradiusAndCircumradiusAgree(ArgumentsAccessor row) {
            Solid solid = Solids.solid(row.getString(0));
            assertClose(row.getDouble(5), solid.midradius(), "midradius");
            assertClose(row.getDouble(6), solid.circumradius(), "circumradius");
        }

        @ParameterizedTest(name = "{0}")
        @CsvFileSource(resources = "archimedean.csv", useHeadersInDisplayName = true)
        void volumeAndAreaAgree(ArgumentsAccessor row) {
            Solid solid = Solids.solid(row.getString(0));
            assertClose(row.getDouble(7), solid.volume(), "volume");
            assertClose(row.getDouble(8), solid.surfaceArea(), "area");
        }

        @ParameterizedTest(name = "{0}: {1}")
        @CsvFileSource(resources = "archimedean-faces.csv", useHeadersInDisplayName = true)
        void faceKindsAgree(ArgumentsAccessor row) {
            FaceKind kind = Solids.kind(Solids.solid(row.getString(0)), row.getString(1));
            assertEquals(row.getInteger(2), kind.sides());
            assertEquals(row.getInteger(3), kind.count());
            assertClose(row.getDouble(4), kind.distance(), "face distance");
        }

        @ParameterizedTest(name = "{0}: {1} and {2}")
        @CsvFileSource(resources = "archimedean-edges.csv", useHeadersInDisplayName = true)
        void edgeKindsAndDihedralAnglesAgree(ArgumentsAccessor row) {
            EdgeKind kind = edgeKind(Solids.solid(row.getString(0)), row.getString(1), row.getString(2));
            assertEquals(row.getInteger(3), kind.count());
            assertDihedral(row.getDouble(4), kind);
        }

        private EdgeKind edgeKind(Solid solid, String face, String neighbour) {
            return solid.edgeKinds().stream()
                    .filter(k -> k.face().equals(face) && k.neighbour().equals(neighbour))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no edge between " + face + " and " + neighbour));
        }
    }

    @Nested
    @DisplayName("Catalan solids, by polar reciprocation")
    class Catalan {

        @ParameterizedTest(name = "{0}")
        @CsvFileSource(resources = "catalan.csv", useHeadersInDisplayName = true)
        void countsAgree(ArgumentsAccessor row) {
            Solid solid = Solids.solid(row.getString(0));
            assertEquals(SolidFamily.CATALAN, solid.family());
            assertEquals(row.getString(1), solid.dual());
            assertEquals(1, solid.faceKinds().size());
            assertEquals(row.getInteger(2), solid.faceKinds().get(0).sides());
            assertCounts(solid, row.getInteger(3), row.getInteger(4), row.getInteger(5));
        }

        @ParameterizedTest(name = "{0}")
        @CsvFileSource(resources = "catalan.csv", useHeadersInDisplayName = true)
        void everyEdgeHasTheSameDihedralAngle(ArgumentsAccessor row) {
            for (EdgeKind kind : Solids.solid(row.getString(0)).edgeKinds()) {
                assertDihedral(row.getDouble(6), kind);
            }
        }

        @ParameterizedTest(name = "{0}")
        @CsvFileSource(resources = "catalan.csv", useHeadersInDisplayName = true)
        void threeRadiiAgree(ArgumentsAccessor row) {
            Solid solid = Solids.solid(row.getString(0));
            assertClose(row.getDouble(7), solid.inradius(), "inradius");
            assertClose(row.getDouble(8), solid.midradius(), "midradius");
            assertClose(row.getDouble(9), solid.circumradius(), "circumradius");
        }

        @ParameterizedTest(name = "{0}")
        @CsvFileSource(resources = "catalan.csv", useHeadersInDisplayName = true)
        void volumeAndAreaAgree(ArgumentsAccessor row) {
            Solid solid = Solids.solid(row.getString(0));
            assertClose(row.getDouble(10), solid.volume(), "volume");
            assertClose(row.getDouble(11), solid.surfaceArea(), "area");
        }

        @ParameterizedTest(name = "{0}: {1} edges of {2}")
        @CsvFileSource(resources = "catalan-edges.csv", useHeadersInDisplayName = true)
        void edgeLengthsAgree(ArgumentsAccessor row) {
            double length = row.getDouble(2);
            int count = Solids.solid(row.getString(0)).edgeKinds().stream()
                    .filter(kind -> Math.abs(kind.length() - length) < Approximately.SOLID_ACCURACY * length)
                    .mapToInt(EdgeKind::count)
                    .sum();
            assertEquals(row.getInteger(1), count);
        }

        @Test
        @Source(
                value = HAND,
                text = "the diagonals are the edges of a cube and an octahedron, or of a dodecahedron and an "
                        + "icosahedron, in one midsphere")
        void rhombiHaveDiagonalsInTheRatiosOfRootTwoAndTheGoldenRatio() {
            assertClose(Math.sqrt(2), diagonalRatio("rhombic-dodecahedron"), "rhombic dodecahedron");
            assertClose((1 + Math.sqrt(5)) / 2, diagonalRatio("rhombic-triacontahedron"), "rhombic triacontahedron");
        }

        private double diagonalRatio(String name) {
            Solid solid = Solids.solid(name);
            var corners = Solids.corners(solid, solid.faces().get(0));
            double one = corners.get(0).distance(corners.get(2));
            double other = corners.get(1).distance(corners.get(3));
            return Math.max(one, other) / Math.min(one, other);
        }
    }

    @Test
    @Source(
            value = PUBLISHED,
            text = "E. W. Weisstein, Archimedean Solid, MathWorld, after P. R. Cromwell, Polyhedra, 1997, pp. 91-92: "
                    + "thirteen, and as many duals")
    void catalogueHoldsFivePlatonicThirteenArchimedeanAndThirteenCatalanSolids() {
        assertEquals(5, count(SolidFamily.PLATONIC));
        assertEquals(13, count(SolidFamily.ARCHIMEDEAN));
        assertEquals(13, count(SolidFamily.CATALAN));
    }

    @Test
    @Source(CONTRACT)
    void faceKindsOfCatalanSolidsBearTheirUsualNames() {
        assertEquals(
                "kite",
                Solids.solid("deltoidal-icositetrahedron").faceKinds().get(0).face());
        assertEquals(
                "kite",
                Solids.solid("deltoidal-hexecontahedron").faceKinds().get(0).face());
        assertEquals(
                "rhombus",
                Solids.solid("rhombic-dodecahedron").faceKinds().get(0).face());
        assertEquals(
                "rhombus",
                Solids.solid("rhombic-triacontahedron").faceKinds().get(0).face());
        assertEquals(
                "triangle",
                Solids.solid("disdyakis-triacontahedron").faceKinds().get(0).face());
        assertEquals(
                "pentagon",
                Solids.solid("pentagonal-hexecontahedron").faceKinds().get(0).face());
    }

    @Test
    @Source(INVARIANT)
    void summariesRepeatTheCountsOfTheSolids() {
        for (SolidSummary summary : SolidCatalogue.summaries()) {
            assertCounts(Solids.solid(summary.name()), summary.faces(), summary.edges(), summary.vertices());
        }
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.solid.Solids#names")
    @Source(INVARIANT)
    void catalogueListsWhatIsBuilt(String name) {
        assertEquals(Solids.solid(name), Solids.listed(name));
    }

    @Test
    @Source(CONTRACT)
    void unknownNameFindsNothing() {
        assertTrue(SolidCatalogue.find("dodecahedon").isEmpty());
    }

    private static long count(SolidFamily family) {
        return SolidCatalogue.all().stream().filter(s -> s.family() == family).count();
    }

    private static void assertCounts(Solid solid, int faces, int edges, int corners) {
        assertEquals(faces, solid.faces().size(), "faces");
        assertEquals(edges, solid.edges().size(), "edges");
        assertEquals(corners, solid.vertices().size(), "corners");
    }

    private static void assertDihedral(double degrees, EdgeKind kind) {
        assertClose(Math.toRadians(degrees), kind.dihedral(), "dihedral angle");
    }
}
