package org.orbwright.stock;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** All ways to crosscut a board into sections from which nothing more can be crosscut. */
final class LengthPlans {
    /** Sections of a board in a way that is listed. */
    private static final int MOST_SECTIONS = 200;

    private final List<Double> lengths;
    private final double kerf;
    private final Set<List<Integer>> plans = new LinkedHashSet<>();
    private boolean complete = true;

    private LengthPlans(List<Double> lengths, double kerf) {
        this.lengths = lengths;
        this.kerf = kerf;
    }

    /** The plans of one board, each as the number of sections of each length, and whether they are all. */
    record Found(List<List<Integer>> plans, boolean complete) {
        Found {
            plans = List.copyOf(plans);
        }
    }

    /**
     * Finds the plans of a board for lengths of sections, that of a whole strip first; all in millimetres. The board is
     * measured without its ends. If there are more plans than the most that are kept, the list is not complete.
     */
    static Found of(List<Double> lengths, double boardLength, double kerf, int most) {
        LengthPlans plans = new LengthPlans(lengths, kerf);
        double room = boardLength + kerf + Ripping.EXACT_FIT;
        int whole = (int) Math.max(0, Math.floor(room / (lengths.get(0) + kerf)));
        // As many plans for each number of whole strips, so that a short list has some of each.
        int each = Math.max(1, most / (whole + 1));
        for (int wholes = whole; wholes >= 0; wholes--) {
            int[] counts = new int[lengths.size()];
            counts[0] = wholes;
            plans.fill(1, room - wholes * (lengths.get(0) + kerf), counts, plans.plans.size() + each);
        }
        return new Found(List.copyOf(plans.plans), plans.complete);
    }

    private void fill(int first, double room, int[] counts, int most) {
        if (plans.size() >= most || IntStream.of(counts).sum() > MOST_SECTIONS) {
            complete = false;
            return;
        }
        boolean full = true;
        for (int i = 0; i < lengths.size(); i++) {
            double rest = room - lengths.get(i) - kerf;
            full = full && rest < 0;
            if (rest >= 0 && i >= first) {
                counts[i]++;
                fill(i, rest, counts, most);
                counts[i]--;
            }
        }
        if (full) {
            List<Integer> plan = new ArrayList<>();
            for (int count : counts) {
                plan.add(count);
            }
            if (plan.stream().anyMatch(count -> count > 0)) {
                plans.add(plan);
            }
        }
    }
}
