package org.orbwright.design;

/** What the size of a design measures. */
public enum SizeBy {
    /** Twice the smallest face distance of the solid. */
    ACROSS_FLATS,
    /** The solid's shortest edge, at the joint distance. */
    EDGE,
    /** The diameter of the finished sphere. */
    SPHERE_DIAMETER
}
