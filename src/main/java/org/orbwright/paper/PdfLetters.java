package org.orbwright.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The letters of a document: Liberation Sans (SIL Open Font License 1.1), which PDFBox ships; what is used of it is
 * embedded. A character that it does not have, or that cannot be printed, is shown as an empty box.
 */
final class PdfLetters {
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final byte[] BYTES = read();
    private static final int BOX = 0x25a1;

    private final PDType0Font font;
    private final TrueTypeFont letters;
    private final CmapLookup known;
    private final Map<Integer, Double> widths = new HashMap<>();

    PdfLetters(PDDocument document) throws IOException {
        this.letters = new TTFParser().parse(new RandomAccessReadBuffer(BYTES));
        document.registerTrueTypeFontForClosing(letters);
        // Ligatures would take a third of the time, and some readers do not find words with them.
        letters.setEnableGsub(false);
        this.font = PDType0Font.load(document, letters, true);
        this.known = letters.getUnicodeCmapLookup();
    }

    private static byte[] read() {
        try (InputStream file = PdfLetters.class.getResourceAsStream(FONT)) {
            return file.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    PDType0Font font() {
        return font;
    }

    /** The text with what can be printed, in the order in which it is read from left to right. */
    String printable(String text) {
        String shown = text.codePoints()
                .map(this::shown)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        char[] letters = shown.toCharArray();
        return Bidi.requiresBidi(letters, 0, letters.length) ? leftToRight(shown) : shown;
    }

    private static String leftToRight(String text) {
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        byte[] levels = new byte[bidi.getRunCount()];
        String[] runs = new String[levels.length];
        for (int i = 0; i < levels.length; i++) {
            String run = text.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            levels[i] = (byte) bidi.getRunLevel(i);
            runs[i] =
                    levels[i] % 2 == 0 ? run : new StringBuilder(run).reverse().toString();
        }
        Bidi.reorderVisually(levels, 0, runs, 0, runs.length);
        return String.join("", runs);
    }

    /** Width of a text in letters of a size. */
    double width(String text, double size) {
        return size
                * text.codePoints()
                        .mapToDouble(letter -> widths.computeIfAbsent(letter, this::width))
                        .sum();
    }

    /** Width of a letter of size 1. */
    private double width(int letter) {
        int shown = shown(letter);
        try {
            return (double) letters.getAdvanceWidth(known.getGlyphId(shown)) / letters.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private int shown(int letter) {
        int printed = Character.isWhitespace(letter) ? ' ' : letter;
        return known.getGlyphId(printed) > 0 ? printed : BOX;
    }

    /** The text in lines that are no wider than the room for them; a word that is wider is broken. */
    List<String> wrap(String text, double size, double room) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, size) <= room) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (width(line, size) > room && line.codePointCount(0, line.length()) > 1) {
                int kept = fitting(line, size, room);
                lines.add(line.substring(0, kept));
                line = line.substring(kept);
            }
        }
        lines.add(line);
        return lines;
    }

    /** The text, cut with three dots where it is wider than the room for it. */
    String fit(String text, double size, double room) {
        return width(text, size) <= room
                ? text
                : text.substring(0, fitting(text, size, room - width("...", size))) + "...";
    }

    /** How many characters of a text fit, at least its first. */
    private int fitting(String text, double size, double room) {
        int kept = text.offsetByCodePoints(0, 1);
        while (kept < text.length()) {
            int next = text.offsetByCodePoints(kept, 1);
            if (width(text.substring(0, next), size) > room) {
                break;
            }
            kept = next;
        }
        return kept;
    }
}
