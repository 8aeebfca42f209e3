package org.orbwright.api.command;

import io.quarkus.runtime.QuarkusApplication;
import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import org.orbwright.api.Batch;
import org.orbwright.api.BatchResource;
import org.orbwright.api.wire.Limits;
import org.orbwright.api.wire.RequestReader;

/**
 * The command {@code batch [--answer=PART] [DESIGNS [ANSWERS]]}: answers designs, a line each, as {@code POST
 * /v1/batch} does, and ends. It listens at no port. Designs come from the file DESIGNS, or from standard input; answers
 * go to the file ANSWERS, or to standard output. The file of answers gets its name when it is whole, so that a run that
 * was cut short leaves none, and can be done again.
 *
 * <p>The exit code is 0 if every design was answered, 10 if at least one line was answered with a problem, and 11 if
 * the arguments are wrong, or if designs cannot be read or answers not be written to their end. Lower ones are the Java
 * machine's own, such as 1 where it cannot start.
 */
public final class BatchCommand implements QuarkusApplication {
    static final String NAME = "batch";

    private static final int ANSWERED = 0;
    private static final int PROBLEMS = 10;
    private static final int FAILED = 11;
    private static final String OPTION = "--answer=";

    private final RequestReader reader;
    private final Limits limits;

    BatchCommand(RequestReader reader, Limits limits) {
        this.reader = reader;
        this.limits = limits;
    }

    @Override
    public int run(String... arguments) {
        Optional<Words> words = Words.of(arguments);
        if (words.isEmpty()) {
            System.err.println("Usage: batch [--answer=PART] [DESIGNS [ANSWERS]] (files with a JSON document a line;"
                    + " PART is one of: " + String.join(", ", BatchResource.PARTS.keySet()) + ")");
            return FAILED;
        }
        try {
            return answer(words.get());
        } catch (IOException e) {
            System.err.println("The batch ended early: " + e);
            return FAILED;
        }
    }

    /** What was asked for; a file that is left out is null. */
    private record Words(String part, Path designs, Path answers) {

        static Optional<Words> of(String... arguments) {
            List<String> rest = List.of(arguments).subList(1, arguments.length);
            String part = "sheet";
            if (!rest.isEmpty() && rest.get(0).startsWith(OPTION)) {
                part = rest.get(0).substring(OPTION.length());
                rest = rest.subList(1, rest.size());
            }
            if (!BatchResource.PARTS.containsKey(part) || rest.size() > 2 || isOption(rest)) {
                return Optional.empty();
            }
            return Optional.of(new Words(part, file(rest, 0), file(rest, 1)));
        }

        private static boolean isOption(List<String> names) {
            return names.stream().anyMatch(name -> name.isEmpty() || name.startsWith("-"));
        }

        private static Path file(List<String> names, int index) {
            return index < names.size() ? Path.of(names.get(index)) : null;
        }
    }

    private int answer(Words words) throws IOException {
        if (words.designs() == null) {
            return answer(words, System.in);
        }
        try (InputStream lines = Files.newInputStream(words.designs())) {
            return answer(words, lines);
        }
    }

    private int answer(Words words, InputStream lines) throws IOException {
        if (words.answers() == null) {
            return answer(words.part(), lines, new StandardOutput());
        }
        Path unfinished = words.answers().resolveSibling(words.answers().getFileName() + ".part");
        int code;
        try (OutputStream answers = Files.newOutputStream(unfinished)) {
            code = answer(words.part(), lines, answers);
        }
        Files.move(unfinished, words.answers(), StandardCopyOption.REPLACE_EXISTING);
        return code;
    }

    private int answer(String part, InputStream lines, OutputStream answers) throws IOException {
        Batch batch = new Batch(lines, reader, limits, Long.MAX_VALUE, part, BatchResource.PARTS.get(part));
        OutputStream buffered = new BufferedOutputStream(answers);
        batch.answer(buffered, () -> false);
        buffered.flush();
        return batch.problems() == 0 ? ANSWERED : PROBLEMS;
    }

    /** Standard output, but with its failures, which a print stream only remembers. */
    private static final class StandardOutput extends FilterOutputStream {
        StandardOutput() {
            super(System.out);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            System.out.write(bytes, from, length);
            if (System.out.checkError()) {
                throw new IOException("standard output takes no more");
            }
        }
    }
}
