package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.orbwright.band.SolveRequest;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.SolveRequest.WishRequest;
import org.orbwright.document.Section;
import org.orbwright.fixture.Designs;
import org.orbwright.sheet.Finding.Severity;
import org.orbwright.source.Source;

/** What is said of wishes that do not come true, with a step and without. */
@Source(CONTRACT)
class SolveFindingsTest {
    private static final WishRequest WIDTH = new WishRequest(3, Measure.EDGE_MIDDLE, 12.0);
    private static final WishRequest CORNER = new WishRequest(3, Measure.CORNER, 18.0);

    private static List<Finding> found(Double step, WishRequest... wishes) {
        return SheetCalculator.solve(Designs.of("dodecahedron")
                        .bands(Designs.widths(10.0, 5.0, null))
                        .document(Section.SOLVE, new SolveRequest(null, null, List.of(wishes), step)))
                .findings()
                .stream()
                .filter(finding -> finding.code() == FindingCode.WISHES_NOT_MET)
                .toList();
    }

    @Test
    void proofThatHoldsForAStepAloneSaysSo() {
        List<Finding> exact = found(null, WIDTH, CORNER);
        assertEquals(1, exact.size());
        assertEquals(Severity.WARN, exact.get(0).severity());
        String message = exact.get(0).message();
        assertTrue(message.startsWith("The wishes cannot all come true. These widths are a compromise."), message);
        assertTrue(message.contains(" No widths bring all wishes nearer than 19.99 %."), message);
        String stepped = found(5.0, WIDTH, CORNER).get(0).message();
        assertTrue(stepped.startsWith("The wishes cannot all come true."), stepped);
        assertTrue(stepped.contains(" No widths in this step bring all wishes nearer than "), stepped);
        assertFalse(stepped.contains("No widths bring"), stepped);
    }

    @Test
    void stepThatSpoilsAWishIsNoted() {
        List<Finding> coarse = found(5.0, WIDTH);
        assertEquals(1, coarse.size());
        assertEquals(Severity.NOTE, coarse.get(0).severity());
        assertEquals("/solve/step", coarse.get(0).field());
        String message = coarse.get(0).message();
        assertTrue(message.startsWith("The step leaves wish 1 "), message);
        assertTrue(message.endsWith(" % off. Without a step all wishes come true."), message);
        assertEquals(List.of(), found(0.05, WIDTH));
        assertEquals(List.of(), found(null, WIDTH));
    }
}
