package org.orbwright.paper;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.document.PaperSize;
import org.orbwright.drawing.Drawing;
import org.orbwright.sheet.Caution;
import org.orbwright.sheet.Finding;

/**
 * A sheet for the bench: the numbers of a build in the order of the work, as they are written. Findings stand gravest
 * first. Missing are the parts that were asked for and that the build does not have. Templates are to be printed at
 * true size, each page with the bar.
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

    /** A set-up: what is read, done and measured, in order. */
    public record Section(String title, List<Step> steps) {

        /** Copies the list. */
        public Section {
            steps = List.copyOf(steps);
        }
    }

    /** A bar of known length, and that length as it is written beside it. */
    public record Bar(double millimetres, String text) {}

    /** A part of a set-up. */
    public sealed interface Step permits Heading, Text, Value, Table, Check, Advice, Picture {}

    /** A heading within the set-up. */
    public record Heading(String text) implements Step {}

    /** A paragraph. */
    public record Text(String text) implements Step {}

    /** A number. A count has no unit, and the fraction may be empty. A measured one has a blank to fill in. */
    public record Value(String label, String number, String unit, String fraction, boolean measured) implements Step {}

    /** Rows of numbers, each with a cell for every heading. */
    public record Table(List<String> headings, List<List<String>> rows) implements Step {

        /** Copies the lists. */
        public Table {
            headings = List.copyOf(headings);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /** Something to be done, with a box to tick. */
    public record Check(String text) implements Step {}

    /** A caution at its place. */
    public record Advice(Caution caution) implements Step {}

    /** A drawing, reduced to fit; at true size if its scale on paper can be told. */
    public record Picture(Drawing drawing, boolean trueSize) implements Step {}
}
