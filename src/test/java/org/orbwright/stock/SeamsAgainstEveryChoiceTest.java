package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.orbwright.design.Band;
import org.orbwright.segment.SegmentPlan.Cut;
import org.orbwright.stock.SeamPlanner.BlankSeams;
import org.orbwright.stock.SeamPlanner.MadeUpStrip;
import org.orbwright.stock.SeamPlanner.SeamPlace;

/** What is planned for the seams of a blank, against a look at every cut and at every choice of places. */
class SeamsAgainstEveryChoiceTest {
    private static final double EXACT = 1e-6;

    /** A blank 600 mm long with bands of 20 mm, whose cuts lean by one amount and another in turn; no kerf. */
    private static BlankKind leaning(int bands, List<Integer> cuts, int lean, int otherLean) {
        List<Cut> lines = new ArrayList<>();
        for (int cut = 0; cut < cuts.size(); cut++) {
            int start = cuts.get(cut);
            lines.add(new Cut(cut, start, start + (cut % 2 == 0 ? lean : otherLean)));
        }
        return new BlankKind(0, "A", false, false, 1, 600, Collections.nCopies(bands, new Band("ash", 20)), 0, lines);
    }

    /** The places of ways that have one seam. */
    private static List<SeamPlace> places(List<MadeUpStrip> ways) {
        return ways.stream()
                .filter(way -> way.seams().size() == 1)
                .map(way -> way.seams().get(0))
                .toList();
    }

    @Property(tries = 1000, seed = "20261126")
    void noSeamLiesOffTheCutsWhereACutWouldDo(
            @ForAll @IntRange(min = 2, max = 3) int bands,
            @ForAll @Size(min = 1, max = 3) List<@IntRange(min = 150, max = 450) Integer> cuts,
            @ForAll @IntRange(min = -90, max = 90) int lean,
            @ForAll boolean parallel,
            @ForAll @IntRange(min = 0, max = 40) int overlap,
            @ForAll @IntRange(min = 50, max = 150) int smallest,
            @ForAll @IntRange(min = 20, max = 120) int clearance,
            @ForAll @IntRange(min = 1, max = 2) int places) {
        BlankKind blank = leaning(bands, cuts, lean, parallel ? lean : -lean);
        SeamRules rules = new SeamRules(overlap, smallest, clearance, 1);
        BlankSeams seams = SeamPlanner.plan(blank, rules, List.of(), places);
        for (int set = 0; set < 2; set++) {
            // One seam off the cuts, or none at all.
            if (places(seams.of(set)).stream().allMatch(place -> place.cut() == null)) {
                for (int cut = 0; cut < cuts.size(); cut++) {
                    assertFalse(wouldDo(blank, rules, set, cut, places(seams.of(1 - set))), "cut " + cut);
                }
            }
        }
    }

    /** Whether strips of a set may have a seam on a cut, beside strips with seams at these places. */
    private static boolean wouldDo(BlankKind blank, SeamRules rules, int set, int cut, List<SeamPlace> beside) {
        boolean may = true;
        for (int strip = set; strip < blank.bands().size(); strip += 2) {
            double at = blank.crossing(cut, strip);
            may &= Math.min(at, blank.length() - at) + rules.overlap() / 2 > rules.smallest() + EXACT;
            for (SeamPlace other : beside) {
                for (int next = 1 - set; next < blank.bands().size(); next += 2) {
                    double apart = Math.abs(at - other.at().get(next)) - rules.overlap();
                    may &= Math.abs(next - strip) > 1 || apart > rules.clearance() + EXACT;
                }
            }
        }
        return may;
    }

    @Property(tries = 500, seed = "20261127")
    void everyChoiceOfPlacesThatLeavesPiecesLongEnoughIsAWay(
            @ForAll @Size(min = 3, max = 8) List<@IntRange(min = 60, max = 540) Integer> cuts,
            @ForAll @IntRange(min = -30, max = 30) int lean,
            @ForAll @IntRange(min = 0, max = 40) int overlap,
            @ForAll @IntRange(min = 40, max = 120) int smallest,
            @ForAll @IntRange(min = 1, max = 3) int most) {
        BlankKind blank = leaning(4, cuts, lean, -lean);
        SeamRules rules = new SeamRules(overlap, smallest, 10, most);
        BlankSeams seams = SeamPlanner.plan(blank, rules, List.of(), 3);
        for (int set = 0; set < 2; set++) {
            Set<Set<SeamPlace>> wanted = longEnough(blank, rules, set, places(seams.of(set)));
            List<Set<SeamPlace>> found =
                    seams.of(set).stream().map(way -> Set.copyOf(way.seams())).toList();
            assertEquals(wanted, Set.copyOf(found));
            assertEquals(wanted.size(), found.size(), "no way is listed twice");
        }
    }

    /** Every choice from these places, no place among them, that has not too many seams and no piece too short. */
    private static Set<Set<SeamPlace>> longEnough(BlankKind blank, SeamRules rules, int set, List<SeamPlace> places) {
        Set<Set<SeamPlace>> choices = new HashSet<>();
        for (int choice = 0; choice < (1 << places.size()); choice++) {
            int bits = choice;
            List<SeamPlace> seams = IntStream.range(0, places.size())
                    .filter(place -> (bits & (1 << place)) != 0)
                    .mapToObj(places::get)
                    .sorted(Comparator.comparing(place -> place.at().get(set)))
                    .toList();
            boolean enough = seams.size() <= rules.most();
            for (int strip = set; strip < blank.bands().size() && !seams.isEmpty(); strip += 2) {
                double start = 0;
                for (SeamPlace seam : seams) {
                    double at = seam.at().get(strip);
                    enough &= at + rules.overlap() / 2 - start > rules.smallest() - EXACT;
                    start = at - rules.overlap() / 2;
                }
                enough &= blank.length() - start > rules.smallest() - EXACT;
            }
            if (enough) {
                choices.add(new HashSet<>(seams));
            }
        }
        return choices;
    }
}
