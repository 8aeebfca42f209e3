package org.orbwright.drawing;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.solid.Solid;

/**
 * How a sphere is looked at. The eye stands around the solid's third axis by an angle from its first axis, and above
 * the plane of the first two by another; both in radians. Numbers of panels stand on discs, which hide what is below. A
 * lit sphere is shaded by a light from the upper left; its woods have colours alone, without hatches.
 */
public record SphereLook(double azimuth, double elevation, boolean numbered, boolean lit) {

    /** The same with the middle of one panel, by its number from 1, towards the eye. */
    public SphereLook facing(Solid solid, int panel) {
        Vector3D normal = solid.normal(solid.faces().get(panel - 1));
        double above = Math.asin(Math.max(-1, Math.min(1, normal.getZ())));
        return new SphereLook(Math.atan2(normal.getY(), normal.getX()), above, numbered, lit);
    }
}
