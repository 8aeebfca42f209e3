package org.orbwright.turning;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.turning.Holding.Seat;
import org.orbwright.turning.PathRequest.LimitsRequest;

/** Checks all moves of a path against the holder and the machine's limits; lengths in millimetres. */
final class PathChecks {
    private static final double EXACT = 1e-9;

    private final Milling milling;
    private final Design design;
    private final List<PathMove> moves;
    private final double lowest;
    private final double highest;
    private final double farthest;

    PathChecks(Milling milling, List<PathMove> moves) {
        this.milling = milling;
        this.design = milling.design();
        this.moves = moves;
        this.lowest = moves.stream().mapToDouble(PathMove::z).min().orElse(0);
        this.highest = moves.stream().mapToDouble(PathMove::z).max().orElse(0);
        this.farthest =
                moves.stream().mapToDouble(move -> Math.abs(move.x())).max().orElse(0);
    }

    /** Lowest height of the tip. */
    double lowest() {
        return lowest;
    }

    /** Farthest X. */
    double farthest() {
        return farthest;
    }

    /**
     * How far the cutter has to stand out of its holder, so that it meets no wood that a pass has not yet cut, and no
     * disc; null where no holder is stated.
     *
     * @throws ImpossibleDesignException if it stands out less
     */
    Double stickOut() {
        Double stated = milling.request().cutter().stickOut();
        if (stated == null) {
            return null;
        }
        double needed = 0;
        double before = milling.corners();
        for (int i = 0; i < moves.size(); i++) {
            if (i > 0 && moves.get(i).pass() > moves.get(i - 1).pass()) {
                before = Math.min(milling.corners(), moves.get(i - 1).sphere());
            }
            needed = Math.max(
                    needed, height(moves.get(i).x(), before) - moves.get(i).z());
        }
        if (milling.millimetres(stated) < needed) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/path/cutter/stickOut",
                    "HOLDER_HITS",
                    "The holder would reach into wood that is not yet cut, or into a disc.",
                    String.valueOf(stated),
                    "at least " + design.sayAtLeast(needed))));
        }
        return needed;
    }

    /** Height of what may stand under the holder, with the sphere that the pass before left. */
    private double height(double x, double before) {
        double holder = milling.holder();
        if (!milling.rotary()) {
            double inner = Math.max(0, x - holder);
            return before > inner ? Math.sqrt((before - inner) * (before + inner)) : Double.NEGATIVE_INFINITY;
        }
        // Beyond the rings the solid still stands as it was glued up.
        return Math.max(
                milling.corners(),
                Math.max(
                        disc(milling.holding().head(), x + holder),
                        disc(milling.holding().tail(), -x + holder)));
    }

    /**
     * Height of a disc where the holder reaches over it along the axis, with the cutter's room. A holder no thicker
     * than the cutter comes as near as that, and no nearer.
     */
    private double disc(Seat seat, double outermost) {
        return outermost > seat.seatDistance() - milling.room() + EXACT ? seat.disc() / 2 : 0;
    }

    /**
     * Checks the machine's limits.
     *
     * @throws ImpossibleDesignException if a move exceeds one
     */
    void limits() {
        LimitsRequest limits = milling.request().limits();
        if (limits == null) {
            return;
        }
        List<Violation> broken = new ArrayList<>();
        double out = farthest + milling.stray();
        check(broken, "x", limits.x(), out, "X goes to ", "another cutter or axis");
        check(broken, "y", limits.y(), milling.rotary() ? 0 : out, "Y goes to ", "another cutter or axis");
        check(broken, "highest", limits.highest(), highest, "Z goes up to ", "a lower clearHeight");
        check(broken, "below", limits.below(), -lowest, "Z goes below the centre by ", "another cutter or axis");
        if (!broken.isEmpty()) {
            throw new ImpossibleDesignException(broken);
        }
    }

    private void check(
            List<Violation> broken, String name, double limit, double needed, String words, String otherwise) {
        if (needed > milling.millimetres(limit) + EXACT) {
            broken.add(new Violation(
                    "/path/limits/" + name,
                    "BEYOND_LIMIT",
                    words + design.say(needed) + ".",
                    String.valueOf(limit),
                    "at least " + design.sayAtLeast(needed) + ", or " + otherwise));
        }
    }
}
