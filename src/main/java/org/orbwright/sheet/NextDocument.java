package org.orbwright.sheet;

import java.util.Comparator;
import java.util.Map;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BlankRequest;
import org.orbwright.design.DesignRequest.SizeRequest;
import org.orbwright.design.DesignRequest.SphereRequest;
import org.orbwright.design.SizeBy;
import org.orbwright.diagnosis.AngleEstimate;
import org.orbwright.diagnosis.CentreDiagnosis;
import org.orbwright.diagnosis.Diagnosis;
import org.orbwright.diagnosis.Diagnosis.FaceBevel;
import org.orbwright.diagnosis.LengthEstimate;
import org.orbwright.document.Document;
import org.orbwright.document.Section;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.quantity.Rounding;
import org.orbwright.segment.BlankLengths;
import org.orbwright.tolerance.ToleranceRequest;
import org.orbwright.tolerance.ToleranceRequest.AngleErrorRequest;
import org.orbwright.tolerance.ToleranceRequest.ErrorsRequest;

/** Works out what a document should say once the stock is planned or test pieces are measured. */
final class NextDocument {
    private final Document document;
    private final Design design;
    private final LengthUnit unit;

    /** @param document a document whose design and sections are filled in */
    NextDocument(Document document, Design design) {
        this.document = document;
        this.design = design;
        this.unit = design.unit();
    }

    /** The document with blanks that are no longer than they need to be. Where strips have seams their places stay. */
    Document stock() {
        boolean seams = document.stock().seams() != null;
        double length = seams ? design.blankLength() : BlankLengths.shortest(design);
        DesignRequest written = document.design();
        BlankRequest blank = new BlankRequest(unit.fromMillimetres(length));
        return document.with(written.withBlank(seams ? written.blank() : blank), Map.of());
    }

    /**
     * The document with the errors that were measured as those of the saw, and with the largest sphere that the
     * measured shell gives where the designed one is larger.
     */
    Document diagnosis(Diagnosis diagnosis) {
        ToleranceRequest old =
                (document.tolerance() == null ? ToleranceRequest.USUAL : document.tolerance()).filled(unit);
        ErrorsRequest errors = old.errors();
        AngleEstimate tip = diagnosis.panel() == null ? null : diagnosis.panel().tipAngleError();
        ErrorsRequest measured = new ErrorsRequest(
                measured(errors.tipAngle(), tip == null || tip.unclear() ? null : tip),
                measured(errors.bevel(), bevel(diagnosis)),
                errors.blankWidth(),
                errors.bandWidth(),
                errors.panelThickness(),
                errors.stop(),
                errors.square(),
                errors.squareDrift());
        ToleranceRequest tolerance = new ToleranceRequest(measured, old.glueBridges(), old.samples(), old.seed());
        return document.with(sphere(diagnosis), Map.of(Section.TOLERANCE, tolerance));
    }

    /** The error that was measured, or the one that was stated where none can be told from none. */
    private static AngleErrorRequest measured(AngleErrorRequest stated, AngleEstimate estimate) {
        if (estimate == null) {
            return stated;
        }
        double degrees = Rounding.round(Math.toDegrees(estimate.value()), Quantity.ANGLE.decimals(LengthUnit.MM));
        return new AngleErrorRequest(degrees, stated.scatter());
    }

    /**
     * The bevel error that can be told from none: of the seams that were tested, of several face kinds the largest;
     * else that of the blade tilt.
     */
    private static AngleEstimate bevel(Diagnosis diagnosis) {
        if (diagnosis.seam() == null) {
            boolean clear = diagnosis.tilt() != null && !diagnosis.tilt().unclear();
            return clear ? diagnosis.tilt().bevelError() : null;
        }
        return diagnosis.seam().faces().stream()
                .map(FaceBevel::bevelError)
                .filter(error -> !error.unclear())
                .max(Comparator.comparingDouble(error -> Math.abs(error.value())))
                .orElse(null);
    }

    /** A sphere that the measured shell does not hold becomes the largest that it holds, less the turning allowance. */
    private DesignRequest sphere(Diagnosis diagnosis) {
        DesignRequest written = document.design();
        double largest = largest(diagnosis);
        double diameter = Rounding.down(
                unit.fromMillimetres(largest - 2 * design.turningAllowance()), Quantity.LENGTH.decimals(unit));
        if (2 * design.sphereRadius() <= largest + DiagnosisFindings.EXACT || diameter <= 0) {
            return written;
        }
        SphereRequest stated = written.sphere();
        double flats = unit.fromMillimetres(2 * design.smallestFaceDistance());
        SizeRequest size = written.size().by() == SizeBy.SPHERE_DIAMETER
                ? new SizeRequest(SizeBy.ACROSS_FLATS, flats)
                : written.size();
        return written.withSphere(size, new SphereRequest(diameter, stated.turningAllowance(), stated.minimumWall()));
    }

    /** Diameter of the largest sphere that all measures leave room for. */
    private static double largest(Diagnosis diagnosis) {
        double largest = Double.POSITIVE_INFINITY;
        if (diagnosis.acrossFlats() != null) {
            largest = diagnosis.acrossFlats().largestDiameter().value();
        }
        CentreDiagnosis centre = diagnosis.faceDistances();
        if (centre != null) {
            LengthEstimate held = centre.roomiest() == null
                    ? centre.largestDiameter()
                    : centre.roomiest().largestDiameter();
            largest = Math.min(largest, held.value());
        }
        return largest;
    }
}
