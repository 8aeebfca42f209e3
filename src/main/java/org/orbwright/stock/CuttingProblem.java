package org.orbwright.stock;

import java.util.Collections;
import java.util.List;

/**
 * The boards and the strips of one species, as a problem of cutting; lengths in millimetres.
 *
 * @param ripping the strips' widths and the rip saw
 * @param lengths lengths of the sections that boards are crosscut into, that of a whole strip first
 * @param crosscutKerf kerf of a crosscut
 * @param boards the kinds of board
 * @param strips the kinds of strip
 */
record CuttingProblem(
        Ripping ripping, List<Double> lengths, double crosscutKerf, List<BoardKind> boards, List<StripKind> strips) {
    CuttingProblem {
        lengths = List.copyOf(lengths);
        boards = List.copyOf(boards);
        strips = List.copyOf(strips);
    }

    /** The same problem if no strip may have a seam. Each kind of strip has to allow that, as its first way. */
    CuttingProblem withoutSeams() {
        List<StripKind> whole = strips.stream()
                .map(kind ->
                        new StripKind(kind.width(), kind.count(), kind.makeUps().subList(0, 1)))
                .toList();
        return new CuttingProblem(ripping, lengths.subList(0, 1), crosscutKerf, boards, whole);
    }

    /** Whether strips may have seams, but none has to have one. */
    boolean allowsSeams() {
        return lengths.size() > 1
                && strips.stream()
                        .allMatch(kind -> kind.makeUps().get(0).pieces().equals(List.of(0)));
    }

    /** Whether a strip, or a piece of one, can be cut from a board. */
    boolean isLarge(BoardKind board) {
        double shortest = lengths.stream().mapToDouble(length -> length).min().orElse(0);
        double narrowest =
                ripping.widths().stream().mapToDouble(width -> width).min().orElse(0);
        double stick = ripping.stick();
        double width = board.width() + Ripping.EXACT_FIT;
        double thickness = board.thickness() + Ripping.EXACT_FIT;
        boolean flat = narrowest <= width && stick <= thickness;
        boolean turned = stick <= width && narrowest <= thickness;
        return shortest <= board.length() + Ripping.EXACT_FIT && (flat || turned);
    }

    /**
     * Boards that are alike.
     *
     * @param length length without the ends
     * @param width width that can be ripped
     * @param thickness thickness once surfaced
     * @param count how many there are
     * @param cost cost of one
     * @param volume volume of one as it stands on the rack
     */
    record BoardKind(double length, double width, double thickness, int count, double cost, double volume) {}

    /**
     * Strips that are alike.
     *
     * @param width which of the widths they have
     * @param count how many are needed
     * @param makeUps the ways to make one up
     */
    record StripKind(int width, int count, List<MakeUp> makeUps) {
        StripKind {
            makeUps = List.copyOf(makeUps);
        }

        /** Seams in the way with most of them. */
        int mostSeams() {
            return makeUps.stream().mapToInt(MakeUp::seams).max().orElse(0);
        }
    }

    /**
     * A way to make up a strip.
     *
     * @param pieces which of the lengths each of its pieces has, from the left end of the blank
     */
    record MakeUp(List<Integer> pieces) {
        MakeUp {
            pieces = List.copyOf(pieces);
        }

        /** Number of seams. */
        int seams() {
            return pieces.size() - 1;
        }

        /** How many of its pieces have a length. */
        int count(int length) {
            return Collections.frequency(pieces, length);
        }
    }
}
