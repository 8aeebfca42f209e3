package org.orbwright.segment;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Band;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.segment.Yield.LaminationYield;
import org.orbwright.segment.Yield.SegmentYield;
import org.orbwright.segment.Yield.SphereYield;
import org.orbwright.segment.Yield.StripYield;

/** Counts blanks, strips and segments for the wanted spheres and spares, by the sets that these are made from. */
public final class YieldCalculator {
    private final Design design;

    private YieldCalculator(Design design) {
        this.design = design;
    }

    /**
     * What has to be glued up and sawn, and what comes of it.
     *
     * @throws ImpossibleDesignException if the design lacks what the yield depends on
     */
    public static Yield calculate(Design design) {
        design.require("the yield depends", DesignPart.values());
        return new YieldCalculator(design).yieldOfDesign();
    }

    /**
     * The wood of the spheres that are made, those that are alike together.
     *
     * @throws ImpossibleDesignException if the design lacks thickness or bands
     */
    public static List<SphereYield> spheres(Design design) {
        design.require("the wood of the spheres depends", DesignPart.THICKNESS, DesignPart.LAMINATIONS);
        FinishedWood wood = new FinishedWood(design);
        return design.spheres().stream().map(wood::sphere).toList();
    }

    private Yield yieldOfDesign() {
        List<LaminationYield> laminations =
                design.panels().stream().map(this::lamination).toList();
        List<SphereYield> spheres = spheres(design);
        return new Yield(laminations, spheres, SpeciesTotals.of(laminations, spheres, design.woods()));
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
                panel.blankWidth(),
                design.blankLength(),
                design.thickness(),
                segments,
                strips(panel, blanks));
    }

    private SegmentYield segment(Panel panel, Piece piece) {
        int perBlank = SegmentCalculator.layout(design, panel, piece).perBlank();
        boolean twoSets = panel.lamination().sets() == 2;
        SegmentCount needed = SegmentCount.of(design, panel, piece);
        int upright = needed.upright();
        int inverted = needed.inverted();
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
                    strips.size() + 1,
                    band.species(),
                    band.width(),
                    design.thickness() / design.layers(),
                    design.blankLength(),
                    blanks == null ? null : Integer.valueOf(blanks * design.layers() + design.spareStrips())));
        }
        return strips;
    }
}
