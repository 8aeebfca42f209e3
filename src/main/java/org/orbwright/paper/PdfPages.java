package org.orbwright.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitWidthDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.orbwright.drawing.Anchor;

/** The pages of a document, with a bookmark for each section; all stay open until they are numbered. */
final class PdfPages {
    private static final double LETTERS = 2.7;
    private static final double WARNING = 3.4;
    /** Bold letters are wider by about this; it leaves a gap. */
    private static final double BOLD = 1.05;

    private static final double MARGIN = 10;
    private static final double BOTTOM = 6.5;

    private final PDDocument document;
    private final PdfLetters letters;
    private final PDDocumentOutline outline = new PDDocumentOutline();
    private final List<PdfCanvas> canvases = new ArrayList<>();

    PdfPages(PDDocument document, PdfLetters letters) {
        this.document = document;
        this.letters = letters;
        document.getDocumentCatalog().setDocumentOutline(outline);
    }

    PdfLetters letters() {
        return letters;
    }

    /** Adds a page of a size in millimetres. */
    PdfCanvas add(double width, double height) throws IOException {
        PdfCanvas canvas = new PdfCanvas(document, letters, width, height);
        canvases.add(canvas);
        return canvas;
    }

    /** Adds a bookmark to a page. */
    void bookmark(String title, PDPage page) {
        PDOutlineItem item = new PDOutlineItem();
        PDPageFitWidthDestination destination = new PDPageFitWidthDestination();
        destination.setPage(page);
        item.setDestination(destination);
        item.setTitle(title);
        outline.addLast(item);
    }

    /**
     * Writes the title and the page's number at the foot of every page, and closes them. The warning, unless it is
     * empty, goes before the title in bold letters.
     */
    void number(String title, String warning) throws IOException {
        for (int i = 0; i < canvases.size(); i++) {
            PdfCanvas canvas = canvases.get(i);
            String number = "page " + (i + 1) + " of " + canvases.size();
            double y = canvas.height() - BOTTOM;
            double left = MARGIN;
            if (!warning.isEmpty()) {
                canvas.bold(warning, left, y, WARNING, Anchor.START);
                left += BOLD * letters.width(warning, WARNING) + MARGIN / 2;
            }
            double room = canvas.width() - left - 2 * MARGIN - letters.width(number, LETTERS);
            canvas.text(letters.fit(title, LETTERS, room), left, y, LETTERS, Anchor.START);
            canvas.text(number, canvas.width() - MARGIN, y, LETTERS, Anchor.END);
            canvas.close();
        }
    }
}
