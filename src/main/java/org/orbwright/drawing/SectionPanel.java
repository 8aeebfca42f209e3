package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.band.BandStack;
import org.orbwright.band.BandStack.Layer;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;

/**
 * Half a panel cut by a plane through its normal: x from the normal outwards, y along the normal from the solid's
 * centre. The wood reaches from the outer to the inner face, and from the normal to the seam and the land above it.
 */
record SectionPanel(Design design, Panel panel, Piece piece, BandSet set, double slope, double from) {

    SectionPanel {
        set = panel.lamination().used(set);
    }

    /** The section from the panel's centre to the middle of an edge, of a panel made from a set. */
    static SectionPanel edge(Design design, Panel panel, Piece piece, BandSet set) {
        return new SectionPanel(design, panel, piece, set, 0, 0);
    }

    /** The section from the panel's centre to its farthest corner, of a panel made from a set. */
    static SectionPanel corner(Design design, Panel panel, BandSet set) {
        Piece farthest = null;
        double longest = 0;
        for (Piece piece : panel.pieces()) {
            if (Math.max(piece.left(), piece.right()) > longest) {
                longest = Math.max(piece.left(), piece.right());
                farthest = piece;
            }
        }
        double slope = farthest.right() >= farthest.left() ? longest : -longest;
        return new SectionPanel(design, panel, farthest, set, slope / farthest.base(), 0);
    }

    /** The outer part of the section only, from a distance from the normal on. */
    SectionPanel beyond(double distance) {
        return new SectionPanel(design, panel, piece, set, slope, Math.max(0, distance));
    }

    /** From the normal to the outline. */
    double across() {
        return piece.base() * Math.hypot(1, slope);
    }

    /** The angle at the solid's centre between the normal and the seam. */
    double angle() {
        return Math.atan2(across(), panel.jointDistance());
    }

    double innerFace() {
        return panel.faceDistance() - design.thickness();
    }

    /** From the solid's centre to the inside corner of the hollow. */
    double innerRadius() {
        return innerFace() / Math.cos(angle());
    }

    /** From the solid's centre to the outline at the joint distance. */
    double jointRadius() {
        return Math.hypot(panel.jointDistance(), across());
    }

    /** From the solid's centre to the outline at the outer face. */
    double outerRadius() {
        return Math.hypot(panel.faceDistance(), across());
    }

    /** The whole wood. */
    PlanPolygon wood() {
        double inner = innerFace();
        return new PlanPolygon(List.of(
                        new Point(0, inner),
                        new Point(inner * across() / panel.jointDistance(), inner),
                        new Point(across(), panel.jointDistance()),
                        new Point(across(), panel.faceDistance()),
                        new Point(0, panel.faceDistance())))
                .above(from, 1, 0);
    }

    /** The wood that is left inside the sphere; empty where it breaks through. */
    PlanPolygon left() {
        double radius = design.sphereRadius();
        PlanPolygon left = wood();
        int steps = (int) Math.ceil(Math.PI / 2 / Flattening.step(radius, Flattening.TOLERANCE));
        for (int i = 0; i <= steps && !left.isEmpty(); i++) {
            double turn = Math.PI / 2 * (1 - (double) i / steps);
            left = left.below(radius, Math.cos(turn), Math.sin(turn));
        }
        return left;
    }

    /** A band cut by the section. */
    record Strip(String species, PlanPolygon polygon) {}

    /** The wood that is left, band by band. */
    List<Strip> strips() {
        double cos = 1 / Math.hypot(1, slope);
        List<Strip> strips = new ArrayList<>();
        PlanPolygon left = left();
        for (Layer layer : BandStack.of(panel.lamination(), piece, set).layers()) {
            double along = cos * (layer.outer().cos() + slope * layer.outer().sin());
            PlanPolygon strip =
                    layer.outermost() ? left : left.below(layer.outer().offset(), along, 0);
            strip = layer.innermost() ? strip : strip.above(layer.inner().offset(), along, 0);
            if (!strip.isEmpty() && strip.area() > 0) {
                strips.add(new Strip(layer.band().species(), strip));
            }
        }
        return strips;
    }
}
