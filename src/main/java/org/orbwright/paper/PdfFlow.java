package org.orbwright.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.orbwright.document.PaperSize;
import org.orbwright.drawing.Anchor;
import org.orbwright.paper.ShopSheet.Advice;
import org.orbwright.paper.ShopSheet.Heading;
import org.orbwright.paper.ShopSheet.Picture;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.paper.ShopSheet.Step;
import org.orbwright.paper.ShopSheet.Text;
import org.orbwright.sheet.Finding;
import org.orbwright.sheet.Finding.Severity;

/**
 * Lets the cards of a sheet flow down its pages, in two columns but for what is too wide for one; sizes in millimetres.
 * A card that fits onto a page stays on one.
 */
final class PdfFlow {
    private static final double TITLE = 6;
    private static final double MARGIN = 10;
    private static final double BOTTOM = 11;
    /** Between the two columns. */
    private static final double GUTTER = 5;
    /** A card that takes more than a page does not start with less room than this. */
    private static final double LEAST_START = 60;

    private final PdfPages pages;
    private final PaperSize paper;
    private final PdfBlocks wide;
    private final PdfBlocks narrow;
    private PdfCanvas canvas;
    private double y;

    /** Steps that stand in one column over the whole width, or in two. */
    private record Run(boolean whole, Column column) {
        double height() {
            int half = whole ? column.blocks().size() : column.half();
            return Math.max(column.first(half).height(), column.without(half).height());
        }
    }

    PdfFlow(PdfPages pages, PdfDrawing drawings, PaperSize paper) throws IOException {
        this.pages = pages;
        this.paper = paper;
        double room = paper.width() - 2 * MARGIN;
        this.wide = new PdfBlocks(pages.letters(), drawings, room);
        this.narrow = new PdfBlocks(pages.letters(), drawings, (room - GUTTER) / 2);
        turn();
    }

    private void turn() throws IOException {
        canvas = pages.add(paper.width(), paper.height());
        y = MARGIN;
    }

    private double left() {
        return paper.height() - BOTTOM - y;
    }

    /** Title and findings on top of the first page. */
    void title(ShopSheet sheet) throws IOException {
        for (String line : pages.letters().wrap(sheet.title(), TITLE, paper.width() - 2 * MARGIN)) {
            y += TITLE;
            canvas.bold(line, MARGIN, y, TITLE, Anchor.START);
        }
        y += 2 * PdfBlocks.GAP;
        List<Block> blocks = new ArrayList<>();
        sheet.opening().forEach(line -> blocks.addAll(wide.of(new Text(line))));
        List<Block> notes = new ArrayList<>();
        for (Finding finding : sheet.findings()) {
            if (finding.severity() == Severity.NOTE) {
                notes.add(narrow.of(finding));
            } else {
                blocks.add(wide.of(finding));
            }
        }
        draw(new Run(true, new Column(blocks)));
        draw(new Run(false, new Column(notes)));
    }

    /** Writes a section as a card. */
    void section(int number, Section section) throws IOException {
        Block title = wide.title(number + "  " + section.title());
        List<Run> runs = runs(section.steps());
        double height = title.height() + runs.stream().mapToDouble(Run::height).sum();
        double page = paper.height() - BOTTOM - MARGIN;
        y += y > MARGIN ? 2 * PdfBlocks.GAP : 0;
        if (height > left()
                && (height <= page || left() < LEAST_START || !begins(runs.get(0), left() - title.height()))) {
            turn();
        }
        pages.bookmark(section.title(), canvas.page());
        title.ink().draw(canvas, MARGIN, y);
        y += title.height();
        for (Run run : runs) {
            draw(run);
        }
    }

    /** What leads to a wide step is as wide as that. Several pictures one after the other stand side by side. */
    private List<Run> runs(List<Step> steps) {
        List<Run> runs = new ArrayList<>();
        List<Step> together = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            together.add(steps.get(i));
            if (i == steps.size() - 1
                    || whole(steps, i) != whole(steps, i + 1)
                    || gallery(steps, i) != gallery(steps, i + 1)) {
                runs.add(run(whole(steps, i), together));
                together.clear();
            }
        }
        return runs;
    }

    /** Whether a step is one of several pictures one after the other. */
    private static boolean gallery(List<Step> steps, int at) {
        return isPicture(steps, at) && (isPicture(steps, at - 1) || isPicture(steps, at + 1));
    }

    private static boolean isPicture(List<Step> steps, int at) {
        return at >= 0 && at < steps.size() && steps.get(at) instanceof Picture;
    }

    private Run run(boolean whole, List<Step> steps) {
        return new Run(whole, new Column((whole ? wide : narrow).of(steps)));
    }

    private boolean whole(List<Step> steps, int at) {
        int led = at;
        while (led < steps.size() - 1 && (steps.get(led) instanceof Heading || steps.get(led) instanceof Advice)) {
            led++;
        }
        return !narrow.takes(steps.get(led));
    }

    /** Whether the first block of a run fits, so that no title stands alone. */
    private static boolean begins(Run run, double room) {
        return run.column().fitting(room) > 0;
    }

    private void draw(Run run) throws IOException {
        Column rest = run.column();
        while (!rest.blocks().isEmpty()) {
            int first = run.whole() ? rest.fitting(left()) : firstColumn(rest);
            if (first == 0 && y > MARGIN) {
                turn();
                continue;
            }
            // What is higher than a page is drawn all the same, and stands over its end.
            Column start = rest.first(Math.max(first, 1));
            rest = rest.without(start.blocks().size());
            Column beside = rest.first(run.whole() ? 0 : rest.fitting(left()));
            rest = rest.without(beside.blocks().size());
            start.draw(canvas, MARGIN, y);
            beside.draw(canvas, (paper.width() + GUTTER) / 2, y);
            y += Math.max(start.height(), beside.height());
            if (!rest.blocks().isEmpty()) {
                turn();
            }
        }
    }

    /** As many blocks as give two even columns, or as fit. */
    private int firstColumn(Column rest) {
        int half = rest.half();
        return rest.first(half).height() <= left() ? half : rest.fitting(left());
    }
}
