package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Stocks;
import org.orbwright.stock.RackBoard.Use;

/** What becomes of the boards on the rack. */
@Slow
class RackOutcomeTest {
    private static StockPlan plan(ObjectNode json) {
        return Stocks.planned("rack", json).plan();
    }

    /** One design, all of maple, on a rack of which the first boards suffice; the last one is dear. */
    private static StockPlan oneSphere() {
        ObjectNode request = Stocks.oneWood(1);
        Stocks.boards(
                request,
                "[{'species':'sugar maple','length':1250,'width':200,'thickness':52,'count':9,'price':1},"
                        + "{'species':'sugar maple','length':100,'width':50,'thickness':20,'count':4},"
                        + "{'species':'black walnut','length':1250,'width':200,'thickness':52,'count':2},"
                        + "{'name':'heirloom','species':'sugar maple','length':1250,'width':200,'thickness':52,"
                        + "'price':500}]");
        return plan(request);
    }

    @Test
    void everyKindOfBoardIsSaidToBeCutSpareTooSmallOrNotNeeded() {
        List<RackBoard> rack = oneSphere().rack();
        assertEquals(
                List.of(Use.CUT, Use.TOO_SMALL, Use.NOT_NEEDED, Use.SPARE),
                rack.stream().map(RackBoard::use).toList());
        assertEquals(9, rack.get(0).cut() + rack.get(0).left());
        assertEquals(List.of(0, 4), List.of(rack.get(1).cut(), rack.get(1).left()));
        assertEquals(List.of(0, 2), List.of(rack.get(2).cut(), rack.get(2).left()));
        assertEquals("heirloom", rack.get(3).name());
    }

    @Test
    void boardsOfTheRackAndOffersAreToldApart() {
        List<RackBoard> rack = oneSphere().rack();
        assertEquals(List.of(1, 2, 3, 4), rack.stream().map(RackBoard::board).toList());
        RackBoard offer = Stocks.bought().plan().rack().get(0);
        assertNull(offer.board());
        assertEquals(1, offer.offer());
        assertEquals(List.of(2, 0), List.of(offer.cut(), offer.left()));
    }

    @Test
    void segmentsThatNoBlankHoldsAreNotPlanned() {
        StockPlan plan = plan(Stocks.shortBlanks());
        assertEquals(1, plan.unplanned().size());
        assertEquals(120, plan.unplanned().get(0).segments());
        assertFalse(plan.complete());
    }

    @Test
    void aBoardWithoutACountIsOne() {
        ObjectNode request = Stocks.oneWood(1);
        String board = "{'species':'sugar maple','length':1250,'width':200,'thickness':52";
        Stocks.boards(request, "[" + board + ",'count':2000}," + board + "}]");
        ImpossibleDesignException refused = assertThrows(ImpossibleDesignException.class, () -> plan(request));
        assertEquals("2001", refused.violations().get(0).rejected());
    }
}
