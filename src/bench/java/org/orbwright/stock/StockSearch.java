package org.orbwright.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.orbwright.bench.BenchmarkDesigns;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.stock.StockPlan.SpeciesStock;
import org.orbwright.stock.StockRequest.AllowancesRequest;
import org.orbwright.stock.StockRequest.SearchRequest;

/**
 * How long plans take and how close to their bound they come: two spheres of five bands from three woods, first from 12
 * boards, then from 200, of random sizes and prices. Run with {@code -Dbench.main=org.orbwright.stock.StockSearch}.
 */
public final class StockSearch {
    private static final List<String> WOODS = List.of("white ash", "red alder", "american beech");
    private static final int RACKS = 10;

    private StockSearch() {}

    /**
     * Prints a line for each rack.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        int nodes = Integer.getInteger("nodes", 100_000);
        run("warm-up", 12, 2, 1, nodes);
        run("12 boards", 12, 2, 1, nodes);
        run("200 boards", 200, 60, 5, nodes);
    }

    private static void run(String name, int boards, int spheres, double seconds, int nodes) {
        int proved = 0;
        for (int seed = 0; seed < RACKS; seed++) {
            StockRequest request = request(new Random(seed), boards, seconds, nodes);
            Design design = Design.of(design(spheres));
            long start = System.nanoTime();
            StockPlan plan = StockCalculator.plan(request, design);
            double took = (System.nanoTime() - start) * 1e-9;
            double gap =
                    plan.species().stream().mapToDouble(SpeciesStock::gap).max().orElse(0);
            int missing =
                    plan.species().stream().mapToInt(SpeciesStock::missing).sum();
            boolean best = plan.species().stream().allMatch(SpeciesStock::proved);
            proved += best ? 1 : 0;
            System.out.printf(
                    Locale.ROOT,
                    "%s, rack %d: %.2f s, largest gap %.3f %%, %d strips missing, %d boards cut%s%n",
                    name,
                    seed,
                    took,
                    100 * gap,
                    missing,
                    plan.boards().size(),
                    best ? ", proved" : "");
        }
        System.out.printf(Locale.ROOT, "%s: %d of %d proved%n", name, proved, RACKS);
    }

    private static StockRequest request(Random random, int boards, double seconds, int nodes) {
        List<BoardRequest> rack = new ArrayList<>();
        for (int i = 0; i < boards; i++) {
            double length = 620 + random.nextInt(1900);
            double width = 80 + random.nextInt(170);
            double thickness = 20 + random.nextInt(36);
            double price = length * width * thickness * 1e-6 * (3 + 2 * random.nextDouble());
            rack.add(new BoardRequest(
                    null,
                    WOODS.get(i % WOODS.size()),
                    length,
                    width,
                    thickness,
                    1,
                    null,
                    Math.round(price * 100) / 100.0,
                    null,
                    null,
                    null,
                    null));
        }
        return new StockRequest(
                rack,
                null,
                new AllowancesRequest(3.0, 3.0, 1.5, 20.0, 2.4, 1.0, 2.0),
                null,
                StockAim.COST,
                new SearchRequest(nodes, seconds));
    }

    private static DesignRequest design(int spheres) {
        DesignRequest one = BenchmarkDesigns.read("icosahedron-mixed").design();
        return new DesignRequest(
                one.name(),
                one.unit(),
                one.solid(),
                spheres,
                one.sets(),
                one.invertedPanels(),
                one.spares(),
                one.size(),
                one.panel(),
                one.laminations(),
                one.woods(),
                one.saw(),
                one.blank(),
                one.sphere());
    }
}
