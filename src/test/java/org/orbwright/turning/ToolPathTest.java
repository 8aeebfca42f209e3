package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Trials;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.PathRequest.CutterShape;
import org.orbwright.turning.PathRequest.Machine;
import org.orbwright.turning.ProgramReader.Position;
import org.orbwright.turning.ToolPath.PassTime;

/** Programs are read by a control of the test's own and run on a model of stock, discs and cutter. */
class ToolPathTest {
    private static final long SEED = 20261126;
    private static final int DRAWN = 14;

    static Stream<PathJob> jobs() {
        return Stream.concat(Trials.every(4, PathJob.all()), random().limit(Trials.of(DRAWN)));
    }

    /**
     * Designs drawn at random: all solids, both machines, all cutters, and discs up to twice as wide as the solid is
     * across flats.
     */
    private static Stream<PathJob> random() {
        Random random = new Random(SEED);
        List<Solid> solids = SolidCatalogue.all();
        return Stream.generate(() -> {
                    Designs designs = Designs.of(
                                    solids.get(random.nextInt(solids.size())).name())
                            .acrossFlats(120 + 200 * random.nextDouble());
                    double radius = designs.build().sphereRadius();
                    Machine machine = random.nextInt(3) > 0 ? Machine.ROTARY : Machine.THREE_AXIS;
                    CutterShape shape = List.of(CutterShape.values()).get(random.nextInt(3));
                    double diameter = radius * (0.08 + 0.14 * random.nextDouble());
                    double neck = radius * (0.3 + 0.5 * random.nextDouble());
                    double disc = radius * (0.4 + 3.6 * random.nextDouble());
                    return PathJob.of(
                            designs,
                            machine,
                            Through.FACE,
                            PathJob.discs(disc, neck, 0.05 * radius),
                            PathJob.cutter(shape, diameter, shape == CutterShape.BULL_NOSE ? diameter / 5 : null),
                            diameter * (0.01 + 0.04 * random.nextDouble()),
                            diameter * (0.3 + 0.7 * random.nextDouble()));
                })
                .limit(100)
                .filter(ToolPathTest::isLaid)
                .limit(DRAWN);
    }

    /** Some wide discs rest beside the middle of a solid with few faces, which leaves nothing to be cut. */
    private static boolean isLaid(PathJob job) {
        try {
            return job.path().minutes() > 0;
        } catch (ImpossibleDesignException e) {
            return false;
        }
    }

    @Test
    void tenDesignsAreDrawnAndSomeHaveDiscsWiderThanTheSolid() {
        List<PathJob> drawn = random().toList();
        assertTrue(drawn.size() >= 10);
        assertTrue(drawn.stream()
                        .filter(PathJob::rotary)
                        .filter(job ->
                                job.holding().head().disc() > job.holding().swing())
                        .count()
                >= 3);
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void noMoveGougesTheSphere(PathJob job) {
        new PathSimulation(job).cutterNeverGoesIntoTheSphere();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void theCutterStaysClearOfDiscsAndNeck(PathJob job) {
        new PathSimulation(job).cutterStaysClearOfDiscsAndNecks();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void rapidMovesAreAboveTheSolidAndTheDiscs(PathJob job) {
        new PathSimulation(job).rapidMovesAreAboveAllAndOneAxisAtATime();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void whatGoesStraightDownIsNoDeeperThanAPassAndTheHolderMeetsNothing(PathJob job) {
        new PathSimulation(job).plungesAreNoDeeperThanAPassAndTheHolderMeetsNothing();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void timesAndTurnsAreThoseOfTheAnswer(PathJob job) {
        new PathSimulation(job).timesAndTurnsAreThoseOfTheAnswer();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void ridgesAreNoHigherThanStated(PathJob job) {
        PathSimulation simulation = new PathSimulation(job);
        Cutter cutter = job.cutter();
        ToolPath path = job.path();
        double scallop = job.millimetres(job.request().scallop());
        List<Position> rings = simulation.rings();
        double end = path.reachedHead();
        double start = -path.reachedTail();
        double highest = 0;
        for (double latitude = start + 1e-3; latitude < end - 1e-3; latitude += (end - start) / Trials.of(1500)) {
            // How far out along this latitude the wood still stands: bisection on the way out from the sphere.
            double low = path.sphere() - 0.01;
            double high = path.sphere() + 4 * scallop;
            for (int i = 0; i < 40; i++) {
                double middle = (low + high) / 2;
                double x = middle * (job.rotary() ? Math.sin(latitude) : Math.cos(latitude));
                double z = middle * (job.rotary() ? Math.cos(latitude) : Math.sin(latitude));
                boolean cut = rings.stream().anyMatch(at -> z > at.z() + PathSimulation.below(cutter, x - at.x()));
                low = cut ? low : middle;
                high = cut ? middle : high;
            }
            highest = Math.max(highest, low - path.sphere());
        }
        assertTrue(highest <= scallop + PathSimulation.WRITTEN, highest + " of " + scallop);
        // Rings are as far apart as they may be, but for what evens them out.
        assertTrue(highest >= 0.7 * scallop, highest + " of " + scallop);
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void lengthsTimesAndRingsOfThePassesAreThoseOfTheirMoves(PathJob job) {
        ToolPath path = job.path();
        double cut = 0;
        for (PassTime pass : path.passes()) {
            List<PathMove> moves = path.moves().stream()
                    .filter(move -> move.pass() == pass.pass())
                    .toList();
            assertEquals(
                    pass.minutes(),
                    moves.stream().mapToDouble(PathMove::minutes).sum(),
                    1e-6);
            assertEquals(
                    pass.rings(),
                    moves.stream()
                            .filter(move -> move.kind() == PathMove.Kind.TURN || move.kind() == PathMove.Kind.CIRCLE)
                            .count());
            double feed = job.millimetres(job.request().feed());
            double way = 0;
            for (PathMove move : moves) {
                way += move.minutes() * (move.kind() == PathMove.Kind.PLUNGE ? path.plungeFeed() : feed);
            }
            assertEquals(way, pass.length(), 1e-6 * way);
            cut += pass.inAir() ? 0 : pass.length();
        }
        assertEquals(cut, path.length(), 1e-9 * cut);
    }

    @Test
    void theStepoverIsTheDistanceOfTheRingsOfTheLastPass() {
        PathJob job = PathJob.all().findFirst().orElseThrow();
        ToolPath path = job.path();
        List<PathMove> rings = path.moves().stream()
                .filter(move -> move.kind() == PathMove.Kind.TURN
                        && move.pass() == path.passes().size() - 1)
                .toList();
        double rim = job.cutter().corner();
        double angle = Math.atan2(rings.get(1).x(), rings.get(1).z() + rim)
                - Math.atan2(rings.get(0).x(), rings.get(0).z() + rim);
        assertEquals(angle * path.sphere(), path.stepover(), 1e-9);
    }

    @Test
    @DisplayName("hand calculation: balls of 6 mm on a sphere of 86 mm, 1.8 mm apart, leave ridges of 0.0724 mm")
    void scallopOfABall() {
        // On a plane 1.8 mm apart: 6 - root(36 - 0.81) = 0.0679; on a convex sphere the ridge is higher by (R + r) / R.
        Cutter ball = new Cutter(6, 6);
        double angle = 1.8 / 86;
        double centre = 92;
        double ridge = centre * Math.cos(angle / 2) - Math.sqrt(36 - Math.pow(centre * Math.sin(angle / 2), 2)) - 86;
        assertEquals(0.0724, ridge, 1e-3);
        assertEquals(angle, ball.step(86, ridge, 0), 1e-9);
    }
}
