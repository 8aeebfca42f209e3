package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.design.Design;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.segment.Yield.LaminationYield;
import org.orbwright.segment.Yield.StripYield;
import org.orbwright.segment.YieldCalculator;
import org.orbwright.stock.StockPlan.StripNeed;
import org.orbwright.stock.StockRequest.AllowancesRequest;
import org.orbwright.stock.StockRequest.SearchRequest;

/** The strips that boards are asked for are those of the yield: of every layer, and the spares. */
@Slow
class StripsOfAYieldTest {
    private static final double FLATTENING = 2;

    @ParameterizedTest
    @CsvSource({
        "cube, 1, 0, 0",
        "cube, 3, 0, 0",
        "cube, 1, 5, 2",
        "rhombic-triacontahedron, 2, 3, 1",
        "truncated-icosahedron, 2, 4, 3"
    })
    void asManyAndAsThickAsTheYieldSays(String solid, int layers, int segments, int strips) {
        Design design = Designs.of(solid)
                .bands(Designs.widths(10.0, null))
                .layers(layers)
                .spares(segments, strips)
                .build();
        StockPlan plan = StockCalculator.plan(
                new StockRequest(
                        null,
                        null,
                        new AllowancesRequest(null, null, null, null, null, null, FLATTENING),
                        null,
                        null,
                        new SearchRequest(0.01, 5.0)),
                design);
        for (LaminationYield lamination : YieldCalculator.calculate(design).laminations()) {
            int index = design.panelAt(lamination.face(), 0).lamination().index();
            for (StripYield strip : lamination.strips()) {
                int needed = 0;
                for (StripNeed need : plan.strips()) {
                    if (need.lamination() == index + 1 && need.band() == strip.band()) {
                        needed += need.needed();
                        assertEquals(strip.thickness() + FLATTENING, need.thickness(), 1e-9);
                    }
                }
                assertEquals(strip.count(), needed);
            }
        }
    }
}
