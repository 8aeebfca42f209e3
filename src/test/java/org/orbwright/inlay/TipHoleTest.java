package org.orbwright.inlay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.inlay.Inlays.disc;
import static org.orbwright.inlay.Inlays.polygon;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.SizeBy;
import org.orbwright.inlay.InlayPlan.TipHole;

/** The hole that chipped tips leave, and what covers it. */
class TipHoleTest {
    private static final DesignRequest DODECAHEDRON = sketch().diameter(170.0).request();

    @Test
    @DisplayName("tips chipped by 3 mm leave a hole of 6 mm, on a sphere of 170 mm 2 * 85 asin(3 / 85) = 6.00125 mm")
    void holeIsTwiceTheChipAndALittleMoreOnTheSphere() {
        TipHole hole = disc(DODECAHEDRON, 30).chipOut(3).plan().tips();
        assertEquals(6, hole.diameter());
        assertEquals(170 * Math.asin(3.0 / 85), hole.diameterOnSphere(), 1e-12);
        assertEquals(6.00125, hole.diameterOnSphere(), 5e-6);
        assertEquals(6, hole.plugDiameter());
    }

    @Test
    void holeInAFlatIsAsLargeOnTheFinishedSurface() {
        DesignRequest flats = sketch().solid("cube")
                .size(SizeBy.EDGE, 120)
                .diameter(140.0)
                .laminations(lamination(null, null, 10.0, null))
                .request();
        assertEquals(8, disc(flats, 30).chipOut(4).plan().tips().diameterOnSphere(), 1e-12);
    }

    @Test
    void withoutAChipThereIsNoHole() {
        TipHole hole = disc(DODECAHEDRON, 30).plan().tips();
        assertEquals(0, hole.diameter());
        assertEquals(0, hole.diameterOnSphere());
        assertTrue(hole.coveredByInlay());
    }

    @Test
    void discCoversAHoleUpToItsOwnSize() {
        assertTrue(disc(DODECAHEDRON, 6).chipOut(3).plan().tips().coveredByInlay());
        assertFalse(disc(DODECAHEDRON, 5.99).chipOut(3).plan().tips().coveredByInlay());
    }

    @Test
    @DisplayName("a square over its corners of 6 mm covers a hole of 6 / sqrt(2) = 4.243 mm")
    void polygonCoversAHoleUpToItsInscribedCircle() {
        assertTrue(polygon(DODECAHEDRON, 4, 6).chipOut(2.121).plan().tips().coveredByInlay());
        assertFalse(polygon(DODECAHEDRON, 4, 6).chipOut(2.122).plan().tips().coveredByInlay());
    }
}
