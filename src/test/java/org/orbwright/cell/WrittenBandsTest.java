package org.orbwright.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.Places;
import org.orbwright.design.Violation;
import org.orbwright.quantity.LengthUnit;

class WrittenBandsTest {
    private final List<Violation> broken = new ArrayList<>();

    private List<LaminationRequest> read(String text) {
        return WrittenBands.read(text, LengthUnit.IN, null, broken);
    }

    /** Each of these once made one wood of two, and a wrong number without a word. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "sugar maple 3/4, black walnut rest",
                "sugar maple 3/4,black walnut rest",
                "sugar maple 0,75, black walnut rest",
                "sugar maple 3/4 black walnut rest",
                "sugar maple 3/4\nblack walnut rest",
                "sugar maple \u00be + black walnut rest",
                "sugar maple 20 / black walnut 30",
            })
    void bandsThatAreNotPartedAreRefused(String text) {
        read(text);
        assertEquals(1, broken.size());
        assertTrue(broken.get(0).message().startsWith("bands has a comma or a number within a wood's name in "));
    }

    @Test
    void aDecimalCommaIsNoneInAName() {
        assertEquals(
                List.of(new BandRequest("maple", 0.75), new BandRequest("black walnut", null)),
                read("maple 0,75; black walnut rest").get(0).bands());
        assertTrue(broken.isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Pentagon: maple rest", "pentagon: maple rest", " PENTAGON : maple rest"})
    void capitalsDoNotMatterInTheNameOfAFace(String text) {
        assertEquals("pentagon", read(text).get(0).face());
        assertTrue(broken.isEmpty());
    }

    @Test
    void everySecondSegmentMayDiffer() {
        List<BandRequest> maple = List.of(new BandRequest("maple", null));
        List<BandRequest> walnut = List.of(new BandRequest("walnut", null));
        assertEquals(
                List.of(
                        new LaminationRequest("hexagon", Places.ODD, null, null, maple),
                        new LaminationRequest("hexagon", Places.EVEN, null, null, walnut),
                        new LaminationRequest("square", null, null, null, maple)),
                read("hexagon ODD: maple rest | hexagon even: walnut rest | square: maple rest"));
        assertEquals(
                List.of(
                        new LaminationRequest(null, Places.ODD, null, null, maple),
                        new LaminationRequest(null, Places.EVEN, null, null, walnut)),
                read("ODD: maple rest | EVEN: walnut rest"));
        assertTrue(broken.isEmpty());
    }

    @Test
    void aHeadingIsNeeded() {
        read(": maple rest");
        assertTrue(broken.get(0).message().startsWith("bands has nothing before the colon in "));
    }
}
