package org.orbwright.assembly;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.orbwright.design.Places;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;
import org.orbwright.segment.Yield.LaminationYield;

@Describe("How the blanks of one lamination are glued up from strips, before anything is crosscut. Every joint of two"
        + " neighbouring strips is as long as the blank and as high as a layer is thick. Where a panel has several"
        + " layers, each is glued up edge to edge first, and then they are glued face to face.")
public record BlankGluing(
        @Describe(value = "The face kind.", example = "\"triangle\"")
        String face,

        @Describe(
                value = "Which of the panel's segments the blanks are for: all, or every other one.",
                example = "\"ALL\"")
        Places places,

        @Describe(
                value = "Blanks for all copies; left out where the blank is too short for one segment.",
                example = "8",
                optional = true,
                max = 1e9)
        Integer blanks,

        @Describe(value = "Layers of one blank.", example = "1", min = 1, max = 10)
        int layers,

        @Describe(value = "Joints between the strips of one layer.", example = "3", max = 60)
        int joints,

        @Describe("The stages of one layer: more than one where its joints do not fit into the open time together.")
        List<GlueWork> stages,

        @Describe("The stages in which the layers of one blank are glued face to face; none for a single layer.")
        List<GlueWork> layerStages,

        @Describe(
                value = "Area of the joints in all these blanks.",
                quantity = Quantity.AREA,
                example = "518400",
                optional = true)
        Double glueArea,

        @Describe(value = "Glue for all these blanks.", quantity = Quantity.GRAMS, example = "88.128", optional = true)
        Double glueMass) {

    public BlankGluing {
        stages = List.copyOf(stages);
        layerStages = List.copyOf(layerStages);
    }

    static BlankGluing of(LaminationYield lamination, int layers, Glue glue) {
        int joints = lamination.strips().size() - 1;
        double length = lamination.blankLength();
        double edge = length * lamination.blankThickness() / layers;
        double face = length * lamination.blankWidth();
        Double area = lamination.blanks() == null
                ? null
                : Double.valueOf(lamination.blanks() * (layers * joints * edge + (layers - 1) * face));
        return new BlankGluing(
                lamination.face(),
                lamination.places(),
                lamination.blanks(),
                layers,
                joints,
                stages(joints, length, edge, glue),
                stages(layers - 1, length, face, glue),
                area,
                area == null ? null : Double.valueOf(glue.mass(area)));
    }

    private static List<GlueWork> stages(int joints, double length, double area, Glue glue) {
        List<GlueWork> stages = new ArrayList<>();
        if (joints > 0) {
            for (List<Integer> portion : Portions.of(Collections.nCopies(joints, 1), seam -> 1, glue.mostSeams())) {
                int count = portion.size();
                stages.add(GlueWork.of(glue, count, count * length, count * area));
            }
        }
        return stages;
    }
}
