package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.band.BandSurvival;
import org.orbwright.band.BandSurvival.BandView;
import org.orbwright.band.BandSurvival.SegmentBands;
import org.orbwright.band.BandSurvival.VisibleWidth;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.quantity.Rounding;

/** What happens to the bands of a design that its author may not want. */
final class BandFindings {
    private static final double HALF = 0.5;
    /** Widths below this are nothing, in millimetres; a finished surface is not better than that. */
    private static final double NOTHING = 1e-3;

    private final Design design;
    private final List<Finding> findings = new ArrayList<>();

    private BandFindings(Design design) {
        this.design = design;
    }

    static List<Finding> of(Design design, BandSurvival bands) {
        BandFindings finder = new BandFindings(design);
        for (int i = 0; i < design.panels().size(); i++) {
            Panel panel = design.panels().get(i);
            List<SegmentBands> segments = bands.faces().get(i).segments();
            finder.wide(panel);
            for (int band = 0; band < panel.lamination().bands().size(); band++) {
                for (BandSet set : BandSet.values()) {
                    if (isUsed(design, panel, set)) {
                        finder.band(panel, segments, band, set);
                    }
                }
            }
        }
        return finder.findings;
    }

    /** Only what is built is judged. */
    private static boolean isUsed(Design design, Panel panel, BandSet set) {
        return panel.lamination().used(set) == set && design.panelsOf(panel.face(), set) > 0;
    }

    /** One finding for a band of a set, about the kind of segment in which least of it is left. */
    private void band(Panel panel, List<SegmentBands> segments, int band, BandSet set) {
        BandView worst = null;
        String segment = "";
        for (SegmentBands candidate : segments) {
            List<BandView> views = set == BandSet.UPRIGHT ? candidate.upright() : candidate.inverted();
            BandView view = views.get(set == BandSet.UPRIGHT ? band : views.size() - 1 - band);
            if (view.flatArea() > 0 && (worst == null || widest(view) < widest(worst))) {
                worst = view;
                segment = candidate.segment();
            }
        }
        if (worst != null) {
            judge(panel, worst, place(panel, segments, segment, set));
        }
    }

    private static double widest(BandView view) {
        return view.visibleWidth().widest();
    }

    private void judge(Panel panel, BandView view, String place) {
        VisibleWidth visible = view.visibleWidth();
        String band = "Band " + view.band() + " (" + view.species() + ", " + design.say(view.flatWidth()) + " wide)";
        String field = panel.lamination().pointer() + "/bands/" + (view.band() - 1) + "/width";
        if (visible.widest() < NOTHING) {
            findings.add(FindingCode.BAND_VANISHES.stop(
                    band + " vanishes on the sphere" + place + ": nothing of it is left above the seams.", field));
        } else if (thinned(panel, view)) {
            findings.add(FindingCode.BAND_THINNED.warn(
                    band + " is thinned below half" + place + ": at most " + design.say(visible.widest())
                            + " of its width can be seen on the sphere, and "
                            + Rounding.plain(100 * view.survival(), 0) + " % of its area.",
                    field));
        } else if (panel.lamination().straight()
                && visible.edgeMiddle() >= NOTHING
                && Math.min(visible.leftCorner(), visible.rightCorner()) < NOTHING) {
            findings.add(FindingCode.BAND_ENDS_BEFORE_CORNER.note(
                    band + " is " + design.say(visible.edgeMiddle()) + " wide at the edge middle" + place
                            + " and runs out before the corners.",
                    field));
        }
    }

    /** Of a tilted band only a part lies on the segment, so that its area tells more than its width. */
    private static boolean thinned(Panel panel, BandView view) {
        return panel.lamination().straight()
                ? view.visibleWidth().widest() < HALF * view.flatWidth()
                : view.survival() < HALF;
    }

    private static String place(Panel panel, List<SegmentBands> segments, String segment, BandSet set) {
        boolean oneKind = segments.stream().allMatch(s -> s.segment().equals(segment));
        String kind = oneKind ? "segments" : "segments " + segment;
        String side = panel.lamination().sets() == 1 ? "" : set == BandSet.UPRIGHT ? "upright " : "inverted ";
        return " in the " + side + Words.half(panel.places()) + kind + " of the " + panel.face() + " panels";
    }

    private void wide(Panel panel) {
        double widest = 0;
        for (Piece piece : panel.pieces()) {
            widest = Math.max(widest, piece.extent(piece.angle(panel.lamination())));
        }
        double spare = panel.lamination().width() - widest;
        if (!panel.lamination().straight() && spare > NOTHING) {
            findings.add(FindingCode.LAMINATION_WIDER.note(
                    "The tilted bands of the " + panel.face() + " lamination are " + design.say(spare)
                            + " wider together than any of its segments. What lies beyond is cut off.",
                    panel.lamination().pointer() + "/bands"));
        }
    }
}
