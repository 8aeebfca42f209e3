package org.orbwright.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.document.Document;
import org.orbwright.document.PaperPart;
import org.orbwright.document.PaperRequest;
import org.orbwright.document.PaperSize;
import org.orbwright.drawing.Drawing;
import org.orbwright.drawing.Label;
import org.orbwright.drawing.Line;
import org.orbwright.drawing.Mark;
import org.orbwright.drawing.PathData;
import org.orbwright.drawing.Pen;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.paper.PdfLines.Stroke;
import org.orbwright.paper.ShopSheet.Bar;
import org.orbwright.paper.ShopSheet.Table;
import org.orbwright.paper.ShopSheet.Value;
import org.orbwright.segment.SegmentCalculator;
import org.orbwright.segment.SegmentPlan.SegmentCut;

/** What a reader of PDF files finds in a sheet; it is read by another part of PDFBox than the one that wrote it. */
@Slow
class PdfWriterTest {
    private static final double DOTS = 300;
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;
    /** Coordinates are written to a ten-thousandth of a millimetre or so. */
    private static final double WRITTEN = 0.002;
    /** What stands on every page of templates. */
    private static final String BAR = "Measure this bar before the template is used.";

    private static ShopSheet sheet(DesignRequest design, PaperSize paper) {
        return ShopSheetCalculator.sheet(
                Document.of(design).with(org.orbwright.document.Section.PAPER, new PaperRequest(paper, null)));
    }

    private static PDDocument pdf(ShopSheet sheet) throws IOException {
        return Loader.loadPDF(PdfWriter.write(sheet));
    }

    private static String text(PDDocument document) throws IOException {
        return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }

    private static DesignRequest example(String name) {
        return Designs.example(name).request();
    }

    private static DesignRequest named(String name) {
        return Designs.named(name, example("dodecahedron-with-land"));
    }

