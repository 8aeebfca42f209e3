package org.orbwright.band;

/**
 * The same region measured three times.
 *
 * @param visible its area on the finished surface, sphere and flat
 * @param flat the part of that which is flat
 * @param plan its area seen square to the panel
 */
public record Area(double visible, double flat, double plan) {
    static final Area NONE = new Area(0, 0, 0);

    Area minus(Area other) {
        return new Area(visible - other.visible, flat - other.flat, plan - other.plan);
    }
}
