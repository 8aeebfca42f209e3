package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.orbwright.design.Design;
import org.orbwright.quantity.Quantity;
import org.orbwright.quantity.Rounding;
import org.orbwright.segment.BlankLengths;
import org.orbwright.stock.BoardRequest.Surface;
import org.orbwright.stock.RackBoard;
import org.orbwright.stock.Reach;
import org.orbwright.stock.StockAim;
import org.orbwright.stock.StockPlan;
import org.orbwright.stock.StockPlan.Seam;
import org.orbwright.stock.StockPlan.SpeciesStock;
import org.orbwright.stock.StockPlan.StripMakeUp;
import org.orbwright.stock.StockRequest;
import org.orbwright.stock.StockRequest.Joint;
import org.orbwright.wood.WoodTable;

/** What the stock for a design gets wrong or nearly wrong. */
final class StockFindings {
    private static final String SEAMS = "/stock/seams";
    /** Less than this of a seam, in millimetres, goes with the blade's own tolerance. */
    private static final double NOTHING = 0.05;
    /** Share of a board's thickness that is much to lose by flattening it. */
    private static final double MUCH = 0.25;
    /** What a blank has to be too long by, in millimetres, before it is said: a rule tells no less. */
    private static final double SHORTER = 0.5;

    private final StockRequest request;
    private final Design design;
    private final StockPlan plan;
    private final List<Finding> findings = new ArrayList<>();

    private StockFindings(StockRequest request, Design design, StockPlan plan) {
        this.request = request;
        this.design = design;
        this.plan = plan;
    }

    static List<Finding> of(StockRequest request, Design design, StockPlan plan) {
        StockFindings stock = new StockFindings(request, design, plan);
        plan.species().forEach(stock::wood);
        stock.clock();
        plan.shortages().forEach(shortage -> stock.findings.addAll(ShortageFindings.of(request, design, shortage)));
        if (request.seams() != null) {
            stock.seams(request.seams().joint());
        }
        plan.rack().forEach(stock::board);
        stock.surfacing();
        return stock.findings;
    }

    private void surfacing() {
        int rough = request.boards().stream()
                .filter(board -> board.surface() != Surface.SURFACED)
                .mapToInt(board -> board.count() == null ? 1 : board.count())
                .sum();
        if (rough > 0 && request.allowances().planing() == 0) {
            findings.add(FindingCode.NO_SURFACING.note(
                    count(rough, "board is", "boards are")
                            + " rough, but nothing is allowed for planing the faces: see stock.allowances.planing.",
                    "/stock/allowances"));
        }
    }

