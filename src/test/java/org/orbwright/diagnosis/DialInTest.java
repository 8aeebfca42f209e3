package org.orbwright.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.diagnosis.DialIn.Advice;
import org.orbwright.diagnosis.DialIn.DialTrial;
import org.orbwright.diagnosis.DialIn.ReadBy;
import org.orbwright.diagnosis.DialInRequest.OpenSide;
import org.orbwright.diagnosis.DialInRequest.ScaleRequest;
import org.orbwright.diagnosis.DialInRequest.TrialRequest;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.LengthUnit;

class DialInTest {
    private static final Designs LANTERN = Designs.example("dodecahedron-with-land");
    private static final Designs CUBE = Designs.of("cube");
    /** Length of a joint of the lantern's panels. */
    private static final double JOINT = 64.8578;

    private static TrialRequest gap(double set, double gap, OpenSide side, double resolution) {
        return new TrialRequest(set, gap, side, null, null, resolution);
    }

    private static TrialRequest reading(double set, double reading, Double resolution) {
        return new TrialRequest(set, null, null, null, reading, resolution);
    }

    private static DialIn dial(Designs design, DialSetting setting, ScaleRequest scale, TrialRequest... trials) {
        return Diagnoses.of(design)
                .dial(new DialInRequest(setting, null, null, null, scale, Arrays.asList(trials)))
                .diagnose()
                .dialIn()
                .get(0);
    }

    private static Diagnoses refused(Designs design, DialSetting setting, ScaleRequest scale, TrialRequest... trials) {
        return Diagnoses.of(design).dial(new DialInRequest(setting, null, null, null, scale, Arrays.asList(trials)));
    }

    /** Gap of five segments whose legs are all off by so many degrees. */
    private static double opens(double degrees) {
        return 2 * JOINT * Math.sin(Math.toRadians(Math.abs(degrees) * 10 / 2));
    }

    @Nested
    class NextSetting {
        @Test
        @DisplayName("hand calculation: 0.004 in at 2.44 in are 0.0939 degrees, 0.0094 for each of ten legs")
        void fromTheSettingThatWasUsed() {
            Designs inches = Designs.of("dodecahedron").in(LengthUnit.IN);
            TrialRequest trial = new TrialRequest(36.0706, 0.004, OpenSide.RIM, 2.34, null, 0.001);
            DialIn dial = dial(inches, DialSetting.TIP_ANGLE, null, trial);
            assertEquals(36.0706 + Math.toDegrees(0.004 / 2.34) / 10, dial.next(), 2e-4);
            assertEquals(
                    Advice.LEAVE,
                    dial(inches, DialSetting.TIP_ANGLE, null, new TrialRequest(36.0706, 0.0, null, null, null, 0.001))
                            .advice());
        }

        @Test
        void aScaleMayHaveItsZeroAnywhereAndRunTheOtherWay() {
            ScaleRequest scale = new ScaleRequest(-2.0, 0.01, null);
            DialIn dial = dial(LANTERN, DialSetting.TIP_ANGLE, scale, gap(7.5, opens(0.1), OpenSide.RIM, 0.02));
            // Off by -0.1 degrees: a step of the scale takes 2 degrees away.
            assertEquals(7.45, dial.next(), 2e-4);
            assertEquals(-2, dial.perUnit(), 1e-3);
        }

        @Test
        void twoSettingsThatLieApartTellTheScale() {
            // A scale of which a step is 0.8 degrees, right at 40.
            TrialRequest[] trials = {gap(39, opens(0.8), OpenSide.RIM, 0.02), gap(39.8, opens(0.16), OpenSide.RIM, 0.02)
            };
            DialIn one = dial(LANTERN, DialSetting.TIP_ANGLE, new ScaleRequest(1.0, 0.2, 0.001), trials[0]);
            assertEquals(0.2, one.perUnitUncertainty(), 0.01);
            DialIn two = dial(LANTERN, DialSetting.TIP_ANGLE, new ScaleRequest(1.0, 0.2, 0.001), trials);
            assertEquals(0.8, two.perUnit(), 0.005);
            assertTrue(two.perUnitUncertainty() < 0.005);
            assertEquals(40, two.next(), 2e-3);
            assertTrue(two.least() < 40 && 40 < two.most());
            assertEquals(1, two.trialsLeft());
        }

        @Test
        @DisplayName("hand calculation: a protractor to 0.5 degrees tells the mitre to +- 0.125, 95 % of that 0.119")
        void aProtractor() {
            ScaleRequest exact = new ScaleRequest(1.0, 0.0, 0.0001);
            DialIn dial = dial(LANTERN, DialSetting.TIP_ANGLE, exact, reading(36, 73.0, 0.5));
            assertEquals(35.5, dial.next(), 2e-3);
            assertEquals(0.11875, (dial.most() - dial.least()) / 2, 2e-3);
            assertEquals(0.125 / Math.sqrt(3), dial.uncertainty(), 1e-3);
            assertNull(dial.trialsLeft());
            assertEquals(
                    Advice.MEASURE_FINER,
                    dial(LANTERN, DialSetting.TIP_ANGLE, exact, reading(36, 72.0, 0.5))
                            .advice());
        }

