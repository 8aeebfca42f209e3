package org.orbwright.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.tolerance.Tolerances.part;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.Design;
import org.orbwright.design.Piece;
import org.orbwright.design.PlacedPiece;
import org.orbwright.fixture.Designs;
import org.orbwright.solid.Edge;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.tolerance.ErrorBudget.ErrorContribution;
import org.orbwright.tolerance.PlacedByHand.Side;

/** The linear theory against segments and panels that are put edge to edge. */
class PlacementTest {
    static Stream<String> solids() {
        return SolidCatalogue.all().stream().map(Solid::name);
    }

    private static Designs design(String solid) {
        return Designs.of(solid).thickness(12).land(2);
    }

    private static PanelTolerance panel(Tolerance tolerance, String face) {
        return tolerance.panels().stream()
                .filter(panel -> panel.face().equals(face))
                .findFirst()
                .orElseThrow();
    }

    /** An arc is longer than its chord by the angle squared over 24, and a little more. */
    private static double secondOrder(double angle) {
        double square = angle * angle;
        return square / 24 * (1 + 0.03 * square) + 1e-9;
    }

    @ParameterizedTest
    @MethodSource("solids")
    void gapsAtTheRim(String solid) {
        for (double degrees : new double[] {0.01, 0.3, 3}) {
            Tolerance tolerance =
                    Tolerances.of(design(solid)).tipAngle(-degrees, 0).calculate();
            PlacedByHand placed = new PlacedByHand(design(solid).build());
            for (Face face : design(solid).build().solid().faces()) {
                PanelTolerance theory = panel(tolerance, face.kind());
                double[] tips = placed.tips(face);
                for (int i = 0; i < tips.length; i++) {
                    tips[i] -= Math.toRadians(degrees);
                }
                double gap = PlacedByHand.gapAtRim(tips, theory.jointLength());
                assertEquals(gap, theory.gap(), gap * secondOrder(theory.angleSum()));
                assertEquals(PanelSide.RIM, theory.opensAt());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("solids")
    void gapsOfSeams(String solid) {
        Design design = design(solid).build();
        PlacedByHand placed = new PlacedByHand(design);
        for (double degrees : new double[] {-2, -0.1, 0.05, 1}) {
            Tolerance tolerance = Tolerances.of(design(solid)).bevel(degrees, 0).calculate();
            double error = Math.toRadians(degrees);
            double[] thickness = {design.thickness(), design.thickness()};
            for (Edge edge : design.solid().edges()) {
                double gap = placed.gapOfSeam(edge, new double[] {error, error}, thickness);
                assertTrue(
                        tolerance.seams().stream()
                                .anyMatch(seam -> Math.abs(seam.gap() - gap) <= gap * secondOrder(seam.angleSum())),
                        () -> solid + " " + edge + " " + gap);
                assertOpensAt(
                        placed.sides(edge), error, tolerance.seams().get(0).opensAt());
            }
        }
    }

    /** Seam faces that have passed each other at the hollow would have to open at the joint. */
    private static void assertOpensAt(List<Side> sides, double error, SeamSide side) {
        Vector3D apart = sides.get(0).seamFace(error).subtract(sides.get(1).seamFace(error));
        boolean passed = apart.dot(sides.get(1).normal().subtract(sides.get(0).normal())) > 0;
        assertEquals(passed ? SeamSide.OUTSIDE : SeamSide.INSIDE, side);
    }

    @ParameterizedTest
    @MethodSource("solids")
    void withoutErrorsEverySeamIsClosed(String solid) {
        Design design = design(solid).build();
        PlacedByHand placed = new PlacedByHand(design);
        double[] thickness = {design.thickness(), design.thickness()};
        for (Edge edge : design.solid().edges()) {
            assertEquals(0, placed.gapOfSeam(edge, new double[2], thickness), 1e-12);
        }
    }

    /** Panels that are held apart by what is answered touch at the hollow, where the solid has one face kind. */
    @ParameterizedTest
    @MethodSource("solids")
    void panelsAreHeldApartUntilTheyTouchAtTheHollow(String solid) {
        Design design = design(solid).build();
        if (design.solid().faceKinds().size() > 1) {
            return;
        }
        double error = Math.toRadians(0.01);
        Tolerance tolerance = Tolerances.of(design(solid)).bevel(0.01, 0).calculate();
        double out = tolerance.panels().get(0).faceDistance().shift();
        for (Edge edge : design.solid().edges()) {
            Vector3D[] ends = new Vector3D[2];
            List<Side> sides = new PlacedByHand(design).sides(edge);
            for (int i = 0; i < 2; i++) {
                Side side = sides.get(i);
                ends[i] = side.normal()
                        .multiply(out)
                        .add(side.seamFace(error)
                                .multiply(tolerance.seams().get(0).seamLength()));
            }
            assertEquals(0, ends[0].distance(ends[1]), out * 1e-3);
        }
    }

    /** Where the two legs meet that start at the ends of a base. */
    private static double height(Piece piece, double stop, double tip) {
        double left = Math.PI / 2 - Math.atan2(piece.left(), piece.base()) - tip / 2;
        double right = Math.PI / 2 - Math.atan2(piece.right(), piece.base()) - tip / 2;
        double base = piece.baseLength() + stop;
        // The law of sines for the left leg.
        double leg = base * Math.sin(right) / Math.sin(Math.PI - left - right);
        return leg * Math.sin(left);
    }

    @ParameterizedTest
    @MethodSource("solids")
    void baseDistancesFollowStopAndTipAngle(String solid) {
        Design design = design(solid).build();
        Tolerance tolerance = Tolerances.of(design(solid)).stop(0.1, 0).calculate();
        double step = 1e-5;
        for (PanelTolerance panel : tolerance.panels()) {
            double byStop = 0;
            double byTip = 0;
            List<PlacedPiece> around = PlacedPiece.around(design, panel.face());
            for (PlacedPiece placed : around) {
                Piece piece = placed.piece();
                assertEquals(piece.base(), height(piece, 0, 0), 1e-9);
                byStop += (height(piece, step, 0) - height(piece, -step, 0)) / (2 * step) / around.size();
                byTip += (height(piece, 0, step) - height(piece, 0, -step)) / (2 * step) / around.size();
            }
            assertEquals(
                    byStop, part(panel.baseDistance(), ErrorSource.STOP_BLOCK, ErrorContribution::perLength), 1e-6);
            assertEquals(
                    byTip * Math.toRadians(0.1),
                    part(panel.baseDistance(), ErrorSource.TIP_ANGLE, ErrorContribution::perTenthDegree),
                    1e-6);
        }
    }
}
