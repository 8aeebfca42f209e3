package org.orbwright.inlay;

import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.inlay.InlayPlan.InlayLimit;
import org.orbwright.inlay.InlayPlan.Largest;

/**
 * The room for pockets in a panel, in millimetres.
 *
 * @param thickness of the panel
 * @param radius of the finished sphere
 * @param rim thickness that an inlay has to keep at its rim
 * @param floor wood that has to remain above the hollow
 */
record PocketRoom(Panel panel, double thickness, double radius, double rim, double floor) {

    static PocketRoom of(InlayRequest request, Design design, Panel panel) {
        return new PocketRoom(
                panel,
                design.thickness(),
                design.sphereRadius(),
                design.unit().toMillimetres(request.rimThickness()),
                design.unit().toMillimetres(request.floor()));
    }

    /** Depth of the pocket whose bottom lies below the sphere, at the rim, by the rim's thickness. */
    double depth(double size) {
        return panel.faceDistance() - height(size) + rim;
    }

    /** Wood at the middle of the face, from the finished surface to the hollow. */
    double wall() {
        return top() - panel.faceDistance() + thickness;
    }

    /** Whether a rim and a floor find any wood between them. */
    boolean any() {
        return rim + floor < wall();
    }

    /**
     * The largest inlay of a shape where there is any room.
     *
     * @param shape the shape, whose size does not matter
     * @param bases directions of the panel's bases, in radians
     */
    Largest largest(InlayShape shape, double[] bases) {
        double lowestRim = panel.faceDistance() - thickness + floor + rim;
        double byHollow = Math.sqrt((radius - lowestRim) * (radius + lowestRim));
        double bySeam = bySeam(Math.cos(shape.nearestCorner(bases)));
        return byHollow <= bySeam
                ? new Largest(2 * byHollow, InlayLimit.HOLLOW)
                : new Largest(2 * bySeam, InlayLimit.SEAM);
    }

    /**
     * Where the pocket's lower edge meets the seam plane: {@code height(r) - rim = slope r}, with the flat and the
     * sphere.
     */
    private double bySeam(double cos) {
        double slope = panel.jointDistance() / panel.baseDistance() * cos;
        double square = 1 + slope * slope;
        double onSphere = (-slope * rim + Math.sqrt(square * radius * radius - rim * rim)) / square;
        double onFlat = (panel.faceDistance() - rim) / slope;
        double atSeam = height(onSphere) < panel.faceDistance() ? onSphere : onFlat;
        // A land rises straight from the panel's outline, which the pocket may not cross either.
        return Math.min(atSeam, panel.baseDistance() / cos);
    }

    /** Height of the finished surface over the solid's centre, at a distance from the panel's middle. */
    double height(double size) {
        return Math.min(panel.faceDistance(), Math.sqrt(Math.max(0, (radius - size) * (radius + size))));
    }

    double top() {
        return Math.min(radius, panel.faceDistance());
    }
}
