package org.orbwright.book;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.document.Document;
import org.orbwright.paper.HtmlWriter;
import org.orbwright.paper.PdfWriter;
import org.orbwright.paper.ShopSheet;
import org.orbwright.paper.ShopSheetCalculator;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;

/** The files of a build: paper, pictures, outlines, bodies and program. */
public final class BuildBook {
    private BuildBook() {}

    /**
     * The files of a build, those for people first; the document keeps its Bean Validation constraints. What waits for
     * something is not among them; the build's findings say so.
     */
    public static List<BookFile> files(Document document, Answer build) {
        Design design = Design.of(document.design());
        List<BookFile> files = new ArrayList<>();
        ShopSheet sheet = ShopSheetCalculator.sheet(document, build);
        files.add(new BookFile(
                "shop-sheet.pdf", "the build on paper, with full-size templates", () -> PdfWriter.write(sheet)));
        files.add(BookFile.text(
                "shop-sheet.html", "the same for a screen, without templates", () -> HtmlWriter.write(sheet)));
        files.addAll(new PictureFiles(design, build).files());
        files.addAll(new OutlineFiles(design, build).files());
        files.addAll(new BodyFiles(design, build).files());
        if (build.path() != null) {
            files.add(BookFile.text(
                    "programs/sphere.nc",
                    "a cutter's way over the sphere as a program; read its head first",
                    () -> SheetCalculator.program(SheetCalculator.path(document), build.findings())));
        }
        return files;
    }
}
