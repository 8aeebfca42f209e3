package org.orbwright.tolerance;

import static org.orbwright.tolerance.ErrorSource.BAND_WIDTH;
import static org.orbwright.tolerance.ErrorSource.BEVEL;
import static org.orbwright.tolerance.ErrorSource.BLANK_WIDTH;
import static org.orbwright.tolerance.ErrorSource.PANEL_THICKNESS;
import static org.orbwright.tolerance.ErrorSource.STOP_BLOCK;
import static org.orbwright.tolerance.ErrorSource.TIP_ANGLE;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Band;
import org.orbwright.design.Design;
import org.orbwright.design.Lamination;
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
        this.joint = JointLengths.joint(design, panel);
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
                budget().add(STOP_BLOCK, baseByStop).add(TIP_ANGLE, baseByTip).build(),
                face(budget(), 1, 1).build(),
                bluntTips(),
                errors.tipAngleLimit(glueBridges / (segments * joint)),
                unmixed(),
                PanelLean.of(design, panel, errors, glueBridges));
    }

    /**
     * How many times as far a panel's sum of tip angles scatters where consecutive segments of a blank are taken: of n
     * + 1 cuts all but the outer two count twice, so that the variance is 2 n - 1 instead of n.
     */
    private Double unmixed() {
        List<Panel> parts = parts();
        double variance = 0;
        boolean shared = false;
        for (Panel part : parts) {
            double taken = (double) segments / parts.size();
            boolean oneSet = part.lamination().straight() && part.lamination().sets() == 1;
            variance += oneSet ? 2 * taken - 1 : taken;
            shared |= oneSet;
        }
        return shared ? Double.valueOf(Math.sqrt(variance / segments)) : null;
    }

    /** The panel, or the two halves of it that have laminations of their own. */
    private List<Panel> parts() {
        return design.panels().stream()
                .filter(part -> part.face().equals(panel.face()))
                .toList();
    }

    /** Adds the face distance: how far the panel sits out, and what it is too thick. */
    BudgetBuilder face(BudgetBuilder budget, double together, double independent) {
        return outwards(budget, together, independent).add(PANEL_THICKNESS, new Derivatives(together, independent));
    }

    /**
     * Adds how far the panel sits out. A larger panel sits further out between the same seams. Bevels that are too
     * large touch at the hollow and hold the panels apart; those that are too small do not. Scatter of bevels moves a
     * panel outwards too, on those of its edges that came out too large, and tilts it. That is neither linear nor
     * symmetric, so that it is no uncertainty; at most it does what the largest bevel would do on every edge.
     *
     * @param together factor of what shifts alike
     * @param independent factor of what scatters
     */
    BudgetBuilder outwards(BudgetBuilder budget, double together, double independent) {
        double outPerBase = panel.jointDistance() / panel.baseDistance();
        budget.add(STOP_BLOCK, scaled(baseByStop.times(outPerBase), together, independent))
                .add(TIP_ANGLE, scaled(baseByTip.times(outPerBase), together, independent));
        double apart = longestSeam() / Math.cos(panel.bevel());
        return errors.of(BEVEL).setting() > 0 ? budget.add(BEVEL, new Derivatives(together * apart, 0)) : budget;
    }

    private double longestSeam() {
        double longest = 0;
        for (EdgeKind edge : design.solid().edgeKinds()) {
            if (edge.face().equals(panel.face()) || edge.neighbour().equals(panel.face())) {
                Panel one = JointLengths.panel(design, edge.face());
                Panel other = JointLengths.panel(design, edge.neighbour());
                longest = Math.max(longest, JointLengths.seam(design, one, other));
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

    /**
     * How far the outer rim lies out along the seam plane. What the panel is too thick is added to its land, square to
     * the face; without a land, a panel that is too thin ends where its outer face meets the seam plane.
     */
    Derivatives rimByThickness() {
        double slant = Math.sin(panel.bevel());
        return Derivatives.of(design.land() > 0 ? slant : 1 / slant);
    }

    /** The segment whose height answers most to its stop. */
    private Piece sharpest(Panel part) {
        Piece sharpest = part.pieces().get(0);
        for (Piece piece : part.pieces()) {
            sharpest = heightByStop(piece) > heightByStop(sharpest) ? piece : sharpest;
        }
        return sharpest;
    }

    /** Of two halves that of the blunter ones. */
    private ErrorBudget bluntTips() {
        return parts().stream()
                .map(this::bluntTips)
                .reduce((one, other) -> other.shift() + other.expanded() > one.shift() + one.expanded() ? other : one)
                .orElseThrow();
    }

    /** A blank is as wide as its bands; a stick of tilted ones is sawn to its own width. */
    private ErrorBudget bluntTips(Panel part) {
        Piece piece = sharpest(part);
        BudgetBuilder budget = budget().add(STOP_BLOCK, Derivatives.of(heightByStop(piece)))
                .add(TIP_ANGLE, Derivatives.of(heightByTip(piece)))
                .add(BLANK_WIDTH, Derivatives.of(-1));
        Lamination lamination = part.lamination();
        return lamination.straight()
                ? budget.add(BAND_WIDTH, Derivatives.of(-1, lamination.bands().size()))
                        .build()
                : budget.build();
    }

    /**
     * The wall at a corner, or where a flat stays at the face. The hollow moves with the panels and not with their
     * outer faces, so that thickness counts only at a flat.
     */
    ErrorBudget wall(boolean atCorner) {
        boolean flat = !atCorner && design.sphereRadius() >= panel.faceDistance();
        if (flat) {
            return budget().add(PANEL_THICKNESS, Derivatives.of(1)).build();
        }
        double byHollow = atCorner ? panel.cornerRadius() / panel.jointDistance() : 1;
        return outwards(budget(), -byHollow, byHollow).build();
    }

    /** The lines between the bands of one of the face kind's laminations. */
    LaminationTolerance lines(Panel part) {
        List<BandLineTolerance> lines = new ArrayList<>();
        List<Band> bands = part.lamination().bands();
        Piece piece = sharpest(part);
        double angle = part.lamination().bandAngle();
        double along = Math.abs(angle) == Math.PI / 2 ? 0 : Math.cos(angle);
        double distance = piece.top(angle);
        for (int i = 1; i < bands.size(); i++) {
            distance -= bands.get(i - 1).width();
            BudgetBuilder budget = budget().add(STOP_BLOCK, Derivatives.of(heightByStop(piece) * along))
                    .add(TIP_ANGLE, Derivatives.of(heightByTip(piece) * along))
                    .add(BLANK_WIDTH, Derivatives.of(-0.5 * along))
                    .add(BAND_WIDTH, Derivatives.of(-1, i));
            lines.add(new BandLineTolerance(i, distance, budget.build()));
        }
        return new LaminationTolerance(part.face(), part.places(), lines);
    }

    private BudgetBuilder budget() {
        return new BudgetBuilder(errors);
    }
}
