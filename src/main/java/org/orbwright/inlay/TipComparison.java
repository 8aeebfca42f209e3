package org.orbwright.inlay;

import static org.orbwright.quantity.Quantity.ANGLE;
import static org.orbwright.quantity.Quantity.LENGTH;

import java.util.List;
import org.orbwright.design.BandSet;
import org.orbwright.design.Places;
import org.orbwright.quantity.Describe;

@Describe("How the tips of the segments hold at the saw, those that break most easily first.")
public record TipComparison(
        @Describe(
                value = "Distance from the tip, along the tip axis, at which they are compared.",
                quantity = LENGTH,
                example = "5")
        double distance,

        @Describe(
                value = "What the order rests on, and what it does not.",
                example = "\"The order rests on geometry alone: how long the grain is at the stated distance from the"
                        + " tip. How well each wood holds there is not known: the table of woods has no strength.\"")
        String basis,

        @Describe("The tips, the one with the shortest grain first.")
        List<TipRisk> tips,

        @Describe(
                value = "What helps at the saw, in plain words. None of it makes a cut safe.",
                example = TipComparison.HELP_EXAMPLE)
        List<String> help) {

    static final String HELP_EXAMPLE = "[\"Sawing tears out fibres at the face that is down, and at the edge where the"
            + " blade leaves. The set-ups of the crosscuts say for each cut where the tip lies.\",\"Free a segment"
            + " with its base against the gauge: the blade then enters at the thin tip. With the tip against the gauge"
            + " it leaves there.\",\"Face the gauge with scrap that the blade itself has cut. Lay a plate under the"
            + " wood whose slot is as wide as the kerf.\",\"A sharp blade for crosscuts tears out less. Feed slowly"
            + " where the blade leaves the wood.\",\"Bands parallel to the base and equal legs leave a choice: turn the"
            + " face with the cleaner tip outwards.\",\"Saw segments larger and cut them again where tips chip. recuts"
            + " in chips says by how much.\",\"None of this makes a cut safe. Hold small pieces in a jig, as the"
            + " cautions on crosscutting say.\"]";

    public TipComparison {
        tips = List.copyOf(tips);
        help = List.copyOf(help);
    }

    @Describe("How the grain runs at a tip: ACROSS the tip axis, ALONG it, or SLANTED in between.")
    public enum GrainRun {
        ACROSS,
        SLANTED,
        ALONG
    }

    @Describe("The tip of one kind of segment, of one set. The grain of a strip runs along its band.")
    public record TipRisk(
            @Describe(
                    value = "Place in the order, from 1; tips whose grain is equally long share a place.",
                    example = "1",
                    min = 1,
                    max = 1000)
            int rank,

            @Describe(value = "The face kind.", example = "\"triangle\"")
            String face,

            @Describe(value = "The kind of segment, by letter within the face kind.", example = "\"A\"")
            String segment,

            @Describe(value = "Whether it is the mirror image of the kind's outline.", example = "false")
            boolean mirrored,

            @Describe(value = "Which of the panel's segments these are: all, or every other one.", example = "\"ALL\"")
            Places places,

            @Describe(value = "The set; UPRIGHT where sawing gives one set.", example = "\"UPRIGHT\"")
            BandSet set,

            @Describe(value = "Angle between the two legs.", quantity = ANGLE, example = "120", max = 180)
            double tipAngle,

            @Describe(
                    value = "The bands with wood between the tip and the stated distance, by number, the one at the tip"
                            + " first.",
                    example = "[4]")
            List<Integer> bands,

            @Describe(value = "Their woods, in the same order.", example = "[\"white ash\"]")
            List<String> woods,

            @Describe(value = "Flat width of the band at the tip.", quantity = LENGTH, example = "8.3425")
            double bandWidth,

            @Describe(value = "How the grain runs there.", example = "\"ACROSS\"")
            GrainRun grain,

            @Describe(value = "Angle between the grain and the tip axis.", quantity = ANGLE, example = "90", max = 90)
            double grainAngle,

            @Describe(
                    value = "Width of the tip at the stated distance, square to the tip axis.",
                    quantity = LENGTH,
                    example = "17.3205")
            double width,

            @Describe(
                    value = "Length of the grain that crosses the tip axis at the stated distance, from one side of the"
                            + " segment to the other. Wood breaks along the grain: the shorter it is, the less holds"
                            + " the tip. Below twice the stated distance a tip is taken to be at risk, below the"
                            + " distance itself strongly so (common practice, no source).",
                    quantity = LENGTH,
                    example = "17.3205")
            double grainLength) {

        public TipRisk {
            bands = List.copyOf(bands);
            woods = List.copyOf(woods);
        }

        TipRisk ranked(int place) {
            return new TipRisk(
                    place,
                    face,
                    segment,
                    mirrored,
                    places,
                    set,
                    tipAngle,
                    bands,
                    woods,
                    bandWidth,
                    grain,
                    grainAngle,
                    width,
                    grainLength);
        }
    }
}
