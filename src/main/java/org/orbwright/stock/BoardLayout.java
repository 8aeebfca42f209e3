package org.orbwright.stock;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.stock.CutBoard.LaneCut;
import org.orbwright.stock.CutBoard.Section;
import org.orbwright.stock.CutBoard.StripCut;
import org.orbwright.stock.CuttingColumns.CrossSection;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingPlan.RippedSections;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.WoodStrips.StripUse;

/** Lays the sections, lanes and strips of a plan out on its boards, one after the other with a kerf between them. */
final class BoardLayout {
    private final CuttingProblem problem;
    private final KeptWood kept;
    private final Map<Place, Deque<RipPattern>> patterns = new HashMap<>();
    private final List<StripUse> uses;
    private final int firstStrip;
    /** For each kind of strip and length, which piece each wanted piece is; 0 for a strip in one piece. */
    private final Map<Wanted, Deque<Integer>> pieces = new HashMap<>();

    /** Where a section comes from, and how long it is. */
    private record Place(CrossSection section, int length) {}

    /** Pieces of a length for a kind of strip. */
    private record Wanted(int strip, int length) {}

    /**
     * Prepares the layout of a plan.
     *
     * @param uses what each kind of strip is for
     * @param firstStrip place of the first kind of strip in the list of all
     */
    BoardLayout(CuttingProblem problem, CuttingPlan plan, List<StripUse> uses, int firstStrip) {
        this.problem = problem;
        this.kept = KeptWood.of(problem);
        this.uses = uses;
        this.firstStrip = firstStrip;
        for (int s = 0; s < uses.size(); s++) {
            List<MakeUp> makeUps = problem.strips().get(s).makeUps();
            for (int m = 0; m < makeUps.size(); m++) {
                for (int i = 0; i < plan.madeUp().get(s).get(m); i++) {
                    wanted(s, makeUps.get(m));
                }
            }
        }
        for (RippedSections ripped : plan.sections()) {
            Deque<RipPattern> queue =
                    patterns.computeIfAbsent(new Place(ripped.section(), ripped.length()), place -> new ArrayDeque<>());
            for (int i = 0; i < ripped.count(); i++) {
                queue.add(ripped.pattern());
            }
        }
    }

    private void wanted(int strip, MakeUp makeUp) {
        for (int piece = 0; piece < makeUp.pieces().size(); piece++) {
            pieces.computeIfAbsent(new Wanted(strip, makeUp.pieces().get(piece)), wanted -> new ArrayDeque<>())
                    .add(makeUp.seams() == 0 ? 0 : piece + 1);
        }
    }

    /** The sections of the next board of a kind. */
    List<Section> sections(CutBoards cut) {
        CuttingProblem.BoardKind board = problem.boards().get(cut.kind());
        CrossSection size = new CrossSection(board.width(), board.thickness());
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

    /** A strip for the first kind that still wants a piece of this width and length; else a spare one. */
    private StripCut strip(double from, double to, int width, int length) {
        double wide = problem.ripping().widths().get(width);
        for (int s = 0; s < uses.size(); s++) {
            Deque<Integer> wanted = pieces.get(new Wanted(s, length));
            if (problem.strips().get(s).width() == width && wanted != null && !wanted.isEmpty()) {
                int piece = wanted.remove();
                StripUse use = uses.get(s);
                return new StripCut(
                        from,
                        to,
                        wide,
                        CutPart.STRIP,
                        firstStrip + s + 1,
                        use.blank().lamination() + 1,
                        use.band() + 1,
                        piece == 0 ? null : piece);
            }
        }
        return new StripCut(from, to, wide, CutPart.SPARE, null, null, null, null);
    }
}
