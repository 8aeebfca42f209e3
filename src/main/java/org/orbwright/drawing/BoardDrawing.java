package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.stock.CutBoard;
import org.orbwright.stock.CutBoard.LaneCut;
import org.orbwright.stock.CutBoard.Section;
import org.orbwright.stock.StockPlan;

/** A board of a plan with its cuts, from above and, for each way to rip its sections, from the end. */
public final class BoardDrawing {
    /** The smallest letters that can be read. */
    static final double SMALLEST = 1.9;

    private static final double WIDTH = 280;
    private static final double LETTERS = 0.0125 * WIDTH;
    static final double LEFT = 18;

    private static final double RIGHT = WIDTH - 9;
    /** With more lanes than this a section is drawn over the whole width of the sheet if it fills that. */
    private static final int LANES_IN_HALF = 6;
    /** Letters of this share of the width are as large in the key as in the drawing. */
    private static final double KEY_WIDTH = LETTERS / Legend.letters(1);

    private final Design design;
    private final LengthUnit unit;
    private final StockPlan plan;
    private final CutBoard board;
    private final StripKey key;
    private final SectionKinds kinds;
    private final List<Mark> marks = new ArrayList<>();

    private BoardDrawing(Design design, StockPlan plan, CutBoard board) {
        this.design = design;
        this.unit = design.unit();
        this.plan = plan;
        this.board = board;
        this.key = new StripKey(design, plan, board);
        this.kinds = new SectionKinds(board);
    }

