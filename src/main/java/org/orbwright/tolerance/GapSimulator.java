package org.orbwright.tolerance;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.numbers.gamma.ErfDifference;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;
import org.orbwright.tolerance.CuttingErrors.ErrorPair;
import org.orbwright.tolerance.GapSimulation.GapPercentiles;

/**
 * Simulates solids whose cuts scatter. The tip angles of a panel and the two bevels of a seam matter by their sum
 * alone, and a sum of independent normal errors is normal: one number is drawn for it. A gap of an angle a over a lever
 * is the chord {@code 2 lever sin(a / 2)}. Legs that lean add to it ({@link LeanGaps}).
 *
 * <p>Samples are cut to chunks of a fixed size, each with the generator that is split off the seed's in the chunk's
 * turn, so that the answer does not depend on how many processors share the chunks.
 */
final class GapSimulator {
    /** Samples of one chunk: some milliseconds of work. */
    private static final int CHUNK = 2048;
    /** Half of an angle beyond this has a larger sine than the angle itself. */
    private static final double WIDEST = Math.PI;

    private final double glueBridges;
    private final ErrorPair bevel;
    private final LeanGaps lean;
    /** Per panel of the solid: its lever, and mean and standard deviation of the sum of its tip angles. */
    private final double[] joint;

    private final int[] segments;
    private final double[] angleMean;
    private final double[] angleScatter;
    /** Per seam of the solid: the length over which its two panels touch. */
    private final double[] seam;

    GapSimulator(Design design, CuttingErrors errors, double glueBridges) {
        this.glueBridges = glueBridges + Tolerance.STILL_BRIDGED;
        this.bevel = errors.of(ErrorSource.BEVEL);
        this.lean = new LeanGaps(design, errors);
        ErrorPair tip = errors.of(ErrorSource.TIP_ANGLE);
        Solid solid = design.solid();
        List<Face> faces = solid.faces();
        joint = new double[faces.size()];
        segments = new int[faces.size()];
        angleMean = new double[faces.size()];
        angleScatter = new double[faces.size()];
        Map<String, Double> joints = new HashMap<>();
        for (int i = 0; i < faces.size(); i++) {
            Face face = faces.get(i);
            Panel panel = JointLengths.panel(design, face.kind());
            segments[i] = face.segments().size();
            joint[i] = joints.computeIfAbsent(face.kind(), kind -> JointLengths.joint(design, panel));
            angleMean[i] = segments[i] * tip.setting();
            angleScatter[i] = Math.sqrt(segments[i]) * tip.scatter();
        }
        seam = solid.edges().stream()
                .mapToDouble(edge -> JointLengths.seam(
                        design,
                        JointLengths.panel(design, faces.get(edge.face()).kind()),
                        JointLengths.panel(design, faces.get(edge.neighbour()).kind())))
                .toArray();
    }

    GapSimulation run(int samples, int seed) {
        int chunks = (samples + CHUNK - 1) / CHUNK;
        SplittableRandom first = new SplittableRandom(seed);
        SplittableRandom[] generators = new SplittableRandom[chunks];
        Arrays.setAll(generators, chunk -> first.split());
        Gaps gaps = new Gaps(samples);
        int[] bridged = new int[chunks];
        IntStream.range(0, chunks).parallel().forEach(chunk -> {
            int from = chunk * CHUNK;
            bridged[chunk] = simulate(generators[chunk], from, Math.min(samples, from + CHUNK), gaps);
        });
        int all = Arrays.stream(bridged).sum();
        // Mean and standard deviation of a share that was thought to be anything between 0 and 1 before.
        double likely = (all + 1.0) / (samples + 2.0);
        return new GapSimulation(
                samples,
                seed,
                percentiles(gaps.panel),
                percentiles(gaps.seam),
                percentiles(gaps.largestPanel),
                percentiles(gaps.largestSeam),
                (double) all / samples,
                Math.sqrt(likely * (1 - likely) / (samples + 3.0)),
                linear());
    }

