package org.orbwright.turning;

import java.util.List;
import java.util.OptionalDouble;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.SphereKind;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.solid.Face;
import org.orbwright.turning.BalanceCalculator.PanelWood;
import org.orbwright.turning.BalanceCalculator.Weighed;
import org.orbwright.turning.SpeedLimits.SpeedLimit;
import org.orbwright.turning.TurningRequest.SpeedRequest;

/** Speeds that the work stays under; lengths in millimetres. */
final class SpeedCalculator {
    private static final double INCH = LengthUnit.IN.millimetres();
    /** Inches times turns a minute. Common practice, no source. */
    private static final double THUMB_LOW = 6000;

    private static final double THUMB_HIGH = 9000;

    private static final double RADIANS_PER_TURN_A_MINUTE = 2 * Math.PI / 60;

    private final Design design;
    private final SpeedRequest request;
    /** Density of the densest wood in kilograms per cubic metre; null if one is not known. */
    private final Double densest;

    private Weighed heaviestInSolid = new Weighed(0, null);
    private Weighed heaviestInSphere = new Weighed(0, null);
    private double solidSeam;
    private double sphereSeam;

    private SpeedCalculator(SpeedRequest request, Design design) {
        this.design = design;
        this.request = request == null ? new SpeedRequest(null, null, null) : request;
        this.densest = densest(design);
        if (densest != null) {
            weigh();
        }
    }

    /**
     * The limits of both bodies.
     *
     * @param request a speed and a strength, or null for neither
     * @param swing diameter of the solid about its axis
     * @param turned diameter of the sphere as it leaves the tool
     */
    static SpeedLimits limits(SpeedRequest request, Design design, double swing, double turned) {
        SpeedCalculator speeds = new SpeedCalculator(request, design);
        SpeedLimit solid = speeds.limit(swing, speeds.heaviestInSolid, speeds.solidSeam);
        SpeedLimit sphere = speeds.limit(turned, speeds.heaviestInSphere, speeds.sphereSeam);
        return new SpeedLimits(solid, sphere, Math.min(lowest(solid), lowest(sphere)));
    }

    private static double lowest(SpeedLimit limit) {
        return limit.glueLimit() == null ? limit.thumbLow() : Math.min(limit.thumbLow(), limit.glueLimit());
    }

    private static Double densest(Design design) {
        double densest = 0;
        for (Panel panel : design.panels()) {
            for (var band : panel.lamination().bands()) {
                OptionalDouble density = design.woods().density(band.species());
                if (density.isEmpty()) {
                    return null;
                }
                densest = Math.max(densest, density.getAsDouble());
            }
        }
        return densest;
    }

    /** Finds the heaviest panel of all the spheres that are made, each panel from the set that it is made from. */
    private void weigh() {
        PanelMasses masses = new PanelMasses(design);
        List<Face> faces = design.solid().faces();
        for (SphereKind sphere : design.spheres()) {
            for (int i = 0; i < faces.size(); i++) {
                weigh(masses, faces.get(i), sphere.panels().get(i));
            }
        }
    }

    private void weigh(PanelMasses masses, Face face, BandSet set) {
        PanelWood wood =
                masses.of(face, set, species -> design.woods().density(species).orElseThrow());
        if (wood.inSolid().mass() > heaviestInSolid.mass()) {
            heaviestInSolid = wood.inSolid();
            solidSeam = seam(face, Double.POSITIVE_INFINITY);
        }
        if (wood.inSphere() != null && wood.inSphere().mass() > heaviestInSphere.mass()) {
            heaviestInSphere = wood.inSphere();
            sphereSeam = seam(face, design.sphereRadius());
        }
    }

    /** Area of the seams around a panel, up to a sphere. */
    private double seam(Face face, double radius) {
        double area = 0;
        for (int place = 0; place < face.segments().size(); place++) {
            Panel panel = design.panelAt(face.kind(), place);
            Piece piece = panel.pieceOf(face.segments().get(place), place);
            double inner = panel.seamRadius() * (panel.faceDistance() - design.thickness()) / panel.jointDistance();
            area += halfSeam(panel.seamRadius(), inner, piece.left(), radius)
                    + halfSeam(panel.seamRadius(), inner, piece.right(), radius);
        }
        return area;
    }

    /**
     * Area of a seam from the middle of the edge to a corner. It lies in a plane through the centre, between the line
     * in which it meets the hollow and the edge, or the circle in which the plane cuts the sphere, whichever is nearer.
     */
    private static double halfSeam(double edge, double inner, double length, double radius) {
        double angle = Math.atan(length / edge);
        double open = radius > edge ? Math.min(angle, Math.acos(edge / radius)) : 0;
        double outside = radius == Double.POSITIVE_INFINITY
                ? edge * edge * Math.tan(angle)
                : edge * edge * Math.tan(open) + radius * radius * (angle - open);
        return Math.max(0, outside - inner * inner * Math.tan(angle)) / 2;
    }

    private SpeedLimit limit(double diameter, Weighed panel, double seam) {
        Double angular = request.turns() == null ? null : Double.valueOf(request.turns() * RADIANS_PER_TURN_A_MINUTE);
        boolean weighed = panel.mass() > 0 && seam > 0;
        // Metres per second, kilograms per cubic metre and megapascals: each for a radian per second.
        double surface = diameter / 2000;
        double ring = weighed ? densest * surface * surface * 1e-6 : 0;
        double pull = weighed ? panel.moment().norm() / 1000 : 0;
        double most = weighed ? Math.max(ring, pull / seam) : 0;
        return new SpeedLimit(
                diameter,
                THUMB_LOW * INCH / diameter,
                THUMB_HIGH * INCH / diameter,
                angular == null ? null : Double.valueOf(surface * angular),
                angular == null || !weighed ? null : Double.valueOf(ring * angular * angular),
                angular == null || !weighed ? null : Double.valueOf(pull * angular * angular),
                weighed ? Double.valueOf(seam) : null,
                angular == null || !weighed ? null : Double.valueOf(pull / seam * angular * angular),
                weighed && request.glueStrength() != null ? Double.valueOf(glueLimit(most)) : null);
    }

    private double glueLimit(double stress) {
        return Math.sqrt(request.glueStrength() / request.strengthDivisor() / stress) / RADIANS_PER_TURN_A_MINUTE;
    }
}
