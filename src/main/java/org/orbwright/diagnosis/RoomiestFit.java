package org.orbwright.diagnosis;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.PivotSelectionRule;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

/**
 * The centre of the largest sphere between faces: the one whose smallest distance to a face is largest. Where some
 * faces decide how large it is and leave the centre free to move between them, as two opposite ones do, those of the
 * others that are nearest are as far off as can be, and so on until nothing is free.
 *
 * <p>Each step is a linear program. Its dual is solved, for the multipliers say which faces decide, and how much of
 * each reading is in the distance: {@code t = sum of m d} with {@code m >= 0}, {@code sum of m = 1} and {@code sum of m
 * n = 0} for normals n and distances d, less what faces that are decided before have to do with it.
 */
final class RoomiestFit {
    private static final double EPSILON = 1e-10;
    private static final double CUT_OFF = 1e-13;
    private static final int ULPS = 10;
    private static final int ITERATIONS = 10_000;
    /** A multiplier, or the part of a normal that is square to others, below which there is none. */
    private static final double NONE = 1e-7;

    private final List<Reading> readings;
    private final List<Vector3D> normals;
    private final boolean[] decided;
    /** Faces whose normals do not depend on each other, their distances, and how those depend on the readings. */
    private final List<Integer> basis = new ArrayList<>();

    private final List<Double> distances = new ArrayList<>();
    private final List<double[]> coefficients = new ArrayList<>();

    private RoomiestFit(List<Reading> readings, List<Vector3D> normals) {
        this.readings = readings;
        this.normals = normals;
        this.decided = new boolean[readings.size()];
    }

    /**
     * What is found.
     *
     * @param distance its smallest distance to a face
     * @param uncertainty of that distance
     */
    record Found(LinearCentre centre, double distance, double uncertainty) {}

    /** The centre, or null where the faces leave it free to move away from all of them. */
    static Found of(List<Reading> readings, List<Vector3D> normals) {
        try {
            return new RoomiestFit(readings, normals).found();
        } catch (MathIllegalStateException e) {
            // The dual program has no solution.
            return null;
        }
    }

    private Found found() {
        while (basis.size() < 3) {
            decide();
        }
        double[][] rows = new double[3][];
        double[][] sides = new double[3][];
        for (int j = 0; j < 3; j++) {
            Vector3D normal = normals.get(basis.get(j));
            rows[j] = new double[] {normal.getX(), normal.getY(), normal.getZ()};
            sides[j] = LinearCentre.scaled(coefficients.get(j), -1);
            sides[j][basis.get(j)] += 1;
        }
        RealMatrix solved =
                MatrixUtils.inverse(MatrixUtils.createRealMatrix(rows)).multiply(MatrixUtils.createRealMatrix(sides));
        double[] values = readings.stream().mapToDouble(Reading::value).toArray();
        LinearCentre centre = new LinearCentre(Vector3D.of(solved.operate(values)), solved.getData(), readings);
        return new Found(centre, distances.get(0), centre.uncertainty(coefficients.get(0)));
    }

    /** One step: finds the faces that are nearest but for those that are decided, and their distance. */
    private void decide() {
        int free = readings.size();
        int fixed = basis.size();
        // A multiplier for each face, 0 for decided ones, and two for each face of the basis, whose sign is free.
        double[] objective = new double[free + 2 * fixed];
        double[][] square = new double[3][objective.length];
        double[] one = new double[objective.length];
        for (int i = 0; i < free; i++) {
            if (!decided[i]) {
                objective[i] = readings.get(i).value();
                column(square, i, normals.get(i));
                one[i] = 1;
            }
        }
        for (int j = 0; j < fixed; j++) {
            int face = basis.get(j);
            for (int sign = -1; sign <= 1; sign += 2) {
                int at = free + 2 * j + (sign + 1) / 2;
                objective[at] = sign * (readings.get(face).value() - distances.get(j));
                column(square, at, normals.get(face).multiply(sign));
            }
        }
        List<LinearConstraint> constraints = new ArrayList<>();
        constraints.add(new LinearConstraint(one, Relationship.EQ, 1));
        for (double[] axis : square) {
            constraints.add(new LinearConstraint(axis, Relationship.EQ, 0));
        }
        PointValuePair solution = new SimplexSolver(EPSILON, ULPS, CUT_OFF)
                .optimize(
                        new MaxIter(ITERATIONS),
                        new LinearObjectiveFunction(objective, 0),
                        new LinearConstraintSet(constraints),
                        GoalType.MINIMIZE,
                        new NonNegativeConstraint(true),
                        PivotSelectionRule.BLAND);
        keep(solution.getPointRef(), solution.getValue());
    }

    private static void column(double[][] rows, int at, Vector3D vector) {
        rows[0][at] = vector.getX();
        rows[1][at] = vector.getY();
        rows[2][at] = vector.getZ();
    }

    private void keep(double[] multipliers, double distance) {
        int free = readings.size();
        double[] depends = new double[free];
        List<Integer> nearest = new ArrayList<>();
        for (int i = 0; i < free; i++) {
            if (!decided[i] && multipliers[i] > NONE) {
                depends[i] += multipliers[i];
                nearest.add(i);
            }
        }
        for (int j = 0; j < basis.size(); j++) {
            double multiplier = multipliers[free + 2 * j + 1] - multipliers[free + 2 * j];
            depends = LinearCentre.sum(depends, coefficients.get(j), -multiplier);
            depends[basis.get(j)] += multiplier;
        }
        for (int face : nearest) {
            decided[face] = true;
            if (basis.size() < 3 && isIndependent(normals.get(face))) {
                basis.add(face);
                distances.add(distance);
                coefficients.add(depends);
            }
        }
    }

    /** Whether a normal has a part square to all those of the basis. */
    private boolean isIndependent(Vector3D normal) {
        if (basis.isEmpty()) {
            return true;
        }
        Vector3D first = normals.get(basis.get(0));
        return basis.size() == 1
                ? first.cross(normal).norm() > NONE
                : Math.abs(first.cross(normals.get(basis.get(1))).dot(normal)) > NONE;
    }
}
