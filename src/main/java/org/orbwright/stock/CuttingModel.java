package org.orbwright.stock;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.orbwright.stock.CuttingColumns.CrossSection;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingPlan.RippedSections;
import org.orbwright.stock.CuttingProblem.BoardKind;

/**
 * The integer program of a cutting problem. Its counts: boards of a kind that are crosscut in a way, sections of a
 * length that are ripped in a way, and the {@linkplain StripCounts strips}.
 */
final class CuttingModel {
    /**
     * Lengths of boards that can be crosscut in many ways are added up in whole hundred millionths of a millimetre, so
     * that what fits exactly fits in a hundred sections too.
     */
    private static final double PER_MILLIMETRE = 1e8;

    private final CuttingColumns columns;
    private final CuttingProblem problem;
    private final CpModel model = IntegerSearch.model();
    private final List<Crosscut> crosscuts = new ArrayList<>();
    private final List<OneByOne> units = new ArrayList<>();
    private final List<Rip> rips = new ArrayList<>();
    private final StripCounts strips;

    /** How many boards of a kind are crosscut in a way. */
    private record Crosscut(int board, List<Integer> plan, IntVar count) {}

    /** Whether a board is cut, and how many sections of each length come of it. */
    private record OneByOne(int board, IntVar used, List<IntVar> sections) {}

    /** How many sections of a length are ripped in a way. */
    private record Rip(CrossSection section, int length, RipPattern pattern, IntVar count) {}

    /**
     * What came of a search: the best plan found, or null, and what no plan of the model has less of. It ended if the
     * plan is proved best of those in the model, or if there is none.
     */
    record Result(CuttingPlan plan, long bound, boolean ended) {}

    CuttingModel(CuttingColumns columns) {
        this.columns = columns;
        this.problem = columns.problem();
        this.strips = new StripCounts(model, problem);
        Map<CrossSection, List<LinearExprBuilder>> sections = new LinkedHashMap<>();
        columns.sections()
                .forEach(size ->
                        sections.put(size, StripCounts.sums(problem.lengths().size())));
        for (int b = 0; b < problem.boards().size(); b++) {
            crosscut(b, sections.get(CrossSection.of(problem.boards().get(b))));
        }
        sections.forEach(this::rip);
        strips.suffice();
    }

    private void crosscut(int b, List<LinearExprBuilder> sections) {
        BoardKind board = problem.boards().get(b);
        if (columns.isOneByOne(b)) {
            for (int i = 0; i < board.count(); i++) {
                oneByOne(b, board, sections);
            }
            return;
        }
        LinearExprBuilder all = LinearExpr.newBuilder();
        for (List<Integer> plan : columns.plans(b)) {
            IntVar count = model.newIntVar(0, board.count(), "crosscut");
            crosscuts.add(new Crosscut(b, plan, count));
            all.addTerm(count, 1);
            for (int length = 0; length < plan.size(); length++) {
                if (plan.get(length) > 0) {
                    sections.get(length).addTerm(count, plan.get(length));
                }
            }
        }
        model.addLessOrEqual(all.build(), board.count());
    }

    private void oneByOne(int b, BoardKind board, List<LinearExprBuilder> sections) {
        double room = board.length() + problem.crosscutKerf() + Ripping.EXACT_FIT;
        IntVar used = model.newBoolVar("used");
        LinearExprBuilder length = LinearExpr.newBuilder();
        List<IntVar> counts = new ArrayList<>();
        for (int i = 0; i < problem.lengths().size(); i++) {
            double each = problem.lengths().get(i) + problem.crosscutKerf();
            IntVar count = model.newIntVar(0, (long) Math.floor(room / each), "sections");
            length.addTerm(count, (long) Math.ceil(each * PER_MILLIMETRE));
            sections.get(i).addTerm(count, 1);
            counts.add(count);
        }
        length.addTerm(used, -(long) Math.floor(room * PER_MILLIMETRE));
        model.addLessOrEqual(length.build(), 0);
        if (!units.isEmpty() && units.get(units.size() - 1).board() == b) {
            model.addLessOrEqual(used, units.get(units.size() - 1).used());
        }
        units.add(new OneByOne(b, used, counts));
    }

