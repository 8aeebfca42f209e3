package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.PathRequest.CutterRequest;
import org.orbwright.turning.PathRequest.CutterShape;
import org.orbwright.turning.PathRequest.LimitsRequest;
import org.orbwright.turning.PathRequest.Machine;
import org.orbwright.turning.ProgramReader.Position;
import org.orbwright.turning.TurningRequest.DiscsRequest;

/** Programs are read by a control of the test's own and run on a model of stock, discs and cutter. */
class ToolPathTest {
    /** In millimetres: programs are written to four decimals. */
    private static final double WRITTEN = 2e-4;

    /** A program to run. */
    private record Job(String name, Designs design, PathRequest request) {
        @Override
        public String toString() {
            return name;
        }

        Design built() {
            return design.build();
        }

        ToolPath path() {
            return PathCalculator.path(request, built());
        }

        List<Position> run() {
            return ProgramReader.run(ProgramWriter.write(request, built(), path(), List.of("a (test); 100 %")));
        }

        Cutter cutter() {
            return Cutter.of(request.cutter(), built());
        }
    }

    private static Job job(
            Designs design,
            Machine machine,
            Through through,
            DiscsRequest discs,
            CutterRequest cutter,
            double scallop) {
        PathRequest request = new PathRequest(
                design.request(),
                machine,
                new AxisRequest(through, 0),
                discs,
                cutter,
                scallop,
                6.0,
                0.3,
                1200.0,
                9000.0,
                8.0,
                true,
                null);
        return new Job(design.solid() + " " + machine + " " + through + " " + cutter.shape(), design, request);
    }

    private static CutterRequest cutter(CutterShape shape, double diameter, Double rim) {
        return new CutterRequest(shape, diameter, rim, null, null);
    }

    private static DiscsRequest discs(double diameter, double neck, double clearance) {
        return new DiscsRequest(diameter, neck, clearance, null, null);
    }

    static Stream<Job> jobs() {
        CutterRequest ball = cutter(CutterShape.BALL, 12, null);
        CutterRequest bull = cutter(CutterShape.BULL_NOSE, 10, 2.0);
        CutterRequest flat = cutter(CutterShape.FLAT, 8, null);
        Designs lantern = Designs.example("dodecahedron-with-land");
        Designs inches = lantern.times(1 / 25.4).in(LengthUnit.IN);
        return Stream.of(
                job(lantern, Machine.ROTARY, Through.FACE, discs(80, 50, 5), ball, 0.1),
                job(lantern, Machine.ROTARY, Through.FACE, discs(104, 104, 8), ball, 0.1),
                job(lantern, Machine.ROTARY, Through.CORNER, discs(40, 30, 4), bull, 0.1),
                job(lantern, Machine.ROTARY, Through.FACE, discs(60, 40, 5), flat, 0.2),
                job(lantern, Machine.THREE_AXIS, Through.FACE, null, ball, 0.1),
                job(lantern, Machine.THREE_AXIS, Through.EDGE, null, bull, 0.1),
                job(lantern, Machine.THREE_AXIS, Through.FACE, null, flat, 0.2),
                job(Designs.of("truncated-icosahedron"), Machine.ROTARY, Through.FACE, discs(40, 30, 4), bull, 0.05),
                job(Designs.of("cube"), Machine.ROTARY, Through.FACE, discs(70, 40, 6), ball, 0.1),
                job(Designs.of("rhombic-triacontahedron"), Machine.THREE_AXIS, Through.CORNER, null, ball, 0.02),
                new Job(
                        "in inches",
                        inches,
                        new PathRequest(
                                inches.request(),
                                Machine.ROTARY,
                                null,
                                discs(3, 2, 0.2),
                                cutter(CutterShape.BALL, 0.5, null),
                                0.004,
                                0.25,
                                0.01,
                                50.0,
                                9000.0,
                                0.4,
                                null,
                                null)));
    }

    /** Height of the cutter's lower end over its tip, at a distance from its middle; beyond it there is none. */
    private static double below(Cutter cutter, double distance) {
        double out = Math.abs(distance) - cutter.flat();
        if (out > cutter.corner() + 1e-12) {
            return Double.POSITIVE_INFINITY;
        }
        return out <= 0 ? 0 : cutter.corner() - Math.sqrt(Math.max(0, cutter.corner() * cutter.corner() - out * out));
    }

