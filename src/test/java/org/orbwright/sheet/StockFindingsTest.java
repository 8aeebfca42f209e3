package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Stocks;
import org.orbwright.sheet.Finding.Severity;
import org.orbwright.source.Source;
import org.orbwright.stock.RackBoard;
import org.orbwright.stock.RackBoard.Use;
import org.orbwright.stock.ShoppingRow;
import org.orbwright.stock.StockPlan.Seam;

/** What is found about boards and seams, and what is refused. */
@Source(CONTRACT)
class StockFindingsTest {
    private static final String MAPLE = "'species':'sugar maple','length':1010,'width':130,'thickness':";

    private static Answer answer(ObjectNode request) {
        return SheetCalculator.stock(Stocks.document(request));
    }

    private static List<Finding> found(Answer answer, FindingCode code) {
        return answer.findings().stream()
                .filter(finding -> finding.code() == code)
                .toList();
    }

    private static void assertSays(Finding finding, Severity severity, String field, String message) {
        assertEquals(new Finding(finding.code(), severity, message, field), finding);
    }

    private static ObjectNode maple(String boards) {
        ObjectNode request = Stocks.oneWood(1);
        request.remove("seams");
        request.remove("allowances");
        Stocks.boards(request, boards);
        return request;
    }

    @Test
    void boardsThatAreOfNoUseAreNamed() {
        Answer answer = answer(maple("[{" + MAPLE + "30,'count':20},{" + MAPLE + "30,'price':9},"
                + "{'species':'walnutt','length':1010,'width':130,'thickness':30},"
                + "{'species':'sugar maple','length':580,'width':130,'thickness':30,'name':'stub'}]"));
        List<Use> uses = answer.stock().rack().stream().map(RackBoard::use).toList();
        assertEquals(List.of(Use.CUT, Use.SPARE, Use.NOT_NEEDED, Use.TOO_SMALL), uses);
        assertSays(
                found(answer, FindingCode.BOARD_NOT_NEEDED).get(0),
                Severity.NOTE,
                "/stock/boards/2/species",
                "No band of the design is of walnutt, the wood of this board. The table knows: black walnut, European"
                        + " walnut.");
        assertSays(
                found(answer, FindingCode.BOARD_TOO_SMALL).get(0),
                Severity.NOTE,
                "/stock/boards/3",
                "Surfaced and without its ends this board of sugar maple (stub) is 580 mm long, 130 mm wide and 30 mm"
                        + " thick: none of the strips fits on it.");
    }

    @Test
    void boardsWhoseNameMayMeanTheBandsWoodAreCutAndSaid() {
        ObjectNode request = Stocks.example();
        request.remove("offers");
        Stocks.boards(request, "[{'species':'walnut','length':1300,'width':300,'thickness':40}]");
        Answer answer = answer(request);
        assertEquals(Use.CUT, answer.stock().rack().get(0).use());
        assertSays(
                found(answer, FindingCode.WOOD_NAME_UNCLEAR).get(0),
                Severity.NOTE,
                "/stock/boards/0/species",
                "This board of walnut is planned for the bands of black walnut. One of the names may mean several"
                        + " woods, so make sure that they are the same.");
    }

    @Test
    void boardsWhoseNameMayMeanSeveralBandsAreNotCut() {
        ObjectNode request = maple("[{'species':'ash','length':1300,'width':300,'thickness':40}]");
        ((ObjectNode) request.at("/design/laminations/0/bands/0")).put("species", "white ash");
        ((ObjectNode) request.at("/design/laminations/0/bands/1")).put("species", "black ash");
        Answer answer = answer(request);
        assertEquals(Use.NOT_NEEDED, answer.stock().rack().get(0).use());
        assertSays(
                found(answer, FindingCode.BOARD_NOT_NEEDED).get(0),
                Severity.NOTE,
                "/stock/boards/0/species",
                "No band of the design is of ash, the wood of this board. It may be white ash or black ash: give it"
                        + " the name of the one that it is.");
    }

    @Test
    @Source(INVARIANT)
    void boardsThatAreCutAndLeftAddUp() {
        Answer answer = answer(Stocks.example());
        for (RackBoard board : answer.stock().rack()) {
            long cut = answer.stock().boards().stream()
                    .filter(one -> board.board() == null
                            ? board.offer().equals(one.offer())
                            : board.board().equals(one.board()))
                    .count();
            assertEquals(cut, board.cut());
            if (board.board() != null) {
                Integer count = Stocks.request(Stocks.example())
                        .boards()
                        .get(board.board() - 1)
                        .count();
                assertEquals(count == null ? 1 : count, board.cut() + board.left());
            }
        }
    }

