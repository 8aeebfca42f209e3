package org.orbwright.segment;

/**
 * How many blanks give the wanted upright and inverted segments.
 *
 * @param blanks number of blanks
 * @param turned how many of them are turned end for end, so that they start with an inverted segment
 * @param upright upright segments that come of it
 * @param inverted inverted segments that come of it
 */
record SetPlan(int blanks, int turned, int upright, int inverted) {

    /**
     * The fewest blanks for segments of one set.
     *
     * @param perBlank segments that a blank gives, at least 1
     * @param needed segments wanted
     */
    static SetPlan single(int perBlank, int needed) {
        int blanks = ceilDivide(needed, perBlank);
        return new SetPlan(blanks, 0, blanks * perBlank, 0);
    }

    /**
     * The fewest blanks for two sets that alternate along each blank. Where a blank gives an odd number, its first set
     * has one more; turning a blank end for end changes which set that is.
     *
     * @param perBlank segments that a blank gives, at least 1
     * @param upright upright segments wanted
     * @param inverted inverted segments wanted
     */
    static SetPlan alternating(int perBlank, int upright, int inverted) {
        int more = ceilDivide(perBlank, 2);
        int less = perBlank / 2;
        int blanks = more == less
                ? ceilDivide(Math.max(upright, inverted), less)
                : Math.max(ceilDivide(upright + inverted, perBlank), ceilDivide(Math.max(upright, inverted), more));
        int turned = more == less ? 0 : Math.max(0, inverted - blanks * less);
        return new SetPlan(
                blanks, turned, (blanks - turned) * more + turned * less, (blanks - turned) * less + turned * more);
    }

    private static int ceilDivide(int amount, int by) {
        return amount == 0 ? 0 : (amount - 1) / by + 1;
    }
}
