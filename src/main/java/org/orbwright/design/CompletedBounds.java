package org.orbwright.design;

import java.util.List;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.quantity.Rounding;

/**
 * What is filled in has to keep the bounds of what may be written, so that a design that was answered can be posted
 * again as it is.
 */
final class CompletedBounds {
    /** As the annotations of {@link DesignRequest} have them. */
    private static final double SHORTEST = 0.001;

    private static final double WIDEST_BAND = 10_000;
    private static final double LARGEST_SPHERE = 100_000;

    private CompletedBounds() {}

    static void check(DesignRequest asked, DesignRequest completed, Violations violations) {
        if (asked.sphere() == null || asked.sphere().diameter() == null) {
            double diameter = completed.sphere().diameter();
            check("/sphere/diameter", "The sphere's diameter", diameter, LARGEST_SPHERE, asked, violations);
        }
        for (int i = 0; asked.laminations() != null && i < asked.laminations().size(); i++) {
            List<BandRequest> bands = asked.laminations().get(i).bands();
            for (int j = 0; j < bands.size(); j++) {
                if (bands.get(j).width() == null) {
                    String path = "/laminations/" + i + "/bands/" + j + "/width";
                    double width = completed.laminations().get(i).bands().get(j).width();
                    check(path, "The width of the band that takes the rest", width, WIDEST_BAND, asked, violations);
                }
            }
        }
    }

    private static void check(
            String path, String what, double length, double largest, DesignRequest asked, Violations violations) {
        if (length < SHORTEST || length > largest) {
            String unit = " " + asked.unit().symbol();
            String range = Rounding.plain(SHORTEST, 3) + " to " + Rounding.plain(largest, 0) + unit;
            violations.add(
                    path,
                    "FILLED_IN_OUT_OF_RANGE",
                    what + " comes out as " + Rounding.plain(length, 6) + unit + ", which is beyond " + range + ".",
                    "null",
                    range);
        }
    }
}
