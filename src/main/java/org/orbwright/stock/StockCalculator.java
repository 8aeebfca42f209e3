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
import org.orbwright.segment.YieldCalculator;
import org.orbwright.stock.CutBoard.Section;
import org.orbwright.stock.CuttingModel.Effort;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingPlanner.Planned;
import org.orbwright.stock.CuttingProblem.StripKind;
import org.orbwright.stock.Rack.Stock;
import org.orbwright.stock.SeamPlanner.BlankSeams;
import org.orbwright.stock.StockPlan.Purchase;
import org.orbwright.stock.StockPlan.SpeciesStock;
import org.orbwright.stock.StockPlan.StripNeed;
import org.orbwright.stock.StockPlan.UnplannedLamination;
import org.orbwright.stock.StockRequest.AllowancesRequest;

/** Plans how the boards at hand are cut to the strips of a design, one wood after the other. */
public final class StockCalculator {
    /** Boards that one request may hold, all counts together; an answer lists each one that is cut. */
    private static final int MOST_BOARDS = 2000;
    /** Places for seams in every second strip of a blank. */
    private static final int MOST_PLACES = 3;
    /** The same for all kinds of blank together; each brings lengths to crosscut, and a search takes only so many. */
    private static final int MOST_PLACES_IN_ALL = 6;

    private final StockRequest request;
    private final Design design;
    private final Yield yields;
    private final List<UnplannedLamination> unplanned;
    private final SeamRules rules;
    private final AllowancesRequest allowances;
    private final List<Stock> rack;
    private final StockAim aim;
    private final double ripKerf;
    private final double stick;
    private final List<StripNeed> strips = new ArrayList<>();
    private final List<SpeciesStock> species = new ArrayList<>();
    private final List<Cut> fromRack = new ArrayList<>();
    private final List<Cut> bought = new ArrayList<>();
    private final Map<Integer, Integer> purchases = new TreeMap<>();
    private final StockStages stages;
    private final RackOutcome outcome = new RackOutcome();
    /** When the searches have to be over, on the clock of {@link System#nanoTime}. */
    private final long end;

    private StockCalculator(StockRequest request, Design design) {
        this.request = request;
        this.design = design;
        this.yields = YieldCalculator.calculate(design);
        this.unplanned = unplanned(design, yields);
        boolean planned = unplanned.size() < yields.laminations().size();
        this.rules = SeamRules.of(planned ? request.seams() : null, design);
        this.allowances = request.allowances();
        this.rack = Rack.of(request, design.unit());
        this.aim = request.aim();
        LengthUnit unit = design.unit();
        this.ripKerf = unit.toMillimetres(allowances.ripKerf());
        this.stick = design.thickness() / design.layers() + unit.toMillimetres(allowances.blankFlattening());
        this.stages = new StockStages(design, yields);
        this.end = System.nanoTime() + Math.round(request.search().seconds() * 1e9);
    }

