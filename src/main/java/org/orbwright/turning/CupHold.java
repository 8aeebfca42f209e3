package org.orbwright.turning;

import static org.orbwright.quantity.Quantity.ANGLE;
import static org.orbwright.quantity.Quantity.LENGTH;
import static org.orbwright.quantity.Quantity.SHARE;

import org.orbwright.quantity.Describe;

@Describe("How two cup chucks hold the sphere, and how the belts that are turned between them overlap. A cup drives by"
        + " friction alone: the tailstock has to press all the time.")
public record CupHold(
        @Describe(
                value = "Angle at the sphere's centre between the axis and the circle of contact.",
                quantity = ANGLE,
                example = "29.0411",
                max = 90)
        double contactAngle,

        @Describe(value = "From the sphere's centre to the plane of the rim.", quantity = LENGTH, example = "90.05")
        double rimDistance,

        @Describe(
                value = "How deep the sphere stands in the cup, which has to be hollow that far.",
                quantity = LENGTH,
                example = "12.95")
        double depth,

        @Describe(
                value = "Driving radius: torque is the tailstock's force times this times the coefficient of friction.",
                quantity = LENGTH,
                example = "57.1905")
        double drivingRadius,

        @Describe(
                value = "Latitude up to which the tool reaches on both sides of the middle plane.",
                quantity = ANGLE,
                example = "55.6624",
                max = 90)
        double reachedLatitude,

        @Describe(
                value = "Share of the sphere that is turned in one position.",
                quantity = SHARE,
                example = "0.8257",
                max = 1)
        double turnedOnce,

        @Describe(
                value = "Positions with axes square to each other that reach every part of the sphere: 2 or 3; left out"
                        + " where 3 do not.",
                example = "2",
                optional = true,
                min = 2,
                max = 3)
        Integer positions,

        @Describe(
                value = "By how much the reached latitude exceeds what two positions need, 45 degrees; below 0 two do"
                        + " not do.",
                quantity = ANGLE,
                example = "10.6624",
                min = -90,
                max = 90)
        double overlapOfTwo,

        @Describe(
                value = "By how much it exceeds what three positions need, the arc sine of 1 over the root of 3.",
                quantity = ANGLE,
                example = "20.398",
                min = -90,
                max = 90)
        double overlapOfThree,

        @Describe(
                value = "Share of the sphere that two positions both turn, to blend them.",
                quantity = SHARE,
                example = "0.6515",
                max = 1)
        double turnedInBoth,

        @Describe(
                value = "Share of the sphere that all of three positions turn.",
                quantity = SHARE,
                example = "0.4772",
                max = 1)
        double turnedInAllThree,

        @Describe(value = "Share that two positions leave unturned.", quantity = SHARE, example = "0", max = 1)
        double leftByTwo,

        @Describe(value = "Share that three positions leave unturned.", quantity = SHARE, example = "0", max = 1)
        double leftByThree) {}
