package org.orbwright.stock;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Where strips of one band may have seams, in millimetres from the end where the first cut is made. */
final class SeamedStrip {
    /** Arrangements of one set of pieces that are looked at. */
    private static final int MOST_ARRANGEMENTS = 60;

    private final double length;
    private final SeamRules rules;
    /** Where the cuts between segments cross the band. */
    private final List<Double> cuts;

    /** Strips of a length that the middles of cuts cross at these places. */
    SeamedStrip(double length, SeamRules rules, List<Double> cuts) {
        this.length = length;
        this.rules = rules;
        this.cuts = List.copyOf(cuts);
    }

    /** The strips of a band, counted from 0. */
    static SeamedStrip of(BlankKind blank, int band, SeamRules rules) {
        List<Double> cuts = new ArrayList<>();
        for (int cut = 0; cut < blank.cuts().size(); cut++) {
            cuts.add(blank.crossing(cut, band));
        }
        return new SeamedStrip(blank.length(), rules, cuts);
    }

    /** The widest gap between two cuts, or a cut and an end. */
    double widestGap() {
        double gap = 0;
        double before = 0;
        for (double cut : cuts.stream().sorted().toList()) {
            gap = Math.max(gap, cut - before);
            before = cut;
        }
        return Math.max(gap, length - before);
    }

    /** What is wanted beside a piece whose seam is on the last cut that it reaches from either end; 0 for none. */
    double besideOnCut(double piece) {
        double reach = piece - rules.overlap() / 2;
        double least = Double.POSITIVE_INFINITY;
        for (double cut : cuts) {
            if (cut <= reach + Ripping.EXACT_FIT) {
                least = Math.min(least, length - cut);
            }
            if (length - cut <= reach + Ripping.EXACT_FIT) {
                least = Math.min(least, cut);
            }
        }
        return Double.isInfinite(least) ? 0 : least + rules.overlap() / 2;
    }

    /** A seam by the place of its middle, and the cut whose kerf that lies on; null if it lies within a segment. */
    record Place(double at, Integer cut) {}

    /** Pieces in their order, each with the least length that it has, and the seams between them. */
    record Arrangement(List<Double> pieces, List<Place> seams) {
        Arrangement {
            pieces = List.copyOf(pieces);
            seams = List.copyOf(seams);
        }

        /** Seams that lie within a segment. */
        int within() {
            return (int) seams.stream().filter(seam -> seam.cut() == null).count();
        }

        /** Whether its seams and those of a neighbour are so far apart, from middle to middle. */
        boolean isClear(Arrangement neighbour, double least) {
            return seams.stream()
                    .allMatch(seam -> neighbour.seams.stream()
                            .allMatch(other -> Math.abs(seam.at() - other.at()) >= least - Ripping.EXACT_FIT));
        }
    }

    /**
     * The ways to arrange pieces of these lengths with seams in a zone, each piece trimmed to its seams. Seams lie on
     * all cuts that they reach, and at the ends of what they reach.
     */
    List<Arrangement> arrangements(List<Double> pieces, SeamZone zone) {
        List<Arrangement> found = new ArrayList<>();
        Set<List<Double>> orders = orders(pieces);
        for (List<Double> order : orders) {
            arrange(order, zone, List.of(), found, found.size() + Math.max(1, MOST_ARRANGEMENTS / orders.size()));
        }
        return found;
    }

    private static Set<List<Double>> orders(List<Double> pieces) {
        Set<List<Double>> orders = new LinkedHashSet<>();
        if (pieces.isEmpty()) {
            orders.add(List.of());
        }
        for (int first = 0; first < pieces.size(); first++) {
            List<Double> others = new ArrayList<>(pieces);
            double piece = others.remove(first);
            for (List<Double> rest : orders(others)) {
                List<Double> order = new ArrayList<>(List.of(piece));
                order.addAll(rest);
                orders.add(order);
            }
        }
        return orders;
    }

    private void arrange(List<Double> order, SeamZone zone, List<Place> seams, List<Arrangement> found, int most) {
        if (seams.size() == order.size() - 1) {
            found.add(new Arrangement(order, seams));
            return;
        }
        for (Place place : places(order, zone, seams)) {
            if (found.size() < most) {
                List<Place> more = new ArrayList<>(seams);
                more.add(place);
                arrange(order, zone, more, found, most);
            }
        }
    }

    /** The places for the next seam, from which all later ones can still be reached. */
    private List<Place> places(List<Double> order, SeamZone zone, List<Place> seams) {
        int next = seams.size();
        double overlap = rules.overlap();
        double before = seams.isEmpty() ? overlap / 2 : seams.get(next - 1).at();
        double end = length - overlap / 2;
        double first = before + rules.smallest() - overlap;
        double last = before + order.get(next) - overlap;
        double room = 0;
        for (double piece : order.subList(next + 1, order.size())) {
            room += piece - overlap;
        }
        first = Math.max(first, end - room);
        last = Math.min(last, end - (order.size() - next - 1) * (rules.smallest() - overlap));
        List<Place> places = new ArrayList<>();
        for (SeamZone.Range range : zone.within(first, last)) {
            for (int cut = 0; cut < cuts.size(); cut++) {
                if (range.holds(cuts.get(cut))) {
                    places.add(new Place(cuts.get(cut), cut));
                }
            }
            places.add(new Place(range.from(), null));
            if (range.to() - range.from() > Ripping.EXACT_FIT) {
                places.add(new Place(range.to(), null));
            }
        }
        return places;
    }
}
