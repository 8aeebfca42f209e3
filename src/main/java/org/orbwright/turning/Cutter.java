package org.orbwright.turning;

import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.turning.PathRequest.CutterRequest;
import org.orbwright.turning.PathRequest.CutterShape;

/**
 * A cutter seen from the side; lengths in millimetres. Its end is a flat between two quarter circles, so that a ball is
 * a flat of no width, and a flat end has circles of no radius.
 *
 * @param radius of the cutter
 * @param corner radius of its rim
 */
record Cutter(double radius, double corner) {

    /**
     * The cutter of a request.
     *
     * @throws ImpossibleDesignException if the rim's radius does not fit the shape
     */
    static Cutter of(CutterRequest request, Design design) {
        double radius = design.unit().toMillimetres(request.diameter()) / 2;
        boolean bull = request.shape() == CutterShape.BULL_NOSE;
        boolean fits = request.rimRadius() != null && design.unit().toMillimetres(request.rimRadius()) < radius;
        if (bull != (request.rimRadius() != null) || (bull && !fits)) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/path/cutter/rimRadius",
                    "RIM_DOES_NOT_FIT",
                    bull
                            ? "A bull-nose cutter needs a rim radius below its own."
                            : "Only a bull-nose cutter has a rim radius of its own.",
                    request.rimRadius() == null ? null : String.valueOf(request.rimRadius()),
                    bull ? "a length below " + design.sayAtMost(radius) : "nothing here")));
        }
        return new Cutter(
                radius,
                switch (request.shape()) {
                    case BALL -> radius;
                    case BULL_NOSE -> design.unit().toMillimetres(request.rimRadius());
                    case FLAT -> 0;
                });
    }

    /** Half the width of the flat. */
    double flat() {
        return radius - corner;
    }

    /**
     * Angle at the sphere's centre from one ring to the next, so that the ridge between them is as high as stated: the
     * rim's circles touch the sphere and meet at the ridge, which makes a triangle of the sphere's centre, the rim's
     * and the ridge's top. For a flat end only its edge touches, and the ridge stands where the next ring begins.
     * Ridges are never higher than half the rim's radius, and rings of a flat end never farther apart than the cutter's
     * radius.
     *
     * @param sphere radius of the sphere
     * @param scallop height of the ridge, above 0
     * @param from angle of the ring before from where the cutter's flat touches the sphere, 0 to a right angle
     */
    double step(double sphere, double scallop, double from) {
        if (corner > 0) {
            double top = sphere + Math.min(scallop, corner / 2);
            double centre = sphere + corner;
            double cos = (centre * centre + top * top - corner * corner) / (2 * centre * top);
            return 2 * Math.acos(Math.min(1, Math.max(0, cos)));
        }
        double high = 1 + scallop / sphere;
        double square = high * high - Math.pow(Math.cos(from), 2);
        return Math.min(radius / sphere, (square >= 1 ? Math.PI / 2 : Math.asin(Math.sqrt(square))) - from);
    }
}
