package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.turning.PathRequest.CutterShape;
import org.orbwright.turning.PathRequest.LimitsRequest;
import org.orbwright.turning.PathRequest.Machine;

/** The limits of a path themselves: what is just taken, what is just refused, and what is said of that. */
class PathLimitsTest {
    /** To the corners of the cube of all jobs here. */
    private static final double CORNERS =
            Milling.corners(PathJob.cube(Machine.ROTARY).built());

    private static PathJob rotary() {
        return PathJob.cube(Machine.ROTARY);
    }

    private static PathJob upright() {
        return PathJob.cube(Machine.THREE_AXIS);
    }

    private static LimitsRequest limits(double x, double y, double highest, double below) {
        return new LimitsRequest(x, y, highest, below, null);
    }

    private static List<Violation> violations(PathJob job) {
        return assertThrows(ImpossibleDesignException.class, job::path).violations();
    }

    static Stream<PathJob> justTaken() {
        return Stream.of(
                rotary().with("discs", PathJob.discs(40, 89.99, 5)),
                rotary().with("cutter", PathJob.cutter(CutterShape.BALL, 89.98, null)),
                rotary().with("cutter", PathJob.cutter(CutterShape.BULL_NOSE, 46.98, 2.0)),
                rotary().with("cutter", PathJob.cutter(CutterShape.FLAT, 44.98, null)),
                upright().with("discs", PathJob.discs(40, 20, 94.99)),
                rotary().with("passDepth", 10.0).with("scallop", 2.5));
    }

    @ParameterizedTest
    @MethodSource("justTaken")
    void aLittleLessIsTaken(PathJob job) {
        assertDoesNotThrow(job::path);
    }

    @Test
    @DisplayName("a sphere to the corners leaves nothing to cut: 50 root 3 are 45 and a leave of 41.60 mm")
    void aSphereToTheCornersLeavesNothingToCut() {
        double leave = CORNERS - 45;
        assertEquals(
                List.of(new Violation(
                        "/path/leave",
                        "NOTHING_TO_CUT",
                        "A sphere of 173.21 mm reaches beyond the solid's corners, which are 173.21 mm across.",
                        String.valueOf(leave),
                        "a length below 41.6 mm")),
                violations(rotary().with("leave", leave)));
        assertDoesNotThrow(rotary().with("leave", 41.6)::path);
    }

    @Test
    @DisplayName("a thousand passes of 1/32 mm cut 31.25 mm away")
    void aThousandPassesAreLaidAndNoMore() {
        // So wide a ball that few rings make a pass.
        PathJob job = rotary().with("cutter", PathJob.cutter(CutterShape.BALL, 80, null))
                .with("leave", CORNERS - 45 - 31.25)
                .with("scallop", 0.02);
        assertEquals(1000, job.with("passDepth", 1 / 32.0).path().passes().size());
        assertEquals(
                List.of(new Violation(
                        "/path/passDepth",
                        "TOO_MANY_PASSES",
                        "From the corners to the sphere 31.25 mm are cut away, which are more than 1000 passes of this"
                                + " depth.",
                        "0.03125",
                        "at least 0.04 mm")),
                violations(job.with("leave", CORNERS - 45 - 31.2501).with("passDepth", 1 / 32.0)));
    }

    @Test
    void theMachinesLimitsAreTakenExactlyAndEachIsNamedBeyondThem() {
        // The first pass cuts a sphere of 80 mm: the middle of a ball of 5 mm goes 85 mm out there. Its tip ends 5 mm
        // below the middle plane, and is never higher than twice the room of 8 mm above the corners.
        PathJob job = upright().with("passDepth", CORNERS - 80);
        double clearHeight = 50 * Math.sqrt(3) + 2 * 8;
        assertDoesNotThrow(job.with("limits", limits(85, 85, clearHeight, 5))::path);
        assertEquals(
                List.of(
                        new Violation(
                                "/path/limits/x",
                                "BEYOND_LIMIT",
                                "X goes to 85 mm.",
                                "84.99",
                                "at least 85 mm, or another cutter or axis"),
                        new Violation(
                                "/path/limits/y",
                                "BEYOND_LIMIT",
                                "Y goes to 85 mm.",
                                "84.98",
                                "at least 85 mm, or another cutter or axis"),
                        new Violation(
                                "/path/limits/highest",
                                "BEYOND_LIMIT",
                                "Z goes up to 102.6 mm.",
                                "102.6",
                                "at least 102.61 mm, or a lower clearHeight"),
                        new Violation(
                                "/path/limits/below",
                                "BEYOND_LIMIT",
                                "Z goes below the centre by 5 mm.",
                                "4.99",
                                "at least 5 mm, or another cutter or axis")),
                violations(job.with("limits", limits(84.99, 84.98, 102.6, 4.99))));
    }

    @Test
    void onARotaryTableTheCutterStaysInTheMiddlePlaneOfY() {
        // Along X its middle goes 50 - 5 - 5 to either side, beside the discs and their room.
        assertDoesNotThrow(rotary().with("limits", limits(40, 0, 200, 0))::path);
        assertEquals(
                "X goes to 40 mm.",
                violations(rotary().with("limits", limits(39.99, 0, 200, 0)))
                        .get(0)
                        .message());
    }

    @ParameterizedTest
    @EnumSource(
            value = CutterShape.class,
            names = {"BALL", "FLAT"})
    void noMoreRingsArePlannedThanAnAnswerHolds(CutterShape shape) {
        PathJob job = upright().with("cutter", PathJob.cutter(shape, 10, null));
        RingPlanner planner = new RingPlanner(Milling.of(job.request(), job.turning(), job.built()));
        Violation tooMany = new Violation(
                "/path/scallop",
                "TOO_MANY_MOVES",
                "The path would have more than 200000 moves.",
                "0.5",
                "higher ridges, deeper passes or a larger cutter");
        assertDoesNotThrow(() -> planner.tooMany(200_000));
        for (Runnable plan : List.<Runnable>of(
                () -> planner.tooMany(200_001),
                // A quarter of a circle of 30 m is 47 124 mm long, and root(8 * 0.001 * 5) from ring to ring is 0.2 mm.
                // The edge of a flat end lies where its last plane meets the ridges' sphere, so that the square of its
                // height falls by 2 * 45 * 1e-4 from ring to ring: 45 / 2e-4 are 225 000.
                () -> planner.halves(
                        shape == CutterShape.BALL ? 30_000 : 45, shape == CutterShape.BALL ? 1e-3 : 1e-4))) {
            assertEquals(
                    List.of(tooMany),
                    assertThrows(ImpossibleDesignException.class, plan::run).violations());
        }
    }
}
