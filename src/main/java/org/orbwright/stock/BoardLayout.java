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

/** Lays the sections, lanes and strips of a plan out on its boards, one after the other with a kerf between them. */
final class BoardLayout {
    private final CuttingProblem problem;
    private final Map<Place, Deque<RipPattern>> patterns = new HashMap<>();
    private final List<StripUse> uses;
    private final int[] useLeft;

    /** Where a section comes from, and how long it is. */
    private record Place(CrossSection section, int length) {}

    /**
     * What strips of a kind are for.
     *
     * @param lamination place of the lamination in the request
     * @param band the band, from 1 at the base
     */
    record StripUse(int lamination, int band) {}

    /**
     * Prepares the layout of a plan.
     *
     * @param uses what each kind of strip is for
     */
    BoardLayout(CuttingProblem problem, CuttingPlan plan, List<StripUse> uses) {
        this.problem = problem;
        this.uses = uses;
        this.useLeft = new int[uses.size()];
        for (int s = 0; s < useLeft.length; s++) {
            useLeft[s] = problem.strips().get(s).count() - plan.missing().get(s);
        }
        for (RippedSections ripped : plan.sections()) {
            Deque<RipPattern> queue =
                    patterns.computeIfAbsent(new Place(ripped.section(), ripped.length()), place -> new ArrayDeque<>());
            for (int i = 0; i < ripped.count(); i++) {
                queue.add(ripped.pattern());
            }
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
                    sections.add(section(from, to, size, pattern));
                    from = to + problem.crosscutKerf();
                }
            }
        }
        return sections;
    }

    private Section section(double from, double to, CrossSection size, RipPattern pattern) {
        List<LaneCut> lanes = new ArrayList<>();
        double at = 0;
        for (Lane lane : pattern.lanes()) {
            List<StripCut> strips = lane(lane);
            double bottom = strips.get(strips.size() - 1).to();
            double rest =
                    Math.max(0, size.thickness() - bottom - problem.ripping().kerf());
            lanes.add(new LaneCut(at, at + lane.width(), lane.rotated(), strips, rest));
            at += lane.width() + problem.ripping().kerf();
        }
        return new Section(from, to, lanes, Math.max(0, size.width() - at));
    }

    private List<StripCut> lane(Lane lane) {
        List<StripCut> strips = new ArrayList<>();
        double at = 0;
        for (int item : lane.items()) {
            double width = problem.ripping().widths().get(item);
            double deep = lane.rotated() ? width : problem.ripping().stick();
            StripUse use = use(item);
            strips.add(new StripCut(
                    at, at + deep, width, use == null ? null : use.lamination(), use == null ? null : use.band()));
            at += deep + problem.ripping().kerf();
        }
        return strips;
    }

    /** The first use of a width that still lacks strips; null if there is none. */
    private StripUse use(int width) {
        for (int s = 0; s < useLeft.length; s++) {
            if (problem.strips().get(s).width() == width && useLeft[s] > 0) {
                useLeft[s]--;
                return uses.get(s);
            }
        }
        return null;
    }
}
