package org.orbwright.stock;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.stock.CutBoard.LaneCut;
import org.orbwright.stock.CutBoard.Section;
import org.orbwright.stock.CutBoard.StripCut;

/**
 * The steps that lead from the boards of a plan to its strips, in working order: a board is surfaced, its edges and
 * ends are trimmed, it is crosscut to all of its sections, and one section after the other is ripped and its sticks are
 * sliced. Each section, stick, strip and part that is kept is what comes of exactly one step.
 */
public final class CutList {
    private final CutBoard board;
    private final double jointing;
    private final StripLabels labels;
    private final List<CutStep> steps = new ArrayList<>();

    private CutList(CutBoard board, double jointing, StripLabels labels) {
        this.board = board;
        this.jointing = jointing;
        this.labels = labels;
    }

    /**
     * The steps for all boards of a plan, one board after the other; the unit is that of its allowances. Their labels
     * do not say the lamination; {@link LaminationNames} puts it before them.
     */
    public static List<CutStep> of(StockPlan plan, LengthUnit unit) {
        double jointing = unit.toMillimetres(plan.allowances().jointing());
        StripLabels labels = new StripLabels(plan);
        return plan.boards().stream()
                .flatMap(board -> new CutList(board, jointing, labels).steps().stream())
                .toList();
    }

    private List<CutStep> steps() {
        surface();
        for (int s = 0; s < board.sections().size(); s++) {
            crosscut(s);
        }
        for (int s = 0; s < board.sections().size(); s++) {
            for (int lane = 0; lane < board.sections().get(s).lanes().size(); lane++) {
                rip(s, lane);
            }
            for (int lane = 0; lane < board.sections().get(s).lanes().size(); lane++) {
                slice(s, lane);
            }
        }
        return steps;
    }

    /** Up to the board that is flat, with two straight edges and without its ends. */
    private void surface() {
        double length = board.length();
        double width = board.width();
        double thickness = board.surfacedThickness();
        board(
                board.offer() == null ? CutOperation.TAKE : CutOperation.BUY,
                null,
                null,
                new Measures(length, width, board.thickness()));
        if (board.thickness() - thickness > Ripping.EXACT_FIT) {
            board(CutOperation.SURFACE, thickness, null, new Measures(length, width, thickness));
        }
        if (jointing > 0) {
            board(CutOperation.JOINT_EDGE, jointing, 0.0, new Measures(length, width - jointing, thickness));
        }
        width = board.clearWidth();
        if (board.width() - jointing - width > Ripping.EXACT_FIT) {
            board(CutOperation.CLEAN_EDGE, width, width, new Measures(length, width, thickness));
        }
        double end = (length - board.clearLength()) / 2;
        if (end > 0) {
            board(CutOperation.TRIM_END, end, 0.0, new Measures(length - end, width, thickness));
            length = board.clearLength();
            board(CutOperation.TRIM_END, end, length, new Measures(length, width, thickness));
        }
    }

    private void crosscut(int s) {
        Section section = board.sections().get(s);
        boolean last = s + 1 == board.sections().size();
        double next = last ? 0 : board.sections().get(s + 1).from();
        CutOff cut = cut(
                CutOperation.CROSSCUT,
                section.to() - section.from(),
                section.to(),
                board.clearLength(),
                last ? board.lengthWaste() : board.clearLength() - next,
                last);
        Measures measures = new Measures(section.to() - section.from(), board.clearWidth(), board.surfacedThickness());
        add(cut, s, null, section.isKept() ? CutPart.KEPT : CutPart.SECTION, measures, null);
    }

    private void rip(int s, int l) {
        Section section = board.sections().get(s);
        LaneCut lane = section.lanes().get(l);
        boolean last = l + 1 == section.lanes().size();
        double width = lane.to() - lane.from();
        double next = last ? 0 : section.lanes().get(l + 1).from();
        CutOff cut = cut(
                CutOperation.RIP,
                width,
                lane.to(),
                board.clearWidth(),
                last ? section.widthWaste() : board.clearWidth() - next,
                last);
        Measures measures = new Measures(section.to() - section.from(), width, board.surfacedThickness());
        StripCut strip = isStrip(lane) ? lane.strips().get(0) : null;
        CutPart uncut = lane.isKept() ? CutPart.KEPT : CutPart.STICK;
        add(cut, s, l, strip == null ? uncut : strip.part(), measures, strip);
    }

    /** Whether a lane is a strip as soon as it is ripped. */
    private boolean isStrip(LaneCut lane) {
        return !lane.rotated()
                && lane.strips().size() == 1
                && board.surfacedThickness() - lane.strips().get(0).to() <= Ripping.EXACT_FIT;
    }

    private void slice(int s, int l) {
        Section section = board.sections().get(s);
        LaneCut lane = section.lanes().get(l);
        List<StripCut> strips = isStrip(lane) ? List.of() : lane.strips();
        double length = section.to() - section.from();
        for (int i = 0; i < strips.size(); i++) {
            StripCut strip = strips.get(i);
            boolean last = i + 1 == strips.size();
            double deep = strip.to() - strip.from();
            CutOff cut = cut(
                    lane.rotated() ? CutOperation.SLICE : CutOperation.RESAW,
                    deep,
                    strip.to(),
                    board.surfacedThickness(),
                    last
                            ? lane.thicknessWaste()
                            : board.surfacedThickness() - strips.get(i + 1).from(),
                    last);
            Measures measures = new Measures(length, strip.width(), lane.rotated() ? lane.to() - lane.from() : deep);
            add(cut, s, l, strip.part(), measures, strip);
        }
    }

    /** How a part is cut off, and what is left for the next part or as waste. */
    private record CutOff(CutOperation operation, Double setting, Double position, Double left, Double waste) {}

    /** The measures of a part. */
    private record Measures(double length, double width, double thickness) {}

    /** A cut, or none where the part ends with the wood; a shaving of no more than a kerf is not sawn off. */
    private static CutOff cut(
            CutOperation operation, double setting, double position, double end, double left, boolean last) {
        if (end - position <= Ripping.EXACT_FIT) {
            return new CutOff(CutOperation.KEEP, null, position, null, null);
        }
        if (left <= Ripping.EXACT_FIT) {
            return new CutOff(CutOperation.TRIM, setting, position, null, null);
        }
        return new CutOff(operation, setting, position, last ? null : left, last ? left : null);
    }

    private void board(CutOperation operation, Double setting, Double position, Measures measures) {
        add(new CutOff(operation, setting, position, null, null), null, null, CutPart.BOARD, measures, null);
    }

    private void add(CutOff cut, Integer section, Integer lane, CutPart part, Measures measures, StripCut strip) {
        String kept = part == CutPart.KEPT ? StripLabels.KEEP : null;
        steps.add(new CutStep(
                board.number(),
                board.name(),
                board.species(),
                steps.size() + 1,
                cut.operation(),
                section == null ? null : Integer.valueOf(section + 1),
                lane == null ? null : Integer.valueOf(lane + 1),
                cut.setting(),
                cut.position(),
                part,
                measures.length(),
                measures.width(),
                measures.thickness(),
                strip == null ? kept : labels.of(strip),
                cut.left(),
                cut.waste(),
                strip == null ? null : strip.lamination(),
                strip == null ? null : strip.band(),
                strip == null ? null : strip.piece()));
    }
}
