package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Stocks;
import org.orbwright.source.Source;

/** What is said of strips that are missing, of what would help, and of what is not proved. */
@Source(CONTRACT)
@Slow
class ShortageFindingsTest {
    private static final int LONGEST = 25;
    private static final Pattern SENTENCES = Pattern.compile("[.:] ");

    /** Nearly the cube of {@link Stocks} in inches: strips are 7/8 in thick and 16 in long. */
    private static ObjectNode inches(String boards) {
        return (ObjectNode) Stocks.read("{'design':{'unit':'in','solid':'cube','copies':1,"
                + "'size':{'by':'ACROSS_FLATS','value':6.5},'panel':{'thickness':0.8125},'laminations':["
                + "{'face':'square','bands':[{'species':'ash','width':0.75},{'species':'wenge','width':0.5},"
                + "{'species':'ash'}]}],"
                + "'saw':{'kerf':0.125,'endTrim':0.25},'blank':{'length':16},"
                + "'sphere':{'turningAllowance':0.0625,'minimumWall':0.25}},'boards':" + boards + ","
                + "'allowances':{'ends':0.5,'ripKerf':0.125,'stripPlaning':0.0625,'blankFlattening':0.0625},"
                + "'search':{'work':1,'seconds':120}}");
    }

    private static List<String> said(ObjectNode request, FindingCode code) {
        List<Finding> found = SheetCalculator.stock(Stocks.document(request)).findings().stream()
                .filter(finding -> finding.code() == code)
                .toList();
        for (Finding finding : found) {
            assertEquals(
                    code == FindingCode.STOCK_SHORT ? Finding.Severity.STOP : Finding.Severity.NOTE,
                    finding.severity());
            for (String sentence : SENTENCES.splitAsStream(finding.message()).toList()) {
                assertTrue(sentence.chars().filter(letter -> letter == ' ').count() < LONGEST, sentence);
            }
        }
        return found.stream().map(Finding::message).toList();
    }

    private static ObjectNode hurried(String search, String aim) {
        ObjectNode request = Stocks.example();
        request.set("search", Stocks.read(search));
        return request.put("aim", aim);
    }

    @Test
    void everyWoodThatIsShortHasOneStop() {
        String enough = "'length':900,'width':120,'thickness':30}";
        assertEquals(
                List.of(
                        "24 of 24 strips of ash cannot be cut. At least 3.13 board feet are short, before waste. No plan"
                                + " has fewer missing.",
                        "12 of 12 strips of wenge cannot be cut. At least 0.58 board feet are short, before waste. No"
                                + " plan has fewer missing."),
                said(Stocks.cube("[]"), FindingCode.STOCK_SHORT));
        assertEquals(
                1,
                said(Stocks.cube("[{'species':'wenge'," + enough + "]"), FindingCode.STOCK_SHORT)
                        .size());
        assertEquals(
                List.of(
                        "24 of 24 strips of ash cannot be cut. At least 3.35 board feet are short, before waste. No plan"
                                + " has fewer missing.",
                        "12 of 12 strips of wenge cannot be cut. At least 0.66 board feet are short, before waste. No"
                                + " plan has fewer missing."),
                said(inches("[]"), FindingCode.STOCK_SHORT));
    }

    @Test
    void aBoardThatIsTooShortIsNamedOnce() {
        assertEquals(
                List.of("Board 1 (stub) is 25 mm too short for the shortest piece."),
                said(
                        Stocks.cube("[{'species':'ash','length':395,'width':200,'thickness':40,'name':'stub'}]"),
                        FindingCode.BOARD_DOES_NOT_SERVE));
        assertEquals(
                List.of("Board 1 (Stub) is 2 in too short for the shortest piece."),
                said(
                        inches("[{'species':'ash','length':15,'width':8,'thickness':1.25,'name':'Stub'}]"),
                        FindingCode.BOARD_DOES_NOT_SERVE));
    }

