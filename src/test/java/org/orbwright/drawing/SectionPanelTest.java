package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.sphere.SphereCalculator;
import org.orbwright.sphere.SphereSizing.FaceSizing;

/** Sections have the walls and distances that are computed. */
class SectionPanelTest {

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#examples")
    void haveTheWallsThatAreComputed(String example) {
        Design design = DrawnDesigns.example(example);
        double radius = design.sphereRadius();
        for (int i = 0; i < design.panels().size(); i++) {
            Panel panel = design.panels().get(i);
            FaceSizing sizing = SphereCalculator.calculate(design).faces().get(i);
            SectionPanel corner = SectionPanel.corner(design, panel);
            assertEquals(sizing.wall().corner(), radius - corner.innerRadius(), 1e-9);
            assertEquals(sizing.removal().corner(), corner.outerRadius() - radius, 1e-9);
            assertEquals(sizing.cornerRadius(), corner.jointRadius(), 1e-9);
            for (Piece piece : panel.pieces()) {
                SectionPanel edge = SectionPanel.edge(design, panel, piece);
                assertEquals(sizing.wall().edgeMiddle(), radius - edge.innerRadius(), 1e-9);
                assertEquals(design.seamRadius(), edge.jointRadius(), 1e-9);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#examples")
    void keepWhatIsInsideTheSphereAndCutItIntoBands(String example) {
        Design design = DrawnDesigns.example(example);
        for (Panel panel : design.panels()) {
            SectionPanel section = SectionPanel.corner(design, panel);
            double strips = section.strips().stream()
                    .mapToDouble(strip -> strip.polygon().area())
                    .sum();
            assertEquals(section.left().area(), strips, 1e-9 * strips);
            section.left()
                    .points()
                    .forEach(point -> assertTrue(
                            Math.hypot(point.x(), point.y()) <= design.sphereRadius() + Flattening.TOLERANCE));
        }
    }
}
