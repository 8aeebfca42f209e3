package org.orbwright.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.SizeBy;
import org.orbwright.design.Violation;
import org.orbwright.document.Document;
import org.orbwright.document.ExploreRequest;
import org.orbwright.document.ExploreRequest.VaryRequest;
import org.orbwright.document.Section;
import org.orbwright.quantity.LengthUnit;

/** Sweeps in a line. */
final class Sweeps {
    static final String WALL = "/sphere/thinnestWall";
    static final String DIAMETER = "/sphere/diameter";
    static final String SURVIVAL = "/bands/faces/0/segments/0/upright/0/survival";

    private Sweeps() {}

    static DesignRequest metric() {
        return sketch().request();
    }

    static DesignRequest imperial() {
        return sketch().unit(LengthUnit.IN)
                .size(SizeBy.ACROSS_FLATS, 7)
                .panel(1.1, null)
                .allowance(0.08)
                .wall(0.25)
                .laminations(lamination(null, null, 0.75, 0.25, null))
                .request();
    }

    static VaryRequest list(String field, Double... values) {
        return new VaryRequest(field, List.of(values), null, null, null);
    }

    static VaryRequest range(String field, double from, double to, int count) {
        return new VaryRequest(field, null, from, to, count);
    }

    static Document request(DesignRequest design, List<VaryRequest> vary, String... outputs) {
        return Document.of(design).with(Section.EXPLORE, new ExploreRequest(vary, List.of(outputs)));
    }

    static List<SweepRow> rows(DesignRequest design, List<VaryRequest> vary, String... outputs) {
        List<SweepRow> rows = new ArrayList<>();
        Sweep.of(request(design, vary, outputs)).forEachRemaining(rows::add);
        return rows;
    }

    static List<Violation> refusals(Document request) {
        return assertThrows(ImpossibleDesignException.class, () -> Sweep.of(request))
                .violations();
    }

    static Violation refusal(DesignRequest design, List<VaryRequest> vary, String... outputs) {
        List<Violation> violations = refusals(request(design, vary, outputs));
        assertEquals(1, violations.size(), violations::toString);
        return violations.get(0);
    }
}
