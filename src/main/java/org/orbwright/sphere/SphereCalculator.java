package org.orbwright.sphere;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.Panel;
import org.orbwright.sphere.SphereSizing.FaceSizing;
import org.orbwright.sphere.SphereSizing.LandLimits;
import org.orbwright.sphere.SphereSizing.Removal;
import org.orbwright.sphere.SphereSizing.SphereLimit;
import org.orbwright.sphere.SphereSizing.Wall;

/** Sizes the sphere that comes out of a design. */
public final class SphereCalculator {
    /**
     * A sphere that is larger than the face distance by no more than an answer is rounded to leaves no flat; in
     * millimetres.
     */
    private static final double SAME_RADIUS = 1e-4;

    private final Design design;
    private final double radius;

    private SphereCalculator(Design design) {
        this.design = design;
        this.radius = design.sphereRadius();
    }

    /** The sphere of a design, with its limits. */
    public static SphereSizing calculate(Design design) {
        return new SphereCalculator(design).sizing();
    }

    private SphereSizing sizing() {
        double face = design.smallestFaceDistance();
        double seam = design.seamRadius();
        List<FaceSizing> faces = new ArrayList<>();
        Double wall = null;
        double thickness = 0;
        double swing = 0;
        for (Panel panel : design.facePanels()) {
            FaceSizing sizing = face(panel);
            faces.add(sizing);
            wall = thinner(wall, sizing.wall());
            thickness = Math.max(thickness, sizing.smallestThickness());
            swing = Math.max(swing, panel.outerCornerRadius());
        }
        return new SphereSizing(
                2 * face,
                design.edge(),
                2 * swing,
                2 * seam,
                2 * Math.min(face, seam),
                face <= seam ? SphereLimit.FLATS : SphereLimit.SEAMS,
                2 * radius,
                4 * Math.PI * radius * radius,
                faces,
                wall,
                thickness,
                land(face, seam));
    }

    private FaceSizing face(Panel panel) {
        double h = panel.faceDistance();
        double g = panel.jointDistance();
        return new FaceSizing(
                panel.face(),
                h,
                g,
                panel.seamRadius(),
                panel.cornerRadius(),
                new Removal(
                        h - radius, Math.hypot(h, panel.baseDistance()) - radius, panel.outerCornerRadius() - radius),
                wall(panel),
                radius > h + SAME_RADIUS ? 2 * Math.sqrt((radius - h) * (radius + h)) : 0,
                smallestThickness(panel),
                design.land() * panel.baseDistance() / g,
                2 * panel.baseDistance(),
                panel.kind().opposite());
    }

    private Wall wall(Panel panel) {
        if (!design.has(DesignPart.THICKNESS)) {
            return null;
        }
        double h = panel.faceDistance();
        double g = panel.jointDistance();
        double inner = h - design.thickness();
        return new Wall(
                Math.min(radius, h) - inner,
                radius - inner * panel.seamRadius() / g,
                radius - inner * panel.cornerRadius() / g);
    }

    private static Double thinner(Double wall, Wall other) {
        if (other == null) {
            return null;
        }
        double thinnest = Math.min(other.faceCentre(), other.corner());
        return wall == null ? thinnest : Math.min(wall, thinnest);
    }

    /** The corner of the hollow is nearest to the sphere; where a flat stays, the panel itself is the wall there. */
    private double smallestThickness(Panel panel) {
        double wall = design.minimumWall();
        double atCorner = panel.faceDistance() - (radius - wall) * panel.jointDistance() / panel.cornerRadius();
        double atFlat = radius > panel.faceDistance() ? wall : 0;
        return Math.max(0, Math.max(atCorner, atFlat));
    }

    private LandLimits land(double face, double seam) {
        double joint = face - design.land();
        double seamPerJoint = seam / joint;
        return new LandLimits(
                design.land(), seam - joint, face * (1 - 1 / seamPerJoint), Math.max(0, face - radius / seamPerJoint));
    }
}
