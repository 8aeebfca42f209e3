package org.orbwright.stock;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.segment.SegmentCalculator;
import org.orbwright.segment.SegmentPlan.FaceSegments;
import org.orbwright.segment.SegmentPlan.SegmentCut;
import org.orbwright.segment.Yield;
import org.orbwright.segment.Yield.SphereYield;
import org.orbwright.stock.Rack.Stock;
import org.orbwright.stock.StockPlan.Stage;
import org.orbwright.stock.StockPlan.StageVolume;
import org.orbwright.stock.StockPlan.StripMakeUp;
import org.orbwright.stock.StockPlan.StripNeed;
import org.orbwright.stock.StockPlan.StripPiece;
import org.orbwright.stock.WoodStrips.StripUse;

/** Adds up the wood at every stage from the boards to the spheres. */
final class StockStages {
    private final Design design;
    private final Yield yields;
    private double rough;
    private double surfaced;
    private double ripped;
    private double blanks;

    StockStages(Design design, Yield yields) {
        this.design = design;
        this.yields = yields;
    }

    /** Counts a board that is cut. */
    void board(Stock stock) {
        Surfacing clear = stock.surfacing();
        rough += stock.volume();
        surfaced += clear.length() * clear.width() * clear.thickness();
    }

    /** Counts the strips of a kind that a plan gives. */
    void strips(StripUse use, StripNeed need) {
        double layer = design.thickness() / design.layers();
        for (StripMakeUp makeUp : need.makeUps()) {
            double length =
                    makeUp.pieces().stream().mapToDouble(StripPiece::length).sum();
            ripped += makeUp.strips() * need.width() * need.thickness() * length;
            blanks += makeUp.strips() * use.strip().width() * layer * need.length();
        }
    }

    /** The stages; those after the blanks only where no strip is missing. */
    List<StageVolume> list(boolean complete) {
        List<StageVolume> stages = new ArrayList<>();
        if (rough > 0) {
            add(stages, Stage.BOARD, rough);
            add(stages, Stage.SURFACED, surfaced);
            add(stages, Stage.STRIP, ripped);
            add(stages, Stage.BLANK, blanks);
            if (complete) {
                add(stages, Stage.SEGMENT, segments());
                add(stages, Stage.PANEL, panels());
                Double spheres = spheres();
                if (spheres != null) {
                    add(stages, Stage.SPHERE, spheres);
                }
            }
        }
        return stages;
    }

    private void add(List<StageVolume> stages, Stage stage, double volume) {
        stages.add(new StageVolume(stage, volume, volume / rough));
    }

    private double segments() {
        double volume = 0;
        for (FaceSegments face : SegmentCalculator.calculate(design).faces()) {
            for (SegmentCut segment : face.segments()) {
                volume += segment.area() * design.thickness() * segment.total();
            }
        }
        return volume;
    }

    private double panels() {
        return yields.species().stream()
                .mapToDouble(wood -> yields.solidVolume(wood.species()))
                .sum();
    }

    /** Wood in all spheres; null where a sphere breaks through. */
    private Double spheres() {
        double volume = 0;
        for (SphereYield sphere : yields.spheres()) {
            if (sphere.volume() == null) {
                return null;
            }
            volume += sphere.count() * sphere.volume();
        }
        return volume;
    }
}
