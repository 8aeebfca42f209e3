package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.turning.PathMove.Kind;
import org.orbwright.turning.PathRequest.CutterRequest;
import org.orbwright.turning.PathRequest.CutterShape;
import org.orbwright.turning.PathRequest.Machine;
import org.orbwright.turning.ToolPath.PassTime;

/** Passes, rings and ways down that are worked out by hand. */
class RingsByHandTest {
    private static final double EXACT = 1e-9;

    /** To the corners of a cube of 100 mm. */
    private static final double CORNERS = 50 * Math.sqrt(3);

    private static PathJob job(Machine machine, CutterShape shape, double diameter, Double rim) {
        return PathJob.cube(machine).with("cutter", PathJob.cutter(shape, diameter, rim));
    }

    private static PathJob ball(Machine machine) {
        return PathJob.cube(machine);
    }

    private static List<PathMove> lastPass(ToolPath path) {
        return path.moves().stream()
                .filter(move -> move.pass() == path.passes().size() - 1)
                .toList();
    }

    private static List<PathMove> around(List<PathMove> moves) {
        return moves.stream()
                .filter(move -> move.kind() == Kind.TURN || move.kind() == Kind.CIRCLE)
                .toList();
    }

    private static void assertAt(double x, double z, PathMove move) {
        assertEquals(x, move.x(), EXACT);
        assertEquals(z, move.z(), EXACT);
    }

    @Test
    @DisplayName("four passes of a quarter of the way to the sphere are four; the pass in air stays off the corners")
    void passesThatComeOutEven() {
        double depth = (CORNERS - 45) / 4;
        PathJob job = job(Machine.ROTARY, CutterShape.BALL, 12, null)
                .with("passDepth", depth)
                .with("airPass", true);
        List<PassTime> passes = job.path().passes();
        double[] radii = {CORNERS + 8, CORNERS - depth, CORNERS - 2 * depth, 45 + depth, 45};
        assertEquals(radii.length, passes.size());
        for (int i = 0; i < radii.length; i++) {
            assertEquals(radii[i], passes.get(i).sphere(), EXACT);
            assertEquals(i == 0, passes.get(i).inAir());
        }
    }

    @Test
    @DisplayName("passes of 10 mm from corners at 86.60 mm: the last one takes the 1.60 mm that are left")
    void theLastPassTakesWhatIsLeft() {
        List<Double> radii = ball(Machine.ROTARY).path().passes().stream()
                .map(PassTime::sphere)
                .toList();
        assertEquals(5, radii.size());
        assertEquals(CORNERS - 10, radii.get(0), EXACT);
        assertEquals(CORNERS - 40, radii.get(3), EXACT);
        assertEquals(45, radii.get(4), EXACT);
    }

    /** Height of the ridge between two rings of a ball on a sphere: the rim's circles meet half-way. */
    private static double ridge(double sphere, double ball, double angle) {
        double middles = sphere + ball;
        return middles * Math.cos(angle / 2)
                - Math.sqrt(ball * ball - Math.pow(middles * Math.sin(angle / 2), 2))
                - sphere;
    }

    @ParameterizedTest
    @EnumSource(Machine.class)
    @DisplayName("roughing leaves ridges of a quarter of a pass: 1.5 of 6 mm, and one ring fewer would leave more")
    void ridgesOfRoughing(Machine machine) {
        ToolPath path = job(machine, CutterShape.BALL, 12, null)
                .with("passDepth", 6.0)
                .with("scallop", 0.1)
                .path();
        // The first ring is on the middle plane, or the pole, and each next one is reached in a straight move.
        double[] outwards = path.moves().stream()
                .filter(move -> move.pass() == 0 && move.kind() == Kind.LINE && move.x() > 0)
                .mapToDouble(PathMove::x)
                .toArray();
        double sphere = CORNERS - 6;
        double angle = Math.asin(outwards[0] / (sphere + 6));
        double fewer = angle * outwards.length / (outwards.length - 1);
        assertTrue(ridge(sphere, 6, angle) <= 1.5);
        assertTrue(ridge(sphere, 6, fewer) > 1.5);
    }

