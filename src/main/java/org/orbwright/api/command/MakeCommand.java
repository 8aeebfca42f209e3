package org.orbwright.api.command;

import io.quarkus.runtime.QuarkusApplication;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.orbwright.api.BuildFiles;
import org.orbwright.api.command.Terminal.UnreadableSource;
import org.orbwright.api.wire.DesignLibrary;
import org.orbwright.api.wire.Limits;
import org.orbwright.api.wire.Problem;
import org.orbwright.api.wire.RequestException;
import org.orbwright.api.wire.RequestReader;
import org.orbwright.book.BookFile;
import org.orbwright.book.BookIndex;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.xml.Xml;

/**
 * The command {@code make [--replace] FILE_OR_NAME FOLDER}: writes all files of a build into a folder, and ends. It
 * listens at no port. The exit code is 0 for a build and 1 for a problem.
 */
public final class MakeCommand implements QuarkusApplication {
    static final String NAME = "make";

    private static final String REPLACE = "--replace";
    private static final String INSTANCE = "/v1/build";
    private static final String MARK = "name=\"generator\" content=\"" + Xml.GENERATOR + "\"";
    /** A file that an index of an earlier build lists. */
    private static final Pattern LISTED = Pattern.compile("href=\"((?:[a-z]+/)?[a-z0-9-]+\\.[a-z0-9]+)\"");

    private final RequestReader reader;
    private final Limits limits;

    MakeCommand(RequestReader reader, Limits limits) {
        this.reader = reader;
        this.limits = limits;
    }

    @Override
    public int run(String... arguments) {
        List<String> words = new ArrayList<>(List.of(arguments));
        if (Terminal.asksForHelp(words)) {
            Terminal.print(help());
            return Terminal.DONE;
        }
        words.remove(NAME);
        boolean replace = words.remove(REPLACE);
        if (words.size() != 2 || words.stream().anyMatch(word -> word.startsWith("-"))) {
            return Terminal.fail(help());
        }
        String source = words.get(0);
        String what = "No build can be made of " + source + ".";
        try {
            List<BookFile> files = BuildFiles.of(Terminal.document(source, reader, limits));
            return write(files, Path.of(words.get(1)), replace);
        } catch (UnreadableSource e) {
            return Terminal.fail(e.getMessage());
        } catch (RequestException e) {
            return Terminal.fail(what, Problem.of(e, INSTANCE));
        } catch (ImpossibleDesignException e) {
            return Terminal.fail(what, Problem.of(e, INSTANCE));
        } catch (IOException | InvalidPathException e) {
            return Terminal.fail("The folder " + words.get(1) + " cannot be written to. Files may be missing.");
        }
    }

    private static int write(List<BookFile> files, Path folder, boolean replace) throws IOException {
        Files.createDirectories(folder);
        Set<String> earlier = earlier(folder);
        if (!isEmpty(folder) && (!replace || earlier.isEmpty())) {
            return Terminal.fail("The folder " + folder + " is not empty, and nothing was written. Name a new folder."
                    + " With " + REPLACE + " a folder with an earlier build is taken too.");
        }
        for (BookFile file : files) {
            Path path = folder.resolve(file.name());
            Files.createDirectories(path.getParent());
            Files.write(path, file.content().get());
            earlier.remove(file.name());
        }
        // A board or a program of an earlier design must not lie beside the new ones.
        for (String name : earlier) {
            Files.deleteIfExists(folder.resolve(name));
        }
        Terminal.print(files.size() + " files are in " + folder + ". Open " + folder.resolve(BookIndex.NAME)
                + " first: it says what is wrong, and lists the files.");
        return Terminal.DONE;
    }

    private static boolean isEmpty(Path folder) throws IOException {
        try (Stream<Path> there = Files.list(folder)) {
            return there.findAny().isEmpty();
        }
    }

    /** The files of an earlier build by its index; none where the index is not one of ours. */
    private static Set<String> earlier(Path folder) throws IOException {
        Set<String> names = new TreeSet<>();
        Path index = folder.resolve(BookIndex.NAME);
        String page = Files.exists(index) ? new String(Files.readAllBytes(index), StandardCharsets.UTF_8) : "";
        if (page.contains(MARK)) {
            names.add(BookIndex.NAME);
            Matcher listed = LISTED.matcher(page);
            while (listed.find()) {
                names.add(listed.group(1));
            }
        }
        return names;
    }

    private static String help() {
        return """
                Usage: make [--replace] FILE_OR_NAME FOLDER

                Writes a whole build as files: paper, lists, pictures, outlines, bodies, program, and the document with
                everything filled in. The page index.html lists them.

                  FILE_OR_NAME  a file with a JSON document, or the name of a worked design
                  FOLDER        a new or empty folder
                  --replace     take a folder with an earlier build, whose files are replaced or deleted
                  --help        print this text

                The exit code is 0 for a build and 1 for a problem.
                Worked designs: %s""".formatted(String.join(", ", DesignLibrary.all().keySet()));
    }
}
