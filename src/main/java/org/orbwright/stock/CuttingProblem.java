package org.orbwright.stock;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The boards and the strips of one species, as a problem of cutting; lengths in millimetres. Boards are crosscut into
 * sections of the listed lengths, that of a whole strip first. A piece may be cut longer than it has to be.
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
     * Boards that are alike: their length without the ends, the width that can be ripped, the surfaced thickness, and
     * how many there are. The volume is that of one as it stands on the rack.
     */
    record BoardKind(double length, double width, double thickness, int count, double cost, double volume) {}

    /** Strips that are alike: which of the widths they have, how many are needed, and the ways to make one up. */
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
     * A way to make up a strip of pieces, in any order, each of one of the lengths. Of its seams, so many lie within
     * segments, where no cut takes them out of the way.
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
