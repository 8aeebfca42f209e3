package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.orbwright.design.Design;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.stock.Shortage;
import org.orbwright.stock.Shortage.BoardFit;
import org.orbwright.stock.Shortage.BoardLack;
import org.orbwright.stock.Shortage.Remedy;
import org.orbwright.stock.StockRequest;
import org.orbwright.stock.StockRequest.SeamRequest;

/** Why strips are missing and what would help, in words. */
final class ShortageFindings {
    /** Boards that are named in one finding. */
    private static final int MOST_NAMED = 4;

    private final StockRequest request;
    private final Design design;

    private ShortageFindings(StockRequest request, Design design) {
        this.request = request;
        this.design = design;
    }

    static List<Finding> of(StockRequest request, Design design, Shortage shortage) {
        ShortageFindings words = new ShortageFindings(request, design);
        List<Finding> findings = new ArrayList<>();
        List<String> misfits = shortage.boards().stream()
                .filter(fit -> fit.fit() != BoardLack.NOTHING)
                .map(words::misfit)
                .distinct()
                .limit(MOST_NAMED)
                .toList();
        if (!misfits.isEmpty()) {
            findings.add(FindingCode.BOARD_DOES_NOT_SERVE.note(String.join(" ", misfits), "/stock/boards"));
        }
        List<Remedy> planned = shortage.remedies();
        if (!planned.isEmpty()) {
            findings.add(FindingCode.STOCK_HELP.note(
                    "Small changes would help with " + shortage.species() + ". "
                            + planned.stream().map(words::remedy).collect(Collectors.joining(" ")),
                    "/stock"));
        }
        return findings;
    }

    private String misfit(BoardFit fit) {
        String strips = "strips " + design.say(fit.stripWidth()) + " wide";
        String board = name(fit.board(), fit.offer());
        String widest = fit.widestBand() > 0
                ? " It gives bands of at most " + design.sayAtMost(fit.widestBand()) + "."
                : " It gives no band at all.";
        return switch (fit.fit()) {
            case NOTHING -> "";
            case TOO_SHORT -> board + " is " + design.sayAtLeast(fit.by()) + " too short for the shortest piece.";
            case TOO_THIN ->
                board + " is " + design.sayAtLeast(fit.by()) + " too thin for " + strips + ", lying flat or on edge."
                        + widest;
            case TOO_NARROW ->
                board + " is " + design.sayAtLeast(fit.by()) + " too narrow for " + strips + "." + widest;
        };
    }

    private String name(Integer board, Integer offer) {
        String name = board == null
                ? request.offers().get(offer - 1).name()
                : request.boards().get(board - 1).name();
        String called = name == null || name.isBlank() ? "" : " (" + name + ")";
        return board == null ? "Offer " + offer + called : "Board " + board + called;
    }

    private String remedy(Remedy remedy) {
        String then = remedy.missing() == null
                ? ""
                : remedy.missing() == 0
                        ? ", no strip is missing."
                        : remedy.missing() == 1
                                ? ", 1 strip is missing."
                                : ", " + remedy.missing() + " strips are missing.";
        return switch (remedy.change()) {
            case SEAMS -> seams(remedy.seams()) + then;
            case ONE_MORE_BOARD -> "With one more like " + lower(name(remedy.board(), remedy.offer())) + then;
            case BLANK_LENGTH -> "With blanks of " + design.say(remedy.length()) + then;
            case LAYERS -> "With panels of " + remedy.layers() + " layers, glued face to face" + then;
            case NARROWER_BAND ->
                "Bands of at most " + design.sayAtMost(remedy.length()) + " can be cut from these boards.";
        };
    }

    private String seams(SeamRequest seams) {
        LengthUnit unit = design.unit();
        String most = seams.most() == 1 ? "one seam" : seams.most() + " seams";
        return "With up to " + most + " in a strip (pieces of at least "
                + design.say(unit.toMillimetres(seams.smallestPiece())) + ", neighbouring seams "
                + design.say(unit.toMillimetres(seams.clearance())) + " apart)";
    }

    private static String lower(String name) {
        return Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }
}
