package org.orbwright.design;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.solid.Face;
import org.orbwright.solid.FaceKind;

/**
 * The panel of one face kind at its size, in millimetres; where every other segment has a lamination of its own, one
 * half of its segments.
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

    /** Width of the glued-up blank: exactly the base distance, or what tilted bands add up to. */
    public double blankWidth() {
        return lamination.straight() ? baseDistance : lamination.width();
    }

    /** Which of the panel's segments these are. */
    public Places places() {
        return lamination.places();
    }

    /** Name of the face kind. */
    public String face() {
        return kind.face();
    }

    /** Seam radius: from the solid's centre to the middle of an edge, at the joint distance. */
    public double seamRadius() {
        return Math.hypot(baseDistance, jointDistance);
    }

    /**
     * The segment at a place of a face, as it lies there; one turned face down is seen the other way round.
     *
     * @param part the part of the face
     * @param place its place in the face's list, from 0
     */
    public Piece pieceOf(Face.Part part, int place) {
        for (Piece piece : pieces) {
            boolean sameKind = piece.segment().equals(part.segment());
            if (sameKind && lamination.straight()) {
                return part.mirrored() ? piece.turnedOver() : piece;
            }
            boolean everyOther = lamination.leansBothWays() && piece.symmetric();
            boolean turned = everyOther && !Places.ODD.include(place);
            if (sameKind && piece.mirrored() == part.mirrored() && (!everyOther || piece.turned() == turned)) {
                return piece;
            }
        }
        throw new IllegalArgumentException("The face kind has no segment " + part);
    }

    /** The pieces as they are sawn: those that are turned face down are counted with the piece that they were. */
    public List<Piece> sawn() {
        if (!lamination.leansBothWays()) {
            return pieces;
        }
        List<Piece> sawn = new ArrayList<>();
        for (Piece piece : pieces) {
            if (!piece.turned()) {
                int turned = 0;
                for (Piece other : pieces) {
                    boolean same = other.turned() && other.segment().equals(piece.segment());
                    turned += same ? other.perSphere() : 0;
                }
                sawn.add(piece.counted(piece.perSphere() + turned, turned));
            }
        }
        return sawn;
    }

    /** From the solid's centre to the panel's outermost corner, at the outer rim of its land. */
    public double outerCornerRadius() {
        double acrossSquared = (cornerRadius - jointDistance) * (cornerRadius + jointDistance);
        return Math.sqrt(faceDistance() * faceDistance() + acrossSquared);
    }

    /** Bevel in radians: the angle between the panel's face and its seam. */
    public double bevel() {
        return Math.atan2(jointDistance, baseDistance);
    }
}
