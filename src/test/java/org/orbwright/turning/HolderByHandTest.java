package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.Numbering;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.PathRequest.CutterRequest;
import org.orbwright.turning.PathRequest.CutterShape;
import org.orbwright.turning.PathRequest.Machine;

/** How far a cutter has to stand out of its holder, by hand. */
class HolderByHandTest {
    private static final double EXACT = 1e-9;

    private static CutterRequest ball(double diameter, double stickOut, double holder) {
        return new CutterRequest(CutterShape.BALL, diameter, null, null, stickOut, holder);
    }

    @ParameterizedTest
    @CsvSource({"6, 3", "8, 5", "10, 4", "11, 3", "12, 3", "15, 5", "17, 5", "18, 5"})
    @DisplayName("where a cutter passes a disc with its room, a holder that is no thicker does too")
    void aHolderNoThickerThanTheCutterPassesTheDiscs(double diameter, double room) {
        ToolPath path = PathJob.bare(
                        TurningCalculatorTest.CUBE,
                        Machine.ROTARY,
                        PathJob.discs(300, 20, room),
                        ball(diameter, 9000, diameter),
                        0.2,
                        5)
                .path();
        // What the holder has to clear are the cube's corners, 50 root 3 out, and not the disc's rim of 150 mm.
        assertEquals(50 * Math.sqrt(3) - path.lowest(), path.stickOutNeeded(), EXACT);
    }

    @Test
    void aHolderThickerThanTheCutterByALittleMeetsTheDisc() {
        ToolPath path = PathJob.bare(
                        TurningCalculatorTest.CUBE,
                        Machine.ROTARY,
                        PathJob.discs(300, 20, 5),
                        ball(10, 9000, 10.001),
                        0.2,
                        5)
                .path();
        assertEquals(150 - path.lowest(), path.stickOutNeeded(), EXACT);
    }

    /**
     * A truncated tetrahedron whose hexagons are 50 mm, whose triangles, opposite to them, 250 / 3 mm and whose corners
     * 95.74 mm from its centre, milled in one pass to a sphere of 95 mm radius with a ball of 5 mm and a room of 17 mm.
     * Beside a hexagon's disc the ball's middle gets 50 - 17 - 5 = 28 mm along the axis and stays 96 mm above it (7,
     * 24, 25); on the other side a neck of 150 mm ends its way at 60 and 80 (3, 4, 5).
     *
     * @param face 0 for a hexagon at the first end, 2 for a triangle
     */
    private static PathJob uneven(int face, double holder) {
        return PathJob.bare(
                        Designs.of("truncated-tetrahedron").acrossFlats(100),
                        Machine.ROTARY,
                        PathJob.discs(300, 150, 17),
                        ball(10, 9000, holder),
                        0.5,
                        5)
                .with("axis", new AxisRequest(Through.FACE, Numbering.of(face)))
                .with("leave", 47.0);
    }

    @ParameterizedTest
    @CsvSource({"0, 12.6, 59", "2, 12.6, 59", "0, 12.8, 75", "2, 12.8, 75"})
    @DisplayName("the holder has to clear the disc of the side that it reaches over, whichever end that is")
    void onlyTheDiscUnderTheHolderCounts(int face, double holder, double needed) {
        // Discs of 150 mm radius; tips stand at 96 - 5 beside the near one and at 80 - 5 on the far side. The room of
        // the far disc begins 83.33 - 17 from the middle, and a holder of 6.33 mm radius reaches it from 60.
        assertEquals(needed, uneven(face, holder).path().stickOutNeeded(), EXACT);
    }

    @ParameterizedTest
    @CsvSource({"0, 16.260205, 36.869898", "2, 36.869898, 16.260205"})
    @DisplayName("each side is milled to its own latitude: 28 and 60 of 100 are the sines of 16.26 and 36.87 degrees")
    void eachSideEndsWhereItsOwnDiscOrNeckIs(int face, double head, double tail) {
        ToolPath path = uneven(face, 20).path();
        assertEquals(head, Math.toDegrees(path.reachedHead()), 1e-6);
        assertEquals(tail, Math.toDegrees(path.reachedTail()), 1e-6);
        assertEquals(60, path.farthest(), EXACT);
        assertEquals(75, path.lowest(), EXACT);
    }

    /**
     * A cube with corners 65 mm from its centre, milled upright to a sphere of 58 mm in one pass with a ball of 5 mm:
     * at the middle plane the cutter stands 63 mm out.
     */
    private static PathJob upright(double stickOut) {
        return PathJob.bare(
                        TurningCalculatorTest.CUBE
                                .acrossFlats(130 / Math.sqrt(3))
                                .diameter(70.0),
                        Machine.THREE_AXIS,
                        PathJob.discs(40, 40, 5),
                        ball(10, stickOut, 48),
                        0.5,
                        7)
                .with("leave", 23.0);
    }

    @Test
    @DisplayName(
            "hand calculation: a holder of 24 mm covers wood 63 - 24 = 39 mm out, 52 mm high of 65, over a tip at -5")
    void onThreeAxesTheWoodInsideTheCutterCounts() {
        assertEquals(57, upright(9000).path().stickOutNeeded(), EXACT);
    }

    @Test
    void asMuchAsIsNeededIsEnough() {
        double needed = upright(9000).path().stickOutNeeded();
        assertDoesNotThrow(upright(needed)::path);
        assertEquals(
                new Violation(
                        "/path/cutter/stickOut",
                        "HOLDER_HITS",
                        "The holder would reach into wood that is not yet cut, or into a disc.",
                        "56.99",
                        "at least 57 mm"),
                assertThrows(ImpossibleDesignException.class, upright(56.99)::path)
                        .violations()
                        .get(0));
    }
}
