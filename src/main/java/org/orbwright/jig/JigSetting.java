package org.orbwright.jig;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("One angle to be set: how it is measured, and how a trial cut proves it. Saw a straight, parallel piece of"
        + " scrap through at the setting, turn one of the two parts over and put the sawn ends together: the error of"
        + " the setting then shows double.")
public record JigSetting(
        @Describe(
                value = "The line that the angle is measured from. The run of the rise lies along it, and the rise is"
                        + " square to it. The sine bar of the angle stands on a straight edge held to it.",
                example = "\"SQUARE_TO_BLADE\"")
        SettingLine line,

        @Describe(
                value = "The angle as it is set from square: of the mitre gauge's fence from its place for a square"
                        + " crosscut, or of the blade from upright.",
                quantity = Quantity.ANGLE,
                example = "60",
                max = 90)
        double angle,

        @Describe(
                value = "The line that the complement is measured from; the run of riseToBlade lies along it, and so"
                        + " on.",
                example = "\"BLADE\"")
        SettingLine complementLine,

        @Describe(
                value = "90 degrees less that: between the fence of the gauge and the blade, or between the blade and"
                        + " the table.",
                quantity = Quantity.ANGLE,
                example = "30",
                max = 90)
        double complement,

        @Describe(
                value = "Which of the two is better measured: the one of at most 45 degrees. Its stack has the smaller"
                        + " error, and its rise is no longer than the run.",
                example = "\"COMPLEMENT\"")
        MeasuredAngle measureBy,

        @Describe(
                value = "Stack of gauge blocks under one roll of a sine bar that stands at the angle: the bar's length"
                        + " times the sine. The other roll and the stack stand on the angle's line, on a straight edge"
                        + " across the table or upright on it; the gauge's fence, or the blade's plate between two"
                        + " teeth, touches the bar's face.",
                quantity = Quantity.LENGTH,
                example = "86.6025")
        double sineBarStack,

        @Describe(
                value = "How far the angle falls short where its stack of gauge blocks is too low by the stack error.",
                quantity = Quantity.ANGLE,
                example = "0.0115",
                max = 180)
        double stackErrorAngle,

        @Describe(
                value = "Stack of gauge blocks under one roll of a sine bar that stands at the complement. The other"
                        + " roll and the stack stand on the complement's line, on a straight edge along the blade or"
                        + " on the table itself; the same fence or plate touches the bar's face.",
                quantity = Quantity.LENGTH,
                example = "50")
        double sineBarStackComplement,

        @Describe(
                value = "How far the complement falls short, and the angle is too large, where the complement's stack"
                        + " is too low by the stack error.",
                quantity = Quantity.ANGLE,
                example = "0.0066",
                max = 180)
        double complementErrorAngle,

        @Describe(
                value = "Rise over the run along the angle's line, square to it, to the fence or the blade: the run"
                        + " times the tangent of the angle. For a mitre it is along the blade, for a tilt along the"
                        + " table.",
                quantity = Quantity.LENGTH,
                example = "519.6152")
        double rise,

        @Describe(
                value = "Rise over the run along the complement's line, square to it, to the fence or the blade: the"
                        + " run times the tangent of the complement. For a mitre it is square to the blade, for a tilt"
                        + " upright from the table. Where it is longer than the run, the other rise is better"
                        + " measured.",
                quantity = Quantity.LENGTH,
                example = "173.2051")
        double riseToBlade,

        @Describe(
                value = "Angle that the two parts of a trial cut make with each other, one of them turned over: 180"
                        + " degrees less twice the angle.",
                quantity = Quantity.ANGLE,
                example = "60",
                max = 180)
        double trialPairAngle,

        @Describe(
                value = "Gap over the run between the pair and a template of that angle laid into it, where the setting"
                        + " is off by the trial error. A gap at the ends: the setting is too small, turn it further"
                        + " from square. A gap at the heel, where the two parts meet: it is too large, turn it back"
                        + " towards square.",
                quantity = Quantity.LENGTH,
                example = "1.0472")
        double trialPairGap,

        @Describe(
                value = "Without a template: from the heel lay off the run along the inner edge of each part; the two"
                        + " ends are this far apart, twice the run times the sine of half the pair's angle. If they"
                        + " are further apart, the setting is too small: turn it further from square. If they are"
                        + " closer, turn it back towards square.",
                quantity = Quantity.LENGTH,
                example = "300")
        double trialPairChord,

        @Describe(
                value = "How much closer these ends are where the setting is too large by the trial error; too small a"
                        + " setting moves them apart by nearly as much.",
                quantity = Quantity.LENGTH,
                example = "0.9074")
        double trialPairChordChange) {

    /** How far a stack of gauge blocks may be off; in millimetres. Common practice, no source. */
    static final double STACK_ERROR = 0.01;
    /** The error of a setting that trial cuts are answered for; in radians. Chosen, no source. */
    static final double TRIAL_ERROR = Math.toRadians(0.1);
    /** An angle of 45 degrees is one but for its last bits. */
    private static final double EXACT = 1e-9;

    @Describe(
            "A line that a setting is measured from. SQUARE_TO_BLADE: across the table, square to the blade and to the"
                    + " mitre slot, as the gauge's fence lies for a square crosscut; start where the fence crosses it."
                    + " BLADE: along the table and the upright blade's plate, or the mitre slot, which is parallel to"
                    + " it. UPRIGHT: square to the table, up from where the blade comes out. TABLE: along the table and"
                    + " square to the blade, from where the blade comes out to the side that it leans to.")
    public enum SettingLine {
        SQUARE_TO_BLADE,
        BLADE,
        UPRIGHT,
        TABLE
    }

    @Describe("ANGLE: from square. COMPLEMENT: 90 degrees less that.")
    public enum MeasuredAngle {
        ANGLE,
        COMPLEMENT
    }

    /** The setting of a mitre gauge, as {@link #of}. */
    static JigSetting ofMitre(double angle, double sineBar, double run) {
        return of(SettingLine.SQUARE_TO_BLADE, SettingLine.BLADE, angle, sineBar, run);
    }

    /** The tilt of a blade, as {@link #of}. */
    static JigSetting ofTilt(double angle, double sineBar, double run) {
        return of(SettingLine.UPRIGHT, SettingLine.TABLE, angle, sineBar, run);
    }

    /**
     * A setting, from its angle.
     *
     * @param line the line that the angle is measured from
     * @param complementLine the line square to it
     * @param angle the angle from square, above 0 and below a right angle
     * @param sineBar centre distance of the sine bar's rolls, at least {@link #STACK_ERROR}
     * @param run length over which rise and gap are measured
     */
    private static JigSetting of(
            SettingLine line, SettingLine complementLine, double angle, double sineBar, double run) {
        double complement = Math.PI / 2 - angle;
        return new JigSetting(
                line,
                angle,
                complementLine,
                complement,
                angle <= Math.PI / 4 + EXACT ? MeasuredAngle.ANGLE : MeasuredAngle.COMPLEMENT,
                sineBar * Math.sin(angle),
                stackErrorAngle(angle, sineBar),
                sineBar * Math.cos(angle),
                stackErrorAngle(complement, sineBar),
                run * Math.tan(angle),
                run * Math.tan(complement),
                Math.PI - 2 * angle,
                run * Math.tan(2 * TRIAL_ERROR),
                2 * run * Math.cos(angle),
                2 * run * (Math.cos(angle) - Math.cos(angle + TRIAL_ERROR)));
    }

    /** How far an angle of at most 90 degrees falls short where its stack is too low by {@link #STACK_ERROR}. */
    static double stackErrorAngle(double angle, double sineBar) {
        return angle - Math.asin(Math.sin(angle) - STACK_ERROR / sineBar);
    }
}
