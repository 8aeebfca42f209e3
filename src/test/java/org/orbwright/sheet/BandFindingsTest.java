package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.sheet.Finding.Severity.NOTE;
import static org.orbwright.sheet.Finding.Severity.STOP;
import static org.orbwright.sheet.Finding.Severity.WARN;
import static org.orbwright.sheet.Findings.assertAbsent;
import static org.orbwright.sheet.Findings.assertFound;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.fixture.Designs;
import org.orbwright.source.Source;

/**
 * Cubes 200 mm across flats with a sphere of radius 98: it ends at x = 98 / sqrt 2 = 69.30 at the middle of an edge and
 * at x = 98 / sqrt 3 = 56.58 at a corner, of a base distance of 100.
 */
@Source(
        value = HAND,
        text = "a sphere of 98 mm in a cube of 200 mm ends at 98 / sqrt 2 at the middle of an edge, at 98 / sqrt 3 "
                + "at a corner")
class BandFindingsTest {
    private static final double RADIUS = 98;
    private static final Designs CUBE = Designs.of("cube").thickness(60);
    private static final String RIM = "/laminations/0/bands/0/width";

    private static Designs rim(double width) {
        return CUBE.bands(Designs.widths(width, null));
    }

    /** A rim that reads the same from both edges, so that nothing is said of an inverted set. */
    private static Designs bothRims(double width) {
        return CUBE.bands(List.of(
                Designs.band("black walnut", width),
                Designs.band("sugar maple", null),
                Designs.band("black walnut", width)));
    }

    /** What can be seen of a rim at the middle of an edge. */
    private static double seen(double width) {
        return RADIUS * (Math.PI / 4 - Math.asin((100 - width) / RADIUS));
    }

    /** The rim of which so much can be seen. */
    private static double rimSeen(double visible) {
        return 100 - RADIUS * Math.sin(Math.PI / 4 - visible / RADIUS);
    }

    @Nested
    class Vanishes {
        @Test
        @DisplayName("a rim of 30 mm, where the first 30.7 mm are lost")
        void found() {
            assertFound(
                    FindingCode.BAND_VANISHES,
                    STOP,
                    RIM,
                    rim(30),
                    "Band 1 (black walnut, 30 mm wide) vanishes",
                    "upright segments of the square panels");
        }

        @Test
        void absentWhereAThousandthOfAMillimetreCanBeSeen() {
            assertAbsent(FindingCode.BAND_VANISHES, rim(rimSeen(1.001e-3)));
            assertFound(FindingCode.BAND_VANISHES, STOP, RIM, rim(rimSeen(0.999e-3)));
        }

        @Test
        @Source(CONTRACT)
        void aBandOnTheTipVanishesFromTheInvertedSet() {
            assertFound(
                    FindingCode.BAND_VANISHES,
                    STOP,
                    "/laminations/0/bands/1/width",
                    CUBE.copies(2).bands(Designs.widths(null, 30.0)),
                    "Band 2 (sugar maple, 30 mm wide)",
                    "inverted segments");
        }

        @Test
        @Source(CONTRACT)
        void aSingleSphereHasNoInvertedSetToJudge() {
            assertAbsent(FindingCode.BAND_VANISHES, CUBE.bands(Designs.widths(null, 30.0)));
        }

        @Test
        @Source(CONTRACT)
        void whereBandsReadTheSameFromBothEdgesItIsSaidOnce() {
            assertEquals(1, Findings.of(FindingCode.BAND_VANISHES, bothRims(30)).size());
            assertFound(FindingCode.BAND_VANISHES, STOP, RIM, bothRims(30), " in the segments of the square panels");
        }
    }

    @Nested
    class Thinned {
        @Test
        @DisplayName("a rim of 40 mm: 98 (45 deg - asin(60 / 98)) = 12.4 mm can be seen")
        void found() {
            assertEquals(12.4, seen(40), 0.005);
            assertFound(
                    FindingCode.BAND_THINNED,
                    WARN,
                    RIM,
                    rim(40),
                    "Band 1 (black walnut, 40 mm wide)",
                    "below half",
                    "12.4 mm");
        }

