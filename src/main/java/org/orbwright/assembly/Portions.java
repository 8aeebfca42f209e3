package org.orbwright.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** Shares steps out over stages that fit into the open time. */
final class Portions {
    private Portions() {}

    /**
     * The steps in their order, in as few portions as fit. A step that does not fit by itself is a portion of its own,
     * and a step without seams, the first panel of a cap, goes with what follows.
     *
     * @param seams seams that a step glues at once
     * @param most most seams of a portion
     */
    static <S> List<List<S>> of(List<S> steps, ToIntFunction<S> seams, int most) {
        List<List<S>> portions = new ArrayList<>();
        List<S> portion = new ArrayList<>();
        int glued = 0;
        for (S step : steps) {
            int more = seams.applyAsInt(step);
            if (glued > 0 && glued + more > most) {
                portions.add(portion);
                portion = new ArrayList<>();
                glued = 0;
            }
            portion.add(step);
            glued += more;
        }
        portions.add(portion);
        return portions;
    }
}
