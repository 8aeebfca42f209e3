package org.orbwright.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.orbwright.bench.BenchmarkDesigns;
import org.orbwright.design.Design;
import org.orbwright.stock.StockPlan.SpeciesStock;
import org.orbwright.stock.StockRequest.AllowancesRequest;
import org.orbwright.stock.StockRequest.Joint;
import org.orbwright.stock.StockRequest.SeamRequest;

/**
 * How long plans take and what is proved of them: two spheres of five bands from three woods, first from 12 boards,
 * then many spheres from 200, of random sizes and prices, without seams and with them. Run with
 * {@code -Dbench.main=org.orbwright.stock.StockSearch}.
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
        run("warm-up", 12, 2, 0);
        for (int seams = 0; seams <= 2; seams++) {
            run("12 boards, " + seams + " seams", 12, 2, seams);
        }
        run("200 boards", 200, 60, 0);
        run("200 boards, 1 seam", 200, 60, 1);
    }

    private static void run(String name, int boards, int spheres, int seams) {
        int proved = 0;
        for (int seed = 0; seed < RACKS; seed++) {
            StockRequest request = request(new Random(seed), boards, seams);
            Design design = Design.of(
                    BenchmarkDesigns.read("icosahedron-mixed").design().withCopies(spheres));
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

    private static StockRequest request(Random random, int boards, int seams) {
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
                seams == 0 ? null : new SeamRequest(Joint.BUTT, null, 120.0, 40.0, seams),
                StockAim.COST,
                null);
    }
}
