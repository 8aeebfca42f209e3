package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.orbwright.turning.ProgramReader.Position;
import org.orbwright.turning.ProgramReader.Table;

/**
 * Runs a program on a model of stock, discs, cutter and holder. The model is the section through the axis of the work
 * and the cutter: on a rotary table straight moves run in it, and all its turns are whole ones; on three axes circles
 * cut on both sides of the axis.
 */
final class PathSimulation {
    /** In millimetres: programs are written to four decimals where no others are asked for. */
    static final double WRITTEN = 2e-4;
    /** Places along the section. */
    private static final double GRID = 0.1;
    /** What the cutter's rim falls between two places, and the stock's slope there: less than this. */
    private static final double GRID_ERROR = 0.06;

    private final PathJob job;
    private final boolean rotary;
    private final Cutter cutter;
    private final ToolPath path;
    private final Holding holding;
    private final List<Position> run;
    private final double corners;
    private final double written;
    private final List<Position> rings;
    /** The same rings as bare numbers, which many thousands of looks at them take. */
    private final double[] ringX;

    private final double[] ringZ;
    private final double farthest;

    /** Runs a program on a table that counts on. */
    PathSimulation(PathJob job) {
        this(job, Table.COUNTS_ON);
    }

    /** Runs a program. */
    PathSimulation(PathJob job, Table table) {
        this.job = job;
        this.rotary = job.rotary();
        this.cutter = job.cutter();
        this.path = job.path();
        this.holding = job.holding();
        this.run = job.run(table);
        this.written = Math.max(WRITTEN, 3 * job.halfStep());
        this.corners = job.corners();
        this.rings = rings();
        this.ringX = rings.stream().mapToDouble(Position::x).toArray();
        this.ringZ = rings.stream().mapToDouble(Position::z).toArray();
        this.farthest = 4 * job.millimetres(job.request().scallop()) + cutter.overlap();
    }

    /** Height of the cutter's lower end over its tip, at a distance from its middle; beyond it there is none. */
    static double below(Cutter cutter, double distance) {
        double out = Math.abs(distance) - cutter.flat();
        if (out > cutter.corner() + 1e-12) {
            return Double.POSITIVE_INFINITY;
        }
        return out <= 0 ? 0 : cutter.corner() - Math.sqrt(Math.max(0, cutter.corner() * cutter.corner() - out * out));
    }

    /** Where the wood is cut all around: in rings, and in the axis itself. */
    List<Position> rings() {
        return run.stream()
                .filter(at -> at.ring() || (!rotary && at.motion() == 1 && at.x() == 0))
                .toList();
    }

