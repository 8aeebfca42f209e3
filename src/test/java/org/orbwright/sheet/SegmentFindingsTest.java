package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.sheet.Finding.Severity.NOTE;
import static org.orbwright.sheet.Finding.Severity.STOP;
import static org.orbwright.sheet.Finding.Severity.WARN;
import static org.orbwright.sheet.Findings.assertAbsent;
import static org.orbwright.sheet.Findings.assertFound;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.fixture.Designs;
import org.orbwright.source.Source;

@Source(value = HAND, text = "a square's segments have the base of its side and legs of side / sqrt 2")
class SegmentFindingsTest {
    @Nested
    class BlankTooShort {
        private final Designs cube = Designs.of("cube").saw(3, 10);

        @Test
        @DisplayName("a cube's segment of 200 mm and two end trims of 10 mm need 220 mm")
        void found() {
            assertFound(
                    FindingCode.BLANK_TOO_SHORT,
                    STOP,
                    "/blank/length",
                    cube.blank(219.9),
                    "A blank of 219.9 mm",
                    "segment A of the square",
                    "needs 220 mm");
        }

        @Test
        void absentForABlankThatIsJustLongEnough() {
            assertAbsent(FindingCode.BLANK_TOO_SHORT, cube.blank(220));
            assertFound(FindingCode.BLANK_TOO_SHORT, STOP, "/blank/length", cube.blank(219.9999));
        }

        @Test
        @DisplayName("at 90 degrees a stick is as long as the base distance: 100 + 2 x 10 = 120 mm")
        void sticks() {
            Designs sticks = cube.bands(90, Designs.widths(50.0, 60.0, null));
            assertAbsent(FindingCode.BLANK_TOO_SHORT, sticks.blank(120));
            assertFound(
                    FindingCode.BLANK_TOO_SHORT, STOP, "/blank/length", sticks.blank(119.99), "119.99 mm", "120 mm");
        }
    }

    @Nested
    class SmallSegment {
        @Test
        @DisplayName("a cube of 70 mm has legs of 70 / sqrt 2 = 49.5 mm")
        void found() {
            assertFound(
                    FindingCode.SMALL_SEGMENT,
                    WARN,
                    "/size/value",
                    Designs.of("cube").acrossFlats(70),
                    "Segment A of the square panels",
                    "only 49.5 mm",
                    "jig");
        }

        @Test
        @DisplayName("absent where the shortest side is 50 mm: a cube of 50 sqrt 2 mm")
        void limit() {
            Designs cube = Designs.of("cube");
            double edge = 50 * Math.sqrt(2);
            assertAbsent(FindingCode.SMALL_SEGMENT, cube.edge(edge * (1 + 1e-12)));
            assertFound(FindingCode.SMALL_SEGMENT, WARN, "/size/value", cube.edge(edge * (1 - 1e-12)));
        }

        @Test
        @Source(CONTRACT)
        void saidOnceForBothHandsOfASegment() {
            Designs kites = Designs.of("deltoidal-hexecontahedron").bands(90, Designs.widths(3.0, null));
            assertEquals(2, Findings.of(FindingCode.SMALL_SEGMENT, kites).size(), "one for each kind of segment");
        }
    }

    @Nested
    @Source(CONTRACT)
    class NoHalves {
        @ParameterizedTest(name = "{0}: {1} panels have {2} segments")
        @CsvSource({
            "dodecahedron, pentagon, 5",
            "icosahedron, triangle, 3",
            "pentagonal-icositetrahedron, pentagon, 5",
            "truncated-icosahedron, pentagon, 5"
        })
        void found(String solid, String face, int sides) {
            assertFound(
                    FindingCode.NO_HALVES,
                    NOTE,
                    "/solid",
                    Designs.of(solid),
                    "The " + face + " panels have " + sides + " segments");
        }

        @ParameterizedTest
        @ValueSource(strings = {"cube", "truncated-octahedron", "rhombic-dodecahedron", "deltoidal-hexecontahedron"})
        void absentForAnEvenNumberOfSides(String solid) {
            assertAbsent(FindingCode.NO_HALVES, Designs.of(solid));
        }
    }
}
