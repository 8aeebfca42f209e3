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
import org.orbwright.quantity.LengthUnit;
import org.orbwright.segment.SegmentPlan.SegmentCut;
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
        /** Hands stay 100 mm away (IEC 62841-3-9); within 162 mm or 6 3/8 in a piece is too small (a radial saw). */
        @Test
        @DisplayName("a cube of 200 mm has legs of 200 / sqrt 2 = 141.42 mm")
        void found() {
            assertFound(
                    FindingCode.SMALL_SEGMENT,
                    WARN,
                    "/size/value",
                    Designs.of("cube"),
                    "Segment A of the square panels",
                    "only 141.42 mm",
                    "never hold it at the blade by hand",
                    "within 162 mm of a blade",
                    "at least 100 mm away",
                    "carrier that clamps it");
        }

        @Test
        @DisplayName("absent where the shortest side is 162 mm: a cube of 162 sqrt 2 mm")
        void hands() {
            Designs cube = Designs.of("cube");
            double edge = 162 * Math.sqrt(2);
            assertAbsent(FindingCode.SMALL_SEGMENT, cube.edge(edge));
            assertFound(FindingCode.SMALL_SEGMENT, WARN, "/size/value", cube.edge(edge * (1 - 1e-9)));
        }

        /** A cube's segments are half as high as the edge; a hold-down presses on a third of that. */
        @Test
        @DisplayName("a pad of 20 mm (common practice, no source) fits on a cube's segments from an edge of 60 mm on")
        void clamps() {
            Designs cube = Designs.of("cube").thickness(12);
            assertFound(FindingCode.SMALL_SEGMENT, WARN, "/size/value", cube.edge(60), "only 42.43 mm");
            assertFound(
                    FindingCode.SMALL_SEGMENT,
                    STOP,
                    "/size/value",
                    cube.edge(59.97),
                    "too small for any clamp",
                    "a pad of at most 19.99 mm",
                    "pads of 20 mm");
        }

        @Test
        @DisplayName("a triangle of 0.573 in is too small for any clamp")
        void inches() {
            assertFound(
                    FindingCode.SMALL_SEGMENT,
                    STOP,
                    "/size/value",
                    Designs.of("icosahedron")
                            .acrossFlats(1)
                            .times(1 / 25.4)
                            .thickness(0.1)
                            .edge(0.573)
                            .in(LengthUnit.IN),
                    "pads of 0.787 in");
        }

        /** Of a long and flat triangle the low side counts, whatever its legs are. */
        @Test
        void theLeastHeightCounts() {
            Designs flat = Designs.of("triakis-tetrahedron").thickness(2);
            SegmentCut segment = SheetCalculator.segments(flat.edge(100).document())
                    .segments()
                    .faces()
                    .get(0)
                    .segments()
                    .get(0);
            double longest = Math.max(segment.base(), Math.max(segment.legLeft(), segment.legRight()));
            double padOfUnit = 4 * segment.area() / (3 * longest * 100);
            assertFound(FindingCode.SMALL_SEGMENT, STOP, "/size/value", flat.edge(19.9 / padOfUnit));
            assertFound(FindingCode.SMALL_SEGMENT, WARN, "/size/value", flat.edge(400));
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
