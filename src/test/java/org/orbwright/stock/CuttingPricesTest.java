package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.fixture.Trials;
import org.orbwright.stock.CuttingModel.Effort;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingPlan.RippedSections;
import org.orbwright.stock.CuttingProblem.MakeUp;

/** What follows from prices, whoever found them. */
class CuttingPricesTest {
    private static final int PRICES = 20;

    static LongStream seeds() {
        return Trials.below(60).map(seed -> 2000 + seed);
    }

    /** Some sound plans: the greedy one, and the best by each aim. */
    private static List<CuttingPlan> plans(CuttingColumns columns) {
        List<CuttingPlan> plans = new ArrayList<>(List.of(GreedyPlan.of(columns)));
        for (StockAim aim : StockAim.values()) {
            plans.add(CuttingPlanner.plan(columns.problem(), aim, new Effort(1_000_000, 60_000_000_000L))
                    .plan());
        }
        return plans;
    }

    private static CuttingPrices random(CuttingColumns columns, CuttingAim aim, Random random) {
        CuttingProblem problem = columns.problem();
        double most = Math.pow(10, 3 * random.nextDouble());
        double[][] prices =
                new double[problem.lengths().size()][problem.ripping().widths().size()];
        for (double[] ofLength : prices) {
            for (int width = 0; width < ofLength.length; width++) {
                ofLength[width] = random.nextInt(4) == 0 ? 0 : most * random.nextDouble();
            }
        }
        return new CuttingPrices(columns, aim, prices);
    }

    private static CuttingAim aim(CuttingProblem problem) {
        return new CuttingAim(
                problem.boards().stream().map(board -> board.cost()).toList(),
                2.5,
                problem.strips().stream()
                        .map(kind -> problem.ripping().widths().get(kind.width()))
                        .toList(),
                problem.strips().stream().map(kind -> kind.count()).toList());
    }

    @ParameterizedTest(name = "problem {0}")
    @MethodSource("seeds")
    void noPlanCostsLessThanTheBoundOfAnyPrices(long seed) {
        CuttingColumns columns = new CuttingColumns(SmallProblem.random(seed).toProblem());
        CuttingAim aim = aim(columns.problem());
        Random random = new Random(seed);
        List<CuttingPlan> plans = plans(columns);
        for (int i = 0; i < PRICES; i++) {
            double bound = random(columns, aim, random).bound();
            for (CuttingPlan plan : plans) {
                double cost = plan.cost(columns.problem(), aim);
                assertTrue(bound <= cost + 1e-9 * (1 + Math.abs(bound)), () -> bound + " is above " + cost);
            }
        }
    }

    @ParameterizedTest(name = "problem {0}")
    @MethodSource("seeds")
    void aPlanCostsAtLeastTheBoundAndTheExcessOfAllThatItUses(long seed) {
        CuttingColumns columns = new CuttingColumns(SmallProblem.random(seed).toProblem());
        CuttingAim aim = aim(columns.problem());
        Random random = new Random(seed);
        List<CuttingPlan> plans = plans(columns);
        for (int i = 0; i < PRICES; i++) {
            CuttingPrices prices = random(columns, aim, random);
            for (CuttingPlan plan : plans) {
                double least = prices.bound() + excess(columns, prices, plan);
                double cost = plan.cost(columns.problem(), aim);
                assertTrue(least <= cost + 1e-9 * (1 + Math.abs(prices.bound())), () -> least + " is above " + cost);
            }
        }
    }

    /** What all that a plan uses and spares costs above the bound, together. */
    private static double excess(CuttingColumns columns, CuttingPrices prices, CuttingPlan plan) {
        CuttingProblem problem = columns.problem();
        double sum = 0;
        int[] left = problem.boards().stream().mapToInt(board -> board.count()).toArray();
        for (CutBoards cut : plan.boards()) {
            sum += cut.count() * prices.excessOfPlan(cut.kind(), cut.sections());
            left[cut.kind()] -= cut.count();
        }
        for (int b = 0; b < left.length; b++) {
            sum += left[b] * prices.excessOfSparing(b);
        }
        for (RippedSections ripped : plan.sections()) {
            int section = columns.sections().indexOf(ripped.section());
            sum += ripped.count() * prices.excessOfPattern(section, ripped.length(), ripped.pattern());
        }
        for (int s = 0; s < problem.strips().size(); s++) {
            List<MakeUp> makeUps = problem.strips().get(s).makeUps();
            for (int m = 0; m < makeUps.size(); m++) {
                sum += plan.madeUp().get(s).get(m) * Math.max(0, prices.excessOfMakeUp(s, makeUps.get(m)));
            }
        }
        return sum;
    }

    @ParameterizedTest(name = "problem {0}")
    @MethodSource("seeds")
    void noExcessIsNegativeAndTheyAreSorted(long seed) {
        CuttingColumns columns = new CuttingColumns(SmallProblem.random(seed).toProblem());
        double[] excesses =
                random(columns, aim(columns.problem()), new Random(seed)).excesses();
        List<Double> sorted = new ArrayList<>();
        for (double excess : excesses) {
            sorted.add(excess);
        }
        assertTrue(sorted.stream().allMatch(excess -> excess >= -1e-9));
        Collections.sort(sorted);
        for (int i = 0; i < excesses.length; i++) {
            assertEquals(sorted.get(i), excesses[i]);
        }
    }
}
