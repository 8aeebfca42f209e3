package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Places;
import org.orbwright.jig.JigCalculator;
import org.orbwright.quantity.Rounding;
import org.orbwright.segment.SawAngles;
import org.orbwright.segment.SawAngles.FaceAngles;
import org.orbwright.segment.SawAngles.SegmentAngles;
import org.orbwright.segment.SegmentPlan;
import org.orbwright.segment.SegmentPlan.FaceSegments;
import org.orbwright.segment.SegmentPlan.SegmentCut;

/** What the segments of a design get wrong or nearly wrong. */
final class SegmentFindings {
    /**
     * Shortest side in millimetres below which a hand does not hold a piece of wood at a blade: a piece that is held
     * within 162 mm or 6 3/8 in of it is too small (a radial saw's manual), and hands stay 100 mm away (mitre-saw
     * manuals in the wording of IEC 62841-3-9). Nearly every segment is smaller, so this is a WARN: a carrier with a
     * clamp takes it past the blade.
     */
    static final double SMALLEST_FOR_A_HAND = 162;
    /** How far hands stay away from a blade, in millimetres; the same manuals. */
    private static final double HANDS_AWAY = 100;
    /**
     * Diameter in millimetres of a clamp's pad. Where a pad of this size, set on the place where a hold-down presses,
     * reaches beyond a side, nothing that is common holds the segment at a blade: a STOP. Common practice, no source.
     */
    static final double PAD = 20;

    private static final double STEEPEST_TILT = JigCalculator.STEEPEST_TILT;
    /** How far most mitre gauges turn from square. Common practice, no source. */
    private static final double STEEPEST_MITRE = Math.toRadians(60);
    /** What is exactly at a limit keeps it; in radians and millimetres. */
    private static final double EXACT = 1e-9;

    private SegmentFindings() {}

    static List<Finding> of(Design design, SegmentPlan segments) {
        List<Finding> findings = new ArrayList<>();
        for (FaceSegments face : segments.faces()) {
            for (SegmentCut segment : face.segments()) {
                if (segment.mirrored()) {
                    // It has the sides of the segment that it mirrors, which has been looked at.
                    continue;
                }
                tooShort(design, face, segment, findings);
                if (face.places() != Places.EVEN) {
                    small(design, face, segment, findings);
                }
            }
        }
        return findings;
    }

    /** Notes the panels that cannot be made in two halves. */
    static List<Finding> halves(Design design) {
        List<Finding> findings = new ArrayList<>();
        for (Panel panel : design.facePanels()) {
            int sides = panel.kind().sides();
            if (sides % 2 == 1) {
                findings.add(FindingCode.NO_HALVES.note(
                        "The " + panel.face() + " panels have " + sides + " segments, an odd number. So there are no"
                                + " two halves to true up on a disc sander before the last joint. Every segment has to"
                                + " close by its saw cut alone.",
                        "/solid"));
            }
        }
        return findings;
    }

    /** Warns of settings that common saws and gauges do not have. */
    static List<Finding> settings(SawAngles angles) {
        List<Finding> findings = new ArrayList<>();
        for (FaceAngles face : angles.faces()) {
            if (face.bladeTilt() > STEEPEST_TILT + EXACT) {
                findings.add(FindingCode.TILT_BEYOND_SAW.warn(
                        "The " + face.face() + " panels need a blade tilt of " + degrees(face.bladeTilt())
                                + ". Saws commonly tilt to " + degrees(STEEPEST_TILT)
                                + ". The panel has to be held upright on a carrier, where the tilt is "
                                + degrees(face.bevel()) + ", or bevelled in another way.",
                        "/solid"));
            }
            double mitre = 0;
            for (SegmentAngles segment : face.segments()) {
                mitre = Math.max(mitre, Math.max(segment.mitreGaugeLeft(), segment.mitreGaugeRight()));
            }
            if (mitre > STEEPEST_MITRE + EXACT) {
                findings.add(FindingCode.MITRE_BEYOND_GAUGE.warn(
                        "The segments of the " + face.face() + " panels need a mitre gauge setting of " + degrees(mitre)
                                + ". Gauges commonly turn to " + degrees(STEEPEST_MITRE)
                                + ". They have to be sawn on a carrier made for the angle.",
                        "/solid"));
            }
        }
        return findings;
    }

    private static String degrees(double radians) {
        return Rounding.plain(Math.toDegrees(radians), 2) + " degrees";
    }

    private static void tooShort(Design design, FaceSegments face, SegmentCut segment, List<Finding> findings) {
        if (segment.perBlank() != null && segment.perBlank() == 0) {
            findings.add(FindingCode.BLANK_TOO_SHORT.stop(
                    "A blank of " + design.say(design.blankLength()) + " is too short for one segment "
                            + segment.segment() + " of the " + Words.half(face.places()) + face.face()
                            + " segments. It needs " + design.sayAtLeast(segment.shortestBlank())
                            + " with the end trims.",
                    "/blank/length"));
        }
    }

    private static void small(Design design, FaceSegments face, SegmentCut segment, List<Finding> findings) {
        double longest = Math.max(segment.base(), Math.max(segment.legLeft(), segment.legRight()));
        // A hold-down presses on the centroid, a third of the least height away from the longest side.
        double pad = 2 * (2 * segment.area() / longest) / 3;
        double shortest = Math.min(segment.base(), Math.min(segment.legLeft(), segment.legRight()));
        String name = "Segment " + segment.segment() + " of the " + face.face() + " panels ";
        if (pad < PAD - EXACT) {
            add(
                    findings,
                    Finding.Severity.STOP,
                    name + "is too small for any clamp at a blade. Where a hold-down presses, a pad of at most "
                            + design.sayAtMost(pad) + " fits on it. Common clamps have pads of " + design.say(PAD)
                            + " (common practice, no source). Make the solid larger, or choose one with larger faces.");
        } else if (shortest < SMALLEST_FOR_A_HAND - EXACT) {
            add(
                    findings,
                    Finding.Severity.WARN,
                    name + "has a side of only " + design.say(shortest) + ": never hold it at the blade by hand. Wood"
                            + " that is held within " + design.say(SMALLEST_FOR_A_HAND)
                            + " of a blade is too small for a hand (manual of a radial saw). Hands stay at least "
                            + design.say(HANDS_AWAY) + " away (mitre-saw manuals in the wording of IEC 62841-3-9)."
                            + " Use a carrier that clamps it and takes it past the blade.");
        }
    }

    private static void add(List<Finding> findings, Finding.Severity severity, String message) {
        findings.add(FindingCode.SMALL_SEGMENT.finding(severity, message, "/size/value"));
    }
}
