package org.orbwright.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** What fits into a column, and how two even columns are found; held against trying every way. */
class ColumnTest {
    private static final Block HEAD = block(3, false);

    private static Block block(double height, boolean leads) {
        return new Block(height, leads, null, (canvas, left, top) -> {});
    }

    private static Column column(List<Integer> heights) {
        List<Block> blocks = new ArrayList<>();
        heights.forEach(height -> blocks.add(block(height, height % 3 == 0)));
        return new Column(blocks);
    }

    @Property(seed = "417", tries = 300)
    void noOtherPlaceToPartGivesLowerColumns(
            @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 1, max = 40) Integer> heights) {
        Column column = column(heights);
        int half = column.half();
        double reached =
                Math.max(column.first(half).height(), column.without(half).height());
        int sum = heights.stream().mapToInt(Integer::intValue).sum();
        int before = 0;
        for (int i = 0; i < heights.size(); i++) {
            before += heights.get(i);
            if (heights.get(i) % 3 != 0) {
                assertTrue(reached <= Math.max(before, sum - before) + 1e-9);
            }
        }
        assertFalse(half < heights.size() && heights.get(half - 1) % 3 == 0, "a block that leads stands last");
    }

    @Test
    void whatLeadsGoesOnWithWhatFollows() {
        Column column = new Column(List.of(block(10, false), block(2, true), block(20, false)));
        assertEquals(1, column.fitting(15));
        assertEquals(3, column.fitting(32));
        assertEquals(0, column.fitting(9));
    }

    @Test
    void headsStandAgainOnTopOfTheNextColumn() {
        Block row = new Block(5, false, HEAD, (canvas, left, top) -> {});
        Column column = new Column(List.of(row, row, row, row));
        assertEquals(23, column.height());
        assertEquals(13, column.without(2).height());
        assertEquals(2, column.fitting(13));
        assertEquals(2, column.half());
    }
}
