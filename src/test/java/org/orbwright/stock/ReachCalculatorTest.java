package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.BlankRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.DesignRequest.SizeRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Stocks;
import org.orbwright.fixture.Trials;
import org.orbwright.segment.YieldCalculator;
import org.orbwright.stock.Reach.PurchaseReach;
import org.orbwright.stock.Reach.SizeReach;
import org.orbwright.stock.Reach.TriedBlank;
import org.orbwright.stock.StockPlan.SpeciesStock;
import org.orbwright.stock.StockRequest.SearchRequest;

/** What boards give, against plans of many sizes and numbers, one by one. */
@Slow
class ReachCalculatorTest {
    /** Sizes are brought as near to each other as this, and answered as they were tried. */
    private static final double NEAR = 1.003;

    private static final SearchRequest LITTLE_WORK = new SearchRequest(0.1, 60.0);
    private static final Map<Long, Reached> KNOWN = new HashMap<>();
    private static final double EXACT = 1e-6;

    /** A small rack: a cube or a tetrahedron in two or three bands of two woods, and a few boards of each. */
    private static ObjectNode rack(long seed) {
        Random random = new Random(seed);
        boolean cube = seed % 2 == 0;
        boolean three = seed % 3 != 0;
        String bands = "{'species':'ash','width':" + (10 + random.nextInt(10)) + "},{'species':'wenge'"
                + (three ? ",'width':" + (8 + random.nextInt(8)) + "},{'species':'ash'}" : "}");
        List<String> boards = new ArrayList<>();
        for (String wood : List.of("ash", "wenge", "ash")) {
            boards.add(String.format(
                    "{'species':'%s','length':%d,'width':%d,'thickness':%d,'count':%d}",
                    wood,
                    450 + random.nextInt(900),
                    60 + random.nextInt(80),
                    22 + random.nextInt(30),
                    1 + random.nextInt(2)));
        }
        String seams = seed % 4 < 2 ? "" : ",'seams':{'joint':'BUTT','smallestPiece':120,'clearance':40,'most':1}";
        return (ObjectNode) Stocks.read("{'design':{'unit':'mm','solid':'" + (cube ? "cube" : "tetrahedron")
                + "','copies':1,'size':{'by':'" + (cube ? "ACROSS_FLATS" : "EDGE") + "','value':"
                + (cube ? 150 : 220)
                + "},'panel':{'thickness':18},'laminations':[{'face':'" + (cube ? "square" : "triangle")
                + "','bands':["
                + bands + "]}],'saw':{'kerf':3,'endTrim':5},'blank':{'length':420},"
                + "'sphere':{'turningAllowance':2,'minimumWall':1}},'boards':[" + String.join(",", boards)
                + "],'offers':[{'species':'wenge','length':800,'width':80,'thickness':40,'price':20,'most':3}],"
                + "'allowances':{'ends':10,'ripKerf':3,'stripPlaning':1,'blankFlattening':2}" + seams
                + ",'search':{'work':1,'seconds':60}}");
    }

    /** A small rack and what it gives, found out once for all tests. */
    private static Reached reached(long seed) {
        return KNOWN.computeIfAbsent(seed, one -> Reached.of(rack(one)));
    }

    /** A request, its boards alone, and what they give. */
    private record Reached(StockRequest asked, StockRequest rack, DesignRequest written, Design design, Reach reach) {
        static Reached of(ObjectNode json) {
            DesignRequest written = Stocks.document(json).design();
            Design design = Design.of(written);
            StockRequest asked =
                    Stocks.request(json).filled(design.request().saw().kerf());
            return new Reached(
                    asked,
                    asked.withOffers(List.of()),
                    written,
                    design,
                    ReachCalculator.reach(Stocks.request(json), written, design));
        }

