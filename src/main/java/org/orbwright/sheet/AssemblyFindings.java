package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.assembly.AssemblyPlan;
import org.orbwright.assembly.AssemblyPlan.SolidStage;
import org.orbwright.assembly.AssemblyPlan.SolidWork;
import org.orbwright.assembly.BlankGluing;
import org.orbwright.assembly.Glue;
import org.orbwright.assembly.GlueWork;
import org.orbwright.assembly.PanelGluing;
import org.orbwright.assembly.PanelGluing.PanelStage;
import org.orbwright.assembly.PanelGluing.PanelWork;
import org.orbwright.notice.Article;
import org.orbwright.quantity.Rounding;

/** What the order of gluing gets wrong or nearly wrong: where it does not fit into the open time. */
final class AssemblyFindings {
    private static final String OPEN_TIME = "/assembly/glue/openTime";
    private static final int SHOWN_DECIMALS = 2;
    private static final double SHOWN = 100;
    /** Whole hundredths of a minute are those but for their last bits. */
    private static final double EXACT = 1e-7;

    private final Glue glue;
    /** The shortest open time into which all stages fit, in minutes. */
    private final double needed;

    private final List<Finding> findings = new ArrayList<>();

    private AssemblyFindings(AssemblyPlan plan) {
        this.glue = plan.glue();
        this.needed = largestStep(plan) / glue.seamsPerMinute();
    }

    /** Most seams that join at once; all else can be shared out over more stages. */
    private static int largestStep(AssemblyPlan plan) {
        int largest = 1;
        for (GlueWork work : works(plan)) {
            largest = work.fits() ? largest : Math.max(largest, work.seams());
        }
        return largest;
    }

    private static List<GlueWork> works(AssemblyPlan plan) {
        List<GlueWork> works = new ArrayList<>();
        plan.blankGluings().forEach(blank -> works.addAll(blank.stages()));
        plan.panelGluings().forEach(panel -> panel.stages().forEach(stage -> works.add(stage.glue())));
        plan.stages().forEach(stage -> works.add(stage.glue()));
        return works;
    }

    static List<Finding> of(AssemblyPlan plan) {
        AssemblyFindings finder = new AssemblyFindings(plan);
        for (BlankGluing blank : plan.blankGluings()) {
            finder.judge("a blank for the " + Words.half(blank.places()) + blank.face() + " segments", blank.stages());
        }
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
        List<GlueWork> onto = works.getOrDefault(SolidWork.ONTO_FIRST_CAP, List.of());
        if (!onto.isEmpty() && onto.stream().allMatch(GlueWork::fits)) {
            finder.oneByOne(plan.caps().loop().size());
        }
        return finder.findings;
    }

    private static String name(PanelWork work, String face) {
        return switch (work) {
            case WHOLE -> Article.with(face) + " panel";
            case FIRST_HALF -> "the first half of " + Article.with(face) + " panel";
            case SECOND_HALF -> "the second half of " + Article.with(face) + " panel";
            case STRAIGHT_JOINT -> "the straight joint of " + Article.with(face) + " panel";
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
            double time = glue.time(largest);
            findings.add(FindingCode.OPEN_TIME_SHORT.warn(
                    "A stage of " + work + " takes " + atLeast(time) + " for " + seams(largest)
                            + (largest == 1 ? "" : " that close at once") + ", longer than the glue's open time of "
                            + atMost(glue.openTime())
                            + ". Get more hands, or a glue that stays open longer."
                            + " Every stage fits into an open time of " + atLeast(needed) + ".",
                    OPEN_TIME));
        } else if (stages.size() > 1) {
            findings.add(FindingCode.STAGES_ADDED.note(
                    stages.size() + " stages are needed for " + work + ". The open time of "
                            + atMost(glue.openTime()) + " is enough for " + seams(glue.mostSeams())
                            + ". Let the glue of each stage grow hard before the next.",
                    OPEN_TIME));
        }
    }

    private void oneByOne(int loop) {
        findings.add(FindingCode.STAGES_ADDED.note(
                "Closing two caps would take " + atLeast(glue.time(loop)) + " for " + seams(loop)
                        + ", longer than the open time of " + atMost(glue.openTime())
                        + ". So the second half is glued onto the first panel by panel. It cannot be trued before it"
                        + " closes. With a glue that stays open for that long it can.",
                OPEN_TIME));
    }

    private static String seams(int count) {
        return count == 0 ? "no seam" : count == 1 ? "one seam" : count + " seams";
    }

    /** Minutes, rounded up, so that what takes longer is said to take longer. */
    private static String atLeast(double minutes) {
        return Rounding.plain(Math.ceil(minutes * SHOWN - EXACT) / SHOWN, SHOWN_DECIMALS) + " min";
    }

    /** Minutes, rounded down. */
    private static String atMost(double minutes) {
        return Rounding.plain(Math.floor(minutes * SHOWN + EXACT) / SHOWN, SHOWN_DECIMALS) + " min";
    }
}
