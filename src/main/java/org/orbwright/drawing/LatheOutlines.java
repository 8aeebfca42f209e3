package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.drawing.Outline.At;
import org.orbwright.drawing.Outline.Chain;
import org.orbwright.drawing.Outline.Layer;
import org.orbwright.drawing.Outline.LayerKind;
import org.orbwright.drawing.Outline.Round;
import org.orbwright.drawing.Outline.Shape;
import org.orbwright.drawing.OutlineSheet.Measure;
import org.orbwright.turning.Holding.Seat;
import org.orbwright.turning.Roughing.RingGauge;
import org.orbwright.turning.TurningPlan;
import org.orbwright.turning.TurningRequest;
import org.orbwright.turning.TurningRequest.DiscsRequest;

/** Outlines of what is made for the work on the lathe: mounting discs, ring gauges and templates. */
public final class LatheOutlines {
    private static final At CENTRE = new At(0, 0);
    /** Material beside the opening of a gauge or a template, as a share of the sphere's radius. */
    private static final double RIM = 0.15;

    private LatheOutlines() {}

    /** A mounting disc with its hole and the circle of its screws. */
    public static OutlineSheet disc(Design design, TurningRequest request, Seat seat) {
        double radius = seat.disc() / 2;
        List<Shape> shapes = new ArrayList<>();
        List<Measure> measures = new ArrayList<>();
        StringBuilder caption = new StringBuilder("Disc " + design.say(seat.disc()) + " across.");
        shapes.add(new Round(Layer.of(LayerKind.OUTLINE), CENTRE, radius));
        measures.add(across(radius, 1.5, radius, design));
        DiscsRequest discs = request.discs();
        if (discs != null && discs.screws() != null) {
            double circle = design.unit().toMillimetres(discs.screws().circle()) / 2;
            shapes.add(new Round(Layer.of(LayerKind.SCREW_CIRCLE), CENTRE, circle));
            measures.add(across(circle, 4, radius, design));
            caption.append(" Dashed: the circle of the screws; how many there are is the turner's choice.");
        }
        if (discs != null && discs.centreHole() != null) {
            double hole = design.unit().toMillimetres(discs.centreHole()) / 2;
            shapes.add(new Round(Layer.of(LayerKind.HOLE), CENTRE, hole));
            caption.append(" Hole in the middle: ").append(design.say(2 * hole)).append('.');
        }
        if (seat.discThickness() != null) {
            caption.append(" Thickness that its screws ask for: ")
                    .append(design.say(seat.discThickness()))
                    .append('.');
        }
        shapes.add(stroke(-radius / 10, 0, radius / 10, 0));
        shapes.add(stroke(0, -radius / 10, 0, radius / 10));
        return new OutlineSheet(
                new Outline("Mounting disc for the " + design.solid().name(), shapes), measures, caption.toString());
    }

    private static Measure across(double radius, double away, double below, Design design) {
        return new Measure(new At(-radius, -below), new At(radius, -below), away, design.say(2 * radius));
    }

    private static Chain stroke(double fromX, double fromY, double toX, double toY) {
        return new Chain(Layer.of(LayerKind.CENTRE), List.of(new At(fromX, fromY), new At(toX, toY)), false);
    }

    /** For each gauge a ring, and a template whose hollow edge is an arc of the sphere's great circle. */
    public static OutlineSheet templates(Design design, TurningPlan plan) {
        double radius = gaugedRadius(plan);
        List<Shape> shapes = new ArrayList<>();
        List<Measure> measures = new ArrayList<>();
        double rim = RIM * radius;
        double top = 0;
        for (RingGauge gauge : plan.roughing().gauges()) {
            double half = gauge.chord() / 2;
            double outer = half + rim;
            shapes.add(new Round(Layer.of(LayerKind.OUTLINE), new At(outer, top - outer), outer));
            shapes.add(new Round(Layer.of(LayerKind.HOLE), new At(outer, top - outer), half));
            measures.add(new Measure(
                    new At(outer - half, top - outer), new At(outer + half, top - outer), 0, design.say(2 * half)));
            template(shapes, new At(3 * outer + rim, top - outer), half, gauge.sagitta(), radius);
            top -= 2 * outer + rim;
        }
        String caption =
                "Left: ring gauges with their inner diameters. Right: templates of the same chords, whose hollow edge"
                        + " has the sphere's radius of "
                        + design.say(radius) + ".";
        return new OutlineSheet(
                new Outline("Ring gauges and templates for a sphere of " + design.say(2 * radius), shapes),
                measures,
                caption);
    }

    /** The radius that the gauges are for: half a chord is square to its sagitta and the rest of the diameter. */
    private static double gaugedRadius(TurningPlan plan) {
        RingGauge gauge = plan.roughing().gauges().get(0);
        double half = gauge.chord() / 2;
        return (half * half / gauge.sagitta() + gauge.sagitta()) / 2;
    }

    /** A plate whose lower edge is hollowed by the sphere; its arc rises by the sagitta. */
    private static void template(List<Shape> shapes, At middle, double half, double sagitta, double radius) {
        double rim = RIM * radius;
        double foot = middle.y() - (sagitta + rim) / 2;
        double head = foot + sagitta + rim;
        At left = new At(middle.x() - half, foot);
        At right = new At(middle.x() + half, foot);
        double turn = Math.asin(Math.min(1, half / radius));
        shapes.add(new Chain(
                Layer.of(LayerKind.OUTLINE),
                List.of(
                        right,
                        new At(right.x() + rim, foot),
                        new At(right.x() + rim, head),
                        new At(left.x() - rim, head),
                        new At(left.x() - rim, foot),
                        left),
                true,
                -Math.tan(turn / 2)));
    }
}
