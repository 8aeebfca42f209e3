package org.orbwright.jig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.fixture.Designs;
import org.orbwright.jig.JigPlan.WoodFace;
import org.orbwright.jig.TipCut.BladePassage;
import org.orbwright.jig.TipCut.CutOrder;
import org.orbwright.jig.TipCut.CutSide;
import org.orbwright.jig.TipCut.WoodEdge;

/**
 * Both cuts of a segment, played through with the wood as a rigid body. The saw's table has x to the operator's right
 * and y away from the operator, with the gauge's face at y = 0: the blade meets the wood at its far edge first.
 */
class TipCutTest {
    /**
     * The finished segment as it lies on the table for its second cut, outer face up, and where the wood lay for the
     * first one: turned over about its length.
     */
    private record Play(Vector3D tip, Vector3D left, Vector3D right, double width) {
        static Play of(double tanLeft, double tanRight, double width, boolean baseAtGauge) {
            Vector3D tip = Vector3D.of(0, width, 0);
            Vector3D left = Vector3D.of(-width * tanLeft, 0, 0);
            Vector3D right = Vector3D.of(width * tanRight, 0, 0);
            if (baseAtGauge) {
                return new Play(tip, left, right, width);
            }
            // Turned on the table by a half turn, so that the outer face stays up.
            return new Play(half(tip, width), half(left, width), half(right, width), width);
        }

        private static Vector3D half(Vector3D point, double width) {
            return Vector3D.of(-point.getX(), width - point.getY(), point.getZ());
        }

        Play turnedOver() {
            return new Play(over(tip), over(left), over(right), width);
        }

        private Vector3D over(Vector3D point) {
            return Vector3D.of(point.getX(), width - point.getY(), -point.getZ());
        }

        /** The outer face is up where tip, left and right corner run counter-clockwise from above. */
        boolean outerUp() {
            return left.subtract(tip).cross(right.subtract(tip)).getZ() > 0;
        }

        BladePassage bladeAtTip() {
            return tip.getY() > width / 2 ? BladePassage.ENTERS : BladePassage.LEAVES;
        }

        /** On which side of the line along a leg the segment's other corner lies. */
        CutSide side(CutSide leg) {
            Vector3D end = leg == CutSide.LEFT ? left : right;
            Vector3D other = leg == CutSide.LEFT ? right : left;
            double share = (other.getY() - tip.getY()) / (end.getY() - tip.getY());
            double onLine = tip.getX() + share * (end.getX() - tip.getX());
            return other.getX() < onLine ? CutSide.LEFT : CutSide.RIGHT;
        }
    }

    @ParameterizedTest
    @CsvSource({"36, 36", "60, 60", "20, 41", "41, 20", "72, 15"})
    void cutsAreThoseOfTheWoodPlayedThrough(double left, double right) {
        double tanLeft = Math.tan(Math.toRadians(left));
        double tanRight = Math.tan(Math.toRadians(right));
        List<TipCut> cuts = TipCut.of(Math.toRadians(left), Math.toRadians(right));
        assertEquals(4, cuts.size());
        for (TipCut cut : cuts) {
            boolean second = cut.cut() == CutOrder.SECOND;
            Play freed = Play.of(tanLeft, tanRight, 50, cut.freedWith() == WoodEdge.BASE);
            Play lies = second ? freed : freed.turnedOver();
            assertEquals(lies.outerUp() ? WoodFace.INNER : WoodFace.OUTER, cut.faceDown());
            assertEquals(lies.bladeAtTip(), cut.bladeAtTip());
            assertEquals(second ? CutSide.LEFT : CutSide.RIGHT, cut.leg());
            assertEquals(lies.side(cut.leg()), cut.segmentSide());
            assertEquals(corner(lies, cut.leg(), second), cut.cornerAngle(), 1e-12);
        }
    }

    /** The angle of the wood at the tip: to the other leg, or to the edge of the blank, which runs on past the tip. */
    private static double corner(Play lies, CutSide leg, boolean second) {
        Vector3D end = leg == CutSide.LEFT ? lies.left() : lies.right();
        Vector3D other = leg == CutSide.LEFT ? lies.right() : lies.left();
        Vector3D beside = second ? other.subtract(lies.tip()) : Vector3D.of(other.getX() - end.getX(), 0, 0);
        return end.subtract(lies.tip()).angle(beside);
    }

    @Test
    @DisplayName("a pentagon's tip: 90 + 36 = 126 degrees after the first cut, 72 after the second")
    void pentagon() {
        List<TipCut> cuts = TipCut.of(Math.toRadians(36), Math.toRadians(36));
        assertEquals(126, Math.toDegrees(cuts.get(0).cornerAngle()), 1e-9);
        assertEquals(72, Math.toDegrees(cuts.get(1).cornerAngle()), 1e-9);
        assertEquals(
                List.of(BladePassage.LEAVES, BladePassage.ENTERS, BladePassage.ENTERS, BladePassage.LEAVES),
                cuts.stream().map(TipCut::bladeAtTip).toList());
    }

    @Test
    void facesAreThoseOfTheLegCuts() {
        JigPlan plan = JigCalculator.plan(
                new JigRequest(null, null),
                Designs.example("dodecahedron-with-land").build());
        JigPlan.JigSegment segment = plan.faces().get(0).segments().get(0);
        for (TipCut cut : segment.tipCuts()) {
            WoodFace up = (cut.leg() == CutSide.LEFT ? segment.left() : segment.right()).faceUp();
            assertTrue(up != cut.faceDown());
        }
    }

    @Test
    void backingIsInShortSentencesAndCallsNothingSafe() {
        Stream<String> sentences = TipCut.of(0.6, 0.6).stream()
                .flatMap(cut -> Arrays.stream(cut.backing().split("(?<=\\.) ", -1)));
        assertTrue(sentences.allMatch(s -> s.split(" ", -1).length <= 25 && !s.contains("safe")));
    }
}
