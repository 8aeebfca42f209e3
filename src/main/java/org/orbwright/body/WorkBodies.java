package org.orbwright.body;

import static java.util.Objects.requireNonNullElse;

import java.util.List;
import org.orbwright.body.Body.Part;
import org.orbwright.design.Design;
import org.orbwright.inlay.InlayPlan;
import org.orbwright.inlay.InlayRequest.ShapeRequest;
import org.orbwright.turning.Holding.Seat;

/** Bodies of what is made beside the wood of the sphere: mounting discs, and pockets as the wood that is cut out. */
public final class WorkBodies {
    private WorkBodies() {}

    /**
     * A mounting disc for a seat, its face for the work on top. The hole is a diameter, 0 for none; the deviation is as
     * in {@link BodyOptions}.
     */
    public static Body disc(Design design, Seat seat, double hole, double thickness, Double deviation) {
        double radius = seat.disc() / 2;
        double allowed = requireNonNullElse(deviation, BodyCalculator.usualDeviation(design));
        int sides = Prism.sides(radius, allowed);
        double volume = Math.PI / 4 * (seat.disc() - hole) * (seat.disc() + hole) * thickness;
        Mesh mesh = Prism.of(sides, radius, hole / 2, 0, thickness);
        return new Body(
                "Mounting disc for the " + design.solid().name(),
                List.of(new Part("disc", mesh, volume)),
                radius * (1 - Math.cos(Math.PI / sides)));
    }

    /** The wood cut out for an inlay, where {@link BodyCalculator#panel} has its panel. */
    public static Body pocket(Design design, ShapeRequest shape, InlayPlan plan, Double deviation) {
        double radius = design.unit().toMillimetres(shape.diameter()) / 2;
        double depth = plan.pocket().depth();
        boolean round = shape.sides() == null;
        double allowed = requireNonNullElse(deviation, BodyCalculator.usualDeviation(design));
        int sides = round ? Prism.sides(radius, allowed) : shape.sides();
        double area = round ? Math.PI * radius * radius : sides * radius * radius * Math.sin(2 * Math.PI / sides) / 2;
        Mesh mesh = Prism.of(sides, radius, 0, design.thickness() - depth, design.thickness());
        return new Body(
                "Pocket in the " + plan.face() + " panel",
                List.of(new Part("pocket", mesh, area * depth)),
                round ? radius * (1 - Math.cos(Math.PI / sides)) : 0);
    }
}
