package org.orbwright.turning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.Holding.Seat;
import org.orbwright.turning.TurningRequest.DiscsRequest;

/**
 * Shares a sphere out into rings, on each of which the cutter's rim touches it; lengths in millimetres, latitudes in
 * radians from the middle plane.
 *
 * <p>On a rotary table each half begins at the middle plane, on three axes at the pole: there the sphere of the pass
 * before lies exactly a pass's depth higher, so that a cutter that goes straight down takes no more than that. From
 * there on the next ring always lies outwards and lower.
 */
final class RingPlanner {
    /** Moves that one answer holds. */
    static final int MOST_MOVES = 200_000;

    private final Milling milling;
    private final Cutter cutter;

    /**
     * Checks that the last pass has room.
     *
     * @throws ImpossibleDesignException if the cutter does not fit between the discs, the neck is as thick as the
     *     sphere, or a disc's room leaves nothing to be milled
     */
    RingPlanner(Milling milling) {
        this.milling = milling;
        this.cutter = milling.cutter();
        if (milling.rotary()) {
            checkNeck(milling.holding().head());
            checkNeck(milling.holding().tail());
            checkRoom(milling.holding().head());
            checkRoom(milling.holding().tail());
        } else {
            checkUpright();
        }
    }

    /** A ring: its latitude, and whether the cutter goes around there, or has already been. */
    record Ring(double latitude, boolean around) {}

    /** The rings of one half, from where the cutter goes down. */
    record Half(boolean head, List<Ring> rings) {}

    /** The halves of a sphere: two on a rotary table, and the upper one on three axes. */
    List<Half> halves(double radius, double ridge) {
        List<Ring> head = new ArrayList<>();
        latitudes(radius, ridge, headEnd(radius)).forEach(latitude -> head.add(new Ring(latitude, true)));
        if (!milling.rotary()) {
            Collections.reverse(head);
            return List.of(new Half(true, head));
        }
        List<Ring> tail = new ArrayList<>();
        // On both sides of the middle plane a cutter without a flat would turn the same ring.
        latitudes(radius, ridge, tailEnd(radius))
                .forEach(latitude -> tail.add(new Ring(latitude, cutter.flat() > 0 || !tail.isEmpty())));
        return List.of(new Half(true, head), new Half(false, tail));
    }

    /** Latitude to which the first end's half reaches. */
    double headEnd(double radius) {
        return milling.rotary() ? end(radius, milling.holding().head()) : Math.PI / 2;
    }

    /** Latitude to which the other half reaches; on three axes of the upper half's lower end, below 0 for above it. */
    double tailEnd(double radius) {
        return milling.rotary() ? end(radius, milling.holding().tail()) : -start(radius);
    }

    /** Where the cutter stays clear of the disc and leaves the neck. */
    private double end(double radius, Seat seat) {
        double reach = radius + cutter.corner();
        double beside = besideDisc(seat) / reach;
        double above = (milling.neck(seat) + cutter.corner()) / reach;
        return Math.min(Math.asin(Math.min(1, beside)), Math.acos(above));
    }

    /** From the middle plane to the middle of the rim of a cutter that stands beside a disc with its room. */
    private double besideDisc(Seat seat) {
        return seat.seatDistance() - milling.room() - cutter.flat() - cutter.radius();
    }

    /** Latitude down to which the upright work is milled: that of the middle plane, or where the disc ends it. */
    private double start(double radius) {
        double above = lowestSine(radius);
        return milling.rotary() || above <= 0 ? 0 : Math.asin(above);
    }

    private double lowestSine(double radius) {
        double deepest = milling.holding().tail().seatDistance() - milling.room();
        return (cutter.corner() - deepest) / (radius + cutter.corner());
    }

    private void checkNeck(Seat seat) {
        Design design = milling.design();
        double neck = milling.neck(seat);
        if (neck >= milling.sphere()) {
            boolean stated = milling.discs().neck() != null;
            throw refused(
                    stated ? "/turning/discs/neck" : "/turning/discs/diameter",
                    "NECK_TOO_THICK",
                    "A neck of " + design.say(2 * neck)
                            + (stated ? " " : ", as thick as the disc where none is stated, ")
                            + "leaves nothing to cut of a sphere of " + design.say(2 * milling.sphere()) + ".",
                    stated ? String.valueOf(milling.discs().neck()) : null,
                    "a neck below " + design.sayAtMost(2 * milling.sphere()));
        }
    }

