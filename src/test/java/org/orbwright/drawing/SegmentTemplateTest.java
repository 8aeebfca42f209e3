package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.orbwright.design.Band;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;

/** The template of a segment is measured, and compared with the widths of the strips as the document has them. */
class SegmentTemplateTest {
    /** Coordinates are written to a thousandth of a millimetre. */
    private static final double WRITTEN = 0.002;

    private static List<Coordinate> corners(Line line) {
        return DrawnPaths.parts(line.path()).get(0);
    }

    private static double lowest(List<Coordinate> corners) {
        return corners.stream().mapToDouble(corner -> corner.y).max().orElseThrow();
    }

    private static double highest(List<Coordinate> corners) {
        return corners.stream().mapToDouble(corner -> corner.y).min().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "dodecahedron-two-spheres, UPRIGHT",
        "dodecahedron-two-spheres, INVERTED",
        "rhombic-triacontahedron, UPRIGHT"
    })
    void glueLinesLieAsFarFromTheBaseAsIsWrittenBesideThem(String example, BandSet set) {
        Design design = DrawnDesigns.example(example);
        Panel panel = design.panels().get(0);
        Drawing drawing = SegmentTemplate.draw(design, panel, panel.sawn().get(0), set);
        List<Line> lines = drawing.marks().stream()
                .filter(Line.class::isInstance)
                .map(Line.class::cast)
                .toList();
        double base = lowest(corners(lines.get(0)));
        List<Band> bands = new ArrayList<>(panel.lamination().bands());
        if (set == BandSet.INVERTED) {
            Collections.reverse(bands);
        }
        List<String> distances = drawing.marks().stream()
                .filter(mark -> mark instanceof Label label && label.anchor() == Anchor.END)
                .map(mark -> ((Label) mark).text())
                .toList();
        assertEquals(bands.size() - 1, distances.size());
        double sum = 0;
        int count = 0;
        for (Line line : lines.subList(1, bands.size())) {
            assertEquals(Pen.THIN, line.pen());
            assertEquals(sum, base - lowest(corners(line)), WRITTEN);
            sum += bands.get(count).width();
            assertEquals(sum, base - highest(corners(line)), WRITTEN);
            assertEquals(design.unit().sayNumber(sum), distances.get(count));
            count++;
        }
        assertTrue(drawing.title()
                .contains(panel.lamination().sets() == 2 ? set.name().toLowerCase(Locale.ROOT) : "base"));
    }
}
