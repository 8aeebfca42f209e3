package org.orbwright.turning;

import static java.util.Objects.requireNonNullElse;

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
 * @param undersize how much smaller its diameter may be
 */
record Cutter(double radius, double corner, double undersize) {
    /** A limit that is met up to the last bits of a double is met. */
    private static final double EXACT = 1e-9;

    /**
     * The cutter of a request.
     *
     * @param request a cutter, filled in
     * @throws ImpossibleDesignException if the rim's radius or the undersize does not fit the shape
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
        double undersize = requireNonNullElse(request.undersize(), 0.0);
        if (undersize > request.mostUndersize() + EXACT) {
            double most = design.unit().toMillimetres(request.mostUndersize());
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/path/cutter/undersize",
                    "UNDERSIZE_TOO_LARGE",
                    most > 0
                            ? "The flat of this cutter is "
                                    + design.say(design.unit().toMillimetres(request.flat()))
                                    + " wide. That is too narrow for an undersize of "
                                    + design.say(design.unit().toMillimetres(undersize)) + "."
                            : "A ball has no flat whose rings could leave a fin.",
                    String.valueOf(undersize),
                    most > 0 ? "at most " + design.sayAtMost(most) : "nothing here")));
        }
        return new Cutter(
                radius,
                switch (request.shape()) {
                    case BALL -> radius;
                    case BULL_NOSE -> design.unit().toMillimetres(request.rimRadius());
                    case FLAT -> 0;
                },
                design.unit().toMillimetres(undersize));
    }

    /** Half the width of the flat. */
    double flat() {
        return radius - corner;
    }

    /**
     * By how much the flat overlaps in the middle plane, between its two rings, or at the pole, with itself. Half of it
     * covers the undersize. The other half is for what else is off, such as the middle as it was found.
     */
    double overlap() {
        return 2 * undersize;
    }

    /** From where the rings begin to the cutter's middle on the first one. */
    double first() {
        return flat() - overlap() / 2;
    }

    /**
     * Angle at the sphere's centre from one ring to the next, so that the ridge between them is as high as stated: the
     * rim's circles touch the sphere and meet at the ridge, which makes a triangle of the sphere's centre, the rim's
     * and the ridge's top. For a flat end only its edge touches, and the ridge stands where the next ring begins.
     * Ridges are never higher than half the rim's radius, and rings of a flat end never farther apart than the cutter's
     * radius, the overlapping first one and the second too.
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
        return Math.min(first() / sphere, (square >= 1 ? Math.PI / 2 : Math.asin(Math.sqrt(square))) - from);
    }
}
