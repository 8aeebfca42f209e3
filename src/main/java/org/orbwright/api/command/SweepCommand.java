package org.orbwright.api.command;

import io.quarkus.runtime.QuarkusApplication;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.orbwright.api.wire.Limits;
import org.orbwright.api.wire.Problem;
import org.orbwright.api.wire.RequestException;
import org.orbwright.api.wire.RequestReader;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.explore.Sweep;

/**
 * The command {@code sweep DOCUMENT FOLDER [SLICES SLICE]}: writes the rows of a sweep, or of one slice of it, to
 * {@code FOLDER/rows-SLICE.csv}. The same words again go on with a file that was cut short ({@link SweepSlice}). The
 * exit code is 0 where all rows are there, and 11 for a problem; an impossible design is a row.
 */
public final class SweepCommand implements QuarkusApplication {
    static final String NAME = "sweep";

    private static final int DONE = 0;
    private static final int FAILED = 11;
    /** More would run for weeks on one machine. */
    private static final long MOST = 1_000_000_000;

    private final RequestReader reader;
    private final Limits limits;

    SweepCommand(RequestReader reader, Limits limits) {
        this.reader = reader;
        this.limits = limits;
    }

    @Override
    public int run(String... arguments) {
        List<String> words = List.of(arguments);
        boolean sliced = words.size() == 5 && words.subList(3, 5).stream().allMatch(word -> word.matches("[0-9]{1,6}"));
        int slices = sliced ? Integer.parseInt(words.get(3)) : 1;
        int slice = sliced ? Integer.parseInt(words.get(4)) : 0;
        if ((words.size() != 3 && !sliced) || slice >= slices) {
            Terminal.fail("Usage: sweep DOCUMENT FOLDER [SLICES SLICE] (SLICE from 0 to below SLICES)");
            return FAILED;
        }
        try {
            Sweep sweep = Sweep.of(Terminal.document(words.get(1), reader, limits), MOST);
            Path folder = Files.createDirectories(Path.of(words.get(2)));
            SweepSlice rows = new SweepSlice(sweep, slice, slices);
            rows.write(
                    folder.resolve("rows-" + slice + ".csv"),
                    done -> System.err.println(done + " of " + rows.rows() + " rows"));
            return DONE;
        } catch (RequestException e) {
            Terminal.fail("No sweep can be made.", Problem.of(e, NAME));
        } catch (ImpossibleDesignException e) {
            Terminal.fail("No sweep can be made.", Problem.of(e, NAME));
        } catch (Terminal.UnreadableSource | IOException e) {
            Terminal.fail("The sweep ended early: " + e.getMessage());
        }
        return FAILED;
    }
}
