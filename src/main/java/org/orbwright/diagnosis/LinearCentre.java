package org.orbwright.diagnosis;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.diagnosis.CentreDiagnosis.DiscShift;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;

/**
 * A centre that is linear in the readings, so that the uncertainty of all that follows from it is that of the readings
 * times its coefficients.
 */
final class LinearCentre {
    /** A shift in millimetres below which it has no direction. */
    private static final double NOWHERE = 1e-9;

    private final Vector3D centre;
    private final double[][] coefficients;
    private final List<Reading> readings;

    /**
     * A centre.
     *
     * @param centre where it is, from the point of reference
     * @param coefficients how each of its three coordinates depends on each reading
     */
    LinearCentre(Vector3D centre, double[][] coefficients, List<Reading> readings) {
        this.centre = centre;
        this.coefficients = coefficients;
        this.readings = readings;
    }

    Vector3D centre() {
        return centre;
    }

    LengthEstimate offset() {
        return LengthEstimate.of(centre.norm(), spread(centre, Vector3D.ZERO));
    }

    DiscShift discs(Solid solid, int number) {
        Face face = solid.faces().get(number);
        Vector3D axis = solid.normal(face);
        Vector3D shift = centre.subtract(axis.multiply(axis.dot(centre)));
        Vector3D corner = solid.corner(face, 0);
        Vector3D first = corner.subtract(axis.multiply(axis.dot(corner))).normalize();
        double angle = Math.atan2(axis.cross(first).dot(shift), first.dot(shift));
        return new DiscShift(
                number,
                LengthEstimate.of(shift.norm(), spread(shift, axis)),
                shift.norm() < NOWHERE ? null : Double.valueOf(angle < 0 ? angle + 2 * Math.PI : angle),
                LengthEstimate.of(axis.dot(centre), uncertainty(along(axis))));
    }

    /** Uncertainty of a vector's length; where it has no direction, the mean over all that are square to the axis. */
    private double spread(Vector3D vector, Vector3D axis) {
        if (vector.norm() >= NOWHERE) {
            return uncertainty(along(vector.normalize()));
        }
        double all = 0;
        for (int j = 0; j < 3; j++) {
            all += Math.pow(uncertainty(coefficients[j]), 2);
        }
        boolean free = axis.norm() == 0;
        return Math.sqrt(Math.max(0, free ? all / 3 : (all - Math.pow(uncertainty(along(axis)), 2)) / 2));
    }

    /** The centre's part along a direction, as coefficients of the readings. */
    double[] along(Vector3D direction) {
        double[] x = scaled(coefficients[0], direction.getX());
        double[] y = sum(x, coefficients[1], direction.getY());
        return sum(y, coefficients[2], direction.getZ());
    }

    /** The uncertainty of what depends on the readings by these coefficients. */
    double uncertainty(double[] combination) {
        double variance = 0;
        for (int i = 0; i < combination.length; i++) {
            variance += Math.pow(combination[i] * readings.get(i).uncertainty(), 2);
        }
        return Math.sqrt(variance);
    }

    static double[] scaled(double[] combination, double factor) {
        return sum(new double[combination.length], combination, factor);
    }

    static double[] sum(double[] one, double[] other, double factor) {
        double[] sum = one.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += factor * other[i];
        }
        return sum;
    }
}
