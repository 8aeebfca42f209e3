package org.orbwright.assembly;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** The outer faces of all panels laid flat beside each other, joined along hinges, so that none overlaps another. */
@Describe("The outer faces of all panels laid flat at true size, seen from outside, joined along hinges of tape so that"
        + " none overlaps another. The tape is on the outer faces and the panels fold away from it: turn the taped"
        + " sheet over, then fold up. With a land, hinged panels lie a gap apart that the tape bridges. Coordinates"
        + " run to the right and upwards from the layout's lower left.")
public record Net(
        @Describe(value = "Width of the layout.", quantity = Quantity.LENGTH, example = "556.2703")
        double width,

        @Describe(value = "Height of the layout.", quantity = Quantity.LENGTH, example = "723.1515")
        double height,

        @Describe(
                value = "Number of the panel that the others hang on.",
                quantity = Quantity.NUMBER,
                example = "1",
                max = 200)
        int root,

        @Describe("The panels, in the order of their numbers.")
        List<NetPanel> panels,

        @Describe("The hinges, from the root outwards.") List<Hinge> hinges) {

    /** Copies the lists. */
    public Net {
        panels = List.copyOf(panels);
        hinges = List.copyOf(hinges);
    }

    /** One panel of the layout. */
    @Describe("One panel of the flat layout.")
    public record NetPanel(
            @Describe(value = "Number of the panel.", quantity = Quantity.NUMBER, example = "1", max = 200)
            int panel,

            @Describe("The corners of its outer face, counter-clockwise, in the order of the catalogue.")
            List<NetCorner> corners,

            @Describe("Its edges; each runs from the corner of the same place in the list to the next.")
            List<NetEdge> edges) {

        /** Copies the lists. */
        public NetPanel {
            corners = List.copyOf(corners);
            edges = List.copyOf(edges);
        }
    }

    /** One corner of a panel in the layout. */
    @Describe("One corner of a panel in the flat layout.")
    public record NetCorner(
            @Describe(value = "From the left of the layout.", quantity = Quantity.LENGTH, example = "209.9919")
            double x,

            @Describe(value = "From the bottom of the layout.", quantity = Quantity.LENGTH, example = "362.6462")
            double y) {}

    /** One edge of a panel in the layout. */
    @Describe("One edge of a panel in the flat layout.")
    public record NetEdge(
            @Describe(
                    value = "Number of the seam that the edge becomes; a free edge's partner has the same.",
                    quantity = Quantity.NUMBER,
                    example = "1",
                    max = 400)
            int seam,

            @Describe(
                    value = "Number of the panel on the other side of that seam.",
                    quantity = Quantity.NUMBER,
                    example = "2",
                    max = 200)
            int partner,

            @Describe(
                    value = "Whether the partner hangs on this edge in the layout; a free edge is glued to its partner"
                            + " when the layout has been turned over and is folded up.",
                    example = "true")
            boolean hinge) {}

    /** One hinge of the layout. */
    @Describe("One hinge of the flat layout.")
    public record Hinge(
            @Describe(value = "Number of the seam.", quantity = Quantity.NUMBER, example = "1", max = 400)
            int seam,

            @Describe(
                    value = "Number of the panel nearer to the root.",
                    quantity = Quantity.NUMBER,
                    example = "1",
                    max = 200)
            int panel,

            @Describe(
                    value = "Number of the panel that hangs on it.",
                    quantity = Quantity.NUMBER,
                    example = "2",
                    max = 200)
            int neighbour,

            @Describe(
                    value = "How far the neighbour is folded away from the tape on the outer faces: 180 degrees less"
                            + " the dihedral angle.",
                    quantity = Quantity.ANGLE,
                    example = "41.8103",
                    max = 180)
            double fold,

            @Describe(
                    value = "How far apart the rims of the two panels lie, side by side: as far as the outer rims stand"
                            + " apart in the closed solid, twice the land times the sine of half the fold. Tape that"
                            + " lies flat across the gap is then as long as it has to be; 0 without a land.",
                    quantity = Quantity.LENGTH,
                    example = "2.1409")
            double gap) {}
}
