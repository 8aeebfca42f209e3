package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.orbwright.design.Band;
import org.orbwright.design.Design;
import org.orbwright.segment.SegmentCalculator;
import org.orbwright.segment.SegmentPlan.FaceSegments;
import org.orbwright.segment.SegmentPlan.SegmentCut;

/** The marks on a blank: JTS measures what lies between their lines. */
class BlankTemplateTest {
    /** Coordinates are written to a thousandth of a millimetre. */
    private static final double WRITTEN = 0.002;

    private static List<List<Coordinate>> lines(Drawing drawing, Pen pen) {
        return drawing.marks().stream()
                .filter(mark -> mark instanceof Line line && line.pen() == pen)
                .map(mark -> DrawnPaths.parts(((Line) mark).path()).get(0))
                .toList();
    }

    /** The finished edges: all lines of the outline's pen but the outline itself. */
    private static List<List<Coordinate>> edges(Drawing drawing) {
        List<List<Coordinate>> lines = lines(drawing, Pen.MEDIUM);
        return lines.subList(1, lines.size());
    }

    private static double apart(List<Coordinate> one, List<Coordinate> other) {
        return Distance.pointToLinePerpendicular(one.get(0), other.get(0), other.get(1));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"deltoidal-hexecontahedron-upright-bands", "dodecahedron-two-spheres", "cube-with-chevrons"})
    void theKerfLiesBesideEveryFinishedEdge(String example) {
        Design design = DrawnDesigns.example(example);
        FaceSegments face = SegmentCalculator.calculate(design).faces().get(0);
        SegmentCut segment = face.segments().get(0);
        Drawing drawing = BlankTemplate.draw(design, design.panels().get(0), face, segment);
        List<List<Coordinate>> edges = edges(drawing);
        List<List<Coordinate>> kerfs = lines(drawing, Pen.DASHED);
        assertEquals(segment.perBlank() + 1, edges.size());
        assertTrue(kerfs.size() >= segment.perBlank(), kerfs::toString);
        // The kerf of the first edge lies outside a blank whose end is not trimmed.
        int outside = edges.size() - kerfs.size();
        for (int i = outside; i < edges.size(); i++) {
            List<Coordinate> kerf = kerfs.get(i - outside);
            assertEquals(design.kerf(), apart(kerf, edges.get(i)), WRITTEN);
            boolean right = kerf.get(0).x > edges.get(i).get(0).x;
            assertEquals(i > 0, right, "edge " + i);
        }
    }

    /** From the far side of a kerf to the next edge lies one stick, as wide as its segment is high. */
    @ParameterizedTest
    @ValueSource(strings = {"deltoidal-hexecontahedron-upright-bands", "cube-with-chevrons"})
    void aStickLiesBetweenAKerfAndTheNextEdge(String example) {
        Design design = DrawnDesigns.example(example);
        FaceSegments face = SegmentCalculator.calculate(design).faces().get(0);
        Drawing drawing = BlankTemplate.draw(
                design, design.panels().get(0), face, face.segments().get(0));
        List<List<Coordinate>> edges = edges(drawing);
        List<List<Coordinate>> kerfs = lines(drawing, Pen.DASHED);
        for (int i = 1; i < edges.size() - 1; i++) {
            assertEquals(face.baseDistance(), apart(kerfs.get(i), edges.get(i + 1)), WRITTEN);
        }
        assertTrue(drawing.marks().stream()
                .anyMatch(mark -> mark instanceof Label label && label.text().contains("sides of sticks")));
    }

    /** The numbers at both edges are measured on the drawing, from the blank's left end. */
    @ParameterizedTest
    @ValueSource(strings = {"dodecahedron-with-land", "cube-with-chevrons"})
    void eachCutHasItsPlacesAtBothEdges(String example) {
        Design design = DrawnDesigns.example(example);
        FaceSegments face = SegmentCalculator.calculate(design).faces().get(0);
        Drawing drawing = BlankTemplate.draw(
                design, design.panels().get(0), face, face.segments().get(0));
        double end = lines(drawing, Pen.MEDIUM).get(0).get(0).x;
        List<String> texts = drawing.marks().stream()
                .filter(Label.class::isInstance)
                .map(mark -> ((Label) mark).text())
                .toList();
        List<List<Coordinate>> edges = edges(drawing);
        for (int i = 0; i < edges.size(); i++) {
            for (Coordinate corner : edges.get(i)) {
                String text = i + ": " + design.unit().sayNumber(Math.round((corner.x - end) * 1e3) / 1e3);
                assertTrue(texts.contains(text), text + " is none of " + texts);
            }
        }
    }

    /** The widths of the bands lie between the glue lines, from the edge of the first band on. */
    @Test
    void glueLinesLieWhereTheBandsMeet() {
        Design design = DrawnDesigns.example("dodecahedron-with-land");
        FaceSegments face = SegmentCalculator.calculate(design).faces().get(0);
        Drawing drawing = BlankTemplate.draw(
                design, design.panels().get(0), face, face.segments().get(0));
        double first = lines(drawing, Pen.MEDIUM).get(0).stream()
                .mapToDouble(corner -> corner.y)
                .max()
                .orElseThrow();
        List<Band> bands = design.panels().get(0).lamination().bands();
        List<List<Coordinate>> glued = lines(drawing, Pen.THIN);
        assertEquals(bands.size() - 1, glued.size());
        double sum = 0;
        for (int i = 0; i < glued.size(); i++) {
            sum += bands.get(i).width();
            assertEquals(first - sum, glued.get(i).get(0).y, WRITTEN);
        }
    }
}
