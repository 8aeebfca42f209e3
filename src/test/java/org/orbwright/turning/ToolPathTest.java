package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Trials;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.PathRequest.CutterShape;
import org.orbwright.turning.PathRequest.Machine;
import org.orbwright.turning.ProgramReader.Position;
import org.orbwright.turning.ToolPath.PassTime;

/** Programs are read by a control of the test's own and run on a model of stock, discs and cutter. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Slow
class ToolPathTest {
    private static final long SEED = 20261126;
    private static final int DRAWN = 14;

    private final Map<PathJob, PathSimulation> simulations = new HashMap<>();
    private List<PathJob> drawn;
    private List<PathJob> jobs;

    /** The same jobs for all tests, so that each program is written and run once. */
    Stream<PathJob> jobs() {
        if (jobs == null) {
            jobs = Stream.concat(
                            Trials.every(4, PathJob.all()), drawn().stream().limit(Trials.of(DRAWN)))
                    .toList();
        }
        return jobs.stream();
    }

    private List<PathJob> drawn() {
        if (drawn == null) {
            drawn = random().toList();
        }
        return drawn;
    }

    private PathSimulation simulation(PathJob job) {
        return simulations.computeIfAbsent(job, PathSimulation::new);
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
        List<PathJob> drawn = drawn();
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
        simulation(job).cutterNeverGoesIntoTheSphere();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void theCutterStaysClearOfDiscsAndNeck(PathJob job) {
        simulation(job).cutterStaysClearOfDiscsAndNecks();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void rapidMovesAreAboveTheSolidAndTheDiscs(PathJob job) {
        simulation(job).rapidMovesAreAboveAllAndOneAxisAtATime();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void whatGoesStraightDownIsNoDeeperThanAPassAndTheHolderMeetsNothing(PathJob job) {
        simulation(job).plungesAreNoDeeperThanAPassAndTheHolderMeetsNothing();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void timesAndTurnsAreThoseOfTheAnswer(PathJob job) {
        simulation(job).timesAndTurnsAreThoseOfTheAnswer();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void ridgesAreNoHigherThanStated(PathJob job) {
        PathSimulation simulation = simulation(job);
        ToolPath path = job.path();
        double scallop = job.millimetres(job.request().scallop());
        double end = path.reachedHead();
        double start = -path.reachedTail();
        double highest = 0;
        Cutter cutter = job.cutter();
        for (double latitude = start + 1e-3; latitude < end - 1e-3; latitude += (end - start) / Trials.of(1500)) {
            highest = Math.max(highest, simulation.standing(cutter, latitude));
        }
        assertTrue(highest <= scallop + PathSimulation.WRITTEN, highest + " of " + scallop);
        // Rings are as far apart as they may be, but for what evens them out.
        assertTrue(highest >= 0.7 * scallop, highest + " of " + scallop);
    }

    Stream<PathJob> jobsWithAFlat() {
        return jobs().filter(job -> job.cutter().flat() > 0);
    }

    @ParameterizedTest
    @MethodSource("jobsWithAFlat")
    void aCutterThatIsAsMuchSmallerAsStatedLeavesNoFin(PathJob job) {
        Cutter cutter = job.cutter();
        Cutter smaller = job.smallest();
        assertTrue(smaller.radius() < cutter.radius());
        PathSimulation simulation = simulation(job);
        ToolPath path = job.path();
        double scallop = job.millimetres(job.request().scallop());
        double end = path.reachedHead();
        double start = -path.reachedTail();
        double seam = job.rotary() ? 0 : end;
        DoubleStream all =
                DoubleStream.iterate(start + 1e-3, at -> at < end - 1e-3, at -> at + (end - start) / Trials.of(1500));
        // A fin is no wider than the undersize: a look every few hundredths of a millimetre finds it.
        double wide = 2 * cutter.overlap() / path.sphere();
        DoubleStream fin = IntStream.rangeClosed(-50, 50).mapToDouble(i -> seam + wide * i / 50);
        DoubleStream.concat(all, fin).filter(at -> at <= end).forEach(latitude -> {
            // Its edge is half the undersize farther out: along X on a table, and away from the pole on three axes.
            double out = job.rotary() ? Math.abs(Math.sin(latitude)) : Math.cos(latitude);
            double allowed = scallop + (cutter.radius() - smaller.radius()) * out + PathSimulation.WRITTEN;
            double standing = simulation.standing(smaller, latitude);
            assertTrue(standing <= allowed, () -> standing + " of " + allowed + " at " + latitude);
        });
    }

    @ParameterizedTest
    @MethodSource("jobsWithAFlat")
    void theFlatOverlapsInTheMiddlePlaneOrAtThePoleByWhatTheAnswerSays(PathJob job) {
        double flat = job.cutter().flat();
        ToolPath path = job.path();
        // In the last pass, where the cutter is lowest on the middle plane or over the pole.
        double[] middles = simulation(job).rings().stream()
                .filter(at -> Math.abs(at.z() - path.sphere()) < PathSimulation.WRITTEN)
                .mapToDouble(Position::x)
                .toArray();
        double first = job.rotary()
                ? Arrays.stream(middles).filter(x -> x > 0).min().orElseThrow()
                : Arrays.stream(middles).min().orElseThrow();
        double last =
                job.rotary() ? Arrays.stream(middles).filter(x -> x < 0).max().orElseThrow() : -first;
        assertEquals(path.overlap(), 2 * flat - (first - last), PathSimulation.WRITTEN);
    }

    Stream<PathJob> jobsOfFlatCutters() {
        return jobsWithAFlat().filter(job -> job.request().cutter().shape() == CutterShape.FLAT);
    }

    @ParameterizedTest
    @MethodSource("jobsOfFlatCutters")
    void ringsOfAFlatCutterAreNoFartherApartThanItsRadius(PathJob job) {
        double before = Double.NaN;
        double radius = job.cutter().radius();
        for (PathMove move : job.path().moves()) {
            if (move.kind() == PathMove.Kind.RAPID) {
                before = Double.NaN;
            } else if (move.kind() == PathMove.Kind.TURN || move.kind() == PathMove.Kind.CIRCLE) {
                double apart = Math.abs(move.x() - before);
                assertTrue(!(apart > radius + 1e-9), () -> move + " is " + apart + " out");
                before = move.x();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void lengthsTimesAndRingsOfThePassesAreThoseOfTheirMoves(PathJob job) {
        ToolPath path = job.path();
        double cut = 0;
        double feed = job.millimetres(job.request().feed());
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
        Cutter ball = new Cutter(6, 6, 0);
        double angle = 1.8 / 86;
        double centre = 92;
        double ridge = centre * Math.cos(angle / 2) - Math.sqrt(36 - Math.pow(centre * Math.sin(angle / 2), 2)) - 86;
        assertEquals(0.0724, ridge, 1e-3);
        assertEquals(angle, ball.step(86, ridge, 0), 1e-9);
    }
}