    @Test
    void aBoardThatIsTooThinIsSaidWithTheWidestBandThatItGives() {
        assertEquals(
                List.of(
                        "Board 1 is 2 mm too thin for strips 19 mm wide, lying flat or on edge. It gives bands of at most"
                                + " 16 mm. Board 1 is 5 mm too thin for strips 51 mm wide, lying flat or on edge. It gives bands"
                                + " of at most 16 mm."),
                said(
                        Stocks.cube("[{'species':'ash','length':1300,'width':200,'thickness':17}]"),
                        FindingCode.BOARD_DOES_NOT_SERVE));
        assertEquals(
                List.of(
                        "Board 1 is 4 mm too thin for strips 19 mm wide, lying flat or on edge. It gives no band at all."
                                + " Board 1 is 7 mm too thin for strips 51 mm wide, lying flat or on edge. It gives no band at"
                                + " all."),
                said(
                        Stocks.cube("[{'species':'ash','length':1300,'width':21,'thickness':15}]"),
                        FindingCode.BOARD_DOES_NOT_SERVE));
        assertEquals(
                List.of(
                        "Board 1 is 0.125 in too thin for strips 0.812 in wide, lying flat or on edge. It gives bands of"
                                + " at most 0.625 in. Board 1 is 0.188 in too thin for strips 2.062 in wide, lying flat or on"
                                + " edge. It gives bands of at most 0.625 in."),
                said(
                        inches("[{'species':'ash','length':52,'width':8,'thickness':0.6875}]"),
                        FindingCode.BOARD_DOES_NOT_SERVE));
    }

    @Test
    void aBoardThatIsTooNarrowIsSaidWithTheWidestBandThatItGives() {
        assertEquals(
                List.of("Board 1 is 21 mm too narrow for strips 51 mm wide. It gives bands of at most 29 mm."),
                said(
                        Stocks.cube("[{'species':'ash','length':1300,'width':30,'thickness':25}]"),
                        FindingCode.BOARD_DOES_NOT_SERVE));
        assertEquals(
                List.of("Board 1 is 0.813 in too narrow for strips 2.062 in wide. It gives bands of at most 1.187 in."),
                said(
                        inches("[{'species':'ash','length':52,'width':1.25,'thickness':1}]"),
                        FindingCode.BOARD_DOES_NOT_SERVE));
    }

    @Test
    void shorterBlanksAndSeamsAreSaidWithTheirLengths() {
        assertEquals(
                List.of(
                        "Small changes would help with ash. With blanks of 338.49 mm, 15 strips are missing. With up to one seam in a strip (pieces of at least 100 mm,"
                                + " neighbouring seams 40 mm apart), 20 strips are missing."),
                said(
                        Stocks.cube("[{'species':'ash','length':395,'width':200,'thickness':40}]"),
                        FindingCode.STOCK_HELP));
        assertEquals(
                List.of(
                        "Small changes would help with ash. With blanks of 13.854 in, 16 strips are missing. With up to one seam in a strip (pieces of at least 4 in,"
                                + " neighbouring seams 1.6 in apart), 20 strips are missing."),
                said(inches("[{'species':'ash','length':15,'width':8,'thickness':1.25}]"), FindingCode.STOCK_HELP));
    }

    /** Two sections of three strips each: six of twelve, and with the other board all of them. */
    @Test
    void oneMoreBoardIsCalledByItsNumberAndName() {
        assertEquals(
                List.of("Small changes would help with wenge. With one more like board 1 (dark), no strip is missing."),
                said(
                        Stocks.cube("[{'name':'dark','species':'wenge','length':900,'width':60,'thickness':30}]"),
                        FindingCode.STOCK_HELP));
    }