    /** The pages on which a text stands. */
    private static List<Integer> pages(PDDocument document, String words) throws IOException {
        List<Integer> found = new ArrayList<>();
        for (int page = 0; page < document.getNumberOfPages(); page++) {
            PDFTextStripper reader = new PDFTextStripper();
            reader.setStartPage(page + 1);
            reader.setEndPage(page + 1);
            if (reader.getText(document).replaceAll("\\s+", " ").contains(words)) {
                found.add(page);
            }
        }
        return found;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"dodecahedron-two-spheres", "deltoidal-hexecontahedron-upright-bands", "cube-with-chevrons"})
    void everyNumberOfTheSheetIsInItsText(String name) throws IOException {
        ShopSheet sheet = sheet(example(name), PaperSize.A4);
        try (PDDocument document = pdf(sheet)) {
            String text = text(document);
            sheet.sections()
                    .forEach(section -> section.steps().forEach(step -> {
                        if (step instanceof Value value) {
                            String gap =
                                    value.unit().equals("°") || value.unit().isEmpty() ? "" : " ";
                            String number = value.number() + gap + value.unit();
                            assertTrue(text.contains(number), value + " is not in the text");
                            assertTrue(text.contains(value.fraction()), value + " has lost its fraction");
                        } else if (step instanceof Table table) {
                            table.rows().forEach(row -> row.forEach(cell -> assertTrue(text.contains(cell), cell)));
                        }
                    }));
        }
    }

    @ParameterizedTest
    @CsvSource({"A4, 210, 297", "LETTER, 215.9, 279.4"})
    void pagesHaveTheSizeOfThePaper(PaperSize paper, double width, double height) throws IOException {
        try (PDDocument document = pdf(sheet(example("dodecahedron-with-land"), paper))) {
            for (PDPage page : document.getPages()) {
                double wide = page.getMediaBox().getWidth() / POINTS_PER_MILLIMETRE;
                double high = page.getMediaBox().getHeight() / POINTS_PER_MILLIMETRE;
                assertEquals(width, Math.min(wide, high), WRITTEN);
                assertEquals(height, Math.max(wide, high), WRITTEN);
            }
        }
    }

    @Test
    void theDocumentSaysWhatItIsAndHowItIsPrinted() throws IOException {
        ShopSheet sheet = sheet(named("Boathouse lantern"), PaperSize.A4);
        try (PDDocument document = pdf(sheet)) {
            assertEquals("Boathouse lantern", document.getDocumentInformation().getTitle());
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            assertEquals(
                    PRINT_SCALING.None.toString(),
                    document.getDocumentCatalog().getViewerPreferences().getPrintScaling());
            List<String> bookmarks = new ArrayList<>();
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                bookmarks.add(item.getTitle());
            }
            List<String> expected = new ArrayList<>();
            sheet.sections().forEach(section -> expected.add(section.title()));
            sheet.templates().forEach(template -> expected.add(template.title()));
            assertEquals(
                    expected.stream().sorted().toList(),
                    bookmarks.stream().sorted().toList());
        }
    }

    @Test
    void everyPageIsNumbered() throws IOException {
        try (PDDocument document = pdf(sheet(example("dodecahedron-with-land"), PaperSize.A4))) {
            String text = text(document);
            int pages = document.getNumberOfPages();
            for (int page = 1; page <= pages; page++) {
                assertTrue(text.contains("page " + page + " of " + pages));
            }
        }
    }

    @Test
    void everyPageOfADesignThatShouldNotBeCutSaysSo() throws IOException {
        String warning = "STOP, do not cut this: see page 1";
        try (PDDocument document = pdf(sheet(example("dodecahedron-vanishing-rim"), PaperSize.A4))) {
            String text = text(document);
            assertEquals(
                    document.getNumberOfPages(),
                    (text.length() - text.replace(warning, "").length()) / warning.length());
        }
        try (PDDocument document = pdf(sheet(example("dodecahedron-with-land"), PaperSize.A4))) {
            assertFalse(text(document).contains(warning));
        }
    }

    /** Letters in pictures, but of boards and nets, are no smaller than 5 points: 1.8 mm. */
    @ParameterizedTest
    @ValueSource(
            strings = {"dodecahedron-two-spheres", "truncated-octahedron-alternating", "truncated-icosidodecahedron"})
    void lettersInDrawingsAreLargeEnoughToRead(String name) throws IOException {
        for (PaperSize paper : PaperSize.values()) {
            ShopSheet sheet = sheet(example(name), paper);
            try (PDDocument document = pdf(sheet)) {
                List<String> small = new ArrayList<>();
                new PDFTextStripper() {
                    @Override
                    protected void processTextPosition(TextPosition letter) {
                        // The size as it is printed; PDFBox's own size in points leaves out how a drawing is scaled.
                        float size = letter.getTextMatrix().getScalingFactorY();
                        if (size < 5.1 && getCurrentPageNo() <= bevelPage(document)) {
                            small.add(letter + " " + size + " on " + getCurrentPageNo());
                        }
                        super.processTextPosition(letter);
                    }
                }.getText(document);
                assertEquals(List.of(), small);
            }
        }
    }

    /** The last page before the panels laid flat, whose numbers go by the size of the panels. */
    private static int bevelPage(PDDocument document) {
        for (PDOutlineItem item :
                document.getDocumentCatalog().getDocumentOutline().children()) {
            if (item.getTitle().equals("Gluing the solid")) {
                try {
                    return document.getPages().indexOf(item.findDestinationPage(document));
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
        }
        throw new AssertionError("no such section");
    }

    /** A section's title and caution stand above something, and no tick box stands alone on a page's top. */
    @ParameterizedTest
    @ValueSource(
            strings = {"dodecahedron-two-spheres", "dodecahedron-with-land", "deltoidal-hexecontahedron-upright-bands"})
    void nothingStandsAloneAtTheEndOfAPage(String name) throws IOException {
        for (PaperSize paper : PaperSize.values()) {
            ShopSheet sheet = sheet(example(name), paper);
            try (PDDocument document = pdf(sheet)) {
                for (int page = 1; page <= document.getNumberOfPages(); page++) {
                    PDFTextStripper reader = new PDFTextStripper();
                    reader.setStartPage(page);
                    reader.setEndPage(page);
                    String text = reader.getText(document).replaceAll("\\s+", " ");
                    if (text.contains("Gluing the panels Caution")) {
                        assertTrue(text.contains("Panels for one sphere"), text);
                    }
                    assertFalse(text.startsWith("One edge bevelled"), text);
                }
            }
        }
    }

    @Test
    void theSameRequestGivesTheSameBytes() {
        DesignRequest design = example("truncated-icosidodecahedron");
        assertArrayEquals(PdfWriter.write(sheet(design, PaperSize.A4)), PdfWriter.write(sheet(design, PaperSize.A4)));
    }

    @ParameterizedTest
    @CsvSource({"dodecahedron-with-land, 100", "dodecahedron-two-spheres, 101.6"})
    void everyTemplatePageHasABarOfItsLength(String design, double millimetres) throws IOException {
        ShopSheet sheet = sheet(example(design), null);
        try (PDDocument document = pdf(sheet)) {
            List<Integer> pages = pages(document, BAR);
            assertEquals(document.getNumberOfPages() - pages.get(0), pages.size());
            for (int page : pages) {
                assertEquals(1, bars(document.getPage(page), millimetres), "page " + (page + 1));
            }
        }
    }

    private static int last(List<Integer> pages) {
        return pages.get(pages.size() - 1);
    }

    private static long bars(PDPage page, double millimetres) {
        return PdfLines.of(page).stream()
                .filter(Stroke::level)
                .filter(stroke -> Math.abs(stroke.length() - millimetres) < WRITTEN && stroke.fromX() < 11)
                .count();
    }

    /** The longest level run of dark dots in the lower part of the page; the bar's ends add a thin line's width. */
    @Test
    void thePrintedBarIsAHundredMillimetresToOneDot() throws IOException {
        ShopSheet sheet = sheet(example("dodecahedron-with-land"), PaperSize.A4);
        try (PDDocument document = pdf(sheet)) {
            int page = pages(document, BAR).get(0);
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page, (float) DOTS, ImageType.GRAY);
            int longest = 0;
            for (int y = image.getHeight() * 7 / 8; y < image.getHeight(); y++) {
                longest = Math.max(longest, longestRun(image, y));
            }
            assertEquals(100 / 25.4 * DOTS, longest, 1 + 0.12 / 25.4 * DOTS);
        }
    }

    private static int longestRun(BufferedImage image, int y) {
        int longest = 0;
        int run = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            run = image.getRaster().getSample(x, y, 0) < 160 ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        return longest;
    }

    @ParameterizedTest
    @ValueSource(strings = {"dodecahedron-two-spheres", "deltoidal-hexecontahedron-upright-bands"})
    void aSegmentsTemplateHasItsSides(String name) throws IOException {
        DesignRequest request = example(name);
        ShopSheet sheet = sheet(request, PaperSize.A4);
        SegmentCut segment = SegmentCalculator.calculate(Design.of(request))
                .faces()
                .get(0)
                .segments()
                .get(0);
        try (PDDocument document = pdf(sheet)) {
            int page = last(pages(document, "Segment " + segment.segment() + " of the "));
            List<Double> lengths = PdfLines.of(document.getPage(page)).stream()
                    .map(Stroke::length)
                    .toList();
            for (double side : List.of(segment.base(), segment.legLeft(), segment.legRight())) {
                assertTrue(
                        lengths.stream().anyMatch(length -> Math.abs(length - side) < WRITTEN),
                        side + " is none of " + lengths);
            }
        }
    }

    /** The same line of the template lies the same way from the same cross on both pages. */
    @Test
    void crossesOfNeighbouringPagesLieOntoEachOther() throws IOException {
        PathData path = new PathData()
                .moveTo(10, 10)
                .lineTo(910, 10)
                .lineTo(910, 130)
                .lineTo(10, 130)
                .close();
        Drawing long900 = new Drawing("Long", "long", 920, 140, List.of(), List.of(new Line(path, Pen.MEDIUM)));
        ShopSheet sheet = new ShopSheet(
                "Long", PaperSize.A4, List.of(), List.of(), List.of(), new Bar(100, "100 mm"), List.of(long900));
        try (PDDocument document = pdf(sheet)) {
            List<Integer> pages = pages(document, "of 4, Long");
            assertEquals(4, pages.size());
            for (int i = 1; i < pages.size(); i++) {
                List<Stroke> before = PdfLines.of(document.getPage(pages.get(i - 1)));
                List<Stroke> after = PdfLines.of(document.getPage(pages.get(i)));
                double shift = corner(before).fromX() - corner(after).fromX();
                assertEquals(corner(before).fromY(), corner(after).fromY(), WRITTEN);
                double width = document.getPage(pages.get(i)).getMediaBox().getWidth() / POINTS_PER_MILLIMETRE;
                List<Stroke> shared = crosses(before).stream()
                        .filter(stroke -> stroke.fromX() > width - 30 && stroke.toX() < width - 10)
                        .toList();
                assertEquals(2, shared.size());
                for (Stroke cross : shared) {
                    assertTrue(
                            crosses(after).stream()
                                    .anyMatch(other -> Math.abs(cross.fromX() - other.fromX() - shift) < WRITTEN
                                            && Math.abs(cross.fromY() - other.fromY()) < WRITTEN
                                            && other.fromX() > 10),
                            cross + " is none of " + crosses(after));
                }
            }
        }
    }

    /** A number that is cut at the edge of a tile would be read as another one. */
    @Test
    void noLabelIsCutAtTheEdgeOfATile() throws IOException {
        ShopSheet sheet = sheet(example("dodecahedron-with-land"), PaperSize.A4);
        try (PDDocument document = pdf(sheet)) {
            String text = text(document);
            for (Drawing template : sheet.templates()) {
                for (Mark mark : template.marks()) {
                    if (mark instanceof Label label) {
                        assertTrue(text.contains(label.text()), label.text());
                    }
                }
            }
            for (int page : pages(document, BAR)) {
                double width = document.getPage(page).getMediaBox().getWidth();
                new PDFTextStripper() {
                    @Override
                    protected void processTextPosition(TextPosition letter) {
                        if (getCurrentPageNo() == page + 1) {
                            assertTrue(
                                    letter.getX() > 27 && letter.getX() + letter.getWidth() < width - 27, letter + "");
                        }
                        super.processTextPosition(letter);
                    }
                }.getText(document);
            }
        }
    }

    /** A whole dodecahedron, two spheres of it, with all that any build needs. */
    @ParameterizedTest
    @CsvSource({"dodecahedron-with-land, 12"})
    void aWholeBuildTakesFewPages(String name, int most) throws IOException {
        try (PDDocument document = pdf(sheet(example(name), PaperSize.A4))) {
            assertTrue(document.getNumberOfPages() <= most, document.getNumberOfPages() + " pages");
        }
    }

    /** The upper edge of the blank, 900 mm long. */
    private static Stroke corner(List<Stroke> strokes) {
        return strokes.stream()
                .filter(stroke -> stroke.level() && Math.abs(stroke.length() - 900) < 0.01)
                .findFirst()
                .orElseThrow();
    }

    /** The level strokes of the crosses, 8 mm long. */
    private static List<Stroke> crosses(List<Stroke> strokes) {
        return strokes.stream()
                .filter(stroke -> stroke.level() && Math.abs(stroke.length() - 8) < WRITTEN)
                .toList();
    }

    @Test
    void lettersOutsideOfTheFontAreBoxes() throws IOException {
        try (PDDocument document = pdf(sheet(named("Ångström 木 žluťoučký"), PaperSize.A4))) {
            assertTrue(
                    text(document).startsWith("Ångström □ žluťoučký"),
                    text(document).substring(0, 60));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u0001\u0007\u001b[31m \u009b \n\t",
                "\ud83e\udeb5\ud83e\udeb5 emoji \ud83d\udc68\u200d\ud83d\udd27",
                "\u05db\u05d3\u05d5\u05e8 7 in",
                "\u0643\u0631\u0629 \u062e\u0634\u0628",
                "<script>alert(1)</script> & \"quotes\" \\(parenthesis\\)",
                "%PDF-1.7 endstream endobj",
                "\ufffe\uffff\ufeff \ud800"
            })
    void oddNamesArePrinted(String name) throws IOException {
        ShopSheet sheet = sheet(named(name), PaperSize.A4);
        try (PDDocument document = pdf(sheet)) {
            assertTrue(text(document).contains("Blade tilt from upright"));
        }
    }

    @Test
    void aLongNameWithoutBlanksStaysOnThePage() throws IOException {
        try (PDDocument document = pdf(ShopSheetCalculator.sheet(Document.of(named("W".repeat(120)))
                .with(org.orbwright.document.Section.PAPER, new PaperRequest(null, List.of(PaperPart.SUMMARY)))))) {
            assertTrue(text(document).replaceAll("[^W]", "").length() >= 120);
            assertFalse(farthest(document) > 0, "letters stand " + farthest(document) + " points beyond the page");
        }
    }

    /** By how many points the farthest letter of any page stands beyond its page's right edge. */
    private static double farthest(PDDocument document) throws IOException {
        double[] farthest = {Double.NEGATIVE_INFINITY};
        new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
                farthest[0] = Math.max(farthest[0], letter.getX() + letter.getWidth() - letter.getPageWidth());
                super.processTextPosition(letter);
            }
        }.getText(document);
        return farthest[0];
    }

    @Test
    void aNameInHebrewIsSetFromRightToLeft() throws IOException {
        PDDocument document = new PDDocument();
        PdfLetters letters = new PdfLetters(document);
        assertEquals("\u05d2\u05d1\u05d0", letters.printable("\u05d0\u05d1\u05d2"));
        assertEquals("a \u05d2\u05d1\u05d0 b", letters.printable("a \u05d0\u05d1\u05d2 b"));
        document.close();
    }
}
