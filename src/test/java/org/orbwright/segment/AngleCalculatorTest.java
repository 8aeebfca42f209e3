package org.orbwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.PUBLISHED;
import static org.orbwright.source.Kind.REFERENCE;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.fixture.Designs;
import org.orbwright.segment.SawAngles.EdgeAngles;
import org.orbwright.segment.SawAngles.FaceAngles;
import org.orbwright.segment.SawAngles.SegmentAngles;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.SegmentKind;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.source.Source;

@Source(INVARIANT)
class AngleCalculatorTest {
    static List<Solid> solids() {
        return SolidCatalogue.all();
    }

    private static SawAngles angles(Solid solid) {
        return AngleCalculator.calculate(Designs.of(solid.name()).build());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void theTwoBevelsAddUpToTheDihedralAngle(Solid solid) {
        SawAngles angles = angles(solid);
        for (EdgeAngles edge : angles.edges()) {
            assertEquals(edge.dihedral(), edge.bevel() + edge.neighbourBevel(), 1e-13);
            assertEquals(bevelOf(angles, edge.face()), edge.bevel(), 1e-13);
            assertEquals(bevelOf(angles, edge.neighbour()), edge.neighbourBevel(), 1e-13);
        }
        assertEquals(
                solid.edges().size(),
                angles.edges().stream().mapToInt(EdgeAngles::count).sum());
    }

    private static double bevelOf(SawAngles angles, String face) {
        return angles.faces().stream()
                .filter(f -> f.face().equals(face))
                .findFirst()
                .orElseThrow()
                .bevel();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void bevelAndBladeTiltMakeARightAngle(Solid solid) {
        for (FaceAngles face : angles(solid).faces()) {
            assertEquals(Math.PI / 2, face.bevel() + face.bladeTilt(), 1e-15);
            assertTrue(face.bevel() > 0 && face.bladeTilt() > 0);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void theTipsOfAPanelAddUpToAFullTurn(Solid solid) {
        SawAngles angles = angles(solid);
        for (int i = 0; i < angles.faces().size(); i++) {
            FaceKind kind = solid.faceKinds().get(i);
            double tips = 0;
            for (int j = 0; j < kind.segments().size(); j++) {
                SegmentKind segment = kind.segments().get(j);
                SegmentAngles cut = angles.faces().get(i).segments().get(j);
                tips += segment.perFace() * cut.tipAngle();
                assertEquals(Math.PI, cut.tipAngle() + cut.baseAngleLeft() + cut.baseAngleRight(), 1e-14);
                assertEquals(cut.tipAngle(), cut.mitreGaugeLeft() + cut.mitreGaugeRight(), 1e-14);
                assertEquals(Math.PI / 2, cut.baseAngleLeft() + cut.mitreGaugeLeft(), 1e-14);
                assertEquals(segment.baseLeft() / segment.baseDistance(), Math.tan(cut.mitreGaugeLeft()), 1e-13);
            }
            assertEquals(2 * Math.PI, tips, 1e-12);
        }
    }

    @ParameterizedTest(name = "{0}: {1} and {2}, {4} degrees")
    @CsvFileSource(resources = "/org/orbwright/solid/archimedean-edges.csv", useHeadersInDisplayName = true)
    @Source(
            value = REFERENCE,
            text = "mpmath 1.3, 40 digits, src/test/python/solids.py: by the trigonometry of one corner")
    void dihedralAnglesOfArchimedeanSolids(ArgumentsAccessor row) {
        SawAngles angles = angles(Designs.solid(row.getString(0)));
        EdgeAngles edge = angles.edges().stream()
                .filter(e -> e.face().equals(row.getString(1)) && e.neighbour().equals(row.getString(2)))
                .findFirst()
                .orElseThrow();
        assertEquals(row.getInteger(3), edge.count());
        assertEquals(row.getDouble(4), Math.toDegrees(edge.dihedral()), 1e-11);
        assertEquals(row.getDouble(4), Math.toDegrees(edge.bevel() + edge.neighbourBevel()), 1e-11);
    }

    @ParameterizedTest(name = "{0}: {6} degrees")
    @CsvFileSource(resources = "/org/orbwright/solid/catalan.csv", useHeadersInDisplayName = true)
    @Source(
            value = REFERENCE,
            text = "mpmath 1.3, 40 digits, src/test/python/solids.py: polar reciprocation of the dual")
    void dihedralAnglesOfCatalanSolids(ArgumentsAccessor row) {
        SawAngles angles = angles(Designs.solid(row.getString(0)));
        for (EdgeAngles edge : angles.edges()) {
            assertEquals(row.getDouble(6), Math.toDegrees(edge.dihedral()), 1e-11);
            assertEquals(row.getDouble(6) / 2, Math.toDegrees(edge.bevel()), 1e-11);
        }
        assertEquals(
                90 - row.getDouble(6) / 2, Math.toDegrees(angles.faces().get(0).bladeTilt()), 1e-11);
    }

    @ParameterizedTest(name = "{0}: dihedral {1}, mitre gauge 180 / {2}")
    @CsvSource({
        "tetrahedron, 70.528779366, 3",
        "cube, 90, 4",
        "octahedron, 109.471220634, 3",
        "dodecahedron, 116.565051177, 5",
        "icosahedron, 138.189685104, 3"
    })
    @Source(
            value = PUBLISHED,
            text = "OEIS A137914 (tetrahedron) and A156546 (octahedron); GNU 3DLDF, user manual: dodecahedron pi - "
                    + "arctan 2, icosahedron pi - arcsin(2 / 3)")
    void platonicAngles(String name, double dihedral, int sides) {
        SawAngles angles = angles(Designs.solid(name));
        assertEquals(dihedral, Math.toDegrees(angles.edges().get(0).dihedral()), 5e-10);
        assertEquals(dihedral / 2, Math.toDegrees(angles.faces().get(0).bevel()), 5e-10);
        SegmentAngles segment = angles.faces().get(0).segments().get(0);
        assertEquals(180.0 / sides, Math.toDegrees(segment.mitreGaugeLeft()), 1e-11);
        assertEquals(360.0 / sides, Math.toDegrees(segment.tipAngle()), 1e-11);
    }

    @ParameterizedTest
    @CsvSource({"100, 0", "300, 0", "100, 4", "300, 9.5"})
    @Source(
            value = PUBLISHED,
            text = "VIAS, Computational Geometry, Dodecahedron: inradius 1.11351636441160673519; GNU 3DLDF, user "
                    + "manual: its faces make pi - arctan 2")
    void anglesDependNeitherOnTheSizeNorOnTheLand(double acrossFlats, double land) {
        SawAngles angles = AngleCalculator.calculate(
                Designs.of("dodecahedron").acrossFlats(acrossFlats).land(land).build());
        assertEquals(58.28252558853899, Math.toDegrees(angles.faces().get(0).bevel()), 1e-12);
        double edge = (acrossFlats / 2 - land) / 1.1135163644116066;
        assertEquals(edge, angles.edges().get(0).length(), 1e-12 * edge);
    }
}
