package org.orbwright.body;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.PlacedPiece;
import org.orbwright.design.SphereKind;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;

/**
 * A segment in its place, with its neighbours as numbers in the list of all places; -1 for none. The unit vectors run
 * from the tip to the base, along the base to the right as seen from outside, and out of the face. Left and right are
 * segments of the same panel; across is the one across the seam.
 */
record SegmentPlace(
        Panel panel,
        Piece piece,
        BandSet set,
        Vector3D x,
        Vector3D y,
        Vector3D normal,
        int left,
        int right,
        int across) {

    /** All segments of a solid around its centre, each panel from its set. */
    static List<SegmentPlace> ofSolid(Design design, SphereKind sphere) {
        Solid solid = design.solid();
        Map<List<Integer>, Integer> numbers = new HashMap<>();
        for (Face face : solid.faces()) {
            for (int place = 0; place < face.vertices().size(); place++) {
                numbers.put(edge(face, place), numbers.size());
            }
        }
        List<SegmentPlace> places = new ArrayList<>();
        for (int number = 0; number < solid.faces().size(); number++) {
            Face face = solid.faces().get(number);
            int sides = face.vertices().size();
            int first = places.size();
            Vector3D normal = solid.normal(face);
            for (int place = 0; place < sides; place++) {
                List<Integer> edge = edge(face, place);
                Vector3D along = solid.corner(face, (place + 1) % sides)
                        .subtract(solid.corner(face, place))
                        .normalize();
                Panel panel = design.panelAt(face.kind(), place);
                places.add(new SegmentPlace(
                        panel,
                        panel.pieceOf(face.segments().get(place), place),
                        panel.lamination().used(sphere.panels().get(number)),
                        along.cross(normal),
                        along,
                        normal,
                        first + (place + sides - 1) % sides,
                        first + (place + 1) % sides,
                        numbers.get(List.of(edge.get(1), edge.get(0)))));
            }
        }
        return places;
    }

    /** The segments of the first panel of a face kind, its outer face square to the third axis, the first base down. */
    static List<SegmentPlace> ofPanel(Design design, String face, BandSet set) {
        List<PlacedPiece> around = PlacedPiece.around(design, face);
        List<SegmentPlace> places = new ArrayList<>();
        int sides = around.size();
        for (int place = 0; place < sides; place++) {
            PlacedPiece placed = around.get(place);
            places.add(of(
                    placed.panel(),
                    placed.piece(),
                    set,
                    placed.direction(),
                    (place + sides - 1) % sides,
                    (place + 1) % sides));
        }
        return places;
    }

    /** One segment by itself, with its base down. */
    static SegmentPlace alone(Panel panel, Piece piece, BandSet set) {
        return of(panel, piece, set, 0, -1, -1);
    }

    private static SegmentPlace of(Panel panel, Piece piece, BandSet set, double direction, int left, int right) {
        double sin = Math.sin(direction);
        double cos = Math.cos(direction);
        return new SegmentPlace(
                panel,
                piece,
                panel.lamination().used(set),
                Vector3D.of(sin, -cos, 0),
                Vector3D.of(cos, sin, 0),
                Vector3D.of(0, 0, 1),
                left,
                right,
                -1);
    }

    private static List<Integer> edge(Face face, int place) {
        return List.of(
                face.vertices().get(place),
                face.vertices().get((place + 1) % face.vertices().size()));
    }

    /** A side given in the segment's own directions. */
    Side side(double alongX, double alongY, double alongNormal, double distance) {
        Vector3D direction = x.multiply(alongX).add(y.multiply(alongY)).add(normal.multiply(alongNormal));
        return Side.of(direction, distance);
    }
}
