package org.orbwright.stock;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.SeamArranger.Layers;
import org.orbwright.stock.SeamArranger.PieceSet;
import org.orbwright.stock.StripsAndBoards.Wood;
import org.orbwright.stock.WoodPlanner.WoodPlan;
import org.orbwright.stock.WoodStrips.StripUse;

/**
 * Plans the strips of all woods together. Each wood is planned by itself first, as if seams of neighbours could lie
 * side by side; no plan can be better than that. Where strips can then be chosen for each other so that seams keep
 * their clearance, that is the answer. Otherwise every second strip is given a zone of its own for its seams, in each
 * way in turn, and the best of all is taken.
 */
final class StripPlanner {
    /** Share of the work that is left that a round of searches may take. */
    private static final double OF_A_ROUND = 0.5;
    /** Share of the work for each wood by itself, before it is known whether seams go together. */
    private static final double FOR_EACH_WOOD = 0.7;

    private final List<BlankKind> blanks;
    private final Map<String, Wood> woods;
    private final SeamRules rules;
    private final List<CuttingAim> aims;
    private final Effort effort;
    /** Strips of woods that are not planned. */
    private final long others;

    /** Strips of all woods: the plan of each wood, and for each kind of blank, which strips lie side by side. */
    record Strips(Map<String, WoodPlan> woods, List<List<Layers>> layers) {
        /** How many strips are missing. */
        int missing(StripsAndBoards needs) {
            return needs.woods().values().stream()
                    .mapToInt(wood -> missing(needs, wood))
                    .sum();
        }

        /** How many strips of a wood are missing. */
        int missing(StripsAndBoards needs, Wood wood) {
            int missing = 0;
            for (StripUse use : wood.strips().uses()) {
                for (Layers layer : layers.get(needs.blanks().indexOf(use.blank()))) {
                    missing += layer.strips().get(use.band()) == null ? layer.count() : 0;
                }
            }
            return missing;
        }
    }

    /** Plans these woods by the aims in their order; strips of all other woods are missing. */
    StripPlanner(StripsAndBoards needs, Map<String, Wood> woods, List<CuttingAim> aims, Effort effort) {
        this.blanks = needs.blanks();
        this.woods = woods;
        this.rules = needs.rules();
        this.aims = aims;
        this.effort = effort;
        Set<StripUse> planned = new HashSet<>();
        woods.values().forEach(wood -> planned.addAll(wood.strips().uses()));
        this.others = blanks.stream()
                        .mapToLong(blank -> (long) blank.bands().size() * blank.strips())
                        .sum()
                - planned.stream().mapToLong(use -> use.blank().strips()).sum();
    }

    Strips plan() {
        Map<String, WoodPlanner> planners = planners(SeamZone.Pair.ANYWHERE);
        steps(planners, effort.share(FOR_EACH_WOOD));
        Strips best = arranged(plans(planners, WoodPlanner::best), SeamZone.Pair.ANYWHERE);
        if (isArranged(best)) {
            steps(planners, effort);
            best = better(arranged(plans(planners, WoodPlanner::best), SeamZone.Pair.ANYWHERE), best);
            return withBounds(best, planners);
        }
        best = better(arranged(plans(planners, WoodPlanner::withoutSeams), SeamZone.Pair.ANYWHERE), best);
        double length = blanks.get(0).length();
        List<SeamZone.Pair> pairs = SeamZone.pairs(length, rules.clearance() + rules.overlap());
        for (int pair = 0; pair < pairs.size() && !effort.isSpent(); pair++) {
            Map<String, WoodPlanner> zoned = planners(pairs.get(pair));
            steps(zoned, effort.share(1.0 / (pairs.size() - pair)));
            best = better(arranged(plans(zoned, WoodPlanner::best), pairs.get(pair)), best);
        }
        return withBounds(best, planners);
    }

    /** Whether no strip of the woods' plans had to be given up for the clearance of its seams. */
    private boolean isArranged(Strips strips) {
        return missing(strips) == count(strips, CuttingAim.MISSING);
    }

