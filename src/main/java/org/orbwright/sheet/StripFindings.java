package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.orbwright.design.Band;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.Panel;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.stock.StockRequest;

/**
 * Strips that machines do not hold.
 *
 * <p>Ripping: below 1/4 in a strip is not ripped between fence and blade, since it may shatter and kick back (WOOD
 * magazine, "The skinny on cutting thin parts"): a WARN. Below 1/16 in nothing that was read rips it at all; ways for
 * strips of 1/16 in are shown (Guild of New Hampshire Woodworkers, "Ripping thin stock"; WOOD magazine, issue 208): a
 * STOP. A strip that is narrower than the kerf may also drop into the slot beside the blade (common practice, no
 * source).
 *
 * <p>Planing: the manuals of planers that were read ask for at least 3/16 in (Craftex CX125HC) to 1/2 in (Jet
 * JPM-13CS): below the most cautious a WARN, below all of them a STOP.
 */
final class StripFindings {
    private static final double NARROW = LengthUnit.IN.toMillimetres(1 / 4.0);
    private static final double NARROWEST = LengthUnit.IN.toMillimetres(1 / 16.0);
    private static final double THIN = LengthUnit.IN.toMillimetres(1 / 2.0);
    private static final double THINNEST = LengthUnit.IN.toMillimetres(3 / 16.0);
    /** A limit as it is printed is kept, in millimetres. */
    private static final double PRINTED = 0.01;

    private final Design design;
    private final List<Finding> findings = new ArrayList<>();

    private StripFindings(Design design) {
        this.design = design;
    }

    /** A band of a lamination. */
    private record Strip(Panel panel, int index, Band band) {
        private double width() {
            return band.width();
        }

        private String name() {
            return "Band " + (index + 1) + " (" + band.species() + ") of the " + Words.half(panel.places())
                    + panel.face() + " segments";
        }

        private String pointer() {
            return panel.lamination().pointer() + "/bands/" + index + "/width";
        }
    }

    /** Strips that are hard to rip, or are not to be ripped; for each lamination the narrowest of each kind. */
    static List<Finding> of(Design design) {
        StripFindings finder = new StripFindings(design);
        for (Panel panel : design.panels()) {
            finder.narrowest(panel, 0, NARROWEST, finder::unripped);
            finder.narrowest(panel, NARROWEST, NARROW, finder::narrow);
        }
        return finder.findings;
    }

    /** Strips that are too thin to be planed, where that is planned; for each lamination the thinnest of each kind. */
    static List<Finding> planed(StockRequest request, Design design) {
        StripFindings finder = new StripFindings(design);
        if (request.allowances().stripPlaning() > 0) {
            for (Panel panel : design.panels()) {
                finder.narrowest(panel, 0, THINNEST, finder::unplaned);
                finder.narrowest(panel, THINNEST, THIN, finder::thin);
            }
        }
        return finder.findings;
    }

    /** Says something of a strip. */
    private interface Judge {
        void judge(Strip strip, String others);
    }

    private void narrowest(Panel panel, double from, double below, Judge judge) {
        List<Strip> strips = new ArrayList<>();
        List<Band> bands = panel.lamination().bands();
        for (int i = 0; i < bands.size(); i++) {
            double width = bands.get(i).width();
            if (width >= from - PRINTED && width < below - PRINTED) {
                strips.add(new Strip(panel, i, bands.get(i)));
            }
        }
        int others = strips.size() - 1;
        strips.stream()
                .min(Comparator.comparingDouble(Strip::width))
                .ifPresent(strip -> judge.judge(
                        strip,
                        others <= 0
                                ? ""
                                : " The same goes for " + others + (others == 1 ? " other band." : " other bands.")));
    }

    private void unripped(Strip strip, String others) {
        findings.add(FindingCode.NARROW_STRIP.stop(
                strip.name() + " is only " + design.say(strip.width()) + " wide. No way was found to rip a strip"
                        + " narrower than " + design.say(NARROWEST)
                        + ". Do not saw it: glue in veneer of that thickness, or make the band wider." + others,
                strip.pointer()));
    }

    private void narrow(Strip strip, String others) {
        boolean dropped = design.has(DesignPart.KERF) && strip.width() < design.kerf();
        findings.add(FindingCode.NARROW_STRIP.warn(
                strip.name() + " is only " + design.say(strip.width()) + " wide. Between fence and blade strips"
                        + " narrower than " + design.say(NARROW) + " can shatter and kick back (WOOD magazine, The"
                        + " skinny on cutting thin parts). The guard leaves no room for a push stick there. Saw it off"
                        + " the free side of a wider strip or at the band saw, as the saw's manual shows."
                        + (dropped
                                ? " It is narrower than the kerf of " + design.say(design.kerf())
                                        + ", and can drop into the slot beside the blade."
                                : "")
                        + others,
                strip.pointer()));
    }

    private void unplaned(Strip strip, String others) {
        findings.add(FindingCode.THIN_TO_PLANE.stop(
                strip.name() + " is planed to " + design.say(strip.width()) + ", and no manual of a planer that was"
                        + " read allows less than " + design.say(THINNEST)
                        + ". Thin wood breaks up and is thrown back. Plane the wider piece before the strip is sawn off"
                        + " it, or plane it by hand." + others,
                strip.pointer()));
    }

    private void thin(Strip strip, String others) {
        findings.add(FindingCode.THIN_TO_PLANE.warn(
                strip.name() + " is planed to " + design.say(strip.width()) + ". Manuals of planers ask for at least "
                        + design.say(THINNEST) + " to " + design.say(THIN)
                        + ". Look it up in yours, or plane the wider piece before the strip is sawn off it." + others,
                strip.pointer()));
    }
}
