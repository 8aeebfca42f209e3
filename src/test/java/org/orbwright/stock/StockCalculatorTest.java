package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.design.Design;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.stock.CutBoard.LaneCut;
import org.orbwright.stock.CutBoard.Section;
import org.orbwright.stock.CutBoard.StripCut;
import org.orbwright.stock.StockPlan.PlanProof;
import org.orbwright.stock.StockPlan.Stage;
import org.orbwright.stock.StockPlan.StageVolume;
import org.orbwright.stock.StockPlan.StripMakeUp;
import org.orbwright.stock.StockPlan.StripNeed;
import org.orbwright.stock.StockRequest.AllowancesRequest;
import org.orbwright.stock.StockRequest.Joint;
import org.orbwright.stock.StockRequest.SeamRequest;
import org.orbwright.stock.StockRequest.SearchRequest;

/** Whole plans, from a design and its boards to the last strip. */
class StockCalculatorTest {
    private static final double EXACT = 1e-6;
    private static final List<String> WOODS = List.of("black walnut", "sugar maple", "black cherry");
    private static final Design DESIGN =
            Design.of(Designs.example("dodecahedron-with-land").request());

    private static final AllowancesRequest ALLOWANCES = new AllowancesRequest(3.0, 3.0, 1.5, 40.0, 2.4, 1.0, 2.0);

    private static StockPlan plan(List<BoardRequest> boards, List<OfferRequest> offers, SeamRequest seams) {
        StockRequest request =
                new StockRequest(boards, offers, ALLOWANCES, seams, StockAim.COST, new SearchRequest(0.2, 60.0));
        return StockCalculator.plan(request, DESIGN);
    }

    private static BoardRequest board(String wood, double length, double width, double thickness, int count) {
        return new BoardRequest(
                null, wood, length, width, thickness, count, null, 10.0 + length / 100, null, null, null, null);
    }

    private static List<BoardRequest> rack(Random random) {
        List<BoardRequest> boards = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            boards.add(board(
                    WOODS.get(i % WOODS.size()),
                    300 + random.nextInt(1500),
                    50 + random.nextInt(180),
                    15 + random.nextInt(60),
                    1 + random.nextInt(3)));
        }
        return boards;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    @Slow
    void nothingIsCutTwiceAndNoKerfIsForgotten(int seed) {
        Random random = new Random(seed);
        List<BoardRequest> rack = rack(random);
        SeamRequest seams = seed % 3 == 0
                ? null
                : new SeamRequest(
                        seed % 3 == 1 ? Joint.SCARF : Joint.BUTT,
                        seed % 3 == 1 ? 40.0 : null,
                        120.0,
                        30.0,
                        seed % 2 + 1);
        assertCanBeCut(rack, plan(rack, null, seams));
    }

    private static void assertCanBeCut(List<BoardRequest> rack, StockPlan plan) {
        Map<Integer, Integer> used = new HashMap<>();
        for (CutBoard board : plan.boards()) {
            used.merge(board.board(), 1, Integer::sum);
            double at = -DESIGN.kerf();
            for (Section section : board.sections()) {
                assertEquals(at + DESIGN.kerf(), section.from(), EXACT);
                at = section.to();
                assertSection(board, section);
            }
            assertTrue(at <= board.clearLength() + EXACT);
            assertEquals(Math.max(0, board.clearLength() - at - DESIGN.kerf()), board.lengthWaste(), EXACT);
        }
        used.forEach((index, count) -> assertTrue(count <= rack.get(index - 1).count()));
        assertDelivered(plan);
    }

    private static void assertSection(CutBoard board, Section section) {
        double across = -2.4;
        for (LaneCut lane : section.lanes()) {
            assertEquals(across + 2.4, lane.from(), EXACT);
            across = lane.to();
            double deep = -2.4;
            for (StripCut strip : lane.strips()) {
                assertEquals(deep + 2.4, strip.from(), EXACT);
                deep = strip.to();
                if (strip.part() == CutPart.KEPT) {
                    continue;
                }
                double panel = lane.rotated() ? lane.to() - lane.from() : strip.to() - strip.from();
                double band = lane.rotated() ? strip.to() - strip.from() : lane.to() - lane.from();
                assertEquals(30, panel, EXACT, "a panel of 28 mm and 2 mm to flatten the blank");
                assertEquals(strip.width(), band, EXACT);
            }
            assertTrue(deep <= board.surfacedThickness() + EXACT);
        }
        assertTrue(across <= board.clearWidth() + EXACT);
    }

