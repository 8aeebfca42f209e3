package org.orbwright.jig;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("How the saw is set up for every cut of a design, and how each setting is proved in scrap. It says what fits,"
        + " not what is safe.")
public record JigPlan(
        @Describe(
                value = "Distance between the centres of the sine bar's rolls that the stacks are for. What a design in"
                        + " mm leaves out is 100 mm, in a design in inches 5 in.",
                quantity = Quantity.LENGTH,
                example = "100")
        double sineBar,

        @Describe(
                value = "Length over which rises, gaps and chords are measured. What a design in mm leaves out is 250"
                        + " mm, in a design in inches 10 in.",
                quantity = Quantity.LENGTH,
                example = "300")
        double run,

        @Describe(
                value = "Error of a stack of gauge blocks that the settings say the effect of: 0.01 mm.",
                quantity = Quantity.LENGTH,
                example = "0.01")
        double stackError,

        @Describe(
                value = "Error of a setting that the trial cuts show the effect of.",
                quantity = Quantity.ANGLE,
                example = "0.1",
                max = 90)
        double trialError,

        @Describe("The set-ups of each face kind.") List<JigFace> faces) {

    public JigPlan {
        faces = List.copyOf(faces);
    }

    @Describe("A face of the wood: OUTER is the one that is turned to the sphere, INNER the one towards the hollow.")
    public enum WoodFace {
        OUTER,
        INNER
    }

    @Describe("The set-ups of one face kind.")
    public record JigFace(
            @Describe(value = "The face kind.", example = "\"triangle\"")
            String face,

            @Describe(value = "Segments in one panel.", example = "3", max = 12)
            int sides,

            @Describe("The crosscuts of each kind of segment.")
            List<JigSegment> segments,

            ClosingTest closing,

            BevelCut bevel) {

        public JigFace {
            segments = List.copyOf(segments);
        }
    }

    @Describe("The crosscuts of one kind of segment, seen from outside with its base down; a mirrored segment has left"
            + " and right changed. The right leg is cut with the wood turned over, so the gauge stays on its side of"
            + " square. Where both legs are alike, one setting serves them. With tilted bands these are the cuts on"
            + " the stick, which gives one segment. Its first leg is sawn off the stick's end. This leaves a point on"
            + " the edge that carries the base. That point goes against the stop for the second leg.")
    public record JigSegment(
            @Describe(value = "The kind of segment, by letter within the face kind.", example = "\"A\"")
            String segment,

            @Describe(
                    value = "Distance from the stop to the blade, along the edge that carries the base, with the wood's"
                            + " pointed end against the stop: the base. The pointed end is the one that the cut before"
                            + " left, its point on the edge that carries the base. The stop sits on the gauge or the"
                            + " carrier and moves with the wood.",
                    quantity = Quantity.LENGTH,
                    example = "136.2864")
            double stopDistance,

            TipAngle tip,

            LegCut left,
            LegCut right,

            @Describe("Where the tip lies in each cut, for the right leg first and the left leg second, and for either"
                    + " edge at the gauge.")
            List<TipCut> tipCuts) {

        public JigSegment {
            tipCuts = List.copyOf(tipCuts);
        }
    }

    @Describe("The crosscut along one leg of a segment. Where a hold-down presses is advice on the wood alone: a clamp"
            + " or a toggle of the jig has to press there, never a hand, and hands stay well away from the blade.")
    public record LegCut(
            JigSetting mitre,

            @Describe(
                    value = "Which face of the wood is up for this cut. OUTER is the face that is turned to the sphere"
                            + " in this segment. With bands that run along the blank alternate segments are turned,"
                            + " and it is either face of the blank; with tilted bands it is the same face of every"
                            + " stick of a lamination, as the bands lean the other way on the other one.",
                    example = "\"OUTER\"")
            WoodFace faceUp,

            @Describe(
                    value = "Where a hold-down presses on the segment's centroid: from the stop, along the edge that"
                            + " carries the base.",
                    quantity = Quantity.LENGTH,
                    example = "68.1432")
            double holdDownFromStop,

            @Describe(
                    value = "The same, from the edge that carries the base, square to it.",
                    quantity = Quantity.LENGTH,
                    example = "13.1142")
            double holdDownFromBase) {}

    @Describe("The closing test: a whole panel of segments put together dry adds up the errors of all its sawn legs. If"
            + " the last joint stays open, the tip angles are too small: turn the mitres further from square. If the"
            + " last segment has no room, they are too large: turn them back towards square. In a panel with an even"
            + " number of segments, truing two halves takes out the sum of these errors, at the cost of some wood.")
    public record ClosingTest(
            @Describe(
                    value = "How many times the error of the mitre setting shows in the last joint: twice for each"
                            + " segment, once for each leg. An error of the tip angle shows once for each segment.",
                    example = "6",
                    max = 24)
            int timesError,

            @Describe(
                    value = "Angle by which the last joint stays open, or has no room, where every leg is off by the"
                            + " trial error the same way.",
                    quantity = Quantity.ANGLE,
                    example = "0.6",
                    max = 180)
            double gapAngle,

            @Describe(
                    value = "Gap of the last joint at the panel's farthest corner, with the tips together.",
                    quantity = Quantity.LENGTH,
                    example = "0.824")
            double gap) {}

    @Describe(
            "The bevel cut of a panel that lies flat on the table. The blade leans so that it comes out below the land"
                    + " and takes most from the inner face; the land alone is left upright for a fence above the blade."
                    + " It frees a wedge below the fence, for which there has to be room.")
    public record BevelCut(
            JigSetting tilt,

            @Describe(value = "Which face of the panel is down on the table.", example = "\"INNER\"")
            WoodFace faceDown,

            @Describe(
                    value = "Height of the highest tooth over the table, measured upright, at which the tilted blade"
                            + " just comes out below the land: the panel's thickness less the land. Lower leaves a web;"
                            + " higher reaches into whatever the land bears against.",
                    quantity = Quantity.LENGTH,
                    example = "27")
            double bladeHeight,

            @Describe(
                    value = "The same along the tilted blade, which is also the width of the seam.",
                    quantity = Quantity.LENGTH,
                    example = "28.9026")
            double seamWidth,

            @Describe(
                    value = "Upright part left for a fence: the land; 0 leaves only an edge that gives a fence no"
                            + " bearing.",
                    quantity = Quantity.LENGTH,
                    example = "3")
            double land,

            @Describe(
                    value = "From the panel's rim inwards to where the cut leaves the inner face. With the land"
                            + " against a fence above the blade it is also a distance along the table. It goes from"
                            + " the fence's face to where the blade's outer side comes out of the table. The outer"
                            + " side is away from the fence and saws the seam.",
                    quantity = Quantity.LENGTH,
                    example = "10.3131")
            double inset,

            @Describe(
                    value = "How far the tilted blade moves sideways over the panel's thickness: the inset without a"
                            + " land, and so the fence's distance from the blade in that setting.",
                    quantity = Quantity.LENGTH,
                    example = "11.459")
            double shiftOverThickness,

            @Describe(
                    value = "How far the fence is moved towards the blade from the setting without a land, to leave"
                            + " the land: its distance falls from shiftOverThickness to the inset.",
                    quantity = Quantity.LENGTH,
                    example = "1.1459")
            double fenceShift,

            @Describe(
                    value = "Where a hold-down presses on the middle of the panel, from the rim that is cut; a clamp or"
                            + " a carrier has to press there, never a hand.",
                    quantity = Quantity.LENGTH,
                    example = "39.3425")
            double holdDownFromRim,

            @Describe(
                    value = "The same cut with the panel upright. Left out where the tilt is at most 45 degrees: saws"
                            + " commonly tilt so far, and the flat cut can be made.",
                    optional = true)
            UprightCut upright) {}

    @Describe("The bevel cut of a panel that stands upright on the edge that is cut, clamped with its outer face to a"
            + " carrier. The blade leans away from the carrier and comes out of the table below the panel's edge.")
    public record UprightCut(
            JigSetting tilt,

            @Describe(value = "Which face of the panel is against the carrier.", example = "\"OUTER\"")
            WoodFace faceToCarrier,

            @Describe(
                    value = "From the carrier's face to where the blade comes out of the table, on the side of the"
                            + " blade that saws the seam: the land.",
                    quantity = Quantity.LENGTH,
                    example = "4")
            double carrierToBlade,

            @Describe(
                    value = "Height of the highest tooth over the table at which the blade just comes out of the inner"
                            + " face: the inset of the flat cut.",
                    quantity = Quantity.LENGTH,
                    example = "33.9411")
            double bladeHeight) {}
}
