package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.orbwright.drawing.Drawing.Mark;
import org.orbwright.drawing.PanelPlan.Place;
import org.orbwright.drawing.PlanPolygon.Point;
import org.orbwright.drawing.SegmentPatches.Patch;

/**
 * The numbers of the bands in one segment: inside the band where it has room, else below the base at the end of a
 * leader. The innermost bands have the leaders in the middle, so that none crosses another.
 */
final class PanelNumbers {
    private static final double LARGEST = 0.85;
    private static final double SMALLEST = 0.6;
    private static final double BELOW_BASE = 2.6;
    private static final double SPACING = 2.1;
    private static final int MOST_OUTSIDE = 10;

    private final Place place;
    private final UnaryOperator<Point> onSheet;
    private final double letters;

    PanelNumbers(Place place, UnaryOperator<Point> onSheet, double letters) {
        this.place = place;
        this.onSheet = onSheet;
        this.letters = letters;
    }

    List<Mark> marks(List<Patch> patches) {
        List<Mark> marks = new ArrayList<>();
        List<Patch> narrow = new ArrayList<>();
        for (Patch patch : patches) {
            Point place = patch.polygon().roomiest();
            double room = 0.85 * patch.polygon().clearance(place);
            if (room < SMALLEST * letters) {
                narrow.add(0, patch);
            } else {
                Point at = sheet(place);
                marks.addAll(Callout.balloon(at.x(), at.y(), Math.min(room, LARGEST * letters), number(patch)));
            }
        }
        // Of very many, every second or third and so on, as on a rule: they lie in order.
        int every = (narrow.size() + MOST_OUTSIDE - 1) / MOST_OUTSIDE;
        List<Patch> numbered = new ArrayList<>();
        for (int i = 0; i < narrow.size(); i += every) {
            numbered.add(narrow.get(i));
        }
        marks.addAll(0, outside(numbered));
        return marks;
    }

    private List<Mark> outside(List<Patch> narrow) {
        List<Mark> marks = new ArrayList<>();
        double spacing = Math.min(SPACING * letters, place.piece().baseLength() / (narrow.size() + 1));
        for (int i = 0; i < narrow.size(); i++) {
            int steps = (i + 2) / 2 * (i % 2 == 0 ? 1 : -1);
            marks.addAll(0, outside(narrow.get(i), steps * spacing, Math.min(LARGEST * letters, 0.45 * spacing)));
        }
        return marks;
    }

    private List<Mark> outside(Patch patch, double along, double radius) {
        Point target = target(patch.polygon(), along);
        Point at = sheet(target);
        Point balloon = sheet(new Point(place.piece().base() + BELOW_BASE * letters, along));
        List<Mark> marks = new ArrayList<>(Callout.leader(balloon.x(), balloon.y(), at.x(), at.y(), letters / 6));
        marks.addAll(Callout.balloon(balloon.x(), balloon.y(), radius, number(patch)));
        return marks;
    }

    /** A place in the middle of the band, as nearly above its number as the band allows. */
    private static Point target(PlanPolygon polygon, double along) {
        Point middle = polygon.roomiest();
        double low = middle.y();
        double high = middle.y();
        for (Point corner : polygon.points()) {
            low = Math.min(low, middle.y() + 0.6 * (corner.y() - middle.y()));
            high = Math.max(high, middle.y() + 0.6 * (corner.y() - middle.y()));
        }
        Point beside = new Point(middle.x(), Math.max(low, Math.min(high, along)));
        return polygon.clearance(beside) > 0 ? beside : middle;
    }

    private Point sheet(Point point) {
        return onSheet.apply(place.at(point));
    }

    private static String number(Patch patch) {
        return String.valueOf(patch.layer().number());
    }
}
