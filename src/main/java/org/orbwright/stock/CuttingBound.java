package org.orbwright.stock;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.stock.CuttingColumns.CrossSection;
import org.orbwright.stock.CuttingColumns.RippedPart;
import org.orbwright.stock.CuttingProblem.BoardKind;

/**
 * An integer program that every plan satisfies, whatever the lengths of its pieces, so that its least is a bound for
 * them. Lengths stand for {@linkplain PieceRanges ranges}: a section takes no more of a board than the start of its
 * range and reaches as far as its end. How long it is within the range is a count of its own: all sections together are
 * no longer than the boards, and all pieces of a width as long as their strips. Where there are too many ways to rip a
 * cross-section, its lanes may lie in any of its sections.
 */
final class CuttingBound {
    /** Lengths are added up in whole hundredths of a millimetre, always to the side that lets more through. */
    private static final long PER_MILLIMETRE = 100;
    /** Shares of a section are added up in whole ten thousandths of it, rounded down. */
    private static final long PER_SECTION = 10_000;

    private final CuttingColumns columns;
    private final CuttingProblem problem;
    private final PieceRanges ranges;
    private final CpModel model = IntegerSearch.model();
    private final Map<IntVar, BoardKind> boards = new LinkedHashMap<>();
    private final StripCounts strips;
    /** For each width, the length of all pieces less that of all strips. */
    private final List<LinearExprBuilder> lengthLeft;
    /** For each width, what lengths may lose by being rounded down. */
    private final long[] rounding;
    /** For each cross-section, the length of its boards less that of their sections, in shares of sections. */
    private final Map<CrossSection, LinearExprBuilder> roomLeft = new HashMap<>();

    CuttingBound(CuttingProblem problem, PieceRanges ranges) {
        this.problem = ranges.over(problem);
        this.columns = new CuttingColumns(this.problem);
        this.ranges = ranges;
        this.strips = new StripCounts(model, this.problem);
        this.lengthLeft = StripCounts.sums(problem.ripping().widths().size());
        this.rounding = new long[problem.ripping().widths().size()];
        if (!holds()) {
            return;
        }
        Map<CrossSection, List<LinearExprBuilder>> sections = new LinkedHashMap<>();
        for (CrossSection size : columns.sections()) {
            sections.put(size, StripCounts.sums(this.problem.lengths().size()));
            roomLeft.put(size, LinearExpr.newBuilder());
        }
        for (int b = 0; b < problem.boards().size(); b++) {
            crosscut(b, sections.get(CrossSection.of(problem.boards().get(b))));
        }
        sections.forEach(this::rip);
        strips.suffice();
        for (int width = 0; width < lengthLeft.size(); width++) {
            strips.wantedLength(width, ranges, PER_MILLIMETRE, lengthLeft.get(width));
            model.addGreaterOrEqual(lengthLeft.get(width).build(), -rounding[width]);
        }
    }

    /** Whether it holds for every plan: not where lanes are left out. */
    boolean holds() {
        return columns.haveAllPatterns() || columns.haveAllLanes();
    }

    private void crosscut(int b, List<LinearExprBuilder> sections) {
        BoardKind board = problem.boards().get(b);
        double room = board.length() + problem.crosscutKerf() + Ripping.EXACT_FIT;
        IntVar used = model.newIntVar(0, board.count(), "used");
        boards.put(used, board);
        roomLeft.get(CrossSection.of(board)).addTerm(used, (long) Math.ceil(room * PER_MILLIMETRE) * PER_SECTION);
        if (columns.areListed(b)) {
            listed(b, board, used, sections);
        } else {
            counted(used, board, room, sections);
        }
    }

