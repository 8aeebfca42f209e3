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
 * Widths along the sphere, square to the bands. A band lies between two parallel planes, so that it is as wide on the
 * sphere as the arc between them everywhere where it is whole; at a station on the base that part of it counts which is
 * crossed on the way there from the panel's centre.
 */
final class VisibleWidths {
    private final SegmentSurface surface;
    private final Piece piece;
    private final double cos;
    private final double sin;
    private final boolean symmetric;
    private final int stations;
    private final Mark centre = new Mark(0, 0);
    private final Mark lowest;
    private final Mark highest;
    private final Mark middle;
    private final Mark[] ends;

    VisibleWidths(SegmentSurface surface, Piece piece, Lamination lamination, int stations) {
        this.surface = surface;
        this.piece = piece;
        this.cos = Math.cos(piece.angle(lamination));
        this.sin = Math.sin(piece.angle(lamination));
        this.symmetric = piece.symmetric() && lamination.straight();
        this.stations = stations;
        this.lowest = mark(-surface.extent(-cos, -sin));
        this.highest = mark(surface.extent(cos, sin));
        this.middle = mark(surface.along(0, cos, sin));
        this.ends = new Mark[symmetric ? stations : 2 * stations - 1];
        for (int i = 0; i < ends.length; i++) {
            ends[i] = mark(surface.along(along(i) / piece.base(), cos, sin));
        }
    }

    /** The widths of one band. */
    record Widths(VisibleWidth places, List<Station> profile) {}

    /** The widths of one band. */
    Widths of(Layer layer) {
        Mark outer = mark(layer.outer().offset());
        Mark inner = mark(layer.inner().offset());
        List<Station> profile = new ArrayList<>(ends.length);
        for (int i = 0; i < ends.length; i++) {
            profile.add(new Station(at(i), along(i), crossed(inner, outer, ends[i])));
        }
        double right = profile.get(ends.length - 1).width();
        VisibleWidth places = new VisibleWidth(
                crossed(inner, outer, middle),
                symmetric ? right : profile.get(0).width(),
                right,
                overlap(inner, outer, lowest, highest));
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

    private double crossed(Mark inner, Mark outer, Mark end) {
        return end.offset < 0 ? overlap(inner, outer, end, centre) : overlap(inner, outer, centre, end);
    }

    private static double overlap(Mark inner, Mark outer, Mark from, Mark to) {
        Mark low = inner.offset > from.offset ? inner : from;
        Mark high = outer.offset < to.offset ? outer : to;
        return high.offset > low.offset ? high.arc - low.arc : 0;
    }

    /** A place across the bands with its distance along the finished surface from the panel's centre, both signed. */
    private record Mark(double offset, double arc) {}

    private Mark mark(double offset) {
        return new Mark(offset, surface.arc(offset));
    }
}
