package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.orbwright.design.Design;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.stock.CutBoard;
import org.orbwright.stock.CutBoard.LaneCut;
import org.orbwright.stock.CutBoard.StripCut;
import org.orbwright.stock.CutPart;
import org.orbwright.stock.LaminationNames;
import org.orbwright.stock.StockPlan;
import org.orbwright.stock.StripLabels;

/**
 * How the parts of a board look, and what they are called. All that is of use has the tone of the board's own wood:
 * strips of the bands in turn as dark as it is and lighter, spare strips and what is kept lighter still. Waste has no
 * wood's tone.
 */
final class StripKey {
    /** How much of the wood's tone is hidden, for one band after the other. */
    private static final double[] BANDS = {0, 0.35, 0.6};

    private static final double SPARE = 0.75;
    /** The same for wood that is kept. */
    static final double KEPT = 0.82;

    /** Distance of the crossed lines on waste. */
    private static final double WASTE = 1.8;

    private final LengthUnit unit;
    private final int tone;
    private final boolean keeps;
    private final StripLabels labels;
    private final LaminationNames names;
    private final Map<Use, Double> covered = new LinkedHashMap<>();

    /** What a strip is for; without a lamination it is a spare one. */
    private record Use(Integer lamination, Integer band, double width) {
        static Use of(StripCut strip) {
            return new Use(strip.lamination(), strip.band(), strip.width());
        }
    }

    StripKey(Design design, StockPlan plan, CutBoard board) {
        this.unit = design.unit();
        this.labels = new StripLabels(plan);
        this.names = LaminationNames.of(design.request().laminations());
        List<StripCut> strips = board.sections().stream()
                .flatMap(section -> section.lanes().stream())
                .flatMap(lane -> lane.strips().stream())
                .toList();
        this.tone = tone(design, plan, board, strips);
        this.keeps = board.sections().stream()
                        .anyMatch(section ->
                                section.isKept() || section.lanes().stream().anyMatch(LaneCut::isKept))
                || strips.stream().anyMatch(strip -> strip.part() == CutPart.KEPT);
        for (Use use : uses(strips)) {
            covered.put(use, use.band() == null ? SPARE : BANDS[covered.size() % BANDS.length]);
        }
    }

    /** The tone of the wood in all pictures of the design; strips may call it by another name than the board does. */
    private static int tone(Design design, StockPlan plan, CutBoard board, List<StripCut> strips) {
        return strips.stream()
                .filter(strip -> strip.part() == CutPart.STRIP)
                .findFirst()
                .map(strip -> new Legend(design)
                        .tone(plan.strips().get(strip.strip() - 1).species()))
                .orElseGet(() -> Tones.of(List.of(board.species())).get(0));
    }

    private static List<Use> uses(List<StripCut> strips) {
        return strips.stream()
                .filter(strip -> strip.part() != CutPart.KEPT)
                .map(Use::of)
                .distinct()
                .sorted(Comparator.comparing(Use::lamination, Comparator.nullsLast(Comparator.naturalOrder()))
                        .thenComparing(Use::band, Comparator.nullsLast(Comparator.naturalOrder())))
                .toList();
    }

    /** How much of the wood's tone is hidden on a strip, or on what is kept of a lane's thickness. */
    double covered(StripCut strip) {
        return strip.part() == CutPart.KEPT ? KEPT : covered.get(Use.of(strip));
    }

    /** The board's wood with so much of its tone hidden; a dashed outline tells what is kept. */
    List<Mark> wood(double share, PathData path) {
        Pen pen = share == KEPT ? Pen.DASHED : Pen.THIN;
        return share == 0
                ? List.of(new Area(path, tone, pen))
                : List.of(new Area(path, tone, Pen.NONE), new Paper(path, share, pen));
    }

    /** The crossed lines of waste, with its outline. */
    static PathData crossed(Box box) {
        return box.hatch(WASTE).append(box.hatchBack(WASTE)).append(box.path());
    }

    /** What a strip is called, the longest name first. */
    List<String> labels(StripCut strip) {
        String label = labels.of(strip);
        if (strip.part() != CutPart.STRIP) {
            return List.of(label, label.substring(0, 1));
        }
        String full = names.before(strip.lamination(), label);
        String brief = names.shortlyBefore(strip.lamination(), String.valueOf(strip.band()));
        if (strip.piece() == null) {
            return List.of(full, brief);
        }
        List<String> words = new ArrayList<>(List.of(brief, "piece " + strip.piece()));
        words.addAll(labels.blank(strip));
        return List.of(full, String.join(", ", words), brief + "-" + strip.piece());
    }

    /** The key to the looks. */
    Legend legend() {
        Map<String, Function<Box, List<Mark>>> looks = new LinkedHashMap<>();
        covered.forEach((use, share) -> looks.put(name(use), box -> wood(share, box.path())));
        if (keeps) {
            looks.put("left over, to keep", box -> wood(KEPT, box.path()));
        }
        looks.put("waste", box -> List.of(new Line(crossed(box), Pen.THIN)));
        return new Legend(looks);
    }

    private String name(Use use) {
        String width = unit.sayWithFraction(use.width()) + " " + unit.symbol() + " wide";
        if (use.band() == null) {
            return "spare strip, " + width;
        }
        return names.shortlyBefore(use.lamination(), String.valueOf(use.band())) + ": "
                + names.before(use.lamination(), "band " + use.band()) + ", " + width;
    }
}
