package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.fixture.Designs;

/** A solid of so many pieces of wood that its body might have too many triangles. */
class ManyPiecesTest {
    private static final BodyOptions WOODS = new BodyOptions(BandSet.UPRIGHT, false, null);

    /** A solid of 30 squares, 20 hexagons and 12 decagons has 360 segments. */
    private static Design banded(int bands) {
        String solid = "truncated-icosidodecahedron";
        List<LaminationRequest> laminations = new ArrayList<>();
        Designs.of(solid).build().facePanels().forEach(panel -> {
            List<Double> widths = new ArrayList<>(Collections.nCopies(bands - 1, panel.baseDistance() / bands));
            widths.add(null);
            laminations.add(Designs.lamination(panel.face(), 0, Designs.widths(widths.toArray(Double[]::new))));
        });
        return Designs.of(solid).laminations(laminations).build();
    }

    @Test
    void aSolidOfMoreThan6666PiecesIsRefusedWithWhatIsAllowed() {
        Design design = banded(19);
        Violation refused = assertThrows(ImpossibleDesignException.class, () -> BodyCalculator.shell(design, WOODS))
                .violations()
                .get(0);
        // 200,000 triangles are 30 for each of 6666 pieces.
        assertEquals("TOO_MANY_PIECES", refused.code());
        assertEquals("6840", refused.rejected());
        assertEquals("at most 6666 pieces", refused.allowed());
        // As the refusal says, one panel, or all wood as one part, is less.
        assertTrue(BodyCalculator.panel(design, "decagon", WOODS).triangles() < BodyCalculator.MOST_TRIANGLES);
        BodyOptions one = new BodyOptions(BandSet.UPRIGHT, true, null);
        assertTrue(BodyCalculator.shell(design, one).triangles() < BodyCalculator.MOST_TRIANGLES);
    }
}
