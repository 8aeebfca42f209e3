package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.PUBLISHED;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.fixture.Designs;
import org.orbwright.sheet.Finding.Severity;
import org.orbwright.source.Source;

/** What is found about the saw's settings, on both sides of each limit. */
@Source(CONTRACT)
class JigFindingsTest {
    private static List<Finding> found(FindingCode code, Designs designs) {
        return SheetCalculator.jig(designs.document()).findings().stream()
                .filter(finding -> finding.code() == code)
                .toList();
    }

    private static void assertWarns(List<Finding> found, String field, String words) {
        assertEquals(1, found.size());
        assertEquals(Severity.WARN, found.get(0).severity());
        assertEquals(field, found.get(0).field());
        assertTrue(found.get(0).message().contains(words), found.get(0).message());
    }

    @Test
    void withoutALandTheFenceHasNoBearing() {
        assertWarns(
                found(FindingCode.NO_LAND, Designs.of("cube")),
                "/panel/land",
                "A fence above the blade has nothing to bear on");
        assertEquals(List.of(), found(FindingCode.NO_LAND, Designs.of("cube").land(0.5)));
    }

    /** A cube's seam is sqrt 2 times as wide as the bevelled part is thick. */
    @Test
    @DisplayName("a cube's seam of 6 mm is bevelled 6 / sqrt 2 = 4.2426 mm deep")
    @Source(value = HAND, text = "a cube's seam is sqrt 2 times as wide as the bevelled part is thick")
    void narrowSeams() {
        Designs cube = Designs.of("cube").land(1);
        assertEquals(List.of(), found(FindingCode.SEAM_NARROW, cube.thickness(5.2427)));
        assertWarns(
                found(FindingCode.SEAM_NARROW, cube.thickness(5.2)),
                "/panel/thickness",
                "a seam only 5.93 mm wide. Less than 6 mm");
    }

    @Test
    @DisplayName("a cube's seam of 80 mm is bevelled 80 / sqrt 2 = 56.5685 mm deep")
    @Source(value = HAND, text = "a cube's seam is sqrt 2 times as wide as it is deep")
    void bladesBeyondCommonSaws() {
        Designs cube = Designs.of("cube").land(1);
        assertEquals(List.of(), found(FindingCode.BLADE_BEYOND_SAW, cube.thickness(57.5)));
        assertWarns(
                found(FindingCode.BLADE_BEYOND_SAW, cube.thickness(58)),
                "/panel/thickness",
                "a blade height of 57 mm. It needs 80.62 mm of blade along its tilt");
    }

    @Test
    @Source(
            value = PUBLISHED,
            text = "OEIS A137914: two faces of a tetrahedron make arccos(1 / 3), half of which is 35.264 degrees")
    void steepTiltsNameTheUprightTilt() {
        assertWarns(
                found(FindingCode.TILT_BEYOND_SAW, Designs.of("tetrahedron").edge(300)),
                "/solid",
                "held upright on a carrier, where the tilt is 35.26 degrees");
    }

    @Test
    void aSphereThatBreaksThroughStopsTheSawToo() {
        Designs thin = Designs.of("cube").thickness(10).land(1);
        List<Finding> found = found(FindingCode.BREAK_THROUGH, thin);
        assertEquals(1, found.size());
        assertEquals(Severity.STOP, found.get(0).severity());
        assertEquals("/panel/thickness", found.get(0).field());
        assertEquals(List.of(), found(FindingCode.BREAK_THROUGH, thin.thickness(60)));
    }

    /** Cautions of the offcut and the stop are limits, never promises. */
    @Test
    void cautionsNameTheWedgeAndTheStop() {
        List<String> texts = SheetCalculator.jig(Designs.of("cube").document()).cautions().stream()
                .map(Caution::text)
                .toList();
        assertTrue(texts.stream().anyMatch(text -> text.contains("with open room below it for the wedge")));
        assertTrue(
                texts.stream().anyMatch(text -> text.contains("Stop the saw and wait until the blade stands still")));
        assertTrue(texts.stream().anyMatch(text -> text.contains("Never use a rip fence, or anything fixed")));
        assertTrue(texts.stream().anyMatch(text -> text.endsWith("it does not make the cut safe.")));
    }
}