    /** What a caller has to know of what boards give. */
    static List<Finding> reach(StockRequest request, Design design, Reach reach) {
        List<Finding> findings = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String wood : design.woodFields().keySet()) {
            String one = design.woods().oneName(wood);
            boolean none = request.boards().stream()
                    .noneMatch(board -> design.woods()
                            .among(board.species(), design.woodFields().keySet())
                            .equals(List.of(one)));
            if (seen.add(one) && none) {
                findings.add(FindingCode.STOCK_SHORT.stop(
                        "No board on the rack is of " + wood + ", so nothing can be made of this design.",
                        "/stock/boards"));
            }
        }
        if (reach.endedByClock()) {
            findings.add(FindingCode.SEARCH_ENDED_BY_CLOCK.note(
                    "The time for the searches was over before their work was done. Another call may find more: see"
                            + " stock.search.",
                    "/stock/search/seconds"));
        }
        return findings;
    }

    /** A note where shorter blanks would give as many segments; the seams of strips may need the length. */
    static List<Finding> blanks(StockRequest request, Design design) {
        double enough = BlankLengths.shortest(design);
        double left = design.blankLength() - enough;
        if (request.seams() != null || left < SHORTER) {
            return List.of();
        }
        return List.of(FindingCode.BLANK_LONGER_THAN_NEEDED.note(
                "Blanks of " + design.sayAtLeast(enough) + " give as many segments as those of "
                        + design.say(design.blankLength()) + ". The answered document has the shorter ones.",
                "/blank/length"));
    }

    private void wood(SpeciesStock wood) {
        if (wood.missing() > 0) {
            double feet = wood.missingBoardFeet() * Quantity.BOARD_FEET.factor(design.unit());
            findings.add(FindingCode.STOCK_SHORT.stop(
                    wood.missing() + " of " + count(wood.needed(), "strip", "strips") + " of " + wood.species()
                            + " cannot be cut. At least " + Rounding.plain(feet, 2)
                            + " board feet are short, before waste." + sure(wood),
                    "/stock/boards"));
        }
        if (!wood.proved()) {
            findings.add(FindingCode.PLAN_NOT_PROVED.note(
                    "The plan for " + wood.species() + " is not proved to be the best. " + better(wood),
                    "/stock/search"));
        }
    }

    private static String sure(SpeciesStock wood) {
        if (wood.fewestMissing()) {
            return " No plan has fewer missing.";
        }
        return wood.missingAtLeast() == 0
                ? " It is not proved that strips have to be missing."
                : " It is proved that at least " + wood.missingAtLeast() + " have to be missing.";
    }

    private String better(SpeciesStock wood) {
        String listed = wood.proof() == StockPlan.PlanProof.LISTED_LENGTHS
                ? "It is the best with pieces of the " + wood.pieceLengths() + " lengths that were tried. "
                : "";
        StockAim aim = request.aim() == null ? StockAim.COST : request.aim();
        if (wood.gap() == 0) {
            return listed
                    + (wood.fewestMissing()
                            ? "Another plan may be better in what counts after the "
                                    + switch (aim) {
                                        case COST -> "cost.";
                                        case WASTE -> "wood.";
                                        case SEAMS -> "seams.";
                                    }
                            : "Another plan may have fewer missing strips.");
        }
        String most =
                wood.gap() >= 1 ? "" : String.format(Locale.ROOT, "up to %.1f %% ", Math.ceil(wood.gap() * 1000) / 10);
        return listed + "Another plan may "
                + switch (aim) {
                    case COST -> "cost " + most + "less.";
                    case WASTE -> "use " + most + "less wood.";
                    case SEAMS -> "have " + most + "fewer seams.";
                };
    }

    private void clock() {
        if (plan.species().stream().anyMatch(SpeciesStock::endedByClock)) {
            findings.add(FindingCode.SEARCH_ENDED_BY_CLOCK.note(
                    "The time for the search was over before its work was done. More seconds may find a better plan:"
                            + " see stock.search.",
                    "/stock/search/seconds"));
        }
    }

    private void seams(Joint joint) {
        String end = joint == Joint.BUTT
                ? " The end grain of a butt seam that stays in a segment hardly holds by its glue."
                : " A scarf that stays in a segment shows there.";
        Finding.Severity severity = joint == Joint.BUTT ? Finding.Severity.WARN : Finding.Severity.NOTE;
        int within = strips(seam -> seam.cut() == null);
        if (within > 0) {
            findings.add(FindingCode.SEAM_IN_SEGMENT.finding(
                    severity,
                    count(within, "strip has", "strips have")
                            + " a seam within a segment, since no cut leaves both pieces long enough and keeps the"
                            + " clearance." + end,
                    SEAMS));
        }
        int beyond = strips(seam -> seam.cut() != null && seam.beyondKerf() > NOTHING);
        if (beyond > 0) {
            double farthest = madeUp().flatMap(makeUp -> makeUp.seams().stream())
                    .filter(seam -> seam.cut() != null)
                    .mapToDouble(Seam::beyondKerf)
                    .max()
                    .orElse(0);
            findings.add(FindingCode.SEAM_IN_SEGMENT.finding(
                    severity,
                    count(beyond, "strip has", "strips have") + " a seam on a cut. The seam reaches up to "
                            + design.say(farthest) + " beyond the kerf into the segments at both sides. "
                            + (joint == Joint.BUTT
                                    ? "The cut leans across the strip."
                                    : "The scarf is longer than the kerf.")
                            + end,
                    SEAMS));
        }
    }

    private Stream<StripMakeUp> madeUp() {
        return plan.strips().stream().flatMap(strip -> strip.makeUps().stream());
    }

    /** Strips with a seam of a kind. */
    private int strips(Predicate<Seam> wanted) {
        return madeUp().filter(makeUp -> makeUp.seams().stream().anyMatch(wanted))
                .mapToInt(StripMakeUp::strips)
                .sum();
    }

    private void board(RackBoard board) {
        String field =
                board.board() == null ? "/stock/offers/" + (board.offer() - 1) : "/stock/boards/" + (board.board() - 1);
        String name = board.name() == null ? "" : " (" + board.name() + ")";
        likeBands(board, field);
        if (board.use() == RackBoard.Use.NOT_NEEDED) {
            findings.add(FindingCode.BOARD_NOT_NEEDED.note(
                    "No band of the design is of " + board.species() + ", the wood of this board" + name + "."
                            + otherName(board),
                    field + "/species"));
        } else if (board.use() == RackBoard.Use.TOO_SMALL) {
            findings.add(FindingCode.BOARD_TOO_SMALL.note(
                    "Surfaced and without its ends this board of " + board.species() + name + " is "
                            + design.say(board.clearLength()) + " long, " + design.say(board.clearWidth())
                            + " wide and " + design.say(board.surfacedThickness())
                            + " thick: none of the strips fits on it.",
                    field));
        }
        if (board.board() == null) {
            return;
        }
        double rough = design.unit()
                .toMillimetres(request.boards().get(board.board() - 1).thickness());
        double saved = board.flatteningUnshimmed() - board.flatteningShimmed();
        if (saved > 0 && board.flatteningUnshimmed() > MUCH * rough) {
            findings.add(FindingCode.BOARD_TWISTED.note(
                    "Flattening this board of " + board.species() + name + " takes "
                            + design.say(board.flatteningShimmed()) + " of its thickness if it is shimmed and "
                            + design.say(board.flatteningUnshimmed())
                            + " if it is not. It loses less if it is crosscut to sections first.",
                    field + "/twist"));
        }
    }

    /** Notes a board that is planned for bands of another name, where one of the names may mean several woods. */
    private void likeBands(RackBoard board, String field) {
        List<String> bands = bandsLike(board);
        if (bands.size() == 1 && !bands.contains(design.woods().oneName(board.species()))) {
            findings.add(FindingCode.WOOD_NAME_UNCLEAR.note(
                    "This board of " + board.species() + " is planned for the bands of " + bands.get(0)
                            + ". One of the names may mean several woods, so make sure that they are the same.",
                    field + "/species"));
        }
    }

    /** Which of the bands' woods the name of a board may mean. */
    private List<String> bandsLike(RackBoard board) {
        return design.woods().among(board.species(), design.woodFields().keySet());
    }

    /** What else to call a board that no band is of, in a sentence with a blank before it. */
    private String otherName(RackBoard board) {
        List<String> bands = bandsLike(board);
        if (bands.size() > 1) {
            return " It may be " + Words.either(bands) + ": give it the name of the one that it is.";
        }
        return design.woods().find(board.species()).isPresent() ? "" : Words.known(WoodTable.nearest(board.species()));
    }

    private static String count(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }
}
