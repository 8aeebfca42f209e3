package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.sheet.Finding.Severity.STOP;
import static org.orbwright.sheet.Finding.Severity.WARN;
import static org.orbwright.sheet.Findings.assertAbsent;
import static org.orbwright.sheet.Findings.assertFound;
import static org.orbwright.source.Kind.CONTRACT;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Stocks;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.source.Source;

/** Strips that machines do not hold, on both sides of each limit. */
@Source(CONTRACT)
class StripFindingsTest {
    private static Designs cube(Double... widths) {
        return Designs.of("cube").bands(Designs.widths(widths));
    }

    @Nested
    class Ripping {
        @Test
        @DisplayName("no strips narrower than 1/4 in between fence and blade (WOOD magazine, The skinny on thin parts)")
        void aQuarterOfAnInch() {
            assertAbsent(FindingCode.NARROW_STRIP, cube(40.0, 6.35, null));
            assertFound(
                    FindingCode.NARROW_STRIP,
                    WARN,
                    "/laminations/0/bands/1/width",
                    cube(40.0, 6.3, null),
                    "Band 2 (sugar maple) of the square segments is only 6.3 mm wide",
                    "narrower than 6.35 mm",
                    "band saw");
        }

        @Test
        @DisplayName("strips of 1/16 in are ripped (Guild of New Hampshire Woodworkers, Ripping thin stock), not below")
        void aSixteenthOfAnInch() {
            assertFound(FindingCode.NARROW_STRIP, WARN, "/laminations/0/bands/0/width", cube(1.59, null));
            assertFound(
                    FindingCode.NARROW_STRIP,
                    STOP,
                    "/laminations/0/bands/0/width",
                    cube(1.57, null),
                    "only 1.57 mm wide",
                    "Do not saw it",
                    "veneer");
            assertFound(
                    FindingCode.NARROW_STRIP,
                    STOP,
                    "/laminations/0/bands/1/width",
                    cube(40.0, 0.02 * 25.4, null).times(1 / 25.4).in(LengthUnit.IN),
                    "only 0.02 in wide",
                    "narrower than 0.06");
        }

        @Test
        void aStripNarrowerThanTheKerfMayDropBesideTheBlade() {
            Designs narrow = cube(40.0, 3.0, null);
            String kerf = "It is narrower than the kerf of 3.2 mm, and can drop into the slot beside the blade.";
            assertFound(FindingCode.NARROW_STRIP, WARN, "/laminations/0/bands/1/width", narrow.saw(3.2, 0), kerf);
            assertTrue(Findings.of(FindingCode.NARROW_STRIP, narrow.saw(2.6, 0)).stream()
                    .noneMatch(finding -> finding.message().contains("kerf")));
        }

        @Test
        void theNarrowestOfALaminationStandsForAll() {
            List<Finding> found = Findings.of(FindingCode.NARROW_STRIP, cube(5.0, 4.0, 1.0, 30.0, 6.0, null));
            assertEquals(
                    List.of(STOP, WARN), found.stream().map(Finding::severity).toList());
            assertEquals("/laminations/0/bands/2/width", found.get(0).field());
            assertEquals("/laminations/0/bands/1/width", found.get(1).field());
            assertTrue(found.get(1).message().endsWith("The same goes for 2 other bands."), found.get(1)::message);
        }

        /** Widths are chosen where bands are, long before a saw is stated. */
        @Test
        void theBandsAloneAreJudgedToo() {
            assertTrue(SheetCalculator.bands(cube(40.0, 0.6, null).document(), 2).findings().stream()
                    .anyMatch(finding -> finding.code() == FindingCode.NARROW_STRIP && finding.severity() == STOP));
        }
    }

    @Nested
    class Planing {
        private List<Finding> found(double width, String allowances) {
            ObjectNode request = Stocks.oneWood(1);
            double[] widths = {13, width, 13, 13};
            for (int band = 0; band < widths.length; band++) {
                ((ObjectNode) request.at("/design/laminations/0/bands/" + band)).put("width", widths[band]);
            }
            request.remove("seams");
            request.set("allowances", Stocks.read(allowances));
            return SheetCalculator.stock(Stocks.document(request)).findings().stream()
                    .filter(finding -> finding.code() == FindingCode.THIN_TO_PLANE)
                    .filter(finding -> finding.field().endsWith("/bands/1/width"))
                    .toList();
        }

        /** Craftex CX125HC: no thinner than 3/16 in. Jet JPM-13CS, as WoodWeb quotes it: no thinner than 1/2 in. */
        @Test
        void betweenTheManualsLimitsItIsAWarningAndBelowAllAStop() {
            assertEquals(List.of(), found(12.7, "{'stripPlaning':1}"));
            Finding thin = found(4.8, "{'stripPlaning':1}").get(0);
            assertEquals(WARN, thin.severity());
            assertTrue(
                    thin.message().contains("is planed to 4.8 mm. Manuals of planers ask for at least 4.76 mm to 12.7"),
                    thin::message);
            Finding thinner = found(4.7, "{'stripPlaning':1}").get(0);
            assertEquals(STOP, thinner.severity());
            assertTrue(thinner.message().contains("allows less than 4.76 mm"), thinner::message);
        }

        @Test
        void whatIsNotPlanedIsNotJudged() {
            assertEquals(List.of(), found(4, "{'blankFlattening':1}"));
        }
    }
}
