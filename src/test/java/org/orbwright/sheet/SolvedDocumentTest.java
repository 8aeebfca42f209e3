package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.orbwright.source.Kind.CONTRACT;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.orbwright.band.SolveRequest;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.SolveRequest.WishRequest;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.Places;
import org.orbwright.design.SphereSet;
import org.orbwright.document.Document;
import org.orbwright.document.Section;
import org.orbwright.fixture.Designs;
import org.orbwright.jig.JigRequest;
import org.orbwright.source.Source;

/** The document that comes back with the widths that were looked for. */
@Source(CONTRACT)
class SolvedDocumentTest {
    private static final JigRequest UNUSED = new JigRequest(null, 300.0);
    private static final Document WRITTEN = Designs.of("dodecahedron")
            .bands(List.of(
                    Designs.band("walnut", 1.0),
                    Designs.band("ash", 2.0),
                    Designs.band("maple", 3.0),
                    Designs.band("cherry", null)))
            .document(
                    Section.SOLVE,
                    new SolveRequest(
                            null,
                            null,
                            List.of(
                                    new WishRequest(3, Measure.EDGE_MIDDLE, 8.0),
                                    new WishRequest(1, Measure.REST, 2.0)),
                            0.5))
            .with(Section.JIG, UNUSED);

    @Test
    void wishesAreWrittenOutAndSectionsThatAreNotUsedStay() {
        Document solved = SheetCalculator.solve(WRITTEN).document();
        assertEquals(
                new SolveRequest(
                        "pentagon",
                        Places.ALL,
                        SphereSet.UPRIGHT,
                        List.of(
                                new WishRequest(3, Measure.EDGE_MIDDLE, SphereSet.UPRIGHT, 8.0),
                                new WishRequest(1, Measure.REST, 2.0),
                                new WishRequest(2, Measure.REST, 1.0),
                                new WishRequest(4, Measure.REST, 1.0)),
                        0.5),
                solved.solve());
        assertEquals(UNUSED, solved.jig());
    }

    @Test
    void lastRestStaysOpenAndTheDocumentAnswersTheSameAgain() {
        Answer answer = SheetCalculator.solve(WRITTEN);
        List<BandRequest> bands = answer.document().laminations().get(0).bands();
        assertNull(bands.get(3).width());
        assertEquals(0, bands.get(2).width() % 0.5, 1e-9);
        assertEquals(2 * answer.solve().bands().get(1).width(), bands.get(0).width(), 1e-9);
        assertEquals(answer.document(), SheetCalculator.solve(answer.document()).document());
        assertEquals(answer.solve(), SheetCalculator.solve(answer.document()).solve());
    }

    @Test
    void widthThatWasFoundIsNoSlipOfTheUnit() {
        Document tiny = WRITTEN.with(
                Section.SOLVE,
                new SolveRequest(null, null, List.of(new WishRequest(1, Measure.EDGE_MIDDLE, 0.1)), null));
        assertEquals(
                List.of(),
                SheetCalculator.solve(tiny).findings().stream()
                        .filter(finding -> finding.code() == FindingCode.UNIT_SLIP)
                        .toList());
    }
}
