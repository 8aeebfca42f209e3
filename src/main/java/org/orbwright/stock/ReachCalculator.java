package org.orbwright.stock;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.BlankRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.DesignRequest.SizeRequest;
import org.orbwright.design.DesignRequest.SphereRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;
import org.orbwright.segment.BlankLengths;
import org.orbwright.stock.Rack.Stock;
import org.orbwright.stock.Reach.BlankReach;
import org.orbwright.stock.Reach.CopiesReach;
import org.orbwright.stock.Reach.PurchaseReach;
import org.orbwright.stock.Reach.SizeReach;
import org.orbwright.stock.Reach.TriedBlank;
import org.orbwright.stock.StockPlan.PlanProof;
import org.orbwright.stock.StripPlanner.Strips;
import org.orbwright.stock.WoodPlanner.WoodPlan;

/**
 * Finds out what the boards at hand give, by planning one design after the other. A smaller size needs no more strips
 * and none that is wider, and fewer copies need fewer strips, so that the largest size and the most copies are found by
 * halving; where a size or a number is proved impossible, all that is larger is.
 */
public final class ReachCalculator {
    private static final double SMALLEST_FACTOR = 0.1;
    private static final double LARGEST_FACTOR = 10;
    /** By what factor a size is changed until one that can be cut and one that cannot are known. */
    private static final double STEP = 1.3;
    /** Decimals of small sizes. */
    private static final int FINEST = 4;
    /** The two are brought as near to each other as this. */
    private static final double NEAR = 1.002;

    private static final int MOST_COPIES = 1000;
    private static final int MOST_LENGTHS = 5;
    private static final int MOST_PURCHASES = 8;
    /** Work of it all, in that of one plan. */
    private static final double TIMES_A_PLAN = 3;
    /** Shares of the work that is left: for each of the searches, and for one plan within a search. */
    private static final double FOR_SIZE = 0.3;

    private static final double FOR_COPIES = 0.35;
    private static final double FOR_BLANKS = 0.6;
    private static final double FOR_TRIALS = 0.8;
    private static final double OF_WHAT_IS_LEFT = 0.12;
    private static final double FOR_ANSWER = 0.5;

    private static final Comparator<TriedBlank> BEST_FIRST = Comparator.comparing(TriedBlank::missing)
            .thenComparing(TriedBlank::seams)
            .thenComparing(TriedBlank::boardFeet)
            .thenComparing(TriedBlank::length, Comparator.reverseOrder());

    private final StockRequest request;
    /** The boards on the rack alone. */
    private final StockRequest rack;

    private final DesignRequest written;
    private final Design design;
    private final LengthUnit unit;
    private final Effort effort;

    private ReachCalculator(StockRequest request, DesignRequest written, Design design) {
        this.request = request;
        this.rack = request.withOffers(List.of());
        this.written = written;
        this.design = design;
        this.unit = design.unit();
        this.effort = Effort.of(request.search(), TIMES_A_PLAN);
    }

    /**
     * Finds out what boards give. The section keeps its Bean Validation constraints. In the design as it was written,
     * bands without a width take up the rest.
     */
    public static Reach reach(StockRequest asked, DesignRequest written, Design design) {
        design.require("the strips depend", DesignPart.values());
        StockRequest request = asked.filled(design.request().saw().kerf());
        StockCalculator.requireFewBoards(request);
        return new ReachCalculator(request, written, design).reach();
    }

    private Reach reach() {
        SizeReach size = size(this::inProportion, effort.share(FOR_SIZE));
        SizeReach restBands = hasRestBands() ? size(this::withRestBands, effort.share(FOR_SIZE)) : null;
        CopiesReach copies = copies(effort.share(FOR_COPIES));
        BlankReach blank = blank(effort.share(FOR_BLANKS));
        PurchaseReach purchase = purchase(copies.most());
        return new Reach(size, restBands, copies, blank, purchase, effort.endedByClock());
    }

    private boolean hasRestBands() {
        return written.laminations().stream()
                .allMatch(lamination -> lamination.bands().stream().anyMatch(band -> band.width() == null));
    }

