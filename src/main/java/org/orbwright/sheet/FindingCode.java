package org.orbwright.sheet;

import org.orbwright.sheet.Finding.Severity;

/** The stable codes of findings. */
public enum FindingCode {
    /** A part of the answer waits for something that the document does not state. */
    PART_LEFT_OUT,
    /** A length is so unusual that it was probably stated in the other unit. */
    UNIT_SLIP,
    /** The sphere reaches the hollow. */
    BREAK_THROUGH,
    /** The wall is thinner than wanted. */
    WALL_BELOW_MINIMUM,
    /** The sphere reaches beyond where the land lets the seams close. */
    SEAMS_OPEN,
    /** The sphere is larger than the solid at the middle of its faces, and flats stay there. */
    FLATS_LEFT,
    /** Less wood is left to turn away at the face centre than the turning allowance. */
    ALLOWANCE_NOT_MET,
    /** A band is gone on the sphere. */
    BAND_VANISHES,
    /** Less than half of a band's width can be seen. */
    BAND_THINNED,
    /** A band can be seen at the edge middle but runs out before the corners. */
    BAND_ENDS_BEFORE_CORNER,
    /** Wishes for bands contradict each other, or a step keeps them from coming true. The answer is a compromise. */
    WISHES_NOT_MET,
    /** Wishes for other bands leave little of one that nobody wished for on a kind of sphere. */
    BAND_NOT_WISHED,
    /** The blank is too short for one segment. */
    BLANK_TOO_SHORT,
    /** Shorter blanks give as many segments. */
    BLANK_LONGER_THAN_NEEDED,
    /** One of the two sets is not used up. */
    SET_LEFT_OVER,
    /** Sets are chosen, but sawing gives one. */
    ONE_SET_ONLY,
    /** Just as many segments of a kind are sawn as are needed, and no spares are asked for. */
    NOTHING_TO_SPARE,
    /** A segment is too small for a hand at a saw, or for the pad of a clamp too. */
    SMALL_SEGMENT,
    /** A strip is too narrow to be ripped between fence and blade, or to be ripped at all. */
    NARROW_STRIP,
    /** A strip is thinner than planers' manuals allow. */
    THIN_TO_PLANE,
    /** The bevel needs more blade tilt than saws commonly have. */
    TILT_BEYOND_SAW,
    /** The segments need a steeper mitre than gauges commonly have. */
    MITRE_BEYOND_GAUGE,
    /** Without a land the fence has no bearing, and the highest tooth comes out where it bears. */
    NO_LAND,
    /** The seams are too narrow to be glued well. */
    SEAM_NARROW,
    /** The bevel cut takes more blade than saws commonly have. */
    BLADE_BEYOND_SAW,
    /** The panel has an odd number of sides and no halves to true up. */
    NO_HALVES,
    /** A tilted lamination is wider than its segments. */
    LAMINATION_WIDER,
    /** The pocket of an inlay leaves less wood above the hollow than the wanted wall. */
    INLAY_FLOOR_THIN,
    /** An inlay is finished to so thin a rim that it may chip or be sanded through. */
    INLAY_RIM_THIN,
    /** The hole that chipped tips leave is larger than the inlay. */
    TIPS_NOT_COVERED,
    /** No plug that hides the hole of chipped tips fits into the panel. */
    PLUG_DOES_NOT_FIT,
    /** The grain across a tip is so short that the tip breaks off easily at the saw. */
    TIP_SHORT_GRAIN,
    /** Strips are missing that the boards at hand do not give. */
    STOCK_SHORT,
    /** The search ended before its plan was proved best. */
    PLAN_NOT_PROVED,
    /** A seam in a strip stays within a segment, or reaches into it. */
    SEAM_IN_SEGMENT,
    /** Strips are missing, and a board of their wood does not serve for them. */
    BOARD_DOES_NOT_SERVE,
    /** Strips are missing, and a small change would help. */
    STOCK_HELP,
    /** The clock ended the search for a plan, so that another call may find another one. */
    SEARCH_ENDED_BY_CLOCK,
    /** No band is of a board's wood. */
    BOARD_NOT_NEEDED,
    /** A board is too small for any of the strips. */
    BOARD_TOO_SMALL,
    /** Boards are rough, but nothing is allowed for planing them. */
    NO_SURFACING,
    /** A board loses much of its thickness before it is flat. */
    BOARD_TWISTED,
    /** A disc is wider than the panel's inscribed circle. */
    DISC_OVERHANGS,
    /** Screw holes stay in the finished sphere. */
    SCREW_IN_SPHERE,
    /** The cups leave patches that no position reaches. */
    CUPS_LEAVE_PATCHES,
    /** A speed is above the low end of the rule of thumb, or above its upper end. */
    SPEED_ABOVE_THUMB,
    /** A speed pulls at the glue harder than is allowed. */
    SPEED_ABOVE_GLUE,
    /** Between the discs the tool reaches little of the sphere, or nothing on one side. */
    REACH_SMALL,
    /** A strength of glue is stated, but what pulls at it is not known. */
    GLUE_NOT_CHECKED,
    /** A grit is coarser than the one before. */
    GRITS_OUT_OF_ORDER,
    /** The sphere as it leaves the tool is larger than the solid. */
    SANDING_LEAVES_FLATS,
    /** The sphere that is milled is larger than the solid at the middle of its faces, or than its seams close. */
    MILLING_LEAVES_FLATS,
    /** The upper half is milled up to the pole, where nothing may stand. */
    UPPER_END_FREE,
    /** A belt stays around the middle once both halves are milled. */
    BELT_LEFT,
    /** The cutter's shape often does not cut at its centre, and the path goes straight down into wood. */
    CUTS_AT_CENTRE,
    /** The work's centre of mass does not lie on the axis. */
    OFF_BALANCE,
    /** The force of an imbalance is larger than the work's weight. */
    IMBALANCE_LIFTS,
    /** Seams that close at once take longer than the glue stays open. */
    OPEN_TIME_SHORT,
    /** A work is shared out over several stages to fit into the open time. */
    STAGES_ADDED,
    /** The name of a wood may mean several, and the one that moves most is taken. */
    WOOD_NAME_UNCLEAR,
    /** The document states numbers of a wood that the table has too, and they are used in place of the table's. */
    OWN_WOOD,
    /** The density of a wood is not known. */
    DENSITY_UNKNOWN,
    /** How far a wood moves is not known. */
    MOVEMENT_UNKNOWN,
    /** The stock is much damper or drier than the home will keep it. */
    STOCK_MOISTURE_FAR,
    /** A moisture content lies where the coefficients of movement are not published for. */
    MOISTURE_OUTSIDE_TABLE,
    /** Neighbouring bands move so differently in thickness that a step can be felt on the finished sphere. */
    MOVEMENT_MISMATCH,
    /** The seasons strain a glued panel, whose joints would open if the glue let them. */
    PANEL_STRAINED,
    /** A setting error opens joints further than the glue bridges. */
    GAP_BEYOND_GLUE,
    /** Too many solids have a gap somewhere that the glue does not bridge. */
    GAPS_LIKELY,
    /** The blank is too narrow for the segments, and panels have a hole in the middle. */
    TIPS_BLUNT,
    /** Neighbours along a blank share cuts, and would make gaps larger if they came into one panel. */
    SEGMENTS_SHARE_CUTS,
    /** A measured error cannot be told from none. */
    BELOW_RESOLUTION,
    /** Legs lean from square, and every joint opens on one face. */
    LEGS_NOT_SQUARE,
    /** Measurements that tell the same thing differ by more than their uncertainty. */
    MEASURES_DISAGREE,
    /** A trial of a setting contradicts the others. */
    TRIALS_CONTRADICT,
    /** The trials of a setting agree with each other, and not with the scale that was stated. */
    OTHER_SCALE,
    /** The reading of a setting cannot tell its error from none, and the glue may not bridge it. */
    READING_TOO_COARSE,
    /** Faces that were not measured may limit the largest sphere. */
    FACES_NOT_MEASURED,
    /** The measured shell is too small for the designed sphere. */
    SPHERE_BEYOND_SHELL;

    /** Says that the design must not be cut so. The field is a JSON pointer to what it is about. */
    Finding stop(String message, String field) {
        return finding(Severity.STOP, message, field);
    }

    /** Says that the design is cut only if that is meant. */
    Finding warn(String message, String field) {
        return finding(Severity.WARN, message, field);
    }

    /** Says what is good to know. */
    Finding note(String message, String field) {
        return finding(Severity.NOTE, message, field);
    }

    /** The finding where how much it matters depends. */
    Finding finding(Severity severity, String message, String field) {
        return new Finding(this, severity, message, field);
    }
}
