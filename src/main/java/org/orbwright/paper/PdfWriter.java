package org.orbwright.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.sheet.Finding.Severity;

/** Writes a sheet as PDF 1.6. The same sheet always gives the same bytes: it has no date. */
public final class PdfWriter {
    private static final float VERSION = 1.6f;

    private PdfWriter() {}

    /** The sheet as a PDF document. */
    public static byte[] write(ShopSheet sheet) {
        try (PDDocument document = new PDDocument()) {
            describe(document, sheet);
            PdfPages pages = new PdfPages(document, new PdfLetters(document));
            PdfDrawing drawings = new PdfDrawing();
            PdfFlow flow = new PdfFlow(pages, drawings, sheet.paper());
            flow.title(sheet);
            int number = 0;
            for (Section section : sheet.sections()) {
                number++;
                flow.section(number, section);
            }
            PdfTemplates templates = new PdfTemplates(pages, drawings, sheet.paper(), sheet.bar());
            templates.draw(sheet.templates());
            pages.number(sheet.title(), warning(sheet));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A template that lies on the bench by itself still says that its design should not be cut. */
    private static String warning(ShopSheet sheet) {
        boolean stop = sheet.findings().stream().anyMatch(finding -> finding.severity() == Severity.STOP);
        return stop ? "STOP, do not cut this: see page 1" : "";
    }

    private static void describe(PDDocument document, ShopSheet sheet) {
        document.setVersion(VERSION);
        // Otherwise the time of day goes into the document's identifier.
        document.setDocumentId(0L);
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(sheet.title());
        document.setDocumentInformation(information);
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        catalog.setLanguage("en");
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        preferences.setPrintScaling(PRINT_SCALING.None);
        catalog.setViewerPreferences(preferences);
    }
}
