package org.orbwright.diagnosis;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.diagnosis.DialInRequest.OpenSide;
import org.orbwright.diagnosis.DialInRequest.TrialRequest;

/** Reads the trials of a setting to how far it was off, and notes those that cannot be. */
final class DialTrials {
    /** Degrees that a blade for a square cut can lean at most, without being another cut. */
    private static final double FARTHEST_LEAN = 10;

    private final Dial dial;
    private final Design design;
    private final Checks checks;
    private final List<TrialError> read = new ArrayList<>();

    private DialTrials(Dial dial, Design design, Checks checks) {
        this.dial = dial;
        this.design = design;
        this.checks = checks;
    }

    /** How far the setting was off in each trial; what breaks a rule is noted. */
    static List<TrialError> of(DialInRequest asked, Dial dial, Design design, Checks checks, String pointer) {
        DialTrials trials = new DialTrials(dial, design, checks);
        for (int i = 0; i < asked.trials().size(); i++) {
            trials.read(asked.trials().get(i), pointer + "/trials/" + i);
        }
        return trials.read;
    }

    private void read(TrialRequest trial, String pointer) {
        if ((trial.gap() == null) == (trial.reading() == null)) {
            checks.refuse(
                    pointer,
                    "ONE_OF_GAP_AND_READING",
                    "A trial has either a gap or a reading.",
                    trial.gap() == null ? "neither" : "both",
                    "one of gap and reading");
        } else if (trial.gap() == null) {
            reading(trial, pointer);
        } else if (dial.hasGap()) {
            gap(trial, pointer);
        } else {
            checks.refuse(
                    pointer + "/gap",
                    "NO_GAP_TELLS_THIS",
                    "No gap tells " + dial.setting() + ".",
                    Checks.shown(trial.gap()),
                    "a reading of the length");
        }
    }

    private void reading(TrialRequest trial, String pointer) {
        double off = trial.reading() - dial.designed();
        String at = pointer + "/reading";
        switch (dial.setting()) {
            case TIP_ANGLE -> near(trial, Checks.FARTHEST * dial.designed(), at);
            case BEVEL -> checks.nearTilt(trial.reading(), Math.toRadians(dial.designed()), at);
            case BLADE_SQUARE -> near(trial, FARTHEST_LEAN, at);
            case STOP, BLANK_WIDTH ->
                checks.near(
                        Reading.exact(design.unit().toMillimetres(trial.reading())),
                        design.unit().toMillimetres(dial.designed()),
                        at);
        }
        double half = trial.resolution() / 2;
        add(trial, off - half, off + half, dial.perReading());
    }

    /** Notes an angle that is none of this setting's. */
    private void near(TrialRequest trial, double farthest, String pointer) {
        if (Math.abs(trial.reading() - dial.designed()) > farthest) {
            checks.refuse(
                    pointer,
                    "MEASURE_FAR_OFF",
                    "The design has " + Checks.shown(dial.designed()) + " degrees where "
                            + Checks.shown(trial.reading()) + " were read.",
                    Checks.shown(trial.reading()),
                    Checks.shown(dial.designed() - farthest) + " to " + Checks.shown(dial.designed() + farthest));
        }
    }

    private void gap(TrialRequest trial, String pointer) {
        double distance =
                trial.distance() == null ? dial.lever() : design.unit().toMillimetres(trial.distance());
        double gap = design.unit().toMillimetres(trial.gap());
        int sign = sign(trial, pointer);
        boolean longer = distance > dial.lever() + design.unit().toMillimetres(trial.resolution());
        if (longer && dial.setting() != DialSetting.BLADE_SQUARE) {
            checks.refuse(
                    pointer + "/distance",
                    "DISTANCE_TOO_LARGE",
                    "The joint is only " + design.say(dial.lever()) + " long.",
                    Checks.shown(trial.distance()),
                    "more than 0 and at most " + design.sayAtMost(dial.lever()));
        } else if (checks.fits(Reading.exact(gap), Reading.exact(distance), pointer + "/gap")) {
            double half = design.unit().toMillimetres(trial.resolution()) / 2;
            if (half > Checks.WIDEST_GAP * distance) {
                checks.refuse(
                        pointer + "/resolution",
                        "RESOLUTION_TOO_COARSE",
                        "So coarse a step says nothing of a gap at this distance.",
                        Checks.shown(trial.resolution()),
                        "at most half of the distance, " + design.sayAtMost(2 * Checks.WIDEST_GAP * distance));
                return;
            }
            add(trial, dial.error(sign * gap - half, distance), dial.error(sign * gap + half, distance), 1);
        }
    }

    /** Above 0 where the gap shows that the setting goes too far. */
    private int sign(TrialRequest trial, String pointer) {
        boolean tips = dial.setting() == DialSetting.TIP_ANGLE;
        OpenSide far = tips ? OpenSide.TIPS : OpenSide.INSIDE;
        OpenSide near = tips ? OpenSide.RIM : OpenSide.OUTSIDE;
        boolean said = trial.opensAt() == far || trial.opensAt() == near;
        if (!said && (trial.gap() > 0 || trial.opensAt() != null)) {
            checks.refuse(
                    pointer + "/opensAt",
                    "SIDE_UNKNOWN",
                    "The side on which the gap was open says which way the setting is off.",
                    trial.opensAt() == null ? null : trial.opensAt().name(),
                    near + " or " + far);
        }
        return trial.opensAt() == far ? 1 : -1;
    }

    private void add(TrialRequest trial, double least, double most, double factor) {
        read.add(new TrialError(trial.set(), factor * least, factor * most));
    }
}