        /** Strips that are missing for a design; many for one that cannot be made. */
        static int missing(StockRequest request, DesignRequest wanted) {
            try {
                StockPlan plan = StockCalculator.plan(request, Design.of(wanted));
                int missing =
                        plan.species().stream().mapToInt(SpeciesStock::missing).sum();
                return plan.unplanned().isEmpty() ? missing : Integer.MAX_VALUE;
            } catch (ImpossibleDesignException impossible) {
                return Integer.MAX_VALUE;
            }
        }

        /** The design at a size; bands keep their widths, and those without one take up the rest. */
        DesignRequest sized(double value) {
            return written.withSphere(new SizeRequest(written.size().by(), value), written.sphere());
        }

        /** The design at a size, with all bands in proportion; the widest takes up what rounding leaves. */
        DesignRequest scaled(double value) {
            double factor = value / written.size().value();
            List<LaminationRequest> laminations = new ArrayList<>();
            for (LaminationRequest lamination : design.request().laminations()) {
                double widest = lamination.bands().stream()
                        .mapToDouble(BandRequest::width)
                        .max()
                        .orElseThrow();
                laminations.add(lamination.withBands(lamination.bands().stream()
                        .map(band -> new BandRequest(
                                band.species(), band.width() == widest ? null : Double.valueOf(band.width() * factor)))
                        .toList()));
            }
            return sized(value).withLaminations(laminations);
        }
    }

    private static LongStream seeds() {
        return Trials.below(7);
    }

