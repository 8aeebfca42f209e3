package org.orbwright.assembly;

import static org.orbwright.quantity.Quantity.ANGLE;
import static org.orbwright.quantity.Quantity.LENGTH;
import static org.orbwright.quantity.Quantity.NUMBER;

import java.util.List;
import org.orbwright.assembly.AssemblyPlan.Cap;
import org.orbwright.quantity.Describe;

/** The outer faces of panels laid flat beside each other, joined along hinges, so that none overlaps another. */
@Describe("The outer faces of the panels of a cap, or of the whole solid, laid flat at true size, seen from outside."
        + " They hang on hinges of tape, and none overlaps another. The tape is on the outer faces and the panels"
        + " fold away from it: turn the taped sheet over, then fold up. With a land, hinged panels lie a gap apart that"
        + " the tape bridges. Coordinates run to the right and upwards from the layout's lower left.")
public record Net(
        @Describe(
                value = "The cap whose panels they are; left out for the whole solid.",
                example = "\"FIRST\"",
                optional = true)
        Cap cap,

        @Describe(
                value = "Whether the stages glue these panels in the order of this net, perhaps a part of them at a"
                        + " time. Otherwise it shows where the panels belong, and serves for a trial without glue.",
                example = "true")
        boolean followsStages,

        @Describe(value = "Width of the layout.", quantity = LENGTH, example = "416.2757")
        double width,

        @Describe(value = "Height of the layout.", quantity = LENGTH, example = "360.5053")
        double height,

        @Describe("The panels, in the order in which they are glued. The others hang on the first.")
        List<NetPanel> panels,

        @Describe("The hinges: seams to tape. In the order of the gluing, each as its panel is added.")
        List<Hinge> hinges,

        @Describe("The seams that close when the net is folded up, in the order of the gluing.")
        List<NetSeam> folding,

        @Describe("The seams to the other cap, which close last, in order around the loop. Empty for the whole solid.")
        List<NetSeam> last) {

    public Net {
        panels = List.copyOf(panels);
        hinges = List.copyOf(hinges);
        folding = List.copyOf(folding);
        last = List.copyOf(last);
    }

    /** A panel of this layout by its place among the solid's faces. */
    public NetPanel panel(int place) {
        return panels.stream()
                .filter(panel -> panel.panel() == place)
                .findFirst()
                .orElseThrow();
    }

    @Describe("One panel of the flat layout.")
    public record NetPanel(
            @Describe(value = "Number of the panel.", quantity = NUMBER, example = "1", max = 200)
            int panel,

            @Describe("The corners of its outer face, counter-clockwise, in the order of the catalogue.")
            List<NetCorner> corners,

            @Describe("Its edges; each runs from the corner of the same place in the list to the next.")
            List<NetEdge> edges) {

        public NetPanel {
            corners = List.copyOf(corners);
            edges = List.copyOf(edges);
        }
    }

    @Describe("One corner of a panel in the flat layout.")
    public record NetCorner(
            @Describe(value = "From the left of the layout.", quantity = LENGTH, example = "139.9946")
            double x,

            @Describe(value = "From the bottom of the layout.", quantity = LENGTH, example = "121.2389")
            double y) {}

    /** How an edge of a panel in the layout is closed. */
    public enum Closing {
        /** A hinge: it is taped. */
        TAPED,
        /** It closes when the net is folded up. */
        FOLDED,
        /** It closes last, with the other cap. */
        LAST
    }

    @Describe("One edge of a panel in the flat layout.")
    public record NetEdge(
            @Describe(
                    value = "Number of the seam that the edge becomes; its partner's edge has the same.",
                    quantity = NUMBER,
                    example = "1",
                    max = 400)
            int seam,

            @Describe(
                    value = "Number of the panel on the other side of that seam.",
                    quantity = NUMBER,
                    example = "2",
                    max = 200)
            int partner,

            @Describe(
                    value = "How it is closed. TAPED: a hinge. FOLDED: when the net has been turned over and is folded"
                            + " up. LAST: with the other cap.",
                    example = "\"TAPED\"")
            Closing closing) {}

    @Describe("One hinge of the flat layout.")
    public record Hinge(
            @Describe(value = "Number of the seam.", quantity = NUMBER, example = "1", max = 400)
            int seam,

            @Describe(value = "Number of the panel that is added.", quantity = NUMBER, example = "2", max = 200)
            int panel,

            @Describe(value = "Number of the panel that it hangs on.", quantity = NUMBER, example = "1", max = 200)
            int neighbour,

            @Describe(
                    value = "How far the panel is folded away from the tape on the outer faces: 180 degrees less the"
                            + " dihedral angle.",
                    quantity = ANGLE,
                    example = "41.8103",
                    max = 180)
            double fold,

            @Describe(
                    value = "How far apart the rims of the two panels lie, side by side: as far as the outer rims stand"
                            + " apart in the closed solid, twice the land times the sine of half the fold. Tape that"
                            + " lies flat across the gap is then as long as it has to be; 0 without a land.",
                    quantity = LENGTH,
                    example = "2.1409")
            double gap) {}

    @Describe("One seam that closes without tape.")
    public record NetSeam(
            @Describe(value = "Number of the seam.", quantity = NUMBER, example = "7", max = 400)
            int seam,

            @Describe(
                    value = "Number of the panel that is added; of two caps, the one in this cap.",
                    quantity = NUMBER,
                    example = "5",
                    max = 200)
            int panel,

            @Describe(value = "Number of the panel on the other side.", quantity = NUMBER, example = "3", max = 200)
            int neighbour) {}
}
