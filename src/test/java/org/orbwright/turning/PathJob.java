package org.orbwright.turning;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.stream.Stream;
import org.orbwright.design.Design;
import org.orbwright.fixture.Designs;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.PathRequest.CutterRequest;
import org.orbwright.turning.PathRequest.CutterShape;
import org.orbwright.turning.PathRequest.Machine;
import org.orbwright.turning.ProgramReader.Position;
import org.orbwright.turning.ProgramReader.Table;
import org.orbwright.turning.TurningRequest.DiscsRequest;

/** A program to run. */
record PathJob(String name, Designs designs, TurningRequest turning, PathRequest request) {
    /** No holder hits with so long a cutter. */
    private static final double LONG = 9000;

    @Override
    public String toString() {
        return name;
    }

    static PathJob of(
            Designs design,
            Machine machine,
            Through through,
            DiscsRequest discs,
            CutterRequest cutter,
            double scallop,
            double passDepth) {
        PathRequest request = new PathRequest(
                machine, cutter, scallop, passDepth, 0.3, 1200.0, 250.0, 9000.0, 16.0, true, null, null);
        return new PathJob(
                design.solid() + " " + machine + " " + through + " " + cutter.shape(),
                design,
                held(through, discs),
                request);
    }

    /**
     * A cube with its faces 50 mm and its corners 50 root 3 from the middle, to be milled to a sphere of 45 mm radius
     * with a ball of 5 mm radius, and a room of 5 mm beside its discs.
     */
    static PathJob cube(Machine machine) {
        return bare(
                TurningCalculatorTest.CUBE.diameter(90.0),
                machine,
                discs(40, 20, 5),
                cutter(CutterShape.BALL, 10, null),
                0.5,
                10);
    }

    /** Nothing is left on the sphere, and no pass goes in air. */
    static PathJob bare(
            Designs design,
            Machine machine,
            DiscsRequest discs,
            CutterRequest cutter,
            double scallop,
            double passDepth) {
        return of(design, machine, Through.FACE, discs, cutter, scallop, passDepth)
                .with("leave", null)
                .with("airPass", null);
    }

    private static TurningRequest held(Through through, DiscsRequest discs) {
        return held(new AxisRequest(through, 1), discs);
    }

    private static TurningRequest held(AxisRequest axis, DiscsRequest discs) {
        return new TurningRequest(axis, discs, null, null, null, null, null);
    }

    static CutterRequest cutter(CutterShape shape, double diameter, Double rim) {
        return new CutterRequest(shape, diameter, rim, null, LONG, 3 * diameter);
    }

    static DiscsRequest discs(double diameter, double neck, double clearance) {
        return new DiscsRequest(diameter, neck, clearance, null, null);
    }

    /** Jobs on both machines, with all cutters, small and large discs, in both units. */
    static Stream<PathJob> all() {
        CutterRequest ball = cutter(CutterShape.BALL, 12, null);
        CutterRequest small = cutter(CutterShape.BALL, 6, null);
        CutterRequest bull = cutter(CutterShape.BULL_NOSE, 10, 2.0);
        CutterRequest flat = cutter(CutterShape.FLAT, 8, null);
        Designs lantern = Designs.example("dodecahedron-with-land");
        Designs inches = lantern.times(1 / 25.4).in(LengthUnit.IN);
        Designs tetrahedron = Designs.of("tetrahedron");
        return Stream.of(
                of(lantern, Machine.ROTARY, Through.FACE, discs(80, 50, 5), ball, 0.1, 6),
                of(lantern, Machine.ROTARY, Through.FACE, discs(104, 104, 8), ball, 0.1, 6),
                of(lantern, Machine.ROTARY, Through.FACE, discs(300, 40, 5), ball, 0.1, 6),
                of(lantern, Machine.ROTARY, Through.CORNER, discs(40, 30, 4), bull, 0.1, 6),
                of(lantern, Machine.ROTARY, Through.FACE, discs(60, 40, 5), flat, 0.2, 6),
                of(lantern, Machine.THREE_AXIS, Through.FACE, null, ball, 0.1, 6),
                of(lantern, Machine.THREE_AXIS, Through.EDGE, null, bull, 0.1, 6),
                of(lantern, Machine.THREE_AXIS, Through.FACE, null, flat, 0.2, 6),
                of(lantern, Machine.THREE_AXIS, Through.FACE, discs(40, 40, 100), ball, 0.2, 12),
                of(Designs.of("truncated-icosahedron"), Machine.ROTARY, Through.FACE, discs(40, 30, 4), bull, 0.05, 6),
                of(
                        Designs.of("truncated-icosidodecahedron"),
                        Machine.ROTARY,
                        Through.FACE,
                        discs(40, 30, 4),
                        small,
                        0.2,
                        5),
                of(Designs.of("cube"), Machine.ROTARY, Through.FACE, discs(70, 40, 6), ball, 0.1, 2),
                of(tetrahedron, Machine.ROTARY, Through.FACE, discs(60, 40, 6), small, 0.3, 5),
                of(tetrahedron, Machine.ROTARY, Through.CORNER, discs(70, 40, 6), ball, 0.3, 10),
                of(Designs.of("octahedron"), Machine.ROTARY, Through.CORNER, null, ball, 0.3, 10),
                of(Designs.of("rhombic-triacontahedron"), Machine.THREE_AXIS, Through.CORNER, null, ball, 0.02, 6),
                new PathJob(
                        "in inches",
                        inches,
                        held(Through.FACE, discs(3, 2, 0.2)),
                        new PathRequest(
                                Machine.ROTARY,
                                cutter(CutterShape.BALL, 0.5, null),
                                0.004,
                                0.25,
                                0.01,
                                50.0,
                                null,
                                9000.0,
                                0.8,
                                null,
                                null,
                                null)));
    }

