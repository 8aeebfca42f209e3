package org.orbwright.turning;

import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.turning.TurningRequest.CupRequest;

/** Holds the sphere between cups; lengths in millimetres. */
final class CupCalculator {
    /** Latitude up to which belts about two axes, square to each other, reach all of a sphere. */
    private static final double NEEDED_FOR_TWO = Math.PI / 4;
    /** The same for three axes. */
    private static final double NEEDED_FOR_THREE = Math.asin(1 / Math.sqrt(3));

    private CupCalculator() {}

    /**
     * The cups and what they leave free.
     *
     * @throws ImpossibleDesignException if the cup is as wide as the sphere
     */
    static CupHold cups(CupRequest cup, Design design) {
        double radius = design.sphereRadius();
        double rim = design.unit().toMillimetres(cup.rim()) / 2;
        if (rim >= radius) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/turning/cup/rim",
                    "CUP_TOO_WIDE",
                    "A sphere of " + design.say(2 * radius) + " falls through a cup of " + design.say(2 * rim) + ".",
                    String.valueOf(cup.rim()),
                    "a diameter below " + design.sayAtMost(2 * radius))));
        }
        double clearance = design.unit().toMillimetres(cup.clearance());
        double distance = Math.sqrt((radius - rim) * (radius + rim));
        double sine = Math.max(0, (distance - clearance) / radius);
        double latitude = Math.asin(sine);
        double leftByTwo = leftByTwo(sine);
        double leftByThree = leftByThree(sine);
        return new CupHold(
                Math.asin(rim / radius),
                distance,
                radius - distance,
                rim * radius / distance,
                latitude,
                sine,
                latitude >= NEEDED_FOR_TWO
                        ? Integer.valueOf(2)
                        : latitude >= NEEDED_FOR_THREE ? Integer.valueOf(3) : null,
                latitude - NEEDED_FOR_TWO,
                latitude - NEEDED_FOR_THREE,
                2 * sine - 1 + leftByTwo,
                1 - 3 * (1 - sine) + 3 * leftByTwo - leftByThree,
                leftByTwo,
                leftByThree);
    }

    /**
     * Share of a sphere that lies beyond a latitude on both of two axes that are square to each other: four lunes, each
     * bounded by two circles. By Gauss and Bonnet a lune's area is 2 pi less the turns of its sides and at its corners.
     */
    static double leftByTwo(double sine) {
        return 2 * sine * sine >= 1
                ? 0
                : (2 * Math.PI - 2 * sine * (Math.PI - 2 * start(sine)) - 2 * corner(sine)) / Math.PI;
    }

    /** The same for three axes: eight triangles. */
    static double leftByThree(double sine) {
        return 3 * sine * sine >= 1
                ? 0
                : 2 * (2 * Math.PI - 3 * sine * (Math.PI / 2 - 2 * start(sine)) - 3 * corner(sine)) / Math.PI;
    }

    /** Where on the circle of one latitude the other latitude begins. */
    private static double start(double sine) {
        return Math.asin(sine / Math.sqrt(1 - sine * sine));
    }

    /** Turn from one circle to the other where they cross. */
    private static double corner(double sine) {
        return Math.acos(-sine * sine / (1 - sine * sine));
    }
}
