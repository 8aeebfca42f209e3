package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.stock.CuttingModel.Outcome;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * Single searches for {@link HandSolvedPlansTest#WHOLE_OR_SEAMED}, by hand. Strips are 40 and 25 mm wide and as thick
 * as the boards, 20 mm; every kerf is 3 mm. A whole strip is 500 mm long, a piece of one 250 mm.
 */
class CuttingModelTest {
    private static final int NODES = 100_000;
    private static final long MILLISECONDS = 60_000;
    private static final double NO_LIMIT = 1e9;

    private static final MakeUp WHOLE = new MakeUp(List.of(0));

    private static final CuttingColumns COLUMNS = new CuttingColumns(HandSolvedPlansTest.WHOLE_OR_SEAMED);

    private static final List<Double> FREE = List.of(0.0, 0.0);
    private static final CuttingAim COST = new CuttingAim(List.of(9.0, 3.0), 0, FREE, List.of(0, 0));
    private static final CuttingAim SEAMS = new CuttingAim(FREE, 1, FREE, List.of(0, 0));
    /** Any strip may be missing; what is missing is counted by its width. */
    private static final CuttingAim COST_OF_SOME = new CuttingAim(List.of(9.0, 3.0), 0, FREE, List.of(2, 2));

    private static final CuttingAim MISSING = new CuttingAim(FREE, 0, List.of(40.0, 25.0), List.of(2, 2));

    private static CuttingModel model(CuttingColumns columns, CuttingAim aim) {
        return new CuttingModel(columns, aim, PriceFinder.find(columns, aim, 1000), NO_LIMIT);
    }

    /** What the best plan costs of those that cost no more than so much by another aim; it is proved to be the best. */
    private static double least(CuttingAim aim, CuttingAim other, double most) {
        CuttingModel model = model(COLUMNS, aim);
        model.costAtMost(other, most);
        Outcome outcome = model.solve(NODES, MILLISECONDS);
        assertTrue(outcome.exhausted());
        return outcome.plan().cost(COLUMNS.problem(), aim);
    }

    @Test
    void theCheapestPlanHasFourSeams() {
        Outcome outcome = model(COLUMNS, COST).solve(NODES, MILLISECONDS);
        assertTrue(outcome.exhausted());
        assertEquals(12, outcome.plan().cost(COLUMNS.problem(), COST), 1e-9);
        assertEquals(4, outcome.plan().seams(COLUMNS.problem()));
        assertEquals(12, least(COST, COST, 12), 1e-9);
    }

    @Test
    void fewerSeamsCostMore() {
        assertEquals(12, least(COST, SEAMS, 4), 1e-9);
        assertEquals(15, least(COST, SEAMS, 2), 1e-9);
    }

    @Test
    void whatMayCostLessHasMoreSeams() {
        assertEquals(2, least(SEAMS, COST, 15), 1e-9);
        assertEquals(4, least(SEAMS, COST, 14), 1e-9);
    }

    @Test
    void whereNoPlanIsLeftNoneIsFoundAndThatIsProved() {
        CuttingModel model = model(COLUMNS, COST);
        model.costAtMost(SEAMS, 1);
        Outcome outcome = model.solve(NODES, MILLISECONDS);
        assertNull(outcome.plan());
        assertTrue(outcome.exhausted());
    }

    /**
     * Two strips of 40 mm take four short boards anyway. One of 40 and two of 25 mm take three: two with a piece of
     * each, one with two of 25. One of each takes two.
     */
    @ParameterizedTest(name = "where {0} mm may be missing the rest costs {1}")
    @CsvSource({"0, 12", "25, 12", "40, 9", "65, 6", "130, 0"})
    void theFewerStripsTheFewerBoards(double most, double cost) {
        assertEquals(cost, least(COST_OF_SOME, MISSING, most), 1e-9);
    }

    @Test
    void aPlanSaysWhatIsMissing() {
        CuttingModel model = model(COLUMNS, COST_OF_SOME);
        model.costAtMost(MISSING, 65);
        assertEquals(List.of(1, 1), model.solve(NODES, MILLISECONDS).plan().missing());
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
        CuttingColumns columns = new CuttingColumns(problem);
        CuttingAim cost = new CuttingAim(List.of(9.0, 1.0), 0, List.of(0.0), List.of(0));
        CuttingAim seams = new CuttingAim(FREE, 1, List.of(0.0), List.of(0));
        for (double most : new double[] {2, 1.5}) {
            CuttingModel model = model(columns, cost);
            model.costAtMost(seams, most);
            CuttingPlan plan = model.solve(NODES, MILLISECONDS).plan();
            assertEquals(most == 2 ? 3 : 9, plan.cost(problem, cost), 1e-9);
        }
    }

    /** So few steps that one of its linear programs may have ended early, so that its word is not proof. */
    @Test
    void aSearchOfFewStepsProvesNothing() {
        assertFalse(model(COLUMNS, COST).solve(100, MILLISECONDS).exhausted());
        assertNotNull(model(COLUMNS, COST).solve(NODES, MILLISECONDS).plan());
    }
}
