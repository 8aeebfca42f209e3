package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.Band;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Trials;
import org.orbwright.segment.SegmentPlan.Cut;
import org.orbwright.stock.SeamArranger.Layers;
import org.orbwright.stock.SeamArranger.PieceSet;
import org.orbwright.stock.SeamedStrip.Arrangement;

/** Strips side by side in blanks of 1000 mm, whose pieces are at least 100 mm long. */
class SeamArrangerTest {
    private static final double LENGTH = 1000;
    private static final double SMALLEST = 100;
    private static final int TRIES = 60;

    static LongStream seeds() {
        return Trials.below(TRIES);
    }

    private static BlankKind newBlank(int strips, int bands, List<Double> cuts) {
        return new BlankKind(
                0,
                "A",
                false,
                false,
                strips,
                LENGTH,
                IntStream.range(0, bands)
                        .mapToObj(band -> new Band("sugar maple", 10 + band))
                        .toList(),
                3,
                IntStream.range(0, cuts.size())
                        .mapToObj(cut -> new Cut(cut, cuts.get(cut), cuts.get(cut) + 40))
                        .toList());
    }

    private static SeamRules seamRules(double overlap, double clearance) {
        return new SeamRules(overlap, SMALLEST, clearance, 2);
    }

    private static List<Layers> arrange(BlankKind blank, List<List<PieceSet>> bands, SeamRules rules) {
        return SeamArranger.arrange(blank, bands, rules, SeamZone.Pair.ANYWHERE, new Effort(1, 60_000_000_000L));
    }

    private static int dropped(BlankKind blank, List<List<PieceSet>> bands, List<Layers> layers) {
        int kept = layers.stream()
                .mapToInt(layer -> layer.count()
                        * (int) layer.strips().stream().filter(Objects::nonNull).count())
                .sum();
        int there =
                bands.stream().flatMap(List::stream).mapToInt(PieceSet::count).sum();
        assertEquals(blank.strips(), layers.stream().mapToInt(Layers::count).sum());
        return there - kept;
    }

    /** A random kind of blank with what its strips are made of. */
    private record Trial(BlankKind blank, List<List<PieceSet>> bands, SeamRules rules) {
        /** The bands' strips, of which some are missing; those with seams reach further or less far than they need. */
        static Trial random(long seed, int mostBands, int mostStrips, double widest) {
            Random random = new Random(seed);
            SeamRules rules = seamRules(random.nextBoolean() ? 0 : 40, widest * random.nextDouble());
            int strips = 1 + random.nextInt(mostStrips);
            List<List<PieceSet>> bands = new ArrayList<>();
            for (int band = 2 + random.nextInt(mostBands - 1); band > 0; band--) {
                List<PieceSet> sets = new ArrayList<>();
                int left = strips - (random.nextInt(4) == 0 ? 1 : 0);
                while (left > 0) {
                    int count = 1 + random.nextInt(left);
                    sets.add(new PieceSet(pieces(random, rules), count));
                    left -= count;
                }
                bands.add(sets);
            }
            List<Double> cuts =
                    random.doubles(random.nextInt(5), 50, 950).sorted().boxed().toList();
            return new Trial(newBlank(strips, bands.size(), cuts), bands, rules);
        }

        private static List<Double> pieces(Random random, SeamRules rules) {
            int seams = random.nextInt(3);
            if (seams == 0) {
                return List.of(LENGTH);
            }
            double spare = random.nextInt(120);
            double all = LENGTH + seams * rules.overlap() + spare;
            List<Double> pieces = new ArrayList<>();
            for (int piece = 0; piece < seams; piece++) {
                double most = all - (seams - piece) * (SMALLEST + spare);
                double length = Math.min(900, SMALLEST + spare + random.nextDouble() * (most - SMALLEST - spare) * 0.8);
                pieces.add(length);
                all -= length;
            }
            pieces.add(all);
            return pieces;
        }

