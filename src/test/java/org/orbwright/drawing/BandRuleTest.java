package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.LengthUnit;

/** Rules beside segments and panels, measured on the sheet and held against the widths that the design states. */
class BandRuleTest {
    /** Coordinates are written to a thousandth of a millimetre. */
    private static final double WRITTEN = 0.002;

    private static final Double[] THIN = {2.5, 3.0, 1.2, 4.0, 2.0, 1.5, 3.5, 2.2, 1.8, null};
    private static final GeometryFactory SHEET = new GeometryFactory();

    private static Design thin(LengthUnit unit) {
        Designs metric = Designs.of("dodecahedron").bands(Designs.widths(THIN));
        return (unit == LengthUnit.MM ? metric : metric.times(1 / 25.4).in(LengthUnit.IN)).build();
    }

    private static Drawing segment(Design design, Panel panel, BandSet set) {
        return SegmentDrawing.draw(design, panel, panel.pieces().get(0), set);
    }

    /** Both pictures of the first panel. */
    private static List<Drawing> both(Design design, BandSet set) {
        Panel panel = design.facePanels().get(0);
        return List.of(segment(design, panel, set), PanelDrawing.draw(design, panel.face(), set));
    }

    /** The rectangles of the rule, from its lower end: the only areas with four upright corners above the key. */
    private static List<Envelope> boxes(Drawing drawing, int bands) {
        List<Envelope> boxes = new ArrayList<>();
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Area area) {
                Envelope box = new Envelope();
                List<Coordinate> corners = DrawnPaths.parts(area.path()).get(0);
                corners.forEach(box::expandToInclude);
                boolean upright = corners.stream()
                        .allMatch(c -> (c.x == box.getMinX() || c.x == box.getMaxX())
                                && (c.y == box.getMinY() || c.y == box.getMaxY()));
                if (upright && boxes.size() < bands) {
                    boxes.add(box);
                }
            }
        }
        return boxes;
    }

    @ParameterizedTest
    @ValueSource(strings = {"UPRIGHT", "INVERTED"})
    void drawsEveryGlueLineAtItsDistanceFromTheBase(String set) {
        Design design = thin(LengthUnit.MM);
        double base = design.facePanels().get(0).baseDistance();
        double rest = base - 21.7;
        List<Double> widths = new ArrayList<>(List.of(2.5, 3.0, 1.2, 4.0, 2.0, 1.5, 3.5, 2.2, 1.8, rest));
        if (set.equals("INVERTED")) {
            Collections.reverse(widths);
        }
        for (Drawing drawing : both(design, BandSet.valueOf(set))) {
            List<Envelope> boxes = boxes(drawing, 10);
            double start = boxes.get(0).getMaxY();
            double expected = 0;
            List<String> labels = labels(drawing);
            for (int i = 0; i < 10; i++) {
                assertEquals(expected, start - boxes.get(i).getMaxY(), WRITTEN);
                assertEquals(widths.get(i), boxes.get(i).getHeight(), WRITTEN);
                expected += widths.get(i);
                assertTrue(labels.contains(plain(expected)), plain(expected) + " in " + labels);
                int number = set.equals("UPRIGHT") ? i + 1 : 10 - i;
                assertTrue(labels.contains(number + ": " + plain(widths.get(i))), labels.toString());
            }
            assertEquals(base, expected, 1e-9);
        }
    }

    private static String plain(double value) {
        return new BigDecimal(value)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static List<String> labels(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Label.class::isInstance)
                .map(mark -> ((Label) mark).text())
                .toList();
    }

    /** The rule of straight bands stands beside the segment: each glue line of both lies at the same height. */
    @Test
    void standsLevelWithTheSegment() {
        Design design = thin(LengthUnit.MM);
        Drawing drawing = segment(design, design.facePanels().get(0), BandSet.UPRIGHT);
        List<Envelope> drawn = drawing.marks().stream()
                .filter(Area.class::isInstance)
                .limit(10)
                .map(mark -> {
                    Envelope box = new Envelope();
                    DrawnPaths.parts(((Area) mark).path()).get(0).forEach(box::expandToInclude);
                    return box;
                })
                .toList();
        List<Envelope> boxes = boxes(drawing, 10);
        for (int i = 0; i < 10; i++) {
            assertEquals(drawn.get(i).getMinY(), boxes.get(i).getMinY(), WRITTEN);
            assertEquals(drawn.get(i).getMaxY(), boxes.get(i).getMaxY(), WRITTEN);
        }
    }

    /** Tilted by 30 degrees on a square of 160 mm: from the right corner, 80 cos 30 + 80 sin 30 to its left one. */
    @Test
    void measuresTiltedBandsSquareToThemFromTheRing() {
        Design design = Designs.of("cube")
                .acrossFlats(160)
                .bands(30, Designs.widths(70.0, 14.0, null))
                .build();
        for (Drawing drawing : both(design, BandSet.UPRIGHT)) {
            List<Envelope> boxes = boxes(drawing, 3);
            double extent = 80 * (Math.cos(Math.PI / 6) + Math.sin(Math.PI / 6));
            assertEquals(extent, boxes.get(0).getMaxY() - boxes.get(2).getMinY(), WRITTEN);
            assertEquals(14, boxes.get(1).getHeight(), WRITTEN);
            assertTrue(labels(drawing).containsAll(List.of("ring, mm", "70", "84", plain(extent))));
            assertTrue(drawing.description().contains("from the corner with the ring, square to the bands"));
        }
    }

    static Stream<Design> designs() {
        return Stream.of(
                thin(LengthUnit.MM),
                thin(LengthUnit.IN),
                DrawnDesigns.example("cube-with-chevrons"),
                DrawnDesigns.example("deltoidal-hexecontahedron-upright-bands"),
                DrawnDesigns.example("truncated-icosahedron"),
                DrawnDesigns.on("icosahedron", 0, 30, 3, null),
                DrawnDesigns.on("tetrahedron", -35, 30, 0, null));
    }

    @ParameterizedTest
    @MethodSource("designs")
    void lettersKeepClearOfLettersAndLines(Design design) {
        for (Drawing drawing : both(design, BandSet.INVERTED)) {
            List<Label> plain = drawing.marks().stream()
                    .filter(Label.class::isInstance)
                    .map(Label.class::cast)
                    .toList();
            List<Envelope> boxes = plain.stream().map(BandRuleTest::box).toList();
            for (int i = 0; i < boxes.size(); i++) {
                for (int k = 0; k < i; k++) {
                    assertFalse(boxes.get(i).intersects(boxes.get(k)), plain.get(i) + " on " + plain.get(k));
                }
                if (plain.get(i).anchor() == Anchor.MIDDLE
                        && plain.get(i).text().length() < 3) {
                    continue; // Numbers of bands stand on balloons, which cover what lies below.
                }
                clearOfLines(drawing, plain.get(i), boxes.get(i));
            }
        }
    }

    private static void clearOfLines(Drawing drawing, Label label, Envelope box) {
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Line line && !line.path().toString().contains("A")) {
                for (List<Coordinate> part : DrawnPaths.parts(line.path())) {
                    LineString course = SHEET.createLineString(part.toArray(new Coordinate[0]));
                    assertFalse(course.intersects(SHEET.toGeometry(box)), label + " on " + line.pen());
                }
            }
        }
    }

    /** The letters from their base line up; what hangs below it is little. */
    private static Envelope box(Label label) {
        double width = Lettering.width(label.text(), label.size());
        double left =
                label.x() - (label.anchor() == Anchor.START ? 0 : label.anchor() == Anchor.MIDDLE ? width / 2 : width);
        return new Envelope(left, left + width, label.y() - 0.75 * label.size(), label.y());
    }

    /** The bevel leaves the inner face where the thickness below the land goes with the tangent of the blade's tilt. */
    @Test
    void drawsTheBevelInAPenOfItsOwn() {
        Design design = DrawnDesigns.on("dodecahedron", 0, 30, 3, null);
        Drawing drawing = segment(design, design.facePanels().get(0), BandSet.UPRIGHT);
        List<Line> bevels = drawing.marks().stream()
                .filter(mark -> mark instanceof Line line && line.pen() == Pen.CHAIN)
                .map(Line.class::cast)
                .toList();
        assertEquals(1, bevels.size());
        Coordinate end = DrawnPaths.parts(bevels.get(0).path()).get(0).get(0);
        double tilt = Math.toRadians(90 - 58.28252558853899);
        double base = boxes(drawing, 3).get(0).getMaxY();
        assertEquals(27 * Math.tan(tilt), base - end.y, WRITTEN);
        Label name = drawing.marks().stream()
                .filter(mark -> mark instanceof Label label && label.text().equals("bevel"))
                .map(Label.class::cast)
                .findFirst()
                .orElseThrow();
        assertEquals(end.y, name.y() - 0.36 * name.size(), WRITTEN);
        assertTrue(SvgWriter.write(drawing).contains("stroke-dasharray"));
    }

    @Test
    void titlesNameTheSet() {
        for (BandSet set : BandSet.values()) {
            for (Drawing drawing : both(thin(LengthUnit.MM), set)) {
                assertTrue(drawing.title().endsWith(", " + Legend.setName(set)), drawing.title());
            }
        }
    }

    @Test
    void writesFractionsOfAnInch() {
        Design design = thin(LengthUnit.IN);
        Drawing drawing = segment(design, design.facePanels().get(0), BandSet.UPRIGHT);
        // 2.5 mm are 0.0984 in, and 3/32 in are 0.09375.
        String told = drawing.description().replace('\u00a0', ' ');
        assertTrue(told.contains("0.098 in (3/32 + 0.005) wide"), told);
    }
}
