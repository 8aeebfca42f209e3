package org.orbwright.inlay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.orbwright.band.BandStack;
import org.orbwright.band.BandStack.Layer;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.inlay.TipComparison.GrainRun;
import org.orbwright.inlay.TipComparison.TipRisk;
import org.orbwright.quantity.Rounding;

/**
 * Compares tips by the length of their grain. A crack runs along the grain. So a tip is held by as much wood as the
 * grain is long there ("Short Grain", Design and Technology Online wiki). Closed form.
 */
final class TipCalculator {
    private static final int SHOWN_DECIMALS = 6;
    /** Lengths and angles that differ by less are equal: rounding alone parts them. */
    private static final double EXACT = 1e-9;

    private static final String BASIS =
            "The order rests on geometry alone: how long the grain is at the stated distance"
                    + " from the tip. How well each wood holds there is not known: the table of woods has no strength.";

    /**
     * Where fibres are torn: "Tame Tearout on the Tablesaw", startwoodworking.com, at the bottom and at the back edge
     * of a crosscut. A zero-clearance fence and plate, a sharp blade: the same, and Woodcraft, "6 simple steps for
     * cleaner cuts". The rest: common practice, no source.
     */
    private static final List<String> HELP = List.of(
            "Sawing tears out fibres at the face that is down, and at the edge where the blade leaves. The set-ups of"
                    + " the crosscuts say for each cut where the tip lies.",
            "Free a segment with its base against the gauge: the blade then enters at the thin tip. With the tip"
                    + " against the gauge it leaves there.",
            "Face the gauge with scrap that the blade itself has cut. Lay a plate under the wood whose slot is as wide"
                    + " as the kerf.",
            "A sharp blade for crosscuts tears out less. Feed slowly where the blade leaves the wood.",
            "Bands parallel to the base and equal legs leave a choice: turn the face with the cleaner tip outwards.",
            "Saw segments larger and cut them again where tips chip. recuts in chips says by how much.",
            "None of this makes a cut safe. Hold small pieces in a jig, as the cautions on crosscutting say.");

    private TipCalculator() {}

    static TipComparison compare(InlayRequest request, Design design) {
        double distance = design.unit().toMillimetres(request.tipDistance());
        double smallest = design.facePanels().stream()
                .mapToDouble(Panel::baseDistance)
                .min()
                .orElseThrow();
        if (distance >= smallest) {
            throw InlayCalculator.refuse(
                    "/inlays/tipDistance",
                    "BEYOND_BASE",
                    design.say(distance) + " from the tip lies beyond a base: the shortest segments are "
                            + design.say(smallest) + " high.",
                    Rounding.plain(request.tipDistance(), SHOWN_DECIMALS),
                    "less than " + design.sayAtMost(smallest));
        }
        List<TipRisk> tips = new ArrayList<>();
        for (Panel panel : design.panels()) {
            for (BandSet set : design.setsOf(panel)) {
                panel.sawn().forEach(piece -> tips.add(tip(panel, piece, set, distance)));
            }
        }
        return new TipComparison(distance, BASIS, ranked(tips), HELP);
    }

    private static List<TipRisk> ranked(List<TipRisk> tips) {
        tips.sort(Comparator.comparingDouble(tip -> Rounding.round(tip.grainLength(), SHOWN_DECIMALS)));
        List<TipRisk> ranked = new ArrayList<>();
        for (TipRisk tip : tips) {
            TipRisk before = ranked.isEmpty() ? null : ranked.get(ranked.size() - 1);
            boolean tied = before != null && tip.grainLength() - before.grainLength() < Math.pow(10, -SHOWN_DECIMALS);
            ranked.add(tip.ranked(tied ? before.rank() : ranked.size() + 1));
        }
        return ranked;
    }

    private static TipRisk tip(Panel panel, Piece piece, BandSet set, double distance) {
        double angle = piece.angle(panel.lamination());
        double tanLeft = piece.left() / piece.base();
        double tanRight = piece.right() / piece.base();
        List<Layer> layers = near(panel, piece, set, distance);
        double grainAngle = Math.PI / 2 - Math.abs(angle);
        return new TipRisk(
                0,
                panel.face(),
                piece.segment(),
                piece.mirrored(),
                panel.places(),
                set,
                Math.atan(tanLeft) + Math.atan(tanRight),
                layers.stream().map(Layer::number).toList(),
                layers.stream().map(layer -> layer.band().species()).toList(),
                layers.get(0).band().width(),
                grainAngle < EXACT ? GrainRun.ALONG : angle == 0 ? GrainRun.ACROSS : GrainRun.SLANTED,
                grainAngle,
                distance * (tanLeft + tanRight),
                grainLength(piece, angle, distance));
    }

    /** The bands that reach into the wood between the tip and the distance, the nearest to the tip first. */
    private static List<Layer> near(Panel panel, Piece piece, BandSet set, double distance) {
        double share = distance / piece.base();
        double angle = piece.angle(panel.lamination());
        double most = share * piece.top(angle);
        double least = share * piece.bottom(angle);
        List<Layer> near = new ArrayList<>();
        for (Layer layer : BandStack.of(panel.lamination(), piece, set).layers()) {
            boolean below = layer.outermost() || layer.outer().offset() > least + EXACT;
            boolean above = layer.innermost() || layer.inner().offset() < most - EXACT;
            if (below && above) {
                near.add(layer);
            }
        }
        near.sort(Comparator.comparingDouble(TipCalculator::fromTip));
        return near;
    }

    /** Distance of a band from the tip; 0 for the one that it lies in. */
    private static double fromTip(Layer layer) {
        double inner = layer.innermost()
                ? Math.min(0, layer.inner().offset())
                : layer.inner().offset();
        double outer = layer.outermost()
                ? Math.max(0, layer.outer().offset())
                : layer.outer().offset();
        return Math.max(0, Math.max(inner, -outer));
    }

    /**
     * Length of the line along the bands through a point of the tip axis, inside the segment. It runs to both sides
     * until it meets a leg or the base.
     *
     * @param piece the segment
     * @param angle band angle in it
     * @param distance of the point from the tip, less than the base distance
     */
    static double grainLength(Piece piece, double angle, double distance) {
        return toSide(piece.right() / piece.base(), angle, piece.base(), distance)
                + toSide(piece.left() / piece.base(), -angle, piece.base(), distance);
    }

    /** From {@code (s, 0)} along {@code (-sin d, cos d)} until {@code y = x tan m} or {@code x = base}. */
    private static double toSide(double tan, double angle, double base, double distance) {
        double sin = Math.sin(angle);
        double nearing = Math.cos(angle) + sin * tan;
        double toLeg = nearing > EXACT ? distance * tan / nearing : Double.POSITIVE_INFINITY;
        double toBase = sin < 0 ? (base - distance) / -sin : Double.POSITIVE_INFINITY;
        return Math.min(toLeg, toBase);
    }
}
