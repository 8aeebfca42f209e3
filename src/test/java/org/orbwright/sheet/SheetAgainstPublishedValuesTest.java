package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.PUBLISHED;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.fixture.Designs;
import org.orbwright.segment.SawAngles;
import org.orbwright.segment.SawAngles.EdgeAngles;
import org.orbwright.segment.SawAngles.FaceAngles;
import org.orbwright.source.Source;

/** Sheets against numbers that were read in publications. */
class SheetAgainstPublishedValuesTest {
    private static Answer sheet(String solid) {
        return SheetCalculator.sheet(Designs.of(solid).document(), 2);
    }

    private static EdgeAngles edge(SawAngles angles, String face, String neighbour) {
        return angles.edges().stream()
                .filter(edge -> edge.face().equals(face) && edge.neighbour().equals(neighbour))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest(name = "{0}: faces meet at {2} rad (OEIS {3}), so half of it is the bevel")
    @CsvSource({
        "tetrahedron, triangle, 1.2309594173407746821, A137914",
        "octahedron, triangle, 1.910633236249018556, A156546",
        "snub-cube, triangle, 2.674448083535228681556740855858, A377969",
        "snub-dodecahedron, triangle, 2.865400688344728607604607341733, A377997"
    })
    @Source(value = PUBLISHED, text = "On-Line Encyclopedia of Integer Sequences, A137914, A156546, A377969, A377997")
    void bevelsAreHalfOfTheDihedralAngle(String solid, String face, double dihedral, String sequence) {
        SawAngles angles = sheet(solid).angles();
        FaceAngles panel = angles.faces().stream()
                .filter(kind -> kind.face().equals(face))
                .findFirst()
                .orElseThrow();
        assertEquals(dihedral, edge(angles, face, face).dihedral(), 1e-14);
        assertEquals(dihedral / 2, panel.bevel(), 1e-14);
        assertEquals((Math.PI - dihedral) / 2, panel.bladeTilt(), 1e-14);
    }

    @ParameterizedTest(name = "{0}: {1} and {2} meet at {3} degrees {4} minutes")
    @CsvSource({
        "tetrahedron, triangle, triangle, 70, 32",
        "dodecahedron, pentagon, pentagon, 116, 34",
        "icosahedron, triangle, triangle, 138, 11",
        "truncated-octahedron, square, hexagon, 125, 16",
        "truncated-octahedron, hexagon, hexagon, 109, 28"
    })
    @Source(value = PUBLISHED, text = "GNU 3DLDF, user manual, Polyhedra, data members: angles to a minute")
    void facesMeetAtTheAnglesOfTheManual(String solid, String face, String neighbour, int degrees, int minutes) {
        double dihedral = edge(sheet(solid).angles(), face, neighbour).dihedral();
        assertEquals(degrees + minutes / 60.0, Math.toDegrees(dihedral), 0.5 / 60);
    }

    /** 12 pentagons and 20 hexagons, 90 edges; two hexagons at 138.189685 degrees, hexagon and pentagon at 142.62. */
    @Test
    @Source(value = PUBLISHED, text = "Wikipedia, Truncated icosahedron (U25): faces, edges, dihedral angles")
    void panelsSeamsAndAnglesOfAFootball() {
        Answer sheet = sheet("truncated-icosahedron");
        assertEquals(12, sheet.segments().faces().get(0).panelsPerSphere());
        assertEquals(20, sheet.segments().faces().get(1).panelsPerSphere());
        assertEquals(12 * 5 + 20 * 6, sheet.segments().perSphere());
        assertEquals(
                90, sheet.angles().edges().stream().mapToInt(EdgeAngles::count).sum());
        double hexagons = edge(sheet.angles(), "hexagon", "hexagon").dihedral();
        double other = edge(sheet.angles(), "pentagon", "hexagon").dihedral();
        assertEquals(138.189685, Math.toDegrees(hexagons), 5e-7);
        assertEquals(142.62, Math.toDegrees(other), 5e-3);
    }

    /** For an edge of 1: circumradius 1.40125853844407344467, inradius 1.11351636441160683519. */
    @Test
    @Source(value = PUBLISHED, text = "VIAS, Computational Geometry, geom_3d_dodecahedron")
    void edgeAndSwingOfADodecahedron() {
        Answer sheet = sheet("dodecahedron");
        double edge = 100 / 1.1135163644116068;
        assertEquals(edge, sheet.sphere().edge(), 1e-12);
        assertEquals(2 * 1.4012585384440734 * edge, sheet.sphere().swingDiameter(), 1e-12);
        assertEquals(edge, sheet.segments().faces().get(0).segments().get(0).base(), 1e-12);
    }
}
