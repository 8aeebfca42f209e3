package org.orbwright.drawing;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.solid.Solid;

/**
 * How a sphere is looked at.
 *
 * @param azimuth where the eye stands around the solid's third axis, in radians from its first axis
 * @param elevation how far above the plane of the first two axes, in radians
 * @param numbered whether the panels' numbers stand on discs, which hide what is below
 * @param lit whether a light from the upper left shades it; the woods then have colours alone, without hatches
 */
public record SphereLook(double azimuth, double elevation, boolean numbered, boolean lit) {

    /** The same with the middle of one panel, by its number from 1, towards the eye. */
    public SphereLook facing(Solid solid, int panel) {
        Vector3D normal = solid.normal(solid.faces().get(panel - 1));
        double above = Math.asin(Math.max(-1, Math.min(1, normal.getZ())));
        return new SphereLook(Math.atan2(normal.getY(), normal.getX()), above, numbered, lit);
    }
}
