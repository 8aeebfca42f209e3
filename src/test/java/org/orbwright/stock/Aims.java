package org.orbwright.stock;

import java.util.List;
import org.orbwright.stock.CuttingProblem.StripKind;

/** What tests let prices be found for. */
final class Aims {
    private Aims() {}

    /** As few missing strips as can be, wide ones first. */
    static CuttingAim fewestMissing(CuttingProblem problem) {
        return new CuttingAim(
                problem.boards().stream().map(board -> 0.0).toList(),
                0,
                problem.strips().stream()
                        .map(kind -> problem.ripping().widths().get(kind.width()))
                        .toList(),
                problem.strips().stream().map(StripKind::count).toList());
    }

    /** The cheapest boards and fewest seams, each at so much, while these strips may be missing. */
    static CuttingAim cheapest(CuttingProblem problem, double perSeam, List<Integer> mayMiss) {
        return new CuttingAim(
                problem.boards().stream().map(board -> board.cost()).toList(),
                perSeam,
                problem.strips().stream().map(kind -> 0.0).toList(),
                mayMiss);
    }

    /** The fewest seams alone. */
    static CuttingAim fewestSeams(CuttingProblem problem, List<Integer> mayMiss) {
        return new CuttingAim(
                problem.boards().stream().map(board -> 0.0).toList(),
                1,
                problem.strips().stream().map(kind -> 0.0).toList(),
                mayMiss);
    }
}
