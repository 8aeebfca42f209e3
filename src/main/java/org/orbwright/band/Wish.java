package org.orbwright.band;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.design.SphereSet;

/**
 * One wish, as a rule about the two cuts of a band.
 *
 * @param index its place among the wishes that are no REST, from 0
 * @param written its place in the request, from 0
 * @param band the band's place in the lamination, from 0
 * @param set the spheres on which it is to come true
 * @param measure what it measures
 * @param value what is wished, in millimetres or as a share
 * @param curves the curves whose least difference between the band's cuts is what is shown
 * @param all what is shown of a band over the whole lamination
 */
record Wish(
        int index,
        int written,
        int band,
        SphereSet set,
        Measure measure,
        double value,
        List<DoubleUnaryOperator> curves,
        double all) {

    /** What curves cannot tell apart, as a share of all that they show. */
    private static final double ROUNDING = 1e-11;

    /** What is shown of the band with these cuts. */
    double shown(double[] cuts) {
        return LaminationView.shown(curves, cuts[band], cuts[band + 1]);
    }

    /** How far what is shown is from what is wished, as a share of what is wished; above 0 where it is more. */
    double signedDeviation(double[] cuts) {
        double more = shown(cuts) - value;
        return Math.abs(more) <= ROUNDING * all ? 0 : more / value;
    }

    /** The same without its sign. */
    double deviation(double[] cuts) {
        return Math.abs(signedDeviation(cuts));
    }

    boolean isShare() {
        return measure == Measure.SHARE_OF_SPHERE;
    }
}
