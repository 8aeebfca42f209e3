package org.orbwright.band;

import static java.util.Objects.requireNonNullElse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.SolveRequest.WishRequest;
import org.orbwright.band.Wishes.Wished;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.SphereSet;

/**
 * The best worst wish over all widths in a step, by trying every one of them. It knows nothing of the solver: each
 * design is analysed by {@link BandCalculator} and compared with the wishes.
 */
final class GridSearch {
    private final Wished wished;
    private final String face;
    private final List<WishRequest> wishes;
    private final double[] parts;

    /**
     * Gets ready.
     *
     * @param wished a request whose wishes all state their set
     * @param face the face kind
     */
    GridSearch(Wished wished, String face) {
        this.wished = wished;
        this.face = face;
        List<WishRequest> all = wished.request().wishes();
        this.wishes =
                all.stream().filter(wish -> wish.measure() != Measure.REST).toList();
        this.parts = new double[lamination(wished.design()).bands().size()];
        Arrays.fill(parts, 1);
        wishes.forEach(wish -> parts[wish.band() - 1] = 0);
        all.stream()
                .filter(wish -> wish.measure() == Measure.REST)
                .forEach(wish -> parts[wish.band() - 1] = requireNonNullElse(wish.value(), 1.0));
        if (Arrays.stream(parts).sum() == 0) {
            parts[parts.length - 1] = 1;
        }
    }

    private static LaminationRequest lamination(DesignRequest design) {
        return design.laminations().get(0);
    }

    /** The least largest deviation over all widths that are whole multiples of the step. */
    double best(double step) {
        double width = Design.of(wished.design()).panels().get(0).lamination().width();
        return best(new double[parts.length], 0, wished.design().unit().fromMillimetres(width), step);
    }

    private double best(double[] widths, int band, double left, double step) {
        if (band == parts.length) {
            double sum = Arrays.stream(parts).sum();
            for (int i = 0; i < parts.length; i++) {
                widths[i] = parts[i] > 0 ? left * parts[i] / sum : widths[i];
            }
            return Arrays.stream(widths).allMatch(w -> w > 0.001) ? worst(widths) : Double.POSITIVE_INFINITY;
        }
        if (parts[band] > 0) {
            return best(widths, band + 1, left, step);
        }
        double best = Double.POSITIVE_INFINITY;
        for (int steps = 1; steps * step < left; steps++) {
            widths[band] = steps * step;
            best = Math.min(best, best(widths, band + 1, left - widths[band], step));
        }
        return best;
    }

    /** The largest deviation with widths in the design's unit. */
    double worst(double[] widths) {
        int open = parts.length - 1;
        while (parts[open] == 0) {
            open--;
        }
        LaminationRequest old = lamination(wished.design());
        List<BandRequest> bands = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            bands.add(new BandRequest(old.bands().get(i).species(), i == open ? null : Double.valueOf(widths[i])));
        }
        List<LaminationRequest> laminations = new ArrayList<>(wished.design().laminations());
        laminations.set(0, old.withBands(bands));
        Design design;
        try {
            design = Design.of(wished.design().withLaminations(laminations));
        } catch (ImpossibleDesignException e) {
            return Double.POSITIVE_INFINITY;
        }
        BandSurvival survival = BandCalculator.calculate(design, 2);
        double worst = 0;
        for (WishRequest wish : wishes) {
            SphereSet set = wish.set();
            double shown = Wishes.analysed(design, survival, face, set, wish.band(), wish.measure());
            double inUnit = wish.measure() == Measure.SHARE_OF_SPHERE
                    ? shown
                    : design.unit().fromMillimetres(shown);
            worst = Math.max(worst, Math.abs(inUnit - wish.value()) / wish.value());
        }
        return worst;
    }
}
