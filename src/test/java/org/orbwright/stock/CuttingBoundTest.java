package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Trials;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.StripKind;

/** Bounds over all lengths of pieces, against plans with pieces of many lengths. Strips are 600 mm long. */
@Slow
class CuttingBoundTest {
    private static final double STRIP = 600;
    private static final double STICK = 20;
    private static final int RACKS = 25;
    private static final int NARROW_RACKS = 4;
    /** Steps of the pieces of which the best plan is made, and of boards, so that many fit exactly. */
    private static final int STEP = 25;

    static LongStream racks() {
        return Trials.below(RACKS);
    }

    static LongStream narrowRacks() {
        return Trials.below(NARROW_RACKS);
    }

    private static Effort ample() {
        return new Effort(100, 600_000_000_000L);
    }

    private static BoardKind board(double length, double width, int count, double cost) {
        return new BoardKind(length, width, STICK, count, cost, length * width * STICK);
    }

    /** A wood: boards, and so many strips of each width. */
    private record Wood(List<BoardKind> boards, List<Double> widths, int strips, SeamRules rules, double kerf) {
        CuttingProblem with(List<Double> lengths) {
            List<Integer> needed = Collections.nCopies(widths.size(), strips * (rules.most() + 1));
            List<StripKind> kinds = IntStream.range(0, widths.size())
                    .mapToObj(width -> new StripKind(width, strips, MakeUps.of(lengths, rules)))
                    .toList();
            return new CuttingProblem(new Ripping(widths, needed, STICK, 3), lengths, kerf, boards, kinds);
        }

        /** Bounds in the order of the aims, each over the plans that have no more than a plan of the aims before. */
        Map<CuttingAim, Long> bounds(List<Double> points, List<CuttingAim> aims, Map<CuttingAim, Long> counts) {
            CuttingBound bound = new CuttingBound(with(points.subList(0, 1)), PieceRanges.between(points, rules));
            assertTrue(bound.holds());
            Map<CuttingAim, Long> bounds = new EnumMap<>(CuttingAim.class);
            for (CuttingAim aim : aims) {
                bounds.put(aim, bound.least(aim, ample()));
                bound.atMost(aim, counts.get(aim));
            }
            return bounds;
        }
    }

    private static Map<CuttingAim, Long> counts(CuttingProblem problem, CuttingPlan plan) {
        Map<CuttingAim, Long> counts = new EnumMap<>(CuttingAim.class);
        for (CuttingAim aim : CuttingAim.values()) {
            counts.put(aim, plan.count(problem, aim));
        }
        return counts;
    }

    private static Wood random(long seed) {
        Random random = new Random(seed);
        int most = 1 + random.nextInt(2);
        double overlap = random.nextBoolean() ? 0 : STEP;
        double kerf = random.nextBoolean() ? 0 : 3;
        List<Double> widths = random.nextBoolean() ? List.of(40.0) : List.of(40.0, 25.0);
        List<BoardKind> boards = new ArrayList<>();
        for (int b = 1 + random.nextInt(3); b > 0; b--) {
            double length = 200 + STEP * random.nextInt(48) + kerf * random.nextInt(3);
            double width = List.of(40.0, 68.0, 83.0, 111.0).get(random.nextInt(4));
            boards.add(board(length, width, 1 + random.nextInt(2), 1 + random.nextInt(20)));
        }
        return new Wood(boards, widths, 1 + random.nextInt(4), new SeamRules(overlap, 150, 40, most), kerf);
    }

    /** A strip, then all lengths of pieces by steps from the shortest. */
    private static List<Double> fine(SeamRules rules) {
        List<Double> lengths = new ArrayList<>(List.of(STRIP));
        for (double length = rules.smallest(); length <= STRIP - rules.smallest() + rules.overlap(); length += STEP) {
            lengths.add(length);
        }
        return lengths;
    }

    private static List<Double> points(Wood wood, int most) {
        return new PieceLengths(STRIP, wood.rules(), wood.kerf(), List.of()).of(wood.boards(), most);
    }

    private static void assertNotAbove(
            Wood wood, List<Double> points, List<CuttingAim> aims, Map<CuttingAim, Long> counts) {
        wood.bounds(points, aims, counts)
                .forEach((aim, bound) ->
                        assertTrue(bound <= counts.get(aim), () -> bound + " " + aim + " for " + counts + ": " + wood));
    }

