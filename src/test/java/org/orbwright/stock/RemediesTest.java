package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BlankRequest;
import org.orbwright.design.DesignRequest.PanelRequest;
import org.orbwright.document.Document;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Stocks;
import org.orbwright.segment.BlankLengths;
import org.orbwright.stock.Shortage.Remedy;
import org.orbwright.stock.Shortage.RemedyKind;
import org.orbwright.stock.StockPlan.SpeciesStock;
import org.orbwright.stock.StockRequest.Joint;
import org.orbwright.stock.StockRequest.SeamRequest;

/**
 * Small changes that would help are what they are said to be: each is planned here once more, in a request of its own.
 */
@Slow
class RemediesTest {
    /** Two solids with strips 700 mm long; a board of {@code length} has 50 mm less than that. */
    private static ObjectNode trial(String boards) {
        return (ObjectNode) Stocks.read("{'design':{'unit':'mm','solid':'truncated-icosahedron','copies':2,"
                + "'size':{'by':'SPHERE_DIAMETER','value':240},'panel':{'thickness':22},'laminations':["
                + "{'face':'pentagon','bands':[{'species':'wenge','width':7},{'species':'ash','width':10},"
                + "{'species':'padauk'}]},"
                + "{'face':'hexagon','bands':[{'species':'padauk','width':9},{'species':'ash','width':6},"
                + "{'species':'wenge','width':4},{'species':'ash'}]}],"
                + "'saw':{'kerf':3.2,'endTrim':10},'blank':{'length':700},"
                + "'sphere':{'turningAllowance':2,'minimumWall':8}},'boards':" + boards + ","
                + "'allowances':{'jointing':3,'edgeCleaning':2,'planing':1.5,'ends':25,'stripPlaning':0.6,"
                + "'blankFlattening':1.5,'ripKerf':3.2},'search':{'work':2,'seconds':120}}");
    }

    /** A request and what its plan says of the strips of one wood that are missing. */
    private record Lack(StockRequest request, Design design, String wood, Shortage shortage) {
        static Lack of(ObjectNode json, String wood) {
            Document document = Stocks.document(json);
            Design design = Design.of(document.design());
            StockRequest request =
                    Stocks.request(json).filled(design.request().saw().kerf());
            Shortage shortage = StockCalculator.plan(request, design).shortages().stream()
                    .filter(one -> one.species().equals(wood))
                    .findFirst()
                    .orElseThrow();
            return new Lack(request, design, wood, shortage);
        }

        Optional<Remedy> remedy(RemedyKind change) {
            return shortage.remedies().stream()
                    .filter(one -> one.change() == change)
                    .findFirst();
        }

        /** How many strips of the wood are missing with a change, by a plan of its own. */
        int planned(Remedy remedy) {
            DesignRequest written = design.request();
            return switch (remedy.change()) {
                case SEAMS -> missing(request.withSeams(remedy.seams()), design);
                case ONE_MORE_BOARD ->
                    missing(
                            request.withOneMore(
                                    remedy.board() == null ? -1 : remedy.board() - 1,
                                    remedy.offer() == null ? -1 : remedy.offer() - 1),
                            design);
                case BLANK_LENGTH ->
                    missing(
                            request,
                            Design.of(written.withBlank(
                                    new BlankRequest(design.unit().fromMillimetres(remedy.length())))));
                case LAYERS ->
                    missing(
                            request,
                            Design.of(written.withPanel(new PanelRequest(
                                    written.panel().thickness(), written.panel().land(), remedy.layers()))));
                case NARROWER_BAND -> throw new AssertionError("it is not planned");
            };
        }

        private int missing(StockRequest changed, Design changedDesign) {
            return StockCalculator.plan(changed, changedDesign).species().stream()
                    .filter(one -> one.species().equals(wood))
                    .mapToInt(SpeciesStock::missing)
                    .sum();
        }

        /** Each change is planned once more; those that are planned come first, the one that helps most at the top. */
        void check() {
            List<Integer> missing = new ArrayList<>();
            for (Remedy remedy : shortage.remedies()) {
                if (remedy.change() != RemedyKind.NARROWER_BAND) {
                    missing.add(remedy.missing());
                    assertTrue(remedy.missing() < shortage.missing(), remedy::toString);
                    assertEquals(planned(remedy), remedy.missing(), remedy::toString);
                }
            }
            assertEquals(missing.stream().sorted().toList(), missing);
        }
    }

    /** Five boards of 365 mm clear length: no strip of 700 mm is whole, and some can be made of two pieces. */
    @Test
    void offcutsAreHelpedBySeams() {
        Lack ash = Lack.of(
                trial("[{'name':'ash odd','species':'ash','length':415,'width':77,'thickness':26,'count':5}]"), "ash");
        assertEquals(30, ash.shortage.missing());
        Remedy seams = ash.remedy(RemedyKind.SEAMS).orElseThrow();
        assertEquals(new SeamRequest(Joint.BUTT, null, 175.0, 70.0, 1), seams.seams());
        assertTrue(ash.remedy(RemedyKind.ONE_MORE_BOARD).isEmpty(), "another board of 365 mm is of no use");
        ash.check();
    }

    @Test
    void whereSeamsAreAllowedOneMoreIsTried() {
        ObjectNode json = trial("[{'species':'ash','length':415,'width':77,'thickness':26,'count':5}]");
        json.set("seams", Stocks.read("{'joint':'BUTT','smallestPiece':120,'clearance':50,'most':1}"));
        Lack ash = Lack.of(json, "ash");
        ash.remedy(RemedyKind.SEAMS)
                .ifPresent(more -> assertEquals(new SeamRequest(Joint.BUTT, null, 120.0, 50.0, 2), more.seams()));
        assertTrue(ash.remedy(RemedyKind.ONE_MORE_BOARD).isPresent());
        ash.check();
        ((ObjectNode) json.path("seams")).put("most", 3);
        assertTrue(Lack.of(json, "ash").remedy(RemedyKind.SEAMS).isEmpty(), "four seams are not allowed");
    }

