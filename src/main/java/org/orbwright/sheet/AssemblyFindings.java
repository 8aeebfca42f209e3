package org.orbwright.sheet;

import static org.orbwright.sheet.Finding.Severity.NOTE;
import static org.orbwright.sheet.Finding.Severity.WARN;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.assembly.AssemblyPlan;
import org.orbwright.assembly.AssemblyPlan.SolidStage;
import org.orbwright.assembly.AssemblyPlan.SolidWork;
import org.orbwright.assembly.Glue;
import org.orbwright.assembly.GlueWork;
import org.orbwright.assembly.PanelGluing;
import org.orbwright.assembly.PanelGluing.PanelStage;
import org.orbwright.assembly.PanelGluing.PanelWork;
import org.orbwright.quantity.Rounding;

/** What the order of gluing gets wrong or nearly wrong: where it does not fit into the open time. */
final class AssemblyFindings {
    private static final String OPEN_TIME = "/glue/openTime";
    private static final int SHOWN_DECIMALS = 2;

    private final Glue glue;
    private final List<Finding> findings = new ArrayList<>();

    private AssemblyFindings(Glue glue) {
        this.glue = glue;
    }

    static List<Finding> of(AssemblyPlan plan) {
        AssemblyFindings finder = new AssemblyFindings(plan.glue());
        for (PanelGluing gluing : plan.panelGluings()) {
            Map<PanelWork, List<GlueWork>> works = new LinkedHashMap<>();
            for (PanelStage stage : gluing.stages()) {
                works.computeIfAbsent(stage.work(), work -> new ArrayList<>()).add(stage.glue());
            }
            works.forEach((work, stages) -> finder.judge(name(work, gluing.face()), stages));
        }
        Map<SolidWork, List<GlueWork>> works = new LinkedHashMap<>();
        for (SolidStage stage : plan.stages()) {
            works.computeIfAbsent(stage.work(), work -> new ArrayList<>()).add(stage.glue());
        }
        works.forEach((work, stages) -> finder.judge(name(work), stages));
        if (works.containsKey(SolidWork.ONTO_FIRST_CAP)) {
            finder.oneByOne(plan.caps().loop().size());
        }
        return finder.findings;
    }

    private static String name(PanelWork work, String face) {
        return switch (work) {
            case WHOLE -> "a " + face + " panel";
            case FIRST_HALF -> "the first half of a " + face + " panel";
            case SECOND_HALF -> "the second half of a " + face + " panel";
            case STRAIGHT_JOINT -> "the straight joint of a " + face + " panel";
        };
    }

    private static String name(SolidWork work) {
        return switch (work) {
            case FIRST_CAP -> "the first cap";
            case SECOND_CAP -> "the second cap";
            case CLOSING -> "the closing of the two caps";
            case ONTO_FIRST_CAP -> "the remaining panels on the first cap";
        };
    }

    private void judge(String work, List<GlueWork> stages) {
        int largest = stages.stream().mapToInt(GlueWork::seams).max().orElse(0);
        if (largest > glue.mostSeams()) {
            double time = largest / glue.seamsPerMinute();
            findings.add(new Finding(
                    FindingCode.OPEN_TIME_SHORT,
                    WARN,
                    "A stage of " + work + " takes " + minutes(time) + " for " + seams(largest)
                            + (largest == 1 ? "" : " that close at once") + ", longer than the glue's open time of "
                            + minutes(glue.openTime())
                            + ". It takes a glue that stays open longer, or more hands.",
                    OPEN_TIME));
        }
        if (stages.size() > 1) {
            findings.add(new Finding(
                    FindingCode.STAGES_ADDED,
                    NOTE,
                    "For " + work + " " + stages.size() + " stages are needed: the open time of "
                            + minutes(glue.openTime()) + " is enough for " + seams(glue.mostSeams())
                            + ". Let the glue of each stage grow hard before the next.",
                    OPEN_TIME));
        }
    }

    private void oneByOne(int loop) {
        findings.add(new Finding(
                FindingCode.STAGES_ADDED,
                NOTE,
                "To close two caps would take " + minutes(loop / glue.seamsPerMinute()) + " for " + seams(loop)
                        + ", longer than the open time of " + minutes(glue.openTime())
                        + ". So the second half is glued onto the first panel by panel, and cannot be trued before it"
                        + " closes; with a glue that stays open longer it can.",
                OPEN_TIME));
    }

    private static String seams(int count) {
        return count == 0 ? "no seam" : count == 1 ? "one seam" : count + " seams";
    }

    private static String minutes(double minutes) {
        return Rounding.plain(minutes, SHOWN_DECIMALS) + " min";
    }
}
