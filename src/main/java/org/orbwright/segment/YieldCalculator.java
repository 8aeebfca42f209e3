package org.orbwright.segment;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Band;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.segment.Yield.LaminationYield;
import org.orbwright.segment.Yield.SegmentYield;
import org.orbwright.segment.Yield.SphereYield;
import org.orbwright.segment.Yield.StripYield;

/**
 * Counts blanks, strips and segments for the wanted copies. A sphere is made from one set: of two or more copies every
 * second one is made from inverted segments, so that an even number of copies uses both sets up.
 */
public final class YieldCalculator {
    private final Design design;
    private final int uprightSpheres;
    private final int invertedSpheres;

    private YieldCalculator(Design design) {
        this.design = design;
        boolean twoSets = design.panels().stream().anyMatch(p -> p.lamination().sets() == 2);
        this.invertedSpheres = twoSets ? design.copies() / 2 : 0;
        this.uprightSpheres = design.copies() - invertedSpheres;
    }

    /** What has to be glued up and sawn, and what comes of it. */
    public static Yield calculate(Design design) {
        return new YieldCalculator(design).yieldOfDesign();
    }

    private Yield yieldOfDesign() {
        List<LaminationYield> laminations =
                design.panels().stream().map(this::lamination).toList();
        FinishedWood wood = new FinishedWood(design);
        List<SphereYield> spheres = new ArrayList<>();
        spheres.add(wood.sphere(BandSet.UPRIGHT, uprightSpheres));
        if (invertedSpheres > 0) {
            spheres.add(wood.sphere(BandSet.INVERTED, invertedSpheres));
        }
        return new Yield(laminations, spheres, SpeciesTotals.of(laminations, spheres));
    }

    private LaminationYield lamination(Panel panel) {
        List<SegmentYield> segments = new ArrayList<>();
        Integer blanks = 0;
        for (Piece piece : panel.sawn()) {
            SegmentYield segment = segment(panel, piece);
            segments.add(segment);
            blanks = blanks == null || segment.blanks() == null ? null : Integer.valueOf(blanks + segment.blanks());
        }
        return new LaminationYield(
                panel.face(),
                panel.places(),
                panel.lamination().sets(),
                blanks,
                SegmentCalculator.blankWidth(panel),
                design.blankLength(),
                design.thickness(),
                segments,
                strips(panel, blanks));
    }

    private SegmentYield segment(Panel panel, Piece piece) {
        int perBlank = SegmentCalculator.layout(design, panel, piece).perBlank();
        boolean twoSets = panel.lamination().sets() == 2;
        int inverted = twoSets ? piece.perSphere() * invertedSpheres : 0;
        int upright = piece.perSphere() * design.copies() - inverted;
        if (perBlank == 0) {
            return new SegmentYield(piece.segment(), piece.mirrored(), 0, null, 0, upright, inverted, 0, 0);
        }
        SetPlan plan = twoSets ? SetPlan.alternating(perBlank, upright, inverted) : SetPlan.single(perBlank, upright);
        return new SegmentYield(
                piece.segment(),
                piece.mirrored(),
                perBlank,
                plan.blanks(),
                plan.turned(),
                upright,
                inverted,
                plan.upright() - upright,
                plan.inverted() - inverted);
    }

    private List<StripYield> strips(Panel panel, Integer blanks) {
        List<StripYield> strips = new ArrayList<>();
        for (Band band : panel.lamination().bands()) {
            strips.add(new StripYield(
                    strips.size() + 1, band.species(), band.width(), design.thickness(), design.blankLength(), blanks));
        }
        return strips;
    }
}
