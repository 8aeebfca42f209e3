package org.orbwright.assembly;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.assembly.CapGrowth.Step;

/**
 * In which order the panels of a solid come together: two caps, each by itself, or the second cap's panels one by one
 * onto the first.
 *
 * @param first the first cap's panels
 * @param second the second cap's panels, glued to a cap of their own
 * @param onto the same panels, glued onto the first cap
 */
record GluingOrder(List<Step> first, List<Step> second, List<Step> onto) {
    static GluingOrder of(Caps caps, Neighbourhood neighbourhood) {
        int count = caps.first().size();
        List<Step> first = new CapGrowth(neighbourhood, new boolean[count]).add(caps.first()::get, caps.heights()::of);
        List<Step> second = new CapGrowth(neighbourhood, new boolean[count])
                .add(panel -> !caps.first().get(panel), panel -> -caps.heights().of(panel));
        boolean[] there = new boolean[count];
        for (int panel = 0; panel < count; panel++) {
            there[panel] = caps.first().get(panel);
        }
        List<Step> onto =
                new CapGrowth(neighbourhood, there).add(panel -> !caps.first().get(panel), caps.heights()::of);
        return new GluingOrder(first, second, onto);
    }

    /**
     * Whether the second cap's panels are better glued onto the first one by one: the seams between two caps do not all
     * fit into the open time, and fewer close at once so.
     *
     * @param between number of seams between the caps
     * @param most most seams that fit into the open time
     */
    boolean oneByOne(int between, int most) {
        return between > most && largest(onto) < Math.max(between, largest(second));
    }

    private static int largest(List<Step> steps) {
        return steps.stream().mapToInt(step -> step.seams().size()).max().orElse(0);
    }

    /** All panels, each onto those before it. */
    List<Step> whole() {
        List<Step> whole = new ArrayList<>(first);
        whole.addAll(onto);
        return whole;
    }
}
