package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.orbwright.design.Design;
import org.orbwright.quantity.Quantity;
import org.orbwright.quantity.Rounding;
import org.orbwright.stock.CutBoard;
import org.orbwright.stock.StockPlan;
import org.orbwright.stock.StockPlan.SpeciesStock;
import org.orbwright.stock.StockPlan.StripMakeUp;

/** What the stock for a design gets wrong or nearly wrong. */
final class StockFindings {
    private static final String BOARDS = "/boards";

    private StockFindings() {}

    static List<Finding> of(Design design, StockPlan plan) {
        List<Finding> findings = new ArrayList<>();
        for (SpeciesStock wood : plan.species()) {
            if (wood.missing() > 0) {
                findings.add(missing(design, wood));
            }
            if (!wood.proved()) {
                findings.add(new Finding(
                        FindingCode.PLAN_NOT_PROVED,
                        Finding.Severity.NOTE,
                        "The search for " + wood.species() + " ended before its plan was proved best; a better one"
                                + " would be better by " + percent(wood.gap()) + " at most.",
                        "/search"));
            }
        }
        int within = plan.strips().stream()
                .flatMap(strip -> strip.makeUps().stream())
                .filter(makeUp -> makeUp.seams().stream().anyMatch(seam -> seam.cut() == null))
                .mapToInt(StripMakeUp::strips)
                .sum();
        if (within > 0) {
            findings.add(new Finding(
                    FindingCode.SEAM_IN_SEGMENT,
                    Finding.Severity.WARN,
                    (within == 1 ? "1 strip has" : within + " strips have")
                            + " a seam within a segment, since no cut leaves both pieces long enough and keeps the"
                            + " clearance.",
                    "/seams"));
        }
        for (CutBoard board : plan.boards()) {
            double saved = board.flatteningUnshimmed() - board.flatteningShimmed();
            if (board.board() != null && saved > 0 && board.flatteningUnshimmed() > board.thickness() / 4) {
                findings.add(twisted(design, board));
            }
        }
        return findings;
    }

    private static Finding missing(Design design, SpeciesStock wood) {
        double feet = wood.missingBoardFeet() * Quantity.BOARD_FEET.factor(design.unit());
        String strips = wood.missing() == 1 ? "1 strip is" : wood.missing() + " strips are";
        String sure = wood.fewestMissing() ? "" : " The search ended before it was proved that no plan has fewer.";
        return new Finding(
                FindingCode.STOCK_SHORT,
                Finding.Severity.STOP,
                "Of " + wood.species() + " " + strips + " missing of " + wood.needed() + ", which is "
                        + Rounding.plain(feet, 2) + " board feet as they leave the saw, without what boards lose on"
                        + " the way." + sure,
                BOARDS);
    }

    private static Finding twisted(Design design, CutBoard board) {
        return new Finding(
                FindingCode.BOARD_TWISTED,
                Finding.Severity.NOTE,
                "Flattening a board of " + board.species() + " takes " + design.say(board.flatteningShimmed())
                        + " of its thickness if it is shimmed and " + design.say(board.flatteningUnshimmed())
                        + " if it is not; crosscut to sections first, it loses less.",
                BOARDS + "/" + board.board() + "/twist");
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", Math.ceil(share * 1000) / 10);
    }
}
