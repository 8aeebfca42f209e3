package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.Sets;
import org.orbwright.drawing.SectionPanel.Strip;
import org.orbwright.fixture.Designs;
import org.orbwright.sphere.SphereCalculator;
import org.orbwright.sphere.SphereSizing.FaceSizing;

/** Sections have the walls and distances that are computed. */
class SectionPanelTest {
    /** On a cube of 200 mm the first one and the last one are wide enough to be seen at the corners. */
    private static final List<BandRequest> WIDE = Designs.widths(46.0, 6.0, null);

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#examples")
    void haveTheWallsThatAreComputed(String example) {
        Design design = DrawnDesigns.example(example);
        double radius = design.sphereRadius();
        for (int i = 0; i < design.panels().size(); i++) {
            Panel panel = design.panels().get(i);
            FaceSizing sizing = SphereCalculator.calculate(design).faces().get(i);
            SectionPanel corner = SectionPanel.corner(design, panel, BandSet.UPRIGHT);
            assertEquals(sizing.wall().corner(), radius - corner.innerRadius(), 1e-9);
            assertEquals(sizing.removal().corner(), corner.outerRadius() - radius, 1e-9);
            assertEquals(sizing.cornerRadius(), corner.jointRadius(), 1e-9);
            for (Piece piece : panel.pieces()) {
                SectionPanel edge = SectionPanel.edge(design, panel, piece, BandSet.UPRIGHT);
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
            SectionPanel section = SectionPanel.corner(design, panel, BandSet.UPRIGHT);
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

    @Test
    void bandsLieAsInTheSetThatThePanelIsMadeFrom() {
        Design design = Designs.of("cube").thickness(60).bands(WIDE).build();
        Panel panel = design.panels().get(0);
        for (boolean corner : new boolean[] {false, true}) {
            List<Strip> upright = strips(design, panel, BandSet.UPRIGHT, corner);
            List<Strip> inverted = strips(design, panel, BandSet.INVERTED, corner);
            assertEquals(
                    List.of("black walnut", "sugar maple", "black cherry"),
                    upright.stream().map(Strip::species).toList());
            assertEquals(
                    List.of("black cherry", "sugar maple", "black walnut"),
                    inverted.stream().map(Strip::species).toList());
            // The bands at the tip end 48 and 46 mm from the normal.
            double along = corner ? Math.sqrt(2) : 1;
            assertEquals(48 * along, farthest(upright.get(2)), 1e-9);
            assertEquals(46 * along, farthest(inverted.get(2)), 1e-9);
        }
    }

    @Test
    void theOnlySetOfTiltedBandsIsDrawnWhateverIsAskedFor() {
        Design design =
                Designs.of("cube").bands(30, Designs.widths(30.0, 50.0, null)).build();
        Panel panel = design.panels().get(0);
        assertEquals(
                strips(design, panel, BandSet.UPRIGHT, true).stream()
                        .map(Strip::species)
                        .toList(),
                strips(design, panel, BandSet.INVERTED, true).stream()
                        .map(Strip::species)
                        .toList());
    }

    @Test
    void aDrawingShowsThePanelsOfTheFirstSphere() {
        Designs design = Designs.of("cube").thickness(60).bands(WIDE);
        List<Mark> upright = SectionDrawing.draw(design.build()).marks();
        List<Mark> inverted =
                SectionDrawing.draw(design.sets(Sets.INVERTED).build()).marks();
        assertNotEquals(written(upright), written(inverted));
        assertEquals(
                written(upright),
                written(SectionDrawing.draw(design.copies(2).build()).marks()));
        DesignRequest all = design.sets(Sets.BY_PANEL, List.of(1, 2, 3, 4, 5, 6));
        assertEquals(
                written(inverted), written(SectionDrawing.draw(Design.of(all)).marks()));
        // One panel and its neighbour beyond the seam differ.
        DesignRequest one = design.sets(Sets.BY_PANEL, List.of(1));
        String mixed = written(SectionDrawing.draw(Design.of(one)).marks());
        assertNotEquals(written(upright), mixed);
        assertNotEquals(written(inverted), mixed);
    }

    private static String written(List<Mark> marks) {
        return SvgWriter.write(new Drawing("title", "words", 280, 280, List.of(), marks));
    }

    private static List<Strip> strips(Design design, Panel panel, BandSet set, boolean corner) {
        return (corner
                        ? SectionPanel.corner(design, panel, set)
                        : SectionPanel.edge(design, panel, panel.pieces().get(0), set))
                .strips();
    }

    private static double farthest(Strip strip) {
        return strip.polygon().points().stream()
                .mapToDouble(point -> point.x())
                .max()
                .orElseThrow();
    }
}
