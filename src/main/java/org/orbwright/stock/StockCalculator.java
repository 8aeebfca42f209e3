package org.orbwright.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.segment.Yield;
import org.orbwright.segment.Yield.StripYield;
import org.orbwright.segment.YieldCalculator;
import org.orbwright.stock.BoardLayout.StripUse;
import org.orbwright.stock.CutBoard.Section;
import org.orbwright.stock.CuttingModel.Effort;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingPlanner.Planned;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;
import org.orbwright.stock.Rack.Stock;
import org.orbwright.stock.StockPlan.Purchase;
import org.orbwright.stock.StockPlan.SpeciesStock;
import org.orbwright.stock.StockPlan.StripNeed;
import org.orbwright.stock.StockRequest.AllowancesRequest;
import org.orbwright.stock.StockRequest.SearchRequest;
import org.orbwright.wood.WoodSpecies;
import org.orbwright.wood.WoodTable;

/** Plans how the boards at hand are cut to the strips of a design, one wood after the other. */
public final class StockCalculator {
    private static final int NODES = 100_000;
    private static final double SECONDS = 2;
    /** Boards that one request may hold, all counts together; an answer lists each one that is cut. */
    private static final int MOST_BOARDS = 2000;

    private final StockRequest request;
    private final Design design;
    private final Yield yields;
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

    private StockCalculator(StockRequest request, Design design) {
        this.request = request;
        this.design = design;
        this.yields = YieldCalculator.calculate(design);
        this.allowances = Rack.allowances(request, design);
        this.rack = Rack.of(request, allowances);
        this.aim = request.aim() == null ? StockAim.COST : request.aim();
        LengthUnit unit = design.unit();
        this.ripKerf = unit.toMillimetres(allowances.ripKerf());
        this.stick = design.thickness() + unit.toMillimetres(allowances.blankFlattening());
        this.stages = new StockStages(design, yields);
    }

    /**
     * Plans the cutting.
     *
     * @param request a request that keeps its Bean Validation constraints
     * @param design its design
     * @throws ImpossibleDesignException if it holds more boards than can be answered
     */
    public static StockPlan plan(StockRequest request, Design design) {
        int boards = request.boards().stream()
                .mapToInt(board -> board.count() == null ? 1 : board.count())
                .sum();
        if (boards > MOST_BOARDS) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/boards",
                    "TOO_MANY_BOARDS",
                    "There are " + boards + " boards on the rack, all counts together.",
                    String.valueOf(boards),
                    "at most " + MOST_BOARDS + " boards")));
        }
        return new StockCalculator(request, design).plan();
    }

    private StockPlan plan() {
        needs().forEach(this::planSpecies);
        List<CutBoard> boards = new ArrayList<>();
        fromRack.forEach(cut -> boards.add(board(cut, boards.size() + 1)));
        bought.forEach(cut -> boards.add(board(cut, boards.size() + 1)));
        double cost = boards.stream().mapToDouble(CutBoard::cost).sum();
        boolean complete = strips.stream().allMatch(strip -> strip.missing() == 0);
        return new StockPlan(
                allowances, species, strips, boards, bill(), stages.list(complete), cost, cost / design.copies());
    }

    /** One board that is cut, with its sections. */
    private record Cut(Stock stock, List<Section> sections) {}

    /** A band with the strips that it needs. */
    private record Need(StripUse use, StripYield strip) {}

    /** The strips that are needed, by wood in the order of the bands. */
    private Map<String, List<Need>> needs() {
        Map<String, List<Need>> needs = new LinkedHashMap<>();
        for (int i = 0; i < design.panels().size(); i++) {
            int lamination = design.panels().get(i).lamination().index();
            for (StripYield strip : yields.laminations().get(i).strips()) {
                if (strip.count() != null && strip.count() > 0) {
                    needs.computeIfAbsent(wood(strip.species()), name -> new ArrayList<>())
                            .add(new Need(new StripUse(lamination, strip.band()), strip));
                }
            }
        }
        return needs;
    }

    /** One name for all names of a wood. */
    private static String wood(String name) {
        return WoodTable.find(name).map(WoodSpecies::name).orElse(name.strip().toLowerCase(Locale.ROOT));
    }

    private void planSpecies(String wood, List<Need> needs) {
        List<Stock> stock = rack.stream()
                .filter(one -> wood(one.board().species()).equals(wood))
                .toList();
        CuttingProblem problem = problem(needs, stock);
        Planned planned = CuttingPlanner.plan(problem, aim, effort());
        CuttingPlan plan = planned.plan();
        for (int s = 0; s < needs.size(); s++) {
            StripYield strip = needs.get(s).strip();
            StripUse use = needs.get(s).use();
            double width =
                    problem.ripping().widths().get(problem.strips().get(s).width());
            int missing = plan.missing().get(s);
            strips.add(new StripNeed(
                    use.lamination(),
                    use.band(),
                    strip.species(),
                    width,
                    stick,
                    strip.length(),
                    strip.count(),
                    missing));
            stages.strips(strip, strip.count() - missing, width * stick * strip.length());
        }
        boards(problem, plan, needs, stock);
        species.add(outcome(needs.get(0).strip().species(), problem, planned, stock));
    }

    private Effort effort() {
        SearchRequest search = request.search();
        int nodes = search == null || search.nodes() == null ? NODES : search.nodes();
        double seconds = search == null || search.seconds() == null ? SECONDS : search.seconds();
        return new Effort(nodes, Math.round(seconds * 1000));
    }

    private CuttingProblem problem(List<Need> needs, List<Stock> stock) {
        double planing = design.unit().toMillimetres(allowances.stripPlaning());
        List<Double> widths = new ArrayList<>();
        List<Integer> needed = new ArrayList<>();
        List<StripKind> kinds = new ArrayList<>();
        for (Need need : needs) {
            double width = need.strip().width() + planing;
            int item = find(widths, width);
            if (item < 0) {
                item = widths.size();
                widths.add(width);
                needed.add(0);
            }
            needed.set(item, needed.get(item) + need.strip().count());
            kinds.add(new StripKind(item, need.strip().count(), List.of(new MakeUp(List.of(0)))));
        }
        List<BoardKind> boards = stock.stream()
                .map(one -> new BoardKind(
                        one.surfacing().length(),
                        one.surfacing().width(),
                        one.surfacing().thickness(),
                        one.board().count(),
                        one.cost(),
                        one.volume()))
                .toList();
        return new CuttingProblem(
                new Ripping(widths, needed, stick, ripKerf),
                List.of(design.blankLength()),
                design.kerf(),
                boards,
                kinds);
    }

    private static int find(List<Double> widths, double width) {
        for (int i = 0; i < widths.size(); i++) {
            if (Math.abs(widths.get(i) - width) < Ripping.EXACT_FIT) {
                return i;
            }
        }
        return -1;
    }

    private void boards(CuttingProblem problem, CuttingPlan plan, List<Need> needs, List<Stock> stock) {
        BoardLayout layout =
                new BoardLayout(problem, plan, needs.stream().map(Need::use).toList());
        for (CutBoards cut : plan.boards()) {
            Stock one = stock.get(cut.kind());
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
