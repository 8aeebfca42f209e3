package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.design.Design;
import org.orbwright.stock.CutBoard;
import org.orbwright.stock.CutBoard.StripCut;
import org.orbwright.stock.StockPlan;
import org.orbwright.stock.StockPlan.StripNeed;

/**
 * How the strips of a board are told apart: a tone and a label for each band. They are all of one wood, so that the
 * first band has the wood's tone, and the others have the next.
 */
final class StripKey {
    /** Light grey, with a grid: for what becomes no strip. */
    static final int WASTE = 7;

    private static final int TONES = 8;
    /** In which order tones are taken: those first that look like no other wood. */
    private static final int[] ORDER = {4, 3, 5, 2, 6, 0, 1, WASTE};

    private final Design design;
    private final boolean several;
    private final Map<Use, Integer> tones = new LinkedHashMap<>();

    /** What a strip is for; without a lamination it is a spare one. */
    private record Use(Integer lamination, Integer band, double width) {
        static Use of(StripCut strip) {
            return new Use(strip.lamination(), strip.band(), strip.width());
        }
    }

    StripKey(Design design, StockPlan plan, CutBoard board) {
        this.design = design;
        this.several = plan.strips().stream()
                        .mapToInt(StripNeed::lamination)
                        .distinct()
                        .count()
                > 1;
        int first = Tones.of(List.of(board.species())).get(0);
        for (Use use : uses(board)) {
            tones.put(use, tones.isEmpty() && first % TONES != WASTE ? first : free());
        }
    }

    private int free() {
        int i = 0;
        while (tones.containsValue(tone(i)) || tone(i) % TONES == WASTE) {
            i++;
        }
        return tone(i);
    }

    private static int tone(int i) {
        return ORDER[i % TONES] + i / TONES * TONES;
    }

    private static List<Use> uses(CutBoard board) {
        return board.sections().stream()
                .flatMap(section -> section.lanes().stream())
                .flatMap(lane -> lane.strips().stream())
                .map(Use::of)
                .distinct()
                .sorted(Comparator.comparing(Use::lamination, Comparator.nullsLast(Comparator.naturalOrder()))
                        .thenComparing(Use::band, Comparator.nullsLast(Comparator.naturalOrder())))
                .toList();
    }

    int tone(StripCut strip) {
        return tones.get(Use.of(strip));
    }

    /** What a strip is called, the longest name first. */
    List<String> labels(StripCut strip) {
        if (strip.band() == null) {
            return List.of("spare", "s");
        }
        String full = full(strip.lamination(), strip.band());
        String brief = brief(strip.lamination(), strip.band());
        return strip.piece() == null
                ? List.of(full, brief)
                : List.of(
                        full + ", piece " + strip.piece(),
                        brief + ", piece " + strip.piece(),
                        brief + "-" + strip.piece());
    }

    private String full(int lamination, int band) {
        return (several ? "lamination " + lamination + " " : "") + "band " + band;
    }

    private String brief(int lamination, int band) {
        return several ? lamination + "/" + band : String.valueOf(band);
    }

    /** The key to the tones. */
    Legend legend() {
        List<String> names = new ArrayList<>();
        tones.keySet().forEach(use -> names.add(name(use)));
        names.add("left over or lost");
        List<Integer> all = new ArrayList<>(tones.values());
        all.add(WASTE);
        return new Legend(names, all);
    }

    private String name(Use use) {
        String width = design.say(use.width()) + " wide";
        if (use.band() == null) {
            return "spare, " + width;
        }
        String start = several ? brief(use.lamination(), use.band()) + ": " : "";
        return start + full(use.lamination(), use.band()) + ", " + width;
    }
}
