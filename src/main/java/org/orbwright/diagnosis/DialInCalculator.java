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
import org.orbwright.tolerance.Tolerance;

/**
 * From the trials of one setting to the next setting on the user's own scale. The model: a setting is off by a line in
 * what the scale shows, and by a scatter from trial to trial; a reading is the nearest step ({@link SettingEstimate}).
 */
final class DialInCalculator {
    /** Of the saws that are like this one, the share that intervals and counts of trials hold for. */
    private static final double SURE = 0.95;

    private static final int MOST_TRIALS = 20;
    /** A whole number of steps but for the last bits of a double is one. */
    private static final double WHOLE = 1e-6;
    /** Where trials tell a scale alone, what they tell is taken as known so many times less well before. */
    private static final double WIDE = 4;
    /** The least step of a scale, in degrees or in the design's unit. */
    private static final double LEAST_STEP = 1e-4;

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
        LineFit line = contradictions.isOtherScale() ? contradictions.ofTrials() : null;
        this.estimate = line == null
                ? new SettingEstimate(counted, scatter, scale.perUnit(), scale.uncertainty())
                : new SettingEstimate(counted, scatter, line.slope(), WIDE * line.slopeUncertainty());
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
        if (Math.abs(scale.perUnit()) < LEAST_STEP) {
            checks.refuse(
                    pointer + "/scale/perUnit",
                    "SCALE_WITHOUT_STEPS",
                    "A step of this scale does not move the setting.",
                    Checks.shown(scale.perUnit()),
                    "at least 0.0001, or at most -0.0001 where the setting moves back");
        } else if (scale.uncertainty() > most) {
            checks.refuse(
                    pointer + "/scale/uncertainty",
                    "SCALE_UNKNOWN",
                    "The step of the scale is too uncertain to say how far to move the setting.",
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
                trialsLeft(advice, next),
                listed(),
                perUnitOfTrials(),
                readings());
    }

    /** Left out where trials agree, and where one of several is out of line. */
    private Double perUnitOfTrials() {
        boolean told = contradictions.isOtherScale() || (!out.isEmpty() && trials.size() == 2);
        LineFit line = told ? contradictions.ofTrials() : null;
        return line == null ? null : Double.valueOf(line.slope());
    }

    /** How far the last trial was off: what was read, and what all trials say, where they agree. */
    private ErrorRange off(TrialError last) {
        double[] told = estimate.quantilesAt(last.set(), (1 - SURE) / 2, (1 + SURE) / 2);
        double least = Math.max(last.least(), told[0] - 2 * scatter);
        double most = Math.min(last.most(), told[1] + 2 * scatter);
        return least <= most ? new ErrorRange(least, most) : new ErrorRange(last.least(), last.most());
    }

    private Advice advice(TrialError last, ErrorRange off) {
        if (out.contains(trials.size() - 1)) {
            return Advice.MEASURE_AGAIN;
        }
        boolean bridged = dial.hasGap()
                ? dial.gap(off.farthest()) <= glueBridges + Tolerance.STILL_BRIDGED
                : Math.abs(last.middle()) <= last.half() + 2 * scatter;
        if (bridged) {
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
    private Integer trialsLeft(Advice advice, double next) {
        if (advice == Advice.LEAVE) {
            return 0;
        }
        double half = half();
        double shows = farthestToStay(half);
        if (advice != Advice.SET_NEXT || shows < 0) {
            return null;
        }
        double missed = 1 - estimate.chance(next, shows);
        // Later trials start from a reading that is as fine as the last, close to where the setting is right.
        SettingEstimate later = new SettingEstimate(
                List.of(new TrialError(0, -half, half)), scatter, asked.scale().perUnit(), 0);
        double missedLater = 1 - later.chance(0, shows);
        for (int count = 1; count <= MOST_TRIALS; count++) {
            if (missed <= 1 - SURE) {
                return count;
            }
            missed *= missedLater;
        }
        return null;
    }

    /** Half of the last reading's step, as an error of the setting that is small. */
    private double half() {
        TrialRequest last = asked.trials().get(asked.trials().size() - 1);
        return last.gap() == null
                ? dial.perReading() * last.resolution() / 2
                : dial.error(design.unit().toMillimetres(last.resolution()) / 2, distance());
    }

    /** Where the last gap was measured. */
    private double distance() {
        double distance = dial.lever();
        for (TrialRequest trial : asked.trials()) {
            distance = trial.gap() == null || trial.distance() == null
                    ? distance
                    : design.unit().toMillimetres(trial.distance());
        }
        return distance;
    }

    /** The error within which a trial shows that the setting can stay; below 0 where none can. */
    private double farthestToStay(double half) {
        if (!dial.hasGap()) {
            return half + 2 * scatter;
        }
        double bridged = dial.error(glueBridges + Tolerance.STILL_BRIDGED, dial.lever());
        return half > bridged ? -1 : half + 2 * half * Math.floor((bridged - half) / (2 * half) + WHOLE);
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
            double half = dial.error(unit.toMillimetres(gap) / 2, distance());
            double coarsest = unit.fromMillimetres(2 * glueBridges * distance() / dial.lever());
            readings.add(new DialReading(ReadBy.GAP, gap, half / Math.sqrt(3), above0(coarsest)));
        }
        double reading = resolution(false, dial.setting().isAngle() ? 0.5 : usual);
        readings.add(new DialReading(
                ReadBy.READING,
                reading,
                dial.perReading() * reading / 2 / Math.sqrt(3),
                dial.hasGap() ? above0(2 * bridged / dial.perReading()) : null));
        readings.sort(Comparator.comparingDouble(DialReading::uncertainty));
        return readings;
    }

    /** No step tells whether glue that bridges nothing bridges what is left. */
    private static Double above0(double coarsest) {
        return coarsest > 0 ? coarsest : null;
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
