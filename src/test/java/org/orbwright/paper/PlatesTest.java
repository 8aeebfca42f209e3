package org.orbwright.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.orbwright.document.PaperSize;
import org.orbwright.drawing.Drawing;
import org.orbwright.paper.Plates.Placed;
import org.orbwright.paper.Plates.Plate;

/** Tiles on pages, held against the rectangles of the JDK. */
class PlatesTest {
    private static Drawing drawing(double width, double height) {
        return new Drawing("Any", "any", width, height, List.of(), List.of());
    }

    @Property(seed = "2207", tries = 300)
    void everyTileIsOnAPageAndNoneHidesAnother(
            @ForAll @Size(min = 1, max = 8) List<@DoubleRange(min = 10, max = 700) Double> sizes,
            @ForAll PaperSize paper) {
        List<Drawing> templates = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            templates.add(drawing(sizes.get(i), sizes.get(sizes.size() - 1 - i)));
        }
        long tiles = 0;
        for (Plate plate : Plates.of(templates, paper)) {
            Rectangle2D page = new Rectangle2D.Double(
                    Tiling.MARGIN - 1e-9,
                    Tiling.MARGIN - 1e-9,
                    Tiling.roomAcross(paper, plate.landscape()) + 2e-9,
                    Tiling.roomDown(paper, plate.landscape()) + 2e-9);
            List<Rectangle2D> taken = new ArrayList<>();
            for (Placed placed : plate.tiles()) {
                Rectangle2D tile = new Rectangle2D.Double(
                        placed.left(),
                        placed.top(),
                        placed.tiling().tileWidth(placed.column()) - 1e-6,
                        placed.tiling().tileHeight() + Tiling.HEAD - 1e-6);
                assertTrue(page.contains(tile), tile + " is not on " + page);
                taken.forEach(other -> assertFalse(other.intersects(tile), tile + " hides " + other));
                taken.add(tile);
                tiles++;
            }
        }
        assertEquals(
                templates.stream()
                        .mapToLong(each -> Tiling.of(each, paper).tiles())
                        .sum(),
                tiles);
    }

    @Test
    void whatIsSmallSharesAPage() {
        List<Plate> plates = Plates.of(List.of(drawing(90, 80), drawing(90, 80), drawing(180, 120)), PaperSize.A4);
        assertEquals(1, plates.size());
        assertEquals(3, plates.get(0).tiles().size());
    }
}
