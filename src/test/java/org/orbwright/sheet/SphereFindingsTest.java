package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.sheet.Finding.Severity.STOP;
import static org.orbwright.sheet.Finding.Severity.WARN;
import static org.orbwright.sheet.Findings.assertAbsent;
import static org.orbwright.sheet.Findings.assertFound;
import static org.orbwright.sheet.Findings.sheet;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.REFERENCE;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.design.SizeBy;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.source.Source;

/** Cubes 200 mm across flats: the corner of the hollow is (100 - t) sqrt 3 from the centre. */
@Source(
        value = HAND,
        text = "Pythagoras in a cube of 200 mm: corners of the hollow at (100 - t) sqrt 3, seams closed inside (100 "
                + "- f) sqrt 2")
class SphereFindingsTest {
    private static final Designs CUBE = Designs.of("cube").diameter(180.0).minimumWall(5);
    private static final String THICKNESS = "/panel/thickness";
    private static final String DIAMETER = "/sphere/diameter";

    @Nested
    class BreakThrough {
        /** Panels whose hollow just touches a sphere of radius 90 with its corners. */
        private final double touches = 100 - 90 / Math.sqrt(3);

        @Test
        @DisplayName("panels of 40: the hollow's corner is at 60 sqrt 3 = 103.92, beyond a radius of 90 by 13.92")
        void found() {
            assertFound(
                    FindingCode.BREAK_THROUGH,
                    STOP,
                    THICKNESS,
                    CUBE.thickness(40),
                    "The 180 mm sphere breaks through",
                    "corners of the square panels",
                    "13.92 mm",
                    "at least 50.93 mm",
                    "wanted 5 mm");
        }

        @Test
        @DisplayName("panels of 8: the hollow's faces are at 92, beyond a radius of 90 by 2; its corners at 159.35")
        void foundWhereNothingIsLeft() {
            assertFound(
                    FindingCode.BREAK_THROUGH,
                    STOP,
                    THICKNESS,
                    CUBE.thickness(8),
                    "Nothing of the 180 mm sphere is left in the square panels",
                    "2 mm beyond the sphere at their middle and 69.35 mm at their corners",
                    "at least 50.93 mm");
        }

        @Test
        void absentJustOnTheGoodSide() {
            assertAbsent(FindingCode.BREAK_THROUGH, CUBE.thickness(touches + 1e-9));
            assertFound(FindingCode.BREAK_THROUGH, STOP, THICKNESS, CUBE.thickness(touches - 1e-9));
        }

        @Test
        @Source(CONTRACT)
        void insteadOfAWallThatIsTooThin() {
            assertAbsent(FindingCode.WALL_BELOW_MINIMUM, CUBE.thickness(40));
        }
    }

    @Nested
    class WallBelowMinimum {
        /** Panels that leave a wall of just 5 mm at the corners. */
        private final double justEnough = 100 - 85 / Math.sqrt(3);

        @Test
        @DisplayName("panels of 50: the corner is at 50 sqrt 3 = 86.6, wall 3.4; 100 - 85 / sqrt 3 = 50.93 would do")
        void found() {
            assertFound(
                    FindingCode.WALL_BELOW_MINIMUM,
                    WARN,
                    THICKNESS,
                    CUBE.thickness(50),
                    "Only 3.39 mm of wall is left at the corners of the square panels",
                    "at least 50.93 mm",
                    "wanted 5 mm");
        }

        @Test
        void absentAtExactlyTheMinimum() {
            assertAbsent(FindingCode.WALL_BELOW_MINIMUM, CUBE.thickness(justEnough));
            assertFound(FindingCode.WALL_BELOW_MINIMUM, WARN, THICKNESS, CUBE.thickness(justEnough - 2e-3));
        }

        @Test
        @Source(INVARIANT)
        void absentAtTheThicknessThatTheServiceAdvises() {
            double advised = sheet(CUBE).sphere().smallestThickness();
            assertAbsent(FindingCode.WALL_BELOW_MINIMUM, CUBE.thickness(advised));
        }

        @Test
        @DisplayName("where a flat stays the panel is the wall: panels of 65, a wall of 66 wanted")
        void atTheMiddleOfAFlat() {
            Designs flat = CUBE.thickness(65).diameter(280.0).minimumWall(66);
            assertFound(
                    FindingCode.WALL_BELOW_MINIMUM,
                    WARN,
                    THICKNESS,
                    flat,
                    "Only 65 mm of wall is left at the middle of the square panels",
                    "at least 66 mm");
            assertAbsent(FindingCode.WALL_BELOW_MINIMUM, flat.thickness(66));
        }
    }

