package org.orbwright.stock;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Band;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.segment.SegmentCalculator;
import org.orbwright.segment.SegmentPlan.Cut;
import org.orbwright.segment.SegmentPlan.FaceSegments;
import org.orbwright.segment.SegmentPlan.SegmentCut;
import org.orbwright.segment.Yield;
import org.orbwright.segment.Yield.LaminationYield;
import org.orbwright.segment.Yield.SegmentYield;

/**
 * Blanks that are laminated and sawn alike. Lengths are in millimetres, along the blank from the end where the first
 * cut is made. The place of the lamination counts from 0. A turned blank is turned end for end before that cut. The
 * strips of a band are one for each layer of each blank, and the spares. Bands count from the base, and the kerf is
 * that of the cuts.
 */
record BlankKind(
        int lamination,
        String segment,
        boolean mirrored,
        boolean turned,
        int strips,
        double length,
        List<Band> bands,
        double kerf,
        List<Cut> cuts) {
    BlankKind {
        bands = List.copyOf(bands);
        cuts = List.copyOf(cuts);
    }

    /** The kinds of blank of a design; none of laminations whose blank is too short for a segment. */
    static List<BlankKind> of(Design design, Yield yields) {
        List<FaceSegments> faces = SegmentCalculator.calculate(design).faces();
        List<BlankKind> kinds = new ArrayList<>();
        for (int i = 0; i < faces.size(); i++) {
            LaminationYield yield = yields.laminations().get(i);
            for (int piece = 0;
                    yield.blanks() != null && piece < yield.segments().size();
                    piece++) {
                SegmentYield segment = yield.segments().get(piece);
                SegmentCut sawn = faces.get(i).segments().get(piece);
                // Spares are strips of the lamination, whatever is sawn from it: its first kind of blank has them.
                int spares = piece == 0 ? design.spareStrips() : 0;
                add(kinds, design, i, sawn, segment.blanks() - segment.turnedBlanks(), spares, false);
                add(kinds, design, i, sawn, segment.turnedBlanks(), 0, true);
            }
        }
        return kinds;
    }

    private static void add(
            List<BlankKind> kinds,
            Design design,
            int panelIndex,
            SegmentCut sawn,
            int count,
            int spares,
            boolean turned) {
        Panel panel = design.panels().get(panelIndex);
        if (count + spares > 0) {
            kinds.add(new BlankKind(
                    panel.lamination().index(),
                    sawn.segment(),
                    sawn.mirrored(),
                    turned,
                    count * design.layers() + spares,
                    design.blankLength(),
                    panel.lamination().bands(),
                    design.kerf(),
                    sawn.cuts()));
        }
    }

    /** Where the middle of a cut's kerf crosses the middle line of a band. */
    double crossing(int cut, int band) {
        double width = width();
        Cut line = cuts.get(cut);
        double lean = lean(line);
        double kerfAlong = kerf * Math.hypot(width, lean) / width;
        // The first cut takes its kerf before the line, all others behind it.
        double middle = cut == 0 ? -kerfAlong / 2 : kerfAlong / 2;
        return line.firstBandEdge() + lean * middleOf(band) / width + middle;
    }

    /**
     * How far a seam whose middle lies on a cut reaches beyond the kerf into both segments. The cut leans across the
     * strip, which a seam does not, and a scarf overlaps. 0 where the saw takes all of the seam. Bands count from 0 at
     * the base; the overlap of a butt seam is 0.
     */
    double beyondKerf(int cut, int band, double overlap) {
        double slope = lean(cuts.get(cut)) / width();
        return Math.max(0, (Math.abs(slope) * bands.get(band).width() + overlap - kerf * Math.hypot(1, slope)) / 2);
    }

    private static double lean(Cut line) {
        return line.lastBandEdge() - line.firstBandEdge();
    }

    private double width() {
        return bands.stream().mapToDouble(Band::width).sum();
    }

    /** How far the middle line of a band lies from the edge that is towards the sawyer. */
    private double middleOf(int band) {
        double before = 0;
        double behind = 0;
        for (int other = 0; other < bands.size(); other++) {
            before += other < band ? bands.get(other).width() : 0;
            behind += other > band ? bands.get(other).width() : 0;
        }
        return (turned ? behind : before) + bands.get(band).width() / 2;
    }
}
