package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.orbwright.fixture.Designs;

/** The findings of one code in a design's sheet. */
final class Findings {
    private static final int STATIONS = 9;

    private Findings() {}

    static Answer sheet(Designs design) {
        return SheetCalculator.sheet(design.document(), STATIONS);
    }

    static List<Finding> of(FindingCode code, Designs design) {
        return sheet(design).findings().stream().filter(f -> f.code() == code).toList();
    }

    static void assertAbsent(FindingCode code, Designs design) {
        assertEquals(List.of(), of(code, design));
    }

    /** The first finding of the code, which has to say all of the given numbers and words. */
    static void assertFound(FindingCode code, Finding.Severity severity, String field, Designs design, String... says) {
        List<Finding> found = of(code, design);
        assertTrue(!found.isEmpty(), code + " is found");
        Finding finding = found.get(0);
        assertEquals(severity, finding.severity());
        assertEquals(field, finding.field());
        for (String words : says) {
            assertTrue(finding.message().contains(words), () -> finding.message() + " says " + words);
        }
        assertTrue(finding.message().endsWith("."), finding.message());
    }
}
