package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.ORACLE;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.fixture.Designs;
import org.orbwright.source.Source;
import org.orbwright.sphere.SphereCalculator;

/** The closed form of the wood in a band against quadrature from its definition. */
@Source(value = ORACLE, text = "Gauss-Legendre quadrature of the wood's definition over the plan, WoodQuadrature")
class SegmentVolumeQuadratureTest {
    private static final double RELATIVE = 1e-6;
    private static final int BANDS = 4;

    @ParameterizedTest(name = "{0}: bands at {1} degrees, land {2}, sphere {3} of the way from the face to the seams")
    @CsvSource({
        "dodecahedron, 0, 0, 0",
        "dodecahedron, 0, 4, 0",
        "dodecahedron, 30, 4, 0.5",
        "dodecahedron, 90, 0, 1",
        "cube, 45, 0, 0",
        "cube, -45, 6, 0.4",
        "cube, 60, 35, 0",
        "tetrahedron, 20, 3, 0.2",
        "deltoidal-hexecontahedron, 90, 1, 0",
        "deltoidal-hexecontahedron, -37, 1, 0.7",
        "disdyakis-triacontahedron, 60, 0.5, 0.5",
        "pentagonal-icositetrahedron, 0, 1, 0.5",
        "rhombic-dodecahedron, 75, 2, 0.3",
        "truncated-icosidodecahedron, 33, 1, 0",
        "snub-cube, 0, 0, 0.5"
    })
    void bandsOfTheFinishedSphere(String solid, double angle, double land, double beyond) {
        Designs start = Designs.of(solid).land(land).thickness(60).bands(angle, Designs.widths((Double) null));
        double face = start.build().smallestFaceDistance();
        double seam = start.build().seamRadius();
        Designs sphere = start.diameter(2 * (face + beyond * (seam - face))).minimumWall(1);
        double thickness = SphereCalculator.calculate(sphere.build()).smallestThickness();
        Design design = sphere.thickness(Math.max(thickness, land + 1)).build();
        for (Panel panel : design.panels()) {
            for (Piece piece : panel.pieces()) {
                agree(
                        panel,
                        piece,
                        SegmentVolume.ofSphere(panel, piece, design.thickness(), design.sphereRadius()),
                        new WoodQuadrature(panel, piece, design.thickness(), design.sphereRadius()));
            }
        }
    }

    @ParameterizedTest(name = "{0}: bands at {1} degrees, land {2}")
    @CsvSource({
        "dodecahedron, 0, 4",
        "dodecahedron, 30, 4",
        "cube, 45, 20",
        "deltoidal-hexecontahedron, 90, 1",
        "disdyakis-triacontahedron, -60, 5",
        "truncated-icosidodecahedron, 33, 0"
    })
    void bandsOfTheSolidBeforeTurning(String solid, double angle, double land) {
        Design design = Designs.of(solid)
                .land(land)
                .bands(angle, Designs.widths((Double) null))
                .build();
        for (Panel panel : design.panels()) {
            for (Piece piece : panel.pieces()) {
                agree(
                        panel,
                        piece,
                        SegmentVolume.ofSolid(panel, piece, design.thickness()),
                        new WoodQuadrature(panel, piece, design.thickness(), Double.POSITIVE_INFINITY));
            }
        }
    }

    private static void agree(Panel panel, Piece piece, SegmentVolume closed, WoodQuadrature numeric) {
        double angle = panel.lamination().bandAngle();
        double top = piece.top(angle);
        double bottom = piece.bottom(angle);
        double whole = closed.whole();
        double upper = whole;
        for (int i = 1; i <= BANDS; i++) {
            double high = top - (top - bottom) * (i - 1) / BANDS;
            double low = top - (top - bottom) * i / BANDS;
            double lower = i == BANDS ? 0 : closed.below(BandLine.of(low, angle));
            double expected = numeric.between(i == BANDS ? -1e9 : low, i == 1 ? 1e9 : high, angle);
            assertEquals(expected, upper - lower, RELATIVE * Math.max(expected, whole / 100), "band " + i);
            upper = lower;
        }
    }
}
