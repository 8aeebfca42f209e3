package org.orbwright.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.orbwright.stock.CutBoard.StripCut;
import org.orbwright.stock.StockPlan.StripNeed;

/**
 * What the strips of a plan are called within their lamination. Strips in one piece for the same band are alike,
 * whatever is sawn from their blanks. Pieces have their seams where the blank has its cuts, so a piece names the kind
 * of blank where its lamination has several.
 */
public final class StripLabels {
    /** What is kept is called so. */
    public static final String KEEP = "keep";

    private final List<StripNeed> strips;

    public StripLabels(StockPlan plan) {
        this.strips = plan.strips();
    }

    /**
     * The label of a strip or of what is kept, such as {@code band 2}, {@code band 2, piece 1, turned blank},
     * {@code spare} or {@code keep}.
     */
    public String of(StripCut strip) {
        if (strip.part() != CutPart.STRIP) {
            return strip.part() == CutPart.SPARE ? "spare" : KEEP;
        }
        List<String> parts = new ArrayList<>(List.of("band " + strip.band()));
        if (strip.piece() != null) {
            parts.add("piece " + strip.piece());
            parts.addAll(blank(strip));
        }
        return String.join(", ", parts);
    }

    /** What kind of blank a piece is for, as far as there are several; empty where there is only one. */
    public List<String> blank(StripCut piece) {
        StripNeed need = strips.get(piece.strip() - 1);
        List<String> words = new ArrayList<>();
        if (differ(need, StripNeed::segment) || differ(need, StripNeed::mirrored)) {
            words.add("segments " + need.segment() + (need.mirrored() ? " mirrored" : ""));
        }
        if (need.turned()) {
            words.add("turned blank");
        }
        return words;
    }

    private boolean differ(StripNeed need, Function<StripNeed, Object> what) {
        return strips.stream()
                .filter(other -> other.lamination() == need.lamination())
                .anyMatch(other -> !what.apply(other).equals(what.apply(need)));
    }
}