        @Test
        void absentWhereJustHalfOfTheWidthCanBeSeen() {
            double low = 40;
            double high = 100;
            while (high - low > 1e-12) {
                double middle = (low + high) / 2;
                low = seen(middle) < middle / 2 ? middle : low;
                high = seen(middle) < middle / 2 ? high : middle;
            }
            assertAbsent(FindingCode.BAND_THINNED, rim(high + 1e-7));
            assertFound(FindingCode.BAND_THINNED, WARN, RIM, rim(high - 1e-7));
        }

        @Test
        @Source(CONTRACT)
        void aBandThatVanishesIsNotCalledThinnedToo() {
            assertAbsent(FindingCode.BAND_THINNED, bothRims(30));
        }
    }

    @Nested
    @DisplayName("ends before the corner: radius 135, 4.5 mm are lost at the middle of an edge, 22.1 mm at a corner")
    class EndsBeforeCorner {
        private final Designs large = CUBE.diameter(270.0);
        private final double lostAtCorner = 100 - 135 / Math.sqrt(3);

        private Designs largeRim(double width) {
            return large.bands(Designs.widths(width, null));
        }

        @Test
        void aRimOf20Millimetres() {
            // A flat of radius sqrt(135^2 - 100^2) = 90.69 stays; from there to 135 / sqrt 2 = 95.46 it is round.
            double flat = Math.sqrt(135 * 135 - 100 * 100);
            double seen = flat - 80 + 135 * (Math.PI / 4 - Math.asin(flat / 135));
            assertFound(
                    FindingCode.BAND_ENDS_BEFORE_CORNER,
                    NOTE,
                    RIM,
                    largeRim(20),
                    "Band 1 (black walnut, 20 mm wide)",
                    large.build().say(seen) + " wide at the edge middle",
                    "before the corners");
        }

        @Test
        void absentWhereAThousandthOfAMillimetreCanBeSeenAtTheCorner() {
            assertAbsent(FindingCode.BAND_ENDS_BEFORE_CORNER, largeRim(lostAtCorner + 1.001e-3));
            assertFound(FindingCode.BAND_ENDS_BEFORE_CORNER, NOTE, RIM, largeRim(lostAtCorner + 0.999e-3));
        }

        @Test
        @Source(CONTRACT)
        void notSaidOfTiltedBands() {
            assertAbsent(FindingCode.BAND_ENDS_BEFORE_CORNER, large.bands(45, Designs.widths(20.0, 40.0, null)));
        }

        @Test
        @Source(CONTRACT)
        void notSaidOfABandThatIsThinned() {
            assertFound(FindingCode.BAND_THINNED, WARN, RIM, bothRims(43));
            assertAbsent(FindingCode.BAND_ENDS_BEFORE_CORNER, bothRims(43));
        }
    }

    @Nested
    @DisplayName(
            "lamination wider: at 45 degrees a segment of base 200 and height 100 extends over 200 / sqrt 2 = 141.42")
    @Source(value = HAND, text = "half a square of 200 mm at 45 degrees reaches over 200 / sqrt 2")
    class LaminationWider {
        private final double extent = 200 / Math.sqrt(2);

        private Designs bands(double total) {
            return CUBE.bands(45, Designs.widths(70.0, total - 70));
        }

        @Test
        void bandsOf150MillimetresLose8Point58() {
            assertFound(
                    FindingCode.LAMINATION_WIDER,
                    NOTE,
                    "/laminations/0/bands",
                    bands(150),
                    "square lamination",
                    "8.58 mm wider");
        }

        @Test
        void absentWhereTheBandsJustCoverTheSegment() {
            assertAbsent(FindingCode.LAMINATION_WIDER, bands(extent));
            assertAbsent(FindingCode.LAMINATION_WIDER, bands(extent + 0.999e-3));
            assertFound(FindingCode.LAMINATION_WIDER, NOTE, "/laminations/0/bands", bands(extent + 1.001e-3));
        }

        @Test
        @Source(CONTRACT)
        void absentForARestBandAndForStraightBands() {
            assertAbsent(FindingCode.LAMINATION_WIDER, CUBE.bands(45, Designs.widths(70.0, null)));
            assertAbsent(FindingCode.LAMINATION_WIDER, CUBE.bands(Designs.widths(70.0, 30.009)));
        }
    }
}
