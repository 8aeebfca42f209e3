package org.orbwright.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.design.Band;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.StripKind;
import org.orbwright.stock.StripsAndBoards.Sawn;
import org.orbwright.wood.Woods;

/** The strips of one wood, and the problem of cutting them from its boards; lengths in millimetres. */
final class WoodStrips {
    private final SeamRules rules;
    private final Sawn sawn;
    private final double length;
    private final double kerf;
    private final List<StripUse> uses = new ArrayList<>();
    private final List<Integer> widthOf = new ArrayList<>();
    private final List<Double> widths = new ArrayList<>();
    private final List<Integer> needed = new ArrayList<>();

    /** What strips of a kind are for: the blank, the band, from 0 at the base, and where seams may be. */
    record StripUse(BlankKind blank, int band, SeamedStrip seams) {
        Band strip() {
            return blank.bands().get(band);
        }
    }

    private WoodStrips(SeamRules rules, Sawn sawn, BlankKind blank) {
        this.rules = rules;
        this.sawn = sawn;
        this.length = blank.length();
        this.kerf = blank.kerf();
    }

    /** The strips of every wood, in the order of the bands; what the names of woods mean is known. */
    static Map<String, WoodStrips> of(List<BlankKind> blanks, SeamRules rules, Sawn sawn, Woods known) {
        Map<String, WoodStrips> woods = new LinkedHashMap<>();
        for (BlankKind blank : blanks) {
            for (int band = 0; band < blank.bands().size(); band++) {
                woods.computeIfAbsent(
                                known.oneName(blank.bands().get(band).species()),
                                name -> new WoodStrips(rules, sawn, blank))
                        .add(new StripUse(blank, band, SeamedStrip.of(blank, band, rules)));
            }
        }
        return woods;
    }

    private void add(StripUse use) {
        double wide = use.strip().width() + sawn.planing();
        int width = 0;
        while (width < widths.size() && Math.abs(widths.get(width) - wide) >= Ripping.EXACT_FIT) {
            width++;
        }
        if (width == widths.size()) {
            widths.add(wide);
            needed.add(0);
        }
        needed.set(width, needed.get(width) + use.blank().strips() * (rules.most() + 1));
        widthOf.add(width);
        uses.add(use);
    }

    /** What each kind of strip is for. */
    List<StripUse> uses() {
        return uses;
    }

    /** The wood, as the first band writes it. */
    String name() {
        return uses.get(0).strip().species();
    }

    /** Width of a kind of strip as it leaves the saw. */
    double width(int kind) {
        return widths.get(widthOf.get(kind));
    }

    SeamRules rules() {
        return rules;
    }

    /** Lengths that are worth while for pieces, that of a whole strip first. */
    PieceLengths lengths() {
        return new PieceLengths(
                length, rules, kerf, uses.stream().map(StripUse::seams).toList());
    }

    /** The problem with pieces of these lengths, that of a whole strip first, and seams in these zones. */
    CuttingProblem problem(List<BoardKind> boards, List<Double> lengths, SeamZone.Pair zones) {
        List<StripKind> kinds = new ArrayList<>();
        for (int kind = 0; kind < uses.size(); kind++) {
            StripUse use = uses.get(kind);
            kinds.add(new StripKind(
                    widthOf.get(kind),
                    use.blank().strips(),
                    MakeUps.of(lengths, rules, use.seams(), zones.of(use.band()))));
        }
        Ripping ripping = new Ripping(widths, needed, sawn.stick(), sawn.ripKerf());
        return new CuttingProblem(ripping, lengths, kerf, boards, kinds);
    }
}
