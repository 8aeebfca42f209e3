package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.PathRequest.CutterRequest;
import org.orbwright.turning.PathRequest.CutterShape;
import org.orbwright.turning.PathRequest.LimitsRequest;
import org.orbwright.turning.PathRequest.Machine;
import org.orbwright.turning.TurningRequest.DiscsRequest;

/** What no path is laid for, on both sides of each limit. */
class PathRefusalsTest {
    /** Faces 88.9 mm and corners 110.04 mm from the middle, a sphere of 172 mm. */
    private static final Designs LANTERN = Designs.example("dodecahedron-with-land");

    private static PathJob rotary() {
        return PathJob.of(
                LANTERN,
                Machine.ROTARY,
                Through.FACE,
                PathJob.discs(80, 50, 6),
                PathJob.cutter(CutterShape.BALL, 20, null),
                0.5,
                10);
    }

    /** So wide a cutter that a few rings make a pass. */
    private static PathJob wide() {
        return rotary().with("cutter", PathJob.cutter(CutterShape.BALL, 160, null))
                .with("scallop", 0.02);
    }

    private static PathJob upright() {
        return PathJob.of(
                LANTERN,
                Machine.THREE_AXIS,
                Through.FACE,
                PathJob.discs(40, 40, 6),
                PathJob.cutter(CutterShape.BALL, 20, null),
                0.5,
                10);
    }

    private static CutterRequest held(Double stickOut, Double holder) {
        return new CutterRequest(CutterShape.BALL, 20.0, null, null, stickOut, holder);
    }

    private static PathJob tetrahedron(DiscsRequest discs) {
        return PathJob.of(
                Designs.of("tetrahedron"),
                Machine.ROTARY,
                Through.FACE,
                discs,
                PathJob.cutter(CutterShape.BALL, 10, null),
                0.3,
                10);
    }

    /** A job that is refused, one that is just not, and what is said of the first. */
    static Stream<Arguments> limits() {
        double corners = LANTERN.build().panels().get(0).faceDistance();
        PathJob limited = rotary().with("airPass", true);
        double clearHeight = limited.path().clearHeight();
        return Stream.of(
                Arguments.of(
                        rotary().with("cutter", held(20.0, 42.0)),
                        rotary().with("cutter", held(90.0, 42.0)),
                        "/path/cutter/stickOut",
                        "HOLDER_HITS"),
                Arguments.of(
                        rotary().with("cutter", held(90.0, null)),
                        rotary().with("cutter", held(null, null)),
                        "/path/cutter/holder",
                        "HOLDER_HALF_STATED"),
                Arguments.of(
                        rotary().with("cutter", held(null, 42.0)),
                        rotary().with("cutter", held(null, null)),
                        "/path/cutter/stickOut",
                        "HOLDER_HALF_STATED"),
                Arguments.of(
                        limited.with("limits", new LimitsRequest(200.0, 200.0, clearHeight - 1e-3, 40.0, null)),
                        limited.with("limits", new LimitsRequest(200.0, 200.0, clearHeight + 1e-3, 40.0, null)),
                        "/path/limits/highest",
                        "BEYOND_LIMIT"),
                Arguments.of(
                        rotary().with("cutter", PathJob.cutter(CutterShape.BALL, 20, 2.0)),
                        rotary(),
                        "/path/cutter/rimRadius",
                        "RIM_DOES_NOT_FIT"),
                Arguments.of(
                        rotary().with("cutter", PathJob.cutter(CutterShape.BULL_NOSE, 20, null)),
                        rotary().with("cutter", PathJob.cutter(CutterShape.BULL_NOSE, 20, 2.0)),
                        "/path/cutter/rimRadius",
                        "RIM_DOES_NOT_FIT"),
                // A flat of 16 mm.
                Arguments.of(
                        rotary().with("cutter", new CutterRequest(CutterShape.BULL_NOSE, 20.0, 2.0, 4.001, null, null)),
                        rotary().with("cutter", new CutterRequest(CutterShape.BULL_NOSE, 20.0, 2.0, 4.0, null, null)),
                        "/path/cutter/undersize",
                        "UNDERSIZE_TOO_LARGE"),
                // 82.9 mm from the middle to the room beside the disc.
                Arguments.of(
                        rotary().with("cutter", PathJob.cutter(CutterShape.FLAT, 83, null)),
                        rotary().with("cutter", PathJob.cutter(CutterShape.FLAT, 82.8, null)),
                        "/path/cutter/diameter",
                        "CUTTER_TOO_WIDE"),
                Arguments.of(
                        rotary().with("discs", PathJob.discs(80, 50, corners)),
                        rotary().with("discs", PathJob.discs(80, 50, corners - 11)),
                        "/turning/discs/clearance",
                        "NO_ROOM_BESIDE_DISC"),
                // The sphere's lower end is 88.9 + 86.3 mm above the lower disc.
                Arguments.of(
                        upright().with("discs", PathJob.discs(40, 40, corners + 86.3)),
                        upright().with("discs", PathJob.discs(40, 40, corners + 86)),
                        "/turning/discs/clearance",
                        "NO_ROOM_BESIDE_DISC"),
                Arguments.of(
                        upright().with("discs", PathJob.discs(40, 40, 10_000)),
                        upright(),
                        "/turning/discs/clearance",
                        "NO_ROOM_BESIDE_DISC"),
                Arguments.of(
                        rotary().with("discs", PathJob.discs(80, 172.7, 6)),
                        rotary().with("discs", PathJob.discs(80, 160, 6)),
                        "/turning/discs/neck",
                        "NECK_TOO_THICK"),
                Arguments.of(
                        tetrahedron(null),
                        tetrahedron(PathJob.discs(60, 40, 5)),
                        "/turning/discs/diameter",
                        "NECK_TOO_THICK"),
                Arguments.of(
                        rotary().with("leave", 24.1), rotary().with("leave", 24.0), "/path/leave", "NOTHING_TO_CUT"),
                Arguments.of(
                        rotary().with("passDepth", 20.1),
                        rotary().with("passDepth", 20.0),
                        "/path/passDepth",
                        "PASS_TOO_DEEP"),
                Arguments.of(
                        wide().with("passDepth", 0.0237),
                        wide().with("passDepth", 0.0238),
                        "/path/passDepth",
                        "TOO_MANY_PASSES"),
                Arguments.of(
                        rotary().with("passDepth", 4.9).with("scallop", 5.0),
                        rotary().with("passDepth", 5.0).with("scallop", 5.0),
                        "/path/scallop",
                        "RIDGES_TOO_HIGH"),
                Arguments.of(
                        rotary().with("scallop", 5.1),
                        rotary().with("scallop", 5.0),
                        "/path/scallop",
                        "RIDGES_TOO_HIGH"),
                Arguments.of(
                        rotary().with("cutter", PathJob.cutter(CutterShape.FLAT, 20, null))
                                .with("scallop", 5.1),
                        rotary().with("cutter", PathJob.cutter(CutterShape.FLAT, 20, null))
                                .with("scallop", 5.0),
                        "/path/scallop",
                        "RIDGES_TOO_HIGH"),
                Arguments.of(
                        rotary().with("cutter", PathJob.cutter(CutterShape.BALL, 0.1, null))
                                .with("scallop", 0.001)
                                .with("passDepth", 0.1),
                        rotary(),
                        "/path/scallop",
                        "TOO_MANY_MOVES"),
                Arguments.of(
                        rotary().with("clearHeight", 1.98),
                        rotary().with("clearHeight", 2.0),
                        "/path/clearHeight",
                        "ROOM_TOO_SMALL"));
    }

