package org.orbwright.tolerance;

import static org.orbwright.tolerance.ErrorSource.SQUARENESS;
import static org.orbwright.tolerance.ErrorSource.SQUARENESS_DRIFT;

import java.util.List;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.PlacedPiece;
import org.orbwright.tolerance.PanelTolerance.LeanTolerance;

/**
 * What legs that lean from square do to a panel, to first order in the lean.
 *
 * <p>Pressed flat, the larger faces touch, and on the other face a joint opens by {@code 2 t lean} for a thickness t.
 *
 * <p>Pulled tight, the panel folds at each joint by {@code 2 lean}. With slopes m of the segments and unit vectors e
 * square to the joints, {@code m(next) = m + fold e}; all folds together close only if the sum of {@code fold e} is 0.
 * In a regular panel it is, and the slope is {@code lean / sin(180 degrees / n)}: exactly, {@code tan(slope) =
 * tan(lean) / sin(180 degrees / n)}. In others the folds change by as little as makes them close.
 */
final class PanelLean {
    private final int joints;
    /** Direction and length of each joint, from the middle to the corner. */
    private final double[] angles;

    private final double[] lengths;

    private PanelLean(List<PlacedPiece> around) {
        this.joints = around.size();
        this.angles = new double[joints];
        this.lengths = new double[joints];
        for (int i = 0; i < joints; i++) {
            Piece piece = around.get(i).piece();
            angles[i] = around.get(i).direction() + Math.atan2(piece.right(), piece.base());
            lengths[i] = Math.hypot(piece.base(), piece.right());
        }
    }

    /** What the lean of a panel's legs does. */
    static LeanTolerance of(Design design, Panel panel, CuttingErrors errors, double glueBridges) {
        double thickness = design.thickness();
        Derivatives lean = Derivatives.of(thickness, 2);
        ErrorBudget rim = new BudgetBuilder(errors)
                .add(SQUARENESS, lean)
                .add(SQUARENESS_DRIFT, lean.times(0.5))
                .build();
        ErrorBudget tips = new BudgetBuilder(errors)
                .add(SQUARENESS, lean)
                .add(SQUARENESS_DRIFT, lean.times(-0.5))
                .build();
        double[] byFold = new PanelLean(PlacedPiece.around(design, panel.face())).riseByFold();
        Derivatives rise = new Derivatives(0, 0);
        for (double derivative : byFold) {
            rise = rise.plus(Derivatives.of(derivative, 2));
        }
        SeamSide side = rim.shift() > 0 ? SeamSide.INSIDE : SeamSide.OUTSIDE;
        return new LeanTolerance(
                rim,
                tips,
                rim.shift() == 0 ? null : side,
                new BudgetBuilder(errors).add(SQUARENESS, rise).build(),
                errors.squareLimit(glueBridges / (2 * thickness)));
    }

    /** How far the middle stands off the plane of the corners, for the fold of each joint. */
    private double[] riseByFold() {
        double[][] closing = new double[2][joints];
        double[][] corners = new double[joints][];
        for (int i = 0; i < joints; i++) {
            closing[0][i] = -Math.sin(angles[i]);
            closing[1][i] = Math.cos(angles[i]);
            corners[i] = new double[] {1, lengths[i] * Math.cos(angles[i]), lengths[i] * Math.sin(angles[i])};
        }
        RealMatrix closes = MatrixUtils.createRealMatrix(closing);
        RealMatrix spread = inverse(closes).multiply(closes);
        RealVector plane = inverse(MatrixUtils.createRealMatrix(corners)).getRowVector(0);
        double[] rises = new double[joints];
        for (int i = 0; i < joints; i++) {
            RealVector folds = new ArrayRealVector(joints);
            folds.setEntry(i, 1);
            rises[i] = -plane.dotProduct(heights(folds.subtract(spread.getColumnVector(i))));
        }
        return rises;
    }

    /** Heights of the corners over the plane of the first segment, for the fold at each joint towards the inside. */
    private RealVector heights(RealVector folds) {
        RealVector heights = new ArrayRealVector(joints);
        double x = 0;
        double y = 0;
        for (int i = 0; i < joints; i++) {
            x += folds.getEntry(i) * Math.sin(angles[i]);
            y -= folds.getEntry(i) * Math.cos(angles[i]);
            heights.setEntry(i, lengths[i] * (x * Math.cos(angles[i]) + y * Math.sin(angles[i])));
        }
        return heights;
    }

    private static RealMatrix inverse(RealMatrix matrix) {
        return new SingularValueDecomposition(matrix).getSolver().getInverse();
    }
}
