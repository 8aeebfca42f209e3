package org.orbwright.sheet;

import static org.orbwright.sheet.Finding.Severity.STOP;
import static org.orbwright.sheet.Finding.Severity.WARN;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.SizeBy;
import org.orbwright.sphere.SphereSizing;
import org.orbwright.sphere.SphereSizing.FaceSizing;

/** What the sphere of a design gets wrong or nearly wrong. */
final class SphereFindings {
    /** A wall that is exactly as thin as wanted is thick enough; in millimetres, far below what can be measured. */
    private static final double EXACT = 1e-6;

    private static final String THICKNESS = "/panel/thickness";

    private final Design design;
    private final SphereSizing sphere;
    private final List<Finding> findings = new ArrayList<>();

    private SphereFindings(Design design, SphereSizing sphere) {
        this.design = design;
        this.sphere = sphere;
    }

    static List<Finding> of(Design design, SphereSizing sphere) {
        SphereFindings finder = new SphereFindings(design, sphere);
        sphere.faces().forEach(finder::wall);
        finder.seams();
        sphere.faces().forEach(finder::flats);
        finder.allowance();
        return finder.findings;
    }

    private void wall(FaceSizing face) {
        double corner = face.wall().corner();
        double thinnest = Math.min(corner, face.wall().faceCentre());
        String remedy = " Panels of at least " + design.say(face.smallestThickness()) + " would leave the wanted "
                + design.say(design.minimumWall()) + ".";
        if (corner <= 0) {
            add(
                    FindingCode.BREAK_THROUGH,
                    STOP,
                    "The " + design.say(sphere.diameter())
                            + " sphere breaks through to the hollow at the corners of the "
                            + face.face() + " panels: the hollow reaches " + design.say(-corner)
                            + " beyond the sphere there." + remedy,
                    THICKNESS);
        } else if (thinnest < design.minimumWall() - EXACT) {
            String place = corner <= face.wall().faceCentre() ? "corners" : "middle";
            add(
                    FindingCode.WALL_BELOW_MINIMUM,
                    WARN,
                    "Only " + design.say(thinnest) + " of wall is left at the " + place + " of the " + face.face()
                            + " panels." + remedy,
                    THICKNESS);
        }
    }

    private void seams() {
        if (sphere.diameter() > sphere.seamDiameter() + EXACT) {
            add(
                    FindingCode.SEAMS_OPEN,
                    STOP,
                    "The land of " + design.say(design.land())
                            + " leaves the seams open at the middle of the edges: they"
                            + " are closed only inside " + design.say(sphere.seamDiameter())
                            + " in diameter, and the sphere is " + design.say(sphere.diameter())
                            + ". For this size across flats a land of at most "
                            + design.say(sphere.land().largestForDiameter()) + " closes them.",
                    "/panel/land");
        }
    }

    private void flats(FaceSizing face) {
        if (face.flatDiameter() > EXACT) {
            add(
                    FindingCode.FLATS_LEFT,
                    WARN,
                    "A flat of " + design.say(face.flatDiameter()) + " in diameter stays on every " + face.face()
                            + " panel, because the sphere of " + design.say(sphere.diameter()) + " is larger than "
                            + design.say(2 * face.faceDistance()) + ", twice the face distance.",
                    diameterField());
        }
    }

    private void allowance() {
        double turned = design.smallestFaceDistance() - design.sphereRadius();
        boolean flats = turned < 0;
        if (!flats && turned < design.turningAllowance() - EXACT) {
            add(
                    FindingCode.ALLOWANCE_NOT_MET,
                    WARN,
                    "Only " + design.say(turned)
                            + " of wood is turned away at the middle of the lowest faces, less than"
                            + " the turning allowance of " + design.say(design.turningAllowance()) + ".",
                    diameterField());
        }
    }

    private String diameterField() {
        return design.request().size().by() == SizeBy.SPHERE_DIAMETER ? "/size/value" : "/sphere/diameter";
    }

    private void add(FindingCode code, Finding.Severity severity, String message, String field) {
        findings.add(new Finding(code, severity, message, field));
    }
}
