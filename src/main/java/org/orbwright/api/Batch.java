package org.orbwright.api;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.orbwright.api.guard.ProblemMappers;
import org.orbwright.api.wire.AnswerJson;
import org.orbwright.api.wire.Limits;
import org.orbwright.api.wire.Problem;
import org.orbwright.api.wire.ProblemKind;
import org.orbwright.api.wire.RequestException;
import org.orbwright.api.wire.RequestReader;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.document.Document;
import org.orbwright.sheet.Answer;

/**
 * Documents that come in line by line, and go out as answers or problems in the same order. Lines are read only as fast
 * as answers are taken. A line that is wrong is answered with its problem and does not stop the rest; an empty line is
 * skipped, but counted.
 */
public final class Batch {
    private static final int BUFFER = 1 << 16;

    private final InputStream lines;
    private final RequestReader reader;
    private final Limits limits;
    private final long most;
    private final String part;
    private final Function<Document, Answer> answer;

    private long lineEnd;
    private long taken;
    private int number;
    private long problems;
    private boolean ended;

    /**
     * A batch.
     *
     * @param lines a document a line
     * @param most bytes of all lines together
     * @param part the name of the answers
     * @param answer what is answered to a document
     */
    public Batch(
            InputStream lines,
            RequestReader reader,
            Limits limits,
            long most,
            String part,
            Function<Document, Answer> answer) {
        this.lines = new BufferedInputStream(new InTime(lines), BUFFER);
        this.reader = reader;
        this.limits = limits;
        this.most = most;
        this.part = part;
        this.answer = answer;
    }

    /** Fails when bytes come in, but no line with a document is complete in time. */
    private final class InTime extends FilterInputStream {
        InTime(InputStream lines) {
            super(lines);
        }

        @Override
        public int read(byte[] bytes, int from, int length) throws IOException {
            int read = super.read(bytes, from, length);
            if (System.nanoTime() - lineEnd > 0) {
                String detail = "No line was complete after "
                        + limits.lineTime().toSeconds() + " s, empty ones aside. The batch ends here.";
                throw new RequestException(ProblemKind.BODY_TOO_SLOW, detail, List.of());
            }
            return read;
        }
    }

    private void expectLine() {
        lineEnd = System.nanoTime() + limits.lineTime().toNanos();
    }

    /** Answers every line. */
    public void answer(OutputStream body, BooleanSupplier left) throws IOException {
        expectLine();
        while (!ended && !left.getAsBoolean()) {
            ByteArrayOutputStream line = new ByteArrayOutputStream();
            boolean whole;
            try {
                whole = readLine(line);
            } catch (RequestException e) {
                write(body, problem(e));
                ended = true;
                break;
            }
            if (!whole) {
                write(body, problem(RequestReader.tooLarge("The line", limits.body())));
                expectLine();
            } else if (!line.toString(StandardCharsets.ISO_8859_1).isBlank()) {
                write(body, answer(line.toByteArray()));
                expectLine();
            }
            if (lines.available() == 0) {
                // Nothing waits to be read: the caller may wait for this line before sending the next.
                body.flush();
            }
        }
        body.flush();
    }

    /** How many lines were answered with a problem so far. */
    public long problems() {
        return problems;
    }

    private record Line(String name, Record content) {}

    private Line answer(byte[] line) {
        try {
            return new Line(part, answer.apply(reader.readCounted(line)));
        } catch (RequestException e) {
            return problem(e);
        } catch (ImpossibleDesignException e) {
            return problem(Problem.of(e, instance()));
        } catch (CancellationException e) {
            // Whoever interrupts a line means the batch: no further line is worked on.
            throw e;
        } catch (RuntimeException e) {
            return problem(ProblemMappers.logged(e, instance()));
        }
    }

    private Line problem(RequestException e) {
        return problem(Problem.of(e, instance()));
    }

    private Line problem(Problem problem) {
        problems++;
        return new Line("problem", problem);
    }

    private String instance() {
        return BatchResource.PATH + "#line-" + number;
    }

    private void write(OutputStream body, Line line) throws IOException {
        body.write(("{\"line\":" + number + ",\"" + line.name() + "\":").getBytes(StandardCharsets.UTF_8));
        body.write(AnswerJson.write(line.content()));
        body.write("}\n".getBytes(StandardCharsets.UTF_8));
    }

    /** Reads to the end of the line; false if it is longer than a body may be, of which the rest is passed over. */
    private boolean readLine(ByteArrayOutputStream line) throws IOException {
        number++;
        int next = lines.read();
        while (next >= 0 && next != '\n') {
            taken++;
            if (line.size() <= limits.body()) {
                line.write(next);
            }
            if (taken > most) {
                String detail = "The batch has more than " + most
                        + " bytes, which is the most that is accepted; it ends with this line.";
                throw new RequestException(ProblemKind.BODY_TOO_LARGE, detail, List.of());
            }
            next = lines.read();
        }
        taken++;
        ended = next < 0;
        return line.size() <= limits.body();
    }
}