    /**
     * How far beyond the sphere the wood still stands at a latitude once a cutter has run all rings: bisection on the
     * way out. A fin stands as far as is looked for.
     */
    double standing(Cutter cut, double latitude) {
        double sphere = path.sphere();
        double low = sphere - 0.01;
        double high = sphere + farthest;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            double x = middle * (rotary ? Math.sin(latitude) : Math.cos(latitude));
            double z = middle * (rotary ? Math.cos(latitude) : Math.sin(latitude));
            boolean gone = isGone(cut, x, z);
            low = gone ? low : middle;
            high = gone ? middle : high;
        }
        return low - sphere;
    }

    /** Whether a ring of a cutter takes a place away. */
    private boolean isGone(Cutter cut, double x, double z) {
        for (int i = 0; i < ringX.length; i++) {
            if (z > ringZ[i] + below(cut, x - ringX[i])) {
                return true;
            }
        }
        return false;
    }

    /** Every position, and positions between those of a straight move. */
    private List<Position> dense() {
        List<Position> dense = new ArrayList<>();
        Position before = run.get(0);
        for (Position to : run.subList(1, run.size())) {
            for (int i = 1; i <= 20; i++) {
                double s = i / 20.0;
                dense.add(to.at(before.x() + s * (to.x() - before.x()), before.z() + s * (to.z() - before.z())));
            }
            before = to;
        }
        return dense;
    }

    void cutterNeverGoesIntoTheSphere() {
        for (Position at : dense()) {
            for (int i = -40; i <= 40; i++) {
                double across = cutter.radius() * i / 40;
                // About X the wood turns, and what the cutter does at its middle it does all around; on three axes it
                // runs in circles about Z. Either way the section through the axis and the cutter tells all.
                double x = at.x() + across;
                double z = at.z() + below(cutter, across);
                double from = rotary || z >= 0 ? Math.hypot(x, z) : Math.abs(x);
                assertTrue(from >= path.sphere() - written, () -> at + " cuts at " + from + " of " + path.sphere());
            }
        }
    }

    void cutterStaysClearOfDiscsAndNecks() {
        double room = job.room();
        Double stated =
                job.turning().discs() == null ? null : job.turning().discs().neck();
        double head = stated == null ? holding.head().disc() : job.millimetres(stated);
        double tail = stated == null ? holding.tail().disc() : job.millimetres(stated);
        for (Position at : dense()) {
            if (!rotary) {
                assertTrue(at.z() >= -(holding.tail().seatDistance() - room) - written, at::toString);
                continue;
            }
            if (at.z() < holding.head().disc() / 2) {
                assertTrue(at.x() + cutter.radius() <= holding.head().seatDistance() - room + written, at::toString);
            }
            if (at.z() < holding.tail().disc() / 2) {
                assertTrue(-at.x() + cutter.radius() <= holding.tail().seatDistance() - room + written, at::toString);
            }
            assertTrue(at.z() >= (at.x() > 0 ? head : tail) / 2 - written, at::toString);
        }
    }

    void rapidMovesAreAboveAllAndOneAxisAtATime() {
        double high = rotary
                ? Math.max(
                        corners, Math.max(holding.head().disc(), holding.tail().disc()) / 2)
                : corners;
        Position before = null;
        for (Position at : run) {
            assertTrue(before == null || at.z() <= path.clearHeight() + written, at::toString);
            if (at.motion() == 0) {
                assertTrue(at.z() > high, at::toString);
            }
            int moved = before == null
                    ? 1
                    : (before.x() == at.x() && before.y() == at.y() ? 0 : 1)
                            + (before.z() == at.z() ? 0 : 1)
                            + (before.a() == at.a() ? 0 : 1);
            assertTrue(moved <= 1, () -> "one axis at a time: " + at);
            // The table never turns back with the cutter in the work.
            assertTrue(before == null || at.a() >= before.a() || at.motion() == 0, at::toString);
            before = at;
        }
    }

    void timesAndTurnsAreThoseOfTheAnswer() {
        double minutes = run.stream().mapToDouble(Position::minutes).sum();
        assertEquals(path.minutes(), minutes, 2e-3 * path.minutes());
        long turns = path.moves().stream()
                .filter(move -> move.kind() == PathMove.Kind.TURN)
                .count();
        if (!rotary) {
            assertEquals(0, turns);
            assertEquals(1, run.stream().mapToDouble(Position::a).distinct().count(), "the table stands");
        }
        assertEquals(
                rotary ? 360.0 * turns : run.get(0).a(),
                run.stream()
                        .skip(1)
                        .filter(Position::ring)
                        .mapToDouble(Position::a)
                        .max()
                        .orElse(0),
                1e-6);
        // The first move is from where the machine was parked.
        assertEquals(path.lowest(), run.stream().mapToDouble(Position::z).min().orElse(0), written);
    }

    /** Runs the program over the stock, and checks what goes straight down, and the holder. */
    void plungesAreNoDeeperThanAPassAndTheHolderMeetsNothing() {
        double stickOut = path.stickOutNeeded() + 1e-9;
        double reach = corners + job.millimetres(job.request().clearHeight()) + 2 * cutter.radius();
        double[] stock = new double[2 * (int) Math.ceil(reach / GRID) + 1];
        Arrays.setAll(stock, i -> {
            double x = place(i, stock);
            return Math.abs(x) < corners ? Math.sqrt(corners * corners - x * x) : Double.NEGATIVE_INFINITY;
        });
        double allowed = job.millimetres(job.request().passDepth());
        Position before = run.get(0);
        for (Position at : run.subList(1, run.size())) {
            if (at.motion() > 0 && at.z() < before.z()) {
                double deep = deepest(stock, at);
                assertTrue(deep <= allowed + GRID_ERROR, () -> at + " goes " + deep + " down of " + allowed);
            }
            assertTrue(at.z() + stickOut >= underHolder(stock, at) - written, () -> at + ": the holder hits");
            int steps = at.motion() == 0 ? 0 : (int) Math.ceil(Math.abs(at.x() - before.x()) / GRID);
            for (int i = 0; i <= steps; i++) {
                double s = steps == 0 ? 1 : (double) i / steps;
                double x = before.x() + s * (at.x() - before.x());
                double z = steps == 0 ? at.z() : before.z();
                cut(stock, x, z);
                if (at.motion() == 3) {
                    cut(stock, -x, z);
                }
            }
            before = at;
        }
    }

    private static double place(int i, double[] stock) {
        return (i - stock.length / 2) * GRID;
    }

    private static int index(double x, double[] stock) {
        return Math.max(0, Math.min(stock.length - 1, (int) Math.round(x / GRID) + stock.length / 2));
    }

    private void cut(double[] stock, double x, double z) {
        for (int i = index(x - cutter.radius(), stock); i <= index(x + cutter.radius(), stock); i++) {
            stock[i] = Math.min(stock[i], z + below(cutter, place(i, stock) - x));
        }
    }

    private double deepest(double[] stock, Position at) {
        double deepest = 0;
        for (int i = index(at.x() - cutter.radius(), stock); i <= index(at.x() + cutter.radius(), stock); i++) {
            double surface = at.z() + below(cutter, place(i, stock) - at.x());
            deepest = Math.max(deepest, stock[i] - surface);
        }
        return deepest;
    }

    private double underHolder(double[] stock, Position at) {
        double holder =
                Math.max(cutter.radius(), job.millimetres(job.request().cutter().holder()) / 2);
        double highest = 0;
        for (int i = index(at.x() - holder, stock); i <= index(at.x() + holder, stock); i++) {
            double x = place(i, stock);
            // Elsewhere around the table the solid stands as it was glued, wherever the rings have not been.
            double glued = Math.abs(x) < corners ? Math.sqrt(corners * corners - x * x) : 0;
            highest = Math.max(highest, rotary ? glued : stock[i]);
        }
        if (rotary && at.x() + holder > holding.head().seatDistance()) {
            highest = Math.max(highest, holding.head().disc() / 2);
        }
        if (rotary && -at.x() + holder > holding.tail().seatDistance()) {
            highest = Math.max(highest, holding.tail().disc() / 2);
        }
        return highest;
    }
}
