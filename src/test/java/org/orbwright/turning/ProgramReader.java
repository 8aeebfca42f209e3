package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A control that knows the few words of ISO 6983-1:2009 (from memory) that it needs, and refuses all others. It starts
 * with its axes parked anywhere and the spindle on, and does not end with the table turned, or the spindle not waited
 * for.
 */
final class ProgramReader {
    private static final Pattern WORD = Pattern.compile("([A-Z])(-?[0-9]+(?:\\.[0-9]+)?)");
    private static final Pattern COMMENT = Pattern.compile("\\([ -~&&[^()%;!~?]]+\\)|; [ -~&&[^()%;!~?]]+");
    private static final double PARKED = 12345;
    private static final double TURN = 360;

    /** What a rotary table does with absolute angles. */
    enum Table {
        /** It goes to them. */
        COUNTS_ON,
        /** It goes the shortest way to where they lie within a turn: FANUC B-63534EN/02, 20.2.1. */
        WRAPS
    }

    /**
     * A position of the tip after a move, in millimetres, and the move that led there; A is how far the table has been
     * turned, in degrees.
     */
    record Position(int motion, boolean ring, double x, double y, double z, double a, double minutes) {
        /** A place on the way there. */
        Position at(double otherX, double otherZ) {
            return new Position(motion, ring, otherX, y, otherZ, a, minutes);
        }
    }

    private final Table table;
    private final Map<Character, Double> now = new HashMap<>(Map.of('X', 411.0, 'Y', -307.0, 'Z', 9000.0, 'A', PARKED));
    private final List<Position> positions = new ArrayList<>();
    private double unit = 1;
    private boolean inverse;
    private boolean incremental;
    private boolean spinning = true;
    private boolean started;
    private boolean waited;
    private boolean changed;
    private boolean cooling;
    private boolean ended;
    private int number;

    private ProgramReader(Table table) {
        this.table = table;
    }

    /** Runs a program on a table that counts on. */
    static List<Position> run(String program) {
        return run(program, Table.COUNTS_ON);
    }

    /** Runs a program. */
    static List<Position> run(String program, Table table) {
        ProgramReader control = new ProgramReader(table);
        List<String> lines = program.lines().toList();
        boolean percent = lines.get(0).equals("%");
        assertEquals(percent, lines.get(lines.size() - 1).equals("%"), "percent signs at both ends");
        char mark = lines.get(percent ? 1 : 0).charAt(0);
        for (String line : lines.subList(percent ? 1 : 0, lines.size() - (percent ? 1 : 0))) {
            assertTrue(line.length() <= 120, line);
            if (line.startsWith("(") || line.startsWith(";")) {
                assertEquals(mark, line.charAt(0), "one kind of comment");
                assertTrue(COMMENT.matcher(line).matches(), line);
                assertTrue(!CarriedOut.comment(line), line);
            } else {
                control.block(line);
            }
        }
        assertTrue(control.ended && !control.spinning && !control.cooling && !control.incremental);
        boolean turns = control.positions.stream().anyMatch(at -> at.motion() == 1 && at.ring());
        double over = control.now.get('A') % (table == Table.WRAPS ? TURN : Double.POSITIVE_INFINITY);
        assertEquals(turns ? 0 : PARKED, turns ? over : control.now.get('A'), "A at the end");
        return control.positions;
    }

    private void block(String line) {
        assertTrue(!ended, "nothing after the end");
        Map<Character, Double> words = new HashMap<>();
        List<Double> codes = new ArrayList<>();
        for (String text : line.split(" ", -1)) {
            Matcher word = WORD.matcher(text);
            assertTrue(word.matches(), () -> "a word in " + line);
            char letter = word.group(1).charAt(0);
            double value = Double.parseDouble(word.group(2));
            if (letter == 'N') {
                assertTrue(line.startsWith("N") && value == (number == 99_990 ? 10 : number + 10), line);
                number = (int) value;
            } else if (letter == 'G') {
                codes.add(value);
            } else {
                assertEquals(null, words.put(letter, value), line);
            }
        }
        assertEquals(number > 0, line.startsWith("N"), "all lines are numbered, or none");
        int motion = codes(codes, words, line);
        if (words.containsKey('M')) {
            miscellaneous(words, line);
        }
        if (motion >= 0) {
            move(motion, words, line);
        } else {
            assertTrue(words.isEmpty(), () -> "words that are not understood in " + line);
        }
    }

