package org.orbwright.assembly;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("How segments are glued to the panels of one face kind; its mirror images are glued in the same stages.")
public record PanelGluing(
        @Describe(value = "The face kind.", example = "\"triangle\"")
        String face,

        @Describe(value = "Panels of this kind for one sphere.", example = "20", max = 200)
        int perSphere,

        @Describe(
                value = "Whether a panel is made in two halves, whose straight joint is trued before it is glued. Only"
                        + " a panel with an even number of segments has one, running straight through the tips. Truing"
                        + " takes out the sum of the errors of the tip angles, but it removes wood: the panel is"
                        + " smaller across that joint by what is taken from both halves.",
                example = "false")
        boolean inHalves,

        @Describe("The joints between the segments, counter-clockwise.")
        List<PanelJoint> joints,

        @Describe("The stages of one panel; the glue of each has to be hard before the next.")
        List<PanelStage> stages) {

    public PanelGluing {
        joints = List.copyOf(joints);
        stages = List.copyOf(stages);
    }

    /** What is glued in a stage of a panel. */
    public enum PanelWork {
        /** All segments. */
        WHOLE,
        /** The segments of the first half. */
        FIRST_HALF,
        /** The segments of the second half. */
        SECOND_HALF,
        /** The two halves. */
        STRAIGHT_JOINT
    }

    @Describe("One joint between two segments of a panel.")
    public record PanelJoint(
            @Describe(
                    value = "Number of the joint: that of the segment after it, counter-clockwise seen from outside.",
                    quantity = Quantity.NUMBER,
                    example = "1",
                    max = 12)
            int joint,

            @Describe(
                    value = "Number of the segment before it, by its place in the catalogue's list of the face.",
                    quantity = Quantity.NUMBER,
                    example = "3",
                    max = 12)
            int segment,

            @Describe(
                    value = "Length of the joint: the segments' leg, from the panel's centre to its corner.",
                    quantity = Quantity.LENGTH,
                    example = "78.685")
            double length,

            @Describe(
                    value = "Area of the joint: the leg by the panel's thickness, as panels are bevelled later.",
                    quantity = Quantity.AREA,
                    example = "2360.55")
            double area) {}

    @Describe("One stage of a panel.")
    public record PanelStage(
            @Describe(value = "Number of the stage, from 1.", example = "1", min = 1, max = 20)
            int stage,

            @Describe(
                    value = "What is glued: the WHOLE panel in one go, its FIRST_HALF, its SECOND_HALF, or the halves"
                            + " along their STRAIGHT_JOINT once it is trued. The same word again is the next part of"
                            + " a work that does not fit into the open time.",
                    example = "\"WHOLE\"")
            PanelWork work,

            @Describe(value = "The joints in their order.", quantity = Quantity.NUMBER, example = "[2,3,1]")
            List<Integer> joints,

            @Describe("Glue and time for one panel.") GlueWork glue) {

        public PanelStage {
            joints = List.copyOf(joints);
        }
    }
}
