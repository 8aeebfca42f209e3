package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.fixture.Designs;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.PathRequest.CutterRequest;
import org.orbwright.turning.PathRequest.CutterShape;
import org.orbwright.turning.PathRequest.Machine;
import org.orbwright.turning.TurningRequest.DiscsRequest;

/** All that is said where no path is laid, with its numbers. */
class PathRefusalWordsTest {
    /** Faces 100 mm and corners 300 mm from the middle, opposite to each other. */
    private static final Designs TETRAHEDRON = Designs.of("tetrahedron");

    private static PathJob rotary() {
        return PathJob.cube(Machine.ROTARY);
    }

    private static PathJob upright() {
        return PathJob.cube(Machine.THREE_AXIS);
    }

    private static PathJob tetrahedron(Through through, DiscsRequest discs) {
        return PathJob.bare(TETRAHEDRON, Machine.ROTARY, discs, PathJob.cutter(CutterShape.BALL, 10, null), 0.5, 10)
                .with("axis", new AxisRequest(through, 1));
    }

    private static CutterRequest held(Double stickOut, Double holder) {
        return new CutterRequest(CutterShape.BALL, 10.0, null, null, stickOut, holder);
    }

    private static CutterRequest smaller(CutterShape shape, Double rim, double undersize) {
        return new CutterRequest(shape, 10.0, rim, undersize, null, null);
    }

    private static List<Violation> violations(PathJob job) {
        return assertThrows(ImpossibleDesignException.class, job::path).violations();
    }

    private static Arguments refused(
            PathJob job, String path, String code, String message, String rejected, String allowed) {
        return Arguments.of(job, new Violation(path, code, message, rejected, allowed));
    }

