package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.PlacedPiece;

/**
 * Where the segments of a panel lie around its centre, counter-clockwise and seen from outside, the first one with its
 * base down; x to the right and y downwards as on the sheet.
 */
record PanelPlan(List<Place> places) {

    /** A segment on its panel or half of one, turned counter-clockwise by an angle from base down. */
    record Place(Panel panel, Piece piece, double turn) {
        /** Where a point of the segment lies on the sheet. */
        Point at(Point point) {
            double sin = Math.sin(turn);
            double cos = Math.cos(turn);
            return new Point(point.x() * sin + point.y() * cos, point.x() * cos - point.y() * sin);
        }

        /** The corner at the left end of the base, on the sheet. */
        Point leftCorner() {
            return at(new Point(piece.base(), -piece.left()));
        }
    }

    PanelPlan {
        places = List.copyOf(places);
    }

    /** The plan of the first face of a kind. */
    static PanelPlan of(Design design, Panel panel) {
        List<Place> places = new ArrayList<>();
        for (PlacedPiece placed : PlacedPiece.around(design, panel.face())) {
            places.add(new Place(placed.panel(), placed.piece(), placed.direction()));
        }
        return new PanelPlan(places);
    }

    /** The panel's corners on the sheet. */
    List<Point> corners() {
        return places.stream().map(Place::leftCorner).toList();
    }

    /** The largest distance between two corners. */
    double acrossCorners() {
        double largest = 0;
        for (Point a : corners()) {
            for (Point b : corners()) {
                largest = Math.max(largest, Math.hypot(a.x() - b.x(), a.y() - b.y()));
            }
        }
        return largest;
    }
}