    private void checkRoom(Seat seat) {
        if (besideDisc(seat) > 0) {
            return;
        }
        Design design = milling.design();
        double space = seat.seatDistance() - milling.room();
        if (space <= 0) {
            boolean ring = seat.seatDistance() <= 0;
            throw refused(
                    ring ? "/turning/discs/diameter" : "/turning/discs/clearance",
                    "NO_ROOM_BESIDE_DISC",
                    "A disc of " + design.say(seat.disc()) + " sits " + design.say(seat.seatDistance())
                            + " from the middle of the sphere. With its room of " + design.say(milling.room())
                            + " nothing is left beside it.",
                    null,
                    ring
                            ? "a smaller disc"
                            // A disc on a face sits on it whatever its diameter.
                            : "a room below " + design.sayAtMost(seat.seatDistance())
                                    + (seat.at() == Through.FACE ? "" : ", or a smaller disc"));
        }
        double widest = cutter.flat() > 0 ? space + cutter.corner() : 2 * space;
        throw refused(
                "/path/cutter/diameter",
                "CUTTER_TOO_WIDE",
                "From the middle of the sphere to the room beside a disc there are " + design.say(space)
                        + ", and this cutter takes " + design.say(cutter.flat() + cutter.radius()) + " of that.",
                String.valueOf(milling.request().cutter().diameter()),
                "a diameter below " + design.sayAtMost(widest) + ", or less room");
    }

    private void checkUpright() {
        double most = milling.holding().tail().seatDistance() + milling.sphere();
        if (milling.room() >= most) {
            Design design = milling.design();
            DiscsRequest discs = milling.discs();
            throw refused(
                    "/turning/discs/clearance",
                    "NO_ROOM_BESIDE_DISC",
                    "With a room of " + design.say(milling.room())
                            + " above the lower disc the cutter would stay above all of the sphere.",
                    String.valueOf(discs.clearance()),
                    "a room below " + design.sayAtMost(most));
        }
    }

    private static ImpossibleDesignException refused(
            String path, String code, String message, String rejected, String allowed) {
        return new ImpossibleDesignException(List.of(new Violation(path, code, message, rejected, allowed)));
    }

    /** Latitudes from the middle plane, or the lowest that is milled, to an end. */
    private List<Double> latitudes(double radius, double ridge, double end) {
        double start = start(radius);
        List<Double> latitudes = new ArrayList<>();
        if (cutter.corner() > 0) {
            int count = Math.max(1, (int) Math.ceil((end - start) / cutter.step(radius, ridge, 0) - 1e-9));
            tooMany(count);
            for (int i = 0; i <= count; i++) {
                latitudes.add(start + (end - start) * i / count);
            }
            return latitudes;
        }
        // The flat of the cutter lies along the axis on a rotary table, and square to it on three axes.
        double from = milling.rotary() ? start : Math.PI / 2 - end;
        double to = milling.rotary() ? end : Math.PI / 2 - start;
        for (double at = from; at < to; at += cutter.step(radius, ridge, at)) {
            latitudes.add(milling.rotary() ? at : Math.PI / 2 - at);
            tooMany(latitudes.size());
        }
        latitudes.add(milling.rotary() ? to : Math.PI / 2 - to);
        if (!milling.rotary()) {
            Collections.reverse(latitudes);
        }
        return latitudes;
    }

    /**
     * Refuses what no answer holds.
     *
     * @throws ImpossibleDesignException if there are more moves than that
     */
    void tooMany(int moves) {
        if (moves > MOST_MOVES) {
            throw refused(
                    "/path/scallop",
                    "TOO_MANY_MOVES",
                    "The path would have more than " + MOST_MOVES + " moves.",
                    String.valueOf(milling.request().scallop()),
                    "higher ridges, deeper passes or a larger cutter");
        }
    }
}
