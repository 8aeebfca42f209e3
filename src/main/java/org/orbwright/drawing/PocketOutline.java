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
import org.orbwright.inlay.InlayPlan;
import org.orbwright.inlay.InlayRequest.ShapeRequest;

/** The pocket for an inlay on its panel, seen from outside. */
public final class PocketOutline {
    private PocketOutline() {}

    /** The pocket for a shape within the panel's outline. */
    public static OutlineSheet of(Design design, ShapeRequest shape, InlayPlan plan) {
        double radius = design.unit().toMillimetres(shape.diameter()) / 2;
        List<At> corners = PanelPlan.of(design, DrawnFace.of(design, plan.face())).corners().stream()
                .map(point -> new At(point.x(), -point.y()))
                .toList();
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Chain(Layer.of(LayerKind.OUTLINE), corners, true));
        for (At corner : corners) {
            shapes.add(new Chain(Layer.of(LayerKind.JOINT), List.of(new At(0, 0), corner), false));
        }
        Layer pocket = Layer.of(LayerKind.POCKET);
        if (shape.sides() == null) {
            shapes.add(new Round(pocket, new At(0, 0), radius));
        } else {
            shapes.add(new Chain(pocket, polygon(shape.sides(), radius), true));
        }
        String depth = design.say(plan.pocket().depth());
        double low = corners.stream().mapToDouble(At::y).min().orElseThrow();
        return new OutlineSheet(
                new Outline("Pocket in the " + plan.face() + " panel, " + depth + " deep", shapes),
                List.of(new Measure(new At(-radius, low), new At(radius, low), 1.5, design.say(2 * radius))),
                "The pocket is cut " + depth
                        + " deep from the outer face, before turning; its width is measured through the corners where"
                        + " it has some.");
    }

    /** A regular polygon with a side towards the first base, which is down. */
    private static List<At> polygon(int sides, double radius) {
        List<At> points = new ArrayList<>();
        for (int corner = 0; corner < sides; corner++) {
            double direction = (2 * corner + 1) * Math.PI / sides;
            points.add(new At(radius * Math.sin(direction), -radius * Math.cos(direction)));
        }
        return points;
    }
}
