package org.orbwright.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * A random problem that is small enough to be solved by trying everything. Its lengths are whole hundredths of a
 * millimetre, so that whoever checks an answer can add them up without rounding; some boards fit their strips exactly.
 *
 * @param widths widths of strips
 * @param stick thickness of strips
 * @param ripKerf kerf of a rip
 * @param lengths lengths of pieces, that of a whole strip first
 * @param crosscutKerf kerf of a crosscut
 * @param boards the kinds of board
 * @param strips the kinds of strip
 */
record SmallProblem(
        List<Integer> widths,
        int stick,
        int ripKerf,
        List<Integer> lengths,
        int crosscutKerf,
        List<Board> boards,
        List<Strip> strips) {
    SmallProblem {
        widths = List.copyOf(widths);
        lengths = List.copyOf(lengths);
    }

    /** Boards that are alike. */
    record Board(int length, int width, int thickness, int count, double cost) {
        /** What of it counts as waste, in cubic decimetres. */
        double wood() {
            return volume() * 1e-6;
        }

        /** Volume in cubic millimetres. */
        double volume() {
            return 1e-6 * length * width * thickness;
        }
    }

    /** Strips that are alike; each make-up lists the lengths of its pieces by their place. */
    record Strip(int width, int count, List<List<Integer>> makeUps) {}

    /** How many pieces of a strip width are of use at most. */
    int mostUseful(int width) {
        return strips.stream()
                .filter(strip -> strip.width() == width)
                .mapToInt(strip -> strip.count()
                        * strip.makeUps().stream().mapToInt(List::size).max().orElse(0))
                .sum();
    }

    /** The problem as the planner takes it. */
    CuttingProblem toProblem() {
        List<Integer> needed =
                IntStream.range(0, widths.size()).mapToObj(this::mostUseful).toList();
        return new CuttingProblem(
                new Ripping(millimetres(widths), needed, millimetres(stick), millimetres(ripKerf)),
                millimetres(lengths),
                millimetres(crosscutKerf),
                boards.stream()
                        .map(board -> new BoardKind(
                                millimetres(board.length()),
                                millimetres(board.width()),
                                millimetres(board.thickness()),
                                board.count(),
                                board.cost(),
                                board.volume()))
                        .toList(),
                strips.stream()
                        .map(strip -> new StripKind(
                                strip.width(),
                                strip.count(),
                                strip.makeUps().stream().map(MakeUp::new).toList()))
                        .toList());
    }

    static int hundredths(double millimetres) {
        return (int) Math.rint(100 * millimetres);
    }

    private static double millimetres(int hundredths) {
        return hundredths / 100.0;
    }

    private static List<Double> millimetres(List<Integer> hundredths) {
        return hundredths.stream().map(SmallProblem::millimetres).toList();
    }

    /** The random problem of a seed. */
    static SmallProblem random(long seed) {
        Random random = new Random(seed);
        return new Maker(random, random.nextInt(3) + 1).make(random.nextInt(3) + 1, 3, random.nextInt(6) + 1, 4);
    }

    /** A random problem that is not small at all: six kinds of board, five widths and 60 strips. */
    static SmallProblem large(long seed) {
        return new Maker(new Random(seed), 5).make(6, 12, 60, 15);
    }

    /** Draws a problem. */
    private static final class Maker {
        private final Random random;
        private final int stick;
        private final int ripKerf;
        private final int crosscutKerf;
        private final int[] widths;
        private final int[] lengths;

        Maker(Random random, int howManyWidths) {
            this.random = random;
            stick = between(1800, 3000);
            ripKerf = random.nextBoolean() ? 300 : 0;
            crosscutKerf = random.nextBoolean() ? 300 : 0;
            widths = new int[howManyWidths];
            // Odd steps apart, so that no sum of widths is another one.
            for (int width = 0; width < widths.length; width++) {
                widths[width] = between(1200, 2200) + 1307 * width;
            }
            lengths = new int[between(1, 3)];
            lengths[0] = 60_000;
            for (int length = 1; length < lengths.length; length++) {
                lengths[length] = between(25_000, 42_000);
            }
        }

        SmallProblem make(int kindsOfBoard, int mostBoards, int allStrips, int mostStrips) {
            List<Strip> strips = strips(allStrips, mostStrips);
            List<Board> boards = new ArrayList<>();
            for (int b = 0; b < kindsOfBoard; b++) {
                boards.add(board(mostBoards));
            }
            return new SmallProblem(list(widths), stick, ripKerf, list(lengths), crosscutKerf, boards, strips);
        }

        private static List<Integer> list(int[] numbers) {
            return Arrays.stream(numbers).boxed().toList();
        }

        private int between(int least, int most) {
            return least + random.nextInt(most - least + 1);
        }

        private List<Strip> strips(int all, int most) {
            List<Strip> strips = new ArrayList<>();
            int left = all;
            while (left > 0) {
                int count = between(1, Math.min(left, most));
                strips.add(new Strip(random.nextInt(widths.length), count, makeUps()));
                left -= count;
            }
            return strips;
        }

        /** Mostly whole or made up of two pieces; now and then only one of these. */
        private List<List<Integer>> makeUps() {
            List<List<Integer>> makeUps = new ArrayList<>();
            boolean seamed = lengths.length > 1 && random.nextInt(5) > 0;
            if (!seamed || random.nextInt(6) > 0) {
                makeUps.add(List.of(0));
            }
            if (seamed) {
                makeUps.add(List.of(1, lengths.length - 1));
                if (random.nextBoolean()) {
                    makeUps.add(List.of(1, 1));
                }
            }
            return makeUps;
        }

        private Board board(int most) {
            return new Board(
                    longEnough(),
                    wideEnough(),
                    thickEnough(),
                    between(1, most),
                    between(0, 4) == 0 ? 0 : between(1, 40));
        }

        private int longEnough() {
            int length = random.nextInt(3) > 0 ? 0 : between(0, 9000);
            for (int sections = between(1, 3); sections > 0; sections--) {
                length += lengths[random.nextInt(lengths.length)] + crosscutKerf;
            }
            return length - crosscutKerf;
        }

        private int wideEnough() {
            int width = random.nextInt(3) > 0 ? 0 : between(0, 1500);
            for (int lanes = between(1, 3); lanes > 0; lanes--) {
                width += (random.nextInt(3) == 0 ? stick : widths[random.nextInt(widths.length)]) + ripKerf;
            }
            return width - ripKerf;
        }

        /** As thick as one or two strips lie flat, or as one or two are wide. */
        private int thickEnough() {
            int thickness = random.nextInt(3) > 0 ? 0 : between(0, 600);
            int layers = between(1, 2);
            boolean flat = random.nextBoolean();
            for (int layer = 0; layer < layers; layer++) {
                thickness += (flat ? stick : widths[random.nextInt(widths.length)]) + ripKerf;
            }
            return thickness - ripKerf;
        }
    }
}
