package org.orbwright.band;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.orbwright.band.BandStack.Layer;
import org.orbwright.band.BandSurvival.Station;
import org.orbwright.band.BandSurvival.VisibleWidth;
import org.orbwright.design.Lamination;
import org.orbwright.design.Piece;

/**
 * Widths along the sphere, square to the bands. A band lies between two parallel planes. Where it is whole, it is as
 * wide on the sphere as the arc between them. At a station on the base only that part counts that is crossed on the way
 * there from the panel's centre. The formula stands in {@link Way#between} and {@link #arc}.
 */
public final class VisibleWidths {
    private final SegmentSurface surface;
    private final Piece piece;
    private final boolean symmetric;
    private final int stations;
    private final Way across;
    private final Way middle;
    private final Way[] ways;

    VisibleWidths(SegmentSurface surface, Piece piece, Lamination lamination, int stations) {
        this.surface = surface;
        this.piece = piece;
        this.symmetric = piece.symmetric() && lamination.straight();
        this.stations = stations;
        double cos = Math.cos(piece.angle(lamination));
        double sin = Math.sin(piece.angle(lamination));
        this.across =
                new Way(Mark.at(surface, -surface.extent(-cos, -sin)), Mark.at(surface, surface.extent(cos, sin)));
        this.middle = Way.to(surface, 0, cos, sin);
        this.ways = new Way[symmetric ? stations : 2 * stations - 1];
        for (int i = 0; i < ways.length; i++) {
            ways[i] = Way.to(surface, along(i) / piece.base(), cos, sin);
        }
    }

    /** The widths of one band. */
    record Widths(VisibleWidth places, List<Station> profile) {}

    /** The widths of one band. */
    Widths of(Layer layer) {
        Mark outer = Mark.at(surface, layer.outer().offset());
        Mark inner = Mark.at(surface, layer.inner().offset());
        List<Station> profile = new ArrayList<>(ways.length);
        for (int i = 0; i < ways.length; i++) {
            profile.add(new Station(at(i), along(i), ways[i].between(inner, outer)));
        }
        double right = profile.get(ways.length - 1).width();
        VisibleWidth places = new VisibleWidth(
                middle.between(inner, outer),
                symmetric ? right : profile.get(0).width(),
                right,
                across.between(inner, outer));
        return new Widths(places, Collections.unmodifiableList(profile));
    }

    private double at(int station) {
        int fromMiddle = symmetric ? station : station - (stations - 1);
        return (double) fromMiddle / (stations - 1);
    }

    private double along(int station) {
        double at = at(station);
        return at < 0 ? at * piece.left() : at * piece.right();
    }

    /**
     * Distance along the finished surface, flat and sphere, from the panel's centre to a plane square to the section.
     *
     * @param offset distance of the plane from the centre, negative on the other side, at most the radius
     * @return the distance, with the sign of the offset
     */
    public static double arc(SegmentSurface surface, double offset) {
        double flat = surface.flatRadius();
        double radius = surface.radius();
        double distance = Math.abs(offset);
        double along = distance <= flat
                ? distance
                : flat + radius * (Math.asin(Math.min(1, distance / radius)) - Math.asin(flat / radius));
        return offset < 0 ? -along : along;
    }

    /** A place across the bands with its distance along the finished surface from the panel's centre, both signed. */
    record Mark(double offset, double arc) {
        static Mark at(SegmentSurface surface, double offset) {
            return new Mark(offset, VisibleWidths.arc(surface, offset));
        }
    }

    /** A way along the finished surface, square to the bands, from the mark nearest to the tip to the farthest. */
    record Way(Mark from, Mark to) {
        /** The way between the panel's centre and where the surface ends in a direction {@code y / x = slope}. */
        static Way to(SegmentSurface surface, double slope, double cos, double sin) {
            Mark centre = new Mark(0, 0);
            Mark end = Mark.at(surface, surface.along(slope, cos, sin));
            return end.offset < 0 ? new Way(end, centre) : new Way(centre, end);
        }

        /** Visible width of a band between two marks: what of it lies on this way. */
        double between(Mark inner, Mark outer) {
            return upTo(outer) - upTo(inner);
        }

        /** Distance of a mark from the panel's centre along the surface, where beyond an end that of the end. */
        double upTo(Mark mark) {
            if (mark.offset <= from.offset) {
                return from.arc;
            }
            return mark.offset < to.offset ? mark.arc : to.arc;
        }
    }
}
