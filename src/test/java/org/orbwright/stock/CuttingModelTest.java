package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.fixture.Slow;
import org.orbwright.stock.CuttingModel.Result;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * Single searches for {@link HandSolvedPlansTest#WHOLE_OR_SEAMED}, by hand. Strips are 40 and 25 mm wide and as thick
 * as the boards, 20 mm; every kerf is 3 mm. A whole strip is 500 mm long, a piece of one 250 mm.
 */
@Slow
class CuttingModelTest {
    private static final CuttingProblem PROBLEM = HandSolvedPlansTest.WHOLE_OR_SEAMED;
    private static final MakeUp WHOLE = new MakeUp(List.of(0));

    private static Effort effort() {
        return new Effort(10, 60_000_000_000L);
    }

    private static CuttingModel model() {
        return new CuttingModel(new CuttingColumns(PROBLEM));
    }

    /** What the best plan has of an aim, of those that have no more of another than so much; it is proved. */
    private static long least(CuttingAim aim, CuttingAim other, long most) {
        CuttingModel model = model();
        model.atMost(other, most);
        if (other != CuttingAim.MISSING) {
            model.atMost(CuttingAim.MISSING, 0);
        }
        Result result = model.least(aim, effort());
        assertTrue(result.ended());
        assertTrue(result.plan().isSound(PROBLEM));
        assertEquals(result.bound(), result.plan().count(PROBLEM, aim));
        return result.bound();
    }

    @Test
    void theCheapestPlanHasFourSeams() {
        assertEquals(12_0000, least(CuttingAim.COST, CuttingAim.MISSING, 0));
        assertEquals(4, least(CuttingAim.SEAMS, CuttingAim.COST, 12_0000));
    }

    @Test
    void fewerSeamsCostMore() {
        assertEquals(12_0000, least(CuttingAim.COST, CuttingAim.SEAMS, 4));
        assertEquals(15_0000, least(CuttingAim.COST, CuttingAim.SEAMS, 2));
    }

    @Test
    void whatMayCostLessHasMoreSeams() {
        assertEquals(2, least(CuttingAim.SEAMS, CuttingAim.COST, 15_0000));
        assertEquals(4, least(CuttingAim.SEAMS, CuttingAim.COST, 14_0000));
    }

    @Test
    void whereNoPlanIsLeftNoneIsFoundAndThatIsProved() {
        CuttingModel model = model();
        model.atMost(CuttingAim.MISSING, 0);
        model.atMost(CuttingAim.SEAMS, 1);
        Result result = model.least(CuttingAim.COST, effort());
        assertNull(result.plan());
        assertTrue(result.ended());
    }

    /** Three strips take three short boards: two of 25 and one of 40 mm. Two take two, and one takes two as well. */
    @ParameterizedTest(name = "where {0} strips may be missing the rest costs {1}")
    @CsvSource({"0, 12", "1, 9", "2, 6", "3, 3", "4, 0"})
    void theFewerStripsTheFewerBoards(long most, long cost) {
        assertEquals(cost * 10_000, least(CuttingAim.COST, CuttingAim.MISSING, most));
    }

    @Test
    @DisplayName(
            "hand calculation: three boards of 160 mm are a strip with two seams for 3, one of 500 mm is one for 9")
    void everySeamOfAStripCounts() {
        CuttingProblem problem = new CuttingProblem(
                new Ripping(List.of(40.0), List.of(3), 20, 3),
                List.of(480.0, 160.0),
                3,
                List.of(new BoardKind(500, 40, 20, 1, 9, 400_000), new BoardKind(160, 40, 20, 3, 1, 128_000)),
                List.of(new StripKind(0, 1, List.of(WHOLE, new MakeUp(List.of(1, 1, 1))))));
        for (int most : new int[] {2, 1}) {
            CuttingModel model = new CuttingModel(new CuttingColumns(problem));
            model.atMost(CuttingAim.MISSING, 0);
            model.atMost(CuttingAim.SEAMS, most);
            CuttingPlan plan = model.least(CuttingAim.COST, effort()).plan();
            assertEquals(most == 2 ? 3_0000 : 9_0000, plan.count(problem, CuttingAim.COST));
        }
    }

    @Test
    void aSearchWithHardlyAnyWorkClaimsNoMoreThanItKnows() {
        int open = 0;
        for (long seed = 0; seed < 12; seed++) {
            Result little = cheapest(SmallProblem.large(seed).toProblem(), 1e-9);
            Result much = cheapest(SmallProblem.large(seed).toProblem(), 10);
            assertTrue(much.ended(), "problem " + seed);
            assertTrue(little.bound() <= much.bound(), "problem " + seed);
            assertTrue(!little.ended() || little.bound() == much.bound(), "problem " + seed);
            open += little.ended() ? 0 : 1;
        }
        assertTrue(open > 0);
    }

    private static Result cheapest(CuttingProblem problem, double work) {
        CuttingColumns columns = new CuttingColumns(problem);
        CuttingModel model = new CuttingModel(columns);
        model.atMost(CuttingAim.MISSING, GreedyPlan.of(columns).count(problem, CuttingAim.MISSING));
        return model.least(CuttingAim.COST, new Effort(work, 60_000_000_000L));
    }

    @Test
    void aHintOfTheBestPlanIsKept() {
        CuttingPlan best = Solved.best(PROBLEM, StockAim.SEAMS).plan();
        CuttingModel model = model();
        model.hint(best);
        model.atMost(CuttingAim.MISSING, 0);
        model.atMost(CuttingAim.SEAMS, 2);
        model.atMost(CuttingAim.COST, 15_0000);
        assertEquals(
                best.madeUp(), model.least(CuttingAim.WASTE, effort()).plan().madeUp());
    }
}
