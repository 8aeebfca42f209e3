package org.orbwright.api;

import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;

/** Reads query parameters that name a part of a design. */
final class DesignQuery {
    private DesignQuery() {}

    /** The panel of a face kind, the first where none is named. */
    static Panel panel(Design design, String face) {
        List<Panel> panels = design.facePanels();
        String name = Query.name("face", face, panels.stream().map(Panel::face).toList());
        return panels.stream()
                .filter(panel -> panel.face().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The segment of a kind, the first where none is named. */
    static Piece piece(Panel panel, String segment) {
        String letter = Query.name(
                "segment",
                segment,
                panel.pieces().stream().map(Piece::segment).distinct().toList());
        return panel.pieces().stream()
                .filter(piece -> piece.segment().equals(letter))
                .findFirst()
                .orElseThrow();
    }
}
