package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.drawing.PanelPlan.Place;
import org.orbwright.drawing.SegmentPatches.Patch;
import org.orbwright.fixture.Slow;
import org.orbwright.solid.Face;

/** Pictures of dots have the tone of each wood where its band should be. */
@Slow
class PictureTest {
    private static final int DOTS = 1400;
    /** Bands with less room than this, in dots, are not looked for. */
    private static final double ROOM = 8;

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#examples")
    void panelsShowEveryBandInItsPlace(String example) {
        Design design = DrawnDesigns.example(example);
        for (Panel panel : design.panels()) {
            Drawing drawing = PanelDrawing.draw(design, panel.face(), BandSet.INVERTED);
            BufferedImage image = EveryDrawingTest.image(drawing, DOTS);
            PanelPlan plan = PanelPlan.of(design, panel);
            Coordinate corner = outline(drawing);
            double x = corner.x - plan.corners().get(0).x();
            double y = corner.y - plan.corners().get(0).y();
            Place place = plan.places().get(1);
            BandSet set = panel.lamination().used(BandSet.INVERTED);
            SegmentPatches patches = new SegmentPatches(panel, place.piece(), set);
            for (Patch patch : patches.onSphere(design.sphereRadius(), Flattening.TOLERANCE)) {
                Point middle = patch.polygon().roomiest();
                if (patch.polygon().clearance(middle) * DOTS / drawing.width() > ROOM) {
                    Point at = place.at(middle);
                    look(design, drawing, image, x + at.x(), y + at.y(), patch);
                }
            }
        }
    }

    private static Coordinate outline(Drawing drawing) {
        return drawing.marks().stream()
                .filter(mark -> mark instanceof Line line && line.pen() == Pen.THICK)
                .map(mark -> DrawnPaths.parts(((Line) mark).path()).get(0).get(0))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#examples")
    void spheresShowEveryBandInItsPlace(String example) {
        Design design = DrawnDesigns.example(example);
        double radius = design.sphereRadius();
        Drawing drawing = SphereDrawing.draw(design, design.sphere(BandSet.UPRIGHT), 0.5, 0.4, false);
        BufferedImage image = EveryDrawingTest.image(drawing, DOTS);
        SphereView view = new SphereView(0.5, 0.4, radius);
        for (Face face : design.solid().faces()) {
            for (SegmentFrame frame : SegmentFrame.of(design, face)) {
                List<Patch> patches = new SegmentPatches(frame.panel(), frame.piece(), BandSet.UPRIGHT)
                        .onSphere(radius, Flattening.TOLERANCE);
                for (Patch patch : patches) {
                    Point middle = patch.polygon().roomiest();
                    Vector3D seen = view.project(frame.lift(middle, radius));
                    double room = patch.polygon().clearance(middle) * DOTS / drawing.width();
                    if (room > 2 * ROOM && seen.getZ() > 0.7 * radius) {
                        double sheet = radius * (1 + Legend.MARGIN);
                        look(design, drawing, image, sheet + seen.getX(), sheet - seen.getY(), patch);
                    }
                }
            }
        }
    }

    /** Between the lines of the hatch there are dots of the wood's own tone and of no other wood's. */
    private static void look(Design design, Drawing drawing, BufferedImage image, double x, double y, Patch patch) {
        Legend legend = new Legend(design);
        String species = patch.layer().band().species();
        int own = 0;
        int other = 0;
        int reach = (int) ROOM - 2;
        for (int dx = -reach; dx <= reach; dx++) {
            for (int dy = -reach; dy <= reach; dy++) {
                int column = (int) Math.round(x * DOTS / drawing.width()) + dx;
                int row = (int) Math.round(y * DOTS / drawing.width()) + dy;
                int colour = image.getRGB(column, row) & 0xffffff;
                for (String wood : legend.species()) {
                    if (colour == Integer.decode(Tones.fill(legend.tone(wood)))) {
                        own += wood.equals(species) ? 1 : 0;
                        other += wood.equals(species) ? 0 : 1;
                    }
                }
            }
        }
        assertTrue(own > 15 && other == 0, species + " at " + x + ", " + y + ": " + own + " own dots, " + other);
    }
}