    private int codes(List<Double> codes, Map<Character, Double> words, String line) {
        int motion = -1;
        for (double code : codes) {
            switch (String.valueOf(code)) {
                case "0.0", "1.0", "3.0" -> motion = (int) code;
                case "4.0" -> {
                    Double wait = words.containsKey('P') ? words.remove('P') : words.remove('X');
                    assertTrue(started && (wait == 5 || wait == 5000), line);
                    waited = true;
                }
                case "20.0" -> unit = 25.4;
                case "21.0" -> unit = 1;
                case "90.0" -> incremental = false;
                case "91.0" -> incremental = true;
                case "93.0" -> inverse = true;
                case "94.0" -> inverse = false;
                case "17.0", "40.0", "49.0", "80.0", "91.1", "54.0", "55.0", "56.0", "57.0", "58.0", "59.0" ->
                    assertTrue(positions.isEmpty(), "start block");
                default -> throw new AssertionError("G" + code + " in " + line);
            }
        }
        return motion;
    }

    private void miscellaneous(Map<Character, Double> words, String line) {
        int code = words.remove('M').intValue();
        switch (code) {
            case 0 -> {
                assertTrue(!spinning && !cooling, "waits with a still spindle");
                changed = false;
            }
            case 3 -> {
                assertTrue(!changed && words.remove('S') > 0, "looked at after a change of the tool");
                spinning = true;
                started = true;
            }
            case 5 -> {
                spinning = false;
                started = false;
                waited = false;
            }
            case 6 -> {
                assertTrue(!spinning && positions.isEmpty() && words.remove('T') >= 1, line);
                changed = true;
            }
            case 7, 8 -> {
                assertTrue(spinning, line);
                cooling = true;
            }
            case 9 -> cooling = false;
            case 2, 30 -> ended = true;
            default -> throw new AssertionError(line);
        }
    }

    private void move(int motion, Map<Character, Double> words, String line) {
        assertTrue(waited, line);
        assertTrue(Set.of('X', 'Y', 'Z', 'A', 'I', 'J', 'F').containsAll(words.keySet()), line);
        assertTrue(!incremental || words.keySet().equals(Set.of('A', 'F')), line);
        assertEquals(motion > 0, words.containsKey('F'), line);
        assertTrue(motion == 0 || words.get('F') > 0, line);
        double[] from = {now.get('X'), now.get('Y'), now.get('Z'), now.get('A')};
        for (char axis : "XYZA".toCharArray()) {
            if (words.containsKey(axis)) {
                now.put(axis, target(axis, words.get(axis)));
            }
        }
        double minutes = 0;
        double angle = Math.abs(now.get('A') - from[3]);
        if (motion > 0) {
            double length =
                    Math.hypot(Math.hypot(now.get('X') - from[0], now.get('Y') - from[1]), now.get('Z') - from[2]);
            assertTrue(length == 0 || angle == 0, () -> "lengths and angles at once in " + line);
            if (motion == 3) {
                assertEquals(0, length, 1e-9, "a full circle");
                assertEquals(0, from[0] + words.get('I') * unit, 1e-9, "about the axis");
                assertTrue(from[0] > 0, "a circle of no radius");
                length = 2 * Math.PI * from[0];
            }
            double feed = words.get('F');
            minutes = inverse ? 1 / feed : angle > 0 ? angle / feed : length / (feed * unit);
        }
        boolean ring = motion == 3 || (motion == 1 && angle > 0);
        positions.add(new Position(motion, ring, now.get('X'), now.get('Y'), now.get('Z'), now.get('A'), minutes));
    }

    private double target(char axis, double value) {
        double stated = value * (axis == 'A' ? 1 : unit);
        if (incremental) {
            return now.get(axis) + stated;
        }
        if (axis == 'A' && table == Table.WRAPS) {
            return now.get(axis) + Math.IEEEremainder(stated - now.get(axis), TURN);
        }
        return stated;
    }
}