    @Nested
    class SeamsOpen {
        private final Designs thick = CUBE.thickness(60);

        @Test
        @DisplayName("a land of 40: joint distance 60, seams closed inside 120 sqrt 2 = 169.71; 36.36 would do")
        void found() {
            assertFound(
                    FindingCode.SEAMS_OPEN,
                    STOP,
                    "/panel/land",
                    thick.land(40),
                    "land of 40 mm",
                    "169.7 mm",
                    "sphere is 180 mm",
                    "at most 36.36 mm");
        }

        @Test
        void absentAtExactlyTheLargestLand() {
            double largest = 100 - 90 / Math.sqrt(2);
            assertEquals(largest, sheet(thick).sphere().land().largestForDiameter(), 1e-9);
            assertAbsent(FindingCode.SEAMS_OPEN, thick.land(largest));
            assertFound(FindingCode.SEAMS_OPEN, STOP, "/panel/land", thick.land(largest + 3e-3));
        }

        @Test
        void absentForASphereAtTheSeams() {
            assertAbsent(FindingCode.SEAMS_OPEN, CUBE.diameter(200 * Math.sqrt(2)));
        }
    }

    @Nested
    class FlatsLeft {
        @Test
        @DisplayName("radius 101 against faces at 100: flats of 28.35 in diameter")
        void found() {
            assertFound(
                    FindingCode.FLATS_LEFT,
                    WARN,
                    DIAMETER,
                    CUBE.diameter(202.0),
                    "A flat of 28.35 mm",
                    "every square panel",
                    "sphere of 202 mm",
                    "200 mm, which is twice the face distance");
        }

        @Test
        void absentAtExactlyTheFaceDistance() {
            assertAbsent(FindingCode.FLATS_LEFT, CUBE.diameter(200.0));
            assertFound(FindingCode.FLATS_LEFT, WARN, DIAMETER, CUBE.diameter(200.01));
        }

        @Test
        @DisplayName(
                "only on the faces that are low enough: a truncated cube 200 over its octagons has triangles at 139")
        @Source(
                value = REFERENCE,
                text = "mpmath 1.3, 40 digits, src/test/python/solids.py: by the trigonometry of one corner")
        void someFaceKinds() {
            Designs solid = Designs.of("truncated-cube").diameter(210.0);
            assertEquals(1, Findings.of(FindingCode.FLATS_LEFT, solid).size());
            assertFound(FindingCode.FLATS_LEFT, WARN, DIAMETER, solid, "octagon");
        }
    }

    @Nested
    class AllowanceNotMet {
        @Test
        @DisplayName("radius 99 under faces at 100 turns 1 mm away, less than 2")
        void found() {
            assertFound(
                    FindingCode.ALLOWANCE_NOT_MET,
                    WARN,
                    DIAMETER,
                    CUBE.diameter(198.0),
                    "Only 1 mm of wood",
                    "allowance of 2 mm");
        }

        @Test
        void absentAtExactlyTheAllowance() {
            assertAbsent(FindingCode.ALLOWANCE_NOT_MET, CUBE.diameter(196.0));
            assertFound(FindingCode.ALLOWANCE_NOT_MET, WARN, DIAMETER, CUBE.diameter(196.01));
        }

        @Test
        @Source(CONTRACT)
        void absentForASphereThatFollowsFromTheSize() {
            assertAbsent(FindingCode.ALLOWANCE_NOT_MET, CUBE.diameter(null));
            assertAbsent(FindingCode.ALLOWANCE_NOT_MET, CUBE.diameter(null).size(SizeBy.SPHERE_DIAMETER, 180));
        }

        @Test
        @Source(CONTRACT)
        void aSphereThatLeavesFlatsSaysSoInstead() {
            assertAbsent(FindingCode.ALLOWANCE_NOT_MET, CUBE.diameter(202.0));
        }
    }

    @Test
    @DisplayName("inches: the hollow's corner is at 2.5 sqrt 3 = 4.330 in, the sphere's radius 3.75 in")
    void numbersAreInTheUnitOfTheDesign() {
        Designs inches = Designs.of("cube")
                .in(LengthUnit.IN)
                .acrossFlats(8)
                .thickness(1.5)
                .diameter(7.5)
                .allowance(0.08)
                .minimumWall(0.25);
        assertFound(FindingCode.BREAK_THROUGH, STOP, THICKNESS, inches, "7.5 in", "0.58 in", "0.25 in");
    }
}
