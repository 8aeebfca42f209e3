package org.orbwright.sheet;

import static org.orbwright.sheet.Caution.Step.BEVELLING;
import static org.orbwright.sheet.Caution.Step.CROSSCUTTING;
import static org.orbwright.sheet.Caution.Step.FINISHING;
import static org.orbwright.sheet.Caution.Step.GENERAL;
import static org.orbwright.sheet.Caution.Step.GLUING;
import static org.orbwright.sheet.Caution.Step.INLAYING;
import static org.orbwright.sheet.Caution.Step.MOUNTING;
import static org.orbwright.sheet.Caution.Step.RIPPING;
import static org.orbwright.sheet.Caution.Step.SANDING;
import static org.orbwright.sheet.Caution.Step.TURNING;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.orbwright.sheet.Caution.Step;

/**
 * The standing cautions. Common practice, no source, but for the list of woods: Health and Safety Executive, "Toxic
 * woods", Woodworking Sheet No 30. They replace neither a manual nor instruction.
 */
final class Cautions {
    private static final List<Caution> ALL = List.of(
            new Caution(
                    GENERAL,
                    "These numbers say what fits, not what is safe. The machine's manual, local rules and qualified"
                            + " instruction come first."),
            new Caution(
                    RIPPING,
                    "Narrow strips: use the riving knife and guard, a push block, and a setting in which the strip"
                            + " cannot be"
                            + " trapped between fence and blade."),
            new Caution(
                    GLUING,
                    "Ventilate and wear gloves as the glue's data sheet says; let glue cure fully before the piece"
                            + " is sawn"
                            + " or spun."),
            new Caution(
                    CROSSCUTTING,
                    "Never hold small segments by hand at the blade: clamp them in a jig that carries them past it,"
                            + " and stop"
                            + " the blade before clearing offcuts."),
            new Caution(
                    BEVELLING,
                    "A tilted blade takes other guards and clearances: check with the saw unplugged that the panel"
                            + " is held"
                            + " flat and the blade clears fence, gauge and hold-down. Try the setting in scrap."),
            new Caution(
                    INLAYING,
                    "Clamp the panel before a pocket is drilled or routed, take small depths at a time, and follow the"
                            + " machine's manual for cutter and speed."),
            new Caution(
                    MOUNTING,
                    "A hollow, glued body can fly apart: inspect every seam before it is mounted, and follow the"
                            + " lathe's"
                            + " manual for holding and for the tailstock."),
            new Caution(
                    TURNING,
                    "Start at the lathe's lowest speed, stand out of the line of the work, wear a full face shield,"
                            + " and stop"
                            + " at any new sound. The cut is interrupted until the corners are gone."),
            new Caution(
                    SANDING,
                    "Wood dust harms the lungs and some woods sensitise: look each wood of the design up in a"
                            + " list of toxic"
                            + " woods, such as the HSE's Woodworking Sheet No 30, use extraction and a fitting"
                            + " respirator, and keep sparks away from dust."),
            new Caution(
                    FINISHING,
                    "Rags with drying oil can ignite by themselves: spread them flat outdoors or store them under"
                            + " water in a"
                            + " closed metal can. Keep solvents away from flames. Let the finish cure as its"
                            + " data sheet says"
                            + " before use."));

    private static final Caution HOLD_DOWN = new Caution(
            CROSSCUTTING,
            "Where a hold-down presses is stated for a clamp of the jig, never for a hand: keep hands away from the"
                    + " blade and out of its line. No setting and no hold-down makes a cut safe by itself.");

    private static final Caution PROGRAM = new Caution(
            TURNING,
            "The path knows of the designed solid and its discs only, and takes feed and speeds from its caller. Check"
                    + " the work's zero with this cutter's tip, its holder and every limit, simulate it on the"
                    + " machine's own control,"
                    + " run it in air first with a hand on the stop, and keep the guard closed.");

    private static final Caution STOP_MOVES = new Caution(
            CROSSCUTTING,
            "The stop sits on the mitre gauge or the carrier and moves with the wood. Never use a rip fence, or"
                    + " anything fixed to the table, as the stop: the piece would be trapped between it and the"
                    + " blade.");

    private static final Caution OFFCUT_WEDGE = new Caution(
            BEVELLING,
            "The bevel cut frees a wedge under the panel, between the blade and the fence. The fence's lower edge has"
                    + " to be above the highest tooth and still bear on the land, with open room below it for the wedge"
                    + " and the kerf, so that nothing holds the wedge against the blade. Stop the saw and wait until"
                    + " the blade stands still before the wedge is cleared. This lessens one hazard; it does not make"
                    + " the cut safe.");

    private Cautions() {}

    /** Every caution, in the order of the work. */
    static List<Caution> all() {
        return ALL;
    }

    /** The cautions of the cuts that a jig is set up for, and those on its offcut, its stop and its hold-down. */
    static List<Caution> ofJig() {
        List<Caution> cautions = new ArrayList<>(of(CROSSCUTTING, BEVELLING));
        cautions.add(OFFCUT_WEDGE);
        cautions.add(STOP_MOVES);
        cautions.add(HOLD_DOWN);
        return List.copyOf(cautions);
    }

    /** The cautions of turning, and one on programs. */
    static List<Caution> ofPath() {
        List<Caution> cautions = new ArrayList<>(of(MOUNTING, TURNING));
        cautions.add(PROGRAM);
        return List.copyOf(cautions);
    }

    /** The cautions of some steps, and the general one. */
    static List<Caution> of(Step... steps) {
        Set<Step> wanted = Set.of(steps);
        return ALL.stream()
                .filter(caution -> caution.step() == GENERAL || wanted.contains(caution.step()))
                .toList();
    }
}
