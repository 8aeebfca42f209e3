package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.document.Document;
import org.orbwright.document.Section;
import org.orbwright.fixture.Designs;
import org.orbwright.jig.JigRequest;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.sheet.Finding.Severity;
import org.orbwright.source.Source;
import org.orbwright.stock.BoardRequest;
import org.orbwright.stock.BoardRequest.Surface;
import org.orbwright.stock.StockRequest;
import org.orbwright.stock.StockRequest.AllowancesRequest;

/** Warnings of lengths that were probably stated in the wrong unit. */
@Source(CONTRACT)
class UnitFindingsTest {
    private static final Designs METRIC =
            Designs.of("dodecahedron").bands(Designs.widths(20.0, null)).blank(900);
    private static final Designs INCHES = METRIC.times(1 / 25.4).in(LengthUnit.IN);

    @Test
    void designsInEitherUnitHaveNone() {
        assertEquals(List.of(), slips(SheetCalculator.sheet(METRIC.document(), 2)));
        assertEquals(List.of(), slips(SheetCalculator.sheet(INCHES.document(), 2)));
    }

    @Test
    void kerfInMillimetresIsNamedInADesignInInches() {
        Document document = INCHES.saw(3.2, 0).document();
        Finding slip = only(slips(SheetCalculator.sphere(document)));
        assertEquals(
                new Finding(
                        FindingCode.UNIT_SLIP,
                        Severity.WARN,
                        "saw.kerf is 3.2 in, which is 81.28 mm. Usual values are 0.02 in to 0.315 in."
                                + " If mm was meant, write 0.126.",
                        "/saw/kerf"),
                slip);
        assertEquals(List.of(slip), slips(SheetCalculator.sheet(document, 2)));
        assertEquals(List.of(slip), slips(SheetCalculator.angles(document)));
    }

    @Test
    void panelOfOneMillimetreIsNamedAndOneOfOneInchIsNot() {
        Finding slip = only(slips(SheetCalculator.angles(METRIC.thickness(1).document())));
        assertEquals(
                "panel.thickness is 1 mm, which is 0.039 in. Usual values are 4 mm to 120 mm. If in was meant, write 25.4.",
                slip.message());
        assertEquals("/panel/thickness", slip.field());
        assertEquals(List.of(), slips(SheetCalculator.angles(INCHES.thickness(1).document())));
    }

    @Test
    @DisplayName("5 m of sphere is unusual, but what it would be in inches is no more usual: nothing is proposed")
    void nothingIsProposedThatIsUnusualToo() {
        Finding slip =
                only(slips(SheetCalculator.angles(METRIC.acrossFlats(5000).document())));
        assertEquals("size.value is 5000 mm, which is 196.85 in. Usual values are 20 mm to 1500 mm.", slip.message());
    }

    @Test
    void boardsInTheWrongUnitAreNamedWhereStockIsUsedAndTheFirstStandsForAll() {
        Document document = METRIC.document(
                Section.STOCK,
                rack(
                        null,
                        board(72.0, 6.0, 30.0, null),
                        board(72.0, 120.0, 30.0, null),
                        board(60.0, 120.0, 30.0, null)));
        List<Finding> slips = slips(SheetCalculator.stock(document));
        assertEquals(
                List.of("/stock/boards/0/length", "/stock/boards/0/width"),
                slips.stream().map(Finding::field).toList());
        assertEquals(
                "stock.boards.0.length is 72 mm, which is 2.835 in. Usual values are 80 mm to 8000 mm."
                        + " If in was meant, write 1828.8. 2 more like it are unusual too.",
                slips.get(0).message());
        assertEquals(slips, slips(SheetCalculator.build(document, 2)));
        assertEquals(List.of(), slips(SheetCalculator.sheet(document, 2)));
        assertEquals(List.of(), slips(SheetCalculator.jig(document)));
    }

    @Test
    void sectionThatIsFilledInHasNoSlipOfItsOwn() {
        assertEquals(List.of(), slips(SheetCalculator.jig(METRIC.document(Section.JIG, new JigRequest(null, null)))));
        Finding slip = only(slips(SheetCalculator.jig(METRIC.document(Section.JIG, new JigRequest(5.0, null)))));
        assertEquals("/jig/sineBar", slip.field());
    }

    @Test
    void sentencesAreShort() {
        Document document =
                METRIC.document(Section.STOCK, rack(null, board(72.0, 6.0, 3.0, null), board(72.0, 6.0, 3.0, null)));
        for (Finding slip : slips(SheetCalculator.stock(document))) {
            assertTrue(
                    Arrays.stream(slip.message().split("\\. ")).allMatch(sentence -> sentence.split(" ").length <= 25));
        }
    }

    @Test
    void roughBoardsWithoutAnAllowanceForPlaningAreNotedOnce() {
        BoardRequest rough = board(1800.0, 120.0, 40.0, null);
        BoardRequest surfaced = board(1800.0, 120.0, 40.0, Surface.SURFACED);
        Finding note = only(found(FindingCode.NO_SURFACING, rack(null, rough, surfaced, rough)));
        assertEquals(
                new Finding(
                        FindingCode.NO_SURFACING,
                        Severity.NOTE,
                        "4 boards are rough, but nothing is allowed for planing the faces: see"
                                + " stock.allowances.planing.",
                        "/stock/allowances"),
                note);
        assertEquals(List.of(), found(FindingCode.NO_SURFACING, rack(null, surfaced)));
        assertEquals(List.of(), found(FindingCode.NO_SURFACING, rack(1.5, rough)));
    }

    private static List<Finding> found(FindingCode code, StockRequest stock) {
        return SheetCalculator.stock(METRIC.document(Section.STOCK, stock)).findings().stream()
                .filter(finding -> finding.code() == code)
                .toList();
    }

    /** Two walnut boards alike. */
    private static BoardRequest board(double length, double width, double thickness, Surface surface) {
        return new BoardRequest(null, "walnut", length, width, thickness, 2, surface, null, null, null, null, null);
    }

    private static StockRequest rack(Double planing, BoardRequest... boards) {
        AllowancesRequest allowances = new AllowancesRequest(null, null, planing, null, null, null, null);
        return new StockRequest(List.of(boards), null, allowances, null, null, null);
    }

    private static List<Finding> slips(Answer answer) {
        return answer.findings().stream()
                .filter(finding -> finding.code() == FindingCode.UNIT_SLIP)
                .toList();
    }

    private static Finding only(List<Finding> findings) {
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }
}
