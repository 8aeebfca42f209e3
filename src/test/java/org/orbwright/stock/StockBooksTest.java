package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Stocks;
import org.orbwright.fixture.Stocks.Planned;
import org.orbwright.stock.StockPlan.BlankLayers;
import org.orbwright.stock.StockPlan.Purchase;
import org.orbwright.stock.StockPlan.SpeciesStock;
import org.orbwright.stock.StockPlan.StripNeed;
import org.orbwright.wood.Woods;

/** The books of a plan, made up anew from its single boards and strips; volumes are in cubic millimetres. */
@Slow
class StockBooksTest {
    /** As a share; sums of a few boards. */
    private static final double EXACT = 1e-12;

    private static void assertSame(double expected, double actual) {
        assertEquals(expected, actual, EXACT * Math.abs(expected));
    }

    private static boolean isOf(SpeciesStock species, String name) {
        return Woods.TABLE.among(name, List.of(species.species())).size() == 1;
    }

    private static double volume(CutBoard board) {
        return board.length() * board.width() * board.thickness();
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void everyWoodHasTheSumOfItsBoards(Planned planned) {
        StockPlan plan = planned.plan();
        assertFalse(plan.species().isEmpty());
        for (SpeciesStock species : plan.species()) {
            List<CutBoard> boards = plan.boards().stream()
                    .filter(board -> isOf(species, board.species()))
                    .toList();
            assertEquals(boards.size(), species.boards());
            assertSame(boards.stream().mapToDouble(StockBooksTest::volume).sum(), species.boardFeet());
            assertSame(boards.stream().mapToDouble(CutBoard::cost).sum(), species.cost());
        }
        double cost = plan.boards().stream().mapToDouble(CutBoard::cost).sum();
        assertSame(cost, plan.cost());
        assertSame(cost / planned.design().copies(), plan.costPerSphere());
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void everyWoodHasTheSumOfItsStrips(Planned planned) {
        for (SpeciesStock species : planned.plan().species()) {
            List<StripNeed> strips = planned.plan().strips().stream()
                    .filter(strip -> isOf(species, strip.species()))
                    .toList();
            int missing = strips.stream().mapToInt(StripNeed::missing).sum();
            assertEquals(strips.stream().mapToInt(StripNeed::needed).sum(), species.needed());
            assertEquals(missing, species.missing());
            assertEquals(species.needed(), species.supplied() + missing);
            assertSame(
                    strips.stream()
                            .mapToDouble(strip -> strip.missing() * strip.width() * strip.thickness() * strip.length())
                            .sum(),
                    species.missingBoardFeet());
        }
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void boardsAreNumberedAndThoseOfTheRackComeFirst(Planned planned) {
        List<CutBoard> boards = planned.plan().boards();
        assertEquals(
                IntStream.rangeClosed(1, boards.size()).boxed().toList(),
                boards.stream().map(CutBoard::number).toList());
        Stream<CutBoard> afterOffers =
                boards.stream().dropWhile(board -> board.offer() == null).dropWhile(board -> board.offer() != null);
        assertEquals(0, afterOffers.count());
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void theRackCountsWhatIsCutOfEachKindOfBoard(Planned planned) {
        for (RackBoard kind : planned.plan().rack()) {
            long cut = planned.plan().boards().stream()
                    .filter(board -> kind.board() == null
                            ? kind.offer().equals(board.offer())
                            : kind.board().equals(board.board()))
                    .count();
            assertEquals(cut, kind.cut());
            assertTrue(kind.left() >= 0);
        }
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void theBillHasEveryBoardThatIsBought(Planned planned) {
        StockPlan plan = planned.plan();
        assertEquals(
                plan.boards().stream().filter(board -> board.offer() != null).count(),
                plan.purchases().stream().mapToInt(Purchase::count).sum());
        for (Purchase purchase : plan.purchases()) {
            List<CutBoard> boards = plan.boards().stream()
                    .filter(board -> Integer.valueOf(purchase.offer()).equals(board.offer()))
                    .toList();
            double volume = boards.stream().mapToDouble(StockBooksTest::volume).sum();
            assertEquals(boards.size(), purchase.count());
            assertSame(volume, purchase.boardFeet());
            assertSame(volume, purchase.cubicMetres());
            assertSame(boards.stream().mapToDouble(CutBoard::cost).sum(), purchase.cost());
        }
    }

    @Test
    void somethingIsBoughtAndSomethingMissing() {
        StockPlan plan = Stocks.bought().plan();
        assertEquals(2, plan.purchases().get(0).count());
        assertFalse(plan.complete());
        assertTrue(plan.species().get(0).missing() > 0);
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void layersHaveEveryStripOnce(Planned planned) {
        for (StripNeed strip : planned.plan().strips()) {
            List<BlankLayers> layers = planned.plan().layers().stream()
                    .filter(one -> one.lamination() == strip.lamination()
                            && one.segment().equals(strip.segment())
                            && one.mirrored() == strip.mirrored()
                            && one.turned() == strip.turned())
                    .toList();
            assertEquals(
                    strip.needed(),
                    layers.stream().mapToInt(BlankLayers::layers).sum());
            for (int way = 0; way <= strip.makeUps().size(); way++) {
                int number = way;
                int count = way == 0
                        ? strip.missing()
                        : strip.makeUps().get(way - 1).strips();
                assertEquals(
                        count,
                        layers.stream()
                                .filter(one -> one.makeUps().get(strip.band() - 1) == number)
                                .mapToInt(BlankLayers::layers)
                                .sum());
            }
        }
    }
}
