package org.orbwright.inlay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.inlay.Inlays.disc;
import static org.orbwright.inlay.Inlays.polygon;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.SizeBy;
import org.orbwright.design.Violation;
import org.orbwright.inlay.InlayRequest.ShapeKind;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Numbering;

/** Every rule that an inlay can break: its code, the field it names, and the numbers in its sentence. */
class InlayRefusalsTest {
    /** A cube with face distance 60, panels of 20 mm and a sphere of 120 mm, that touches the faces. */
    private static final DesignRequest CUBE = sketch().solid("cube")
            .size(SizeBy.EDGE, 120)
            .panel(20, null)
            .allowance(0)
            .laminations(lamination(null, null, 10.0, null))
            .request();

    private static final DesignRequest TWO_FACES = sketch().solid("cuboctahedron")
            .size(SizeBy.EDGE, 100)
            .panel(40, null)
            .laminations(lamination("triangle", null, (Double) null), lamination("square", null, (Double) null))
            .request();

    @Nested
    class Shapes {
        @Test
        void discTakesNoSides() {
            Violation violation = disc(CUBE, 20).shape(ShapeKind.DISC, 6, 20).refusal();
            assertViolation("/inlays/shape/sides", "SIDES_DO_NOT_FIT", "6", violation);
            assertEquals("no sides", violation.allowed());
        }

        @Test
        void polygonTakesSides() {
            Violation violation =
                    disc(CUBE, 20).shape(ShapeKind.POLYGON, null, 20).refusal();
            assertViolation("/inlays/shape/sides", "SIDES_DO_NOT_FIT", null, violation);
            assertEquals("3 to 24 sides", violation.allowed());
        }
    }

    @Nested
    class Room {
        @Test
        void discThatReachesTheFloorIsTooLargeAndIsToldTheLargest() {
            // 2 sqrt(60^2 - 46^2) = 77.045 mm.
            Violation violation = disc(CUBE, 80).rim(2).floor(4).refusal();
            assertViolation("/inlays/shape/diameter", "INLAY_TOO_LARGE", "80", violation);
            assertSays(violation, "80 mm");
            assertSays(violation, "nearer than 4 mm to the hollow");
            assertEquals("at most 77.0454 mm", violation.allowed());
        }

        @Test
        void discThatReachesTheSeamIsTooLargeForAnotherReason() {
            DesignRequest thick = sketch().solid("cube")
                    .size(SizeBy.EDGE, 120)
                    .panel(30, null)
                    .allowance(0)
                    .laminations(lamination(null, null, 10.0, null))
                    .request();
            Violation violation = disc(thick, 83).rim(2).floor(4).refusal();
            assertEquals("INLAY_TOO_LARGE", violation.code());
            assertSays(violation, "bevelled seam");
            assertEquals("at most 82.8292 mm", violation.allowed());
        }

        @Test
        void rimAndFloorThatFillTheWallLeaveNoRoom() {
            Violation violation = disc(CUBE, 1).rim(12).floor(8).refusal();
            assertViolation("/inlays/floor", "NO_ROOM_FOR_INLAY", "8", violation);
            assertSays(violation, "12 mm");
            assertSays(violation, "8 mm");
            assertSays(violation, "it is 20 mm at the middle");
        }

        @Test
        void wallIsThatOfTheSphereAndNotOfThePanel() {
            DesignRequest smaller = sketch().solid("cube")
                    .size(SizeBy.EDGE, 120)
                    .panel(20, null)
                    .diameter(110.0)
                    .laminations(lamination(null, null, 10.0, null))
                    .request();
            assertSays(disc(smaller, 1).rim(9).floor(8).refusal(), "it is 15 mm at the middle");
        }

        @Test
        void sentencesAreInTheCallersUnit() {
            DesignRequest inches = sketch().unit(LengthUnit.IN)
                    .solid("cube")
                    .size(SizeBy.EDGE, 4)
                    .panel(0.75, null)
                    .allowance(0)
                    .wall(0.2)
                    .laminations(lamination(null, null, 0.5, null))
                    .request();
            // The rim lies at 2 - 0.75 + 0.25 + 0.125 = 1.625: 2 sqrt(2^2 - 1.625^2) = 2.332 in.
            Violation violation = polygon(inches, 6, 3).rim(0.125).floor(0.25).refusal();
            assertViolation("/inlays/shape/diameter", "INLAY_TOO_LARGE", "3", violation);
            assertEquals("at most 2.33184 in", violation.allowed());
        }
    }

    @Nested
    class PanelsAndMotifs {
        @Test
        void faceKindThatTheSolidLacksIsUnknown() {
            Violation violation = disc(CUBE, 10).face("hexagon").refusal();
            assertViolation("/inlays/face", "UNKNOWN_FACE", "hexagon", violation);
            assertEquals("one of square", violation.allowed());
        }

        @Test
        void faceKindThatIsLeftOutIsUnclearOnASolidWithTwo() {
            Violation violation = disc(TWO_FACES, 10).refusal();
            assertViolation("/inlays/face", "UNKNOWN_FACE", null, violation);
            assertEquals("one of triangle, square", violation.allowed());
        }

        @Test
        void panelBeyondTheFacesOrOfAnotherKindOrListedTwiceIsUnknown() {
            assertViolation(
                    "/inlays/panels/1",
                    "UNKNOWN_PANEL",
                    "7",
                    disc(CUBE, 10).panels(1, 7).refusal());
            assertViolation(
                    "/inlays/panels/2",
                    "UNKNOWN_PANEL",
                    "3",
                    disc(CUBE, 10).panels(3, 1, 3).refusal());
            int triangle = Numbering.of(Inlays.disc(TWO_FACES, 10)
                    .face("triangle")
                    .plan()
                    .panels()
                    .get(0)
                    .panel());
            Violation violation =
                    disc(TWO_FACES, 10).face("square").panels(triangle).refusal();
            assertViolation("/inlays/panels/0", "UNKNOWN_PANEL", String.valueOf(triangle), violation);
            assertSays(violation, "not a square");
            // 8 triangles and 6 squares.
            assertTrue(violation.allowed().endsWith("from 1 to 14"), violation.allowed());
        }

        @Test
        void moreMotifsThanPanelsAreTooMany() {
            Violation violation =
                    disc(CUBE, 10).panels(1, 2).motifs("a", "b", "c").refusal();
            assertViolation("/inlays/motifs", "MORE_MOTIFS_THAN_PANELS", "3", violation);
            assertEquals("at most 2 motifs", violation.allowed());
        }
    }

    private static void assertViolation(String path, String code, String rejected, Violation violation) {
        assertEquals(path, violation.path());
        assertEquals(code, violation.code());
        assertEquals(rejected, violation.rejected());
    }

    private static void assertSays(Violation violation, String words) {
        assertTrue(violation.message().contains(words), violation::message);
    }
}
