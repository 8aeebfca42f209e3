package org.orbwright.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.PUBLISHED;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.source.Source;

/** Solids against numbers that were read in publications, each to the digits that stand there. */
class SolidsAgainstPublishedValuesTest {
    /** Half of the fifth decimal. */
    private static final double FIVE_DECIMALS = 5e-6;

    private static final double HALF_A_MINUTE = 0.5 / 60;

    private static EdgeKind edge(String solid, String face, String neighbour) {
        return Solids.solid(solid).edgeKinds().stream()
                .filter(kind -> kind.face().equals(face) && kind.neighbour().equals(neighbour))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest(name = "{0}, OEIS {2}")
    @CsvSource({
        "tetrahedron, triangle, A137914, 1.2309594173407746821",
        "octahedron, triangle, A156546, 1.910633236249018556",
        "snub-cube, triangle, A377969, 2.674448083535228681556740855858",
        "snub-dodecahedron, triangle, A377997, 2.865400688344728607604607341733"
    })
    @Source(value = PUBLISHED, text = "On-Line Encyclopedia of Integer Sequences, A137914, A156546, A377969, A377997")
    void dihedralAngleInRadians(String solid, String face, String sequence, double radians) {
        assertEquals(radians, edge(solid, face, face).dihedral(), 1e-14);
    }

    /** Given as pi - arctan 2 and pi - arcsin(2 / 3). */
    @Test
    @Source(value = PUBLISHED, text = "GNU 3DLDF, user manual, Dodecahedron and Icosahedron: dihedral_angle")
    void dihedralAnglesOfDodecahedronAndIcosahedron() {
        double dodecahedron = edge("dodecahedron", "pentagon", "pentagon").dihedral();
        double icosahedron = edge("icosahedron", "triangle", "triangle").dihedral();
        assertEquals(Math.PI - Math.atan(2), dodecahedron, 1e-14);
        assertEquals(Math.PI - Math.asin(2.0 / 3), icosahedron, 1e-14);
    }

    @ParameterizedTest(name = "{0}, {1} and {2}: {3} degrees {4} minutes")
    @CsvSource({
        "tetrahedron, triangle, triangle, 70, 32",
        "dodecahedron, pentagon, pentagon, 116, 34",
        "icosahedron, triangle, triangle, 138, 11",
        "truncated-octahedron, square, hexagon, 125, 16",
        "truncated-octahedron, hexagon, hexagon, 109, 28"
    })
    @Source(value = PUBLISHED, text = "GNU 3DLDF, user manual, Polyhedra, data members: angles to a minute")
    void dihedralAngleToAMinute(String solid, String face, String neighbour, int degrees, int minutes) {
        double angle = Math.toDegrees(edge(solid, face, neighbour).dihedral());
        assertEquals(degrees + minutes / 60.0, angle, HALF_A_MINUTE);
    }

    @ParameterizedTest(name = "a dodecahedron of edge 1: circumradius {0}, inradius {1}")
    @CsvSource("1.40125853844407354467, 1.11351636441160673519")
    @Source(value = PUBLISHED, text = "VIAS, Computational Geometry, geom_3d_dodecahedron")
    void radiiOfTheDodecahedron(double circumradius, double inradius) {
        Solid dodecahedron = Solids.solid("dodecahedron");
        assertEquals(circumradius, dodecahedron.circumradius(), 1e-15);
        assertEquals(inradius, dodecahedron.inradius(), 1e-15);
    }

    /**
     * The inradius that is given there is that of the dual in the same midsphere, which touches its faces where the
     * solid has its corners: the square of the midradius over the circumradius.
     */
    @ParameterizedTest(name = "{0}: midradius {2}, circumradius {3}")
    @CsvSource({"truncated-tetrahedron, 0.95940, 1.06066, 1.17260", "truncated-dodecahedron, 2.88526, 2.92705, 2.96945"
    })
    @Source(
            value = PUBLISHED,
            text = "E. W. Weisstein, CRC Concise Encyclopedia of Mathematics, 1999, under each solid")
    void radiiOfTruncatedSolids(String name, double dualInradius, double midradius, double circumradius) {
        Solid solid = Solids.solid(name);
        Solid dual = Solids.solid(solid.dual());
        assertEquals(midradius, solid.midradius(), FIVE_DECIMALS);
        assertEquals(circumradius, solid.circumradius(), FIVE_DECIMALS);
        assertEquals(dualInradius, dual.inradius() / dual.midradius() * solid.midradius(), FIVE_DECIMALS);
    }

    @Test
    @DisplayName("truncated icosahedron: two hexagons make 138.189685 degrees, hexagon and pentagon 142.62")
    @Source(value = PUBLISHED, text = "Wikipedia, Truncated icosahedron (U25), dihedral angles")
    void anglesOfTheTruncatedIcosahedron() {
        double hexagons = edge("truncated-icosahedron", "hexagon", "hexagon").dihedral();
        double other = edge("truncated-icosahedron", "pentagon", "hexagon").dihedral();
        assertEquals(138.189685, Math.toDegrees(hexagons), 5e-7);
        assertEquals(142.62, Math.toDegrees(other), 5e-3);
    }
}
