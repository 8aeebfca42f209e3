package org.orbwright.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.design.Band;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;
import org.orbwright.stock.Rack.Stock;
import org.orbwright.stock.SeamPlanner.BlankSeams;
import org.orbwright.stock.SeamPlanner.MadeUpStrip;
import org.orbwright.stock.SeamPlanner.SeamPlace;
import org.orbwright.stock.StockPlan.Seam;
import org.orbwright.stock.StockPlan.StripMakeUp;
import org.orbwright.stock.StockPlan.StripNeed;
import org.orbwright.stock.StockPlan.StripPiece;
import org.orbwright.wood.Woods;

/** The strips of one wood, and the problem of cutting them from its boards; lengths in millimetres. */
final class WoodStrips {
    private final List<StripUse> uses = new ArrayList<>();
    private final List<StripKind> kinds = new ArrayList<>();
    private final List<Double> widths = new ArrayList<>();
    private final List<Integer> needed = new ArrayList<>();
    private final List<Double> lengths = new ArrayList<>();

    /**
     * What strips of a kind are for.
     *
     * @param blank the kind of blank
     * @param band the band, from 0 at the base
     * @param ways the ways to make one up
     */
    record StripUse(BlankKind blank, int band, List<MadeUpStrip> ways) {
        StripUse {
            ways = List.copyOf(ways);
        }

        Band strip() {
            return blank.bands().get(band);
        }
    }

    private WoodStrips(double blankLength) {
        lengths.add(blankLength);
    }

    /**
     * The strips of every wood, in the order of the bands.
     *
     * @param blanks the kinds of blank
     * @param seams the seams of each
     * @param planing what a strip is ripped wider than its band
     * @param known what the names of woods mean
     */
    static Map<String, WoodStrips> of(List<BlankKind> blanks, List<BlankSeams> seams, double planing, Woods known) {
        Map<String, WoodStrips> woods = new LinkedHashMap<>();
        for (int i = 0; i < blanks.size(); i++) {
            BlankKind blank = blanks.get(i);
            for (int band = 0; band < blank.bands().size(); band++) {
                woods.computeIfAbsent(
                                known.oneName(blank.bands().get(band).species()),
                                name -> new WoodStrips(blank.length()))
                        .add(new StripUse(blank, band, seams.get(i).of(band)), planing);
            }
        }
        return woods;
    }

    private void add(StripUse use, double planing) {
        int width = findOrAdd(widths, use.strip().width() + planing);
        if (width == needed.size()) {
            needed.add(0);
        }
        int most =
                use.ways().stream().mapToInt(way -> way.pieces().size()).max().orElse(1);
        needed.set(width, needed.get(width) + use.blank().strips() * most);
        List<MakeUp> makeUps = use.ways().stream()
                .map(way -> new MakeUp(way.pieces().stream()
                        .map(length -> findOrAdd(lengths, length))
                        .toList()))
                .toList();
        kinds.add(new StripKind(width, use.blank().strips(), makeUps));
        uses.add(use);
    }

    private static int findOrAdd(List<Double> values, double value) {
        for (int i = 0; i < values.size(); i++) {
            if (Math.abs(values.get(i) - value) < Ripping.EXACT_FIT) {
                return i;
            }
        }
        values.add(value);
        return values.size() - 1;
    }

    /** What each kind of strip is for. */
    List<StripUse> uses() {
        return uses;
    }

    /** The wood, as the first band writes it. */
    String name() {
        return uses.get(0).strip().species();
    }

    /** The problem of cutting the strips from boards. */
    CuttingProblem problem(List<Stock> stock, double stick, double ripKerf) {
        List<BoardKind> boards = stock.stream()
                .map(one -> new BoardKind(
                        one.surfacing().length(),
                        one.surfacing().width(),
                        one.surfacing().thickness(),
                        one.board().count(),
                        one.cost(),
                        one.volume()))
                .toList();
        return new CuttingProblem(
                new Ripping(widths, needed, stick, ripKerf),
                lengths,
                uses.get(0).blank().kerf(),
                boards,
                kinds);
    }

    /** What becomes of a kind of strip in a plan. */
    StripNeed need(int kind, CuttingPlan plan, double stick, SeamRules rules) {
        StripUse use = uses.get(kind);
        BlankKind blank = use.blank();
        List<StripMakeUp> makeUps = new ArrayList<>();
        for (int way = 0; way < use.ways().size(); way++) {
            int count = plan.madeUp().get(kind).get(way);
            if (count > 0) {
                makeUps.add(makeUp(use, use.ways().get(way), count, rules));
            }
        }
        return new StripNeed(
                blank.lamination(),
                blank.segment(),
                blank.mirrored(),
                blank.turned(),
                use.band() + 1,
                use.strip().species(),
                widths.get(kinds.get(kind).width()),
                stick,
                blank.length(),
                blank.strips(),
                plan.missing().get(kind),
                seamPlaces(use),
                makeUps);
    }

    private static int seamPlaces(StripUse use) {
        return (int) use.ways().stream()
                .flatMap(way -> way.seams().stream())
                .distinct()
                .count();
    }

    private static StripMakeUp makeUp(StripUse use, MadeUpStrip way, int count, SeamRules rules) {
        List<Seam> seams = new ArrayList<>();
        for (SeamPlace place : way.seams()) {
            Double beyond =
                    place.cut() == null ? null : use.blank().beyondKerf(place.cut(), use.band(), rules.overlap());
            seams.add(new Seam(place.at().get(use.band()), place.cut(), beyond));
        }
        return new StripMakeUp(count, way.pieces().stream().map(StripPiece::new).toList(), seams);
    }
}
