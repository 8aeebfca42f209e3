package org.orbwright.sheet;

import static org.orbwright.sheet.Finding.Severity.STOP;
import static org.orbwright.sheet.Finding.Severity.WARN;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.SizeBy;
import org.orbwright.sphere.SphereSizing;
import org.orbwright.sphere.SphereSizing.FaceSizing;

/** What the sphere of a design gets wrong or nearly wrong. */
final class SphereFindings {
    /**
     * What is within this of a limit keeps it, in millimetres: more than answers are rounded to, so that a limit that
     * was answered can be followed, and far below what can be measured.
     */
    static final double EXACT = 1e-3;
    /** Thinnest wall in millimetres that can be expected to survive turning and sanding. Common practice, no source. */
    static final double THINNEST_TURNED = 1.5;

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
        if (design.has(DesignPart.THICKNESS)) {
            sphere.faces().forEach(finder::wall);
        }
        finder.seams();
        sphere.faces().forEach(finder::flats);
        finder.allowance();
        return finder.findings;
    }

    private void wall(FaceSizing face) {
        double corner = face.wall().corner();
        double middle = face.wall().faceCentre();
        double thinnest = Math.min(corner, middle);
        if (middle <= 0 && corner <= 0) {
            findings.add(FindingCode.BREAK_THROUGH.stop(
                    "Nothing of the " + design.say(sphere.diameter()) + " sphere is left in the " + face.face()
                            + " panels. It lies inside the hollow. The hollow reaches " + design.say(-middle)
                            + " beyond the sphere at their middle and " + design.say(-corner) + " at their corners."
                            + remedy(face),
                    THICKNESS));
        } else if (corner <= 0) {
            findings.add(FindingCode.BREAK_THROUGH.stop(
                    "The " + design.say(sphere.diameter())
                            + " sphere breaks through to the hollow at the corners of the "
                            + face.face() + " panels: the hollow reaches " + design.say(-corner)
                            + " beyond the sphere there." + remedy(face),
                    THICKNESS));
        } else if (thinnest < Math.max(design.minimumWall(), THINNEST_TURNED) - EXACT) {
            String place = corner <= middle ? "corners" : "middle";
            boolean fragile = thinnest < THINNEST_TURNED - EXACT;
            findings.add(FindingCode.WALL_BELOW_MINIMUM.finding(
                    fragile ? STOP : WARN,
                    "Only " + design.sayAtMost(thinnest) + " of wall is left at the " + place + " of the " + face.face()
                            + " panels." + (fragile ? " So thin a wall breaks under the tool or the sander." : "")
                            + remedy(face),
                    THICKNESS));
        }
    }

    /** Thicker panels, or a larger sphere where the solid allows it. */
    private String remedy(FaceSizing face) {
        double inner = face.faceDistance() - design.thickness();
        double diameter = 2 * (inner * face.cornerRadius() / face.jointDistance() + design.minimumWall());
        String larger = diameter <= sphere.largestDiameter()
                ? ", or a sphere of at least " + design.sayAtLeast(diameter) + " in diameter,"
                : "";
        return " Panels of at least " + design.sayAtLeast(face.smallestThickness()) + larger
                + " would leave the wanted " + design.say(design.minimumWall()) + ".";
    }

    private void seams() {
        if (sphere.diameter() > sphere.seamDiameter() + 2 * EXACT) {
            findings.add(FindingCode.SEAMS_OPEN.stop(
                    "The land of " + design.say(design.land())
                            + " leaves the seams open at the middle of the edges: they are closed only inside "
                            + design.sayAtMost(sphere.seamDiameter())
                            + " in diameter, and the sphere is " + design.say(sphere.diameter())
                            + ". For this size across flats a land of at most "
                            + design.sayAtMost(sphere.land().largestForDiameter()) + " closes them.",
                    "/panel/land"));
        }
    }

    private void flats(FaceSizing face) {
        if (face.flatDiameter() > 0) {
            findings.add(FindingCode.FLATS_LEFT.warn(
                    "A flat of " + design.say(face.flatDiameter()) + " across stays on every " + face.face()
                            + " panel. The sphere of " + design.say(sphere.diameter()) + " is larger than "
                            + design.say(2 * face.faceDistance()) + ", which is twice the face distance.",
                    diameterField()));
        }
    }

    private void allowance() {
        double turned = design.smallestFaceDistance() - design.sphereRadius();
        boolean flats = sphere.faces().stream().anyMatch(face -> face.flatDiameter() > 0);
        if (!flats && turned < design.turningAllowance() - EXACT) {
            findings.add(FindingCode.ALLOWANCE_NOT_MET.warn(
                    "Only " + design.say(turned)
                            + " of wood is turned away at the middle of the lowest faces, less than"
                            + " the turning allowance of " + design.say(design.turningAllowance()) + ".",
                    diameterField()));
        }
    }

    private String diameterField() {
        return design.request().size().by() == SizeBy.SPHERE_DIAMETER ? "/size/value" : "/sphere/diameter";
    }
}
