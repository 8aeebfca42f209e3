package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.stock.StockRequest.Joint;
import org.orbwright.stock.StockRequest.SeamRequest;

/** What may be asked of seams on a blank 1000 mm long, and what may not. */
class SeamRulesTest {
    private static final Design DESIGN = Designs.of("cube").blank(1000).build();

    private static SeamRules scarf(double overlap, double smallest, double clearance) {
        return SeamRules.of(new SeamRequest(Joint.SCARF, overlap, smallest, clearance, 2), DESIGN);
    }

    private static List<Violation> broken(SeamRequest seams) {
        return assertThrows(ImpossibleDesignException.class, () -> SeamRules.of(seams, DESIGN))
                .violations();
    }

    private static List<Violation> brokenByScarf(double overlap, double smallest, double clearance) {
        return broken(new SeamRequest(Joint.SCARF, overlap, smallest, clearance, 2));
    }

    private static List<String> codes(List<Violation> broken) {
        return broken.stream().map(Violation::code).toList();
    }

    @Test
    void stripsAreInOnePieceIfNothingIsSaidOfSeams() {
        assertEquals(new SeamRules(0, 1000, 0, 0), SeamRules.of(null, DESIGN));
    }

    @Test
    void aStripHasOneSeamIfNothingIsSaidOfMore() {
        assertEquals(
                new SeamRules(60, 150, 40, 1),
                SeamRules.of(new SeamRequest(Joint.SCARF, 60.0, 150.0, 40.0, null), DESIGN));
        assertEquals(new SeamRules(60, 150, 40, 2), scarf(60, 150, 40));
    }

    @Test
    void aButtSeamHasNoOverlapWhetherThatIsSaidOrNot() {
        SeamRules rules = new SeamRules(0, 150, 40, 3);
        assertEquals(rules, SeamRules.of(new SeamRequest(Joint.BUTT, null, 150.0, 40.0, 3), DESIGN));
        assertEquals(rules, SeamRules.of(new SeamRequest(Joint.BUTT, 0.0, 150.0, 40.0, 3), DESIGN));
    }

    @Test
    @DisplayName("hand calculation: 2, 6 and 1.5 in are 50.8, 152.4 and 38.1 mm")
    void lengthsInInchesBecomeMillimetres() {
        Design inches = Designs.of("cube").in(LengthUnit.IN).build();
        SeamRules rules = SeamRules.of(new SeamRequest(Joint.SCARF, 2.0, 6.0, 1.5, 1), inches);
        assertEquals(50.8, rules.overlap(), 1e-9);
        assertEquals(152.4, rules.smallest(), 1e-9);
        assertEquals(38.1, rules.clearance(), 1e-9);
    }

    @Test
    void aScarfWithoutALengthIsRefused() {
        List<Violation> left = broken(new SeamRequest(Joint.SCARF, null, 150.0, 40.0, 1));
        assertEquals(List.of("SCARF_MISSING"), codes(left));
        // Nothing was said, so nothing is quoted.
        assertNull(left.get(0).rejected());
        List<Violation> zero = brokenByScarf(0, 150, 40);
        assertEquals(List.of("SCARF_MISSING"), codes(zero));
        assertEquals("0.0", zero.get(0).rejected());
    }

    @Test
    void aButtSeamWithAnOverlapIsRefused() {
        List<Violation> broken = broken(new SeamRequest(Joint.BUTT, 0.5, 150.0, 40.0, 1));
        assertEquals(List.of("SCARF_WITHOUT_JOINT"), codes(broken));
        assertEquals("0.5", broken.get(0).rejected());
    }

    @Test
    @DisplayName("hand calculation: two pieces of 520 mm with an overlap of 40 mm are 1000 mm long")
    void theShortestPieceIsAtMostHalfOfStripAndOverlap() {
        assertEquals(520, scarf(40, 520, 40).smallest());
        List<Violation> broken = brokenByScarf(40, 520.5, 40);
        assertEquals(List.of("PIECE_DOES_NOT_FIT"), codes(broken));
        assertEquals("from 40 mm to 520 mm", broken.get(0).allowed());
        assertEquals("520.5", broken.get(0).rejected());
    }

    @Test
    void aPieceIsAtLeastAsLongAsItsScarf() {
        assertEquals(40, scarf(40, 40, 40).smallest());
        List<Violation> broken = brokenByScarf(40, 39.5, 40);
        assertEquals(List.of("PIECE_DOES_NOT_FIT"), codes(broken));
        assertEquals("from 40 mm to 520 mm", broken.get(0).allowed());
    }

    @Test
    void aScarfIsShorterThanTheBlank() {
        // Two pieces of 999.5 mm that overlap by 999 mm are 1000 mm long.
        assertEquals(999, scarf(999, 999.5, 40).overlap());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1000, 1000.5})
    void aScarfAsLongAsTheBlankIsRefused(double overlap) {
        // Two pieces as long as the blank would hold it, but lie one upon the other and need no seam.
        List<Violation> broken = brokenByScarf(overlap, 1000, 40);
        assertEquals(List.of("SCARF_TOO_LONG"), codes(broken));
        assertEquals("a length below 1000 mm", broken.get(0).allowed());
    }

    @Test
    void aClearanceIsShorterThanTheBlank() {
        assertEquals(999.5, scarf(40, 150, 999.5).clearance());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1000, 1000.5})
    void aClearanceAsLongAsTheBlankIsRefused(double clearance) {
        List<Violation> broken = brokenByScarf(40, 150, clearance);
        assertEquals(List.of("CLEARANCE_TOO_LONG"), codes(broken));
        assertEquals("a length below 1000 mm", broken.get(0).allowed());
    }

    @Test
    void everythingThatIsWrongIsSaidAtOnce() {
        List<Violation> broken = broken(new SeamRequest(Joint.BUTT, 40.0, 600.0, 2000.0, 1));
        assertEquals(List.of("SCARF_WITHOUT_JOINT", "PIECE_DOES_NOT_FIT", "CLEARANCE_TOO_LONG"), codes(broken));
        assertEquals(
                List.of("/stock/seams/scarf", "/stock/seams/smallestPiece", "/stock/seams/clearance"),
                broken.stream().map(Violation::path).toList());
    }
}
