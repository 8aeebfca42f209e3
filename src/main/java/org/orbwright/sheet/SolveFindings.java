package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.WidthSolution;
import org.orbwright.band.WidthSolution.Seen;
import org.orbwright.band.WidthSolution.SolvedBand;
import org.orbwright.band.WidthSolution.SolvedWish;
import org.orbwright.design.Design;
import org.orbwright.design.SphereSet;
import org.orbwright.quantity.Quantity;
import org.orbwright.quantity.Rounding;

/** What wishes for bands cost: each other, and the bands that nobody wished for. */
final class SolveFindings {
    /** Deviations below this are none; answers show no smaller ones. */
    private static final double NONE = 1e-6;
    /** A part of the lamination that is pressed to the least width that a document may state, in the design's unit. */
    private static final double LEAST = 0.0011;

    /** What a step may add to the largest deviation without a word. Common practice, no source. */
    private static final double STEP_COST = 0.01;

    private static final double HALF = 0.5;

    private final Design design;
    private final WidthSolution solution;
    private final List<Finding> findings = new ArrayList<>();

    private SolveFindings(Design design, WidthSolution solution) {
        this.design = design;
        this.solution = solution;
    }

    static List<Finding> of(Design design, WidthSolution solution) {
        SolveFindings finder = new SolveFindings(design, solution);
        finder.notMet();
        for (SolvedBand band : solution.bands()) {
            for (Seen seen : band.seen()) {
                finder.forgotten(band, seen);
            }
        }
        return finder.findings;
    }

    private void notMet() {
        boolean stepped = solution.worstWithoutStep() != null;
        double exact = stepped ? solution.worstWithoutStep() : solution.worst();
        if (exact >= NONE) {
            compromise(stepped);
        } else if (solution.worst() >= STEP_COST) {
            add(
                    Finding.Severity.NOTE,
                    "The step leaves wish " + farthest().wish() + " "
                            + percent(Math.abs(farthest().deviation())) + " off. Without a step all wishes come true.",
                    "/solve/step");
        }
    }

    private SolvedWish farthest() {
        return solution.wishes().stream()
                .max(Comparator.comparingDouble(wish -> Math.abs(wish.deviation())))
                .orElseThrow();
    }

    private void compromise(boolean stepped) {
        double proved = stepped ? solution.provedWithoutStep() : solution.proved();
        SolvedWish worst = farthest();
        StringBuilder text = new StringBuilder(
                        proved > NONE
                                ? "The wishes cannot all come true."
                                : "No widths were found that meet all wishes.")
                .append(" These widths are a compromise. Wish ")
                .append(worst.wish())
                .append(" is farthest off: band ")
                .append(worst.band())
                .append(" shows ")
                .append(say(worst, worst.shown()))
                .append(" in place of ")
                .append(say(worst, worst.wished()))
                .append(where(worst.set()))
                .append(", ")
                .append(percent(Math.abs(worst.deviation())))
                .append(" off.");
        if (solution.proved() > NONE) {
            text.append(stepped ? " No widths in this step" : " No widths")
                    .append(" bring all wishes nearer than ")
                    .append(Rounding.plain(Math.floor(1e4 * solution.proved()) / 100, 2))
                    .append(" %.");
        }
        for (SolvedWish wish : solution.wishes()) {
            if (wish.worstWithout() != null) {
                text.append(" Without wish ")
                        .append(wish.wish())
                        .append(" the others come as near as ")
                        .append(percent(wish.worstWithout()))
                        .append('.');
            }
        }
        add(Finding.Severity.WARN, text.toString(), "/solve/wishes/" + (worst.wish() - 1));
    }

    private void add(Finding.Severity severity, String text, String field) {
        findings.add(FindingCode.WISHES_NOT_MET.finding(severity, text, field));
    }

    /** Rounded up, but for what answers do not show. */
    private static String percent(double share) {
        return Rounding.plain(Math.ceil(1e4 * (share - HALF * NONE)) / 100, 2) + " %";
    }

    private String say(SolvedWish wish, double value) {
        return wish.measure() == Measure.SHARE_OF_SPHERE
                ? Rounding.plain(100 * value, 2) + " %"
                : design.say(value / Quantity.LENGTH.factor(design.unit()));
    }

    private static String where(SphereSet set) {
        return set == SphereSet.MIXED
                ? " on the mixed sphere"
                : " in the " + set.name().toLowerCase(Locale.ROOT) + " segments";
    }

    /** What a mixed sphere shows least of is shown least in one of its two sets, and told there. */
    private void forgotten(SolvedBand band, Seen seen) {
        boolean wished = solution.wishes().stream()
                .anyMatch(wish -> wish.band() == band.band() && covers(wish.set(), seen.set()));
        boolean pressed = band.rest() && design.unit().fromMillimetres(band.width()) < LEAST;
        boolean lost = straight() ? seen.edgeMiddle() < HALF * band.width() : seen.shareOfSphere() < NONE;
        if (wished || seen.set() == SphereSet.MIXED || !(pressed || lost)) {
            return;
        }
        findings.add(FindingCode.BAND_NOT_WISHED.warn(
                "No wish is about band " + band.band() + " (" + band.species() + ")" + where(seen.set())
                        + ". The wishes leave it "
                        + design.say(seen.edgeMiddle()) + " at the edge middle, of a strip " + design.say(band.width())
                        + " wide. Wish for it too if it is to be seen there.",
                "/solve/wishes"));
    }

    /** Tilted bands need not cross the way to the edge middle. */
    private boolean straight() {
        return design.panels().stream()
                .filter(panel -> panel.face().equals(solution.face()))
                .allMatch(panel -> panel.lamination().straight());
    }

    private static boolean covers(SphereSet wished, SphereSet seen) {
        return wished == seen || wished == SphereSet.MIXED;
    }
}