    private Map<String, WoodPlanner> planners(SeamZone.Pair zones) {
        Map<String, WoodPlanner> planners = new LinkedHashMap<>();
        woods.forEach((name, wood) -> planners.put(name, new WoodPlanner(wood, aims, zones)));
        return planners;
    }

    /** A step for each wood in turn, as long as there is work left and something to gain. */
    private static void steps(Map<String, WoodPlanner> planners, Effort effort) {
        List<WoodPlanner> open = new ArrayList<>(planners.values());
        open.removeIf(WoodPlanner::isFinished);
        boolean first = open.stream().anyMatch(planner -> planner.best() == null);
        while (!open.isEmpty() && (first || !effort.isSpent())) {
            first = false;
            for (int i = 0; i < open.size(); i++) {
                open.get(i).step(effort.share(OF_A_ROUND / (open.size() - i)));
            }
            open.removeIf(WoodPlanner::isFinished);
        }
    }

    /** The same with the bounds of the woods alone, which hold for every plan. */
    private static Strips withBounds(Strips strips, Map<String, WoodPlanner> planners) {
        Map<String, WoodPlan> bounded = new LinkedHashMap<>();
        strips.woods()
                .forEach((name, plan) ->
                        bounded.put(name, plan.withBoundsOf(planners.get(name).best())));
        return new Strips(bounded, strips.layers());
    }

    private static Map<String, WoodPlan> plans(
            Map<String, WoodPlanner> planners, Function<WoodPlanner, WoodPlan> which) {
        Map<String, WoodPlan> plans = new LinkedHashMap<>();
        planners.forEach((name, planner) -> plans.put(name, which.apply(planner)));
        return plans;
    }

    private Strips arranged(Map<String, WoodPlan> plans, SeamZone.Pair zones) {
        List<List<Layers>> layers = new ArrayList<>();
        for (BlankKind blank : blanks) {
            List<List<PieceSet>> bands = new ArrayList<>();
            for (int band = 0; band < blank.bands().size(); band++) {
                bands.add(List.of());
            }
            woods.forEach((name, wood) -> {
                List<StripUse> uses = wood.strips().uses();
                for (int kind = 0; kind < uses.size(); kind++) {
                    StripUse use = uses.get(kind);
                    if (use.blank().equals(blank)) {
                        bands.set(use.band(), sets(plans.get(name), kind));
                    }
                }
            });
            layers.add(SeamArranger.arrange(blank, bands, rules, zones, effort));
        }
        return new Strips(plans, layers);
    }

    private static List<PieceSet> sets(WoodPlan plan, int kind) {
        List<PieceSet> sets = new ArrayList<>();
        List<MakeUp> makeUps = plan.problem().strips().get(kind).makeUps();
        for (int m = 0; m < makeUps.size(); m++) {
            int count = plan.planned().plan().madeUp().get(kind).get(m);
            if (count > 0) {
                sets.add(new PieceSet(
                        makeUps.get(m).pieces().stream()
                                .map(plan.problem().lengths()::get)
                                .toList(),
                        count));
            }
        }
        return sets;
    }

    private long missing(Strips strips) {
        return strips.layers().stream()
                        .flatMap(List::stream)
                        .mapToLong(layer -> layer.count()
                                * layer.strips().stream()
                                        .filter(Objects::isNull)
                                        .count())
                        .sum()
                - others;
    }

    private Strips better(Strips one, Strips other) {
        return isBetter(one, other) ? one : other;
    }

    private boolean isBetter(Strips one, Strips other) {
        if (missing(one) != missing(other)) {
            return missing(one) < missing(other);
        }
        for (CuttingAim next : aims) {
            long more = count(one, next) - count(other, next);
            if (next != CuttingAim.MISSING && more != 0) {
                return more < 0;
            }
        }
        return false;
    }

    private static long count(Strips strips, CuttingAim aim) {
        return strips.woods().values().stream()
                .mapToLong(plan -> plan.count(aim))
                .sum();
    }
}