    @Test
    @DisplayName("ridges as high as twenty steps from pole to middle plane leave take twenty steps, 4.5 degrees each")
    void ringsThatComeOutEven() {
        ToolPath path = ball(Machine.THREE_AXIS)
                .with("scallop", ridge(45, 5, Math.PI / 40))
                .path();
        assertEquals(45 * Math.PI / 40, path.stepover(), EXACT);
        double[] places = lastPass(path).stream()
                .filter(move -> move.kind() == Kind.LINE)
                .mapToDouble(PathMove::x)
                .toArray();
        assertEquals(20, places.length);
        for (int i = 0; i < 20; i++) {
            assertEquals(50 * Math.sin((i + 1) * Math.PI / 40), places[i], EXACT);
        }
    }

    @Test
    @DisplayName("a flat end on the pole of 40 mm leaves 1 mm as far out as 9 mm (9, 40, 41), where the next ring cuts")
    void ringsOfAFlatEnd() {
        ToolPath path = PathJob.bare(
                        TurningCalculatorTest.CUBE.diameter(80.0),
                        Machine.THREE_AXIS,
                        PathJob.discs(40, 20, 5),
                        PathJob.cutter(CutterShape.FLAT, 20, null),
                        1,
                        10)
                .path();
        List<PathMove> plunges = lastPass(path).stream()
                .filter(move -> move.kind() == Kind.PLUNGE)
                .toList();
        // On the pole the cutter's edge is 0.1 mm beyond the axis, and its middle 9.9 mm out.
        assertAt(9.9, 40, plunges.get(0));
        assertAt(10 + 9, Math.sqrt(40 * 40 - 9 * 9), plunges.get(1));
        assertAt(10 + 40, 0, plunges.get(plunges.size() - 1));
        assertNull(path.stepover(), "it is another one from ring to ring");
    }

    @Test
    @DisplayName("a bull-nose of 10 mm with a rim of 2 mm has a flat of 3 mm to either side, 0.1 mm beyond the middle")
    void whereTheRimOfABullNoseStands() {
        List<PathMove> table = around(
                lastPass(job(Machine.ROTARY, CutterShape.BULL_NOSE, 10, 2.0).path()));
        assertAt(2.9, 45, table.get(0));
        assertEquals(
                1,
                table.stream()
                        .filter(move -> Math.abs(move.x() + 2.9) < EXACT && Math.abs(move.z() - 45) < EXACT)
                        .count());
        List<PathMove> upright = around(
                lastPass(job(Machine.THREE_AXIS, CutterShape.BULL_NOSE, 10, 2.0).path()));
        assertAt(2.9, 45, upright.get(0));
        assertAt(45 + 5, -2, upright.get(upright.size() - 1));
    }

    @Test
    @DisplayName("an undersize of 0.3 mm moves the first rings of a flat end of 10 mm to 4.7 mm: 9.4 mm apart, not 10")
    void theMiddleRingsOverlapByTwiceTheUndersize() {
        CutterRequest cutter = new CutterRequest(CutterShape.FLAT, 10.0, null, 0.3, null, null);
        ToolPath table = ball(Machine.ROTARY).with("cutter", cutter).path();
        assertEquals(0.6, table.overlap(), EXACT);
        assertEquals(
                List.of(4.7, -4.7),
                around(lastPass(table)).stream()
                        .filter(move -> move.z() > 45 - EXACT)
                        .map(PathMove::x)
                        .toList());
        assertAt(
                4.7,
                45,
                around(lastPass(ball(Machine.THREE_AXIS).with("cutter", cutter).path()))
                        .get(0));
        assertNull(ball(Machine.ROTARY).path().overlap(), "a ball has no flat");
    }

