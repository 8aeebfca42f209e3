package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.fixture.Stocks;
import org.orbwright.fixture.Stocks.Planned;
import org.orbwright.stock.CutBoard.LaneCut;
import org.orbwright.stock.CutBoard.Section;
import org.orbwright.stock.CutBoard.StripCut;

/** What is left over is kept if one more strip or piece could be cut from it, by hand. */
class KeptWoodTest {
    /** In millimetres; a few sums. */
    private static final double EXACT = 1e-9;

    /** Pieces of 150 mm at least, strips of 21 mm at least, sticks of 30 mm. */
    @ParameterizedTest
    @CsvSource({
        "150, 21, 30, true",
        "149.9, 21, 30, false",
        "150, 30, 21, true",
        "150, 20.9, 30, false",
        "150, 200, 20.9, false",
        "150, 29.9, 29.9, false",
        "150, 20.9, 200, false"
    })
    void asLongAsThePieceAndAsWideAndThickAsTheStrip(double length, double width, double thickness, boolean kept) {
        assertEquals(kept, new KeptWood(150, 21, 30).isKept(length, width, thickness));
    }

    /**
     * One strip of 1200 by 30 by 10 mm is needed, and every kerf takes 3 mm. So a board of 2403 mm keeps 1200 mm of its
     * length; of one that is a hundredth shorter the rest is waste.
     */
    @ParameterizedTest
    @CsvSource({"2403, 1200, 0", "2402.99, 0, 1199.99"})
    void aLengthIsKeptIfAStripFits(double length, double kept, double waste) {
        CutBoard board = board(length, 30, 10);
        Section last = board.sections().get(board.sections().size() - 1);
        assertEquals(kept > 0, last.isKept());
        assertEquals(waste, board.lengthWaste(), EXACT);
        assertEquals(kept > 0 ? kept : 1200, last.to() - last.from(), EXACT);
        assertLast(board, kept > 0, length - 1203, 30, 10);
    }

    @ParameterizedTest
    @CsvSource({"63, 30, 0", "62.99, 0, 29.99"})
    void aWidthIsKeptIfAStripFits(double width, double kept, double waste) {
        CutBoard board = board(1200, width, 10);
        List<LaneCut> lanes = board.sections().get(0).lanes();
        LaneCut last = lanes.get(lanes.size() - 1);
        assertEquals(kept > 0, last.isKept());
        assertEquals(waste, board.sections().get(0).widthWaste(), EXACT);
        assertEquals(kept > 0 ? kept : 30, last.to() - last.from(), EXACT);
        assertLast(board, kept > 0, 1200, width - 33, 10);
    }

    @ParameterizedTest
    @CsvSource({"23, 10, 0", "22.99, 0, 9.99"})
    void aThicknessIsKeptIfAStripFits(double thickness, double kept, double waste) {
        CutBoard board = board(1200, 30, thickness);
        LaneCut lane = board.sections().get(0).lanes().get(0);
        StripCut last = lane.strips().get(lane.strips().size() - 1);
        assertEquals(kept > 0 ? CutPart.KEPT : CutPart.STRIP, last.part());
        assertEquals(waste, lane.thicknessWaste(), EXACT);
        assertEquals(10, last.to() - last.from(), EXACT);
        assertLast(board, kept > 0, 1200, 30, thickness - 13);
    }

    private static CutBoard board(double length, double width, double thickness) {
        StockPlan plan = planned(length, width, thickness).plan();
        assertEquals(1, plan.strips().get(0).needed());
        assertEquals(1, plan.boards().size());
        return plan.boards().get(0);
    }

    /** The cut list ends with what is kept, or says with its last cut what is waste. */
    private static void assertLast(CutBoard board, boolean kept, double length, double width, double thickness) {
        Planned planned = planned(board.length(), board.width(), board.thickness());
        List<CutStep> steps = CutList.of(planned.plan(), planned.design().unit());
        if (kept) {
            CutStep step = steps.stream()
                    .filter(one -> one.part() == CutPart.KEPT)
                    .reduce((one, other) -> other)
                    .orElseThrow();
            assertEquals(length, step.length(), EXACT);
            assertEquals(width, step.width(), EXACT);
            assertEquals(thickness, step.thickness(), EXACT);
            assertTrue(steps.stream().allMatch(one -> one.waste() == null));
        } else {
            assertTrue(steps.stream().noneMatch(one -> one.part() == CutPart.KEPT));
            List<Double> waste =
                    steps.stream().map(CutStep::waste).filter(Objects::nonNull).toList();
            assertEquals(1, waste.size());
            assertTrue(
                    List.of(length, width, thickness).stream().anyMatch(one -> Math.abs(one - waste.get(0)) < EXACT),
                    waste::toString);
        }
    }

    /** A cube 60 mm across flats has 24 segments 30 mm high, all of them from one blank of 1200 mm. */
    private static Planned planned(double length, double width, double thickness) {
        ObjectNode request = (ObjectNode) Stocks.read("{'design':{'unit':'mm','solid':'cube','copies':1,"
                + "'size':{'by':'ACROSS_FLATS','value':60},'panel':{'thickness':10},"
                + "'laminations':[{'bands':[{'species':'red alder','width':30}]}],"
                + "'saw':{'kerf':3,'endTrim':5},'blank':{'length':1200},'sphere':{'turningAllowance':1}}}");
        Stocks.boards(
                request,
                "[{'species':'red alder','surface':'SURFACED','length':" + length + ",'width':" + width
                        + ",'thickness':" + thickness + "}]");
        return Stocks.planned("one strip", request);
    }
}
