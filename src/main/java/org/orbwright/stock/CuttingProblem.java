package org.orbwright.stock;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The boards and the strips of one species, as a problem of cutting; lengths in millimetres. A piece may be cut longer
 * than it has to be.
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

    /** Whether a strip, or a piece of one that is as short as it may be, can be cut from a board. */
    boolean isLarge(BoardKind board, double shortest) {
        return KeptWood.of(this, shortest).isKept(board.length(), board.width(), board.thickness());
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

        /** The first way for which pieces are long enough, each for one of its own; -1 if there is none. */
        int wayFrom(List<Double> pieces, List<Double> lengths) {
            List<Double> have = pieces.stream().sorted().toList();
            for (int m = 0; m < makeUps.size(); m++) {
                List<Double> want = makeUps.get(m).pieces().stream()
                        .map(lengths::get)
                        .sorted()
                        .toList();
                if (want.size() == have.size()
                        && IntStream.range(0, want.size())
                                .allMatch(i -> want.get(i) <= have.get(i) + Ripping.EXACT_FIT)) {
                    return m;
                }
            }
            return -1;
        }
    }

    /**
     * A way to make up a strip.
     *
     * @param pieces which of the lengths its pieces have, in any order
     * @param within how many of its seams no cut between segments can take out of the way
     */
    record MakeUp(List<Integer> pieces, int within) {
        MakeUp {
            pieces = List.copyOf(pieces);
        }

        /** One whose seams all lie on cuts. */
        MakeUp(List<Integer> pieces) {
            this(pieces, 0);
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
