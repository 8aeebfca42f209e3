package org.orbwright.stock;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.orbwright.stock.CuttingColumns.CrossSection;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingPlan.RippedSections;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * A plan to begin with, without seams: the cheapest boards first, each section ripped in the way that gives most of the
 * wood that is still wanted. It is there at once, however little a search may take.
 */
final class GreedyPlan {
    private final CuttingColumns columns;
    private final CuttingProblem problem;
    private final int[] wanted;
    /** For each cross-section, how its last section was ripped. */
    private final Map<CrossSection, RipPattern> last = new HashMap<>();

    private final Map<CutBoards, Integer> boards = new LinkedHashMap<>();
    private final Map<RippedSections, Integer> sections = new LinkedHashMap<>();

    private GreedyPlan(CuttingColumns columns) {
        this.columns = columns;
        this.problem = columns.problem();
        this.wanted = new int[problem.ripping().widths().size()];
        problem.strips().forEach(kind -> wanted[kind.width()] += isWhole(kind) ? kind.count() : 0);
    }

    private static boolean isWhole(StripKind kind) {
        return kind.makeUps().stream().anyMatch(makeUp -> makeUp.pieces().equals(List.of(0)));
    }

    static CuttingPlan of(CuttingColumns columns) {
        GreedyPlan plan = new GreedyPlan(columns);
        List<BoardKind> kinds = plan.problem.boards();
        IntStream.range(0, kinds.size())
                .boxed()
                .sorted(Comparator.comparing((Integer kind) -> kinds.get(kind).cost())
                        .thenComparing(kind -> kinds.get(kind).volume()))
                .forEach(plan::cut);
        return plan.plan();
    }

    private void cut(int kind) {
        BoardKind board = problem.boards().get(kind);
        double room = board.length() + problem.crosscutKerf() + Ripping.EXACT_FIT;
        int most = (int) Math.max(0, Math.floor(room / (problem.lengths().get(0) + problem.crosscutKerf())));
        boolean useful = most > 0;
        for (int i = 0; i < board.count() && useful; i++) {
            int ripped = 0;
            while (ripped < most && useful) {
                useful = rip(CrossSection.of(board));
                ripped += useful ? 1 : 0;
            }
            if (ripped > 0) {
                List<Integer> counts =
                        new ArrayList<>(Collections.nCopies(problem.lengths().size(), 0));
                counts.set(0, ripped);
                boards.merge(new CutBoards(kind, 1, counts), 1, Integer::sum);
            }
        }
    }

    /** Rips a section; says whether that gave anything that is wanted. */
    private boolean rip(CrossSection size) {
        RipPattern best = isWantedWhole(last.get(size)) ? last.get(size) : null;
        double most = 0;
        for (RipPattern pattern : best == null ? columns.patterns(size) : List.<RipPattern>of()) {
            double gain = 0;
            for (int width = 0; width < wanted.length; width++) {
                gain += Math.min(wanted[width], pattern.counts().get(width))
                        * problem.ripping().widths().get(width);
            }
            best = gain > most ? pattern : best;
            most = Math.max(most, gain);
        }
        if (best == null) {
            return false;
        }
        for (int width = 0; width < wanted.length; width++) {
            wanted[width] = Math.max(0, wanted[width] - best.counts().get(width));
        }
        last.put(size, best);
        sections.merge(new RippedSections(size, 0, 1, best), 1, Integer::sum);
        return true;
    }

    /** Whether all strips of a pattern are still wanted: then no pattern that gave less before gives more now. */
    private boolean isWantedWhole(RipPattern pattern) {
        return pattern != null
                && IntStream.range(0, wanted.length)
                        .allMatch(width -> pattern.counts().get(width) <= wanted[width]);
    }

    private CuttingPlan plan() {
        List<CutBoards> cut = new ArrayList<>();
        boards.forEach((one, count) -> cut.add(new CutBoards(one.kind(), count, one.sections())));
        List<RippedSections> ripped = new ArrayList<>();
        sections.forEach((one, count) -> ripped.add(new RippedSections(one.section(), 0, count, one.pattern())));
        List<List<Integer>> made = new ArrayList<>();
        List<Integer> missing = new ArrayList<>();
        for (StripKind kind : problem.strips()) {
            int less = isWhole(kind) ? Math.min(kind.count(), wanted[kind.width()]) : kind.count();
            wanted[kind.width()] -= isWhole(kind) ? less : 0;
            missing.add(less);
            made.add(kind.makeUps().stream()
                    .map(makeUp -> makeUp.pieces().equals(List.of(0)) ? kind.count() - less : 0)
                    .toList());
        }
        return new CuttingPlan(cut, ripped, made, missing);
    }
}
