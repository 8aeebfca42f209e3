package org.orbwright.design;

import org.orbwright.solid.Solid;

/** How large a solid is, in millimetres. */
sealed interface Size {

    /**
     * Length of the solid's shortest edge at the joint distance; zero or less if the solid is too small for its land.
     *
     * @param land height of the land in millimetres
     * @param turningAllowance wood to be turned away at the lowest face, in millimetres
     */
    double edge(Solid solid, double land, double turningAllowance);

    /** A size as a request states it, in millimetres. */
    static Size of(SizeBy by, double value) {
        return switch (by) {
            case ACROSS_FLATS -> new AcrossFlats(value);
            case EDGE -> new Edge(value);
            case SPHERE_DIAMETER -> new SphereDiameter(value);
        };
    }

    /** Twice the smallest face distance, which is the inradius of the full-size outline and the land. */
    record AcrossFlats(double value) implements Size {
        @Override
        public double edge(Solid solid, double land, double turningAllowance) {
            return (value / 2 - land) / solid.inradius();
        }
    }

    /** The shortest edge itself. */
    record Edge(double value) implements Size {
        @Override
        public double edge(Solid solid, double land, double turningAllowance) {
            return value;
        }
    }

    /** The finished sphere, which lies below the lowest face by the turning allowance. */
    record SphereDiameter(double value) implements Size {
        @Override
        public double edge(Solid solid, double land, double turningAllowance) {
            return (value / 2 + turningAllowance - land) / solid.inradius();
        }
    }
}
