package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.UniqueElements;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.SeamedStrip.Arrangement;

/** Ways to make up a strip of 1000 mm, against every set of pieces there is. */
class MakeUpsTest {
    private static final String SEED = "20261125";
    private static final int STRIP = 1000;

    private static List<Double> lengths(List<Integer> pieces) {
        List<Double> lengths = new ArrayList<>(List.of((double) STRIP));
        pieces.forEach(piece -> lengths.add((double) piece));
        return lengths;
    }

    /** All sets of pieces that reach from end to end, each as places of lengths from the longest down. */
    private static Set<List<Integer>> all(List<Double> lengths, SeamRules rules) {
        Set<List<Integer>> sets = new HashSet<>();
        for (int pieces = 2; pieces <= rules.most() + 1; pieces++) {
            add(lengths, rules, pieces, List.of(), sets);
        }
        return sets;
    }

    private static void add(
            List<Double> lengths, SeamRules rules, int pieces, List<Integer> set, Set<List<Integer>> sets) {
        if (set.size() == pieces) {
            double sum = set.stream().mapToDouble(lengths::get).sum();
            if (sum >= STRIP + (pieces - 1) * rules.overlap() - 1e-6) {
                sets.add(sorted(set, lengths));
            }
            return;
        }
        for (int length = 0; length < lengths.size(); length++) {
            double piece = lengths.get(length);
            if (piece >= rules.smallest() && piece <= STRIP - rules.smallest() + rules.overlap()) {
                List<Integer> more = new ArrayList<>(set);
                more.add(length);
                add(lengths, rules, pieces, more, sets);
            }
        }
    }

    private static List<Integer> sorted(List<Integer> set, List<Double> lengths) {
        return set.stream()
                .sorted(Comparator.comparing((Integer place) -> lengths.get(place))
                        .reversed())
                .toList();
    }

    private static boolean isNoLonger(List<Integer> one, List<Integer> than, List<Double> lengths) {
        return one.size() == than.size()
                && IntStream.range(0, one.size()).allMatch(i -> lengths.get(one.get(i)) <= lengths.get(than.get(i)));
    }

    /** The sets that no other one of as many pieces replaces, with the seams within segments of each. */
    private static Map<List<Integer>, Integer> best(Map<List<Integer>, Integer> sets, List<Double> lengths) {
        Map<List<Integer>, Integer> best = new HashMap<>();
        sets.forEach((set, within) -> {
            boolean replaced = sets.entrySet().stream()
                    .anyMatch(other -> !other.getKey().equals(set)
                            && other.getValue() <= within
                            && isNoLonger(other.getKey(), set, lengths));
            if (!replaced) {
                best.put(set, within);
            }
        });
        return best;
    }

    private static Map<List<Integer>, Integer> seamed(List<MakeUp> ways, List<Double> lengths) {
        Map<List<Integer>, Integer> sets = new HashMap<>();
        ways.stream().skip(1).forEach(way -> sets.put(sorted(way.pieces(), lengths), way.within()));
        assertEquals(ways.size() - 1, sets.size(), "a set is listed twice");
        return sets;
    }

    @Property(tries = 300, seed = SEED)
    void theWaysAreAllThatNoOtherOneReplaces(
            @ForAll @Size(max = 6) @UniqueElements List<@IntRange(min = 50, max = 999) Integer> pieces,
            @ForAll @IntRange(min = 1, max = 3) int most,
            @ForAll @IntRange(min = 50, max = 200) int smallest,
            @ForAll @IntRange(min = 0, max = 49) int overlap) {
        List<Double> lengths = lengths(pieces);
        SeamRules rules = new SeamRules(overlap, smallest, 40, most);
        Map<List<Integer>, Integer> sets = new HashMap<>();
        all(lengths, rules).forEach(set -> sets.put(set, 0));
        assertEquals(best(sets, lengths), seamed(MakeUps.of(lengths, rules), lengths));
    }

    @Property(tries = 300, seed = SEED)
    void ofABandTheWaysOfTwoPiecesAreAllThatNoOtherOneReplaces(
            @ForAll @Size(max = 7) @UniqueElements List<@IntRange(min = 100, max = 900) Integer> pieces,
            @ForAll @Size(max = 5) List<@DoubleRange(min = 1, max = 999) Double> cuts,
            @ForAll @IntRange(min = 0, max = 99) int overlap) {
        List<Double> lengths = lengths(pieces);
        SeamRules rules = new SeamRules(overlap, 100, 40, 1);
        SeamedStrip band = new SeamedStrip(STRIP, rules, cuts);
        assertEquals(
                best(arranged(lengths, rules, band, SeamZone.ANYWHERE), lengths),
                seamed(MakeUps.of(lengths, rules, band, SeamZone.ANYWHERE), lengths));
    }

