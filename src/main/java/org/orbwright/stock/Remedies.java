package org.orbwright.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BlankRequest;
import org.orbwright.design.DesignRequest.PanelRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.segment.BlankLengths;
import org.orbwright.stock.Rack.Stock;
import org.orbwright.stock.Shortage.Remedy;
import org.orbwright.stock.Shortage.RemedyKind;
import org.orbwright.stock.StockRequest.Joint;
import org.orbwright.stock.StockRequest.SeamRequest;
import org.orbwright.stock.StripsAndBoards.Wood;

/** Tries small changes that may help where strips of a wood are missing, and plans each of them. */
final class Remedies {
    private static final int MOST_SEAMS = 3;
    private static final int MOST_LAYERS = 4;
    /** Sizes of board that one more is tried of, and shorter blanks that are tried. */
    private static final int MOST_BOARDS = 3;

    private static final int MOST_LENGTHS = 4;
    /** Seams that are tried where none are allowed: pieces of a quarter of the blank, a tenth of it between seams. */
    private static final double SMALLEST = 0.25;

    private static final double CLEARANCE = 0.1;
    /** Share of the work that is left that one plan may take. */
    private static final double OF_WHAT_IS_LEFT = 0.2;

    private final StockRequest request;
    private final Design design;
    private final String name;
    private final Wood wood;
    private final int missing;
    private final BoardFits fits;
    private final Effort effort;
    private final List<Remedy> found = new ArrayList<>();

    private Remedies(
            StockRequest request, Design design, String name, Wood wood, int missing, BoardFits fits, Effort effort) {
        this.request = request;
        this.design = design;
        this.name = name;
        this.wood = wood;
        this.missing = missing;
        this.fits = fits;
        this.effort = effort;
    }

    /** The changes that help, the best first; narrowest is the width of the narrowest band that lacks strips. */
    static List<Remedy> of(
            StockRequest request,
            Design design,
            String name,
            Wood wood,
            int missing,
            double narrowest,
            BoardFits fits,
            Effort effort) {
        Remedies remedies = new Remedies(request, design, name, wood, missing, fits, effort);
        remedies.seams();
        remedies.oneMoreBoard(narrowest);
        remedies.blankLength();
        remedies.layers();
        remedies.found.sort(Comparator.comparing(Remedy::missing));
        remedies.narrowerBand(narrowest);
        return remedies.found;
    }

    private void seams() {
        SeamRequest old = request.seams();
        double blank = design.unit().fromMillimetres(design.blankLength());
        SeamRequest more = old == null
                ? new SeamRequest(Joint.BUTT, null, blank * SMALLEST, blank * CLEARANCE, 1)
                : new SeamRequest(old.joint(), old.scarf(), old.smallestPiece(), old.clearance(), old.most() + 1);
        if (more.most() <= MOST_SEAMS) {
            missing(request.withSeams(more), design)
                    .ifPresent(less -> found.add(new Remedy(RemedyKind.SEAMS, less, more, null, null, null, null)));
        }
    }

    /** The board that helps most, of those the smallest. */
    private void oneMoreBoard(double narrowest) {
        Remedy best = null;
        List<Stock> smallestFirst = wood.stock().stream()
                .filter(one -> fits.widestBand(one) >= narrowest)
                .sorted(Comparator.comparing(Stock::volume))
                .limit(MOST_BOARDS)
                .toList();
        for (Stock one : smallestFirst) {
            Optional<Integer> less = missing(request.withOneMore(one.index(), one.offer()), design);
            if (less.isPresent() && (best == null || less.get() < best.missing())) {
                best = new Remedy(
                        RemedyKind.ONE_MORE_BOARD, less.get(), null, one.boardNumber(), one.offerNumber(), null, null);
            }
        }
        if (best != null) {
            found.add(best);
        }
    }

    /** The length that helps most, of those the longest. */
    private void blankLength() {
        Remedy best = null;
        double enough = BlankLengths.shortest(design);
        double step = design.unit().toMillimetres(BlankLengths.STEP);
        double length = enough < design.blankLength() - step ? enough : BlankLengths.next(design);
        for (int i = 0; i < MOST_LENGTHS && length > 0; i++) {
            Design shorter = withBlank(design, length);
            Optional<Integer> less = missing(request, shorter);
            if (less.isPresent() && (best == null || less.get() < best.missing())) {
                best = new Remedy(RemedyKind.BLANK_LENGTH, less.get(), null, null, null, length, null);
            }
            length = BlankLengths.next(shorter);
        }
        if (best != null) {
            found.add(best);
        }
    }

    private static Design withBlank(Design design, double length) {
        return Design.of(
                design.request().withBlank(new BlankRequest(design.unit().fromMillimetres(length))));
    }

    /** The fewest layers that help. */
    private void layers() {
        DesignRequest written = design.request();
        for (int layers = design.layers() + 1; layers <= MOST_LAYERS; layers++) {
            PanelRequest panel = new PanelRequest(
                    written.panel().thickness(), written.panel().land(), layers);
            Optional<Integer> less = missing(request, Design.of(written.withPanel(panel)));
            if (less.isPresent()) {
                found.add(new Remedy(RemedyKind.LAYERS, less.get(), null, null, null, null, layers));
                return;
            }
        }
    }

    private void narrowerBand(double narrowest) {
        double widest =
                wood.stock().stream().mapToDouble(fits::widestBand).max().orElse(0);
        if (widest > 0 && widest < narrowest) {
            found.add(new Remedy(RemedyKind.NARROWER_BAND, null, null, null, null, widest, null));
        }
    }

    /** How many strips are missing with a change, if it helps and there is work left to find out. */
    private Optional<Integer> missing(StockRequest changed, Design changedDesign) {
        if (effort.isSpent()) {
            return Optional.empty();
        }
        try {
            StripsAndBoards needs = new StripsAndBoards(changed, changedDesign);
            Wood only = needs.woods().get(name);
            if (only == null) {
                return Optional.empty();
            }
            // Seams have to keep clear of those in the strips of other woods.
            Map<String, Wood> woods = changed.seams() == null ? Map.of(name, only) : needs.woods();
            int less = new StripPlanner(needs, woods, List.of(CuttingAim.MISSING), effort.share(OF_WHAT_IS_LEFT))
                    .plan()
                    .missing(needs, only);
            return less < missing ? Optional.of(less) : Optional.empty();
        } catch (ImpossibleDesignException impossible) {
            return Optional.empty();
        }
    }
}
