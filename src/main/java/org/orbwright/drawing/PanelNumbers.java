package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.orbwright.drawing.PanelPlan.Place;
import org.orbwright.drawing.SegmentPatches.Patch;

/** The numbers of the bands in one segment, where they have room; all stand beside the {@link BandRule}. */
record PanelNumbers(Place place, UnaryOperator<Point> onSheet, double letters) {
    private static final double LARGEST = 0.85;
    private static final double SMALLEST = 0.6;

    List<Mark> marks(List<Patch> patches) {
        List<Mark> marks = new ArrayList<>();
        for (Patch patch : patches) {
            Point place = patch.polygon().roomiest();
            double room = 0.85 * patch.polygon().clearance(place);
            if (room >= SMALLEST * letters) {
                Point at = sheet(place);
                marks.addAll(Callout.balloon(at.x(), at.y(), Math.min(room, LARGEST * letters), number(patch)));
            }
        }
        return marks;
    }

    private Point sheet(Point point) {
        return onSheet.apply(place.at(point));
    }

    private static String number(Patch patch) {
        return String.valueOf(patch.layer().number());
    }
}
