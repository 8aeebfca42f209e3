package org.orbwright.book;

import java.io.StringWriter;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.orbwright.paper.ShopSheetCalculator;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.Caution;
import org.orbwright.sheet.Finding;
import org.orbwright.xml.Xml;

/** The page that lists the files of a build: what is wrong first, then the files of each folder, then the cautions. */
public final class BookIndex {
    /** The page's own name. */
    public static final String NAME = "index.html";

    private BookIndex() {}

    /** The page. */
    public static String write(Answer build, List<BookFile> files) {
        String title = ShopSheetCalculator.title(build.document());
        StringWriter text = new StringWriter();
        Xml page = Xml.html(text, title);
        page.text("h1", title);
        build.findings().stream()
                .sorted(Comparator.comparing(Finding::severity))
                .forEach(finding -> page.text(
                        "p",
                        finding.severity() + ": " + finding.message(),
                        "class",
                        finding.severity().name()));
        List<BookFile> others =
                files.stream().filter(file -> !file.name().equals(NAME)).toList();
        Set<String> folders = new LinkedHashSet<>();
        others.forEach(file -> folders.add(folder(file)));
        for (String folder : folders) {
            page.text("h2", folder.isEmpty() ? "in this folder" : folder).open("ul");
            others.stream()
                    .filter(file -> folder(file).equals(folder))
                    .forEach(file -> page.open("li")
                            .text("a", file.name().substring(file.name().indexOf('/') + 1), "href", file.name())
                            .words(": " + file.what())
                            .close(1));
            page.close(1);
        }
        page.text("h2", "Cautions");
        build.cautions().stream().map(Caution::text).distinct().forEach(caution -> page.text("p", caution));
        page.end();
        return text.toString();
    }

    private static String folder(BookFile file) {
        return file.name().substring(0, Math.max(0, file.name().indexOf('/')));
    }
}
