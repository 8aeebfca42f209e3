package org.orbwright.tolerance;

import java.util.SplittableRandom;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.orbwright.design.Design;
import org.orbwright.tolerance.CuttingErrors.ErrorPair;

/**
 * The gaps of a panel whose legs lean from square, pressed flat: one joint has all of the opening that the tip angles
 * leave, at its rim or at its tips, and every joint opens on one face by the lean of its two legs.
 */
final class LeanGaps {
    private static final int NODES = 64;
    /** Standard deviations beyond which a normal error does not matter. */
    private static final double FAR = 8;

    private final double mean;
    private final double scatter;
    /** What drift adds at the rim and takes away at the tips. */
    private final double drift;

    LeanGaps(Design design, CuttingErrors errors) {
        double thickness = design.thickness();
        ErrorPair square = errors.of(ErrorSource.SQUARENESS);
        this.mean = 2 * thickness * square.setting();
        this.scatter = Math.sqrt(2) * thickness * square.scatter();
        this.drift = thickness * errors.of(ErrorSource.SQUARENESS_DRIFT).setting();
    }

    /**
     * The widest gap of one panel.
     *
     * @param opening of the joint that does not close; below 0 at the rim, above 0 at the tips
     */
    double widest(SplittableRandom random, double opening, int joints) {
        double first = GapSimulator.drawn(random, mean, scatter);
        double widest = Math.max(
                Math.abs(first + drift) + Math.max(0, -opening), Math.abs(first - drift) + Math.max(0, opening));
        int others = scatter == 0 ? 0 : joints - 1;
        for (int i = 0; i < others; i++) {
            widest = Math.max(widest, Math.abs(GapSimulator.drawn(random, mean, scatter)) + Math.abs(drift));
        }
        return widest;
    }

    /** The probability that the glue bridges all joints of a panel, to first order. */
    double within(double glue, double lever, double angleMean, double angleScatter, int joints) {
        double left = glue - Math.abs(drift);
        double others = Math.pow(GapSimulator.within(left, mean, scatter), joints - 1.0);
        return others * open(glue, left, lever, angleMean, angleScatter);
    }

    /** The same for the joint that does not close. */
    private double open(double glue, double left, double lever, double angleMean, double angleScatter) {
        if (scatter == 0) {
            return Math.abs(mean) <= left ? openAt(glue, mean, lever, angleMean, angleScatter) : 0;
        }
        double least = Math.max(-left, mean - FAR * scatter);
        double most = Math.min(left, mean + FAR * scatter);
        if (least >= most) {
            return 0;
        }
        GaussIntegrator nodes = new GaussIntegratorFactory().legendre(NODES, least, most);
        return nodes.integrate(gap -> density(gap) * openAt(glue, gap, lever, angleMean, angleScatter));
    }

    private double openAt(double glue, double gap, double lever, double angleMean, double angleScatter) {
        return GapSimulator.between(
                (Math.abs(gap + drift) - glue) / lever,
                (glue - Math.abs(gap - drift)) / lever,
                angleMean,
                angleScatter);
    }

    private double density(double gap) {
        double off = (gap - mean) / scatter;
        return Math.exp(-off * off / 2) / (scatter * Math.sqrt(2 * Math.PI));
    }
}
