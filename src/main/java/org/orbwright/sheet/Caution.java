package org.orbwright.sheet;

import org.orbwright.notice.Notice;
import org.orbwright.quantity.Describe;

/**
 * Standing advice on a hazard of a step of the work.
 *
 * @param step the step
 * @param text the advice
 */
@Describe("Standing advice on a hazard of a step of the work.")
public record Caution(
        @Describe(value = "The step of the work that the hazard belongs to.", example = "\"GENERAL\"")
        Step step,

        @Describe(
                value = "The advice.",
                example = "\"These numbers say what fits, not what is safe. The machine's manual,"
                        + " local rules and qualified instruction come first.\"")
        String text) {

    /** The steps of the work, in their order. */
    public enum Step {
        /** Every step. */
        GENERAL,
        /** Ripping and planing the strips. */
        RIPPING,
        /** Gluing up blanks, panels and the solid. */
        GLUING,
        /** Crosscutting the segments. */
        CROSSCUTTING,
        /** Bevelling the panels. */
        BEVELLING,
        /** Letting inlays into the panels. */
        INLAYING,
        /** Mounting the solid between blocks. */
        MOUNTING,
        /** Roughing and turning the sphere. */
        TURNING,
        /** Sanding. */
        SANDING,
        /** Finishing. */
        FINISHING
    }

    /** The caution as a file tells it. */
    Notice notice() {
        return new Notice(Notice.Kind.CAUTION, step.name(), text);
    }
}
