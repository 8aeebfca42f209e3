package org.orbwright.inlay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.inlay.InlayRequest.ChipRequest;
import org.orbwright.inlay.InlayRequest.ShapeKind;
import org.orbwright.inlay.InlayRequest.ShapeRequest;

/** An inlay that a test changes in one place: a disc without a rim or a floor until then. */
final class Inlays {
    private final DesignRequest design;
    private String face;
    private ShapeRequest shape;
    private double rim;
    private double floor;
    private ChipRequest chips;
    private Double tipDistance;
    private List<Integer> panels;
    private List<String> motifs;

    private Inlays(DesignRequest design, ShapeRequest shape) {
        this.design = design;
        this.shape = shape;
    }

    static Inlays disc(DesignRequest design, double diameter) {
        return new Inlays(design, new ShapeRequest(ShapeKind.DISC, null, diameter));
    }

    /** Without a shape. */
    static Inlays nothing(DesignRequest design) {
        return new Inlays(design, null);
    }

    static Inlays polygon(DesignRequest design, int sides, double diameter) {
        return new Inlays(design, new ShapeRequest(ShapeKind.POLYGON, sides, diameter));
    }

    Inlays face(String name) {
        face = name;
        return this;
    }

    Inlays shape(ShapeKind kind, Integer sides, double diameter) {
        shape = new ShapeRequest(kind, sides, diameter);
        return this;
    }

    Inlays rim(double thickness) {
        rim = thickness;
        return this;
    }

    Inlays floor(double thickness) {
        floor = thickness;
        return this;
    }

    /** Chips of this length along each leg, through the whole panel. */
    Inlays chips(double length) {
        return chips(new ChipRequest(length, null, null, null, null));
    }

    Inlays chips(ChipRequest request) {
        chips = request;
        return this;
    }

    Inlays tipDistance(double distance) {
        tipDistance = distance;
        return this;
    }

    Inlays panels(Integer... numbers) {
        panels = List.of(numbers);
        return this;
    }

    Inlays motifs(String... names) {
        motifs = List.of(names);
        return this;
    }

    InlayPlan plan() {
        InlayRequest request = new InlayRequest(face, shape, rim, floor, chips, tipDistance, panels, motifs);
        return InlayCalculator.plan(request, Design.of(design));
    }

    /** The one violation with which the inlay is refused. */
    Violation refusal() {
        List<Violation> violations =
                assertThrows(ImpossibleDesignException.class, this::plan).violations();
        assertEquals(1, violations.size(), violations::toString);
        return violations.get(0);
    }
}
