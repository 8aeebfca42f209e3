package org.orbwright.paper;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.document.PaperSize;
import org.orbwright.drawing.Drawing;
import org.orbwright.sheet.Caution;
import org.orbwright.sheet.Finding;

/**
 * A sheet for the bench: the numbers of a build in the order of the work, as they are written.
 *
 * @param title what it is called
 * @param paper the paper that it is printed on
 * @param findings what the design gets wrong or nearly wrong, gravest first
 * @param missing the parts that were asked for and that the build does not have
 * @param sections the set-ups, in the order of the work
 * @param bar the bar on every page of a template
 * @param templates drawings to be printed at true size
 */
public record ShopSheet(
        String title,
        PaperSize paper,
        List<Finding> findings,
        List<String> missing,
        List<Section> sections,
        Bar bar,
        List<Drawing> templates) {

    /** What stands in place of findings. */
    static final String NO_FINDINGS = "No findings: nothing in this design is wrong or nearly wrong by these numbers.";

    private static final String SUBTITLE = "Shop sheet: the numbers of the build in the order of the work";

    /** Copies the lists. */
    public ShopSheet {
        findings = List.copyOf(findings);
        missing = List.copyOf(missing);
        sections = List.copyOf(sections);
        templates = List.copyOf(templates);
    }

    /** What stands below the title: what the sheet is, and what it lacks. */
    List<String> opening() {
        List<String> lines = new ArrayList<>(List.of(SUBTITLE));
        if (!missing.isEmpty()) {
            lines.add("Not printed, since the document has nothing for it: " + String.join(", ", missing) + ".");
        }
        if (findings.isEmpty()) {
            lines.add(NO_FINDINGS);
        }
        return lines;
    }

    /**
     * A set-up.
     *
     * @param title what it is called
     * @param steps what is read, done and measured, in order
     */
    public record Section(String title, List<Step> steps) {

        /** Copies the list. */
        public Section {
            steps = List.copyOf(steps);
        }
    }

    /**
     * A bar of known length.
     *
     * @param millimetres its length
     * @param text the length as it is written beside it
     */
    public record Bar(double millimetres, String text) {}

    /** A part of a set-up. */
    public sealed interface Step permits Heading, Text, Value, Table, Check, Advice, Picture {}

    /**
     * A heading within the set-up.
     *
     * @param text the heading
     */
    public record Heading(String text) implements Step {}

    /**
     * A paragraph.
     *
     * @param text the paragraph
     */
    public record Text(String text) implements Step {}

    /**
     * A number.
     *
     * @param label what it is
     * @param number the number
     * @param unit its unit; empty for a count
     * @param fraction the number as a fraction; empty where none is written
     * @param measured whether there is a blank for the measured value
     */
    public record Value(String label, String number, String unit, String fraction, boolean measured) implements Step {}

    /**
     * Rows of numbers.
     *
     * @param headings one for each column
     * @param rows the cells of each row
     */
    public record Table(List<String> headings, List<List<String>> rows) implements Step {

        /** Copies the lists. */
        public Table {
            headings = List.copyOf(headings);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /**
     * Something to be done, with a box to tick.
     *
     * @param text what is to be done
     */
    public record Check(String text) implements Step {}

    /**
     * A caution at its place.
     *
     * @param caution the caution
     */
    public record Advice(Caution caution) implements Step {}

    /**
     * A drawing, reduced to fit.
     *
     * @param drawing the drawing
     * @param trueSize whether what it shows has its own size in it, so that the scale on paper can be told
     */
    public record Picture(Drawing drawing, boolean trueSize) implements Step {}
}
