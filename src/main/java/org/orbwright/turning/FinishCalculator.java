package org.orbwright.turning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.orbwright.band.BandCalculator;
import org.orbwright.band.BandSurvival.BandView;
import org.orbwright.band.BandSurvival.FaceBands;
import org.orbwright.band.BandSurvival.SegmentBands;
import org.orbwright.design.Design;
import org.orbwright.sphere.SphereCalculator;
import org.orbwright.sphere.SphereSizing;
import org.orbwright.turning.FinishPlan.GritStep;
import org.orbwright.turning.FinishPlan.ThinnestBand;
import org.orbwright.turning.TurningRequest.FinishRequest;
import org.orbwright.turning.TurningRequest.GritRequest;

/** Sanding and coats; lengths in millimetres. */
final class FinishCalculator {
    /** Places along the base that a band's width is looked at; its widest does not depend on them. */
    private static final int STATIONS = 2;

    private FinishCalculator() {}

    /** Radius of the sphere as it leaves the tool: the finished one and all that sanding takes. */
    static double turnedRadius(FinishRequest finish, Design design) {
        double radius = design.sphereRadius();
        for (GritRequest grit : grits(finish)) {
            radius += design.unit().toMillimetres(grit.allowance());
        }
        return radius;
    }

    private static List<GritRequest> grits(FinishRequest finish) {
        return finish == null || finish.grits() == null ? List.of() : finish.grits();
    }

    /** Plans sanding and coats. */
    static FinishPlan plan(FinishRequest finish, Design design) {
        double turned = turnedRadius(finish, design);
        List<GritStep> grits = new ArrayList<>();
        double before = turned;
        for (GritRequest grit : grits(finish)) {
            double allowance = design.unit().toMillimetres(grit.allowance());
            grits.add(new GritStep(grit.grit(), allowance, 2 * before, 2 * (before - allowance)));
            before -= allowance;
        }
        SphereSizing sphere = SphereCalculator.calculate(design);
        double coverage = finish.coverage();
        double hours = finish.hoursPerCoat();
        Integer coats = finish.coats();
        return new FinishPlan(
                grits,
                sphere.thinnestWall(),
                thinnest(design, turned),
                sphere.area(),
                // A square metre is a million square millimetres, and a litre a million cubic ones.
                coats == null ? null : Double.valueOf(coats * sphere.area() / coverage),
                coats == null ? null : Double.valueOf(coats * hours));
    }

    private static ThinnestBand thinnest(Design design, double turned) {
        List<ThinnestBand> before = bands(design.withSphereRadius(turned));
        List<ThinnestBand> after = bands(design);
        int least = 0;
        for (int i = 1; i < after.size(); i++) {
            least = after.get(i).widest() < after.get(least).widest() ? i : least;
        }
        ThinnestBand band = after.get(least);
        return new ThinnestBand(
                band.face(), band.band(), band.species(), before.get(least).widest(), band.widest());
    }

    /** The widest that can be seen of each band in each kind of segment and set, in one order. */
    private static List<ThinnestBand> bands(Design design) {
        List<ThinnestBand> bands = new ArrayList<>();
        for (FaceBands face : BandCalculator.calculate(design, STATIONS).faces()) {
            for (SegmentBands segment : face.segments()) {
                List<BandView> views = new ArrayList<>(segment.upright());
                views.addAll(segment.inverted() == null ? List.of() : segment.inverted());
                for (BandView view : views) {
                    double widest = view.visibleWidth().widest();
                    bands.add(new ThinnestBand(face.face(), view.band(), view.species(), widest, widest));
                }
            }
        }
        return Collections.unmodifiableList(bands);
    }
}