    boolean rotary() {
        return request.machine() == Machine.ROTARY;
    }

    Design built() {
        return designs.build();
    }

    ToolPath path() {
        return PathCalculator.path(request, turning, built());
    }

    String program() {
        return ProgramWriter.write(
                request, turning, built(), path(), List.of(new Notice(Notice.Kind.WARN, "TEST", "a (test); 100 %")));
    }

    List<Position> run() {
        return run(Table.COUNTS_ON);
    }

    /** The run of its program, with circles as rings however they are written. */
    List<Position> run(Table table) {
        return SegmentedRings.joined(ProgramReader.run(program(), table), halfStep());
    }

    /** Half of the last decimal that lengths are written to, in millimetres. */
    double halfStep() {
        return request.filled(built().unit()).control().halfStep(built().unit());
    }

    Cutter cutter() {
        return Cutter.of(request.filled(built().unit()).cutter(), built());
    }

    /** A cutter that is as much smaller as the path has to stand, with the same rim. */
    Cutter smallest() {
        double undersize = millimetres(request.filled(built().unit()).cutter().undersize());
        return new Cutter(cutter().radius() - undersize / 2, cutter().corner(), 0);
    }

    double millimetres(double stated) {
        return built().unit().toMillimetres(stated);
    }

    Holding holding() {
        return holding(path().sphere());
    }

    Holding holding(double sphere) {
        return HoldingCalculator.discs(turning.filled(built().unit()), built(), sphere);
    }

    double room() {
        return millimetres(turning.filled(built().unit()).discs().clearance());
    }

    /** From the centre to the farthest corner, by the corners themselves. */
    double corners() {
        return built().panels().stream()
                .mapToDouble(panel -> Math.hypot(
                        panel.faceDistance(),
                        Math.sqrt(Math.pow(panel.cornerRadius(), 2) - Math.pow(panel.jointDistance(), 2))))
                .max()
                .orElse(0);
    }

    /** The same job with one component of its request, or its discs or axis, changed, by its name. */
    PathJob with(String component, Object value) {
        if (component.equals("discs")) {
            return new PathJob(name, designs, held(turning.axis(), (DiscsRequest) value), request);
        }
        if (component.equals("axis")) {
            return new PathJob(name, designs, held((AxisRequest) value, turning.discs()), request);
        }
        RecordComponent[] parts = PathRequest.class.getRecordComponents();
        try {
            Object[] values = new Object[parts.length];
            Class<?>[] types = new Class<?>[parts.length];
            for (int i = 0; i < parts.length; i++) {
                types[i] = parts[i].getType();
                values[i] = parts[i].getName().equals(component)
                        ? value
                        : parts[i].getAccessor().invoke(request);
            }
            return new PathJob(
                    name,
                    designs,
                    turning,
                    PathRequest.class.getConstructor(types).newInstance(values));
        } catch (ReflectiveOperationException e) {
            throw new LinkageError(e.getMessage(), e);
        }
    }
}
