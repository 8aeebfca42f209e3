package org.orbwright.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/**
 * Adds panels one by one, from the highest down: each touches those that are there along at least one edge, and all
 * edges along which it touches them are glued as it is added. Between equally high panels the one that touches along
 * more edges comes first, then the one with the lower number. All seams run to the centre, so that a panel slides into
 * its place from outside between any neighbours.
 */
final class CapGrowth {

    /**
     * One panel that is added.
     *
     * @param panel its number
     * @param seams the seams that are glued with it, none for the first panel of a cap
     */
    record Step(int panel, List<Integer> seams) {
        Step {
            seams = List.copyOf(seams);
        }
    }

    private final Neighbourhood neighbourhood;
    private final boolean[] there;

    /**
     * @param neighbourhood the solid's panels and seams
     * @param there for each panel whether it is there from the start
     */
    CapGrowth(Neighbourhood neighbourhood, boolean[] there) {
        this.neighbourhood = neighbourhood;
        this.there = there.clone();
    }

    /** Adds all wanted panels, the highest first. */
    List<Step> add(IntPredicate wanted, IntToDoubleFunction height) {
        List<Step> steps = new ArrayList<>();
        boolean started = anyThere();
        for (int next = best(wanted, height, started); next >= 0; next = best(wanted, height, true)) {
            steps.add(new Step(next, touching(next)));
            there[next] = true;
        }
        return steps;
    }

    private boolean anyThere() {
        for (boolean panel : there) {
            if (panel) {
                return true;
            }
        }
        return false;
    }

    private int best(IntPredicate wanted, IntToDoubleFunction height, boolean started) {
        int best = -1;
        int touches = 0;
        for (int panel = 0; panel < there.length; panel++) {
            int count =
                    there[panel] || !wanted.test(panel) ? -1 : touching(panel).size();
            if (count > 0 || (count == 0 && !started)) {
                double higher = best < 0 ? 1 : height.applyAsDouble(panel) - height.applyAsDouble(best);
                if (higher > 0 || (higher == 0 && count > touches)) {
                    best = panel;
                    touches = count;
                }
            }
        }
        return best;
    }

    private List<Integer> touching(int panel) {
        List<Integer> seams = new ArrayList<>();
        for (int place = 0; place < neighbourhood.sides(panel); place++) {
            if (there[neighbourhood.panel(panel, place)]) {
                seams.add(neighbourhood.seam(panel, place));
            }
        }
        return seams;
    }
}
