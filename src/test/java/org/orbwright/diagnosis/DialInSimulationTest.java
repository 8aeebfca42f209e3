package org.orbwright.diagnosis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.design.Design;
import org.orbwright.diagnosis.DialIn.Advice;
import org.orbwright.diagnosis.DialInRequest.OpenSide;
import org.orbwright.diagnosis.DialInRequest.ScaleRequest;
import org.orbwright.diagnosis.DialInRequest.TrialRequest;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.tolerance.JointLengths;

/** Random saws, simulated by the geometry of a test panel alone, that are dialled in as the answers say. */
@Slow
class DialInSimulationTest {
    private static final int SAWS = 1000;
    private static final Design DESIGN =
            Designs.example("dodecahedron-with-land").build();
    private static final double JOINT =
            JointLengths.joint(DESIGN, DESIGN.facePanels().get(0));
    private static final double REPEATABILITY = 0.003;

    /** A saw whose scale has its zero anywhere, moves by about a degree a step, and never comes back exactly. */
    private static final class Saw {
        private final Random random;
        private final double right;
        private final double perUnit;
        private double off;

        Saw(Random random) {
            this.random = random;
            right = 36 + random.nextDouble() - 0.5;
            double gain = random.nextGaussian();
            perUnit = 1 + 0.1 * Math.max(-3, Math.min(3, gain));
        }

        /** The gap of five segments, both legs of each off alike. */
        double gap(double set) {
            off = perUnit * (set - right) + REPEATABILITY * random.nextGaussian();
            return 2 * JOINT * Math.sin(Math.toRadians(off) * 10 / 2);
        }

        TrialRequest byGap(double set, double resolution) {
            double gap = gap(set);
            double read = Math.rint(Math.abs(gap) / resolution) * resolution;
            return new TrialRequest(set, read, gap < 0 ? OpenSide.RIM : OpenSide.TIPS, null, null, resolution);
        }

        TrialRequest byProtractor(double set, double resolution) {
            gap(set);
            double read = Math.rint((72 + 2 * off) / resolution) * resolution;
            return new TrialRequest(set, null, null, null, read, resolution);
        }
    }

    private static DialIn dial(List<TrialRequest> trials) {
        ScaleRequest scale = new ScaleRequest(1.0, 0.1, REPEATABILITY);
        return Diagnoses.of(Designs.example("dodecahedron-with-land"))
                .dial(new DialInRequest(DialSetting.TIP_ANGLE, null, null, null, scale, trials))
                .diagnose()
                .dialIn()
                .get(0);
    }

    /**
     * What becomes of a saw.
     *
     * @param held whether the interval held the right setting, after each trial
     * @param trials how many it took until the setting was to stay, or one more than were made
     * @param foretold how many were foretold after the first
     * @param gap the gap at the end
     * @param named trials that were said to contradict
     */
    private record Outcome(List<Boolean> held, int trials, Integer foretold, double gap, int named) {}

    private static Outcome dialIn(int seed, int most, boolean protractorFirst, double resolution) {
        Random random = new Random(1000 + seed);
        Saw saw = new Saw(random);
        List<TrialRequest> trials = new ArrayList<>();
        List<Boolean> held = new ArrayList<>();
        double set = 36 + random.nextDouble() - 0.5;
        Integer foretold = null;
        int named = 0;
        for (int i = 1; i <= most; i++) {
            trials.add(protractorFirst && i == 1 ? saw.byProtractor(set, 0.5) : saw.byGap(set, resolution));
            DialIn dial = dial(trials);
            held.add(dial.least() <= saw.right && saw.right <= dial.most());
            named += (int)
                    dial.trials().stream().filter(DialIn.DialTrial::contradicts).count();
            foretold = i == 1 ? dial.trialsLeft() : foretold;
            if (dial.advice() == Advice.LEAVE) {
                double gap = 2 * JOINT * Math.abs(Math.sin(Math.toRadians(saw.off) * 5));
                return new Outcome(held, i, foretold, gap, named);
            }
            set = dial.next();
        }
        return new Outcome(held, most + 1, foretold, Math.abs(saw.gap(set)), named);
    }

    private static List<Outcome> outcomes(int most, boolean protractorFirst, double resolution) {
        return IntStream.range(0, SAWS)
                .parallel()
                .mapToObj(seed -> dialIn(seed, most, protractorFirst, resolution))
                .toList();
    }

    private static double share(List<Outcome> outcomes, Predicate<Outcome> which) {
        return outcomes.stream().filter(which).count() / (double) outcomes.size();
    }

    /** Of 1000 saws 950 +- 7 should be held: 930 to 970 is three standard deviations. */
    @ParameterizedTest
    @CsvSource({"false,0.05", "false,0.1", "true,0.05"})
    void intervalsHoldTheRightSettingAsOftenAsTheySay(boolean protractorFirst, double resolution) {
        List<Outcome> outcomes = outcomes(3, protractorFirst, resolution);
        for (int trial = 0; trial < 2; trial++) {
            int place = trial;
            List<Outcome> made =
                    outcomes.stream().filter(each -> each.held().size() > place).toList();
            assertBetween(0.93, 0.97, share(made, each -> each.held().get(place)));
        }
        assertBetween(
                0.93, 0.97, share(outcomes, each -> each.held().get(each.held().size() - 1)));
        assertBetween(0.95, 1, share(outcomes, each -> each.gap() <= Diagnoses.GLUE));
        assertBetween(0, 0.02, share(outcomes, each -> each.named() > 0));
        assertBetween(
                0.95,
                1,
                share(
                        outcomes,
                        each -> each.foretold() == null
                                ? protractorFirst
                                : Math.min(each.trials(), 4) <= 1 + each.foretold()));
    }

    private static void assertBetween(double least, double most, double share) {
        assertTrue(least <= share && share <= most, () -> Double.toString(share));
    }
}
