package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.ORACLE;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.band.BandStack.Layer;
import org.orbwright.band.WoodQuadrature.Column;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.fixture.Designs;
import org.orbwright.source.Source;
import org.orbwright.sphere.SphereCalculator;

/** The closed form of a band's first moment against quadrature from its definition. */
@Source(value = ORACLE, text = "Gauss-Legendre quadrature of the wood's definition over the plan, WoodQuadrature")
class SegmentMomentQuadratureTest {
    /** Of the volume of the segment times its distance. */
    private static final double RELATIVE = 1e-7;

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
        Designs start = Designs.of(solid).land(land).thickness(60).bands(angle, Designs.widths(4.0, 3.0, 5.0, null));
        double face = start.build().smallestFaceDistance();
        double seam = start.build().seamRadius();
        Designs sphere = start.diameter(2 * (face + beyond * (seam - face))).minimumWall(1);
        double thickness = SphereCalculator.calculate(sphere.build()).smallestThickness();
        Design design = sphere.thickness(Math.max(thickness, land + 1)).build();
        for (Panel panel : design.panels()) {
            for (Piece piece : panel.pieces()) {
                double radius = design.sphereRadius();
                agree(
                        panel,
                        piece,
                        SegmentMoment.ofSphere(panel, piece, design.thickness(), radius),
                        new WoodQuadrature(panel, piece, design.thickness(), radius));
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
                .bands(angle, Designs.widths(4.0, 3.0, 5.0, null))
                .build();
        for (Panel panel : design.panels()) {
            for (Piece piece : panel.pieces()) {
                agree(
                        panel,
                        piece,
                        SegmentMoment.ofSolid(panel, piece, design.thickness()),
                        new WoodQuadrature(panel, piece, design.thickness(), Double.POSITIVE_INFINITY));
            }
        }
    }

    private static void agree(Panel panel, Piece piece, SegmentMoment closed, WoodQuadrature numeric) {
        double angle = piece.angle(panel.lamination());
        double scale = RELATIVE * numeric.between(-1e9, 1e9, angle) * panel.faceDistance();
        for (Layer layer :
                BandStack.of(panel.lamination(), piece, BandSet.UPRIGHT).layers()) {
            double low = layer.innermost() ? -1e9 : layer.inner().offset();
            double high = layer.outermost() ? 1e9 : layer.outer().offset();
            Column[] columns = {
                (x, y, bottom, top) -> x * (top - bottom),
                (x, y, bottom, top) -> y * (top - bottom),
                (x, y, bottom, top) -> (top - bottom) * (top + bottom) / 2
            };
            Vector3D moment = closed.of(layer);
            double[] found = moment.toArray();
            for (int i = 0; i < columns.length; i++) {
                double expected = numeric.between(low, high, angle, columns[i]);
                assertEquals(expected, found[i], scale, "band " + layer.number() + ", coordinate " + i);
            }
        }
    }
}
