package org.orbwright.movement;

import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.orbwright.band.BandStack;
import org.orbwright.band.BandStack.Layer;
import org.orbwright.design.BandSet;
import org.orbwright.design.Lamination;
import org.orbwright.design.Piece;

/**
 * A segment whose bands have moved: every point is shifted square to the bands by what the wood between it and the tip
 * has grown. The tip stays where it is; which way up the set lies changes nothing for bands parallel to the base, as
 * the same bands lie between tip and base.
 */
final class MovedSegment {
    private final Piece piece;
    private final List<Double> coefficients;
    private final double cos;
    private final double sin;
    private final List<Layer> layers;

    /**
     * A segment of a lamination.
     *
     * @param coefficients dimensional change coefficients across the width of each band, null where it is not known
     */
    MovedSegment(Lamination lamination, Piece piece, List<Double> coefficients) {
        this.piece = piece;
        this.coefficients = coefficients;
        this.cos = Math.cos(piece.angle(lamination));
        this.sin = Math.sin(piece.angle(lamination));
        this.layers = BandStack.of(lamination, piece, BandSet.UPRIGHT).layers();
    }

    /** Whether the movement of all bands is known. */
    boolean known() {
        return coefficients.stream().allMatch(Objects::nonNull);
    }

    /**
     * Change of the tip angle in radians: the exact difference, no derivative.
     *
     * @param strain share by which wood of a coefficient grows
     */
    double tipAngleChange(DoubleUnaryOperator strain) {
        return tipAngle(strain) - tipAngle();
    }

    /** Angle in radians between the lines from the tip to the two ends of the base, before anything has moved. */
    double tipAngle() {
        return direction(piece.right(), 0) - direction(-piece.left(), 0);
    }

    private double tipAngle(DoubleUnaryOperator strain) {
        return direction(piece.right(), shift(piece.right(), strain))
                - direction(-piece.left(), shift(-piece.left(), strain));
    }

    /** Direction of a point of the base from the tip, counter-clockwise from the tip axis, once it is shifted. */
    private double direction(double along, double shift) {
        return Math.atan2(along + shift * sin, piece.base() + shift * cos);
    }

    /** How far a point of the base moves square to the bands. */
    private double shift(double along, DoubleUnaryOperator strain) {
        double offset = piece.base() * cos + along * sin;
        double shift = 0;
        double low = Math.min(0, offset);
        double high = Math.max(0, offset);
        for (Layer layer : layers) {
            double top = layer.outermost() ? high : Math.min(high, layer.outer().offset());
            double bottom =
                    layer.innermost() ? low : Math.max(low, layer.inner().offset());
            shift += Math.max(0, top - bottom) * strain.applyAsDouble(coefficients.get(layer.number() - 1));
        }
        return offset < 0 ? -shift : shift;
    }
}
