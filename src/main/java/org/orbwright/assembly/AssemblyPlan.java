package org.orbwright.assembly;

import static org.orbwright.quantity.Quantity.AREA;
import static org.orbwright.quantity.Quantity.GRAMS;
import static org.orbwright.quantity.Quantity.LENGTH;
import static org.orbwright.quantity.Quantity.NUMBER;

import java.util.List;
import org.orbwright.design.SphereSet;
import org.orbwright.quantity.Describe;

@Describe("The order of gluing: strips to blanks, segments to panels, panels to two caps, and the caps to the solid."
        + " The plan also has the flat layout of the panels. Panels and seams have the"
        + " numbers of the solid's faces and edges in the catalogue, in pictures and inlays too.")
public record AssemblyPlan(
        Glue glue,

        @Describe("The spheres to be made, those that are alike together.")
        List<AssembledSpheres> spheres,

        @Describe("Before the first cut: strips to blanks, for each lamination and all copies. Empty until kerf and"
                + " length of the blanks are stated.")
        List<BlankGluing> blankGluings,

        @Describe("The first part of the work: segments to panels, for each face kind.")
        List<PanelGluing> panelGluings,

        @Describe("The panels of one sphere with their neighbours.")
        List<AssembledPanel> panels,

        CapSeam caps,

        @Describe("The second part of the work: the stages in which the panels of one sphere are glued to the solid."
                + " Every seam is glued in exactly one of them; the glue of each has to be hard before the next.")
        List<SolidStage> stages,

        GlueTotals totals,

        @Describe(
                "The panels laid flat as they are taped together: a net for each cap, or one for the whole solid where"
                        + " the section asks for it.")
        List<Net> nets) {

    public AssemblyPlan {
        spheres = List.copyOf(spheres);
        blankGluings = List.copyOf(blankGluings);
        panelGluings = List.copyOf(panelGluings);
        panels = List.copyOf(panels);
        stages = List.copyOf(stages);
        nets = List.copyOf(nets);
    }

    @Describe("Spheres that are alike.")
    public record AssembledSpheres(
            @Describe(value = "The segments that they are made from.", example = "\"MIXED\"")
            SphereSet set,

            @Describe(value = "How many spheres.", example = "1")
            int spheres,

            @Describe(
                    value = "Numbers of the panels that are made from inverted segments.",
                    quantity = NUMBER,
                    example = "[2,3,4,6,8,9,12,13,16,18]",
                    max = 200)
            List<Integer> invertedPanels) {

        public AssembledSpheres {
            invertedPanels = List.copyOf(invertedPanels);
        }
    }

    /** One of the two halves of the solid. */
    public enum Cap {
        /** The cap around the axis' start. */
        FIRST,
        /** The cap opposite. */
        SECOND
    }

    @Describe("One panel of the solid.")
    public record AssembledPanel(
            @Describe(value = "Number of the panel.", quantity = NUMBER, example = "1", max = 200)
            int panel,

            @Describe(value = "Its face kind.", example = "\"triangle\"")
            String face,

            @Describe(value = "Whether it is the mirror image of its kind's first panel.", example = "false")
            boolean mirrored,

            @Describe(value = "The cap that it is in.", example = "\"FIRST\"")
            Cap cap,

            @Describe("Its neighbours, counter-clockwise seen from outside: the first at its first segment, and so on.")
            List<PanelNeighbour> neighbours) {

        public AssembledPanel {
            neighbours = List.copyOf(neighbours);
        }
    }

    @Describe("One neighbour of a panel.")
    public record PanelNeighbour(
            @Describe(value = "Number of the neighbour.", quantity = NUMBER, example = "2", max = 200)
            int panel,

            @Describe(value = "Number of the seam between the two.", quantity = NUMBER, example = "1", max = 400)
            int seam) {}

    /** What the axis of the caps runs through. */
    public enum AxisThrough {
        /** The middle of a face. */
        FACE,
        /** A corner. */
        CORNER,
        /** The middle of an edge. */
        EDGE
    }

    @Describe("How the solid is divided into two caps with equal numbers of panels. The caps are pushed together along"
            + " an axis: every seam between them leans so that it closes. Together these seams are one closed loop.")
    public record CapSeam(
            @Describe(value = "What the axis runs through at the middle of the first cap.", example = "\"FACE\"")
            AxisThrough axisThrough,

            @Describe(
                    value = "Number of that face, corner or edge in the catalogue.",
                    quantity = NUMBER,
                    example = "1",
                    max = 400)
            int axisNumber,

            @Describe(
                    value = "Whether the seam between the caps lies in one plane, so that both can be trued on a flat"
                            + " disc, which removes wood: the solid is lower along the axis by what is taken from both."
                            + " Otherwise the seam is a zigzag.",
                    example = "false")
            boolean flat,

            @Describe(
                    value = "The seams between the caps, in order around the loop with the first cap on the left.",
                    quantity = NUMBER,
                    example = "[5,8,27,10,30,19]")
            List<Integer> loop) {

        public CapSeam {
            loop = List.copyOf(loop);
        }
    }

    /** What is glued in a stage of the solid. */
    public enum SolidWork {
        /** Panels of the first cap. */
        FIRST_CAP,
        /** Panels of the second cap. */
        SECOND_CAP,
        /** The two caps. */
        CLOSING,
        /** The remaining panels one by one onto the first cap. */
        ONTO_FIRST_CAP
    }

    @Describe("One stage of the solid.")
    public record SolidStage(
            @Describe(value = "Number of the stage, from 1.", example = "1", min = 1, max = 400)
            int stage,

            @Describe(
                    value = "What is glued: panels to the FIRST_CAP or the SECOND_CAP, or the CLOSING seam between"
                            + " them. ONTO_FIRST_CAP: the remaining panels, one by one. It comes where the closing"
                            + " seam does not fit into the open time and single panels close fewer seams at once. The"
                            + " same word again is the next part of a work that does not fit into the open time.",
                    example = "\"FIRST_CAP\"")
            SolidWork work,

            @Describe(
                    value = "The panels that are added, in their order; none in the closing stage.",
                    quantity = NUMBER,
                    example = "[1,2,4,8,3,5,6,7,17]")
            List<Integer> panels,

            @Describe("The seams that are glued, in their order.")
            List<GluedSeam> seams,

            @Describe("Glue and time for the stage.") GlueWork glue) {

        public SolidStage {
            panels = List.copyOf(panels);
            seams = List.copyOf(seams);
        }
    }

    @Describe("One seam between two panels.")
    public record GluedSeam(
            @Describe(value = "Number of the seam.", quantity = NUMBER, example = "1", max = 400)
            int seam,

            @Describe(value = "Number of the panel that is added.", quantity = NUMBER, example = "2", max = 200)
            int panel,

            @Describe(value = "Number of the panel that is there already.", quantity = NUMBER, example = "1", max = 200)
            int neighbour,

            @Describe(
                    value = "Length of the seam, at the joint distance where it is longest.",
                    quantity = LENGTH,
                    example = "136.2864")
            double length,

            @Describe(
                    value = "Depth of the seam along the bevel, where both panels have wood: (thickness - land) /"
                            + " sin(bevel), the smaller one of the two.",
                    quantity = LENGTH,
                    example = "28.9026")
            double depth,

            @Describe(
                    value = "Area of the seam. It grows shorter towards the hollow, as all seams point to the solid's"
                            + " centre.",
                    quantity = AREA,
                    example = "3422.75")
            double area) {}

    @Describe("All the glue.")
    public record GlueTotals(
            @Describe(value = "Joints inside the panels of one sphere.", example = "60", max = 1000)
            int joints,

            @Describe(value = "Seams of one sphere.", example = "30", max = 400)
            int seams,

            @Describe(
                    value = "Length of all joints and seams of one sphere, without the joints in its blanks.",
                    quantity = LENGTH,
                    example = "8809.6923")
            double glueLength,

            @Describe(
                    value = "Area of all joints and seams of one sphere, without the joints in its blanks.",
                    quantity = AREA,
                    example = "244315.485")
            double glueArea,

            @Describe(value = "Glue for one sphere, from segments to the solid.", quantity = GRAMS, example = "41.534")
            double glueMass,

            @Describe(
                    value = "Area of the joints between the strips of all blanks, for all copies; left out where a"
                            + " blank is too short for one segment.",
                    quantity = AREA,
                    example = "518400",
                    optional = true)
            Double blankArea,

            @Describe(
                    value = "Glue for the strips of all blanks, for all copies.",
                    quantity = GRAMS,
                    example = "88.128",
                    optional = true)
            Double blankMass,

            @Describe(
                    value = "All the glue for all copies: that of the blanks, where it is known, and that of the"
                            + " spheres.",
                    quantity = GRAMS,
                    example = "129.662")
            double glueMassOfCopies) {}
}
