package org.orbwright.band;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.orbwright.band.WidthSolution.Seen;
import org.orbwright.band.WidthSolution.Sensitivity;
import org.orbwright.band.WidthSolution.SolvedBand;
import org.orbwright.band.WidthSolution.SolvedWish;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.SphereKind;
import org.orbwright.design.SphereSet;
import org.orbwright.quantity.Quantity;
import org.orbwright.quantity.Rounding;

/**
 * Finds the flat widths that give what is wished to be seen, on all kinds of spheres at once. Wishes that can all come
 * true do, to 1e-9 of themselves or 1e-11 of what the band could show at most. Else the {@link Compromise} says what it
 * reached and what it proved.
 */
public final class WidthSolver {
    /** Step of the central difference for sensitivities, as a share of the lamination; its error is its square. */
    private static final double DIFFERENCE = 1e-5;
    /** Further decimals of what is shown, and of the most, are beyond what they are found to. */
    private static final int SHOWN_DECIMALS = 9;

    private static final int MOST_DECIMALS = 6;
    private static final int PROVED_DECIMALS = 6;

    private final WishedDesign wished;
    private final LaminationView view;
    private final Rests rests;
    private final Compromise compromise;
    private final double[] cuts;

    private WidthSolver(WishedDesign wished) {
        this.wished = wished;
        this.view = wished.view();
        this.rests = wished.rests();
        CutSearch search = search(wished.step());
        if (!search.hasRoom()) {
            throw wished.tooNarrow(search(0).hasRoom());
        }
        this.compromise = new Compromise(search, wished.wishes());
        this.cuts = compromise.cuts();
    }

    /**
     * The widths for a list of wishes.
     *
     * @param request a section that keeps its Bean Validation constraints
     * @param design the design; the widths that are looked for may be left out
     * @throws ImpossibleDesignException if the design cannot exist, or a wish could not even come true alone
     */
    public static SolvedDesign solve(SolveRequest request, DesignRequest design) {
        return new WidthSolver(WishedDesign.of(request, design)).solution();
    }

    private CutSearch search(double step) {
        return new CutSearch(wished.wishes(), rests, view.width(), step, wished.smallestWidth());
    }

    private SolvedDesign solution() {
        DesignRequest design = wished.designWith(cuts);
        Set<SphereSet> sets = sets(Design.of(design));
        List<SolvedBand> bands = new ArrayList<>();
        for (int band = 0; band < rests.bands(); band++) {
            bands.add(band(band, sets));
        }
        double worst = compromise.worst();
        Compromise stepless = wished.step() > 0 ? new Compromise(search(0), wished.wishes()) : null;
        // What no widths keep to, no widths in the step keep to either.
        double proved = stepless == null ? compromise.proved() : Math.max(compromise.proved(), stepless.proved());
        WidthSolution widths = new WidthSolution(
                wished.face(),
                wished.set(),
                worst,
                Rounding.down(Math.min(worst, proved), PROVED_DECIMALS),
                stepless == null ? null : Double.valueOf(Math.min(worst, stepless.worst())),
                stepless == null ? null : Double.valueOf(Rounding.down(stepless.proved(), PROVED_DECIMALS)),
                bands,
                wishes());
        return new SolvedDesign(design, widths);
    }

    /** The kinds of spheres that are made, or that a wish is about. */
    private Set<SphereSet> sets(Design design) {
        Set<SphereSet> sets = EnumSet.noneOf(SphereSet.class);
        Panel panel = wished.panelOf(design);
        for (BandSet set : design.setsOf(panel)) {
            sets.add(SphereSet.valueOf(set.name()));
        }
        if (panel.lamination().sets() == 2) {
            design.spheres().stream().map(SphereKind::set).forEach(sets::add);
        }
        wished.wishes().forEach(wish -> sets.add(wish.set()));
        return sets;
    }

    private SolvedBand band(int band, Set<SphereSet> sets) {
        double width = cuts[band + 1] - cuts[band];
        List<Seen> seen = sets.stream()
                .map(set -> view.seen(set, cuts[band], cuts[band + 1]))
                .toList();
        boolean rest = rests.takes(band);
        boolean counted = wished.step() > 0 && !rest;
        Integer steps = counted ? Integer.valueOf((int) Math.rint(width / wished.step())) : null;
        return new SolvedBand(band + 1, wished.species(band), width, steps, rest, seen);
    }

    private List<SolvedWish> wishes() {
        List<Double> without = compromise.worstWithout();
        List<Double> most = compromise.most();
        return wished.wishes().stream()
                .map(wish -> wish(wish, most.get(wish.index()), without.get(wish.index())))
                .toList();
    }

    private SolvedWish wish(Wish wish, Double most, Double without) {
        double factor = wished.factor(wish);
        return new SolvedWish(
                wish.written() + 1,
                wish.band() + 1,
                wish.set(),
                wish.measure(),
                wish.value() * factor,
                Rounding.round(wish.shown(cuts) * factor, SHOWN_DECIMALS),
                compromise.deviation(wish),
                most == null ? null : Double.valueOf(Rounding.down(most * factor, MOST_DECIMALS)),
                without,
                sensitivities(wish));
    }

    private List<Sensitivity> sensitivities(Wish wish) {
        List<Sensitivity> sensitivities = new ArrayList<>();
        for (int band = 0; band < rests.bands(); band++) {
            if (!rests.takes(band)) {
                sensitivities.add(new Sensitivity(band + 1, sensitivity(wish, band)));
            }
        }
        return sensitivities;
    }

    /** A central difference; the bands of the rest give up what another band gains, in their proportion. */
    private double sensitivity(Wish wish, int wider) {
        double by = DIFFERENCE * view.width();
        for (int band = 0; band < rests.bands(); band++) {
            by = Math.min(by, (cuts[band + 1] - cuts[band]) / 2);
        }
        double change = wish.shown(moved(wider, by)) - wish.shown(moved(wider, -by));
        double perMillimetre = change / (2 * by);
        return wish.isShare() ? perMillimetre / Quantity.LENGTH.factor(wished.unit()) : perMillimetre;
    }

    /** Where cuts lie once a band is wider and the rest is narrower by as much. */
    private double[] moved(int wider, double by) {
        double[] moved = cuts.clone();
        for (int cut = 0; cut < moved.length; cut++) {
            moved[cut] += (cut > wider ? by : 0) - by * rests.before(cut);
        }
        return moved;
    }
}