    private void listed(int b, BoardKind board, IntVar used, List<LinearExprBuilder> sections) {
        LinearExprBuilder all = LinearExpr.newBuilder().addTerm(used, -1);
        for (List<Integer> plan : columns.plans(b)) {
            IntVar count = model.newIntVar(0, board.count(), "crosscut");
            all.addTerm(count, 1);
            for (int length = 0; length < plan.size(); length++) {
                if (plan.get(length) > 0) {
                    sections.get(length).addTerm(count, PER_SECTION * plan.get(length));
                }
            }
        }
        model.addLessOrEqual(all.build(), 0);
    }

    /** Sections that are together no longer than the boards, and of each length no more than fit on so many. */
    private void counted(IntVar used, BoardKind board, double room, List<LinearExprBuilder> sections) {
        LinearExprBuilder length = LinearExpr.newBuilder();
        for (int i = 0; i < problem.lengths().size(); i++) {
            double each = problem.lengths().get(i) + problem.crosscutKerf();
            long most = (long) Math.floor(room / each);
            IntVar count = model.newIntVar(0, board.count() * most, "sections");
            length.addTerm(count, (long) (each * PER_MILLIMETRE));
            sections.get(i).addTerm(count, PER_SECTION);
            LinearExprBuilder fit = LinearExpr.newBuilder().addTerm(count, 1).addTerm(used, -most);
            model.addLessOrEqual(fit.build(), 0);
        }
        length.addTerm(used, -(long) Math.ceil(room * PER_MILLIMETRE));
        model.addLessOrEqual(length.build(), 0);
    }

    private void rip(CrossSection size, List<LinearExprBuilder> sections) {
        for (int length = 0; length < sections.size(); length++) {
            long most = columns.mostSections(size, length);
            for (RippedPart part : most == 0 ? List.<RippedPart>of() : columns.parts(size)) {
                long share = (long) (part.share() * PER_SECTION);
                long times = part.share() < 1 ? (long) Math.ceil(1 / part.share()) : 1;
                IntVar count = model.newIntVar(0, most * times, "rip");
                sections.get(length).addTerm(count, -share);
                strips.cut(length, count, part.counts());
                length(size, length, part, count, most * times);
            }
            model.addGreaterOrEqual(sections.get(length).build(), 0);
        }
        model.addGreaterOrEqual(roomLeft.get(size).build(), 0);
    }

    /** How long all sections are together that are ripped alike. */
    private void length(CrossSection size, int length, RippedPart part, IntVar count, long most) {
        long longest = (long) Math.ceil(ranges.longest(length) * PER_MILLIMETRE);
        long shortest = (long) (problem.lengths().get(length) * PER_MILLIMETRE);
        IntVar all = model.newIntVar(0, most * longest, "length");
        model.addLessOrEqual(
                LinearExpr.newBuilder().addTerm(all, 1).addTerm(count, -longest).build(), 0);
        model.addGreaterOrEqual(
                LinearExpr.newBuilder()
                        .addTerm(all, 1)
                        .addTerm(count, -shortest)
                        .build(),
                0);
        long share = (long) (part.share() * PER_SECTION);
        roomLeft.get(size).addTerm(all, -share).addTerm(count, -(long)
                (problem.crosscutKerf() * PER_MILLIMETRE * share));
        for (int width = 0; width < lengthLeft.size(); width++) {
            if (part.counts().get(width) > 0) {
                lengthLeft.get(width).addTerm(all, part.counts().get(width));
                rounding[width] += part.counts().get(width);
            }
        }
    }

    /** Only plans that have no more of an aim than this. */
    void atMost(CuttingAim aim, long most) {
        model.addLessOrEqual(count(aim), most);
    }

    private LinearExpr count(CuttingAim aim) {
        LinearExprBuilder count = LinearExpr.newBuilder();
        boards.forEach((used, board) -> count.addTerm(used, aim.perBoard(board)));
        strips.count(aim, count);
        return count.build();
    }

    /** What no plan has less of. */
    long least(CuttingAim aim, Effort effort) {
        model.minimize(count(aim));
        return IntegerSearch.solve(model, effort).bound();
    }
}