    @ParameterizedTest
    @MethodSource("limits")
    void whatDoesNotSufficeIsRefused(PathJob refused, PathJob taken, String path, String code) {
        Violation violation = violation(refused);
        assertEquals(path, violation.path());
        assertEquals(code, violation.code());
        assertDoesNotThrow(taken::path);
    }

    private static Violation violation(PathJob job) {
        return assertThrows(ImpossibleDesignException.class, job::path)
                .violations()
                .get(0);
    }

    @Test
    void fourHundredthsOfAnInchAreRoomEnough() {
        PathJob job = PathJob.all()
                .filter(all -> all.designs().unit() == LengthUnit.IN)
                .findFirst()
                .orElseThrow();
        assertDoesNotThrow(job.with("clearHeight", 0.08)::path);
    }

    @Test
    void whatIsAllowedIsTakenWhereItIsFollowed() {
        Violation neck = violation(tetrahedron(null));
        assertTrue(neck.allowed().startsWith("a neck below "), neck::allowed);
        assertTrue(neck.message().contains("as thick as the disc"), neck::message);
        Violation wide = violation(rotary().with("cutter", PathJob.cutter(CutterShape.BALL, 200, null)));
        assertEquals("a diameter below 165.8 mm, or less room", wide.allowed());
        Violation room = violation(upright().with("discs", PathJob.discs(40, 40, 10_000)));
        assertEquals("a room below 175.2 mm", room.allowed());
    }

    @Test
    void theHolderIsKeptOffDiscsThatAreWiderThanTheSolid() {
        CutterRequest cutter = new CutterRequest(CutterShape.BALL, 10.0, null, null, 73.0, 42.0);
        PathJob large = rotary().with("discs", PathJob.discs(300, 40, 5)).with("cutter", cutter);
        Violation violation = violation(large);
        assertEquals("HOLDER_HITS", violation.code());
        // At a latitude where the tip stands lowest the rim of 150 mm has to be cleared.
        ToolPath path =
                large.with("cutter", PathJob.cutter(CutterShape.BALL, 10, null)).path();
        assertEquals(150 - path.lowest(), path.stickOutNeeded(), 1e-9);
        assertTrue(path.clearHeight() >= 150 + 2 * 8);
        assertEquals(110.0443 - rotary().path().lowest(), rotary().path().stickOutNeeded(), 1e-4);
    }

    @Test
    void onThreeAxesTheSideThatCutsHasToStandOutOfTheHolder() {
        CutterRequest thin = new CutterRequest(CutterShape.BALL, 2.0, null, null, 5.0, 2.0);
        PathJob job = upright().with("cutter", thin).with("passDepth", 2.0).with("scallop", 0.1);
        assertEquals("HOLDER_HITS", violation(job).code());
    }

    @Test
    void manyPassesAreLaidInReasonableTime() {
        PathJob job = wide().with("passDepth", 0.03);
        long start = System.nanoTime();
        ToolPath path = job.path();
        assertTrue(path.passes().size() > 700);
        // Measured: 0.05 s; a search through all moves for each pass took 100 times as long.
        assertTrue(System.nanoTime() - start < 2e9);
        assertEquals(
                List.of(0, 1, 2),
                path.passes().stream().limit(3).map(ToolPath.PassTime::pass).toList());
    }
}
