package org.orbwright.tolerance;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Band;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.Violation;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.quantity.Rounding;
import org.orbwright.tolerance.ToleranceRequest.AngleErrorRequest;
import org.orbwright.tolerance.ToleranceRequest.LengthErrorRequest;

/** The errors of cutting in millimetres and radians, none of them so large that nothing is left of what is cut. */
final class CuttingErrors {
    /** Standard deviations that scatter is taken to reach. */
    private static final double REACH = 4;

    private static final int SHOWN_DECIMALS = 6;
    private static final int ANGLE_DECIMALS = Quantity.ANGLE.decimals(LengthUnit.MM);
    /** An angle that is a whole number of steps but for the last bits of a double is one. */
    private static final double EXACT_STEPS = 1e-6;
    /** An angle that is a whole number of hundredths up to the last bits of a double is one. */
    private static final double EXACT = 1e-9;

    private final Design design;
    private final ToleranceRequest request;
    private final List<Violation> broken = new ArrayList<>();
    private final ErrorPair tipAngle;
    private final ErrorPair bevel;
    private final ErrorPair blankWidth;
    private final ErrorPair bandWidth;
    private final ErrorPair thickness;
    private final ErrorPair stop;
    private final ErrorPair square;
    private final ErrorPair drift;
    /** Errors of angles from which on nothing is left of what is cut. */
    private double narrowestTip = Math.PI;

    private double narrowestBevel = Math.PI;

    private CuttingErrors(ToleranceRequest request, Design design) {
        this.request = request;
        this.design = design;
        this.tipAngle = radians(request.errors().tipAngle());
        this.bevel = radians(request.errors().bevel());
        this.blankWidth = millimetres(request.errors().blankWidth());
        this.bandWidth = millimetres(request.errors().bandWidth());
        this.thickness = millimetres(request.errors().panelThickness());
        this.stop = millimetres(request.errors().stop());
        this.square = radians(request.errors().square());
        this.drift = new ErrorPair(Math.toRadians(request.errors().squareDrift()), 0);
    }

    /**
     * The errors of a request.
     *
     * @param request a request that keeps its Bean Validation constraints
     * @param design the request's design
     * @throws ImpossibleDesignException if an error is as large as what is cut
     */
    static CuttingErrors of(ToleranceRequest request, Design design) {
        CuttingErrors errors = new CuttingErrors(request, design);
        errors.check();
        if (!errors.broken.isEmpty()) {
            throw new ImpossibleDesignException(errors.broken);
        }
        return errors;
    }

    /**
     * One kind of error.
     *
     * @param setting what every piece is off
     * @param scatter standard deviation from piece to piece
     */
    record ErrorPair(double setting, double scatter) {
        double reach() {
            return Math.abs(setting) + REACH * scatter;
        }
    }

    ErrorPair of(ErrorSource source) {
        return switch (source) {
            case TIP_ANGLE -> tipAngle;
            case BEVEL -> bevel;
            case BLANK_WIDTH -> blankWidth;
            case BAND_WIDTH -> bandWidth;
            case PANEL_THICKNESS -> thickness;
            case STOP_BLOCK -> stop;
            case SQUARENESS -> square;
            case SQUARENESS_DRIFT -> drift;
        };
    }

    /** A limit of the tip angle's setting as it is answered, in radians. */
    double tipAngleLimit(double radians) {
        return limit(radians, narrowestTip);
    }

    /** A limit of the bevel's setting as it is answered, in radians. */
    double bevelLimit(double radians) {
        return limit(radians, narrowestBevel);
    }

    /** A limit of the lean's setting as it is answered, in radians. */
    double squareLimit(double radians) {
        return limit(radians, Math.PI / 2);
    }

    /** Rounded down to what answers are rounded to, so that it holds, and no more than a request may state. */
    private static double limit(double radians, double narrowest) {
        double steps = Math.pow(10, ANGLE_DECIMALS);
        double allowed = (Math.ceil(Math.toDegrees(narrowest) * steps - EXACT_STEPS) - 1) / steps;
        double most = Math.min(allowed, ToleranceRequest.LARGEST_ANGLE);
        return Math.toRadians(Math.min(Rounding.down(Math.toDegrees(radians), ANGLE_DECIMALS), most));
    }

    private static ErrorPair radians(AngleErrorRequest asked) {
        return new ErrorPair(Math.toRadians(asked.setting()), Math.toRadians(asked.scatter()));
    }

    private ErrorPair millimetres(LengthErrorRequest asked) {
        return new ErrorPair(
                design.unit().toMillimetres(asked.setting()), design.unit().toMillimetres(asked.scatter()));
    }

    private void check() {
        double shortestBase = Double.POSITIVE_INFINITY;
        double narrowestBlank = Double.POSITIVE_INFINITY;
        double narrowestBand = Double.POSITIVE_INFINITY;
        for (Panel panel : design.panels()) {
            narrowestBevel = Math.min(narrowestBevel, Math.min(panel.bevel(), Math.PI / 2 - panel.bevel()));
            narrowestBlank = Math.min(narrowestBlank, panel.baseDistance());
            for (Piece piece : panel.pieces()) {
                double left = Math.atan2(piece.left(), piece.base());
                double right = Math.atan2(piece.right(), piece.base());
                double straightest = Math.PI - 2 * Math.max(left, right);
                narrowestTip = Math.min(narrowestTip, Math.min(left + right, straightest));
                shortestBase = Math.min(shortestBase, piece.baseLength());
            }
            for (Band band : panel.lamination().bands()) {
                narrowestBand = Math.min(narrowestBand, band.width());
            }
        }
        angle("tipAngle", "tip angle", tipAngle, narrowestTip);
        angle("bevel", "bevel", bevel, narrowestBevel);
        length("blankWidth", "blank width", blankWidth, narrowestBlank);
        length("bandWidth", "band width", bandWidth, narrowestBand);
        length("panelThickness", "panel thickness", thickness, design.thickness());
        length("stop", "base", stop, shortestBase);
    }

    private void angle(String field, String what, ErrorPair error, double limit) {
        if (error.reach() >= limit) {
            String most = Rounding.plain(Math.floor(Math.toDegrees(limit) * 100 + EXACT) / 100, 2) + " degrees";
            AngleErrorRequest asked = field.equals("tipAngle")
                    ? request.errors().tipAngle()
                    : request.errors().bevel();
            refuse(field, what, asked.setting(), asked.scatter(), most);
        }
    }

    private void length(String field, String what, ErrorPair error, double limit) {
        if (error.reach() >= limit) {
            refuse(
                    field,
                    what,
                    design.unit().fromMillimetres(error.setting()),
                    design.unit().fromMillimetres(error.scatter()),
                    design.sayAtMost(limit));
        }
    }

    private void refuse(String field, String what, Double setting, Double scatter, String most) {
        String said = Rounding.plain(setting, SHOWN_DECIMALS) + " with a scatter of "
                + Rounding.plain(scatter, SHOWN_DECIMALS);
        broken.add(new Violation(
                "/tolerance/errors/" + field,
                "ERROR_TOO_LARGE",
                "An error of " + said + " in the " + what + " leaves nothing of what is cut.",
                said,
                "setting error and four times the scatter together less than " + most));
    }
}
