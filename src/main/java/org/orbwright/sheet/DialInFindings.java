package org.orbwright.sheet;

import static org.orbwright.sheet.Finding.Severity.WARN;

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
    /** A line through the trials whose slope is off by more than this share tells of another scale. */
    private static final double OTHER_SCALE = 0.3;

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
            return;
        }
        if (dial.trials().size() == 2) {
            add(
                    FindingCode.TRIALS_CONTRADICT,
                    "Trials 1 and 2 of the " + name() + " contradict each other. The later one counts." + scale());
            return;
        }
        String said = out.stream()
                .map(trial -> "Trial " + trial.trial() + " of the " + name() + " reads " + plain(trial.error()) + unit()
                        + " off, where the others foretell "
                        + plain(trial.foretold().least()) + " to "
                        + plain(trial.foretold().most()) + ".")
                .collect(Collectors.joining(" "));
        add(FindingCode.TRIALS_CONTRADICT, said + " It does not count: measure again." + scale());
    }

    /** What a line through all trials says of the scale. */
    private String scale() {
        Double line = dial.perUnitOfTrials();
        if (line == null || Math.abs(line - dial.perUnit()) <= OTHER_SCALE * Math.abs(dial.perUnit())) {
            return "";
        }
        String back =
                line * dial.perUnit() < 0 ? " Perhaps the scale runs the other way." : " Perhaps it has other steps.";
        return back + " A line through the trials gives " + plain(line) + unit()
                + " for a step: if that is so, state it in scale.perUnit.";
    }

    private void coarse() {
        if (dial.advice() != Advice.MEASURE_FINER) {
            return;
        }
        DialReading best = dial.readings().get(0);
        add(
                FindingCode.READING_TOO_COARSE,
                "The reading cannot tell the error of the " + name() + " from none, and a gap of "
                        + design.say(dial.gapNow()) + " may be left. Leave the setting, and read "
                        + (best.by() == ReadBy.GAP ? "a gap to " : "it to ")
                        + (best.by() == ReadBy.GAP
                                ? plain(best.coarsest()) + " " + design.unit().symbol()
                                : plain(best.coarsest()) + unit())
                        + " or finer.");
    }

    private void add(FindingCode code, String message) {
        findings.add(new Finding(code, WARN, message, field));
    }
}
