package org.orbwright.band;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.band.WidthSolution.Rounded;
import org.orbwright.band.WidthSolution.Seen;
import org.orbwright.band.WidthSolution.Sensitivity;
import org.orbwright.band.WidthSolution.SolvedBand;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.quantity.Quantity;

/**
 * Finds the flat widths that give what is wished to be seen, exact to 1e-12 of the lamination's width. Bands of the
 * rest share what the others leave.
 */
public final class WidthSolver {
    /** Step of the central difference for sensitivities, as a share of the lamination; its error is its square. */
    private static final double DIFFERENCE = 1e-5;

    private final WishedDesign wished;
    private final LaminationView view;
    private final EdgeSolver solver;
    /** Depth at which each band starts, seen from the base in the chosen set, and where the last one ends. */
    private final double[] edges;

    private final int count;
    private final int first;
    private final int last;

    private WidthSolver(WishedDesign wished) {
        this.wished = wished;
        this.view = wished.view();
        this.solver = new EdgeSolver(wished, view);
        this.count = wished.count();
        this.first = wished.firstRest();
        this.last = wished.lastRest();
        this.edges = solver.solve();
    }

    /**
     * The widths for a list of wishes.
     *
     * @param request a section that keeps its Bean Validation constraints
     * @param design the design; the widths that are looked for may be left out
     * @throws ImpossibleDesignException if the design cannot exist or a wish cannot come true
     */
    public static SolvedDesign solve(SolveRequest request, DesignRequest design) {
        return new WidthSolver(WishedDesign.of(request, design)).solution();
    }

    private SolvedDesign solution() {
        double[] rounded = rounded();
        List<SolvedBand> bands = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            bands.add(band(wished.place(number), rounded));
        }
        double[] used = rounded.length == 0 ? edges : rounded;
        return new SolvedDesign(wished.designWith(used), new WidthSolution(wished.face(), wished.set(), bands));
    }

    private Seen seen(double from, double to) {
        return new Seen(view.edgeMiddle(from, to), view.corner(from, to), view.share(from, to));
    }

    private SolvedBand band(int i, double[] rounded) {
        boolean isRest = wished.isRest(i);
        return new SolvedBand(
                wished.number(i),
                wished.species(i),
                wished.measure(i),
                edges[i + 1] - edges[i],
                seen(edges[i], edges[i + 1]),
                isRest ? null : Double.valueOf(wished.toWishUnit(i, reached(i) - wished.value(i))),
                isRest ? null : Double.valueOf(wished.toWishUnit(i, solver.most(i))),
                sensitivities(i),
                rounded.length == 0
                        ? null
                        : new Rounded(rounded[i + 1] - rounded[i], seen(rounded[i], rounded[i + 1])));
    }

    private double reached(int i) {
        return solver.measure(i, edges[i], edges[i + 1]);
    }

    private List<Sensitivity> sensitivities(int i) {
        List<Sensitivity> sensitivities = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            int other = wished.place(number);
            if (!wished.isRest(other)) {
                sensitivities.add(new Sensitivity(wished.number(other), sensitivity(i, other)));
            }
        }
        return sensitivities;
    }

    /** A central difference; the bands of the rest give up what another band gains, in their proportion. */
    private double sensitivity(int i, int other) {
        double step = DIFFERENCE * view.width();
        double change = measured(i, other, step) - measured(i, other, -step);
        double perMillimetre = change / (2 * step);
        return wished.isShare(i) ? perMillimetre / Quantity.LENGTH.factor(wished.unit()) : perMillimetre;
    }

    private double measured(int i, int wider, double by) {
        return solver.measure(i, moved(i, wider, by), moved(i + 1, wider, by));
    }

    /** Where an edge lies once a band is wider and the rest is narrower by as much. */
    private double moved(int edge, int wider, double by) {
        double before = 0;
        for (int i = first; i < Math.min(edge, last + 1); i++) {
            before += wished.part(i);
        }
        double gained = edge > wider ? by : 0;
        return edges[edge] + (gained - by * (edge > last ? 1 : before));
    }

    /** The edges after rounding every width but the rest to the shop's step; empty without a step. */
    private double[] rounded() {
        double step = wished.step();
        if (step == 0) {
            return new double[0];
        }
        double[] rounded = edges.clone();
        for (int i = 0; i < first; i++) {
            rounded[i + 1] = rounded[i] + toStep(edges[i + 1] - edges[i], step);
        }
        for (int i = count - 1; i > last; i--) {
            rounded[i] = rounded[i + 1] - toStep(edges[i + 1] - edges[i], step);
        }
        double rest = rounded[last + 1] - rounded[first];
        for (int i = first; i <= last; i++) {
            rest -= wished.isRest(i) ? 0 : toStep(edges[i + 1] - edges[i], step);
        }
        if (rest < wished.smallestRest()) {
            throw wished.impossible(
                    "/solve/step",
                    "STEP_TOO_COARSE",
                    "Rounded to " + wished.say(step) + " the widths leave nothing for the rest.",
                    wished.shown(step),
                    "a finer step");
        }
        for (int i = first; i < last; i++) {
            double width = wished.isRest(i) ? rest * wished.part(i) : toStep(edges[i + 1] - edges[i], step);
            rounded[i + 1] = rounded[i] + width;
        }
        return rounded;
    }

    private static double toStep(double width, double step) {
        return Math.max(step, Math.rint(width / step) * step);
    }
}
