package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Trials;
import org.orbwright.stock.StockRequest.AllowancesRequest;
import org.orbwright.stock.StockRequest.Joint;
import org.orbwright.stock.StockRequest.SeamRequest;
import org.orbwright.stock.StripPlanner.Strips;
import org.orbwright.stock.StripsAndBoards.Wood;
import org.orbwright.stock.WoodPlanner.WoodPlan;

/**
 * Whoever has more to choose from has no worse plan. The design is a cube of one wood in two bands, its blanks are 700
 * mm long; racks are small, and there is more work than it takes to come to an end.
 */
@Slow
class PlansWithMoreTest {
    private static final double AMPLE = 1;
    private static final long LONG = 600_000_000_000L;
    private static final String WOOD = "sugar maple";
    private static final Design DESIGN = Designs.of("cube")
            .bands(List.of(new BandRequest(WOOD, 30.0), new BandRequest(WOOD, null)))
            .blank(700)
            .build();

    static LongStream racks() {
        return Trials.below(Integer.getInteger("racks", 8));
    }

    /** What a plan has: missing strips, their cost. */
    private record Outcome(long missing, long cost, boolean proved, Object rack) {
        boolean isNoWorse(Outcome other) {
            return missing < other.missing || (missing == other.missing && cost <= other.cost);
        }

        @Override
        public String toString() {
            return missing + " missing, cost " + cost + (proved ? ", proved" : "") + " of " + rack;
        }
    }

    private static Outcome plan(List<BoardRequest> rack, SeamRequest seams, double work) {
        StockRequest request = new StockRequest(
                        rack,
                        null,
                        new AllowancesRequest(3.0, 3.0, 1.5, 10.0, 3.0, 0.0, 2.0),
                        seams,
                        StockAim.COST,
                        null)
                .filled(3);
        StripsAndBoards needs = new StripsAndBoards(request, DESIGN);
        Strips strips = new StripPlanner(
                        needs, needs.woods(), CuttingAim.inOrder(StockAim.COST), new Effort(work, LONG))
                .plan();
        Wood wood = needs.woods().get(WOOD);
        WoodPlan planned = strips.woods().get(WOOD);
        long missing = strips.missing(needs, wood);
        boolean proved = planned.bound(CuttingAim.MISSING) >= missing
                && planned.bound(CuttingAim.COST) >= planned.count(CuttingAim.COST);
        return new Outcome(missing, planned.count(CuttingAim.COST), proved, rack);
    }

    private static SeamRequest seams(int most, double smallest, double clearance) {
        return most == 0 ? null : new SeamRequest(Joint.BUTT, null, smallest, clearance, most);
    }

    private static BoardRequest board(Random random) {
        return new BoardRequest(
                null,
                WOOD,
                250.0 + random.nextInt(1500),
                50.0 + random.nextInt(150),
                30.0 + random.nextInt(50),
                1 + random.nextInt(2),
                null,
                1.0 + random.nextInt(30),
                null,
                null,
                null,
                null);
    }

    private static List<BoardRequest> rack(Random random) {
        List<BoardRequest> rack = new ArrayList<>();
        for (int boards = 1 + random.nextInt(3); boards > 0; boards--) {
            rack.add(board(random));
        }
        return rack;
    }

    @ParameterizedTest(name = "rack {0}")
    @MethodSource("racks")
    void withAnotherBoardNoMoreStripsAreMissing(long seed) {
        Random random = new Random(seed);
        List<BoardRequest> rack = rack(random);
        SeamRequest seams = seams(random.nextInt(3), 150, 40);
        Outcome without = plan(rack, seams, AMPLE);
        List<BoardRequest> more = new ArrayList<>(rack);
        more.add(board(random));
        Outcome with = plan(more, seams, AMPLE);
        assertTrue(with.missing() <= without.missing(), () -> with + ", without " + without);
    }

    @ParameterizedTest(name = "rack {0}")
    @MethodSource("racks")
    void withMoreSeamsNoPlanIsWorse(long seed) {
        List<BoardRequest> rack = rack(new Random(1000 + seed));
        Outcome none = plan(rack, null, AMPLE);
        Outcome one = plan(rack, seams(1, 150, 40), AMPLE);
        Outcome two = plan(rack, seams(2, 150, 40), AMPLE);
        assertTrue(one.isNoWorse(none), () -> "one seam: " + one + ", none: " + none);
        assertTrue(two.isNoWorse(one), () -> "two seams: " + two + ", one: " + one);
    }

    @ParameterizedTest(name = "rack {0}")
    @MethodSource("racks")
    void withShorterPiecesNoMoreStripsAreMissing(long seed) {
        List<BoardRequest> rack = rack(new Random(2000 + seed));
        int most = 1 + (int) (seed % 2);
        Outcome longer = plan(rack, seams(most, 220, 40), AMPLE);
        Outcome shorter = plan(rack, seams(most, 120, 40), AMPLE);
        assertTrue(shorter.missing() <= longer.missing(), () -> "120: " + shorter + ", 220: " + longer);
    }

    @ParameterizedTest(name = "rack {0}")
    @MethodSource("racks")
    void withLessClearanceNoMoreStripsAreMissing(long seed) {
        List<BoardRequest> rack = rack(new Random(3000 + seed));
        int most = 1 + (int) (seed % 2);
        Outcome more = plan(rack, seams(most, 150, 120), AMPLE);
        Outcome less = plan(rack, seams(most, 150, 20), AMPLE);
        assertTrue(less.missing() <= more.missing(), () -> "20: " + less + ", 120: " + more);
    }

    @ParameterizedTest(name = "rack {0}")
    @MethodSource("racks")
    void withMoreWorkNoPlanIsWorse(long seed) {
        List<BoardRequest> rack = rack(new Random(4000 + seed));
        int most = (int) (seed % 3);
        Outcome little = plan(rack, seams(most, 150, 40), 0.1);
        Outcome much = plan(rack, seams(most, 150, 40), AMPLE);
        assertTrue(much.isNoWorse(little), () -> "much: " + much + ", little: " + little);
    }
}
