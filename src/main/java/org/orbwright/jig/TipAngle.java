package org.orbwright.jig;

import static org.orbwright.quantity.Quantity.ANGLE;
import static org.orbwright.quantity.Quantity.LENGTH;

import org.orbwright.quantity.Describe;

@Describe("The angle at the tip of a segment, to prove a sawn segment, or a wedge that segments are sawn against. It is"
        + " the sum of the two mitre settings, so it shows the errors of both.")
public record TipAngle(
        @Describe(value = "Angle at the tip, between the two legs.", quantity = ANGLE, example = "120", max = 180)
        double angle,

        @Describe(
                value = "Stack of gauge blocks under one roll of a sine bar that stands at the angle. Stack and bar"
                        + " stand on the flat surface that one leg lies on, and the other leg touches the bar's face."
                        + " Above 90 degrees the bar stands at what the angle lacks of 180, under the leg that leans"
                        + " over. Near 90 degrees a square and the chord are more exact.",
                quantity = LENGTH,
                example = "86.6025")
        double sineBarStack,

        @Describe(
                value = "How far the sine bar's angle falls short where the stack is too low by the stack error.",
                quantity = ANGLE,
                example = "0.0115",
                max = 180)
        double stackErrorAngle,

        @Describe(
                value = "From the tip lay off the run along each leg, on straight edges held to them: the two ends are"
                        + " this far apart, twice the run times the sine of half the angle. If they are closer, the"
                        + " tip angle is too small and the mitres have to be turned further from square; if they are"
                        + " further apart, back towards square.",
                quantity = LENGTH,
                example = "519.6152")
        double chord,

        @Describe(
                value = "How much further apart these ends are where the mitre settings of both legs are too large by"
                        + " the trial error; settings that are too small bring them together by nearly as much.",
                quantity = LENGTH,
                example = "0.5228")
        double chordChange) {

    /**
     * The angle at a tip.
     *
     * @param angle the angle, above 0 and below 180 degrees
     * @param sineBar centre distance of the sine bar's rolls, at least {@link JigSetting#STACK_ERROR}
     * @param run length of the legs whose ends are measured
     */
    static TipAngle of(double angle, double sineBar, double run) {
        return new TipAngle(
                angle,
                sineBar * Math.sin(angle),
                JigSetting.stackErrorAngle(Math.min(angle, Math.PI - angle), sineBar),
                2 * run * Math.sin(angle / 2),
                2 * run * (Math.sin(angle / 2 + JigSetting.TRIAL_ERROR) - Math.sin(angle / 2)));
    }
}