    static Stream<Arguments> refusals() {
        String halfStated = "How far the cutter stands out and how thick its holder is are checked together.";
        String noRoom = " nothing is left beside it.";
        return Stream.of(
                refused(
                        rotary().with("discs", PathJob.discs(40, 90, 5)),
                        "/turning/discs/neck",
                        "NECK_TOO_THICK",
                        "A neck of 90 mm leaves nothing to cut of a sphere of 90 mm.",
                        "90.0",
                        "a neck below 90 mm"),
                // A face of edge 100 * 2 root 6 has an inscribed circle of 489.898 / root 3; only the second end is
                // one.
                refused(
                        tetrahedron(Through.CORNER, null),
                        "/turning/discs/diameter",
                        "NECK_TOO_THICK",
                        "A neck of 282.84 mm, as thick as the disc where none is stated, leaves nothing to cut of a"
                                + " sphere of 196 mm.",
                        null,
                        "a neck below 196 mm"),
                refused(
                        rotary().with("discs", PathJob.discs(40, 20, 50)),
                        "/turning/discs/clearance",
                        "NO_ROOM_BESIDE_DISC",
                        "A disc of 40 mm sits 50 mm from the middle of the sphere. With its room of 50 mm" + noRoom,
                        null,
                        "a room below 50 mm"),
                // A ring of 50 mm on a corner 300 mm out is 300 - 25 root 2 from the middle.
                refused(
                        tetrahedron(Through.CORNER, PathJob.discs(50, 20, 270)),
                        "/turning/discs/clearance",
                        "NO_ROOM_BESIDE_DISC",
                        "A disc of 50 mm sits 264.64 mm from the middle of the sphere. With its room of 270 mm"
                                + noRoom,
                        null,
                        "a room below 264.64 mm, or a smaller disc"),
                // From a corner 300 mm out the edges fall by 1 in root 2: 250 mm beside the axis they are at -53.55.
                refused(
                        tetrahedron(Through.FACE, PathJob.discs(500, 20, 5)),
                        "/turning/discs/diameter",
                        "NO_ROOM_BESIDE_DISC",
                        "A disc of 500 mm sits -53.55 mm from the middle of the sphere. With its room of 5 mm" + noRoom,
                        null,
                        "a smaller disc"),
                // The first end is the corner here.
                refused(
                        tetrahedron(Through.CORNER, PathJob.discs(500, 20, 5)),
                        "/turning/discs/diameter",
                        "NO_ROOM_BESIDE_DISC",
                        "A disc of 500 mm sits -53.55 mm from the middle of the sphere. With its room of 5 mm" + noRoom,
                        null,
                        "a smaller disc"),
                // From the middle to the room there are 50 - 5; a ball takes all of its diameter of that.
                refused(
                        rotary().with("cutter", PathJob.cutter(CutterShape.BALL, 90, null)),
                        "/path/cutter/diameter",
                        "CUTTER_TOO_WIDE",
                        "From the middle of the sphere to the room beside a disc there are 45 mm, and this cutter takes"
                                + " 45 mm of that.",
                        "90.0",
                        "a diameter below 90 mm, or less room"),
                // A flat of 43 mm and its rim of 2 mm.
                refused(
                        rotary().with("cutter", PathJob.cutter(CutterShape.BULL_NOSE, 47, 2.0)),
                        "/path/cutter/diameter",
                        "CUTTER_TOO_WIDE",
                        "From the middle of the sphere to the room beside a disc there are 45 mm, and this cutter takes"
                                + " 45 mm of that.",
                        "47.0",
                        "a diameter below 47 mm, or less room"),
                refused(
                        rotary().with("cutter", PathJob.cutter(CutterShape.FLAT, 60, null)),
                        "/path/cutter/diameter",
                        "CUTTER_TOO_WIDE",
                        "From the middle of the sphere to the room beside a disc there are 45 mm, and this cutter takes"
                                + " 60 mm of that.",
                        "60.0",
                        "a diameter below 45 mm, or less room"),
                // The disc is 50 mm below the middle, and the sphere's upper end 45 mm above that.
                refused(
                        upright().with("discs", PathJob.discs(40, 20, 95)),
                        "/turning/discs/clearance",
                        "NO_ROOM_BESIDE_DISC",
                        "With a room of 95 mm above the lower disc the cutter would stay above all of the sphere.",
                        "95.0",
                        "a room below 95 mm"),
                refused(
                        rotary().with("cutter", smaller(CutterShape.FLAT, null, 2.6)),
                        "/path/cutter/undersize",
                        "UNDERSIZE_TOO_LARGE",
                        "The flat of this cutter is 10 mm wide. That is too narrow for an undersize of 2.6 mm.",
                        "2.6",
                        "at most 2.5 mm"),
                refused(
                        rotary().with("cutter", smaller(CutterShape.BULL_NOSE, 4.0, 0.6)),
                        "/path/cutter/undersize",
                        "UNDERSIZE_TOO_LARGE",
                        "The flat of this cutter is 2 mm wide. That is too narrow for an undersize of 0.6 mm.",
                        "0.6",
                        "at most 0.5 mm"),
                refused(
                        rotary().with("cutter", smaller(CutterShape.BALL, null, 0.1)),
                        "/path/cutter/undersize",
                        "UNDERSIZE_TOO_LARGE",
                        "A ball has no flat whose rings could leave a fin.",
                        "0.1",
                        "nothing here"),
                refused(
                        rotary().with("cutter", held(90.0, null)),
                        "/path/cutter/holder",
                        "HOLDER_HALF_STATED",
                        halfStated,
                        null,
                        "the holder's diameter, or no stickOut"),
                refused(
                        rotary().with("cutter", held(null, 42.0)),
                        "/path/cutter/stickOut",
                        "HOLDER_HALF_STATED",
                        halfStated,
                        null,
                        "stickOut, or no holder"),
                refused(
                        rotary().with("passDepth", 10.5),
                        "/path/passDepth",
                        "PASS_TOO_DEEP",
                        "Passes of 10.5 mm are deeper than the cutter of 10 mm is wide.",
                        "10.5",
                        "at most 10 mm, or a wider cutter"),
                refused(
                        rotary().with("scallop", 2.6),
                        "/path/scallop",
                        "RIDGES_TOO_HIGH",
                        "Ridges of 2.6 mm are higher than a pass is deep, or than half the radius of the cutter's rim.",
                        "2.6",
                        "at most 2.5 mm"),
                refused(
                        rotary().with("cutter", PathJob.cutter(CutterShape.FLAT, 10, null))
                                .with("scallop", 2.6),
                        "/path/scallop",
                        "RIDGES_TOO_HIGH",
                        "Ridges of 2.6 mm are higher than a pass is deep, or than half the radius of the cutter's end.",
                        "2.6",
                        "at most 2.5 mm"));
    }

    @ParameterizedTest
    @MethodSource("refusals")
    void allThatIsSaidOfWhatIsRefused(PathJob job, Violation said) {
        assertEquals(List.of(said), violations(job));
    }

    @Test
    void theUsualRoomCanBeTooMuchForASmallSolid() {
        // A cube of 5 mm with a sphere of 4.5 mm: 2.5 + 2.25 from the disc to the upper end, and a usual room of 5 mm.
        PathJob small = PathJob.bare(
                rotary().designs().times(0.05),
                Machine.THREE_AXIS,
                new DiscsRequest(2.0, 1.0, null, null, null),
                PathJob.cutter(CutterShape.BALL, 1, null),
                0.05,
                0.5);
        for (PathJob job : List.of(small, small.with("discs", null))) {
            assertEquals(
                    List.of(new Violation(
                            "/turning/discs/clearance",
                            "NO_ROOM_BESIDE_DISC",
                            "With a room of 5 mm above the lower disc the cutter would stay above all of the sphere.",
                            "5.0",
                            "a room below 4.75 mm")),
                    violations(job));
        }
    }
}
