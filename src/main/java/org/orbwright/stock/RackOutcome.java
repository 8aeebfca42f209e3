package org.orbwright.stock;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.orbwright.stock.Rack.Stock;
import org.orbwright.stock.RackBoard.Use;

/** Notes what becomes of the boards, wood by wood. */
final class RackOutcome {
    private final Set<Stock> wanted = new HashSet<>();
    private final Set<Stock> large = new HashSet<>();
    private final Map<Stock, Integer> cut = new HashMap<>();

    /** Notes the boards of a wood that bands are of. */
    void wood(List<Stock> boards, CuttingProblem problem, double shortest) {
        for (int b = 0; b < boards.size(); b++) {
            wanted.add(boards.get(b));
            if (problem.isLarge(problem.boards().get(b), shortest)) {
                large.add(boards.get(b));
            }
        }
    }

    /** Notes boards that are cut. */
    void cut(Stock board, int count) {
        cut.merge(board, count, Integer::sum);
    }

    /** What becomes of each kind of board. */
    List<RackBoard> list(List<Stock> rack) {
        return rack.stream().map(this::outcome).toList();
    }

    private RackBoard outcome(Stock one) {
        int count = cut.getOrDefault(one, 0);
        return new RackBoard(
                one.boardNumber(),
                one.offerNumber(),
                one.board().name(),
                one.board().species(),
                use(one, count),
                count,
                one.board().count() - count,
                one.surfacing().length(),
                one.surfacing().width(),
                one.surfacing().thickness(),
                one.surfacing().shimmedLoss(),
                one.surfacing().unshimmedLoss());
    }

    private Use use(Stock one, int count) {
        if (!wanted.contains(one)) {
            return Use.NOT_NEEDED;
        }
        if (!large.contains(one)) {
            return Use.TOO_SMALL;
        }
        return count > 0 ? Use.CUT : Use.SPARE;
    }
}