    /**
     * How many boards of a plan there are to draw.
     *
     * @throws ImpossibleDesignException if there is none
     */
    public static int count(StockPlan plan) {
        if (plan.boards().isEmpty()) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/stock/boards",
                    "NO_BOARD_CUT",
                    "There is no board to draw: none at hand and none that can be bought gives a strip of the design.",
                    null,
                    "at least one board that a strip can be cut from")));
        }
        return plan.boards().size();
    }

    /** Draws a board by its number in the plan, from 1. */
    public static Drawing draw(Design design, StockPlan plan, int number) {
        return new BoardDrawing(design, plan, plan.boards().get(number - 1)).drawing();
    }

    private Drawing drawing() {
        marks.add(Callout.heading(title(), WIDTH, 1.2 * LETTERS));
        double jointing = unit.toMillimetres(plan.allowances().jointing());
        Box sheet = new Box(LEFT, 4.2 * LETTERS, RIGHT, 0);
        BoardView view = new BoardView(board, key, kinds, unit, jointing, design.kerf(), sheet, LETTERS);
        marks.addAll(view.marks());
        double y = view.end() + 1.5 * LETTERS;
        List<BoardEnd> ends = new ArrayList<>();
        y = ends(y, ends);
        List<String> caption = new ArrayList<>(Lettering.wrap(caption(view, ends), WIDTH * 0.94, LETTERS));
        if (!fractions().isEmpty()) {
            caption.addAll(Lettering.wrap(fractions(), WIDTH * 0.94, LETTERS));
        }
        marks.addAll(Callout.text(WIDTH * 0.03, y, LETTERS, Anchor.START, caption));
        y += Callout.textHeight(caption.size(), LETTERS) + 1.5 * LETTERS;
        Legend legend = key.legend();
        marks.addAll(legend.marks(KEY_WIDTH, y));
        return new Drawing(
                title(), description(view, ends), WIDTH, y + legend.height(KEY_WIDTH), legend.species(), marks);
    }

    /** The ends of the sections, in two columns while their lanes have room there; returns where they end below. */
    private double ends(double top, List<BoardEnd> ends) {
        int most = kinds.firsts().stream()
                .mapToInt(section -> section.lanes().size())
                .max()
                .orElse(0);
        double half = RIGHT - LEFT - WIDTH / 2;
        boolean fits = BoardEnd.HIGHEST / board.surfacedThickness() * board.clearWidth() <= half;
        int columns = (fits || most <= LANES_IN_HALF) && kinds.firsts().size() > 1 ? 2 : 1;
        double room = columns == 2 ? half : RIGHT - LEFT;
        double y = top;
        double lowest = top;
        int place = 0;
        for (int kind = 0; kind < kinds.firsts().size(); kind++) {
            Section section = kinds.firsts().get(kind);
            if (section.lanes().isEmpty()) {
                continue;
            }
            y = place % columns == 0 ? lowest : y;
            double x = LEFT + place % columns * WIDTH / columns;
            marks.addAll(Callout.text(x, y, 1.1 * LETTERS, Anchor.START, List.of(heading(kind))));
            Box sheet = new Box(x, y + 2 * LETTERS, x + room, 0);
            double kerf = unit.toMillimetres(plan.allowances().ripKerf());
            BoardEnd end = new BoardEnd(board, section, key, unit, kerf, sheet, LETTERS);
            marks.addAll(end.marks());
            ends.add(end);
            lowest = Math.max(lowest, end.end() + 1.5 * LETTERS);
            place++;
        }
        return lowest;
    }

    private String heading(int kind) {
        int count = kinds.sections(kind).size();
        return "Section " + SectionKinds.letter(kind) + (count > 1 ? ", " + count + " times" : "")
                + ", seen from the clear end";
    }

    private String title() {
        String name = board.name() == null || board.name().isBlank() ? "" : board.name() + ", ";
        return "Board " + board.number() + " of " + plan.boards().size()
                + (board.offer() == null ? "" : ", to be bought") + ": " + name + board.species() + ", "
                + unit.sayNumber(board.length()) + " x " + unit.sayNumber(board.width()) + " x "
                + unit.say(board.thickness());
    }

    private String caption(BoardView view, List<BoardEnd> ends) {
        boolean rotated = board.sections().stream()
                .flatMap(section -> section.lanes().stream())
                .anyMatch(LaneCut::rotated);
        double deepest = ends.stream().mapToDouble(BoardEnd::stretch).max().orElse(1);
        String units = unit == LengthUnit.MM ? "millimetres" : "inches";
        return "All numbers are " + units
                + ". Above: the upper face, with the jointed edge (thick) at the top and the clear end at the left;"
                + " below it the length of each section, and where it is crosscut from the clear end. "
                + larger("Across the board", view.stretch(), "along it")
                + "Ends of the sections: the jointed edge at the left, the upper face on top; below them the width of"
                + " each lane, and where it is ripped from the jointed edge. "
                + larger("Their thickness", deepest, "their width") + "White: kerfs. Crossed lines: waste."
                + (rotated ? " Slanting lines: sticks that are turned on their side and sliced." : "");
    }

    /** What the numbers of the drawing are to the nearest sixty-fourth; nothing in millimetres. */
    private String fractions() {
        String list = numbers()
                .filter(number -> !unit.fraction(number).isEmpty())
                .filter(number -> !unit.fraction(number).equals(unit.sayNumber(number)))
                .sorted()
                .mapToObj(number -> unit.sayNumber(number) + " = " + unit.fraction(number))
                .map(Lettering::unbroken)
                .distinct()
                .collect(Collectors.joining("; "));
        return list.isEmpty()
                ? ""
                : "To the nearest 1/64, and what the true length is more (+) or less (-): " + list + ".";
    }

    /** All lengths that the drawing tells. */
    private DoubleStream numbers() {
        DoubleStream.Builder numbers = DoubleStream.builder();
        for (double number : new double[] {
            board.length(),
            board.width(),
            board.thickness(),
            board.clearLength(),
            board.clearWidth(),
            board.surfacedThickness(),
            board.lengthWaste()
        }) {
            numbers.add(number);
        }
        for (Section section : board.sections()) {
            numbers.add(section.to()).add(section.to() - section.from());
            for (LaneCut lane : section.lanes()) {
                numbers.add(lane.to()).add(lane.to() - lane.from());
            }
        }
        return numbers.build();
    }

    private static String larger(String what, double times, String than) {
        return times < 1.005
                ? ""
                : what + " is drawn " + String.format(Locale.ROOT, "%.2f", times) + " times as large as " + than + ". ";
    }

    private String description(BoardView view, List<BoardEnd> ends) {
        StringBuilder words = new StringBuilder(title()).append(". ");
        words.append("Surfaced to ")
                .append(say(board.surfacedThickness()))
                .append(", ")
                .append(say(board.clearWidth()))
                .append(" wide and ")
                .append(say(board.clearLength()))
                .append(" long without its ends. ");
        for (int kind = 0; kind < kinds.firsts().size(); kind++) {
            String where = kinds.sections(kind).stream()
                    .map(section -> "from " + unit.sayWithFraction(section.from()) + " to " + say(section.to()))
                    .collect(Collectors.joining(", "));
            words.append("Section ")
                    .append(SectionKinds.letter(kind))
                    .append(", ")
                    .append(where)
                    .append(": ");
            words.append(lanes(kinds.firsts().get(kind))).append(". ");
        }
        words.append("Waste: ").append(say(board.lengthWaste())).append(" of the length. ");
        return words.append(caption(view, ends))
                .append(' ')
                .append(fractions())
                .toString()
                .strip();
    }

    private String lanes(Section section) {
        if (section.isKept()) {
            return "left over, to keep";
        }
        return section.lanes().stream()
                .map(lane -> unit.sayWithFraction(lane.from()) + " to " + say(lane.to()) + " from the jointed edge "
                        + strips(lane)
                        + (lane.rotated() ? ", turned on its side and sliced" : ""))
                .collect(Collectors.joining("; "));
    }

    private String strips(LaneCut lane) {
        return lane.isKept()
                ? "left over, to keep"
                : lane.strips().stream().map(strip -> key.labels(strip).get(0)).collect(Collectors.joining(" and "));
    }

    private String say(double length) {
        return unit.sayWithFraction(length) + " " + unit.symbol();
    }
}
