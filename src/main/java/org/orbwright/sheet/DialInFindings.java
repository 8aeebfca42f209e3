package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.orbwright.design.Design;
import org.orbwright.diagnosis.DialIn;
import org.orbwright.diagnosis.DialIn.Advice;
import org.orbwright.diagnosis.DialIn.DialReading;
import org.orbwright.diagnosis.DialIn.DialTrial;
import org.orbwright.diagnosis.DialIn.ReadBy;
import org.orbwright.quantity.Rounding;

/** What trials of a setting find wrong: trials that contradict each other, and readings that are too coarse. */
final class DialInFindings {
    private static final int SHOWN_DECIMALS = 3;

    private final Design design;
    private final DialIn dial;
    private final String field;
    private final List<Finding> findings = new ArrayList<>();

    private DialInFindings(Design design, DialIn dial, String field) {
        this.design = design;
        this.dial = dial;
        this.field = field;
    }

    static List<Finding> of(Design design, List<DialIn> dials) {
        List<Finding> all = new ArrayList<>();
        for (int i = 0; i < dials.size(); i++) {
            DialInFindings finder = new DialInFindings(design, dials.get(i), "/diagnosis/dialIn/" + i);
            finder.contradictions();
            finder.coarse();
            finder.outOfReach();
            all.addAll(finder.findings);
        }
        return all;
    }

    private String name() {
        return switch (dial.setting()) {
            case TIP_ANGLE -> "mitre gauge";
            case BEVEL -> "blade tilt";
            case STOP -> "stop";
            case BLADE_SQUARE -> "square blade";
            case BLANK_WIDTH -> "rip fence";
        };
    }

    private String unit() {
        return dial.setting().isAngle() ? " degrees" : " " + design.unit().symbol();
    }

    private static String plain(double value) {
        return Rounding.plain(value, SHOWN_DECIMALS);
    }

    private void contradictions() {
        List<DialTrial> out =
                dial.trials().stream().filter(DialTrial::contradicts).toList();
        if (out.isEmpty()) {
            if (dial.perUnitOfTrials() != null) {
                findings.add(FindingCode.OTHER_SCALE.warn(
                        "The trials of the " + name()
                                + " agree with each other, but not with the stated scale. They tell of a step of "
                                + plain(dial.perUnitOfTrials()) + unit()
                                + ", and that was taken. State it in scale.perUnit, or measure again.",
                        field));
            }
        } else if (dial.trials().size() == 2) {
            String scale = dial.perUnitOfTrials() == null
                    ? ""
                    : " If both are right, a step of the scale is " + plain(dial.perUnitOfTrials()) + unit()
                            + ". A third trial will tell.";
            findings.add(FindingCode.TRIALS_CONTRADICT.warn(
                    "Trials 1 and 2 of the " + name() + " contradict each other. The later one counts." + scale,
                    field));
        } else if (out.size() == 1) {
            DialTrial trial = out.get(0);
            findings.add(FindingCode.TRIALS_CONTRADICT.warn(
                    "Trial " + trial.trial() + " of the " + name() + " reads " + plain(trial.error()) + unit()
                            + " off. The others foretell "
                            + plain(trial.foretold().least()) + " to "
                            + plain(trial.foretold().most()) + ". It does not count: measure again.",
                    field));
        } else {
            String numbers =
                    out.stream().map(trial -> String.valueOf(trial.trial())).collect(Collectors.joining(", "));
            findings.add(FindingCode.TRIALS_CONTRADICT.warn(
                    "Trials " + numbers + " of the " + name()
                            + " contradict the others. They do not count: measure again.",
                    field));
        }
    }

    /** No trial will ever show that the setting can stay. */
    private void outOfReach() {
        if (dial.advice() == Advice.SET_NEXT && dial.trialsLeft() == null) {
            DialReading best = dial.readings().get(0);
            findings.add(FindingCode.READING_TOO_COARSE.warn(
                    "Trials like the last one will not bring the " + name() + " close enough."
                            + (best.coarsest() == null ? "" : " Read " + finer(best))
                            + " If that is done, the saw has to come back to a setting more closely.",
                    field));
        }
    }

    private void coarse() {
        if (dial.advice() != Advice.MEASURE_FINER) {
            return;
        }
        findings.add(FindingCode.READING_TOO_COARSE.warn(
                "The reading cannot tell the error of the " + name() + " from none, and a gap of "
                        + design.say(dial.gapNow()) + " may be left. Leave the setting, and read "
                        + finer(dial.readings().get(0)),
                field));
    }

    private String finer(DialReading best) {
        if (best.coarsest() == null) {
            return "it more finely. The glue bridges no gap at all.";
        }
        return best.by() == ReadBy.GAP
                ? "a gap to " + plain(best.coarsest()) + " " + design.unit().symbol() + " or finer."
                : "it to " + plain(best.coarsest()) + unit() + " or finer.";
    }
}
