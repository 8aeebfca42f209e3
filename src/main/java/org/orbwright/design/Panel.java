package org.orbwright.design;

import java.util.List;
import org.orbwright.solid.Face;
import org.orbwright.solid.FaceKind;

/**
 * The panel of one face kind at its size, in millimetres.
 *
 * @param kind the face kind, at unit edge
 * @param jointDistance from the solid's centre to the full-size outline
 * @param faceDistance from the solid's centre to the outer face
 * @param baseDistance from the panel's centre to every edge
 * @param cornerRadius from the solid's centre to the farthest corner, at the joint distance
 * @param lamination its bands
 * @param pieces the segments to be sawn for it
 */
public record Panel(
        FaceKind kind,
        double jointDistance,
        double faceDistance,
        double baseDistance,
        double cornerRadius,
        Lamination lamination,
        List<Piece> pieces) {

    /** Copies the list of pieces. */
    public Panel {
        pieces = List.copyOf(pieces);
    }

    /** Name of the face kind. */
    public String face() {
        return kind.face();
    }

    /** Seam radius: from the solid's centre to the middle of an edge, at the joint distance. */
    public double seamRadius() {
        return Math.hypot(baseDistance, jointDistance);
    }

    /** The segment that makes a part of a face, as it lies there; one turned face down is seen the other way round. */
    public Piece pieceOf(Face.Part part) {
        for (Piece piece : pieces) {
            boolean sameKind = piece.segment().equals(part.segment());
            if (sameKind && piece.mirrored() == part.mirrored()) {
                return piece;
            }
            if (sameKind && lamination.straight()) {
                return piece.turnedOver();
            }
        }
        throw new IllegalArgumentException("The face kind has no segment " + part);
    }

    /** Bevel in radians: the angle between the panel's face and its seam. */
    public double bevel() {
        return Math.atan2(jointDistance, baseDistance);
    }
}
