package org.orbwright.band;

/**
 * The same region measured twice.
 *
 * @param visible its area on the finished surface, sphere and flats
 * @param plan its area seen square to the panel
 */
public record Area(double visible, double plan) {
    static final Area NONE = new Area(0, 0);

    Area minus(Area other) {
        return new Area(visible - other.visible, plan - other.plan);
    }
}
