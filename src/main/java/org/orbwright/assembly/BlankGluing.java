package org.orbwright.assembly;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.orbwright.design.Places;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;
import org.orbwright.segment.Yield.LaminationYield;

/** How the blanks of one lamination are glued up from strips. */
@Describe("How the blanks of one lamination are glued up from strips, before anything is crosscut. Every joint of two"
        + " neighbouring strips is as long as the blank and as high as the panel is thick.")
public record BlankGluing(
        @Describe(value = "The face kind.", example = "\"pentagon\"")
        String face,

        @Describe(
                value = "Which of the panel's segments the blanks are for: all, or every other one.",
                example = "\"ALL\"")
        Places places,

        @Describe(
                value = "Blanks for all copies; left out where the blank is too short for one segment.",
                example = "10",
                optional = true,
                max = 1e9)
        Integer blanks,

        @Describe(value = "Joints between the strips of one blank.", example = "4", max = 60)
        int joints,

        @Describe("The stages of one blank: more than one where its joints do not fit into the open time together.")
        List<GlueWork> stages,

        @Describe(
                value = "Area of the joints in all these blanks.",
                quantity = Quantity.AREA,
                example = "654080",
                optional = true)
        Double glueArea,

        @Describe(value = "Glue for all these blanks.", quantity = Quantity.GRAMS, example = "117.734", optional = true)
        Double glueMass) {

    /** Copies the list. */
    public BlankGluing {
        stages = List.copyOf(stages);
    }

    static BlankGluing of(LaminationYield lamination, Glue glue) {
        int joints = lamination.strips().size() - 1;
        double length = lamination.blankLength();
        double joint = length * lamination.blankThickness();
        List<GlueWork> stages = new ArrayList<>();
        if (joints > 0) {
            for (List<Integer> portion : Portions.of(Collections.nCopies(joints, 1), seam -> 1, glue.mostSeams())) {
                int count = portion.size();
                stages.add(GlueWork.of(glue, count, count * length, count * joint));
            }
        }
        Double area = lamination.blanks() == null ? null : Double.valueOf(lamination.blanks() * joints * joint);
        return new BlankGluing(
                lamination.face(),
                lamination.places(),
                lamination.blanks(),
                joints,
                stages,
                area,
                area == null ? null : Double.valueOf(glue.mass(area)));
    }
}
