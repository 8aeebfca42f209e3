package org.orbwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.orbwright.diagnosis.DialSetting;
import org.orbwright.document.PaperPart;
import org.orbwright.jig.JigPlan.JigFace;
import org.orbwright.jig.JigPlan.JigSegment;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.segment.Yield.LaminationYield;
import org.orbwright.sheet.Caution.Step;

/** A table to write trials of the saw into, as the section diagnosis of a document takes them. */
final class TrialSection {
    /** Names of the fields of a trial in a document. */
    static final List<String> FIELDS = List.of("set", "gap", "opensAt", "distance", "reading", "resolution");

    /** Lines to write on for an angle, which is found by trials. */
    private static final int ANGLE_TRIALS = 3;
    /** Lines for a length, which is read off. */
    private static final int LENGTH_TRIALS = 2;

    private final SetUp section;
    private final List<List<String>> rows = new ArrayList<>();

    private TrialSection(SetUp section) {
        this.section = section;
    }

    static Section trials(Answers answers) {
        SetUp section = answers.section("Trials of the saw");
        // A trial cut is a cut; where the sheet has its cards, their cautions stand there.
        if (!answers.prints(PaperPart.SEGMENTS)) {
            section.cautions(Step.SETTING_UP, Step.CROSSCUTTING);
        }
        if (!answers.prints(PaperPart.BEVELS)) {
            section.cautions(Step.SETTING_UP, Step.BEVELLING);
        }
        TrialSection trials = new TrialSection(section);
        for (JigFace face : answers.jig().faces()) {
            for (JigSegment segment : face.segments()) {
                String name = face.face() + " " + segment.segment();
                trials.angle(DialSetting.TIP_ANGLE, name, segment.tip().angle());
                trials.length(DialSetting.STOP, name, segment.stopDistance());
            }
            trials.angle(DialSetting.BEVEL, face.face(), face.bevel().tilt().angle());
        }
        trials.angle(DialSetting.BLADE_SQUARE, "", 0);
        if (answers.yields() != null) {
            for (LaminationYield lamination : answers.yields().laminations()) {
                trials.length(DialSetting.BLANK_WIDTH, lamination.face(), lamination.blankWidth());
            }
        }
        return trials.build();
    }

    private void angle(DialSetting setting, String of, double radians) {
        rows(setting, of, SetUp.degrees(radians) + "°", ANGLE_TRIALS);
    }

    private void length(DialSetting setting, String of, double millimetres) {
        rows(setting, of, section.say(millimetres), LENGTH_TRIALS);
    }

    private void rows(DialSetting setting, String of, String wanted, int trials) {
        for (int trial = 1; trial <= trials; trial++) {
            List<String> row = new ArrayList<>();
            row.add(trial == 1 ? (words(setting) + " " + of).strip() : "\"");
            row.add(trial == 1 ? wanted : "\"");
            FIELDS.forEach(field -> row.add(""));
            rows.add(row);
        }
    }

    /** In small letters: a setting that is called STOP is no reason to stop. */
    private static String words(DialSetting setting) {
        return setting.name().toLowerCase(Locale.ROOT);
    }

    private Section build() {
        List<String> headings = new ArrayList<>(List.of("Setting", "To be read"));
        headings.addAll(FIELDS);
        return section.text("Write a line for each trial cut. The columns are the fields of a trial in the document's"
                        + " section diagnosis, under dialIn. Post the document to the address diagnosis: it answers"
                        + " the next setting. In set stands what your scale showed. Write a gap or a reading, not"
                        + " both. In opensAt stands RIM or TIPS for a panel, INSIDE or OUTSIDE for a seam. The"
                        + " columns set and reading have the unit of what is to be read; gap and distance are in "
                        + section.unit() + ". The document has the names of settings in capitals.")
                .table(headings, rows)
                .build();
    }
}
