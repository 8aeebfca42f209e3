package org.orbwright.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.orbwright.design.Design;
import org.orbwright.diagnosis.DialIn.Advice;
import org.orbwright.diagnosis.DialIn.DialReading;
import org.orbwright.diagnosis.DialIn.DialTrial;
import org.orbwright.diagnosis.DialIn.ErrorRange;
import org.orbwright.diagnosis.DialIn.ReadBy;
import org.orbwright.diagnosis.DialInRequest.ScaleRequest;
import org.orbwright.diagnosis.DialInRequest.TrialRequest;
import org.orbwright.quantity.LengthUnit;

/**
 * From the trials of one setting to the next setting on the user's own scale. The model: a setting is off by a line in
 * what the scale shows, and by a scatter from trial to trial; a reading is the nearest step ({@link SettingEstimate}).
 */
final class DialInCalculator {
    /** Of the saws that are like this one, the share that intervals and counts of trials hold for. */
    private static final double SURE = 0.95;

    private static final int MOST_TRIALS = 20;

    private final DialInRequest asked;
    private final Design design;
    private final Dial dial;
    private final double glueBridges;
    private final List<TrialError> trials;
    private final double scatter;
    private final Contradictions contradictions;
    private final Set<Integer> out;
    private final SettingEstimate estimate;

    private DialInCalculator(
            DialInRequest asked, Design design, Dial dial, double glueBridges, List<TrialError> trials) {
        ScaleRequest scale = asked.scale();
        this.asked = asked;
        this.design = design;
        this.dial = dial;
        this.glueBridges = glueBridges;
        this.trials = trials;
        this.scatter = scale.repeatability();
        this.contradictions = new Contradictions(trials, scatter, scale.perUnit(), scale.uncertainty());
        this.out = contradictions.found();
        List<TrialError> counted = new ArrayList<>();
        for (int i = 0; i < trials.size(); i++) {
            if (!out.contains(i)) {
                counted.add(trials.get(i));
            }
        }
        this.estimate = new SettingEstimate(counted, scatter, scale.perUnit(), scale.uncertainty());
    }

    /**
     * What the trials of a setting say, or null if they break a rule, which is noted.
     *
     * @param asked with everything filled in
     * @param glueBridges largest gap that the glue bridges, in millimetres
     */
    static DialIn of(DialInRequest asked, Design design, double glueBridges, Checks checks, String pointer) {
        int before = checks.broken().size();
        Dial dial = Dial.of(asked, design, checks, pointer);
        checkScale(asked.scale(), checks, pointer);
        if (dial == null) {
            return null;
        }
        List<TrialError> trials = DialTrials.of(asked, dial, design, checks, pointer);
        return checks.broken().size() > before
                ? null
                : new DialInCalculator(asked, design, dial, glueBridges, trials).dialIn();
    }

    private static void checkScale(ScaleRequest scale, Checks checks, String pointer) {
        double most = Math.abs(scale.perUnit()) / 4;
        if (scale.perUnit() == 0) {
            checks.refuse(
                    pointer + "/scale/perUnit",
                    "SCALE_WITHOUT_STEPS",
                    "A scale of which no step moves the setting dials nothing in.",
                    "0",
                    "any other number, below 0 where the setting moves back");
        } else if (scale.uncertainty() > most) {
            checks.refuse(
                    pointer + "/scale/uncertainty",
                    "SCALE_UNKNOWN",
                    "So uncertain a step does not say which way the setting moves.",
                    Checks.shown(scale.uncertainty()),
                    "at most a quarter of perUnit, " + Checks.shown(most));
        }
    }

    private DialIn dialIn() {
        TrialError last = trials.get(trials.size() - 1);
        Reading right = estimate.right();
        double[] range = estimate.quantiles((1 - SURE) / 2, 0.5, (1 + SURE) / 2);
        ErrorRange off = off(last);
        Advice advice = advice(last, off);
        double next = advice == Advice.SET_NEXT ? range[1] : last.set();
        Reading slope = estimate.slope();
        return new DialIn(
                asked.setting(),
                dial.face(),
                advice,
                next,
                right.uncertainty(),
                range[0],
                range[2],
                slope.value(),
                slope.uncertainty(),
                off,
                dial.hasGap() ? Double.valueOf(dial.gap(off.farthest())) : null,
                dial.hasGap() ? Double.valueOf(gapNext(advice, off, next)) : null,
                trialsLeft(advice, last, next),
                listed(),
                out.isEmpty() ? null : contradictions.slopeOfTrials(),
                readings());
    }

