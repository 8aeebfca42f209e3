package org.orbwright.turning;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.segment.Yield.SpeciesInSphere;
import org.orbwright.segment.Yield.SphereYield;
import org.orbwright.segment.YieldCalculator;
import org.orbwright.turning.TurningRequest.RatesRequest;
import org.orbwright.turning.TurningTime.StageTime;
import org.orbwright.turning.TurningTime.TurningStage;

/** Plans the work on the lathe from the glued-up solid to the finished sphere. */
public final class TurningCalculator {
    private static final double CUBIC_CENTIMETRE = 1000;
    private static final double SQUARE_CENTIMETRE = 100;

    private TurningCalculator() {}

    /**
     * Plans the work.
     *
     * @param asked a section that keeps its Bean Validation constraints
     * @param design the request's design
     * @throws ImpossibleDesignException if the solid has no such axis, a cup or a ring is wider than the sphere, or
     *     there would be more passes than are answered
     */
    public static TurningPlan plan(TurningRequest asked, Design design) {
        design.require("the work on the lathe depends", DesignPart.THICKNESS, DesignPart.LAMINATIONS);
        TurningRequest request = asked.filled(design.unit());
        double turned = FinishCalculator.turnedRadius(request.finish(), design);
        Holding holding = HoldingCalculator.discs(request, design, turned);
        CupHold cups = request.cup() == null ? null : CupCalculator.cups(request.cup(), design);
        return new TurningPlan(
                holding,
                cups,
                RoughingCalculator.plan(request.roughing(), design, turned, holding),
                SpeedCalculator.limits(request.speed(), design, holding.swing(), 2 * turned),
                request.finish() == null ? null : FinishCalculator.plan(request.finish(), design),
                request.rates() == null ? null : time(request, design, reversals(holding, cups)));
    }

    private static int reversals(Holding holding, CupHold cups) {
        if (cups == null) {
            return holding.reachedShare() < 1 ? 1 : 0;
        }
        return cups.positions() == null ? 3 : cups.positions();
    }

    private static TurningTime time(TurningRequest request, Design design, int reversals) {
        RatesRequest rates = request.rates();
        List<StageTime> stages = new ArrayList<>();
        add(stages, TurningStage.MOUNTING, 1, rates.mounting());
        Double removed = removed(design);
        if (rates.roughing() != null && removed != null) {
            add(stages, TurningStage.ROUGHING, removed / CUBIC_CENTIMETRE, 1 / rates.roughing());
        }
        if (rates.finishing() != null) {
            double area = 4 * Math.PI * design.sphereRadius() * design.sphereRadius();
            add(stages, TurningStage.FINISHING, area / SQUARE_CENTIMETRE, 1 / rates.finishing());
        }
        add(stages, TurningStage.REVERSING, reversals, rates.reversal());
        boolean sanded = request.finish() != null && request.finish().grits() != null;
        add(stages, TurningStage.SANDING, sanded ? request.finish().grits().size() : 0, rates.perGrit());
        boolean coated = request.finish() != null && request.finish().coats() != null;
        add(stages, TurningStage.COATING, coated ? request.finish().coats() : 0, rates.perCoat());
        return new TurningTime(
                stages, stages.stream().mapToDouble(StageTime::time).sum());
    }

    private static void add(List<StageTime> stages, TurningStage stage, double count, Double each) {
        if (each != null && count > 0) {
            stages.add(new StageTime(stage, count * each));
        }
    }

    /** Wood that is turned away from one solid; null where its sphere breaks through. */
    private static Double removed(Design design) {
        SphereYield sphere = YieldCalculator.spheres(design).get(0);
        return sphere.volume() == null
                ? null
                : Double.valueOf(sphere.species().stream()
                                .mapToDouble(SpeciesInSphere::solidVolume)
                                .sum()
                        - sphere.volume());
    }
}
