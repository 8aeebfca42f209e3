package org.orbwright.inlay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.inlay.Inlays.disc;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.inlay.InlayPlan.InlaidPanel;

/** Motifs that come more than once on a dodecahedron lie as far apart as they can. */
class OppositeMotifsTest {
    @Test
    void sixMotifsOnTwelvePanelsLieOppositeThemselves() {
        List<InlaidPanel> panels = panels("a", "b", "c", "d", "e", "f");
        for (InlaidPanel panel : panels) {
            assertEquals(panel.motif(), panels.get(panel.opposite()).motif());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"a b c d e f", "a b c d e f g h"})
    void panelsWithTheSameMotifAreNoNeighbours(String motifs) {
        List<InlaidPanel> panels = panels(motifs.split(" ", -1));
        for (InlaidPanel panel : panels) {
            for (int neighbour : panel.neighbours()) {
                assertNotEquals(panel.motif(), panels.get(neighbour).motif(), panel::toString);
            }
        }
    }

    private static List<InlaidPanel> panels(String... motifs) {
        return disc(sketch().request(), 20).motifs(motifs).plan().panels();
    }
}