        List<Layers> arranged() {
            return arrange(blank, bands, rules);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("seeds")
    @Slow
    void seamsInNeighboursKeepTheirClearance(long seed) {
        Trial trial = Trial.random(seed, 4, 8, 150);
        double least = trial.rules().clearance() + trial.rules().overlap();
        for (Layers layer : trial.arranged()) {
            for (int band = 1; band < layer.strips().size(); band++) {
                Arrangement one = layer.strips().get(band - 1);
                Arrangement other = layer.strips().get(band);
                if (one != null && other != null) {
                    one.seams()
                            .forEach(seam -> other.seams()
                                    .forEach(next -> assertTrue(Math.abs(seam.at() - next.at()) >= least - 1e-5)));
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("seeds")
    @Slow
    void noStripIsUsedTwice(long seed) {
        Trial trial = Trial.random(seed, 4, 8, 150);
        List<Layers> layers = trial.arranged();
        assertTrue(layers.stream().allMatch(layer -> layer.count() > 0));
        assertTrue(dropped(trial.blank(), trial.bands(), layers) >= 0);
        for (int band = 0; band < trial.bands().size(); band++) {
            Map<List<Double>, Integer> left = new HashMap<>();
            trial.bands().get(band).forEach(set -> left.merge(sorted(set.pieces()), set.count(), Integer::sum));
            for (Layers layer : layers) {
                Arrangement strip = layer.strips().get(band);
                if (strip != null) {
                    left.merge(sorted(strip.pieces()), -layer.count(), Integer::sum);
                }
            }
            assertTrue(left.values().stream().allMatch(count -> count >= 0), () -> left + " of " + trial);
        }
    }

    private static List<Double> sorted(List<Double> pieces) {
        return pieces.stream().sorted().toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("seeds")
    void noStripIsDroppedThatTryingEverythingKeeps(long seed) {
        Trial trial = Trial.random(seed, 3, 3, 400);
        assertEquals(fewestDropped(trial), dropped(trial.blank(), trial.bands(), trial.arranged()));
    }

    /** The fewest strips that have to be dropped, by trying every way to lay them side by side. */
    private static int fewestDropped(Trial trial) {
        List<List<List<Arrangement>>> bands = new ArrayList<>();
        int there = 0;
        for (int band = 0; band < trial.bands().size(); band++) {
            SeamedStrip strip = SeamedStrip.of(trial.blank(), band, trial.rules());
            List<List<Arrangement>> strips = new ArrayList<>();
            for (PieceSet set : trial.bands().get(band)) {
                for (int i = 0; i < set.count(); i++) {
                    strips.add(strip.arrangements(set.pieces(), SeamZone.ANYWHERE));
                    there++;
                }
            }
            while (strips.size() < trial.blank().strips()) {
                strips.add(List.of());
            }
            bands.add(strips);
        }
        return there - mostKept(bands, 0, new ArrayList<>(), trial.rules());
    }

    private static int mostKept(
            List<List<List<Arrangement>>> bands, int layer, List<List<Arrangement>> side, SeamRules rules) {
        if (layer == bands.get(0).size()) {
            return 0;
        }
        if (side.size() == bands.size()) {
            int here = mostOfLayer(side, rules);
            return here + mostKept(bands, layer + 1, new ArrayList<>(), rules);
        }
        // Each strip of the band that lies in no earlier layer: those are swapped to its front.
        List<List<Arrangement>> strips = bands.get(side.size());
        int most = 0;
        for (int other = layer; other < strips.size(); other++) {
            Collections.swap(strips, layer, other);
            List<List<Arrangement>> more = new ArrayList<>(side);
            more.add(strips.get(layer));
            most = Math.max(most, mostKept(bands, layer, more, rules));
            Collections.swap(strips, layer, other);
        }
        return most;
    }

    /** The most strips of a layer that keep their clearance, each arranged in one of its ways or dropped. */
    private static int mostOfLayer(List<List<Arrangement>> side, SeamRules rules) {
        double least = rules.clearance() + rules.overlap();
        Map<Arrangement, Integer> before = new HashMap<>();
        int dropped = 0;
        for (List<Arrangement> ways : side) {
            int best = dropped;
            Map<Arrangement, Integer> now = new HashMap<>();
            for (int kept : before.values()) {
                best = Math.max(best, kept);
            }
            for (Arrangement way : ways) {
                int most = dropped;
                for (Map.Entry<Arrangement, Integer> one : before.entrySet()) {
                    if (one.getKey().isClear(way, least)) {
                        most = Math.max(most, one.getValue());
                    }
                }
                now.merge(way, most + 1, Math::max);
            }
            before = now;
            dropped = best;
        }
        int most = dropped;
        for (int kept : before.values()) {
            most = Math.max(most, kept);
        }
        return most;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("seeds")
    void nothingIsDroppedWhereEveryBandKeepsToItsZone(long seed) {
        Random random = new Random(seed);
        SeamRules rules = seamRules(random.nextBoolean() ? 0 : 40, 100 * random.nextDouble());
        List<SeamZone.Pair> pairs = SeamZone.pairs(LENGTH, rules.clearance() + rules.overlap());
        SeamZone.Pair pair = pairs.get(random.nextInt(pairs.size()));
        int strips = 1 + random.nextInt(20);
        BlankKind blank = newBlank(strips, 2 + random.nextInt(4), List.of(210.0, 480.0, 760.0));
        List<List<PieceSet>> bands = new ArrayList<>();
        for (int band = 0; band < blank.bands().size(); band++) {
            SeamedStrip strip = SeamedStrip.of(blank, band, rules);
            List<PieceSet> sets = new ArrayList<>();
            int left = strips;
            while (left > 0) {
                int count = 1 + random.nextInt(left);
                List<Double> pieces = Trial.pieces(random, rules);
                if (!strip.arrangements(pieces, pair.of(band)).isEmpty()) {
                    sets.add(new PieceSet(pieces, count));
                    left -= count;
                }
            }
            bands.add(sets);
        }
        assertEquals(
                0,
                dropped(blank, bands, SeamArranger.arrange(blank, bands, rules, pair, new Effort(1, 60_000_000_000L))));
    }

    @Test
    @DisplayName("hand calculation: seams at 400 or 600 mm are 200 mm apart if a neighbour is turned about")
    void aNeighbourIsTurnedAbout() {
        BlankKind blank = newBlank(4, 3, List.of());
        List<PieceSet> seamed = List.of(new PieceSet(List.of(600.0, 400.0), 4));
        List<List<PieceSet>> bands = List.of(seamed, seamed, seamed);
        assertEquals(0, dropped(blank, bands, arrange(blank, bands, seamRules(0, 200))));
        assertEquals(4, dropped(blank, bands, arrange(blank, bands, seamRules(0, 201))));
    }

    @Test
    @DisplayName("hand calculation: every other strip of halves is dropped, the middle one of three")
    void ofEqualHalvesEveryOtherStripIsDropped() {
        BlankKind blank = newBlank(3, 3, List.of());
        List<PieceSet> halves = List.of(new PieceSet(List.of(500.0, 500.0), 3));
        List<List<PieceSet>> bands = List.of(halves, halves, halves);
        List<Layers> layers = arrange(blank, bands, seamRules(0, 10));
        assertEquals(3, dropped(blank, bands, layers));
        layers.forEach(layer -> assertEquals(null, layer.strips().get(1)));
    }

    @Test
    void wholeStripsLieBesideThoseWithSeams() {
        BlankKind blank = newBlank(2, 2, List.of());
        List<PieceSet> one = List.of(new PieceSet(List.of(500.0, 500.0), 1), new PieceSet(List.of(LENGTH), 1));
        List<List<PieceSet>> bands = List.of(one, one);
        assertEquals(0, dropped(blank, bands, arrange(blank, bands, seamRules(0, 500))));
    }

    @Test
    void withoutSeamsMissingStripsAreInTheLastLayers() {
        BlankKind blank = newBlank(5, 2, List.of());
        List<Layers> layers = arrange(
                blank,
                List.of(List.of(new PieceSet(List.of(LENGTH), 5)), List.of(new PieceSet(List.of(LENGTH), 3))),
                seamRules(0, 40));
        Arrangement whole = new Arrangement(List.of(LENGTH), List.of());
        assertEquals(2, layers.size());
        assertEquals(new Layers(3, List.of(whole, whole)), layers.get(0));
        assertEquals(2, layers.get(1).count());
        assertEquals(whole, layers.get(1).strips().get(0));
        assertEquals(null, layers.get(1).strips().get(1));
    }

    @Test
    @DisplayName("hand calculation: 550 + 500 mm meet from 450 to 550 mm, and on the cut at 500 mm if they may")
    void seamsAreOnCutsWhereTheClearanceLetsThem() {
        BlankKind blank = newBlank(1, 1, List.of(501.5));
        double cut = blank.crossing(0, 0);
        assertTrue(cut > 450 && cut < 550);
        List<Layers> layers =
                arrange(blank, List.of(List.of(new PieceSet(List.of(550.0, 500.0), 1))), seamRules(0, 40));
        assertEquals(0, layers.get(0).strips().get(0).seams().get(0).cut());
    }
}