    @ParameterizedTest(name = "rack {0}")
    @MethodSource("racks")
    void noBoundIsAboveAPlanWithPiecesOfAFineGrid(long seed) {
        Wood wood = random(seed);
        CuttingProblem problem = wood.with(fine(wood.rules()));
        for (StockAim asked : StockAim.values()) {
            List<CuttingAim> aims = CuttingAim.inOrder(asked);
            CuttingPlan plan = Solved.planned(problem, aims, ample()).plan();
            assertTrue(plan.isSound(problem));
            for (int most : new int[] {1, 4, 9}) {
                assertNotAbove(wood, points(wood, most), aims, counts(problem, plan));
            }
        }
    }

    @ParameterizedTest(name = "rack {0}")
    @MethodSource("racks")
    void noBoundIsAboveAPlanWithPiecesOfLengthsThatComeOutWell(long seed) {
        Wood wood = random(seed);
        List<Double> lengths = points(wood, 24);
        CuttingProblem problem = wood.with(lengths);
        List<CuttingAim> aims = CuttingAim.inOrder(StockAim.COST);
        CuttingPlan plan = Solved.planned(problem, aims, ample()).plan();
        assertNotAbove(wood, lengths.subList(0, Math.min(9, lengths.size())), aims, counts(problem, plan));
    }

    /** Ranges between any points hold, not only between those that come out well. */
    @ParameterizedTest(name = "rack {0}")
    @MethodSource("racks")
    void noBoundOfRangesBetweenAnyPointsIsAboveAPlan(long seed) {
        Wood wood = random(seed);
        Random random = new Random(seed);
        CuttingProblem problem = wood.with(fine(wood.rules()));
        List<CuttingAim> aims = CuttingAim.inOrder(StockAim.WASTE);
        CuttingPlan plan = Solved.planned(problem, aims, ample()).plan();
        List<Double> points = new ArrayList<>(List.of(STRIP));
        random.doubles(6, 150, 450).forEach(points::add);
        assertNotAbove(wood, points, aims, counts(problem, plan));
    }

    @ParameterizedTest(name = "rack {0}")
    @MethodSource("racks")
    void theBoundOfMissingStripsIsReachedByMostSmallRacks(long seed) {
        Wood wood = random(seed);
        CuttingProblem problem = wood.with(fine(wood.rules()));
        List<CuttingAim> aims = List.of(CuttingAim.MISSING);
        Map<CuttingAim, Long> counts =
                counts(problem, Solved.planned(problem, aims, ample()).plan());
        long least = wood.bounds(points(wood, 9), aims, counts).get(CuttingAim.MISSING);
        assertTrue(least >= counts.get(CuttingAim.MISSING) - 1, () -> least + " for " + counts);
    }

    private static Map<CuttingAim, Long> bounds(Wood wood, long missing, long cost) {
        Map<CuttingAim, Long> counts = new EnumMap<>(CuttingAim.class);
        counts.put(CuttingAim.MISSING, missing);
        counts.put(CuttingAim.COST, 10_000 * cost);
        counts.put(CuttingAim.SEAMS, 1_000L);
        return wood.bounds(points(wood, 9), List.of(CuttingAim.MISSING, CuttingAim.COST, CuttingAim.SEAMS), counts);
    }

    private static Wood oneWidth(int strips, double kerf, SeamRules rules, BoardKind... boards) {
        return new Wood(List.of(boards), List.of(40.0), strips, rules, kerf);
    }

    @Test
    @DisplayName("hand calculation: two boards of 900 mm are three strips of 600 mm, one of them 300 + 300 mm")
    void threeStripsOfTwoBoardsWithoutALoss() {
        Wood wood = oneWidth(3, 0, new SeamRules(0, 150, 40, 1), board(900, 40, 2, 5));
        assertEquals(
                Map.of(CuttingAim.MISSING, 0L, CuttingAim.COST, 100_000L, CuttingAim.SEAMS, 1L), bounds(wood, 0, 10));
    }

    @Test
    @DisplayName("hand calculation: with a kerf of 3 mm in each, two boards of 900 mm are 1794 mm, less than 3 x 600")
    void aKerfMakesOneStripMissing() {
        Wood wood = oneWidth(3, 3, new SeamRules(0, 150, 40, 1), board(900, 40, 2, 5));
        assertEquals(1, bounds(wood, 1, 10).get(CuttingAim.MISSING));
    }