    @Test
    void everyTwistedBoardIsNamedWhetherItIsCutOrNot() {
        Answer answer = answer(maple("[{" + MAPLE + "30,'twist':8,'shimmed':false},{" + MAPLE + "40}]"));
        assertSays(
                found(answer, FindingCode.BOARD_TWISTED).get(0),
                Severity.NOTE,
                "/stock/boards/0/twist",
                "Flattening this board of sugar maple takes 4 mm of its thickness if it is shimmed and 8 mm if it is"
                        + " not. It loses less if it is crosscut to sections first.");
    }

    @Test
    void aBlankThatIsTooShortLeavesTheListIncomplete() {
        ObjectNode request = Stocks.shortBlanks();
        Answer answer = answer(request);
        assertFalse(answer.stock().complete());
        assertEquals(1, answer.stock().unplanned().size());
        assertEquals(120, answer.stock().unplanned().get(0).segments(), "two dodecahedra");
        assertEquals(
                "/blank/length",
                found(answer, FindingCode.BLANK_TOO_SHORT).get(0).field());
        List<ShoppingRow> rows =
                SheetCalculator.purchases(Stocks.document(request)).purchases().rows();
        assertEquals(ShoppingRow.Kind.UNPLANNED, rows.get(1).row());
        assertEquals(120, rows.get(1).count());
    }

    @ParameterizedTest
    @CsvSource({"SCARF, NOTE, The scarf is longer than the kerf", "BUTT, WARN, The cut leans across the strip"})
    @Source(
            value = HAND,
            text = "a cut at 36 degrees leans by 20 tan 36 degrees over a strip of 20 mm, of which the kerf takes "
                    + "3.2 / cos 36 degrees")
    @Slow
    void seamsThatReachBeyondTheirCutAreWarnedOf(String joint, Severity severity, String words) {
        ObjectNode request = Stocks.example();
        request.remove("offers");
        Stocks.boards(request, "[{'species':'walnut','length':500,'width':300,'thickness':40,'count':40}]");
        request.set("search", Stocks.read("{'work':0.2,'seconds':60}"));
        request.set(
                "seams",
                Stocks.read("{'joint':'" + joint + "','smallestPiece':150,'clearance':10,'scarf':"
                        + (joint.equals("BUTT") ? 0 : 40) + "}"));
        Answer answer = answer(request);
        double farthest = answer.stock().strips().stream()
                .flatMap(strip -> strip.makeUps().stream())
                .flatMap(makeUp -> makeUp.seams().stream())
                .mapToDouble(Seam::beyondKerf)
                .max()
                .orElseThrow();
        Finding finding = found(answer, FindingCode.SEAM_IN_SEGMENT).get(0);
        assertEquals(severity, finding.severity());
        assertTrue(finding.message().contains(words), finding::message);
        // The walnut at the base is 20 mm wide and its cuts lean by tan 36 degrees; the kerf takes 3.2 / cos 36
        // degrees.
        double by = 20 * Math.tan(Math.PI / 5) - 3.2 / Math.cos(Math.PI / 5) + (joint.equals("BUTT") ? 0 : 40);
        assertEquals(by / 2, farthest, 1e-6);
    }

    static Stream<Arguments> refused() {
        return Stream.of(
                Arguments.of(
                        "{'joint':'SCARF','scarf':600,'smallestPiece':150,'clearance':0}",
                        "/stock/seams/scarf",
                        "A scarf of 600 mm does not fit on a blank of 584 mm.",
                        "a length below 584 mm"),
                Arguments.of(
                        "{'joint':'SCARF','scarf':200,'smallestPiece':150,'clearance':0}",
                        "/stock/seams/smallestPiece",
                        "Two pieces of at least 150 mm with an overlap of 200 mm do not make a strip of 584 mm.",
                        "from 200 mm to 392 mm"),
                Arguments.of(
                        "{'joint':'BUTT','smallestPiece':150,'clearance':584}",
                        "/stock/seams/clearance",
                        "No two seams are 584 mm apart on a blank of 584 mm.",
                        "a length below 584 mm"));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void seamsThatNoBlankHoldsAreRefused(String seams, String path, String message, String allowed) {
        ObjectNode request = Stocks.example();
        request.set("seams", Stocks.read(seams));
        Violation violation = assertThrows(ImpossibleDesignException.class, () -> answer(request))
                .violations()
                .get(0);
        assertEquals(path, violation.path());
        assertEquals(message, violation.message());
        assertEquals(allowed, violation.allowed());
    }

    @Test
    void aSearchThatIsCutShortSaysWhatIsOpen() {
        ObjectNode request = Stocks.example();
        request.set("search", Stocks.read("{'work':0.01,'seconds':60}"));
        List<Finding> open = found(answer(request), FindingCode.PLAN_NOT_PROVED);
        assertFalse(open.isEmpty());
        assertTrue(
                open.stream().allMatch(finding -> finding.message().matches(".*may cost (up to [0-9.]+ % )?less\\.")),
                open::toString);
    }
}