    @Test
    void tooFewBoardsAreHelpedByOneMore() {
        Lack ash = Lack.of(
                trial("[{'species':'ash','length':1500,'width':60,'thickness':26},"
                        + "{'species':'ash','length':900,'width':90,'thickness':26}]"),
                "ash");
        assertTrue(ash.remedy(RemedyKind.ONE_MORE_BOARD).isPresent());
        ash.check();
    }

    /** Boards of 680 mm clear length for blanks of 700 mm. */
    @Test
    void boardsThatAreALittleTooShortAreHelpedByShorterBlanks() {
        Lack ash = Lack.of(trial("[{'species':'ash','length':730,'width':77,'thickness':26,'count':5}]"), "ash");
        double length = ash.remedy(RemedyKind.BLANK_LENGTH).orElseThrow().length();
        assertTrue(length <= 680, "blanks of " + length);
        ash.check();
    }

    /** Shorter blanks that give as many segments come first: no strip more is needed with them. */
    @Test
    void blanksThatAreLongerThanNeededAreShortened() {
        ObjectNode json = Stocks.cube("[]");
        Design design = Design.of(Stocks.document(json).design());
        double enough = BlankLengths.shortest(design);
        ((ObjectNode) json.at("/design/blank")).put("length", enough + 30);
        Stocks.boards(json, "[{'species':'ash','length':" + (enough + 40) + ",'width':200,'thickness':46,'count':20}]");
        Lack ash = Lack.of(json, "ash");
        assertEquals(enough, ash.remedy(RemedyKind.BLANK_LENGTH).orElseThrow().length(), 1e-9);
        assertEquals(0, ash.remedy(RemedyKind.BLANK_LENGTH).orElseThrow().missing());
        ash.check();
    }

    @Test
    void anOfferThatIsTakenWhollyIsHelpedByOneMoreOfIt() {
        ObjectNode json = Stocks.cube("[]");
        json.set(
                "offers", Stocks.read("[{'species':'ash','length':450,'width':60,'thickness':25,'price':9,'most':1}]"));
        Lack ash = Lack.of(json, "ash");
        assertEquals(1, ash.remedy(RemedyKind.ONE_MORE_BOARD).orElseThrow().offer());
        ash.check();
    }

    /** Strips are 22 mm thick in one layer and 12 mm in two; the boards have 15. */
    @Test
    void boardsThatAreTooThinAreHelpedByLayers() {
        Lack ash =
                Lack.of(Stocks.cube("[{'species':'ash','length':1300,'width':200,'thickness':15,'count':9}]"), "ash");
        assertEquals(2, ash.remedy(RemedyKind.LAYERS).orElseThrow().layers());
        ash.check();
    }

    /** On edge a board of 17 mm gives a band of 16 mm; the bands of ash are 18 mm and more. */
    @Test
    void aNarrowerBandIsTheWidestThatBoardsGive() {
        Lack ash = Lack.of(
                Stocks.cube("[{'species':'ash','length':1300,'width':200,'thickness':17},"
                        + "{'species':'ash','length':1300,'width':200,'thickness':16}]"),
                "ash");
        Remedy narrower = ash.remedy(RemedyKind.NARROWER_BAND).orElseThrow();
        assertEquals(16, narrower.length(), 1e-9);
        List<Remedy> all = ash.shortage.remedies();
        assertEquals(narrower, all.get(all.size() - 1));
        ash.check();
        assertTrue(Lack.of(Stocks.cube("[{'species':'ash','length':1300,'width':20,'thickness':17}]"), "ash")
                .remedy(RemedyKind.NARROWER_BAND)
                .isEmpty());
    }

    /** There is a board for every strip, but for one width of band: no narrower band is spoken of. */
    @Test
    void boardsThatServeAreNotToldToBeTooNarrow() {
        Lack ash = Lack.of(Stocks.cube("[{'species':'ash','length':450,'width':200,'thickness':25}]"), "ash");
        assertTrue(ash.remedy(RemedyKind.NARROWER_BAND).isEmpty());
        ash.check();
    }

    @Test
    void woodThatIsNotThereIsHelpedByNothingSmall() {
        assertEquals(List.of(), Lack.of(Stocks.cube("[]"), "ash").shortage.remedies());
    }

    @Test
    void aPlanThatIsCompleteHasNoShortages() {
        String board = "'length':1300,'width':200,'thickness':25,'count':5}";
        StockPlan plan = Stocks.planned(
                        "cube", Stocks.cube("[{'species':'ash'," + board + ",{'species':'wenge'," + board + "]"))
                .plan();
        assertTrue(plan.complete());
        assertEquals(List.of(), plan.shortages());
        assertFalse(plan.boards().isEmpty());
    }

    /** Racks of a few small boards of one wood; nothing is listed that does not help. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void everyChangeIsWhatItIsSaidToBe(int seed) {
        Random random = new Random(seed);
        List<String> boards = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            boards.add(String.format(
                    "{'species':'ash','length':%d,'width':%d,'thickness':%d}",
                    250 + random.nextInt(400), 25 + random.nextInt(60), 14 + random.nextInt(16)));
        }
        ObjectNode json = Stocks.cube("[" + String.join(",", boards) + "]");
        if (seed % 3 == 0) {
            json.set("seams", Stocks.read("{'joint':'BUTT','smallestPiece':100,'clearance':30}"));
        }
        Lack.of(json, "ash").check();
    }
}