    @Test
    @DisplayName("hand calculation: a seam of 25 mm makes two pieces 625 mm long, more than twice 312 mm")
    void anOverlapMakesOneStripMissing() {
        BoardKind board = board(312, 40, 2, 5);
        assertEquals(
                1,
                bounds(oneWidth(1, 0, new SeamRules(25, 150, 40, 1), board), 1, 0)
                        .get(CuttingAim.MISSING));
        assertEquals(
                0,
                bounds(oneWidth(1, 0, new SeamRules(24, 150, 40, 1), board), 0, 10)
                        .get(CuttingAim.MISSING));
    }

    @Test
    @DisplayName("hand calculation: three boards of 200 mm make a strip with two seams, and two of them none with one")
    void thirdsTakeTwoSeams() {
        BoardKind board = board(200, 40, 3, 5);
        Map<CuttingAim, Long> two = bounds(oneWidth(1, 0, new SeamRules(0, 150, 40, 2), board), 0, 15);
        assertEquals(0, two.get(CuttingAim.MISSING));
        assertEquals(150_000, two.get(CuttingAim.COST));
        assertEquals(
                1,
                bounds(oneWidth(1, 0, new SeamRules(0, 150, 40, 1), board(200, 40, 2, 5)), 1, 0)
                        .get(CuttingAim.MISSING));
    }

    @Test
    @DisplayName("hand calculation: a whole board of 600 mm for 9, or two of 300 mm for 4 each and a seam")
    void theCheaperPlanHasASeam() {
        Wood wood = oneWidth(1, 0, new SeamRules(0, 150, 40, 1), board(600, 40, 1, 9), board(300, 40, 2, 4));
        Map<CuttingAim, Long> bounds = bounds(wood, 0, 8);
        assertEquals(80_000, bounds.get(CuttingAim.COST));
        assertEquals(1, bounds.get(CuttingAim.SEAMS));
    }

    @ParameterizedTest
    @EnumSource
    void withoutSeamsTheBoundIsThePlan(StockAim asked) {
        Wood wood = new Wood(
                List.of(board(1300, 111, 1, 9), board(700, 68, 2, 3)),
                List.of(40.0, 25.0),
                4,
                new SeamRules(0, STRIP, 0, 0),
                3);
        CuttingProblem problem = wood.with(List.of(STRIP));
        List<CuttingAim> aims = CuttingAim.inOrder(asked);
        Map<CuttingAim, Long> counts =
                counts(problem, Solved.planned(problem, aims, ample()).plan());
        assertEquals(counts, wood.bounds(List.of(STRIP), aims, counts));
    }

    /** So many narrow strips that a wide board can be ripped in more ways than are listed. */
    private static Wood narrow(long seed) {
        Random random = new Random(seed);
        List<Double> widths = IntStream.range(0, 9)
                .mapToObj(width -> 4 + 1.3 * width + random.nextDouble())
                .toList();
        List<BoardKind> boards = List.of(
                board(700 + random.nextInt(400), 60 + random.nextInt(60), 1, 5),
                board(250 + random.nextInt(300), 40 + random.nextInt(60), 2, 2));
        return new Wood(boards, widths, 4, new SeamRules(0, 150, 40, 1), 3);
    }

    @ParameterizedTest(name = "rack {0}")
    @MethodSource("narrowRacks")
    void boundsOfLanesInAnySectionAreNotAboveAPlan(long seed) {
        Wood wood = narrow(seed);
        List<Double> lengths = points(wood, 9);
        CuttingProblem problem = wood.with(lengths);
        assertFalse(new CuttingColumns(problem).haveAllPatterns());
        List<CuttingAim> aims = CuttingAim.inOrder(StockAim.COST);
        CuttingPlan plan =
                Solved.planned(problem, aims, new Effort(0.3, 600_000_000_000L)).plan();
        Map<CuttingAim, Long> counts = counts(problem, plan);
        CuttingBound bound = new CuttingBound(problem, PieceRanges.between(lengths, wood.rules()));
        assertTrue(bound.holds());
        for (CuttingAim aim : List.of(CuttingAim.MISSING, CuttingAim.COST, CuttingAim.WASTE)) {
            long least = bound.least(aim, new Effort(0.2, 600_000_000_000L));
            assertTrue(least <= counts.get(aim), () -> least + " " + aim + " for " + counts);
            bound.atMost(aim, counts.get(aim));
        }
    }
}
