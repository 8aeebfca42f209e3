package org.orbwright.stock;

import java.lang.ref.SoftReference;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.orbwright.design.DesignRequest;

/**
 * The plans that were made last. A cut list, a shopping list and each board's picture are calls of their own for the
 * same question: they show the same plan, even where the clock ended its search, and it is searched for once. Plans are
 * given up where memory runs short.
 */
final class RecentPlans {
    private static final int MOST = 32;

    private final Map<Question, SoftReference<StockPlan>> plans = new LinkedHashMap<>(MOST, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Question, SoftReference<StockPlan>> eldest) {
            return size() > MOST;
        }
    };

    private record Question(StockRequest request, DesignRequest design) {}

    /** The plan for a section that is filled in: the last one, or a new one if there is none. */
    StockPlan get(StockRequest request, DesignRequest design, Supplier<StockPlan> search) {
        Question question = new Question(request, design);
        StockPlan known = find(question);
        if (known != null) {
            return known;
        }
        StockPlan plan = search.get();
        return keep(question, plan);
    }

    private synchronized StockPlan find(Question question) {
        SoftReference<StockPlan> plan = plans.get(question);
        return plan == null ? null : plan.get();
    }

    /** Keeps a plan, unless another call was faster: then that call's plan is the one. */
    private synchronized StockPlan keep(Question question, StockPlan plan) {
        StockPlan faster = find(question);
        if (faster == null) {
            plans.put(question, new SoftReference<>(plan));
        }
        return faster == null ? plan : faster;
    }
}