    private void rip(CrossSection size, List<LinearExprBuilder> sections) {
        for (int length = 0; length < sections.size(); length++) {
            long most = columns.mostSections(size, length);
            for (RipPattern pattern : most == 0 ? List.<RipPattern>of() : columns.patterns(size)) {
                IntVar count = model.newIntVar(0, most, "rip");
                sections.get(length).addTerm(count, -1);
                strips.cut(length, count, pattern.counts());
                rips.add(new Rip(size, length, pattern, count));
            }
            model.addGreaterOrEqual(sections.get(length).build(), 0);
        }
    }

    /** Only plans that have no more of an aim than this. */
    void atMost(CuttingAim aim, long most) {
        model.addLessOrEqual(count(aim), most);
    }

    private LinearExpr count(CuttingAim aim) {
        LinearExprBuilder count = LinearExpr.newBuilder();
        crosscuts.forEach(
                cut -> count.addTerm(cut.count, aim.perBoard(problem.boards().get(cut.board))));
        units.forEach(
                unit -> count.addTerm(unit.used, aim.perBoard(problem.boards().get(unit.board))));
        strips.count(aim, count);
        return count.build();
    }

    /** A plan to begin the search with. */
    void hint(CuttingPlan plan) {
        model.clearHints();
        Map<Crosscut, Integer> cut = new HashMap<>();
        List<CutBoards> boards = new ArrayList<>();
        for (CutBoards one : plan.boards()) {
            for (int i = 0; i < one.count(); i++) {
                boards.add(one);
            }
        }
        for (CutBoards board : boards) {
            crosscuts.stream()
                    .filter(crosscut -> crosscut.board == board.kind() && covers(crosscut.plan, board.sections()))
                    .findFirst()
                    .ifPresent(crosscut -> cut.merge(crosscut, 1, Integer::sum));
        }
        crosscuts.forEach(crosscut -> model.addHint(crosscut.count, cut.getOrDefault(crosscut, 0)));
        for (OneByOne unit : units) {
            CutBoards one = boards.stream()
                    .filter(board -> board.kind() == unit.board)
                    .findFirst()
                    .orElse(null);
            boards.remove(one);
            model.addHint(unit.used, one == null ? 0 : 1);
            for (int i = 0; i < unit.sections.size(); i++) {
                model.addHint(
                        unit.sections.get(i), one == null ? 0 : one.sections().get(i));
            }
        }
        for (Rip rip : rips) {
            int count = plan.sections().stream()
                    .filter(ripped -> ripped.section().equals(rip.section)
                            && ripped.length() == rip.length
                            && ripped.pattern().equals(rip.pattern))
                    .mapToInt(RippedSections::count)
                    .sum();
            model.addHint(rip.count, count);
        }
        strips.hint(plan);
    }

    private static boolean covers(List<Integer> plan, List<Integer> sections) {
        return IntStream.range(0, plan.size()).allMatch(i -> plan.get(i) >= sections.get(i));
    }

    /** Searches for a plan with the least of an aim. */
    Result least(CuttingAim aim, Effort effort) {
        model.minimize(count(aim));
        IntegerSearch.Outcome outcome = IntegerSearch.solve(model, effort);
        return new Result(outcome.found() ? plan(outcome.solver()) : null, outcome.bound(), outcome.ended());
    }

    private CuttingPlan plan(CpSolver solver) {
        Map<CutBoards, Integer> cut = new LinkedHashMap<>();
        for (Crosscut crosscut : crosscuts) {
            add(cut, crosscut.board, crosscut.plan, (int) solver.value(crosscut.count));
        }
        for (OneByOne unit : units) {
            List<Integer> plan = unit.sections.stream()
                    .map(count -> (int) solver.value(count))
                    .toList();
            add(cut, unit.board, plan, plan.stream().anyMatch(count -> count > 0) ? 1 : 0);
        }
        List<CutBoards> boards = new ArrayList<>();
        cut.forEach((one, count) -> boards.add(new CutBoards(one.kind(), count, one.sections())));
        List<RippedSections> ripped = new ArrayList<>();
        for (Rip rip : rips) {
            int count = (int) solver.value(rip.count);
            if (count > 0) {
                ripped.add(new RippedSections(rip.section, rip.length, count, rip.pattern));
            }
        }
        return new CuttingPlan(boards, ripped, strips.madeUp(solver), strips.missing(solver));
    }

    private static void add(Map<CutBoards, Integer> cut, int board, List<Integer> plan, int count) {
        if (count > 0) {
            cut.merge(new CutBoards(board, 1, plan), count, Integer::sum);
        }
    }
}