        @Test
        @DisplayName("readings that are rounded alike tell no more than one of them")
        void rereadingTellsNothing() {
            ScaleRequest exact = new ScaleRequest(1.0, 0.0, 0.0001);
            TrialRequest trial = reading(36, 73.0, 0.5);
            DialIn once = dial(LANTERN, DialSetting.TIP_ANGLE, exact, trial);
            DialIn often = dial(LANTERN, DialSetting.TIP_ANGLE, exact, trial, trial, trial, trial);
            assertEquals(once.uncertainty(), often.uncertainty(), 1e-3);
        }
    }

    @Nested
    class Worth {
        @Test
        @DisplayName("hand calculation: 0.1 mm at 64.86 mm over ten legs are 0.0088 degrees, a protractor's step 0.25")
        void aGapIsWorthMoreThanAProtractor() {
            DialIn dial = dial(LANTERN, DialSetting.TIP_ANGLE, null, gap(36, 0.5, OpenSide.RIM, 0.1));
            assertEquals(ReadBy.GAP, dial.readings().get(0).by());
            double step = Math.toDegrees(0.1 / JOINT) / 10;
            assertEquals(step / Math.sqrt(12), dial.readings().get(0).uncertainty(), 1e-6);
            assertEquals(0.2, dial.readings().get(0).coarsest(), 1e-12);
            assertEquals(0.25 / Math.sqrt(12), dial.readings().get(1).uncertainty(), 1e-12);
            // Half of such a step is what the glue bridges, 0.1 mm.
            assertEquals(4 * step, dial.readings().get(1).coarsest(), 1e-6);
        }

        @Test
        void glueBridgesWhatIsLeft() {
            DialIn dial = dial(LANTERN, DialSetting.TIP_ANGLE, null, gap(36, 0.05, OpenSide.RIM, 0.05));
            assertEquals(Advice.LEAVE, dial.advice());
            assertEquals(36, dial.next());
            assertEquals(0, dial.trialsLeft());
            assertTrue(dial.gapNow() <= 0.075 + 1e-9);
        }
    }

    @Nested
    class OtherSettings {
        @Test
        @DisplayName("hand calculation: 0.2468 mm at 35.355 mm are 0.4 degrees, the tilt is 0.2 too far")
        void bevel() {
            double lever = 25 * Math.sqrt(2);
            double gap = 2 * lever * Math.sin(Math.toRadians(0.2));
            DialIn dial = dial(CUBE, DialSetting.BEVEL, null, gap(45.3, gap, OpenSide.INSIDE, 0.02));
            assertEquals(0.2, dial.trials().get(0).error(), 1e-6);
            assertEquals(45.1, dial.next(), 2e-3);
            assertEquals(
                    0.2,
                    dial(CUBE, DialSetting.BEVEL, null, reading(45.3, 45.2, 0.1))
                            .trials()
                            .get(0)
                            .error(),
                    1e-9);
        }

        @Test
        @DisplayName("hand calculation: 0.1745 mm across 25 mm are twice 0.2 degrees")
        void bladeSquare() {
            double gap = 2 * 25 * Math.tan(Math.toRadians(0.2));
            DialIn dial = dial(CUBE, DialSetting.BLADE_SQUARE, null, gap(0, gap, OpenSide.OUTSIDE, 0.02));
            assertEquals(-0.2, dial.trials().get(0).error(), 1e-7);
            assertEquals(0.2, dial.next(), 2e-3);
            assertEquals(gap, dial.gapNow(), 0.011);
        }

        @Test
        void lengths() {
            DialIn stop = dial(CUBE, DialSetting.STOP, null, reading(201, 200.6, 0.1));
            assertEquals(0.6, stop.trials().get(0).error(), 1e-9);
            assertEquals(200.4, stop.next(), 0.01);
            assertNull(stop.gapNow());
            DialIn width = dial(CUBE, DialSetting.BLANK_WIDTH, null, reading(100, 100.0, 0.1));
            assertEquals(Advice.LEAVE, width.advice());
            // A caliper that reads more finely than the saw repeats is not followed for ever.
            assertEquals(
                    Advice.LEAVE,
                    dial(CUBE, DialSetting.STOP, null, reading(200, 200.03, 0.001))
                            .advice());
        }

        @Test
        @DisplayName("bands of 70 and 80 mm across at 30 degrees make a blank of 150 mm, whatever the base distance is")
        void theBlankOfTiltedBands() {
            Designs tilted =
                    CUBE.bands(30, List.of(new BandRequest("white ash", 70.0), new BandRequest("black walnut", 80.0)));
            DialIn dial = dial(tilted, DialSetting.BLANK_WIDTH, null, reading(151, 150.5, 0.1));
            assertEquals(0.5, dial.trials().get(0).error(), 1e-9);
        }
    }

    @Nested
    class Contradicting {
        private static List<Integer> named(DialIn dial) {
            return dial.trials().stream()
                    .filter(DialTrial::contradicts)
                    .map(DialTrial::trial)
                    .toList();
        }

