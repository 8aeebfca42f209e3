package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.segment.SegmentPlan;
import org.orbwright.segment.SegmentPlan.FaceSegments;
import org.orbwright.segment.SegmentPlan.SegmentCut;

/** What the segments of a design get wrong or nearly wrong. */
final class SegmentFindings {
    /**
     * Shortest side, in millimetres, below which a piece of wood cannot be kept by hand at a safe distance from a blade
     * and needs a holding jig of its own. Common practice, no source; local rules and the machine's manual may ask for
     * more.
     */
    static final double SMALLEST_WITHOUT_JIG = 50;

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
                small(design, face, segment, findings);
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
                findings.add(new Finding(
                        FindingCode.NO_HALVES,
                        Finding.Severity.NOTE,
                        "The " + panel.face() + " panels have " + sides + " segments, an odd number: there are no two"
                                + " halves to true up on a disc sander before the last joint, so every segment has to"
                                + " close by its saw cut alone.",
                        "/solid"));
            }
        }
        return findings;
    }

    private static void tooShort(Design design, FaceSegments face, SegmentCut segment, List<Finding> findings) {
        if (segment.perBlank() == 0) {
            findings.add(new Finding(
                    FindingCode.BLANK_TOO_SHORT,
                    Finding.Severity.STOP,
                    "A blank of " + design.say(design.blankLength()) + " is too short for one segment "
                            + segment.segment() + " of the " + face.face() + " panels, which needs "
                            + design.say(segment.shortestBlank()) + " with the end trims.",
                    "/blank/length"));
        }
    }

    private static void small(Design design, FaceSegments face, SegmentCut segment, List<Finding> findings) {
        double shortest = Math.min(segment.base(), Math.min(segment.legLeft(), segment.legRight()));
        if (shortest < SMALLEST_WITHOUT_JIG) {
            findings.add(new Finding(
                    FindingCode.SMALL_SEGMENT,
                    Finding.Severity.WARN,
                    "Segment " + segment.segment() + " of the " + face.face() + " panels has a side of only "
                            + design.say(shortest) + ": too small to hold by hand at a saw. Use a jig that clamps it"
                            + " and carries it past the blade.",
                    "/size/value"));
        }
    }
}
