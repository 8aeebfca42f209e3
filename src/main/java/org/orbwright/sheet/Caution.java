package org.orbwright.sheet;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.Describe;

/** Standing advice on a hazard of a step of the work. It replaces neither a manual nor instruction. */
@Describe("Standing advice on a hazard of a step of the work.")
public record Caution(
        @Describe(value = "The step of the work that the hazard belongs to.", example = "\"GENERAL\"")
        Step step,

        @Describe(
                value = "The advice.",
                example = "\"These numbers say what fits, not what is safe. The machine's manual,"
                        + " local rules and qualified instruction come first.\"")
        String text) {

    /** Common practice, no source; manuals of all the machines here ask for it. */
    private static final String PROTECTION = "Wear eye and hearing protection. Keep gloves, loose clothing, jewellery"
            + " and loose hair away from every moving part.";

    /** Health and Safety Executive, Woodworking Sheet No 30. */
    private static final String DUST =
            "Extract the dust where it is made, and wear a respirator that fits: wood dust harms the lungs.";

    /**
     * The steps of the work in their order, each with its cautions. What no source is named for is common practice, no
     * source.
     */
    public enum Step {
        /** Every step. Training: Health and Safety Executive, Woodworking Sheets No 16, 17, 28 and 31. */
        GENERAL(
                "These numbers say what fits, not what is safe. The machine's manual, local rules and qualified"
                        + " instruction come first.",
                "Do not work at a machine that you have not been taught to use, and never when you are tired.",
                "Some woods are toxic or make people allergic. Look each wood up before the first cut, for instance in"
                        + " Woodworking Sheet No 30 of the Health and Safety Executive."),

        /**
         * Jointing and planing. Lengths and thicknesses: manuals of a jointer (Laguna MJOIN12x86, p. 14: 12 in and 3/8
         * in) and of planers (Craftex CX125HC: 7 in and 3/16 in; Jet JPM-13CS as WoodWeb quotes it, "Planing short,
         * thin stock": 14 in and 1/2 in). Snipe: the second of them. Kickback of pieces below 300 mm: Health and Safety
         * Executive, web page on surface planers. One piece at a time: manual of a planer (Sedgwick, p. 25). Grain and
         * hard glue: manual of a jointer (Grizzly G0656, p. 37).
         */
        SURFACING(
                "Jointers and planers throw short and thin pieces back. Read in the manual how short and how thin a"
                        + " piece may be.",
                "Manuals ask for a length of at least 180 to 355 mm (7 to 14 in). They ask for a thickness of at least"
                        + " 5 to 13 mm (3/16 to 1/2 in).",
                "Keep the guard over the cutters, and use push blocks at the jointer. Stand beside a planer, never in"
                        + " line with its table.",
                "Feed one piece at a time, with the grain, and scrape hard glue off first. Ends can come out thinner"
                        + " (snipe): leave length to cut off.",
                "See Woodworking Sheet No 17 of the Health and Safety Executive, hand-fed planing machines.",
                PROTECTION,
                DUST),

        /**
         * Ripping the strips. Last 300 mm: Health and Safety Executive, Woodworking Sheet No 16, as a site standard
         * (Morgan Sindall, circular sawing machines) and a manual (Sedgwick TA315, 6.7) quote it. Fence within 2 in:
         * manuals of table saws (Ridgid TS2424, p. 47; Flex FX7211, p. 43).
         */
        RIPPING(
                "Use riving knife and guard. Feed the last 300 mm (12 in) with a push stick, and stand out of the"
                        + " blade's line.",
                "Within 50 mm (2 in) of the fence the guard leaves no room for a push stick. Use the narrow fence and"
                        + " the push block that the saw's manual shows.",
                "Let narrow strips come off on the side away from the fence, where they are not trapped between fence"
                        + " and blade.",
                "See Woodworking Sheet No 16 of the Health and Safety Executive, circular saw benches.",
                PROTECTION,
                DUST),

        /** Resawing at the band saw. Offcuts: Health and Safety Executive, Woodworking Sheet No 31. */
        RESAWING(
                "Set the upper guide and its guard just above the wood, and keep the board upright against a tall"
                        + " fence.",
                "Feed the end with a push stick, with no hand in the blade's line. Stop the saw before an offcut is"
                        + " cleared.",
                "See Woodworking Sheet No 31 of the Health and Safety Executive, narrow band saws.",
                PROTECTION,
                DUST),

        /** Gluing up blanks, panels and the solid. */
        GLUING(
                "Ventilate and wear gloves as the glue's data sheet says.",
                "Let glue cure fully before the piece is planed, sawn or spun.",
                "Clamps pinch, and straps and bands snap back: keep fingers and face clear. Beads of hard glue cut"
                        + " hands."),

        /** Setting up the saw and its jig. */
        SETTING_UP(
                "Unplug the saw before a bar, a block, a gauge or a hand touches the blade, and before the blade is"
                        + " changed.",
                "Take everything off the table and turn the blade once by hand before the saw is plugged in. Try each"
                        + " setting in scrap."),

        /**
         * Crosscutting the segments. 100 mm: mitre-saw manuals in the wording of IEC 62841-3-9. 162 mm: a radial saw's
         * manual.
         */
        CROSSCUTTING(
                "Never hold small segments by hand at the blade: clamp them in a jig that carries them past it. Stop"
                        + " the blade before offcuts are cleared.",
                "Hands stay at least 100 mm (4 in) from the blade. A piece that is held within 162 mm (6 3/8 in) of it"
                        + " is too small for a hand.",
                "The stop sits on the mitre gauge or the carrier and moves with the wood. Never use a rip fence, or"
                        + " anything fixed to the table, as the stop: the piece would be trapped between it and the"
                        + " blade.",
                "Where a hold-down presses is stated for a clamp of the jig, never for a hand. No setting and no"
                        + " hold-down makes a cut safe by itself.",
                PROTECTION,
                DUST),

        /** Truing the halves of panels at the disc sander. Manual of a disc sander (Woodstock W1828, p. 8). */
        DISC_SANDING(
                "Work on the half of the disc that runs down onto the table, with the piece flat on the table.",
                "The disc tears small pieces out of the hand. Hold them in a jig, with fingers at least 50 mm (2 in)"
                        + " from the disc.",
                "Keep the gap between table and disc as narrow as the manual says: thin pieces and fingers are drawn"
                        + " into it.",
                "Press lightly and keep the piece moving. Heat burns skin, softens glue and can set dust on fire.",
                PROTECTION,
                DUST),

        /** Bevelling the panels. */
        BEVELLING(
                "A tilted blade takes other guards and clearances. Check with the saw unplugged that the panel lies"
                        + " flat and the blade clears fence, gauge and hold-down. Try the setting in scrap.",
                "Clamp the panel to a carrier that takes it past the blade. Hands stay at least 100 mm (4 in) away.",
                "The bevel cut frees a wedge under the panel, between the blade and the fence. Stop the saw and wait"
                        + " until the blade stands still before the wedge is cleared.",
                "The fence's lower edge stands above the highest tooth and bears on the land, with open room below it"
                        + " for the wedge and the kerf. Nothing may hold the wedge against the blade. This lessens one"
                        + " hazard; it does not make the cut safe.",
                PROTECTION,
                DUST),

        /**
         * Cutting outlines and bodies on a router, a laser or another machine that follows a file. Lasers: rules of
         * university workshops (Iowa State University, College of Design; University of the Arts London, Creative
         * Computing Institute).
         */
        OUTLINES(
                "A router's cutter throws what is not held. Clamp the wood and every piece that comes free, clear of"
                        + " the cutter's way.",
                "A laser makes smoke and can set wood on fire. Never leave it alone. Keep its lid shut and its"
                        + " extraction on, with an extinguisher at hand.",
                "Read the data sheets of glue and finish before a laser burns them.",
                "A file knows nothing of clamps, cutters and lenses. Check its unit and zero, and try it in scrap.",
                "See Woodworking Sheet No 22 of the Health and Safety Executive, routers with numerical control.",
                PROTECTION,
                DUST),

        /** Letting inlays into the panels. */
        INLAYING(
                "Clamp the panel before a pocket is drilled or routed, take small depths at a time, and follow the"
                        + " machine's manual for cutter and speed.",
                "Unplug the router before its cutter or its depth is changed.",
                PROTECTION,
                DUST),

        /** Mounting the solid between discs. */
        MOUNTING(
                "A hollow, glued body can fly apart: inspect every seam before it is mounted, and follow the lathe's"
                        + " manual for holding and for the tailstock.",
                "Lock the tailstock and the rest. Turn the work round by hand, and see that it clears the bed and the"
                        + " rest, before the lathe is started."),

        /** Balancing the work with counterweights. */
        BALANCING(
                "A counterweight that comes loose hits like a stone. Screw or bolt it to the disc: glue or tape alone"
                        + " lets go. Check it before each start.",
                "Balance changes as wood is turned away: stop the lathe and look at it again. Balanced work can have"
                        + " cracks and loose seams all the same."),

        /**
         * Roughing and turning the sphere. Corners: Milton and Wohlers, A Course in Wood Turning (1919), p. 15. What is
         * caught and struck: Health and Safety Executive, Woodworking Sheet No 28.
         */
        TURNING(
                "Start at the lathe's lowest speed, stand out of the line of the work, and stop at any new sound. Wear"
                        + " a full face shield.",
                "The cut is interrupted until the corners are gone. Run slowly until all of them are taken off (Milton"
                        + " and Wohlers, A Course in Wood Turning, 1919, p. 15).",
                "Wear no gloves, loose clothing, jewellery or loose hair, and keep cloth away. Work that turns winds"
                        + " them up and takes the hand along.",
                "Stop the lathe and wait until the work stands still. Only then may a gauge, a calliper or a hand touch"
                        + " it, or the rest be moved.",
                "Wear hearing protection where the lathe or the cut is loud.",
                "See Woodworking Sheet No 28 of the Health and Safety Executive, wood turning lathes.",
                DUST),

        /** Turning the sphere around between cups. */
        REVERSING(
                "Between cups the sphere is held by pressure alone: it can slip and be thrown. Keep the tailstock"
                        + " pressed and locked, and take light cuts.",
                "Stop the lathe often and feel whether the sphere still sits firmly. Start again at the lowest speed"
                        + " each time it was turned around.",
                "Wear the full face shield and hearing protection here too, and nothing loose.",
                DUST),

        /** Milling the sphere by a program. */
        MILLING(
                "The path knows of the designed solid and its discs only, and takes feed and speeds from its caller.",
                "Check the work's zero with this cutter's tip, its holder and every limit. Simulate it on the machine's"
                        + " own control, then run it in air first with a hand on the stop.",
                "Keep the guard closed, and stay at the machine as long as it runs.",
                PROTECTION,
                DUST),

        /**
         * Sanding. Sandpaper: Health and Safety Executive, Woodworking Sheet No 28; manual of a lathe (Grizzly G0657,
         * p. 27).
         */
        SANDING(
                "Take the rest away. Hold the paper where it trails, and never wrap it around the work or a hand.",
                "Sand lightly and keep moving: heat burns fingers, softens glue and opens seams. Keep sparks away from"
                        + " dust.",
                "Wear eye protection, and no gloves, loose clothing or loose hair.",
                DUST),

        /**
         * Finishing. Rags: rules of a university workshop (Harvard Graduate School of Design, Fabrication Lab), which
         * refer to the National Fire Protection Association. Cloth at the lathe: rules of the Association of
         * Woodturners of Great Britain as Plymouth Woodturners quote them.
         */
        FINISHING(
                "Rags with drying oil can ignite by themselves: spread them flat outdoors or store them under water in"
                        + " a closed metal can.",
                "Keep solvents away from flames. Wear gloves and let in fresh air as the finish's data sheet says.",
                "Never hold a cloth, or a hand in a glove, to work that turns: stop the lathe first.",
                "Let the finish cure as its data sheet says before use.");

        // An immutable list, which its type does not say.
        @SuppressWarnings("ImmutableEnumChecker")
        private final List<Caution> cautions;

        Step(String... texts) {
            cautions = Stream.of(texts).map(text -> new Caution(this, text)).toList();
        }

        /** What is to be heeded at this step. */
        public List<Caution> cautions() {
            return cautions;
        }
    }

    /** The cautions of every step and of these ones, in the order of the work. */
    static List<Caution> of(Collection<Step> steps) {
        return Stream.of(Step.values())
                .filter(step -> step == Step.GENERAL || steps.contains(step))
                .flatMap(step -> step.cautions().stream())
                .toList();
    }

    /** The caution as a file tells it. */
    Notice notice() {
        return new Notice(Notice.Kind.CAUTION, step.name(), text);
    }
}