    /** How far the last trial was off: what was read, and what all trials say, where they agree. */
    private ErrorRange off(TrialError last) {
        double[] told = estimate.quantilesAt(last.set(), (1 - SURE) / 2, (1 + SURE) / 2);
        double least = Math.max(last.least(), told[0] - 2 * scatter);
        double most = Math.min(last.most(), told[1] + 2 * scatter);
        return least <= most ? new ErrorRange(least, most) : new ErrorRange(last.least(), last.most());
    }

    private Advice advice(TrialError last, ErrorRange off) {
        boolean bridged = dial.hasGap() && dial.gap(off.farthest()) <= glueBridges;
        if (bridged || (!dial.hasGap() && off.holdsNone())) {
            return Advice.LEAVE;
        }
        // What the next trial could show is no more than the last one has shown.
        boolean none = off.holdsNone() && last.least() <= 0 && last.most() >= 0;
        return none ? Advice.MEASURE_FINER : Advice.SET_NEXT;
    }

    private double gapNext(Advice advice, ErrorRange off, double next) {
        return dial.gap(advice == Advice.SET_NEXT ? estimate.bound(next, SURE) : off.farthest());
    }

    /** Trials until one shows that the setting can stay. */
    private Integer trialsLeft(Advice advice, TrialError last, double next) {
        if (advice == Advice.LEAVE) {
            return 0;
        }
        double shows = farthestToStay(last.half());
        if (advice == Advice.MEASURE_FINER || shows < 0) {
            return null;
        }
        double missed = 1 - estimate.chance(next, shows);
        // Later trials start from a reading that is as fine as the last, close to where the setting is right.
        SettingEstimate later = new SettingEstimate(
                List.of(new TrialError(0, -last.half(), last.half())),
                scatter,
                asked.scale().perUnit(),
                0);
        double missedLater = 1 - later.chance(0, shows);
        for (int count = 1; count <= MOST_TRIALS; count++) {
            if (missed <= 1 - SURE) {
                return count;
            }
            missed *= missedLater;
        }
        return null;
    }

    /** The error within which a trial shows that the setting can stay; below 0 where none can. */
    private double farthestToStay(double half) {
        if (!dial.hasGap()) {
            return half;
        }
        double bridged = dial.error(glueBridges, dial.lever());
        return half > bridged ? -1 : half + 2 * half * Math.floor((bridged - half) / (2 * half));
    }

    private List<DialTrial> listed() {
        List<DialTrial> listed = new ArrayList<>();
        for (int i = 0; i < trials.size(); i++) {
            TrialError trial = trials.get(i);
            listed.add(new DialTrial(
                    i + 1,
                    trial.middle(),
                    trial.uncertainty(),
                    trials.size() == 1 ? null : contradictions.foretold(i, out),
                    out.contains(i)));
        }
        return listed;
    }

    private List<DialReading> readings() {
        List<DialReading> readings = new ArrayList<>();
        double bridged = dial.hasGap() ? dial.error(glueBridges, dial.lever()) : 0;
        LengthUnit unit = design.unit();
        double usual = unit.usual(0.1, 0.004);
        if (dial.hasGap()) {
            double gap = resolution(true, usual);
            double half = dial.error(unit.toMillimetres(gap) / 2, dial.lever());
            readings.add(new DialReading(ReadBy.GAP, gap, half / Math.sqrt(3), unit.fromMillimetres(2 * glueBridges)));
        }
        double reading = resolution(false, dial.setting().isAngle() ? 0.5 : usual);
        readings.add(new DialReading(
                ReadBy.READING,
                reading,
                dial.perReading() * reading / 2 / Math.sqrt(3),
                dial.hasGap() ? Double.valueOf(2 * bridged / dial.perReading()) : null));
        readings.sort(Comparator.comparingDouble(DialReading::uncertainty));
        return readings;
    }

    /** The step of the last trial that was read so, or the usual one. */
    private double resolution(boolean gap, double usual) {
        double resolution = usual;
        for (TrialRequest trial : asked.trials()) {
            resolution = (trial.gap() != null) == gap ? trial.resolution() : resolution;
        }
        return resolution;
    }
}