    /** Each strip gets the pieces that it is made up of, each at least as long as it says. */
    private static void assertDelivered(StockPlan plan) {
        Map<List<Integer>, List<Double>> cut = new HashMap<>();
        for (CutBoard board : plan.boards()) {
            for (Section section : board.sections()) {
                for (StripCut strip : section.lanes().stream()
                        .flatMap(lane -> lane.strips().stream())
                        .filter(strip -> strip.strip() != null)
                        .toList()) {
                    int piece = strip.piece() == null ? 0 : strip.piece();
                    cut.computeIfAbsent(List.of(strip.strip() - 1, piece), key -> new ArrayList<>())
                            .add(section.to() - section.from());
                    assertEquals(plan.strips().get(strip.strip() - 1).width(), strip.width(), EXACT);
                }
            }
        }
        Map<List<Integer>, List<Double>> wanted = new HashMap<>();
        for (int s = 0; s < plan.strips().size(); s++) {
            StripNeed need = plan.strips().get(s);
            int made = 0;
            for (StripMakeUp makeUp : need.makeUps()) {
                made += makeUp.strips();
                for (int piece = 0; piece < makeUp.pieces().size(); piece++) {
                    int number = makeUp.seams().isEmpty() ? 0 : piece + 1;
                    wanted.computeIfAbsent(List.of(s, number), key -> new ArrayList<>())
                            .addAll(Collections.nCopies(
                                    makeUp.strips(), makeUp.pieces().get(piece).length()));
                }
            }
            assertEquals(need.needed(), made + need.missing());
        }
        assertEquals(wanted.keySet(), cut.keySet());
        wanted.forEach((key, lengths) -> {
            List<Double> have = cut.get(key).stream().sorted().toList();
            List<Double> want = lengths.stream().sorted().toList();
            assertEquals(want.size(), have.size());
            for (int i = 0; i < want.size(); i++) {
                assertTrue(have.get(i) >= want.get(i) - EXACT, key + ": " + have + " for " + want);
            }
        });
    }

    @Test
    @DisplayName("hand calculation: 10 strips of 21 by 30 by 584 mm and 10 of 13.4711 are 2.5593 board feet")
    void withoutBoardsEverythingIsMissing() {
        StockPlan plan = plan(List.of(), null, null);
        assertEquals(20, plan.species().get(0).missing());
        // 144 cubic inches make a board foot.
        double boardFoot = 144 * 25.4 * 25.4 * 25.4;
        double inner = DESIGN.panels().get(0).baseDistance() - 40 + 1;
        assertEquals(
                10 * 30 * 584 * (21 + inner) / boardFoot, plan.species().get(0).missingBoardFeet() / boardFoot, 1e-9);
        assertEquals(2.5593, plan.species().get(0).missingBoardFeet() / boardFoot, 1e-4);
        assertTrue(plan.boards().isEmpty());
        assertTrue(plan.stages().isEmpty());
        assertEquals(0, plan.cost());
    }

    @Test
    void whatTheRackLacksIsBoughtAtTheLeastCost() {
        // A section of 94 mm gives 6 strips of 13 mm (6 * 13 + 5 * 2.4 = 90), so 10 strips of cherry take two sections;
        // one offer of two sections for 21 is cheaper than two of one section for 11 each.
        OfferRequest one = new OfferRequest("short", "black cherry", 670.0, 100.0, 36.0, null, 11.0, null, null);
        OfferRequest two = new OfferRequest("long", "black cherry", 1260.0, 100.0, 36.0, null, 21.0, null, null);
        StockPlan plan = plan(List.of(), List.of(one, two), null);
        assertEquals(1, plan.purchases().size());
        assertEquals("long", plan.purchases().get(0).name());
        assertEquals(1, plan.purchases().get(0).count());
        assertEquals(21, plan.cost());
        assertEquals(10.5, plan.costPerSphere());
        assertEquals(0, plan.species().get(2).missing());
    }

