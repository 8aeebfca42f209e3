package org.orbwright.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.stock.BoardLayout.Wanted;
import org.orbwright.stock.SeamArranger.Layers;
import org.orbwright.stock.SeamedStrip.Arrangement;
import org.orbwright.stock.SeamedStrip.Place;
import org.orbwright.stock.StockPlan.BlankLayers;
import org.orbwright.stock.StockPlan.Seam;
import org.orbwright.stock.StockPlan.StripMakeUp;
import org.orbwright.stock.StockPlan.StripNeed;
import org.orbwright.stock.StockPlan.StripPiece;
import org.orbwright.stock.WoodStrips.StripUse;

/** The strips of a kind of blank as they are glued side by side. */
final class GluedStrips {
    private final BlankKind blank;
    private final List<Layers> layers;
    /** For each band the different strips, and how many there are of each. */
    private final List<Map<Arrangement, Integer>> strips = new ArrayList<>();

    GluedStrips(BlankKind blank, List<Layers> layers) {
        this.blank = blank;
        this.layers = List.copyOf(layers);
        for (int band = 0; band < blank.bands().size(); band++) {
            Map<Arrangement, Integer> counts = new LinkedHashMap<>();
            for (Layers layer : layers) {
                if (layer.strips().get(band) != null) {
                    counts.merge(layer.strips().get(band), layer.count(), Integer::sum);
                }
            }
            strips.add(counts);
        }
    }

    /** How many strips of a band are missing. */
    int missing(int band) {
        return blank.strips()
                - strips.get(band).values().stream().mapToInt(Integer::intValue).sum();
    }

    /** The pieces that the strips of a band are made of, for a kind of strip. */
    List<Wanted> wanted(int band, int kind) {
        List<Wanted> wanted = new ArrayList<>();
        strips.get(band).forEach((strip, count) -> {
            int pieces = strip.pieces().size();
            for (int i = 0; i < count * pieces; i++) {
                wanted.add(new Wanted(
                        kind, pieces == 1 ? 0 : i % pieces + 1, strip.pieces().get(i % pieces)));
            }
        });
        return wanted;
    }

    /** What becomes of the strips of a band. */
    StripNeed need(StripUse use, double width, double stick, SeamRules rules) {
        List<StripMakeUp> makeUps = new ArrayList<>();
        strips.get(use.band()).forEach((strip, count) -> makeUps.add(makeUp(use, strip, count, rules)));
        return new StripNeed(
                blank.lamination() + 1,
                blank.segment(),
                blank.mirrored(),
                blank.turned(),
                use.band() + 1,
                use.strip().species(),
                width,
                stick,
                blank.length(),
                blank.strips(),
                missing(use.band()),
                makeUps);
    }

    private static StripMakeUp makeUp(StripUse use, Arrangement strip, int count, SeamRules rules) {
        List<Seam> seams = new ArrayList<>();
        for (Place place : strip.seams()) {
            Double beyond =
                    place.cut() == null ? null : use.blank().beyondKerf(place.cut(), use.band(), rules.overlap());
            seams.add(new Seam(place.at(), place.cut(), beyond));
        }
        return new StripMakeUp(
                count, strip.pieces().stream().map(StripPiece::new).toList(), seams);
    }

    /** Which strips lie side by side in each layer. */
    List<BlankLayers> layers() {
        List<BlankLayers> all = new ArrayList<>();
        for (Layers layer : layers) {
            List<Integer> makeUps = new ArrayList<>();
            for (int band = 0; band < strips.size(); band++) {
                makeUps.add(new ArrayList<>(strips.get(band).keySet())
                                .indexOf(layer.strips().get(band))
                        + 1);
            }
            all.add(new BlankLayers(
                    blank.lamination() + 1, blank.segment(), blank.mirrored(), blank.turned(), layer.count(), makeUps));
        }
        return all;
    }
}