    /**
     * Plans the cutting.
     *
     * @param asked a section that keeps its Bean Validation constraints
     * @param design the design
     * @throws ImpossibleDesignException if it holds more boards than can be answered, or its seams contradict each
     *     other
     */
    public static StockPlan plan(StockRequest asked, Design design) {
        design.require("the strips depend", DesignPart.values());
        StockRequest request = asked.filled(design.request().saw().kerf());
        int boards = request.boards().stream().mapToInt(board -> board.count()).sum();
        if (boards > MOST_BOARDS) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/stock/boards",
                    "TOO_MANY_BOARDS",
                    "There are " + boards + " boards on the rack, all counts together.",
                    String.valueOf(boards),
                    "at most " + MOST_BOARDS + " boards")));
        }
        return new StockCalculator(request, design).plan();
    }

    private StockPlan plan() {
        List<BlankKind> blanks = BlankKind.of(design, yields);
        double planing = design.unit().toMillimetres(allowances.stripPlaning());
        Map<String, WoodStrips> woods = WoodStrips.of(blanks, seams(blanks), planing, design.woods());
        int woodsLeft = woods.size();
        for (Map.Entry<String, WoodStrips> wood : woods.entrySet()) {
            planSpecies(wood.getKey(), wood.getValue(), effort(woodsLeft));
            woodsLeft--;
        }
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
                unplanned,
                boards,
                outcome.list(rack),
                bill(),
                stages.list(complete),
                cost,
                cost / design.copies());
    }

    private static List<UnplannedLamination> unplanned(Design design, Yield yields) {
        List<UnplannedLamination> unplanned = new ArrayList<>();
        for (int i = 0; i < yields.laminations().size(); i++) {
            LaminationYield lamination = yields.laminations().get(i);
            if (lamination.blanks() == null) {
                int segments = lamination.segments().stream()
                        .mapToInt(kind -> kind.uprightNeeded() + kind.invertedNeeded())
                        .sum();
                unplanned.add(new UnplannedLamination(
                        design.panels().get(i).lamination().index(), lamination.face(), segments));
            }
        }
        return unplanned;
    }

    /** One board that is cut, with its sections. */
    private record Cut(Stock stock, List<Section> sections) {}

    private List<BlankSeams> seams(List<BlankKind> blanks) {
        List<Double> spare = Rack.spareLengths(rack, design.blankLength(), design.kerf(), rules);
        int most = Math.max(1, Math.min(MOST_PLACES, MOST_PLACES_IN_ALL / Math.max(1, blanks.size())));
        return blanks.stream()
                .map(blank -> SeamPlanner.plan(blank, rules, spare, most))
                .toList();
    }

    private void planSpecies(String wood, WoodStrips needs, Effort effort) {
        List<Stock> stock = rack.stream().filter(one -> isOf(one, wood)).toList();
        CuttingProblem problem = needs.problem(stock, stick, ripKerf);
        outcome.wood(stock, problem);
        Planned planned = CuttingPlanner.plan(problem, aim, effort);
        BoardLayout layout = new BoardLayout(problem, planned.plan(), needs.uses(), strips.size());
        for (int s = 0; s < needs.uses().size(); s++) {
            StripNeed need = needs.need(s, planned.plan(), stick, rules);
            strips.add(need);
            stages.strips(needs.uses().get(s), need);
        }
        boards(planned.plan(), layout, stock);
        species.add(outcome(needs.name(), problem, planned, stock));
    }

    /** Whether a board is of a wood of the bands, and of no other one that its name may mean. */
    private boolean isOf(Stock one, String wood) {
        return design.woods()
                .among(one.board().species(), design.woodFields().keySet())
                .equals(List.of(wood));
    }

    /** An even share of what is left of the time. */
    private Effort effort(int woodsLeft) {
        return new Effort(request.search().nodes(), Math.max(0, end - System.nanoTime()) / woodsLeft);
    }

    private void boards(CuttingPlan plan, BoardLayout layout, List<Stock> stock) {
        for (CutBoards cut : plan.boards()) {
            Stock one = stock.get(cut.kind());
            outcome.cut(one, cut.count());
            for (int i = 0; i < cut.count(); i++) {
                (one.offer() < 0 ? fromRack : bought).add(new Cut(one, layout.sections(cut)));
                stages.board(one);
            }
            if (one.offer() >= 0) {
                purchases.merge(one.offer(), cut.count(), Integer::sum);
            }
        }
    }

    private CutBoard board(Cut cut, int number) {
        Stock one = cut.stock();
        List<Section> sections = cut.sections();
        LengthUnit unit = design.unit();
        double used = sections.isEmpty() ? 0 : sections.get(sections.size() - 1).to() + design.kerf();
        return new CutBoard(
                number,
                one.offer() < 0 ? Integer.valueOf(one.index()) : null,
                one.offer() < 0 ? null : Integer.valueOf(one.offer()),
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

    private SpeciesStock outcome(String name, CuttingProblem problem, Planned planned, List<Stock> stock) {
        int needed = problem.strips().stream().mapToInt(StripKind::count).sum();
        int missing = 0;
        double missingVolume = 0;
        for (int s = 0; s < problem.strips().size(); s++) {
            int less = planned.plan().missing().get(s);
            double width =
                    problem.ripping().widths().get(problem.strips().get(s).width());
            missing += less;
            missingVolume += less * width * stick * design.blankLength();
        }
        int boards = 0;
        double volume = 0;
        double cost = 0;
        for (CutBoards cut : planned.plan().boards()) {
            boards += cut.count();
            volume += cut.count() * stock.get(cut.kind()).volume();
            cost += cut.count() * stock.get(cut.kind()).cost();
        }
        return new SpeciesStock(
                name,
                needed,
                needed - missing,
                missing,
                missingVolume,
                boards,
                volume,
                cost,
                planned.value(),
                planned.bound(),
                planned.gap(),
                planned.proved(),
                planned.fewestMissing());
    }

    private List<Purchase> bill() {
        List<Purchase> bill = new ArrayList<>();
        for (Stock one : rack) {
            Integer count = one.offer() < 0 ? null : purchases.get(one.offer());
            if (count != null) {
                LengthUnit unit = design.unit();
                bill.add(new Purchase(
                        one.offer(),
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
