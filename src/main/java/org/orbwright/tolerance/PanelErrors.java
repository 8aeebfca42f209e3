package org.orbwright.tolerance;

import static org.orbwright.tolerance.ErrorSource.BAND_WIDTH;
import static org.orbwright.tolerance.ErrorSource.BEVEL;
import static org.orbwright.tolerance.ErrorSource.BLANK_WIDTH;
import static org.orbwright.tolerance.ErrorSource.PANEL_THICKNESS;
import static org.orbwright.tolerance.ErrorSource.STOP;
import static org.orbwright.tolerance.ErrorSource.TIP_ANGLE;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Band;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.PlacedPiece;
import org.orbwright.solid.EdgeKind;
import org.orbwright.tolerance.LaminationTolerance.BandLineTolerance;

/** What errors do to the panels of one face kind, as derivatives of its lengths. */
final class PanelErrors {
    private final Design design;
    private final Panel panel;
    private final CuttingErrors errors;
    private final int segments;
    private final double joint;
    /** The mean base distance of a panel's segments. */
    private final Derivatives baseByTip;

    private final Derivatives baseByStop;

    PanelErrors(Design design, Panel panel, CuttingErrors errors) {
        this.design = design;
        this.panel = panel;
        this.errors = errors;
        this.joint = Levers.joint(design, panel);
        List<PlacedPiece> around = PlacedPiece.around(design, panel.face());
        this.segments = around.size();
        Derivatives byTip = new Derivatives(0, 0);
        Derivatives byStop = new Derivatives(0, 0);
        for (PlacedPiece placed : around) {
            byTip = byTip.plus(Derivatives.of(heightByTip(placed.piece())));
            byStop = byStop.plus(Derivatives.of(heightByStop(placed.piece())));
        }
        this.baseByTip = byTip.times(1.0 / segments);
        this.baseByStop = byStop.times(1.0 / segments);
    }

    /** The base is {@code height (tan left + tan right)}; half of the tip angle's error is in either. */
    private static double heightByTip(Piece piece) {
        double left = piece.left() / piece.base();
        double right = piece.right() / piece.base();
        return -piece.base() * (2 + left * left + right * right) / (2 * (left + right));
    }

    private static double heightByStop(Piece piece) {
        return piece.base() / piece.baseLength();
    }

    Panel panel() {
        return panel;
    }

    PanelTolerance tolerance(double glueBridges) {
        double angleSum = segments * errors.of(TIP_ANGLE).setting();
        ErrorBudget opening =
                budget().add(TIP_ANGLE, Derivatives.of(-joint, segments)).build();
        PanelSide side = angleSum < 0 ? PanelSide.RIM : PanelSide.TIPS;
        return new PanelTolerance(
                panel.face(),
                segments,
                joint,
                angleSum,
                Math.abs(opening.shift()),
                angleSum == 0 ? null : side,
                opening,
                budget().add(STOP, baseByStop).add(TIP_ANGLE, baseByTip).build(),
                outwards(budget(), 1, 1).build(),
                bluntTips(),
                glueBridges / (segments * joint));
    }

    /**
     * Adds the face distance. A larger panel sits further out between the same seams. Bevels that are too large touch
     * at the hollow and hold the panels apart; those that are too small do not.
     *
     * @param together factor of what shifts alike
     * @param independent factor of what scatters
     */
    BudgetBuilder outwards(BudgetBuilder budget, double together, double independent) {
        double outPerBase = panel.jointDistance() / panel.baseDistance();
        budget.add(STOP, scaled(baseByStop.times(outPerBase), together, independent))
                .add(TIP_ANGLE, scaled(baseByTip.times(outPerBase), together, independent));
        double apart = longestSeam() / Math.cos(panel.bevel());
        return errors.of(BEVEL).setting() > 0 ? budget.add(BEVEL, new Derivatives(together * apart, 0)) : budget;
    }

    private double longestSeam() {
        double longest = 0;
        for (EdgeKind edge : design.solid().edgeKinds()) {
            if (edge.face().equals(panel.face()) || edge.neighbour().equals(panel.face())) {
                Panel one = Levers.panel(design, edge.face());
                Panel other = Levers.panel(design, edge.neighbour());
                longest = Math.max(longest, Levers.seam(design, one, other));
            }
        }
        return longest;
    }

    private static Derivatives scaled(Derivatives derivatives, double together, double independent) {
        return new Derivatives(derivatives.together() * together, derivatives.independent() * Math.abs(independent));
    }

    /** How far the panel's edge lies out along the seam plane. */
    Derivatives edgeByTip() {
        return baseByTip.times(panel.seamRadius() / panel.baseDistance());
    }

    Derivatives edgeByStop() {
        return baseByStop.times(panel.seamRadius() / panel.baseDistance());
    }

    /** How far the seam face reaches inwards along the seam plane. */
    Derivatives inwardsByThickness() {
        return Derivatives.of(1 / Math.sin(panel.bevel()));
    }

    /** The segment whose height answers most to its stop. */
    private Piece sharpest(Panel part) {
        Piece sharpest = part.pieces().get(0);
        for (Piece piece : part.pieces()) {
            sharpest = heightByStop(piece) > heightByStop(sharpest) ? piece : sharpest;
        }
        return sharpest;
    }

    private ErrorBudget bluntTips() {
        Piece piece = sharpest(panel);
        return budget().add(STOP, Derivatives.of(heightByStop(piece)))
                .add(TIP_ANGLE, Derivatives.of(heightByTip(piece)))
                .add(BLANK_WIDTH, Derivatives.of(-1))
                .build();
    }

    /** The wall at a corner, or where a flat stays at the face. */
    ErrorBudget wall(boolean atCorner) {
        double slant = panel.cornerRadius() / panel.jointDistance();
        boolean flat = design.sphereRadius() >= panel.faceDistance();
        double byFace = atCorner ? slant : 1;
        double byFaceDistance = !atCorner && flat ? 0 : byFace;
        return outwards(budget(), -byFaceDistance, byFaceDistance)
                .add(PANEL_THICKNESS, Derivatives.of(byFace))
                .build();
    }

    /** The lines between the bands of one of the face kind's laminations. */
    LaminationTolerance lines(Panel part) {
        List<BandLineTolerance> lines = new ArrayList<>();
        List<Band> bands = part.lamination().bands();
        Piece piece = sharpest(part);
        boolean straight = part.lamination().straight();
        double distance = piece.top(part.lamination().bandAngle());
        for (int i = 1; i < bands.size(); i++) {
            distance -= bands.get(i - 1).width();
            BudgetBuilder budget = budget();
            if (straight) {
                budget.add(STOP, Derivatives.of(heightByStop(piece)))
                        .add(TIP_ANGLE, Derivatives.of(heightByTip(piece)));
            }
            budget.add(BLANK_WIDTH, Derivatives.of(-0.5)).add(BAND_WIDTH, Derivatives.of(-1, i));
            lines.add(new BandLineTolerance(i, distance, budget.build()));
        }
        return new LaminationTolerance(part.face(), part.places(), lines);
    }

    private BudgetBuilder budget() {
        return new BudgetBuilder(errors);
    }
}
