package org.orbwright.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.segment.Yield;
import org.orbwright.segment.Yield.LaminationYield;
import org.orbwright.stock.BoardLayout.Wanted;
import org.orbwright.stock.CutBoard.Section;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.Rack.Stock;
import org.orbwright.stock.StockPlan.PlanProof;
import org.orbwright.stock.StockPlan.Purchase;
import org.orbwright.stock.StockPlan.SpeciesStock;
import org.orbwright.stock.StockPlan.StripNeed;
import org.orbwright.stock.StockPlan.UnplannedLamination;
import org.orbwright.stock.StockRequest.AllowancesRequest;
import org.orbwright.stock.StripPlanner.Strips;
import org.orbwright.stock.StripsAndBoards.Wood;
import org.orbwright.stock.WoodPlanner.WoodPlan;
import org.orbwright.stock.WoodStrips.StripUse;

/** Plans how the boards at hand are cut to the strips of a design. */
public final class StockCalculator {
    /** Boards that one request may hold, all counts together; an answer lists each one that is cut. */
    private static final int MOST_BOARDS = 2000;
    /** Share of the work that the plan may take; the rest is for what would help where strips are missing. */
    private static final double FOR_PLAN = 0.9;

    private static final RecentPlans RECENT = new RecentPlans();

    private final StockRequest request;
    private final Design design;
    private final StripsAndBoards needs;
    private final AllowancesRequest allowances;
    private final List<StripNeed> strips = new ArrayList<>();
    private final List<SpeciesStock> species = new ArrayList<>();
    private final List<BoardInPlan> fromRack = new ArrayList<>();
    private final List<BoardInPlan> bought = new ArrayList<>();
    private final Map<Integer, Integer> purchases = new TreeMap<>();
    private final StockStages stages;
    private final RackOutcome outcome = new RackOutcome();
    private final Effort effort;

    private StockCalculator(StockRequest request, Design design, Effort effort) {
        this.request = request;
        this.design = design;
        this.needs = new StripsAndBoards(request, design);
        this.allowances = request.allowances();
        this.stages = new StockStages(design, needs.yields());
        this.effort = effort;
    }

    /**
     * Plans the cutting for a section that keeps its Bean Validation constraints.
     *
     * @throws ImpossibleDesignException if it holds more boards than can be answered, or its seams contradict each
     *     other
     */
    public static StockPlan plan(StockRequest asked, Design design) {
        design.require("the strips depend", DesignPart.values());
        StockRequest request = asked.filled(design.request().saw().kerf());
        requireFewBoards(request);
        return RECENT.get(request, design.request(), () -> plan(request, design, Effort.of(request.search())));
    }

