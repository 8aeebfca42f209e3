package org.orbwright.api.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file of keys that goes away, comes back, or may be written by everybody. */
class ApiKeysTest {
    /** The SHA-256 of "abc" (FIPS 180-2, B.1). */
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    @TempDir
    Path folder;

    /** What is logged. */
    private static final class Lines extends Handler {
        private final List<String> told = new CopyOnWriteArrayList<>();

        @Override
        public void publish(LogRecord entry) {
            told.add(entry.getMessage());
        }

        @Override
        public void flush() {
            // Nothing is held back.
        }

        @Override
        public void close() {
            // Nothing is open.
        }

        long with(String words) {
            return told.stream().filter(line -> line.contains(words)).count();
        }
    }

    @Test
    void aMissingFileKeepsItsKeysUntilItIsBack() throws Exception {
        Path file = Files.writeString(folder.resolve("keys"), "bench " + ABC + "\n");
        ApiKeys keys = new ApiKeys(file);
        Files.delete(file);
        for (int look = 0; look < 2; look++) {
            Thread.sleep(1100);
            assertEquals(Optional.of("bench"), keys.nameOf("abc"));
        }
        Files.writeString(file, "other " + ABC + "\n");
        Thread.sleep(1100);
        assertEquals(Optional.of("other"), keys.nameOf("abc"));
    }

    @Test
    void aFileThatEverybodyMayWriteIsToldOf() throws Exception {
        assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
        Path file = Files.writeString(folder.resolve("keys"), "bench " + ABC + "\n");
        Lines lines = new Lines();
        Logger log = Logger.getLogger(ApiKeys.class.getName());
        log.addHandler(lines);
        try {
            new ApiKeys(file);
            assertEquals(0, lines.with("may write"));
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-rw-"));
            new ApiKeys(file);
            assertTrue(lines.with("may write") == 1);
        } finally {
            log.removeHandler(lines);
        }
    }
}