        @Test
        void aMisreadTrialIsNamedAndDoesNotCount() {
            DialIn dial = dial(
                    LANTERN,
                    DialSetting.TIP_ANGLE,
                    null,
                    gap(36, opens(0.3), OpenSide.RIM, 0.05),
                    gap(36.3, opens(0.2), OpenSide.TIPS, 0.05),
                    gap(36.28, opens(0.02), OpenSide.RIM, 0.05));
            assertEquals(List.of(2), named(dial));
            assertEquals(36.3, dial.next(), 0.01);
        }

        @Test
        void ofTwoTheLaterOneCounts() {
            DialIn dial = dial(
                    LANTERN,
                    DialSetting.TIP_ANGLE,
                    null,
                    gap(36, opens(0.3), OpenSide.RIM, 0.05),
                    gap(36.3, opens(0.6), OpenSide.RIM, 0.05));
            assertEquals(List.of(1), named(dial));
            assertEquals(36.9, dial.next(), 0.02);
            // The gap has grown by as much as the scale went up.
            assertEquals(-1, dial.perUnitOfTrials(), 0.05);
        }

        @Test
        @DisplayName("a scale of half degrees, taken for one of degrees: three trials tell")
        void threeTrialsTellAnotherScale() {
            double[] sets = {36, 36.5, 36.75};
            TrialRequest[] trials = Arrays.stream(sets)
                    .mapToObj(set -> gap(set, Math.rint(opens(0.5 * (37 - set)) / 0.05) * 0.05, OpenSide.RIM, 0.05))
                    .toArray(TrialRequest[]::new);
            DialIn dial = dial(LANTERN, DialSetting.TIP_ANGLE, null, trials);
            assertEquals(List.of(), named(dial));
            assertEquals(0.5, dial.perUnitOfTrials(), 0.02);
            assertEquals(0.5, dial.perUnit(), 0.02);
            assertTrue(dial.least() < 37 && 37 < dial.most(), () -> dial.least() + " to " + dial.most());
        }

        @Test
        void aLastTrialThatContradictsIsMadeAgain() {
            DialIn dial = dial(
                    LANTERN,
                    DialSetting.TIP_ANGLE,
                    null,
                    gap(36, opens(0.3), OpenSide.RIM, 0.05),
                    gap(36.2, opens(0.1), OpenSide.RIM, 0.05),
                    gap(36.2, 0, null, 0.05));
            assertEquals(List.of(3), named(dial));
            assertEquals(Advice.MEASURE_AGAIN, dial.advice());
            assertEquals(36.2, dial.next());
            assertNull(dial.trialsLeft());
        }

        @Test
        void trialsThatAgreeAreNotNamed() {
            DialIn dial = dial(
                    LANTERN,
                    DialSetting.TIP_ANGLE,
                    null,
                    gap(36, opens(0.3), OpenSide.RIM, 0.05),
                    gap(36.2, opens(0.1), OpenSide.RIM, 0.05));
            assertEquals(List.of(), named(dial));
            assertNull(dial.perUnitOfTrials());
            assertFalse(dial.trials().get(0).foretold() == null);
        }
    }

    @Nested
    class Absurd {
        @Test
        void trialsThatSayNothing() {
            String at = "/diagnosis/dialIn/0";
            refused(LANTERN, DialSetting.TIP_ANGLE, null, new TrialRequest(36.0, null, null, null, null, null))
                    .assertRefused(at + "/trials/0", "ONE_OF_GAP_AND_READING", "neither");
            refused(LANTERN, DialSetting.TIP_ANGLE, null, gap(36, 0.2, null, 0.1))
                    .assertRefused(at + "/trials/0/opensAt", "SIDE_UNKNOWN", null);
            refused(LANTERN, DialSetting.TIP_ANGLE, null, gap(36, 0.2, OpenSide.INSIDE, 0.1))
                    .assertRefused(at + "/trials/0/opensAt", "SIDE_UNKNOWN", "INSIDE");
            refused(LANTERN, DialSetting.TIP_ANGLE, null, gap(36, 20, OpenSide.RIM, 0.1))
                    .assertRefused(at + "/trials/0/gap", "GAP_TOO_LARGE", "20");
            refused(LANTERN, DialSetting.TIP_ANGLE, null, reading(36, 36.0, 0.5))
                    .assertRefused(at + "/trials/0/reading", "MEASURE_FAR_OFF", "36");
            refused(LANTERN, DialSetting.STOP, null, gap(36, 0.1, OpenSide.RIM, 0.1))
                    .assertRefused(at + "/trials/0/gap", "NO_GAP_TELLS_THIS", "0.1");
            refused(LANTERN, DialSetting.TIP_ANGLE, new ScaleRequest(0.0, null, null), reading(36, 72.0, 0.5))
                    .assertRefused(at + "/scale/perUnit", "SCALE_WITHOUT_STEPS", "0");
            refused(LANTERN, DialSetting.TIP_ANGLE, new ScaleRequest(1.0, 0.5, null), reading(36, 72.0, 0.5))
                    .assertRefused(at + "/scale/uncertainty", "SCALE_UNKNOWN", "0.5");
        }
    }
}
