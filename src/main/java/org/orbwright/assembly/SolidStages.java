package org.orbwright.assembly;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.assembly.AssemblyPlan.Cap;
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
    private final GluingOrder order;
    private final Glue glue;
    private final Caps caps;
    private final SeamSizes sizes;
    private final List<SolidStage> stages = new ArrayList<>();

    private SolidStages(Design design, Glue glue, Caps caps, GluingOrder order) {
        this.order = order;
        this.glue = glue;
        this.caps = caps;
        this.sizes = new SeamSizes(design);
    }

    static List<SolidStage> of(Design design, Glue glue, Caps caps, GluingOrder order) {
        SolidStages builder = new SolidStages(design, glue, caps, order);
        builder.build();
        return builder.stages;
    }

    private void build() {
        List<Integer> loop = caps.loop();
        stages(SolidWork.FIRST_CAP, order.first());
        if (order.oneByOne(loop.size(), glue.mostSeams())) {
            stages(SolidWork.ONTO_FIRST_CAP, order.onto());
            return;
        }
        stages(SolidWork.SECOND_CAP, order.second());
        stage(SolidWork.CLOSING, List.of(), loop.stream().map(this::closing).toList());
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
        return sizes.of(seam, caps.panel(seam, Cap.SECOND));
    }

    private void stage(SolidWork work, List<Integer> panels, List<GluedSeam> seams) {
        double length = seams.stream().mapToDouble(GluedSeam::length).sum();
        double area = seams.stream().mapToDouble(GluedSeam::area).sum();
        stages.add(
                new SolidStage(stages.size() + 1, work, panels, seams, GlueWork.of(glue, seams.size(), length, area)));
    }
}
