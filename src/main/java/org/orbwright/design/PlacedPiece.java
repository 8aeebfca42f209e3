package org.orbwright.design;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.solid.Face;

/**
 * A segment in its place around the centre of a panel, seen from outside.
 *
 * @param panel the panel, or the half of it with the segment's lamination
 * @param piece its outline as it lies there
 * @param direction direction of its base from the panel's centre, counter-clockwise from that of the first one, in
 *     radians
 */
public record PlacedPiece(Panel panel, Piece piece, double direction) {

    /** The segments around the first face of a kind, counter-clockwise. */
    public static List<PlacedPiece> around(Design design, String face) {
        return around(design, face, false);
    }

    /**
     * The segments around the first face of a kind that is or is not mirrored, counter-clockwise. With tilted bands the
     * two are panels of their own.
     */
    public static List<PlacedPiece> around(Design design, String face, boolean mirrored) {
        List<Face.Part> parts = design.solid().faces().stream()
                .filter(each -> each.kind().equals(face) && each.mirrored() == mirrored)
                .findFirst()
                .orElseThrow()
                .segments();
        List<PlacedPiece> placed = new ArrayList<>();
        double direction = 0;
        double before = 0;
        for (int place = 0; place < parts.size(); place++) {
            Panel panel = design.panelAt(face, place);
            Piece piece = panel.pieceOf(parts.get(place), place);
            direction += place == 0 ? 0 : before + Math.atan2(piece.left(), piece.base());
            placed.add(new PlacedPiece(panel, piece, direction));
            before = Math.atan2(piece.right(), piece.base());
        }
        return placed;
    }
}
