package org.orbwright.assembly;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.assembly.AssemblyPlan.GluedSeam;
import org.orbwright.assembly.AssemblyPlan.SolidStage;
import org.orbwright.assembly.AssemblyPlan.SolidWork;
import org.orbwright.assembly.CapGrowth.Step;
import org.orbwright.design.Design;

/**
 * Glues panels to two caps and the caps to the solid. All seams between two caps close at once; where they do not fit
 * into the open time, and the second cap's panels added to the first one by one close fewer seams at once, that order
 * is taken instead.
 */
final class SolidStages {
    private final Neighbourhood neighbourhood;
    private final Glue glue;
    private final Caps caps;
    private final SeamSizes sizes;
    private final List<SolidStage> stages = new ArrayList<>();

    private SolidStages(Design design, Glue glue, Caps caps, Neighbourhood neighbourhood) {
        this.neighbourhood = neighbourhood;
        this.glue = glue;
        this.caps = caps;
        this.sizes = new SeamSizes(design);
    }

    static List<SolidStage> of(Design design, Glue glue, Caps caps, Neighbourhood neighbourhood) {
        SolidStages builder = new SolidStages(design, glue, caps, neighbourhood);
        builder.build();
        return builder.stages;
    }

    private void build() {
        int count = caps.first().size();
        boolean[] there = new boolean[count];
        List<Integer> loop = caps.loop();
        stages(SolidWork.FIRST_CAP, new CapGrowth(neighbourhood, there).add(caps.first()::get, caps.heights()::of));
        for (int panel = 0; panel < count; panel++) {
            there[panel] = caps.first().get(panel);
        }
        List<Step> onto = new CapGrowth(neighbourhood, there).add(this::inSecond, caps.heights()::of);
        List<Step> second = new CapGrowth(neighbourhood, new boolean[count])
                .add(this::inSecond, panel -> -caps.heights().of(panel));
        if (loop.size() > glue.mostSeams() && largest(onto) < Math.max(loop.size(), largest(second))) {
            stages(SolidWork.ONTO_FIRST_CAP, onto);
            return;
        }
        stages(SolidWork.SECOND_CAP, second);
        stage(SolidWork.CLOSING, List.of(), loop.stream().map(this::closing).toList());
    }

    private static int largest(List<Step> steps) {
        return steps.stream().mapToInt(step -> step.seams().size()).max().orElse(0);
    }

    private boolean inSecond(int panel) {
        return !caps.first().get(panel);
    }

    private void stages(SolidWork work, List<Step> steps) {
        for (List<Step> portion : Portions.of(steps, step -> step.seams().size(), glue.mostSeams())) {
            List<Integer> panels = portion.stream().map(Step::panel).toList();
            List<GluedSeam> seams = new ArrayList<>();
            portion.forEach(step -> step.seams().forEach(seam -> seams.add(sizes.of(seam, step.panel()))));
            stage(work, panels, seams);
        }
    }

    /** The second cap is set onto the first. */
    private GluedSeam closing(int seam) {
        var edge = caps.solid().edges().get(seam);
        return sizes.of(seam, inSecond(edge.face()) ? edge.face() : edge.neighbour());
    }

    private void stage(SolidWork work, List<Integer> panels, List<GluedSeam> seams) {
        double length = seams.stream().mapToDouble(GluedSeam::length).sum();
        double area = seams.stream().mapToDouble(GluedSeam::area).sum();
        stages.add(
                new SolidStage(stages.size() + 1, work, panels, seams, GlueWork.of(glue, seams.size(), length, area)));
    }
}