    /** The design at another size, with every band but the widest one as much larger; that one takes up the rest. */
    private DesignRequest inProportion(double factor) {
        List<LaminationRequest> laminations = new ArrayList<>();
        for (LaminationRequest lamination : design.request().laminations()) {
            BandRequest widest = lamination.bands().stream()
                    .max(Comparator.comparing(BandRequest::width))
                    .orElseThrow();
            int rest = lamination.bands().indexOf(widest);
            List<BandRequest> bands = new ArrayList<>();
            for (BandRequest band : lamination.bands()) {
                bands.add(new BandRequest(band.species(), bands.size() == rest ? null : band.width() * factor));
            }
            laminations.add(lamination.withBands(bands));
        }
        return withRestBands(factor).withLaminations(laminations);
    }

    private DesignRequest withRestBands(double factor) {
        SizeRequest size = new SizeRequest(written.size().by(), written.size().value() * factor);
        SphereRequest sphere = written.sphere();
        SphereRequest larger = sphere == null || sphere.diameter() == null
                ? sphere
                : new SphereRequest(sphere.diameter() * factor, sphere.turningAllowance(), sphere.minimumWall());
        return written.withSphere(size, larger);
    }

    /** What is known of a design: a plan without missing strips, or null, and whether there is proved to be none. */
    private record Known(Strips strips, boolean impossible) {
        private static final Known NOTHING = new Known(null, false);
    }

    private SizeReach size(DoubleFunction<DesignRequest> scaled, Effort share) {
        double possible = 0;
        double beyond = Double.POSITIVE_INFINITY;
        double impossible = Double.POSITIVE_INFINITY;
        double factor = 1;
        Strips strips = null;
        double value = written.size().value();
        while (factor >= SMALLEST_FACTOR && factor <= LARGEST_FACTOR && beyond > possible * NEAR && !share.isSpent()) {
            Known known = known(scaled.apply(factor), share.share(OF_WHAT_IS_LEFT));
            if (known.strips() != null) {
                possible = factor;
                strips = known.strips();
            } else {
                beyond = factor;
                impossible = known.impossible() ? factor : impossible;
            }
            factor = next(value, possible, beyond);
        }
        StockPlan plan = possible == 0 ? null : answered(scaled.apply(possible), strips, share);
        return new SizeReach(
                written.size().by(),
                possible == 0 ? null : unit.toMillimetres(value * possible),
                Double.isInfinite(impossible) ? null : unit.toMillimetres(value * impossible),
                plan);
    }

    /** The next size to be tried, rounded to a length that can be written down unless that is one of the two again. */
    private double next(double value, double possible, double beyond) {
        double next = possible == 0
                ? beyond / STEP
                : Double.isInfinite(beyond) ? possible * STEP : Math.sqrt(possible * beyond);
        double rounded = Rounding.down(value * next, unit == LengthUnit.MM ? 1 : 3) / value;
        return rounded > possible && rounded < beyond ? rounded : Rounding.down(value * next, FINEST) / value;
    }

    private StockPlan answered(DesignRequest changed, Strips known, Effort share) {
        return StockCalculator.plan(rack, Design.of(changed), share.share(FOR_ANSWER), known);
    }

    private Known known(DesignRequest changed, Effort share) {
        try {
            StripsAndBoards needs = new StripsAndBoards(rack, Design.of(changed));
            if (needs.yields().laminations().stream().anyMatch(lamination -> lamination.blanks() == null)) {
                return Known.NOTHING;
            }
            Strips strips = new StripPlanner(needs, needs.woods(), List.of(CuttingAim.MISSING), share).plan();
            if (strips.missing(needs) == 0) {
                return new Known(strips, false);
            }
            boolean proved = strips.woods().values().stream()
                    .mapToLong((WoodPlan wood) -> wood.bound(CuttingAim.MISSING))
                    .anyMatch(bound -> bound > 0);
            return new Known(null, proved);
        } catch (ImpossibleDesignException impossible) {
            return Known.NOTHING;
        }
    }

    private CopiesReach copies(Effort share) {
        int possible = 0;
        int beyond = MOST_COPIES + 1;
        int impossible = 0;
        Strips strips = null;
        int count = design.copies();
        while (beyond - possible > 1 && !share.isSpent()) {
            Known known = known(written.withCopies(count), share.share(OF_WHAT_IS_LEFT));
            if (known.strips() != null) {
                possible = count;
                strips = known.strips();
            } else {
                beyond = count;
                impossible = known.impossible() ? count : impossible;
            }
            count = beyond > MOST_COPIES ? Math.min(MOST_COPIES, 2 * count) : (possible + beyond) / 2;
        }
        StockPlan plan = possible == 0 ? null : answered(written.withCopies(possible), strips, share);
        return new CopiesReach(possible, impossible == possible + 1, plan);
    }

