package org.orbwright.stock;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.orbwright.stock.SeamedStrip.Arrangement;

/**
 * Chooses which strips are glued side by side in blanks of a kind, and where the seams of each lie, so that seams in
 * neighbouring strips keep their clearance. As few strips as can be are given up for it; then as few seams as can be
 * lie within segments. Strips side by side are a flow from band to band, which comes apart into layers of blanks.
 */
final class SeamArranger {
    /** Arrangements of a band that are looked at, all of its sets of pieces together, and the fewest of one set. */
    private static final int MOST_ARRANGEMENTS = 80;

    private static final int FEWEST_ARRANGEMENTS = 6;
    /** One strip more or less counts more than all seams of a blank's strips. */
    private static final int PER_STRIP = 1000;
    /** Far more work than it takes, and seconds that an answer has beyond its searches. */
    private static final double WORK = 0.5;

    private static final double SECONDS = 0.3;

    private final BlankKind blank;
    private final SeamRules rules;
    private final SeamZone.Pair zones;
    private final CpModel model = IntegerSearch.model();
    private final LinearExprBuilder cost = LinearExpr.newBuilder();
    private final List<List<Option>> bands = new ArrayList<>();
    private final List<List<Side>> sides = new ArrayList<>();

    /** Strips of a band that are made of pieces of the same lengths. */
    record PieceSet(List<Double> pieces, int count) {
        PieceSet {
            pieces = List.copyOf(pieces);
        }
    }

    /** Layers of blanks that are made up alike, and the strip of each band; null for one that is missing. */
    record Layers(int count, List<Arrangement> strips) {}

    /** A way to arrange a strip, and how many have it; without arrangement strips are missing. */
    private record Option(Arrangement arrangement, IntVar count) {}

    /** How many strips of two options lie side by side. */
    private record Side(int left, int right, IntVar count) {}

    private SeamArranger(BlankKind blank, SeamRules rules, SeamZone.Pair zones) {
        this.blank = blank;
        this.rules = rules;
        this.zones = zones;
    }

    /**
     * Arranges the strips of a kind of blank. Strips that are not listed are missing. It has work of its own, so that a
     * plan is never lost for want of it; it keeps to the effort's time, and notes there if that ends the choice.
     */
    static List<Layers> arrange(
            BlankKind blank, List<List<PieceSet>> bands, SeamRules rules, SeamZone.Pair zones, Effort effort) {
        boolean seams = bands.stream()
                .flatMap(List::stream)
                .anyMatch(set -> set.pieces().size() > 1);
        if (!seams) {
            return wholeStrips(blank, bands);
        }
        SeamArranger arranger = new SeamArranger(blank, rules, zones);
        for (int band = 0; band < bands.size(); band++) {
            arranger.band(band, bands.get(band));
        }
        for (int band = 1; band < bands.size(); band++) {
            arranger.sideBySide(band);
        }
        arranger.model.minimize(arranger.cost);
        Effort own = new Effort(WORK, Math.round(Math.max(SECONDS, effort.seconds()) * 1e9));
        IntegerSearch.Outcome outcome = IntegerSearch.solveNow(arranger.model, own);
        effort.spend(WORK - own.work(), own.endedByClock());
        return outcome.found() ? arranger.layers(outcome.solver()) : wholeStrips(blank, bands);
    }

    /** Layers of strips in one piece alone; where they have not enough of a band, its strip is missing. */
    private static List<Layers> wholeStrips(BlankKind blank, List<List<PieceSet>> bands) {
        List<Integer> whole = bands.stream()
                .map(sets -> sets.stream()
                        .filter(set -> set.pieces().size() == 1)
                        .mapToInt(PieceSet::count)
                        .sum())
                .toList();
        Arrangement strip = new Arrangement(List.of(blank.length()), List.of());
        List<Layers> layers = new ArrayList<>();
        int from = 0;
        while (from < blank.strips()) {
            int first = from;
            int to = whole.stream()
                    .filter(count -> count > first)
                    .min(Integer::compare)
                    .orElse(blank.strips());
            List<Arrangement> strips = new ArrayList<>();
            whole.forEach(count -> strips.add(count > first ? strip : null));
            layers.add(new Layers(to - from, strips));
            from = to;
        }
        return layers;
    }