    @Test
    void layersAndNarrowerBandsAreSaid() {
        assertEquals(
                List.of("Small changes would help with ash. With panels of 2 layers, glued face to face, 23 strips are"
                        + " missing. Bands of at most 16 mm can be cut from these boards."),
                said(
                        Stocks.cube("[{'species':'ash','length':1300,'width':200,'thickness':17}]"),
                        FindingCode.STOCK_HELP));
        assertEquals(
                List.of("Small changes would help with ash. Bands of at most 0.625 in can be cut from these boards."),
                said(inches("[{'species':'ash','length':52,'width':8,'thickness':0.6875}]"), FindingCode.STOCK_HELP));
    }

    @Test
    void woodThatIsNotThereIsNotSaidToBeHelped() {
        assertEquals(List.of(), said(Stocks.cube("[]"), FindingCode.STOCK_HELP));
        assertEquals(List.of(), said(Stocks.cube("[]"), FindingCode.BOARD_DOES_NOT_SERVE));
    }

    @ParameterizedTest
    @CsvSource({"COST, cost less", "WASTE, use less wood"})
    void aPlanWithoutAnyProofSaysWhatAnotherMayBetter(String aim, String better) {
        assertTrue(said(hurried("{'work':0.01,'seconds':60}", aim), FindingCode.PLAN_NOT_PROVED)
                .contains("The plan for black walnut is not proved to be the best. Another plan may " + better + "."));
    }

    @Test
    void aPlanThatIsProvedForItsLengthsSaysHowManyWereTried() {
        assertEquals(
                List.of("The plan for black walnut is not proved to be the best. It is the best with pieces of the 8"
                        + " lengths that were tried. Another plan may be better in what counts after the seams."),
                said(hurried("{'work':0.01,'seconds':60}", "SEAMS"), FindingCode.PLAN_NOT_PROVED));
    }

    @Test
    void aSearchThatTheClockEndedIsSaid() {
        assertEquals(
                List.of(
                        "The time for the search was over before its work was done. More seconds may find a better plan:"
                                + " see stock.search."),
                said(hurried("{'work':100,'seconds':0.05}", "COST"), FindingCode.SEARCH_ENDED_BY_CLOCK));
        assertEquals(List.of(), said(hurried("{'work':0.01,'seconds':60}", "COST"), FindingCode.SEARCH_ENDED_BY_CLOCK));
    }

    /** What boards give says which wood is not there, once, as the reason for all of it. */
    @Test
    void aRackWithoutAWoodIsToldSo() {
        assertEquals(
                List.of(new Finding(
                        FindingCode.STOCK_SHORT,
                        Finding.Severity.STOP,
                        "No board on the rack is of wenge, so nothing can be made of this design.",
                        "/stock/boards")),
                stops(Stocks.cube("[{'species':'ash','length':900,'width':120,'thickness':30}]")));
    }

    @Test
    void aRackWithEveryWoodIsNotToldThatOneIsNotThere() {
        String board = "'length':900,'width':120,'thickness':30}";
        assertEquals(
                List.of(),
                stops(Stocks.cube("[{'species':'white ash'," + board + ",{'species':'wenge'," + board + "]")));
    }

    /** Bands of sugar maple and of hard maple are of one wood, which is missed once. */
    @Test
    void aWoodOfTwoNamesIsMissedOnce() {
        ObjectNode request = Stocks.cube("[{'species':'wenge','length':900,'width':120,'thickness':30}]");
        ((ObjectNode) request.at("/design/laminations/0/bands/0")).put("species", "sugar maple");
        ((ObjectNode) request.at("/design/laminations/0/bands/2")).put("species", "hard maple");
        assertEquals(
                List.of("No board on the rack is of sugar maple, so nothing can be made of this design."),
                stops(request).stream().map(Finding::message).toList());
    }

    private static List<Finding> stops(ObjectNode request) {
        return SheetCalculator.reach(Stocks.document(request)).findings().stream()
                .filter(finding -> finding.severity() == Finding.Severity.STOP)
                .toList();
    }
}
