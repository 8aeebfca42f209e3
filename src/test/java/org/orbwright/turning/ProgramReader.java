package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A control that knows the few words of ISO 6983-1:2009 (from memory) that it needs, and refuses all others. It starts
 * with its axes parked anywhere, and does not end with the table turned, or the spindle not waited for.
 */
final class ProgramReader {
    private static final Pattern WORD = Pattern.compile("([A-Z])(-?[0-9]+(?:\\.[0-9]+)?)");

    /** A position of the tip after a move, in millimetres and degrees, and the move that led there. */
    record Position(int motion, boolean ring, double x, double y, double z, double a, double minutes) {
        /** A place on the way there. */
        Position at(double otherX, double otherZ) {
            return new Position(motion, ring, otherX, y, otherZ, a, minutes);
        }
    }

    private final Map<Character, Double> now =
            new HashMap<>(Map.of('X', 411.0, 'Y', -307.0, 'Z', 9000.0, 'A', 12345.0));
    private final List<Position> positions = new ArrayList<>();
    private double unit = 1;
    private boolean inverse;
    private boolean spinning;
    private boolean waited;
    private boolean ended;

    private ProgramReader() {}

    /** Runs a program. */
    static List<Position> run(String program) {
        ProgramReader control = new ProgramReader();
        String[] lines = program.split("\n", -1);
        assertEquals("%", lines[0]);
        for (String line : lines) {
            assertTrue(line.length() <= 120, line);
            if (line.startsWith("(")) {
                assertTrue(line.matches("\\([ -~&&[^()%;]]+\\)"), line);
                assertTrue(!CarriedOut.comment(line), line);
            } else if (!line.equals("%") && !line.isEmpty()) {
                control.block(line);
            }
        }
        assertTrue(control.ended && !control.spinning);
        boolean turns = control.positions.stream().anyMatch(at -> at.motion() == 1 && at.ring());
        assertEquals(turns ? 0 : 12345.0, control.now.get('A'), "A at the end");
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
            if (letter == 'G') {
                codes.add(value);
            } else {
                words.put(letter, value);
            }
        }
        int motion = -1;
        for (double code : codes) {
            switch (String.valueOf(code)) {
                case "0.0", "1.0", "3.0" -> motion = (int) code;
                case "4.0" -> waited = spinning && words.get('P') >= 5;
                case "20.0" -> unit = 25.4;
                case "21.0" -> unit = 1;
                case "93.0" -> inverse = true;
                case "94.0" -> inverse = false;
                case "17.0", "40.0", "49.0", "80.0", "90.0", "91.1" -> assertTrue(positions.isEmpty(), "start block");
                default -> throw new AssertionError("G" + code + " in " + line);
            }
        }
        if (words.containsKey('M')) {
            switch (words.get('M').intValue()) {
                case 0 -> assertTrue(!spinning, "waits with a still spindle");
                case 3 -> spinning = words.get('S') > 0;
                case 5 -> {
                    spinning = false;
                    waited = false;
                }
                case 30 -> ended = true;
                default -> throw new AssertionError(line);
            }
        }
        if (motion >= 0) {
            move(motion, words, line);
        }
    }

    private void move(int motion, Map<Character, Double> words, String line) {
        assertTrue(spinning && waited, line);
        assertEquals(motion > 0, words.containsKey('F'), line);
        assertTrue(motion == 0 || words.get('F') > 0, line);
        double[] from = {now.get('X'), now.get('Y'), now.get('Z'), now.get('A')};
        for (char axis : "XYZA".toCharArray()) {
            if (words.containsKey(axis)) {
                now.put(axis, words.get(axis) * (axis == 'A' ? 1 : unit));
            }
        }
        double minutes = 0;
        if (motion > 0) {
            double length =
                    Math.hypot(Math.hypot(now.get('X') - from[0], now.get('Y') - from[1]), now.get('Z') - from[2]);
            if (motion == 3) {
                assertEquals(0, length, 1e-9, "a full circle");
                assertEquals(0, from[0] + words.get('I') * unit, 1e-9, "about the axis");
                assertTrue(from[0] > 0, "a circle of no radius");
                length = 2 * Math.PI * from[0];
            }
            minutes = inverse ? 1 / words.get('F') : length / (words.get('F') * unit);
        }
        boolean ring = motion == 3 || (motion == 1 && now.get('A') != from[3]);
        positions.add(new Position(motion, ring, now.get('X'), now.get('Y'), now.get('Z'), now.get('A'), minutes));
    }
}