    @ParameterizedTest
    @CsvSource({"10, 2, 0.2", "10, 4.85, 0.15", "10, 4.83331, 0.1666", "10, 4.99999, 0", "10.2, 4.9, 0.2"})
    @DisplayName(
            "where the flat is narrow a quarter of it is allowed for, in whole ten-thousandths: of 0.3 mm 0.075 mm")
    void aNarrowFlatStandsLessUndersize(double diameter, double rim, double overlap) {
        PathJob job = job(Machine.ROTARY, CutterShape.BULL_NOSE, diameter, rim);
        assertEquals(overlap, job.path().overlap(), EXACT);
        // What the answer repeats can be posted again.
        assertEquals(
                overlap,
                new PathJob(
                                job.name(),
                                job.designs(),
                                job.turning(),
                                job.request().filled(LengthUnit.MM))
                        .path()
                        .overlap(),
                EXACT);
    }

    @Test
    void aCutterWithoutAFlatTurnsTheRingInTheMiddlePlaneOnce() {
        assertEquals(
                1,
                around(lastPass(ball(Machine.ROTARY).path())).stream()
                        .filter(move -> move.x() == 0)
                        .count());
    }

    @ParameterizedTest
    @CsvSource({"BALL, 75, 25", "FLAT, 77, 27"})
    @DisplayName("upright the disc's room ends the way at 30 of 50 mm or 27 of 45 mm (3, 4, 5), 36.87 degrees up")
    void theLowerDiscEndsTheWayDown(CutterShape shape, double room, double lowest) {
        // The lower disc is 50 mm below the middle.
        ToolPath path = job(Machine.THREE_AXIS, shape, 10, null)
                .with("discs", PathJob.discs(40, 20, room))
                .path();
        assertEquals(lowest, path.lowest(), EXACT);
        assertEquals(-36.869898, Math.toDegrees(path.reachedTail()), 1e-6);
        assertEquals(90, Math.toDegrees(path.reachedHead()), EXACT);
        // The rim of a ball stands 40 mm out there, the edge of a flat end of 5 mm 36 mm.
        PathMove last = around(lastPass(path)).get(around(lastPass(path)).size() - 1);
        assertAt(shape == CutterShape.BALL ? 40 : 36 + 5, lowest, last);
    }

    @ParameterizedTest
    @EnumSource(CutterShape.class)
    void withAThinLowerDiscTheUpperHalfIsMilledToTheMiddlePlane(CutterShape shape) {
        ToolPath path = job(Machine.THREE_AXIS, shape, 10, shape == CutterShape.BULL_NOSE ? 2.0 : null)
                .path();
        assertEquals(0, path.reachedTail(), EXACT);
        assertEquals(50, path.moves().get(path.moves().size() - 1).x(), EXACT);
    }

    @ParameterizedTest
    @CsvSource({"ROTARY, 300, 166", "ROTARY, 80, 102.602540378", "THREE_AXIS, 300, 102.602540378"})
    @DisplayName("rapid moves are twice 8 mm above the corners at 86.60 mm, and above the discs where these turn")
    void theHeightOfRapidMoves(Machine machine, double disc, double height) {
        PathJob job = ball(machine).with("discs", PathJob.discs(disc, 20, 5));
        assertEquals(height, job.path().clearHeight(), 1e-8);
    }

    @ParameterizedTest
    @EnumSource(Machine.class)
    void eachHalfOfAPassBeginsAndEndsAboveAllWood(Machine machine) {
        ToolPath path = ball(machine).path();
        PathMove before = null;
        for (PathMove move : path.moves()) {
            if (before == null || move.pass() != before.pass()) {
                assertEquals(Kind.RAPID, move.kind());
                assertTrue(before == null || before.kind() == Kind.RAPID);
            }
            assertTrue(move.kind() != Kind.RAPID || move.z() == path.clearHeight());
            // With the cutter down nothing goes sideways in a rapid move.
            assertTrue(move.kind() != Kind.RAPID
                    || before == null
                    || before.kind() == Kind.RAPID
                    || before.x() == move.x());
            before = move;
        }
        assertEquals(Kind.RAPID, before.kind());
    }
}
