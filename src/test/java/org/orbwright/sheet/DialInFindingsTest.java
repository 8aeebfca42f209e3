package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.orbwright.diagnosis.Diagnoses;
import org.orbwright.diagnosis.DialInRequest;
import org.orbwright.diagnosis.DialInRequest.OpenSide;
import org.orbwright.diagnosis.DialInRequest.TrialRequest;
import org.orbwright.diagnosis.DialSetting;
import org.orbwright.fixture.Designs;
import org.orbwright.source.Source;

@Source(CONTRACT)
class DialInFindingsTest {
    private static List<String> messages(DialSetting setting, TrialRequest... trials) {
        return SheetCalculator.diagnosis(Diagnoses.of(Designs.of("cube"))
                        .dial(new DialInRequest(setting, null, null, null, null, Arrays.asList(trials)))
                        .document())
                .findings()
                .stream()
                .map(finding -> finding.code() + ": " + finding.message())
                .toList();
    }

    private static TrialRequest gap(double set, double gap, OpenSide side) {
        return new TrialRequest(set, gap, side, null, null, 0.05);
    }

    @Test
    void twoTrialsOfAScaleThatRunsTheOtherWay() {
        // Over 35.355 mm of a seam, 0.2468 mm are two bevels that are off by 0.2 degrees each, 0.3702 mm by 0.3.
        assertEquals(
                List.of(
                        "TRIALS_CONTRADICT: Trials 1 and 2 of the blade tilt contradict each other. The later one counts."
                                + " If both are right, a step of the scale is -1 degrees. A third trial will tell."),
                messages(DialSetting.BEVEL, gap(45, 0.2468, OpenSide.OUTSIDE), gap(45.1, 0.3702, OpenSide.OUTSIDE)));
    }

    @Test
    void oneOfThreeTrials() {
        List<String> messages = messages(
                DialSetting.BEVEL,
                gap(45, 0.25, OpenSide.OUTSIDE),
                gap(45.1, 0.5, OpenSide.INSIDE),
                gap(45.2, 0, null));
        assertEquals(1, messages.size());
        assertTrue(
                messages.get(0)
                        .startsWith("TRIALS_CONTRADICT: Trial 2 of the blade tilt reads 0.405 degrees off. The others"
                                + " foretell -0.1"),
                messages.get(0));
        assertTrue(messages.get(0).endsWith(" It does not count: measure again."), messages.get(0));
    }

    @Test
    void threeTrialsThatAgreeOnAnotherScale() {
        assertEquals(
                List.of(
                        "OTHER_SCALE: The trials of the blade tilt agree with each other, but not with the stated scale."
                                + " They tell of a step of -1 degrees, and that was taken. State it in scale.perUnit, or measure"
                                + " again."),
                messages(
                        DialSetting.BEVEL,
                        gap(45, 0.2468, OpenSide.OUTSIDE),
                        gap(45.4, 0.7404, OpenSide.OUTSIDE),
                        gap(44.8, 0, null)));
    }

    @Test
    void aSawThatComesBackBadly() {
        assertEquals(
                List.of(
                        "READING_TOO_COARSE: Trials like the last one will not bring the blade tilt close enough. Read a gap to"
                                + " 0.2 mm or finer. If that is done, the saw has to come back to a setting more closely."),
                SheetCalculator.diagnosis(Diagnoses.of(Designs.of("cube"))
                                .dial(new DialInRequest(
                                        DialSetting.BEVEL,
                                        null,
                                        null,
                                        null,
                                        new DialInRequest.ScaleRequest(1.0, 0.1, 2.0),
                                        List.of(gap(45, 0.5, OpenSide.OUTSIDE))))
                                .document())
                        .findings()
                        .stream()
                        .map(finding -> finding.code() + ": " + finding.message())
                        .toList());
    }

    @Test
    void aReadingThatIsTooCoarse() {
        assertEquals(
                List.of(
                        "READING_TOO_COARSE: The reading cannot tell the error of the blade tilt from none, and a gap of"
                                + " 0.31 mm may be left. Leave the setting, and read a gap to 0.2 mm or finer."),
                messages(DialSetting.BEVEL, new TrialRequest(45.0, null, null, null, 45.0, 0.5)));
    }

    @Test
    void trialsThatAgreeFindNothing() {
        assertEquals(List.of(), messages(DialSetting.BEVEL, gap(45, 0.25, OpenSide.OUTSIDE), gap(45.2, 0, null)));
    }
}
