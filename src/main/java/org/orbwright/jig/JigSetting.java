package org.orbwright.jig;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/**
 * One angle to be set, from square; how it is measured, and how a trial cut proves it.
 *
 * @param angle the angle from square, above 0 and below 90 degrees
 * @param complement 90 degrees less the angle
 * @param sineBarStack stack under a sine bar that stands at the angle
 * @param sineBarStackComplement stack under a sine bar that stands at the complement
 * @param rise rise over the run
 * @param stackErrorAngle how far the angle falls short where the stack is too low
 * @param trialPairAngle angle that the two parts of a trial cut make, one of them turned over
 * @param trialPairGap gap of the pair where the setting is off by the trial error
 */
@Describe("One angle to be set: how it is measured, and how a trial cut proves it. Saw a straight, parallel piece of"
        + " scrap through at the setting, turn one of the two parts over and put the sawn ends together: the error of"
        + " the setting then shows double.")
public record JigSetting(
        @Describe(
                value = "The angle as it is set from square: of the mitre gauge from a square crosscut, or of the"
                        + " blade from upright.",
                quantity = Quantity.ANGLE,
                example = "36",
                max = 90)
        double angle,

        @Describe(
                value = "90 degrees less that: between the fence of the gauge and the blade, or between the blade and"
                        + " the table.",
                quantity = Quantity.ANGLE,
                example = "54",
                max = 90)
        double complement,

        @Describe(
                value = "Stack of gauge blocks under a sine bar that stands at the angle: the bar's length times the"
                        + " sine.",
                quantity = Quantity.LENGTH,
                example = "58.7785")
        double sineBarStack,

        @Describe(
                value = "Stack of gauge blocks under a sine bar that stands at the complement.",
                quantity = Quantity.LENGTH,
                example = "80.9017")
        double sineBarStackComplement,

        @Describe(
                value = "Rise over the run, measured square to it: the run times the tangent of the angle.",
                quantity = Quantity.LENGTH,
                example = "181.6356")
        double rise,

        @Describe(
                value = "How far the angle falls short where its stack of gauge blocks is too low by the stack error.",
                quantity = Quantity.ANGLE,
                example = "0.0071",
                max = 180)
        double stackErrorAngle,

        @Describe(
                value = "Angle that the two parts of a trial cut make with each other, one of them turned over: 180"
                        + " degrees less twice the angle.",
                quantity = Quantity.ANGLE,
                example = "108",
                max = 180)
        double trialPairAngle,

        @Describe(
                value = "Gap over the run between the pair and a template of that angle, where the setting is off by"
                        + " the trial error.",
                quantity = Quantity.LENGTH,
                example = "0.8727")
        double trialPairGap) {

    /** How far a stack of gauge blocks may be off; in millimetres. Common practice, no source. */
    static final double STACK_ERROR = 0.01;
    /** The error of a setting that trial cuts are answered for; in radians. Chosen, no source. */
    static final double TRIAL_ERROR = Math.toRadians(0.1);

    /**
     * A setting, from its angle.
     *
     * @param angle the angle from square, above 0 and below a right angle
     * @param sineBar centre distance of the sine bar's rolls, at least {@link #STACK_ERROR}
     * @param run length over which rise and gap are measured
     */
    static JigSetting of(double angle, double sineBar, double run) {
        double stack = sineBar * Math.sin(angle);
        return new JigSetting(
                angle,
                Math.PI / 2 - angle,
                stack,
                sineBar * Math.cos(angle),
                run * Math.tan(angle),
                angle - Math.asin((stack - STACK_ERROR) / sineBar),
                Math.PI - 2 * angle,
                run * Math.tan(2 * TRIAL_ERROR));
    }
}
