package org.orbwright.jig;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.jig.JigPlan.WoodFace;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("Where a segment's tip lies in one of its two cuts, and what backs it. It holds for a table saw whose blade"
        + " comes up through the table, with the gauge behind the wood: there fibres are torn out of the face that is"
        + " down and of the edge where the blade leaves. Between the two cuts the wood is turned over about its length,"
        + " so that its edges change places.")
public record TipCut(
        @Describe(
                value = "Which edge of the wood is against the gauge while the segment is freed: the one with its"
                        + " base, or the one with its tip.",
                example = "\"BASE\"")
        WoodEdge freedWith,

        @Describe(
                value = "The FIRST cut saws one leg; the SECOND one meets it at the tip and frees the segment.",
                example = "\"FIRST\"")
        CutOrder cut,

        @Describe(
                value = "The leg that it saws, seen from outside with the base down. The right leg first lets the"
                        + " second cut have the outer face up.",
                example = "\"RIGHT\"")
        CutSide leg,

        @Describe(value = "Which face of the wood is down, where the teeth leave.", example = "\"OUTER\"")
        WoodFace faceDown,

        @Describe(
                value = "On which side of the blade the segment's wood is, as its operator sees it.",
                example = "\"LEFT\"")
        CutSide segmentSide,

        @Describe(
                value = "Whether the blade ENTERS the wood at the tip's edge, or LEAVES it there and tears out.",
                example = "\"LEAVES\"")
        BladePassage bladeAtTip,

        @Describe(
                value = "Angle of the segment's wood at the tip once the cut is done: blunt after the first cut, the"
                        + " tip angle after the second.",
                quantity = Quantity.ANGLE,
                example = "150",
                max = 180)
        double cornerAngle,

        @Describe(
                value = "What backs the tip in this cut. It makes no cut safe.",
                example = "\"The blade leaves the wood where the tip will be, at a corner that is still blunt. A fence"
                        + " on the gauge that the blade itself has cut backs it.\"")
        String backing) {

    @Describe("An edge of the wood, named after what it carries.")
    public enum WoodEdge {
        /** The edge that carries the base. */
        BASE,
        /** The edge that carries the tip. */
        TIP
    }

    @Describe("The order of the two cuts of a segment.")
    public enum CutOrder {
        /** Saws the first leg. */
        FIRST,
        /** Saws the other leg and frees the segment. */
        SECOND
    }

    @Describe("A side.")
    public enum CutSide {
        /** The left one. */
        LEFT,
        /** The right one. */
        RIGHT
    }

    @Describe("What the blade does at the edge with the tip.")
    public enum BladePassage {
        /** The cut begins there. */
        ENTERS,
        /** The cut ends there. */
        LEAVES
    }

    /**
     * Both cuts, for either edge at the gauge. Turning the wood over changes its edges, so that the tip is at the gauge
     * in one cut and away from it in the other. The blade leaves the wood at the gauge.
     *
     * @param left angle between the tip axis and the left leg
     * @param right the same of the right leg
     */
    static List<TipCut> of(double left, double right) {
        List<TipCut> cuts = new ArrayList<>();
        for (WoodEdge edge : WoodEdge.values()) {
            for (CutOrder cut : CutOrder.values()) {
                boolean first = cut == CutOrder.FIRST;
                boolean leaves = (edge == WoodEdge.TIP) != first;
                cuts.add(new TipCut(
                        edge,
                        cut,
                        first ? CutSide.RIGHT : CutSide.LEFT,
                        first ? WoodFace.OUTER : WoodFace.INNER,
                        leaves ? CutSide.LEFT : CutSide.RIGHT,
                        leaves ? BladePassage.LEAVES : BladePassage.ENTERS,
                        first ? Math.PI / 2 + right : left + right,
                        backing(first, leaves)));
            }
        }
        return cuts;
    }

    /** "Tame Tearout on the Tablesaw", startwoodworking.com: fences and plates that the blade itself has cut. */
    private static String backing(boolean first, boolean leaves) {
        if (first) {
            return leaves
                    ? "The blade leaves the wood where the tip will be, at a corner that is still blunt. A fence on the"
                            + " gauge that the blade itself has cut backs it."
                    : "The blade enters the wood where the tip will be, at a corner that is still blunt. A plate whose"
                            + " slot is as wide as the kerf backs the face that is down.";
        }
        return leaves
                ? "The blade leaves the wood at the thin tip, and nothing but the fence backs it. The fence needs wood"
                        + " on both sides of the kerf, cut by the blade itself."
                : "The blade enters the wood at the thin tip and presses its fibres against the wood behind it. A plate"
                        + " whose slot is as wide as the kerf backs the face that is down.";
    }
}
