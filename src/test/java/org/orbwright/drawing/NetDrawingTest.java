package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.orbwright.assembly.AssemblyRequest;
import org.orbwright.assembly.Net;
import org.orbwright.assembly.Net.Closing;
import org.orbwright.assembly.Net.NetEdge;
import org.orbwright.assembly.Net.NetPanel;
import org.orbwright.assembly.NetCalculator;
import org.orbwright.assembly.NetForm;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.fixture.Slow;
import org.orbwright.quantity.Numbering;

/** The panels laid flat, read back from the drawing. */
@Slow
class NetDrawingTest {
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final String NUMBER = "[0-9]+";

    private static Design design(String solid) {
        return DrawnDesigns.on(solid, 0, 30, 0.5, null);
    }

    private static List<Label> numbers(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .filter(label -> label.anchor() == Anchor.MIDDLE && label.text().matches(NUMBER))
                .toList();
    }

    private static List<List<Coordinate>> lines(Drawing drawing, Pen pen) {
        List<List<Coordinate>> parts = new ArrayList<>();
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Line line && line.pen() == pen) {
                parts.addAll(DrawnPaths.parts(line.path()));
            }
        }
        return parts;
    }

    /** A panel on the sheet, whose place follows from the layout's size and the sheet's. */
    private static Polygon onSheet(NetPanel panel, Net net, Drawing drawing) {
        double left = (drawing.width() - net.width()) / 2;
        double bottom = 5.5 * Legend.letters(drawing.width()) + net.height();
        List<Coordinate> ring = new ArrayList<>();
        panel.corners().forEach(corner -> ring.add(new Coordinate(left + corner.x(), bottom - corner.y())));
        ring.add(ring.get(0));
        return JTS.createPolygon(ring.toArray(new Coordinate[0]));
    }

    /** Nets of the caps and of the whole solid, each on a sheet of its own. */
    private static List<Net> nets(Design design) {
        List<Net> nets = new ArrayList<>(NetCalculator.calculate(null, design));
        nets.addAll(NetCalculator.calculate(new AssemblyRequest(null, NetForm.WHOLE), design));
        return nets;
    }

    private static Drawing draw(Design design, BandSet set, Net... nets) {
        return NetDrawing.draw(design, design.sphere(set), List.of(nets));
    }

    private static Drawing draw(Design design, BandSet set) {
        return draw(design, set, NetCalculator.calculate(null, design).toArray(new Net[0]));
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#solids")
    void everyPanelHoldsItsNumberAndThoseOfItsFreeEdges(String solid) {
        Design design = design(solid);
        for (Net net : nets(design)) {
            Drawing drawing = draw(design, BandSet.UPRIGHT, net);
            List<Label> open = new ArrayList<>(numbers(drawing));
            for (NetPanel panel : net.panels()) {
                Polygon outline = onSheet(panel, net, drawing);
                List<String> expected = new ArrayList<>(List.of(String.valueOf(Numbering.of(panel.panel()))));
                panel.edges().stream()
                        .filter(edge -> edge.closing() != Closing.TAPED)
                        .map(NetEdge::partner)
                        .forEach(partner -> expected.add(String.valueOf(Numbering.of(partner))));
                List<Label> inside = open.stream()
                        .filter(label -> holds(outline, box(label)))
                        .toList();
                assertEquals(
                        expected.stream().sorted().toList(),
                        inside.stream().map(Label::text).sorted().toList(),
                        solid + " panel " + panel.panel());
                open.removeAll(inside);
            }
            assertEquals(List.of(), open);
        }
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#solids")
    void noLabelOverlapsAnother(String solid) {
        List<Envelope> boxes = draw(design(solid), BandSet.UPRIGHT).marks().stream()
                .filter(Label.class::isInstance)
                .map(mark -> box((Label) mark))
                .toList();
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertTrue(boxes.get(i).disjoint(boxes.get(j)), solid + " " + boxes.get(i) + boxes.get(j));
            }
        }
    }

    /** The room that a label takes: digits and capitals are about 0.72 of their size high. */
    private static Envelope box(Label label) {
        double width = Lettering.width(label.text(), label.size());
        double left = label.x() - (label.anchor() == Anchor.MIDDLE ? width / 2 : 0);
        return new Envelope(left, left + width, label.y() - 0.72 * label.size(), label.y());
    }

    private static boolean holds(Polygon outline, Envelope box) {
        return outline.getEnvelopeInternal().contains(box) && outline.contains(JTS.toGeometry(box));
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#solids")
    void hingesAreDashedOnceAndFreeEdgesDrawnOnEachPanel(String solid) {
        Design design = design(solid);
        for (Net net : nets(design)) {
            Drawing drawing = draw(design, BandSet.UPRIGHT, net);
            assertEquals(net.hinges().size(), lines(drawing, Pen.DASHED).size());
            assertEquals(net.last().size(), lines(drawing, Pen.THICK).size());
            assertEquals(2 * net.folding().size(), lines(drawing, Pen.MEDIUM).size());
        }
    }

    @Test
    void bandsCoverThePanels() {
        Design design = DrawnDesigns.example("truncated-icosidodecahedron");
        double drawn = 0;
        for (Mark mark : draw(design, BandSet.INVERTED).marks()) {
            if (mark instanceof Area area && area.path().toString().length() > 200) {
                for (List<Coordinate> part : DrawnPaths.parts(area.path())) {
                    drawn += JTS.createPolygon(part.toArray(new Coordinate[0])).getArea();
                }
            }
        }
        double surface = design.solid().surfaceArea() * design.edge() * design.edge();
        assertEquals(surface, drawn, 1e-3 * surface);
    }

    @Test
    void tellsUprightFromInverted() {
        Design twoSets = DrawnDesigns.example("dodecahedron-two-spheres");
        assertNotEquals(
                SvgWriter.write(draw(twoSets, BandSet.UPRIGHT)), SvgWriter.write(draw(twoSets, BandSet.INVERTED)));
        Design oneSet = DrawnDesigns.example("cube-with-chevrons");
        assertEquals(
                draw(oneSet, BandSet.UPRIGHT).marks().size(),
                draw(oneSet, BandSet.INVERTED).marks().size());
    }

    /** A panel's own number is white on ink, a partner's is ink without a disc. */
    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#solids")
    void panelsNumbersDoNotLookLikePartners(String solid) {
        Design design = design(solid);
        Drawing drawing = draw(design, BandSet.UPRIGHT);
        List<Integer> onDiscs = numbers(drawing).stream()
                .filter(label -> label.letters() == Letters.REVERSED)
                .map(label -> Integer.valueOf(label.text()))
                .sorted()
                .toList();
        int faces = design.solid().faces().size();
        assertEquals(IntStream.rangeClosed(1, faces).boxed().toList(), onDiscs);
        assertEquals(
                faces, drawing.marks().stream().filter(Ink.class::isInstance).count());
        assertTrue(numbers(drawing).stream().allMatch(label -> label.letters() != Letters.PLAIN));
    }

    /** Without the gap a hinge lies on the rims of both panels, with it half the gap from each. */
    @Test
    void hingesLieMidwayBetweenTheRims() {
        Design design = DrawnDesigns.example("dodecahedron-with-land");
        for (Net net : nets(design)) {
            Drawing drawing = draw(design, BandSet.UPRIGHT, net);
            List<List<Coordinate>> drawn = lines(drawing, Pen.DASHED);
            for (int i = 0; i < drawn.size(); i++) {
                var hinge = net.hinges().get(i);
                var line = JTS.createLineString(drawn.get(i).toArray(new Coordinate[0]));
                for (int panel : new int[] {hinge.panel(), hinge.neighbour()}) {
                    double distance = onSheet(net.panel(panel), net, drawing).distance(line);
                    assertEquals(hinge.gap() / 2, distance, 2e-3);
                }
            }
        }
    }

    private static Drawing net(Design design) {
        return draw(design, BandSet.UPRIGHT);
    }

    @Test
    void theCaptionSaysWhereTheTapeIsAndHowFarApartPanelsLie() {
        String land = net(DrawnDesigns.example("dodecahedron-with-land")).description();
        assertTrue(land.contains("tape on the outer faces, from which the panels fold away: turn the"), land);
        assertTrue(land.contains("Hinged panels lie 4.21 mm apart"), land);
        String several =
                net(DrawnDesigns.on("truncated-icosahedron", 0, 30, 1, null)).description();
        assertTrue(several.contains("Hinged panels lie 0.64 mm to 0.71 mm apart"), several);
        assertFalse(
                net(DrawnDesigns.example("cube-with-chevrons")).description().contains("apart"));
    }

    @Test
    void saysWhichPanelHangsOnWhich() {
        String description = draw(design("cube"), BandSet.UPRIGHT).description();
        assertTrue(description.contains("6 panels of a cube"), description);
        assertTrue(description.contains(": 2 on 1,"), description);
    }
}