    /** Every position, and positions between those of a straight move. */
    private static List<Position> dense(List<Position> positions) {
        List<Position> dense = new ArrayList<>();
        Position before = null;
        for (Position to : positions) {
            for (int i = 1; before != null && i <= 20; i++) {
                double s = i / 20.0;
                dense.add(new Position(
                        to.motion(),
                        before.x() + s * (to.x() - before.x()),
                        0,
                        before.z() + s * (to.z() - before.z()),
                        0,
                        0));
            }
            before = to;
        }
        return dense;
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void noMoveGougesTheSphere(Job job) {
        Cutter cutter = job.cutter();
        double sphere = job.path().sphere();
        for (Position at : dense(job.run())) {
            for (int i = -40; i <= 40; i++) {
                double across = cutter.radius() * i / 40;
                // About X the wood turns, and what the cutter does at its middle it does all around; on three axes it
                // runs in circles about Z. Either way the section through the axis and the cutter tells all.
                double x = at.x() + across;
                double z = at.z() + below(cutter, across);
                boolean rotary = job.request.machine() == Machine.ROTARY;
                double from = rotary || z >= 0 ? Math.hypot(x, z) : Math.abs(x);
                assertTrue(from >= sphere - WRITTEN, () -> at + " cuts at " + from + " of " + sphere);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void ridgesAreNoHigherThanStated(Job job) {
        Cutter cutter = job.cutter();
        ToolPath path = job.path();
        boolean rotary = job.request.machine() == Machine.ROTARY;
        double scallop = job.built().unit().toMillimetres(job.request.scallop());
        List<Position> rings = job.run().stream().filter(at -> at.motion() > 0).toList();
        double end = rotary ? path.reachedHead() : Math.PI / 2;
        double start = rotary ? -path.reachedTail() : path.reachedTail() == 0 ? 0 : -path.reachedTail();
        double highest = 0;
        for (double latitude = start + 1e-3; latitude < end - 1e-3; latitude += (end - start) / 1500) {
            // How far out along this latitude the wood still stands: bisection on the way out from the sphere.
            double low = path.sphere() - 0.01;
            double high = path.sphere() + 4 * scallop;
            for (int i = 0; i < 40; i++) {
                double middle = (low + high) / 2;
                double x = middle * (rotary ? Math.sin(latitude) : Math.cos(latitude));
                double z = middle * (rotary ? Math.cos(latitude) : Math.sin(latitude));
                boolean cut = rings.stream().anyMatch(at -> z > at.z() + below(cutter, x - at.x()));
                low = cut ? low : middle;
                high = cut ? middle : high;
            }
            highest = Math.max(highest, low - path.sphere());
        }
        assertTrue(highest <= scallop + WRITTEN, highest + " of " + scallop);
        // Rings are as far apart as they may be, but for what evens them out.
        assertTrue(highest >= 0.8 * scallop, highest + " of " + scallop);
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void theCutterStaysClearOfDiscsAndNeck(Job job) {
        if (job.request.machine() == Machine.THREE_AXIS) {
            return;
        }
        Design design = job.built();
        Cutter cutter = job.cutter();
        Holding holding = HoldingCalculator.discs(
                new TurningRequest(
                        design.request(), job.request.axis(), job.request.discs(), null, null, null, null, null),
                design,
                job.path().sphere());
        double room = design.unit().toMillimetres(job.request.discs().clearance());
        double neck = design.unit().toMillimetres(job.request.discs().neck()) / 2;
        for (Position at : dense(job.run())) {
            if (at.z() < holding.head().disc() / 2) {
                assertTrue(at.x() + cutter.radius() <= holding.head().seatDistance() - room + WRITTEN, at::toString);
                assertTrue(-at.x() + cutter.radius() <= holding.tail().seatDistance() - room + WRITTEN, at::toString);
            }
            assertTrue(at.z() >= neck - WRITTEN, at::toString);
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void rapidMovesAreAboveTheSolidAndCutsAreOnlyAsDeepAsAPass(Job job) {
        double corners = job.built().panels().stream()
                .mapToDouble(panel -> Math.hypot(
                        panel.faceDistance(),
                        Math.sqrt(Math.pow(panel.cornerRadius(), 2) - Math.pow(panel.jointDistance(), 2))))
                .max()
                .orElse(0);
        Position before = null;
        for (Position at : job.run()) {
            if (at.motion() == 0) {
                assertTrue(at.z() > corners, at::toString);
                assertTrue(before == null || before.x() == at.x() || before.z() == at.z(), "one axis at a time");
            }
            before = at;
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void timesAndTurnsAreThoseOfTheAnswer(Job job) {
        List<Position> run = job.run();
        ToolPath path = job.path();
        double minutes = run.stream().mapToDouble(Position::minutes).sum();
        assertEquals(path.minutes(), minutes, 2e-3 * path.minutes());
        long turns = path.moves().stream()
                .filter(move -> move.kind() == PathMove.Kind.TURN)
                .count();
        assertEquals(360.0 * turns, run.get(run.size() - 1).a(), 1e-6);
        assertEquals(path.lowest(), run.stream().mapToDouble(Position::z).min().orElse(0), WRITTEN);
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

    @ParameterizedTest
    @CsvSource({
        "STICK_OUT, /cutter/stickOut, HOLDER_HITS",
        "LIMIT, /limits/highest, BEYOND_LIMIT",
        "RIM, /cutter/rimRadius, RIM_DOES_NOT_FIT",
        "NO_RIM, /cutter/rimRadius, RIM_DOES_NOT_FIT",
        "WIDE, /cutter/diameter, CUTTER_TOO_WIDE",
        "MANY, /scallop, TOO_MANY_MOVES"
    })
    void whatDoesNotSufficeIsRefused(String what, String path, String code) {
        Designs lantern = Designs.example("dodecahedron-with-land");
        CutterRequest cutter = switch (what) {
            case "STICK_OUT" -> new CutterRequest(CutterShape.BALL, 12.0, null, 20.0, 40.0);
            case "RIM" -> cutter(CutterShape.BALL, 12, 2.0);
            case "NO_RIM" -> cutter(CutterShape.BULL_NOSE, 12, null);
            case "WIDE" -> cutter(CutterShape.FLAT, 90, null);
            case "MANY" -> cutter(CutterShape.BALL, 0.1, null);
            default -> cutter(CutterShape.BALL, 12, null);
        };
        PathRequest request = new PathRequest(
                lantern.request(),
                Machine.ROTARY,
                null,
                null,
                cutter,
                what.equals("MANY") ? 0.001 : 0.1,
                what.equals("MANY") ? 0.05 : 4.0,
                null,
                1000.0,
                9000.0,
                8.0,
                null,
                what.equals("LIMIT") ? new LimitsRequest(200.0, 200.0, 90.0, 0.0) : null);
        var refused =
                assertThrows(ImpossibleDesignException.class, () -> PathCalculator.path(request, lantern.build()));
        assertEquals(path, refused.violations().get(0).path());
        assertEquals(code, refused.violations().get(0).code());
    }
}
