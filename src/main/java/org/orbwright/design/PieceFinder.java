package org.orbwright.design;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.solid.Face;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.SegmentKind;
import org.orbwright.solid.Solid;

/** Finds the pieces that a lamination of a face kind is sawn to, and counts them. */
final class PieceFinder {
    private PieceFinder() {}

    static List<Piece> pieces(Solid solid, FaceKind kind, double edge, Lamination lamination) {
        List<Piece> pieces = new ArrayList<>();
        for (SegmentKind segment : kind.segments()) {
            int plain = count(solid, kind, segment, false, lamination.places());
            int mirrored = count(solid, kind, segment, true, lamination.places());
            Piece piece = new Piece(
                    segment.segment(),
                    false,
                    false,
                    segment.baseDistance() * edge,
                    segment.baseLeft() * edge,
                    segment.baseRight() * edge,
                    plain + mirrored,
                    mirrored);
            if (plain + mirrored > 0) {
                add(pieces, piece, lamination);
            }
        }
        return pieces;
    }

    private static void add(List<Piece> pieces, Piece piece, Lamination lamination) {
        int mirrored = piece.turnedPerSphere();
        int plain = piece.perSphere() - mirrored;
        boolean everyOther = lamination.leansBothWays() && piece.symmetric();
        if (everyOther) {
            int half = piece.perSphere() / 2;
            pieces.add(piece.counted(half, 0));
            pieces.add(lying(piece, false, true, half));
        } else if (lamination.straight() || mirrored == 0) {
            pieces.add(piece);
        } else {
            pieces.add(piece.counted(plain, 0));
            pieces.add(lying(piece, true, lamination.leansBothWays(), mirrored));
        }
    }

    private static Piece lying(Piece p, boolean mirrored, boolean turned, int count) {
        return new Piece(
                p.segment(),
                mirrored,
                turned,
                p.base(),
                /* left= */ p.right(),
                /* right= */ p.left(),
                count,
                turned ? count : 0);
    }

    private static int count(Solid solid, FaceKind kind, SegmentKind segment, boolean mirrored, Places places) {
        if (places == Places.ALL) {
            return mirrored ? segment.mirroredCount() : segment.count();
        }
        int count = 0;
        for (Face face : solid.faces()) {
            if (!face.kind().equals(kind.face())) {
                continue;
            }
            for (int place = 0; place < face.segments().size(); place++) {
                Face.Part part = face.segments().get(place);
                boolean same = part.segment().equals(segment.segment()) && part.mirrored() == mirrored;
                count += same && places.include(place) ? 1 : 0;
            }
        }
        return count;
    }
}
