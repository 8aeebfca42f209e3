package org.orbwright.api.command;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.orbwright.api.SweepWriter;
import org.orbwright.explore.Sweep;

/**
 * A slice of a sweep as a file of CSV. All slices have equally many rows, give or take one. Rows are computed on all
 * cores and written in order.
 *
 * <p>A file that is there already is gone on with: whole lines are kept, what stands after the last end of a line is
 * cut off, and the rows that are missing are added. No line has an end of a line within a cell.
 */
final class SweepSlice {
    /** Rows computed side by side and written at once: a fraction of a second's work. */
    private static final int BLOCK = 2000;

    private final Sweep sweep;
    private final long first;
    private final long end;

    /**
     * A slice.
     *
     * @param index from 0 to below slices
     * @param slices from 1
     */
    SweepSlice(Sweep sweep, int index, int slices) {
        this.sweep = sweep;
        this.first = start(sweep.size(), index, slices);
        this.end = start(sweep.size(), index + 1, slices);
    }

    private static long start(long size, long index, long slices) {
        return size / slices * index + Math.min(index, size % slices);
    }

    /** Number of rows. */
    long rows() {
        return end - first;
    }

    /**
     * Writes the rows that the file has not got yet.
     *
     * @param progress is told how many rows the file has
     * @throws IOException if the file cannot be written to, or holds something else
     */
    void write(Path file, LongConsumer progress) throws IOException {
        try (FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            long done = lines(file, channel) - 1;
            if (done > rows()) {
                throw new IOException(file + " has " + done + " rows, and the slice " + rows());
            }
            if (done < 0) {
                append(channel, SweepWriter.heading(sweep));
                done = 0;
            }
            progress.accept(done);
            while (done < rows()) {
                long from = first + done;
                long to = Math.min(end, from + BLOCK);
                append(
                        channel,
                        LongStream.range(from, to)
                                .parallel()
                                .mapToObj(number -> SweepWriter.line(
                                        sweep.row(number), sweep.outputs().size()))
                                .collect(Collectors.joining()));
                done = to - first;
                progress.accept(done);
            }
        }
    }

    /** Number of whole lines; what follows them is cut off, and the channel stands there. */
    private long lines(Path file, FileChannel channel) throws IOException {
        byte[] heading = SweepWriter.heading(sweep).getBytes(StandardCharsets.UTF_8);
        long lines = 0;
        long whole = 0;
        long at = 0;
        try (var bytes = new BufferedInputStream(Files.newInputStream(file))) {
            for (int next = bytes.read(); next >= 0; next = bytes.read()) {
                if (at < heading.length && next != heading[(int) at]) {
                    throw new IOException(file + " has other columns than the sweep. Name another folder.");
                }
                at++;
                if (next == '\n') {
                    lines++;
                    whole = at;
                }
            }
        }
        channel.truncate(whole);
        channel.position(whole);
        return lines;
    }

    private static void append(FileChannel channel, String text) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
    }
}