    /** Tries sizes from a third of the design's to three times it, and more of them about the answer. */
    private static void sweep(Reached reached, SizeReach size, DoubleFunction<DesignRequest> sized) {
        double value = reached.written.size().value();
        List<Double> sizes = new ArrayList<>();
        for (double factor = 0.3; factor < 3; factor *= 1.12) {
            sizes.add(value * factor);
        }
        if (size.largest() != null) {
            assertEquals(0, Reached.missing(reached.rack, sized.apply(size.largest())), "the answer can be cut");
            assertTrue(size.plan().complete(), "the plan of the answer is whole");
            for (double more : new double[] {NEAR, 1.006, 1.01, 1.02, 1.035}) {
                sizes.add(size.largest() * more);
            }
        }
        if (size.impossibleFrom() != null) {
            sizes.add(size.impossibleFrom());
        }
        StockRequest rack = reached.rack;
        StockRequest swept = new StockRequest(
                rack.boards(), rack.offers(), rack.allowances(), rack.seams(), rack.aim(), LITTLE_WORK);
        double largest = sizes.stream()
                .sorted(Comparator.reverseOrder())
                .filter(one -> Reached.missing(swept, sized.apply(one)) == 0)
                .findFirst()
                .orElse(0.0);
        double answered = size.largest() == null ? value * 0.13 : size.largest();
        assertTrue(largest <= answered * NEAR, () -> largest + " can be cut, and " + answered + " is the answer");
        assertTrue(
                size.impossibleFrom() == null || size.impossibleFrom() > largest,
                () -> size.impossibleFrom() + " is said to be impossible, and " + largest + " can be cut");
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noSizeInProportionIsLarger(long seed) {
        Reached reached = reached(seed);
        sweep(reached, reached.reach.size(), reached::scaled);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noSizeWithRestBandsIsLarger(long seed) {
        Reached reached = reached(seed);
        sweep(reached, reached.reach.restBands(), reached::sized);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noMoreCopiesCanBeCut(long seed) {
        Reached reached = reached(seed);
        int most = reached.reach.copies().most();
        if (most > 0) {
            assertTrue(reached.reach.copies().plan().complete());
        }
        for (int copies = 1; copies <= most; copies++) {
            assertEquals(0, Reached.missing(reached.rack, reached.written.withCopies(copies)), copies + " copies");
        }
        for (int copies = most + 1; copies <= most + 2; copies++) {
            assertTrue(Reached.missing(reached.rack, reached.written.withCopies(copies)) > 0, copies + " copies");
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theBestBlankIsTheBestOfThoseThatWereTried(long seed) {
        Reached reached = reached(seed);
        List<TriedBlank> tried = reached.reach.blank().tried();
        TriedBlank best = tried.get(0);
        for (TriedBlank one : tried) {
            boolean better = one.missing() != best.missing()
                    ? one.missing() < best.missing()
                    : one.seams() != best.seams()
                            ? one.seams() < best.seams()
                            : one.boardFeet() < best.boardFeet()
                                    || (one.boardFeet() == best.boardFeet() && one.length() > best.length());
            best = better ? one : best;
        }
        assertEquals(best.length(), reached.reach.blank().length());
        StockPlan shown = reached.reach.blank().plan();
        assertEquals(best.missing(), missing(shown));
        for (TriedBlank one : tried) {
            StockPlan plan = StockCalculator.plan(
                    reached.rack.withAim(StockAim.SEAMS),
                    Design.of(reached.written.withBlank(new BlankRequest(one.length()))));
            assertFalse(one.proved() && missing(plan) < one.missing(), one::toString);
            boolean bothProved = one.proved() && plan.species().stream().allMatch(SpeciesStock::proved);
            if (bothProved) {
                assertEquals(missing(plan), one.missing());
                assertEquals(seams(plan), one.seams());
                assertEquals(
                        plan.species().stream()
                                .mapToDouble(SpeciesStock::boardFeet)
                                .sum(),
                        one.boardFeet(),
                        EXACT * one.boardFeet());
            }
        }
        assertTrue(tried.stream().anyMatch(TriedBlank::proved), "something is proved");
    }

    private static int missing(StockPlan plan) {
        return plan.species().stream().mapToInt(SpeciesStock::missing).sum();
    }

    private static int seams(StockPlan plan) {
        return plan.strips().stream()
                .flatMap(strip -> strip.makeUps().stream())
                .mapToInt(makeUp -> makeUp.strips() * makeUp.seams().size())
                .sum();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aPurchaseGivesWhatItIsSaidToGive(long seed) {
        Reached reached = reached(seed);
        PurchaseReach purchase = reached.reach.purchase();
        if (purchase == null) {
            return;
        }
        DesignRequest more = reached.written.withCopies(purchase.copies());
        assertEquals(reached.reach.copies().most() + 1, purchase.copies());
        assertEquals(Reached.missing(reached.rack, more), purchase.missing());
        StockRequest bought = purchase.board() == null
                ? reached.rack.withOffers(
                        List.of(reached.asked.offers().get(purchase.offer() - 1).withMost(1)))
                : reached.rack.withOneMore(purchase.board() - 1, -1);
        assertEquals(Reached.missing(bought, more), purchase.missingThen());
        assertTrue(purchase.missingThen() < purchase.missing());
    }

    @Test
    void aDesignWithoutABandThatTakesTheRestHasNoSuchSize() {
        ObjectNode json = rack(2);
        Design design = Design.of(Stocks.document(json).design());
        List<BandRequest> bands = design.request().laminations().get(0).bands();
        for (int i = 0; i < bands.size(); i++) {
            ((ObjectNode) json.at("/design/laminations/0/bands/" + i))
                    .put("width", bands.get(i).width());
        }
        Reached reached = Reached.of(json);
        assertNull(reached.reach.restBands());
        assertNotNull(reached.reach.size());
    }

    @Test
    void aRackWithoutOneOfTheWoodsGivesNothing() {
        ObjectNode json = rack(2);
        json.withArray("boards").remove(1);
        Reach reach = Reached.of(json).reach;
        assertNull(reach.size().largest());
        assertNull(reach.size().plan());
        assertNull(reach.restBands().largest());
        assertEquals(0, reach.copies().most());
        assertTrue(reach.copies().proved());
        assertNull(reach.copies().plan());
        assertEquals(1, reach.purchase().offer());
    }

    /** Sizes are tried in tenths of a millimetre, of which a small edge has fewer than its last step. */
    @Test
    void aSmallEdgeIsFoundAsNearlyAsALargeOne() {
        ObjectNode json = rack(2);
        ObjectNode design = (ObjectNode) json.path("design");
        design.set("size", Stocks.read("{'by':'EDGE','value':14}"));
        ((ObjectNode) design.path("panel")).put("thickness", 3);
        design.set("sphere", Stocks.read("{'turningAllowance':0.1,'minimumWall':0.1}"));
        design.set(
                "laminations",
                Stocks.read("[{'face':'square','bands':[{'species':'ash','width':4},{'species':'ash'}]}]"));
        Stocks.boards(json, "[{'species':'ash','length':500,'width':17,'thickness':6,'surface':'SURFACED'}]");
        Reached reached =
                assertTimeoutPreemptively(Duration.ofSeconds(60), () -> Reached.of(json), "it goes round in a circle");
        assertFalse(reached.reach.endedByClock());
        assertNotNull(reached.reach.size().largest());
        sweep(reached, reached.reach.size(), reached::scaled);
    }

    /** Blanks that hold segments of the one face of a cuboctahedron and none of the other: half a solid is none. */
    @Test
    void aSizeWhoseSegmentsNoBlankHoldsIsNotWithinReach() {
        ObjectNode json = Stocks.twoFaces("mm", 1);
        Stocks.boards(
                json,
                "[{'species':'white ash','length':2560,'width':400,'thickness':50,'count':20,'surface':'SURFACED'},"
                        + "{'species':'red alder','length':2560,'width':400,'thickness':50,'count':20,"
                        + "'surface':'SURFACED'}]");
        json.set("search", Stocks.read("{'work':1,'seconds':60}"));
        ((ObjectNode) json.at("/design/laminations/1")).put("bandAngle", 30);
        OptionalInt length = IntStream.range(60, 300)
                .filter(one -> holdsOneFaceOnly(json, one))
                .findFirst();
        assertTrue(length.isPresent());
        Reach reach = Reached.of(json).reach;
        assertTrue(reach.size().plan().complete(), "the plan has all segments");
        assertTrue(reach.restBands().plan().complete(), "the plan has all segments");
        assertEquals(0, reach.copies().most());
    }

    private static boolean holdsOneFaceOnly(ObjectNode json, int length) {
        ((ObjectNode) json.at("/design/blank")).put("length", length);
        return YieldCalculator.calculate(Design.of(Stocks.document(json).design())).laminations().stream()
                        .filter(lamination -> lamination.blanks() == null)
                        .count()
                == 1;
    }

    /** Far more wood than for a thousand copies: that no more than a thousand can be cut is not said. */
    @Test
    void theMostCopiesThatAreTriedAreNotTheMostThatThereCanBe() {
        ObjectNode json = rack(2);
        ((ObjectNode) json.path("design"))
                .set(
                        "laminations",
                        Stocks.read("[{'face':'square','bands':[{'species':'ash','width':40},{'species':'ash'}]}]"));
        Stocks.boards(
                json,
                "[{'species':'ash','length':20000,'width':2000,'thickness':500,'count':200,'surface':'SURFACED'}]");
        json.remove("seams");
        Reach reach = Reached.of(json).reach;
        assertEquals(1000, reach.copies().most());
        assertFalse(reach.copies().proved());
        assertNull(reach.purchase());
    }

    /** Little work: what is said to be within reach is shown with a plan that lacks nothing. */
    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsSaidToBeWithinReachIsShownHoweverLittleTheWork(long seed) {
        ObjectNode json = rack(seed);
        json.set("search", Stocks.read("{'work':0.02,'seconds':60}"));
        Reach reach = Reached.of(json).reach;
        for (SizeReach size : List.of(reach.size(), reach.restBands())) {
            assertTrue(size.plan() == null || size.plan().complete());
        }
        assertTrue(reach.copies().plan() == null || reach.copies().plan().complete());
    }
}
