package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.orbwright.api.wire.ProblemKind;
import org.orbwright.fixture.PlainWords;

/** A caller who is refused reads plain words. */
class ProblemWordsTest {
    @ParameterizedTest
    @EnumSource
    void theTitleAndTheHelpArePlain(ProblemKind kind) {
        assertEquals(List.of(), PlainWords.faults(kind + " title", kind.title()));
        assertEquals(List.of(), PlainWords.faults(kind + " help", kind.help()));
    }
}
