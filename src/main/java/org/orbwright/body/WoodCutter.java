package org.orbwright.body;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.band.BandLine;
import org.orbwright.band.BandStack;
import org.orbwright.band.BandStack.Layer;
import org.orbwright.design.Band;
import org.orbwright.design.Panel;

/** Cuts segments to convex pieces, one for each band, with sides split where neighbours begin and end. */
final class WoodCutter {
    /** How far beyond the solid a plane is looked at, in multiples of its radius; its other planes cut it smaller. */
    private static final double FAR = 4;

    /**
     * How segments are worked. Their outer end is the bevelled seam with its land, or as it was sawn. The thickness is
     * null for a solid without a hollow, which reaches to the face distance. Whole segments are of one wood, whatever
     * their bands.
     */
    record Shaping(boolean bevelled, Double thickness, boolean whole) {
        double thickness(Panel panel) {
            return thickness == null ? panel.faceDistance() : thickness;
        }
    }

    /** A convex piece of wood of a band, from 1, or 0 for a whole segment, with its face's unit normal. */
    record Wood(String species, int band, List<Facet> facets, Vector3D outward) {}

    /** A part of the surface of a piece of wood, its corners counter-clockwise seen from outside. */
    record Facet(Side side, List<Vector3D> corners) {}

    private final List<SegmentPlace> places;
    private final Shaping shaping;
    private final double far;

    WoodCutter(List<SegmentPlace> places, Shaping shaping) {
        this.places = places;
        this.shaping = shaping;
        this.far = FAR
                * places.stream()
                        .mapToDouble(p -> p.panel().cornerRadius() + p.panel().faceDistance())
                        .max()
                        .orElseThrow();
    }

    /** All pieces of wood. */
    List<Wood> cut() {
        List<Wood> woods = new ArrayList<>();
        for (SegmentPlace place : places) {
            for (Layer layer : layers(place)) {
                List<Side> sides = sides(place);
                if (!layer.outermost()) {
                    addNew(sides, side(place, layer.outer()));
                }
                if (!layer.innermost()) {
                    addNew(sides, side(place, layer.inner()).reversed());
                }
                List<Facet> facets = facets(place, sides);
                if (!facets.isEmpty()) {
                    woods.add(new Wood(layer.band().species(), layer.number(), facets, place.normal()));
                }
            }
        }
        return woods;
    }

    private List<Layer> layers(SegmentPlace place) {
        if (shaping.whole) {
            BandLine nowhere = BandLine.of(0, 0);
            return List.of(new Layer(0, new Band("", 0), nowhere, nowhere, true, true));
        }
        return BandStack.of(place.panel().lamination(), place.piece(), place.set())
                .layers();
    }

    private static Side side(SegmentPlace place, BandLine line) {
        return place.side(line.cos(), line.sin(), 0, line.offset());
    }

    private static void addNew(List<Side> sides, Side side) {
        if (sides.stream().noneMatch(side::isSame)) {
            sides.add(side);
        }
    }

    private List<Side> sides(SegmentPlace place) {
        Panel panel = place.panel();
        double base = place.piece().base();
        List<Side> sides = new ArrayList<>();
        sides.add(leftJoint(place));
        sides.add(rightJoint(place));
        sides.add(place.side(0, 0, 1, panel.faceDistance()));
        double inner = panel.faceDistance() - shaping.thickness(panel);
        if (inner > 0) {
            sides.add(place.side(0, 0, -1, -inner));
        }
        if (shaping.bevelled) {
            sides.add(seam(place));
        }
        if (!shaping.bevelled || panel.faceDistance() > panel.jointDistance()) {
            sides.add(place.side(1, 0, 0, base));
        }
        return sides;
    }

    private static Side leftJoint(SegmentPlace place) {
        return place.side(-place.piece().left(), -place.piece().base(), 0, 0);
    }

    private static Side rightJoint(SegmentPlace place) {
        return place.side(-place.piece().right(), place.piece().base(), 0, 0);
    }

    private static Side seam(SegmentPlace place) {
        return place.side(place.panel().jointDistance(), 0, -place.piece().base(), 0);
    }

    private List<Facet> facets(SegmentPlace place, List<Side> sides) {
        List<Facet> facets = new ArrayList<>();
        for (Side side : sides) {
            List<Vector3D> corners = side.square(far);
            for (Side other : sides) {
                if (!other.equals(side)) {
                    corners = other.cut(corners);
                }
            }
            if (!corners.isEmpty()) {
                List<List<Vector3D>> parts = List.of(corners);
                for (Side border : borders(place, side)) {
                    parts = split(parts, border);
                }
                parts.forEach(part -> facets.add(new Facet(side, part)));
            }
        }
        return facets;
    }

    /** The planes at which the wood on the other side of a joint or seam changes. */
    private List<Side> borders(SegmentPlace place, Side side) {
        int neighbour = side.isSame(leftJoint(place))
                ? place.left()
                : side.isSame(rightJoint(place)) ? place.right() : side.isSame(seam(place)) ? place.across() : -1;
        List<Side> borders = new ArrayList<>();
        if (neighbour >= 0) {
            SegmentPlace other = places.get(neighbour);
            for (Layer layer : layers(other)) {
                if (!layer.innermost()) {
                    borders.add(side(other, layer.inner()));
                }
            }
            double inner = other.panel().faceDistance() - shaping.thickness(other.panel());
            borders.add(other.side(0, 0, -1, -inner));
        }
        return borders;
    }

    private static List<List<Vector3D>> split(List<List<Vector3D>> parts, Side border) {
        List<List<Vector3D>> split = new ArrayList<>();
        for (List<Vector3D> part : parts) {
            List<Vector3D> inside = border.cut(part);
            List<Vector3D> outside = border.reversed().cut(part);
            if (!inside.isEmpty()) {
                split.add(inside);
            }
            if (!outside.isEmpty()) {
                split.add(outside);
            }
        }
        return split;
    }
}
