package org.orbwright.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.PanelRequest;
import org.orbwright.design.DesignRequest.SizeRequest;
import org.orbwright.design.SizeBy;
import org.orbwright.document.Document;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.sheet.SheetCalculator;

class TextWriterTest {

    /** A cube of 6 in edge with panels that are far too thin. */
    private static List<String> lines(String name) {
        DesignRequest design = new DesignRequest(
                name,
                LengthUnit.IN,
                "cube",
                null,
                null,
                null,
                null,
                new SizeRequest(SizeBy.EDGE, 6.0),
                new PanelRequest(0.4, null),
                null,
                null,
                null,
                null,
                null);
        return TextWriter.write(SheetCalculator.sheet(Document.of(design), 2))
                .lines()
                .toList();
    }

    private static int first(List<String> lines, String start) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(start)) {
                return i;
            }
        }
        throw new AssertionError(start + " begins no line of " + lines);
    }

    @Test
    void theGravestComesFirst() {
        List<String> lines = lines(null);
        assertEquals("Sphere from a cube", lines.get(0));
        assertEquals(2, first(lines, "  STOP The "));
        assertTrue(first(lines, "  STOP ") < first(lines, "  WARN "));
        assertTrue(first(lines, "  WARN ") < first(lines, "  NOTE "));
        assertTrue(first(lines, "  NOTE ") < first(lines, "Angles of the saw"));
    }

    @Test
    void columnsStandBelowTheirHeadings() {
        List<String> lines = lines(null);
        int heading = first(lines, "  Panel    Sides");
        assertEquals("  Panel    Sides   In one sphere   Bevel, °   Blade tilt, °", lines.get(heading));
        assertEquals("  square       4               6         45              45", lines.get(heading + 1));
        assertTrue(lines.stream().noneMatch(line -> line.endsWith(" ")));
    }

    /** An escape sequence in a name would be carried out by the terminal. */
    @Test
    void namesDoNotSteerTheTerminal() {
        String title = lines("\u001b[2Jlamp\u202e").get(0);
        assertEquals("?[2Jlamp?", title);
    }

    @Test
    void whatTheSheetHasNotIsLeftOut() {
        String text = String.join("\n", lines(null));
        assertFalse(text.contains("Blanks and strips"), text);
        assertTrue(text.contains("No wall: the hollow reaches beyond the sphere by"), text);
    }
}
