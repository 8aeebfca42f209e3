package org.orbwright.band;

import java.util.ArrayList;
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
    private final double[] ends;
    private final double lowest;
    private final double highest;

    VisibleWidths(SegmentSurface surface, Piece piece, Lamination lamination, int stations) {
        this.surface = surface;
        this.piece = piece;
        this.cos = Math.cos(lamination.bandAngle());
        this.sin = Math.sin(lamination.bandAngle());
        this.symmetric = piece.symmetric() && lamination.straight();
        this.stations = stations;
        this.lowest = -surface.extent(-cos, -sin);
        this.highest = surface.extent(cos, sin);
        this.ends = new double[symmetric ? stations : 2 * stations - 1];
        for (int i = 0; i < ends.length; i++) {
            ends[i] = surface.along(along(i) / piece.base(), cos, sin);
        }
    }

    VisibleWidth places(Layer layer) {
        double middle = surface.along(0, cos, sin);
        double leftEnd = symmetric ? ends[ends.length - 1] : ends[0];
        return new VisibleWidth(
                crossed(layer, middle),
                crossed(layer, leftEnd),
                crossed(layer, ends[ends.length - 1]),
                between(layer, lowest, highest));
    }

    List<Station> profile(Layer layer) {
        List<Station> profile = new ArrayList<>(ends.length);
        for (int i = 0; i < ends.length; i++) {
            profile.add(new Station(at(i), along(i), crossed(layer, ends[i])));
        }
        return profile;
    }

    private double at(int station) {
        int fromMiddle = symmetric ? station : station - (stations - 1);
        return (double) fromMiddle / (stations - 1);
    }

    private double along(int station) {
        double at = at(station);
        return at < 0 ? at * piece.left() : at * piece.right();
    }

    private double crossed(Layer layer, double end) {
        return between(layer, Math.min(0, end), Math.max(0, end));
    }

    private double between(Layer layer, double from, double to) {
        double low = Math.max(layer.inner().offset(), from);
        double high = Math.min(layer.outer().offset(), to);
        return high > low ? arc(high) - arc(low) : 0;
    }

    /** Distance along the finished surface from the panel's centre to a plane across the section, signed. */
    private double arc(double offset) {
        double distance = Math.abs(offset);
        double flat = surface.flatRadius();
        double radius = surface.radius();
        double along = distance <= flat
                ? distance
                : flat + radius * (Math.asin(Math.min(1, distance / radius)) - Math.asin(flat / radius));
        return offset < 0 ? -along : along;
    }
}
