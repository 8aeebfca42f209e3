package org.orbwright.api.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.orbwright.design.RequestSketch;
import org.orbwright.document.Document;
import org.orbwright.document.ExploreRequest;
import org.orbwright.document.ExploreRequest.VaryRequest;
import org.orbwright.document.Section;
import org.orbwright.explore.Sweep;

/** Slices against the whole, and files that were cut anywhere against one that was not. */
class SweepSliceTest {
    @TempDir
    Path folder;

    private static Sweep sweep() {
        VaryRequest sizes = new VaryRequest("/sphere/diameter", null, 100.0, 900.0, 7);
        VaryRequest kerfs = new VaryRequest("/saw/kerf", List.of(2.0, 3.0), null, null, null);
        ExploreRequest explore = new ExploreRequest(List.of(sizes, kerfs), List.of("/sphere/thinnestWall"));
        return Sweep.of(Document.of(RequestSketch.sketch().request()).with(Section.EXPLORE, explore), 1000);
    }

    private byte[] rows(int index, int slices) throws IOException {
        Path file = folder.resolve(index + "-of-" + slices);
        new SweepSlice(sweep(), index, slices).write(file, done -> {});
        return Files.readAllBytes(file);
    }

    @Test
    void aFileThatWasCutAnywhereBecomesTheWholeOne() throws IOException {
        byte[] whole = rows(0, 1);
        Path cut = folder.resolve("cut");
        for (int length = 0; length <= whole.length; length += 13) {
            Files.write(cut, Arrays.copyOf(whole, length));
            new SweepSlice(sweep(), 0, 1).write(cut, done -> {});
            assertEquals(new String(whole, StandardCharsets.UTF_8), Files.readString(cut));
        }
    }

    @Test
    void slicesAreTheWhole() throws IOException {
        String whole = new String(rows(0, 1), StandardCharsets.UTF_8);
        StringBuilder joined = new StringBuilder(whole.substring(0, whole.indexOf('\n') + 1));
        for (int i = 0; i < 4; i++) {
            String slice = new String(rows(i, 4), StandardCharsets.UTF_8);
            joined.append(slice.substring(slice.indexOf('\n') + 1));
        }
        assertEquals(15, whole.lines().count());
        assertEquals(whole, joined.toString());
    }
}
