package org.orbwright.stock;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.stock.StockRequest.Joint;
import org.orbwright.stock.StockRequest.SeamRequest;

/**
 * What seams in strips have to keep; lengths in millimetres. Two pieces overlap in a seam, by 0 for butt seams. The
 * clearance is the least distance between seams in neighbouring strips. With at most 0 seams strips are in one piece.
 */
record SeamRules(double overlap, double smallest, double clearance, int most) {
    private static final int MOST = 1;

    /**
     * The rules of a request; null asks for strips in one piece.
     *
     * @throws ImpossibleDesignException if scarf and joint contradict each other, or no blank holds such pieces or
     *     distances
     */
    static SeamRules of(SeamRequest seams, Design design) {
        if (seams == null) {
            return new SeamRules(0, design.blankLength(), 0, 0);
        }
        double overlap = seams.scarf() == null ? 0 : design.unit().toMillimetres(seams.scarf());
        double smallest = design.unit().toMillimetres(seams.smallestPiece());
        List<Violation> broken = new ArrayList<>();
        if (seams.joint() == Joint.SCARF && overlap == 0) {
            broken.add(new Violation(
                    "/stock/seams/scarf",
                    "SCARF_MISSING",
                    "A scarf seam needs the length over which its pieces overlap.",
                    seams.scarf() == null ? null : String.valueOf(seams.scarf()),
                    "a length above 0, or the joint BUTT"));
        }
        if (seams.joint() == Joint.BUTT && overlap > 0) {
            broken.add(new Violation(
                    "/stock/seams/scarf",
                    "SCARF_WITHOUT_JOINT",
                    "The pieces of a butt seam do not overlap.",
                    String.valueOf(seams.scarf()),
                    "nothing or 0 here, or the joint SCARF"));
        }
        double clearance = design.unit().toMillimetres(seams.clearance());
        double blank = design.blankLength();
        double longest = (blank + overlap) / 2;
        if (overlap >= blank) {
            broken.add(new Violation(
                    "/stock/seams/scarf",
                    "SCARF_TOO_LONG",
                    "A scarf of " + design.say(overlap) + " does not fit on a blank of " + design.say(blank) + ".",
                    String.valueOf(seams.scarf()),
                    "a length below " + design.say(blank)));
        } else if (smallest > longest || overlap > smallest) {
            broken.add(new Violation(
                    "/stock/seams/smallestPiece",
                    "PIECE_DOES_NOT_FIT",
                    "Two pieces of at least " + design.say(smallest) + " with an overlap of " + design.say(overlap)
                            + " do not make a strip of " + design.say(blank) + ".",
                    String.valueOf(seams.smallestPiece()),
                    "from " + design.say(overlap) + " to " + design.sayAtMost(longest)));
        }
        if (clearance >= blank) {
            broken.add(new Violation(
                    "/stock/seams/clearance",
                    "CLEARANCE_TOO_LONG",
                    "No two seams are " + design.say(clearance) + " apart on a blank of " + design.say(blank) + ".",
                    String.valueOf(seams.clearance()),
                    "a length below " + design.say(blank)));
        }
        if (!broken.isEmpty()) {
            throw new ImpossibleDesignException(broken);
        }
        return new SeamRules(overlap, smallest, clearance, seams.most() == null ? MOST : seams.most());
    }
}