    /** Refuses a section that holds more boards than can be answered. */
    static void requireFewBoards(StockRequest request) {
        int boards = request.boards().stream().mapToInt(board -> board.count()).sum();
        if (boards > MOST_BOARDS) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/stock/boards",
                    "TOO_MANY_BOARDS",
                    "There are " + boards + " boards on the rack, all counts together.",
                    String.valueOf(boards),
                    "at most " + MOST_BOARDS + " boards")));
        }
    }

    /** Plans the cutting for a section that is filled in. */
    static StockPlan plan(StockRequest request, Design design, Effort effort) {
        return plan(request, design, effort, null);
    }

    /** The same where a plan without missing strips is known, or null: if none is found that is better, that is it. */
    static StockPlan plan(StockRequest request, Design design, Effort effort, Strips known) {
        return new StockCalculator(request, design, effort).plan(known);
    }

    private StockPlan plan(Strips known) {
        Effort forPlan = effort.share(FOR_PLAN);
        Strips planned = new StripPlanner(needs, needs.woods(), CuttingAim.inOrder(request.aim()), forPlan).plan();
        planned = known != null && planned.missing(needs) > 0 ? known : planned;
        List<GluedStrips> glued = new ArrayList<>();
        for (int i = 0; i < needs.blanks().size(); i++) {
            glued.add(new GluedStrips(needs.blanks().get(i), planned.layers().get(i)));
        }
        for (Map.Entry<String, Wood> wood : needs.woods().entrySet()) {
            wood(wood.getValue(), planned.woods().get(wood.getKey()), glued, forPlan.endedByClock());
        }
        List<UnplannedLamination> unplanned = unplanned();
        List<CutBoard> boards = new ArrayList<>();
        fromRack.forEach(cut -> boards.add(board(cut, boards.size() + 1)));
        bought.forEach(cut -> boards.add(board(cut, boards.size() + 1)));
        double cost = boards.stream().mapToDouble(CutBoard::cost).sum();
        boolean complete = strips.stream().allMatch(strip -> strip.missing() == 0) && unplanned.isEmpty();
        return new StockPlan(
                complete,
                allowances,
                species,
                strips,
                glued.stream().flatMap(blank -> blank.layers().stream()).toList(),
                unplanned,
                shortages(),
                boards,
                outcome.list(needs.rack()),
                bill(),
                stages.list(complete),
                cost,
                cost / design.copies());
    }

    private List<Shortage> shortages() {
        double planing = design.unit().toMillimetres(allowances.stripPlaning());
        BoardFits fits = new BoardFits(needs.rules().smallest(), needs.stick(), planing);
        List<Shortage> shortages = new ArrayList<>();
        int first = 0;
        int place = 0;
        for (Map.Entry<String, Wood> wood : needs.woods().entrySet()) {
            int kinds = wood.getValue().strips().uses().size();
            List<Double> widths = strips.subList(first, first + kinds).stream()
                    .filter(strip -> strip.missing() > 0)
                    .map(StripNeed::width)
                    .distinct()
                    .sorted()
                    .toList();
            SpeciesStock outcome = species.get(place);
            if (!widths.isEmpty()) {
                shortages.add(new Shortage(
                        outcome.species(),
                        outcome.missing(),
                        fits.of(wood.getValue().stock(), widths),
                        Remedies.of(
                                request,
                                design,
                                wood.getKey(),
                                wood.getValue(),
                                outcome.missing(),
                                widths.get(0) - planing,
                                fits,
                                effort)));
            }
            first += kinds;
            place++;
        }
        return shortages;
    }

    private List<UnplannedLamination> unplanned() {
        Yield yields = needs.yields();
        List<UnplannedLamination> unplanned = new ArrayList<>();
        for (int i = 0; i < yields.laminations().size(); i++) {
            LaminationYield lamination = yields.laminations().get(i);
            if (lamination.blanks() == null) {
                int segments = lamination.segments().stream()
                        .mapToInt(kind -> kind.uprightNeeded() + kind.invertedNeeded())
                        .sum();
                unplanned.add(new UnplannedLamination(
                        design.panels().get(i).lamination().index() + 1, lamination.face(), segments));
            }
        }
        return unplanned;
    }

    /** One board that is cut, with its sections. */
    private record BoardInPlan(Stock stock, List<Section> sections) {}

    private void wood(Wood wood, WoodPlan planned, List<GluedStrips> glued, boolean byClock) {
        SeamRules rules = needs.rules();
        List<StripUse> uses = wood.strips().uses();
        outcome.wood(wood.stock(), planned.problem(), rules.smallest());
        List<Wanted> wanted = new ArrayList<>();
        List<StripNeed> added = new ArrayList<>();
        for (int kind = 0; kind < uses.size(); kind++) {
            StripUse use = uses.get(kind);
            GluedStrips strip = glued.get(needs.blanks().indexOf(use.blank()));
            wanted.addAll(strip.wanted(use.band(), kind));
            StripNeed need = strip.need(use, wood.strips().width(kind), needs.stick(), rules);
            added.add(need);
            stages.strips(use, need);
        }
        CuttingPlan plan = planned.planned().plan();
        BoardLayout layout = new BoardLayout(planned.problem(), plan, uses, strips.size(), wanted, rules.smallest());
        strips.addAll(added);
        boards(plan, layout, wood.stock());
        species.add(outcome(wood, planned, added, byClock));
    }

    private void boards(CuttingPlan plan, BoardLayout layout, List<Stock> stock) {
        for (CutBoards cut : plan.boards()) {
            Stock one = stock.get(cut.kind());
            outcome.cut(one, cut.count());
            for (int i = 0; i < cut.count(); i++) {
                (one.offer() < 0 ? fromRack : bought).add(new BoardInPlan(one, layout.sections(cut)));
                stages.board(one);
            }
            if (one.offer() >= 0) {
                purchases.merge(one.offer(), cut.count(), Integer::sum);
            }
        }
    }

    private CutBoard board(BoardInPlan cut, int number) {
        Stock one = cut.stock();
        List<Section> sections = cut.sections();
        LengthUnit unit = design.unit();
        double used = sections.isEmpty() ? 0 : sections.get(sections.size() - 1).to() + design.kerf();
        return new CutBoard(
                number,
                one.boardNumber(),
                one.offerNumber(),
                one.board().name(),
                one.board().species(),
                one.cost(),
                unit.toMillimetres(one.board().length()),
                unit.toMillimetres(one.board().width()),
                unit.toMillimetres(one.board().thickness()),
                one.surfacing().length(),
                one.surfacing().width(),
                one.surfacing().thickness(),
                one.surfacing().shimmedLoss(),
                one.surfacing().unshimmedLoss(),
                sections,
                Math.max(0, one.surfacing().length() - used));
    }

    private SpeciesStock outcome(Wood wood, WoodPlan planned, List<StripNeed> strips, boolean byClock) {
        List<Stock> stock = wood.stock();
        int needed = strips.stream().mapToInt(StripNeed::needed).sum();
        int missing = strips.stream().mapToInt(StripNeed::missing).sum();
        double missingVolume = strips.stream()
                .mapToDouble(need -> need.missing() * need.width() * need.thickness() * need.length())
                .sum();
        int boards = 0;
        double volume = 0;
        double cost = 0;
        for (CutBoards cut : planned.planned().plan().boards()) {
            boards += cut.count();
            volume += cut.count() * stock.get(cut.kind()).volume();
            cost += cut.count() * stock.get(cut.kind()).cost();
        }
        CuttingAim asked = CuttingAim.of(request.aim());
        double value = asked.answered(planned.problem(), planned.planned().plan());
        // Where strips were given up for the clearance of seams, bounds are for plans that have them.
        boolean given = missing > planned.count(CuttingAim.MISSING);
        double bound = given ? 0 : asked.answeredBound(planned.bound(asked), planned.count(asked), value);
        int least = (int) Math.min(missing, planned.bound(CuttingAim.MISSING));
        boolean compared = planned.aims().containsAll(CuttingAim.STATED);
        PlanProof proof = given || !compared ? PlanProof.NONE : planned.proof();
        return new SpeciesStock(
                wood.strips().name(),
                needed,
                needed - missing,
                missing,
                missingVolume,
                boards,
                volume,
                cost,
                value,
                bound,
                value > 0 ? (value - bound) / value : 0,
                least,
                least == missing,
                proof == PlanProof.EVERY_PLAN,
                proof,
                planned.problem().lengths().size() - 1,
                byClock);
    }

    private List<Purchase> bill() {
        List<Purchase> bill = new ArrayList<>();
        for (Stock one : needs.rack()) {
            Integer count = one.offer() < 0 ? null : purchases.get(one.offer());
            if (count != null) {
                LengthUnit unit = design.unit();
                bill.add(new Purchase(
                        one.offer() + 1,
                        one.board().name(),
                        one.board().species(),
                        count,
                        unit.toMillimetres(one.board().length()),
                        unit.toMillimetres(one.board().width()),
                        unit.toMillimetres(one.board().thickness()),
                        count * one.volume(),
                        count * one.volume(),
                        count * one.cost()));
            }
        }
        return bill;
    }
}