    @ParameterizedTest
    @CsvSource({"black walnut, Walnut", "sugar maple, hard maple", "black cherry, CHERRY"})
    void tradeNamesOfAWoodAreTheSameWood(String wood, String written) {
        List<BoardRequest> boards = List.of(board(written, 6000, 300, 38, 2));
        StockPlan plan = plan(boards, null, null);
        assertEquals(
                0,
                plan.species().stream()
                        .filter(one -> one.species().equals(wood))
                        .mapToInt(StockPlan.SpeciesStock::missing)
                        .sum());
    }

    @Test
    void everyStageHasLessWoodThanTheOneBefore() {
        StockPlan plan =
                plan(WOODS.stream().map(wood -> board(wood, 3000, 200, 38, 3)).toList(), null, null);
        List<StageVolume> stages = plan.stages();
        assertEquals(Stage.values().length, stages.size());
        for (int i = 1; i < stages.size(); i++) {
            assertTrue(stages.get(i).volume() < stages.get(i - 1).volume(), stages::toString);
            assertEquals(
                    stages.get(i).volume() / stages.get(0).volume(),
                    stages.get(i).share(),
                    1e-12);
        }
        // The blanks: 10 of 584 by 28 mm, as wide as the base distance.
        assertEquals(
                10 * 584 * 28 * DESIGN.panels().get(0).baseDistance(),
                stages.stream()
                        .filter(stage -> stage.stage() == Stage.BLANK)
                        .mapToDouble(StageVolume::volume)
                        .sum(),
                1e-3);
    }

    /** Made without the plans that are kept, which would give the first one again. */
    private static StockPlan newPlan(StockRequest request) {
        StockRequest filled = request.filled(DESIGN.kerf());
        return StockCalculator.plan(filled, DESIGN, Effort.of(filled.search()));
    }

    @Test
    void samePlanEveryTime() {
        List<BoardRequest> rack = rack(new Random(5));
        SeamRequest seams = new SeamRequest(Joint.BUTT, null, 150.0, 20.0, 1);
        StockRequest request = new StockRequest(rack, null, null, seams, StockAim.WASTE, new SearchRequest(0.2, 60.0));
        assertEquals(newPlan(request), newPlan(request));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void whereTheClockIsOverAtOnceThereIsAPlanThatSaysSo(int seed) {
        List<BoardRequest> rack = new ArrayList<>(rack(new Random(seed)));
        rack.addAll(rack(new Random(100 + seed)));
        SeamRequest seams = new SeamRequest(Joint.BUTT, null, 120.0, 30.0, 3);
        StockPlan plan =
                newPlan(new StockRequest(rack, null, ALLOWANCES, seams, StockAim.COST, new SearchRequest(100.0, 0.05)));
        assertCanBeCut(rack, plan);
        assertTrue(plan.species().stream().anyMatch(wood -> wood.endedByClock() || wood.proof() == PlanProof.NONE));
        assertTrue(
                plan.species().stream().allMatch(wood -> wood.endedByClock() || wood.proof() == PlanProof.EVERY_PLAN));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    @Slow
    void samePlanWhileTheProcessorsAreBusy(int seed) throws InterruptedException {
        List<BoardRequest> rack = rack(new Random(seed));
        SeamRequest seams = new SeamRequest(Joint.BUTT, null, 120.0, 60.0, 2);
        StockRequest request = new StockRequest(rack, null, null, seams, StockAim.COST, new SearchRequest(0.5, 120.0));
        StockPlan alone = newPlan(request);
        AtomicBoolean busy = new AtomicBoolean(true);
        List<Thread> load = new ArrayList<>();
        for (int thread = 0; thread < 4 * Runtime.getRuntime().availableProcessors(); thread++) {
            load.add(new Thread(() -> {
                while (busy.get()) {
                    Thread.onSpinWait();
                }
            }));
        }
        load.forEach(Thread::start);
        try {
            assertEquals(alone, newPlan(request));
        } finally {
            busy.set(false);
            for (Thread thread : load) {
                thread.join();
            }
        }
    }
}
