package org.orbwright.design;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.solid.Solid;

/**
 * A design that can exist, checked against its solid; lengths in millimetres, angles in radians.
 *
 * @param request the request, with everything filled in that was left out
 * @param solid the solid, at unit edge
 * @param edge length of the solid's shortest edge, at the joint distance
 * @param thickness thickness of the panels
 * @param land height of the land
 * @param panels one for each lamination, in the order of the solid's face kinds
 * @param kerf width of the saw cut
 * @param endTrim length cut off each end of a blank
 * @param blankLength length of a blank
 * @param sphereRadius radius of the finished sphere
 * @param turningAllowance wood to be turned away at the lowest face
 * @param minimumWall thinnest acceptable wall
 */
public record Design(
        DesignRequest request,
        Solid solid,
        double edge,
        double thickness,
        double land,
        List<Panel> panels,
        double kerf,
        double endTrim,
        double blankLength,
        double sphereRadius,
        double turningAllowance,
        double minimumWall) {

    /** Copies the list of panels. */
    public Design {
        panels = List.copyOf(panels);
    }

    /**
     * Checks a request against its solid and brings it to millimetres and radians.
     *
     * @param request a request that keeps its Bean Validation constraints
     * @throws ImpossibleDesignException if it cannot exist, with every rule that it breaks
     */
    public static Design of(DesignRequest request) {
        return new DesignBuilder(request).build();
    }

    /**
     * The design that is part of a larger request.
     *
     * @param request a request that keeps its Bean Validation constraints
     * @param pointer JSON pointer to it in the larger request, to which what it breaks then points
     * @throws ImpossibleDesignException if it cannot exist, with every rule that it breaks
     */
    public static Design of(DesignRequest request, String pointer) {
        try {
            return of(request);
        } catch (ImpossibleDesignException e) {
            throw new ImpossibleDesignException(e.violations().stream()
                    .map(violation -> violation.within(pointer))
                    .toList());
        }
    }

    /** The same design with another sphere, in millimetres, whatever the request says. */
    public Design withSphereRadius(double radius) {
        return new Design(
                request,
                solid,
                edge,
                thickness,
                land,
                panels,
                kerf,
                endTrim,
                blankLength,
                radius,
                turningAllowance,
                minimumWall);
    }

    /** One panel for each face kind, for what does not depend on the lamination. */
    public List<Panel> facePanels() {
        List<Panel> distinct = new ArrayList<>();
        for (Panel panel : panels) {
            if (panel.places() != Places.EVEN) {
                distinct.add(panel);
            }
        }
        return distinct;
    }

    /**
     * The panel that a segment of a face belongs to.
     *
     * @param face name of the face kind
     * @param place place of the segment in the face's list, from 0
     */
    public Panel panelAt(String face, int place) {
        for (Panel panel : panels) {
            if (panel.face().equals(face) && panel.places().include(place)) {
                return panel;
            }
        }
        throw new IllegalArgumentException("The design has no face kind " + face);
    }

    /** The unit of the request and its answers. */
    public LengthUnit unit() {
        return request.unit();
    }

    /** Number of spheres wanted. */
    public int copies() {
        return request.copies();
    }

    /** The smallest face distance. */
    public double smallestFaceDistance() {
        return solid.inradius() * edge + land;
    }

    /** Seam radius, the same for every edge of these solids. */
    public double seamRadius() {
        return solid.midradius() * edge;
    }

    /** Writes a length of which more is enough, rounded up, in the design's unit. */
    public String sayAtLeast(double millimetres) {
        return unit().sayAtLeast(millimetres);
    }

    /** Writes a length of which less is enough, rounded down, in the design's unit. */
    public String sayAtMost(double millimetres) {
        return unit().sayAtMost(millimetres);
    }

    /** Writes a length for a sentence, in the design's unit. */
    public String say(double millimetres) {
        return unit().say(millimetres);
    }
}
