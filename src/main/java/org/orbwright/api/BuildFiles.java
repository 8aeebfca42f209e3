package org.orbwright.api;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.orbwright.api.cells.CellTableWriter;
import org.orbwright.api.cells.SheetJson;
import org.orbwright.api.cells.SheetPath;
import org.orbwright.api.query.Stations;
import org.orbwright.api.wire.Csv;
import org.orbwright.api.wire.IndentedJson;
import org.orbwright.api.wire.TableWriter;
import org.orbwright.book.BookFile;
import org.orbwright.book.BookIndex;
import org.orbwright.book.BuildBook;
import org.orbwright.cell.Cell;
import org.orbwright.cell.CellTable;
import org.orbwright.cell.Parameter;
import org.orbwright.design.BandSet;
import org.orbwright.document.Document;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;
import org.orbwright.stock.CutStep;
import org.orbwright.stock.ShoppingRow;
import org.orbwright.xml.Archive;

/** All files of a build: those of the book, the JSON and the lists, and the page that lists them. */
public final class BuildFiles {
    /** Stations of the bands' profile in the build's JSON, as its address has them. */
    private static final int STATIONS = Integer.parseInt(Stations.DEFAULT);

    private BuildFiles() {}

    /** The files of a document, the page that lists them first. */
    public static List<BookFile> of(Document document) {
        Answer build = SheetCalculator.build(document, STATIONS);
        Answer sheet = SheetJson.answer(document);
        JsonNode json = SheetJson.of(build);
        List<BookFile> files = new ArrayList<>(BuildBook.files(document, build));
        if (build.cuts() != null) {
            files.add(new BookFile(
                    "lists/cut-list.csv",
                    "how each board is cut, step by step",
                    () -> TableWriter.toCsv(build, CutStep.class, build.cuts())));
            files.add(new BookFile(
                    "lists/shopping-list.csv",
                    "what to buy, and what is short",
                    () -> TableWriter.toCsv(
                            build, ShoppingRow.class, build.purchases().rows())));
        }
        for (CellTable table : CellTable.values()) {
            boolean chosen = Cell.choices(table.path()).contains(Parameter.SET.text());
            for (BandSet set : chosen ? BandSet.values() : new BandSet[] {BandSet.UPRIGHT}) {
                String which = chosen ? " " + set.name().toLowerCase(Locale.ROOT) : "";
                files.add(BookFile.text(
                        "lists/" + (table == CellTable.SHEET ? "sheet" : "sheet-" + table.text())
                                + which.replace(' ', '-') + ".csv",
                        table.words() + (chosen ? " Set:" + which + "." : ""),
                        () -> CellTableWriter.write(
                                table,
                                new SheetPath(Map.of("set", set.name())),
                                sheet,
                                build.notices(),
                                Csv.MEDIA_TYPE)));
            }
        }
        files.add(new BookFile(
                "design.json",
                "the document with everything filled in, to post again",
                () -> readable(json.get("document").toString())));
        files.add(new BookFile("build.json", "every number of the build", () -> readable(json.toString())));
        files.add(0, BookFile.text(BookIndex.NAME, "this page", () -> BookIndex.write(build, files)));
        return files;
    }

    private static byte[] readable(String json) {
        try {
            return IndentedJson.of(json).getBytes(StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The files as one archive. */
    static byte[] zip(Document document) {
        Archive archive = new Archive();
        for (BookFile file : of(document)) {
            archive.addBytes(file.name(), file.content().get());
        }
        return archive.toBytes();
    }
}
