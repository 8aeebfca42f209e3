package org.orbwright.inlay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.inlay.Inlays.disc;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.SizeBy;

/** Inlays in panels whose land is so high that the sphere reaches beyond the seams. */
class InlayInsideTheOutlineTest {
    @Test
    @DisplayName("a disc ends at the panel's outline: base distance 80 * 0.688191 = 55.0553 mm")
    void discEndsAtThePanelsOutline() {
        // Face distance 109.08 mm, sphere of 109 mm, seam radius 104.72 mm.
        DesignRequest highLand = sketch().size(SizeBy.EDGE, 80)
                .panel(28, 20.0)
                .diameter(218.0)
                .laminations(lamination(null, null, 10.0, null))
                .request();
        assertEquals(
                2 * 80 * 0.6881909602355868, disc(highLand, 10).plan().largest().diameter(), 1e-9);
    }
}
