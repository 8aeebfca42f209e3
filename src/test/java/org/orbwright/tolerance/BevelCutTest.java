package org.orbwright.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.tolerance.Tolerances.part;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.fixture.Designs;
import org.orbwright.jig.JigCalculator;
import org.orbwright.jig.JigPlan.BevelCut;
import org.orbwright.jig.JigRequest;
import org.orbwright.solid.Edge;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.tolerance.ErrorBudget.ErrorContribution;
import org.orbwright.tolerance.PlacedByHand.Side;
import org.orbwright.tolerance.ToleranceRequest.LengthErrorRequest;

/** Panels cut on the table as the jig sets it up, and pushed together between the seams as rigid bodies. */
class BevelCutTest {
    private static final double THICKER = 0.37;

    static Stream<String> solids() {
        return SolidCatalogue.all().stream().map(Solid::name);
    }

    /**
     * A section through the middle of a panel and of one edge.
     *
     * @param out from the panel's middle
     * @param up over the table, on which the inner face lies
     */
    private record Point(double out, double up) {}

    /** What the saw leaves: inner edge, joint and outer rim. */
    private static List<Point> cut(BevelCut saw, double baseDistance, double thickness) {
        double tilt = saw.tilt().angle();
        double height = Math.min(saw.bladeHeight(), thickness);
        // The blade leans over the panel: it comes out of the rim at its full height.
        double inner = baseDistance - saw.bladeHeight() * Math.tan(tilt);
        double joint = inner + height * Math.tan(tilt);
        return List.of(new Point(inner, 0), new Point(joint, height), new Point(joint, thickness));
    }

    /** How far from the solid's centre the inner face lies, once the seam faces lie on the planes of the seams. */
    private static double placed(List<Point> section, Panel panel) {
        Point joint = section.get(1);
        return joint.out() * panel.jointDistance() / panel.baseDistance() - joint.up();
    }

    @ParameterizedTest
    @MethodSource("solids")
    void thicknessShowsOutside(String solid) {
        for (double land : new double[] {2, 0}) {
            Designs designs = Designs.of(solid).thickness(12).land(land);
            double error = land > 0 ? THICKER : -THICKER;
            Design design = designs.build();
            Tolerance tolerance = Tolerances.of(designs)
                    .widths(null, null, new LengthErrorRequest(error, 0.0))
                    .calculate();
            List<Panel> panels = design.facePanels();
            List<BevelCut> saws = JigCalculator.plan(new JigRequest(null, null), design).faces().stream()
                    .map(face -> face.bevel())
                    .toList();
            for (int i = 0; i < panels.size(); i++) {
                Panel panel = panels.get(i);
                List<Point> right = cut(saws.get(i), panel.baseDistance(), design.thickness());
                List<Point> thick = cut(saws.get(i), panel.baseDistance(), design.thickness() + error);
                // The hollow and the seam stay; the outer face moves.
                assertEquals(panel.faceDistance() - design.thickness(), placed(right, panel), 1e-9);
                assertEquals(placed(right, panel), placed(thick, panel), 1e-9);
                double face = placed(thick, panel) + design.thickness() + error;
                assertEquals(
                        face - panel.faceDistance(),
                        tolerance.panels().get(i).faceDistance().shift(),
                        1e-9);
            }
            assertEquals(0, tolerance.solid().thinnestWall().shift());
            assertEquals(2 * error, tolerance.solid().acrossFlats().shift(), 1e-12);
            assertSteps(design, tolerance, saws, error);
        }
    }

    /** One of two panels is off: its outer rim stands proud along the seam, its inner edge does not. */
    private static void assertSteps(Design design, Tolerance tolerance, List<BevelCut> saws, double error) {
        PlacedByHand placed = new PlacedByHand(design);
        List<String> kinds = design.facePanels().stream().map(Panel::face).toList();
        for (Edge edge : design.solid().edges()) {
            Side side = placed.sides(edge).get(0);
            String kind = design.solid().faces().get(edge.face()).kind();
            Panel panel = JointLengths.panel(design, kind);
            BevelCut saw = saws.get(kinds.indexOf(kind));
            // Along the seam, away from the solid's centre.
            Vector3D seam = side.seamFace(0).negate();
            double[] along = new double[2];
            for (int i = 0; i < 2; i++) {
                List<Point> section = cut(saw, panel.baseDistance(), design.thickness() + i * error);
                Point rim = section.get(2);
                double up = placed(section, panel) + rim.up();
                along[i] = side.outwards()
                        .multiply(rim.out())
                        .add(side.normal().multiply(up))
                        .dot(seam);
            }
            assertEquals(
                    (along[1] - along[0]) / error,
                    new PanelErrors(
                                    design,
                                    panel,
                                    CuttingErrors.of(
                                            Tolerances.of(Designs.of("cube"))
                                                    .request()
                                                    .filled(design.unit()),
                                            design))
                            .rimByThickness()
                            .together(),
                    1e-9);
        }
        tolerance.seams().forEach(seam -> {
            if (seam.face().equals(seam.neighbour())) {
                assertEquals(
                        0, part(seam.outerStep(), ErrorSource.PANEL_THICKNESS, ErrorContribution::perLength), 1e-12);
            }
            assertEquals(0, seam.innerStep().shift());
        });
    }
}