    /** What is kept of each sample: the gaps of one panel and one seam, in turn, and the largest of all. */
    private static final class Gaps {
        private final float[] panel;
        private final float[] seam;
        private final float[] largestPanel;
        private final float[] largestSeam;

        Gaps(int samples) {
            panel = new float[samples];
            seam = new float[samples];
            largestPanel = new float[samples];
            largestSeam = new float[samples];
        }
    }

    /** Simulates some of the solids, and counts those whose gaps are all bridged. */
    private int simulate(SplittableRandom random, int from, int to, Gaps gaps) {
        int bridged = 0;
        for (int sample = from; sample < to; sample++) {
            double largestPanel = 0;
            int shownPanel = sample % joint.length;
            for (int i = 0; i < joint.length; i++) {
                double angle = drawn(random, angleMean[i], angleScatter[i]);
                double gap = lean.widest(random, Math.copySign(joint[i] * chord(angle), angle), segments[i]);
                largestPanel = Math.max(largestPanel, gap);
                if (i == shownPanel) {
                    gaps.panel[sample] = (float) gap;
                }
            }
            double largestSeam = 0;
            int shownSeam = sample % seam.length;
            for (int i = 0; i < seam.length; i++) {
                double gap = seam[i] * chord(drawn(random, 2 * bevel.setting(), Math.sqrt(2) * bevel.scatter()));
                largestSeam = Math.max(largestSeam, gap);
                if (i == shownSeam) {
                    gaps.seam[sample] = (float) gap;
                }
            }
            gaps.largestPanel[sample] = (float) largestPanel;
            gaps.largestSeam[sample] = (float) largestSeam;
            bridged += Math.max(largestPanel, largestSeam) <= glueBridges ? 1 : 0;
        }
        return bridged;
    }

    static double drawn(SplittableRandom random, double mean, double scatter) {
        return scatter == 0 ? mean : mean + scatter * random.nextGaussian();
    }

    /** The chord of an angle on a circle of radius 1; angles beyond a half turn count as one. */
    private static double chord(double angle) {
        double positive = Math.min(Math.abs(angle), WIDEST);
        if (positive < 0.1) {
            // The next term is x^7 / 322560, less than 4e-13 here.
            double square = positive * positive;
            return positive * (1 - square / 24 * (1 - square / 80));
        }
        return 2 * Math.sin(positive / 2);
    }

    private static GapPercentiles percentiles(float[] gaps) {
        Arrays.parallelSort(gaps);
        return new GapPercentiles(rank(gaps, 5), rank(gaps, 50), rank(gaps, 95), rank(gaps, 99));
    }

    /** The smallest of the gaps that so many percent do not exceed. */
    private static double rank(float[] sorted, int percent) {
        return sorted[(int) (((long) sorted.length * percent + 99) / 100) - 1];
    }

    /** The share of solids without a gap that the glue does not bridge, to first order. */
    private double linear() {
        double share = 1;
        for (int i = 0; i < joint.length; i++) {
            share *= lean.within(glueBridges, joint[i], angleMean[i], angleScatter[i], segments[i]);
        }
        for (double lever : seam) {
            share *= within(glueBridges / lever, 2 * bevel.setting(), Math.sqrt(2) * bevel.scatter());
        }
        return share;
    }

    /** The probability that a normal error stays within a limit on either side of 0. */
    static double within(double limit, double mean, double scatter) {
        return between(-limit, limit, mean, scatter);
    }

    /** The probability that a normal error lies between two limits. */
    static double between(double least, double most, double mean, double scatter) {
        if (scatter == 0) {
            return least <= mean && mean <= most ? 1 : 0;
        }
        double scale = scatter * Math.sqrt(2);
        return Math.max(0, ErfDifference.value((least - mean) / scale, (most - mean) / scale) / 2);
    }
}