    private BlankReach blank(Effort share) {
        List<Design> blanks = blanks();
        List<TriedBlank> tried = new ArrayList<>();
        Effort forTrials = share.share(FOR_TRIALS);
        for (Design one : blanks) {
            if (tried.isEmpty() || !forTrials.isSpent()) {
                tried.add(tried(one, forTrials.share(1.0 / (blanks.size() - tried.size()))));
            }
        }
        TriedBlank best = tried.stream().min(BEST_FIRST).orElseThrow();
        StockRequest seams = rack.withAim(StockAim.SEAMS);
        StockPlan plan = StockCalculator.plan(seams, blanks.get(tried.indexOf(best)), share);
        return new BlankReach(best.length(), tried, plan);
    }

    private TriedBlank tried(Design one, Effort share) {
        StripsAndBoards needs = new StripsAndBoards(rack, one);
        Strips strips = new StripPlanner(needs, needs.woods(), CuttingAim.inOrder(StockAim.SEAMS), share).plan();
        Collection<WoodPlan> woods = strips.woods().values();
        int missing = strips.missing(needs);
        boolean kept = missing
                == woods.stream()
                        .mapToLong(wood -> wood.count(CuttingAim.MISSING))
                        .sum();
        return new TriedBlank(
                one.blankLength(),
                missing,
                (int) woods.stream()
                        .mapToLong(wood -> wood.count(CuttingAim.SEAMS))
                        .sum(),
                woods.stream().mapToLong(wood -> wood.count(CuttingAim.WASTE)).sum(),
                kept && woods.stream().allMatch(wood -> wood.proof() == PlanProof.EVERY_PLAN));
    }

    /** The design with its own blanks, and with shorter ones for each smaller number of segments. */
    private List<Design> blanks() {
        List<Design> designs = new ArrayList<>(List.of(design));
        double length = BlankLengths.shortest(design);
        for (int i = 0; i < MOST_LENGTHS && length > 0; i++) {
            Design one = withBlank(length);
            if (length < design.blankLength() - unit.toMillimetres(BlankLengths.STEP)) {
                designs.add(one);
            }
            length = BlankLengths.next(one);
        }
        return designs.stream().filter(one -> isPlanned(one)).toList();
    }

    private boolean isPlanned(Design one) {
        try {
            return one.equals(design)
                    || !new StripsAndBoards(rack, one).blanks().isEmpty();
        } catch (ImpossibleDesignException impossible) {
            return false;
        }
    }

    private Design withBlank(double length) {
        return Design.of(written.withBlank(new BlankRequest(unit.fromMillimetres(length))));
    }

    private PurchaseReach purchase(int copies) {
        int wanted = Math.max(design.copies(), copies + 1);
        if (wanted > MOST_COPIES) {
            return null;
        }
        DesignRequest more = written.withCopies(wanted);
        int without = missing(rack, more);
        PurchaseReach best = null;
        for (Stock one : sizes(more)) {
            int with = effort.isSpent() ? without : missing(withOne(one), more);
            if (with < (best == null ? without : best.missingThen())) {
                best = new PurchaseReach(one.boardNumber(), one.offerNumber(), wanted, without, with);
            }
        }
        return best;
    }

    private StockRequest withOne(Stock one) {
        return one.offer() < 0
                ? rack.withOneMore(one.index(), -1)
                : rack.withOffers(List.of(request.offers().get(one.offer()).withMost(1)));
    }

    /** The largest boards and offers, the smallest of them first. */
    private List<Stock> sizes(DesignRequest more) {
        return new StripsAndBoards(request, Design.of(more))
                .woods().values().stream()
                        .flatMap(wood -> wood.stock().stream())
                        .sorted(Comparator.comparing(Stock::volume).reversed())
                        .limit(MOST_PURCHASES)
                        .sorted(Comparator.comparing(Stock::volume))
                        .toList();
    }

    private int missing(StockRequest changed, DesignRequest more) {
        StripsAndBoards needs = new StripsAndBoards(changed, Design.of(more));
        return new StripPlanner(needs, needs.woods(), List.of(CuttingAim.MISSING), effort.share(OF_WHAT_IS_LEFT))
                .plan()
                .missing(needs);
    }
}
