package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.PathMove.Kind;
import org.orbwright.turning.PathRequest.CutterShape;
import org.orbwright.turning.PathRequest.Machine;

/** How the cutter goes straight down from ring to ring, by hand. */
class WaysDownByHandTest {
    private static final double EXACT = 1e-9;

    /**
     * A cube on its corners, milled in one pass to a sphere of 45 mm with a rim of 5 mm, whose middle ends 30 mm along
     * the axis and 40 mm above it (3, 4, 5). The corners are as far out as a rim rests on that stands 2.4 mm higher
     * there, 42.4 mm above the axis, so that 2.4 mm of wood are below it: more than a pass of 2 mm, and less than the
     * 3.5 mm that the last ring lies below the one before.
     *
     * @param flat half the flat of the cutter
     */
    private static PathJob threeFourFive(double flat) {
        double corners = Math.hypot(30, 42.4) - 5;
        // Cutter and room take 30 + 2 flat + 5 and 1 mm beside the disc. It rests on the edges, which fall from the
        // corner by 1 in root 2.
        double seat = 36 + 2 * flat;
        double disc = 2 * Math.sqrt(2) * (corners - seat);
        return PathJob.bare(
                        TurningCalculatorTest.CUBE
                                .acrossFlats(2 * corners / Math.sqrt(3))
                                .diameter(50.0),
                        Machine.ROTARY,
                        PathJob.discs(disc, 15, 1),
                        flat == 0
                                ? PathJob.cutter(CutterShape.BALL, 10, null)
                                : PathJob.cutter(CutterShape.BULL_NOSE, 10 + 2 * flat, 5.0),
                        1.5,
                        2)
                .with("axis", new AxisRequest(Through.CORNER, 1))
                .with("leave", 20.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 2})
    @DisplayName(
            "2.4 mm of wood are cut in two steps of 1.2 mm, whatever air is above, and each turn is as long as its wood")
    void theWoodIsSharedOutAndNotTheAir(double flat) {
        ToolPath path = threeFourFive(flat).path();
        assertEquals(1, path.passes().size());
        List<PathMove> last = path.moves().stream()
                .filter(move -> Math.abs(move.x() - 30 - flat) < EXACT)
                .toList();
        assertEquals(
                List.of(Kind.LINE, Kind.PLUNGE, Kind.TURN, Kind.PLUNGE, Kind.TURN, Kind.RAPID),
                last.stream().map(PathMove::kind).toList());
        assertTrue(last.get(0).z() > 35 + 2.4);
        assertEquals(36.2, last.get(1).z(), EXACT);
        assertEquals(35, last.get(3).z(), EXACT);
        // The rim touches the sphere of 45 mm at four fifths of it, and the wood 1.2 mm above that at 37.2 mm.
        assertEquals(2 * Math.PI * 37.2 / 1200, last.get(2).minutes(), EXACT);
        assertEquals(2 * Math.PI * 36 / 1200, last.get(4).minutes(), EXACT);
        assertEquals(1.2 / 250, last.get(3).minutes(), EXACT);
        assertEquals(2 * Math.PI, last.get(4).a() - last.get(2).a(), EXACT);
    }

    @Test
    void theProgramChangesTheMeaningOfItsFeedForEachTurn() {
        List<String> lines = List.of(threeFourFive(0).program().split("\n", -1));
        int down = lines.indexOf("G1 X30.0000 Z36.2000 F250.0");
        List<String> words = new ArrayList<>();
        for (String line : lines.subList(down - 1, down + 11)) {
            words.add(line.replaceAll(" A[0-9.]+", " A"));
        }
        // Turns of 37.2 and of 36 mm radius a minute: 1200 / (2 pi 37.2) = 5.134030 and 1200 / (2 pi 36) = 5.305165.
        assertEquals(
                List.of(
                        words.get(0),
                        "G1 X30.0000 Z36.2000 F250.0",
                        "G93",
                        "G91 G1 A F5.13403",
                        "G90",
                        "G94",
                        "G1 X30.0000 Z35.0000 F250.0",
                        "G93",
                        "G91 G1 A F5.30516",
                        "G90",
                        // Corners at root(30^2 + 42.4^2) - 5 = 46.94 mm, and twice 8 mm.
                        "G90 G94 G0 Z62.9400",
                        "G0 X30.0000 Y0.0000"),
                words);
        assertTrue(words.get(0).startsWith("G1 X30.0000 Z38."), words.get(0));
        assertTrue(
                lines.stream()
                        .filter(line -> line.matches(".*G9[34]\\b.*"))
                        .reduce("", (a, b) -> b)
                        .matches(".*G94\\b.*"),
                "feeds are lengths in the end");
    }

    @Test
    @DisplayName("upright, a way down of two passes' depth takes two plunges, and the work is gone around after each")
    void aWayDownOfExactlyTwoPasses() {
        // Rings of a ball of 5 mm on a sphere of 45 mm, 4.5 degrees apart: 50 sin(4.5 degrees) from the last but one to
        // the middle plane. The ridge between them by the triangle of the two middles and the ridge's top.
        double drop = 50 * Math.sin(Math.PI / 40);
        double half = Math.PI / 80;
        double ridge = 50 * Math.cos(half) - Math.sqrt(25 - Math.pow(50 * Math.sin(half), 2)) - 45;
        ToolPath path = PathJob.bare(
                        TurningCalculatorTest.CUBE.diameter(90.0),
                        Machine.THREE_AXIS,
                        PathJob.discs(40, 20, 5),
                        PathJob.cutter(CutterShape.BALL, 10, null),
                        ridge,
                        drop / 2)
                .path();
        List<PathMove> last = path.moves().stream()
                .filter(move -> move.pass() == path.passes().size() - 1 && Math.abs(move.x() - 50) < EXACT)
                .toList();
        assertEquals(
                List.of(Kind.LINE, Kind.PLUNGE, Kind.CIRCLE, Kind.PLUNGE, Kind.CIRCLE, Kind.RAPID),
                last.stream().map(PathMove::kind).toList());
        assertEquals(drop - 5, last.get(0).z(), EXACT);
        assertEquals(drop / 2 - 5, last.get(1).z(), EXACT);
        assertEquals(-5, last.get(3).z(), EXACT);
        // Circles of the cutter's middle are as long at every height, at 1200 mm a minute; straight down it has 250.
        assertEquals(2 * Math.PI * 50 / 1200, last.get(2).minutes(), EXACT);
        assertEquals(2 * Math.PI * 50 / 1200, last.get(4).minutes(), EXACT);
        assertEquals(drop / 2 / 250, last.get(3).minutes(), EXACT);
    }
}
