package org.orbwright.sheet;

import static org.orbwright.sheet.Caution.Step.BALANCING;
import static org.orbwright.sheet.Caution.Step.BEVELLING;
import static org.orbwright.sheet.Caution.Step.CROSSCUTTING;
import static org.orbwright.sheet.Caution.Step.DISC_SANDING;
import static org.orbwright.sheet.Caution.Step.FINISHING;
import static org.orbwright.sheet.Caution.Step.GLUING;
import static org.orbwright.sheet.Caution.Step.INLAYING;
import static org.orbwright.sheet.Caution.Step.MILLING;
import static org.orbwright.sheet.Caution.Step.MOUNTING;
import static org.orbwright.sheet.Caution.Step.OUTLINES;
import static org.orbwright.sheet.Caution.Step.RESAWING;
import static org.orbwright.sheet.Caution.Step.REVERSING;
import static org.orbwright.sheet.Caution.Step.RIPPING;
import static org.orbwright.sheet.Caution.Step.SANDING;
import static org.orbwright.sheet.Caution.Step.SETTING_UP;
import static org.orbwright.sheet.Caution.Step.SURFACING;
import static org.orbwright.sheet.Caution.Step.TURNING;

import java.util.List;
import org.orbwright.sheet.Caution.Step;

/** The parts of an answer, each with the steps of the work whose cautions it carries beside the general ones. */
enum Part {
    /** Everything before the first cut, or a whole build. */
    WHOLE(Step.values()),
    /** The saw's angles. */
    ANGLES(SETTING_UP, CROSSCUTTING, DISC_SANDING, BEVELLING),
    /** The segments. */
    SEGMENTS(CROSSCUTTING),
    /** Blanks and strips. */
    YIELD(SURFACING, RIPPING, GLUING, CROSSCUTTING),
    /** The sphere. */
    SPHERE(MOUNTING, TURNING),
    /** The bands, whose widths are ripped; those that were solved for too. */
    BANDS(RIPPING),
    /** The inlays, and the tips that the saw chips. */
    INLAYS(CROSSCUTTING, INLAYING, TURNING),
    /** The set-ups of the saw. */
    JIG(SETTING_UP, CROSSCUTTING, BEVELLING),
    /** Errors of cutting. */
    TOLERANCE(CROSSCUTTING, BEVELLING, GLUING),
    /** Corrected settings and centre. */
    DIAGNOSIS(SETTING_UP, CROSSCUTTING, BEVELLING, MOUNTING),
    /** The movement of the wood. */
    MOVEMENT(RIPPING, GLUING),
    /** The stock plan, the cut list and the shopping list. */
    STOCK(SURFACING, RIPPING, RESAWING, GLUING, CROSSCUTTING),
    /** The order of gluing; layers are planed and halves trued in between. */
    ASSEMBLY(SURFACING, GLUING, DISC_SANDING, BEVELLING),
    /** The work on the lathe. */
    LATHE(MOUNTING, TURNING, REVERSING, SANDING, FINISHING),
    /** The balance on the lathe. */
    BALANCE(MOUNTING, BALANCING, TURNING),
    /** A cutter's path, and the program for it. */
    PATH(MOUNTING, REVERSING, MILLING),
    /** A body of the design, which is made to be cut by a machine. */
    BODY(OUTLINES),
    /** The body of a disc. */
    DISC(OUTLINES, MOUNTING),
    /** The body of an inlay's pocket. */
    POCKET(OUTLINES, INLAYING);

    // An immutable list, which its type does not say.
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<Step> steps;

    Part(Step... steps) {
        this.steps = List.of(steps);
    }

    /** The steps whose cautions the part carries. */
    List<Step> steps() {
        return steps;
    }
}
