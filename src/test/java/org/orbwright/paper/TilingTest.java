package org.orbwright.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.orbwright.document.PaperSize;
import org.orbwright.drawing.Drawing;
import org.orbwright.paper.Tiling.Cross;

/** Templates over pages. */
class TilingTest {
    private static Tiling tiling(double width, double height, PaperSize paper) {
        return Tiling.of(new Drawing("", "", width, height, List.of(), List.of()), paper);
    }

    @Property(seed = "1922")
    void theTilesCoverTheDrawingAndNoneIsEmpty(
            @ForAll @DoubleRange(min = 1, max = 3000) double width,
            @ForAll @DoubleRange(min = 1, max = 3000) double height,
            @ForAll PaperSize paper) {
        Tiling tiling = tiling(width, height, paper);
        assertTrue(tiling.left(tiling.columns() - 1) + tiling.tileWidth() >= width - 1e-9);
        assertTrue(tiling.top(tiling.rows() - 1) + tiling.tileHeight() >= height - 1e-9);
        assertTrue(tiling.columns() == 1 || tiling.left(tiling.columns() - 1) + Tiling.OVERLAP < width + 1e-9);
        assertTrue(tiling.rows() == 1 || tiling.top(tiling.rows() - 1) + Tiling.OVERLAP < height + 1e-9);
    }

    @Property(seed = "1937")
    void everyCrossLiesOnAtLeastTwoTiles(
            @ForAll @DoubleRange(min = 1, max = 2000) double width,
            @ForAll @DoubleRange(min = 1, max = 2000) double height) {
        Tiling tiling = tiling(width, height, PaperSize.A4);
        for (Cross cross : tiling.crosses()) {
            int tiles = 0;
            for (int row = 0; row < tiling.rows(); row++) {
                for (int column = 0; column < tiling.columns(); column++) {
                    double x = cross.x() - tiling.left(column);
                    double y = cross.y() - tiling.top(row);
                    tiles += x > 0 && x < tiling.tileWidth() && y > 0 && y < tiling.tileHeight() ? 1 : 0;
                }
            }
            assertTrue(tiles >= 2, cross + " of " + tiling);
        }
        int sides = tiling.rows() * (tiling.columns() - 1) + tiling.columns() * (tiling.rows() - 1);
        assertEquals(2 * sides, tiling.crosses().size());
    }

    @Test
    void whatIsWideLiesAcross() {
        assertTrue(tiling(250, 150, PaperSize.A4).landscape());
        assertEquals(1, tiling(250, 150, PaperSize.A4).tiles());
        assertFalse(tiling(150, 230, PaperSize.A4).landscape());
    }
}