    private static Map<List<Integer>, Integer> arranged(
            List<Double> lengths, SeamRules rules, SeamedStrip band, SeamZone zone) {
        Map<List<Integer>, Integer> sets = new HashMap<>();
        for (List<Integer> set : all(lengths, rules)) {
            OptionalInt within = band
                    .arrangements(set.stream().map(lengths::get).toList(), zone)
                    .stream()
                    .mapToInt(Arrangement::within)
                    .min();
            within.ifPresent(seams -> sets.put(set, seams));
        }
        return sets;
    }

    @Property(tries = 300, seed = SEED)
    void ofABandNoSetIsLostThatItsZoneHolds(
            @ForAll @Size(max = 7) @UniqueElements List<@IntRange(min = 100, max = 900) Integer> pieces,
            @ForAll @Size(max = 12) List<@DoubleRange(min = 1, max = 999) Double> cuts,
            @ForAll @IntRange(min = 0, max = 99) int overlap,
            @ForAll @IntRange(min = 1, max = 2) int most,
            @ForAll @IntRange(min = 0, max = 5) int zones) {
        List<Double> lengths = lengths(pieces);
        SeamRules rules = new SeamRules(overlap, 100, 40, most);
        SeamedStrip band = new SeamedStrip(STRIP, rules, cuts);
        SeamZone zone = SeamZone.pairs(STRIP, 40 + overlap).get(zones / 2).of(zones);
        Set<List<Integer>> kept =
                seamed(MakeUps.of(lengths, rules, band, zone), lengths).keySet();
        arranged(lengths, rules, band, zone)
                .keySet()
                .forEach(set -> assertTrue(
                        kept.stream().anyMatch(other -> isNoLonger(other, set, lengths)),
                        () -> set + " of " + lengths + " is lost, cuts " + cuts));
    }

    @Property(tries = 300, seed = SEED)
    void theWholeStripComesFirst(
            @ForAll @Size(max = 6) @UniqueElements List<@IntRange(min = 50, max = 999) Integer> pieces,
            @ForAll @IntRange(min = 0, max = 3) int most) {
        List<Double> lengths = lengths(pieces);
        SeamRules rules = new SeamRules(0, 50, 40, most);
        assertEquals(new MakeUp(List.of(0)), MakeUps.of(lengths, rules).get(0));
        SeamedStrip band = new SeamedStrip(STRIP, rules, List.of(500.0));
        assertEquals(
                new MakeUp(List.of(0)),
                MakeUps.of(lengths, rules, band, SeamZone.ANYWHERE).get(0));
    }

    @Property(tries = 300, seed = SEED)
    void everySetReachesFromEndToEnd(
            @ForAll @Size(max = 7) @UniqueElements List<@IntRange(min = 100, max = 900) Integer> pieces,
            @ForAll @Size(max = 5) List<@DoubleRange(min = 1, max = 999) Double> cuts,
            @ForAll @IntRange(min = 0, max = 99) int overlap,
            @ForAll @IntRange(min = 1, max = 3) int most) {
        List<Double> lengths = lengths(pieces);
        SeamRules rules = new SeamRules(overlap, 100, 40, most);
        for (MakeUp way : MakeUps.of(lengths, rules, new SeamedStrip(STRIP, rules, cuts), SeamZone.ANYWHERE)) {
            double all = way.pieces().stream().mapToDouble(lengths::get).sum();
            assertTrue(all >= STRIP + way.seams() * overlap - 1e-6);
            assertTrue(way.seams() <= most);
        }
    }

    @Test
    @DisplayName("hand calculation: 600 + 400 mm, or 600 + 500 mm for a seam on the cut at 550 mm")
    void aLongerSetIsKeptForASeamOnACut() {
        List<Double> lengths = List.of(1000.0, 600.0, 500.0, 400.0);
        SeamRules rules = new SeamRules(0, 100, 40, 1);
        SeamedStrip band = new SeamedStrip(STRIP, rules, List.of(550.0));
        assertEquals(
                Set.of(
                        new MakeUp(List.of(0)),
                        new MakeUp(List.of(1, 3), 1),
                        new MakeUp(List.of(2, 2), 1),
                        new MakeUp(List.of(1, 2), 0)),
                Set.copyOf(MakeUps.of(lengths, rules, band, SeamZone.ANYWHERE)));
    }

    @Test
    void withoutSeamsThereIsTheWholeStripAlone() {
        assertEquals(
                List.of(new MakeUp(List.of(0))),
                MakeUps.of(List.of(1000.0, 600.0, 500.0), new SeamRules(0, 1000, 0, 0)));
    }

    @Test
    void piecesThatDoNotReachAreNoWay() {
        assertFalse(MakeUps.of(List.of(1000.0, 499.0), new SeamRules(0, 100, 40, 1)).stream()
                .anyMatch(way -> way.seams() > 0));
    }
}