    private void band(int band, List<PieceSet> sets) {
        SeamedStrip strip = SeamedStrip.of(blank, band, rules);
        List<Option> options = new ArrayList<>();
        LinearExprBuilder all = LinearExpr.newBuilder();
        IntVar missing = model.newIntVar(0, blank.strips(), "missing");
        cost.addTerm(missing, PER_STRIP);
        all.addTerm(missing, 1);
        options.add(new Option(null, missing));
        int most = Math.max(FEWEST_ARRANGEMENTS, MOST_ARRANGEMENTS / Math.max(1, sets.size()));
        for (PieceSet set : sets) {
            LinearExprBuilder made = LinearExpr.newBuilder();
            for (Arrangement arrangement : some(strip.arrangements(set.pieces(), zones.of(band)), most)) {
                IntVar count = model.newIntVar(0, set.count(), "arranged");
                made.addTerm(count, 1);
                all.addTerm(count, 1);
                cost.addTerm(count, arrangement.within());
                options.add(new Option(arrangement, count));
            }
            model.addLessOrEqual(made.build(), set.count());
        }
        model.addEquality(all.build(), blank.strips());
        bands.add(options);
    }

    /** So many ways to arrange a strip; with zones the best one is enough, as it is clear of all neighbours. */
    private List<Arrangement> some(List<Arrangement> all, int most) {
        return zones.equals(SeamZone.Pair.ANYWHERE)
                ? spread(all, most)
                : all.stream().min(Comparator.comparing(Arrangement::within)).stream()
                        .toList();
    }

    /** So many of a list, evenly from its first to its last. */
    private static <T> List<T> spread(List<T> all, int most) {
        List<T> some = new ArrayList<>();
        int count = Math.min(most, all.size());
        for (int i = 0; i < count; i++) {
            some.add(all.get(count == 1 ? 0 : (int) ((long) i * (all.size() - 1) / (count - 1))));
        }
        return some;
    }

    private void sideBySide(int band) {
        List<Option> before = bands.get(band - 1);
        List<Option> after = bands.get(band);
        List<Side> together = new ArrayList<>();
        List<LinearExprBuilder> left = counts(before);
        List<LinearExprBuilder> right = counts(after);
        for (int a = 0; a < before.size(); a++) {
            for (int b = 0; b < after.size(); b++) {
                if (isClear(before.get(a), after.get(b))) {
                    IntVar count = model.newIntVar(0, blank.strips(), "together");
                    left.get(a).addTerm(count, -1);
                    right.get(b).addTerm(count, -1);
                    together.add(new Side(a, b, count));
                }
            }
        }
        left.forEach(rest -> model.addEquality(rest.build(), 0));
        right.forEach(rest -> model.addEquality(rest.build(), 0));
        sides.add(together);
    }

    private static List<LinearExprBuilder> counts(List<Option> options) {
        return options.stream()
                .map(option -> LinearExpr.newBuilder().addTerm(option.count, 1))
                .toList();
    }

    private boolean isClear(Option one, Option other) {
        return one.arrangement == null
                || other.arrangement == null
                || one.arrangement.isClear(other.arrangement, rules.clearance() + rules.overlap());
    }

    /** Takes the flow apart into layers that are alike. */
    private List<Layers> layers(CpSolver solver) {
        List<long[]> first = new ArrayList<>();
        List<long[]> flow = new ArrayList<>();
        first.add(bands.get(0).stream()
                .mapToLong(option -> solver.value(option.count))
                .toArray());
        sides.forEach(together -> flow.add(
                together.stream().mapToLong(side -> solver.value(side.count)).toArray()));
        List<Layers> layers = new ArrayList<>();
        for (int start = 0; start < bands.get(0).size(); start++) {
            while (first.get(0)[start] > 0) {
                layers.add(layer(start, first.get(0), flow));
            }
        }
        return layers;
    }

    private Layers layer(int start, long[] first, List<long[]> flow) {
        List<Arrangement> strips = new ArrayList<>(List.of());
        strips.add(bands.get(0).get(start).arrangement);
        List<Integer> path = new ArrayList<>();
        long count = first[start];
        int at = start;
        for (int band = 1; band < bands.size(); band++) {
            int next = 0;
            while (sides.get(band - 1).get(next).left != at || flow.get(band - 1)[next] == 0) {
                next++;
            }
            path.add(next);
            count = Math.min(count, flow.get(band - 1)[next]);
            at = sides.get(band - 1).get(next).right;
            strips.add(bands.get(band).get(at).arrangement);
        }
        first[start] -= count;
        for (int band = 1; band < bands.size(); band++) {
            flow.get(band - 1)[path.get(band - 1)] -= count;
        }
        return new Layers((int) count, strips);
    }
}
