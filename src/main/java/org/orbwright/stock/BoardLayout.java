package org.orbwright.stock;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.orbwright.stock.CutBoard.LaneCut;
import org.orbwright.stock.CutBoard.Section;
import org.orbwright.stock.CutBoard.StripCut;
import org.orbwright.stock.CuttingColumns.CrossSection;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingPlan.RippedSections;
import org.orbwright.stock.WoodStrips.StripUse;

/** Lays the sections, lanes and strips of a plan out on its boards, one after the other with a kerf between them. */
final class BoardLayout {
    private final CuttingProblem problem;
    private final KeptWood kept;
    private final Map<Place, Deque<RipPattern>> patterns = new HashMap<>();
    private final List<StripUse> uses;
    private final int firstStrip;
    /** For each width and length of piece, what the pieces are for; those beyond are spare. */
    private final Map<Piece, Deque<Wanted>> pieces = new HashMap<>();

    /** Where a section comes from, and how long it is. */
    private record Place(CrossSection section, int length) {}

    /** A width and a length of piece. */
    private record Piece(int width, int length) {}

    /** A piece of a kind of strip, and its least length. Pieces count from 1; 0 is a strip in one piece. */
    record Wanted(int strip, int piece, double length) {}

    /**
     * Prepares the layout of a plan. The uses say what each kind of strip is for, the first of which has a place in the
     * list of all strips. No strip has a piece that is shorter than the shortest.
     */
    BoardLayout(
            CuttingProblem problem,
            CuttingPlan plan,
            List<StripUse> uses,
            int firstStrip,
            List<Wanted> wanted,
            double shortest) {
        this.problem = problem;
        this.kept = KeptWood.of(problem, shortest);
        this.uses = uses;
        this.firstStrip = firstStrip;
        for (RippedSections ripped : plan.sections()) {
            Deque<RipPattern> queue =
                    patterns.computeIfAbsent(new Place(ripped.section(), ripped.length()), place -> new ArrayDeque<>());
            for (int i = 0; i < ripped.count(); i++) {
                queue.add(ripped.pattern());
            }
        }
        for (int width = 0; width < problem.ripping().widths().size(); width++) {
            share(width, plan, wanted);
        }
    }

    /** Gives each piece, the shortest first, to the longest that is wanted and no longer than it. */
    private void share(int width, CuttingPlan plan, List<Wanted> wanted) {
        TreeMap<Double, Deque<Wanted>> open = new TreeMap<>();
        for (Wanted one : wanted) {
            if (problem.strips().get(one.strip()).width() == width) {
                open.computeIfAbsent(one.length(), length -> new ArrayDeque<>()).add(one);
            }
        }
        TreeMap<Double, Integer> cut = new TreeMap<>();
        for (RippedSections ripped : plan.sections()) {
            cut.put(problem.lengths().get(ripped.length()), ripped.length());
        }
        for (Map.Entry<Double, Integer> length : cut.entrySet()) {
            Deque<Wanted> given = new ArrayDeque<>();
            for (int i = plan.pieces(length.getValue(), width); i > 0 && !open.isEmpty(); i--) {
                Map.Entry<Double, Deque<Wanted>> longest = open.floorEntry(length.getKey() + Ripping.EXACT_FIT);
                if (longest != null) {
                    given.add(longest.getValue().remove());
                    if (longest.getValue().isEmpty()) {
                        open.remove(longest.getKey());
                    }
                }
            }
            pieces.put(new Piece(width, length.getValue()), given);
        }
    }

    /** The sections of the next board of a kind. */
    List<Section> sections(CutBoards cut) {
        CuttingProblem.BoardKind board = problem.boards().get(cut.kind());
        CrossSection size = CrossSection.of(board);
        List<Section> sections = new ArrayList<>();
        double from = 0;
        for (int length = 0; length < cut.sections().size(); length++) {
            for (int i = 0; i < cut.sections().get(length); i++) {
                RipPattern pattern = patterns.getOrDefault(new Place(size, length), new ArrayDeque<>())
                        .poll();
                double to = from + problem.lengths().get(length);
                if (pattern != null) {
                    sections.add(section(from, to, length, size, pattern));
                    from = to + problem.crosscutKerf();
                }
            }
        }
        if (kept.isKept(board.length() - from, board.width(), board.thickness())) {
            sections.add(new Section(from, board.length(), List.of(), 0));
        }
        return sections;
    }

    private Section section(double from, double to, int length, CrossSection size, RipPattern pattern) {
        List<LaneCut> lanes = new ArrayList<>();
        double at = 0;
        for (Lane lane : pattern.lanes()) {
            List<StripCut> strips = lane(lane, length);
            double next = strips.get(strips.size() - 1).to() + problem.ripping().kerf();
            double rest = Math.max(0, size.thickness() - next);
            if (kept.isKept(to - from, lane.width(), rest)) {
                double wide = lane.rotated() ? rest : lane.width();
                strips.add(new StripCut(next, size.thickness(), wide, CutPart.KEPT, null, null, null, null));
                rest = 0;
            }
            lanes.add(new LaneCut(at, at + lane.width(), lane.rotated(), strips, rest));
            at += lane.width() + problem.ripping().kerf();
        }
        double rest = Math.max(0, size.width() - at);
        if (kept.isKept(to - from, rest, size.thickness())) {
            lanes.add(new LaneCut(at, size.width(), false, List.of(), 0));
            rest = 0;
        }
        return new Section(from, to, lanes, rest);
    }

    private List<StripCut> lane(Lane lane, int length) {
        List<StripCut> strips = new ArrayList<>();
        double at = 0;
        for (int item : lane.items()) {
            double width = problem.ripping().widths().get(item);
            double deep = lane.rotated() ? width : problem.ripping().stick();
            strips.add(strip(at, at + deep, item, length));
            at += deep + problem.ripping().kerf();
        }
        return strips;
    }

    private StripCut strip(double from, double to, int width, int length) {
        double wide = problem.ripping().widths().get(width);
        Wanted wanted = pieces.get(new Piece(width, length)).poll();
        if (wanted == null) {
            return new StripCut(from, to, wide, CutPart.SPARE, null, null, null, null);
        }
        StripUse use = uses.get(wanted.strip());
        return new StripCut(
                from,
                to,
                wide,
                CutPart.STRIP,
                firstStrip + wanted.strip() + 1,
                use.blank().lamination() + 1,
                use.band() + 1,
                wanted.piece() == 0 ? null : wanted.piece());
    }
}
