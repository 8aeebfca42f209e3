package org.orbwright.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.orbwright.document.Document;
import org.orbwright.notice.Notice;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.paper.ShopSheet.Step;
import org.orbwright.paper.ShopSheet.Table;
import org.orbwright.paper.ShopSheet.Text;
import org.orbwright.paper.ShopSheet.Value;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.Caution;
import org.orbwright.sheet.Finding;

/** Writes a sheet as plain text for a terminal: what is wrong first, then its parts as tables, then the cautions. */
public final class TextWriter {
    private static final int WIDTH = 100;
    private static final String INDENT = "  ";
    private static final String GAP = "   ";
    private static final Pattern NUMERIC = Pattern.compile("-|-?[0-9].*");
    /** Letters by which a caller's name could steer the terminal. */
    private static final Pattern UNSEEN = Pattern.compile("[\\p{Cc}\\p{Cf}\\u2028\\u2029]");

    private final StringBuilder text = new StringBuilder();

    private TextWriter() {}

    /** The sheet as text, in lines that end in LF. */
    public static String write(Answer sheet) {
        TextWriter writer = new TextWriter();
        Document document = sheet.document();
        writer.line(ShopSheetCalculator.title(document));
        writer.findings(sheet.findings());
        SummarySections.of(sheet).forEach(writer::section);
        writer.cautions(sheet.cautions());
        return writer.text.toString();
    }

    private void findings(List<Finding> findings) {
        line("");
        if (findings.isEmpty()) {
            line(ShopSheet.NO_FINDINGS);
        }
        findings.stream()
                .sorted(Comparator.comparing(Finding::severity))
                .forEach(finding -> wrapped(finding.severity() + " ", finding.message()));
    }

    private void cautions(List<Caution> cautions) {
        heading("Cautions");
        cautions.stream().map(Caution::text).distinct().forEach(caution -> wrapped("", caution));
    }

    private void heading(String title) {
        gap();
        line(title);
        line("=".repeat(title.length()));
    }

    /** Neighbouring values share a table. */
    private void section(Section section) {
        heading(section.title());
        List<List<String>> values = new ArrayList<>();
        for (Step step : section.steps()) {
            if (step instanceof Value value) {
                String fraction = value.fraction().isEmpty() ? "" : "(" + value.fraction() + ")";
                values.add(List.of(value.label(), value.number(), value.unit(), fraction));
            } else {
                table(values);
                values.clear();
            }
            if (step instanceof Text sentence) {
                gap();
                wrapped("", sentence.text());
            } else if (step instanceof Table table) {
                List<List<String>> rows = new ArrayList<>(List.of(table.headings()));
                rows.addAll(table.rows());
                table(rows);
            }
        }
        table(values);
    }

    /** Columns of numbers end together, columns of words begin together. */
    private void table(List<List<String>> rows) {
        if (rows.isEmpty()) {
            return;
        }
        gap();
        List<Integer> columns = IntStream.range(0, rows.get(0).size()).boxed().toList();
        List<String> last = rows.get(rows.size() - 1);
        List<Integer> widths = columns.stream()
                .map(column -> rows.stream()
                        .mapToInt(row -> seen(row.get(column)).length())
                        .max()
                        .orElse(0))
                .toList();
        for (List<String> row : rows) {
            List<String> cells = columns.stream()
                    .map(column -> cell(
                            seen(row.get(column)),
                            widths.get(column),
                            NUMERIC.matcher(last.get(column)).matches()))
                    .toList();
            line(INDENT + String.join(GAP, cells).stripTrailing());
        }
    }

    private static String cell(String text, int width, boolean number) {
        String fill = " ".repeat(width - text.length());
        return number ? fill + text : text + fill;
    }

    private void wrapped(String mark, String sentence) {
        List<String> lines = Notice.wrapped(seen(sentence), WIDTH - INDENT.length() - mark.length());
        line(INDENT + mark + lines.get(0));
        lines.subList(1, lines.size()).forEach(next -> line(INDENT + " ".repeat(mark.length()) + next));
    }

    /** One empty line, wherever it is asked for. */
    private void gap() {
        if (text.length() < 2 || text.charAt(text.length() - 2) != '\n') {
            line("");
        }
    }

    private void line(String content) {
        text.append(seen(content)).append('\n');
    }

    private static String seen(String content) {
        return UNSEEN.matcher(content).replaceAll("?");
    }
}
