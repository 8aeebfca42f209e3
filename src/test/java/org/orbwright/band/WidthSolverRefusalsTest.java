package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.band.Wishes.inSteps;
import static org.orbwright.band.Wishes.inverted;
import static org.orbwright.band.Wishes.refusal;
import static org.orbwright.band.Wishes.rest;
import static org.orbwright.band.Wishes.upright;
import static org.orbwright.band.Wishes.wish;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.band.WidthRequest.Measure;
import org.orbwright.band.WidthRequest.WishRequest;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.SizeBy;
import org.orbwright.design.Violation;

/** Every rule that a request for widths can break: its code, the field it names, and the numbers in its sentence. */
class WidthSolverRefusalsTest {
    /** The base distance is 80 mm * 0.68819 = 55.06 mm. */
    private static final DesignRequest DESIGN = sketch().size(SizeBy.EDGE, 80).request();

    private static final DesignRequest TWO_FACES = sketch().solid("truncated-icosahedron")
            .size(SizeBy.EDGE, 50)
            .laminations(lamination("pentagon", null, 10.0, null), lamination("hexagon", null, 20.0, null))
            .request();

    @Nested
    class Faces {
        @Test
        void faceThatTheDesignHasNoLaminationForIsUnknown() {
            Violation violation = refusal(
                    new WidthRequest(TWO_FACES, "square", null, List.of(rest(1), wish(2, Measure.CORNER, 1)), null));
            assertViolation("/face", "UNKNOWN_FACE", "square", violation);
        }

        @Test
        void faceThatIsLeftOutIsUnclearForTwoLaminations() {
            Violation violation = refusal(new WidthRequest(TWO_FACES, null, null, List.of(rest(1), rest(2)), null));
            assertViolation("/face", "UNKNOWN_FACE", null, violation);
        }

        @Test
        void faceKindsAreSolvedForOneByOne() {
            WidthSolution solution = WidthSolver.solve(
                    new WidthRequest(TWO_FACES, "hexagon", null, List.of(wish(1, Measure.CORNER, 5), rest(2)), null));
            assertEquals("hexagon", solution.face());
            assertEquals(
                    TWO_FACES.laminations().get(0),
                    solution.design().laminations().get(0));
        }
    }

    @Nested
    class WishesAndBands {
        @Test
        void bandThatTheLaminationLacksIsRefused() {
            for (WidthRequest request : List.of(
                    upright(DESIGN, wish(1, Measure.CORNER, 5), rest(4)),
                    inverted(DESIGN, wish(1, Measure.CORNER, 5), rest(4)))) {
                Violation violation = refusal(request);
                assertViolation("/wishes/1/band", "WISHES_DO_NOT_MATCH", "4", violation);
                assertSays(violation, "3 bands");
            }
        }

        @Test
        void bandWithTwoWishesIsRefused() {
            Violation violation =
                    refusal(upright(DESIGN, wish(1, Measure.CORNER, 5), rest(2), wish(1, Measure.EDGE_MIDDLE, 5)));
            assertViolation("/wishes/2/band", "WISHES_DO_NOT_MATCH", "1", violation);
            assertEquals("each band from 1 to 3 once", violation.allowed());
        }

        @Test
        void restTakesNoValue() {
            Violation violation = refusal(upright(
                    DESIGN,
                    wish(1, Measure.CORNER, 5),
                    new WishRequest(2, Measure.REST, 7.5),
                    wish(3, Measure.CORNER, 5)));
            assertViolation("/wishes/1/value", "VALUE_DOES_NOT_FIT", "7.5", violation);
            assertEquals("no value", violation.allowed());
        }

        @Test
        void wishTakesAValue() {
            Violation violation = refusal(
                    upright(DESIGN, new WishRequest(1, Measure.CORNER, null), rest(2), wish(3, Measure.CORNER, 5)));
            assertViolation("/wishes/0/value", "VALUE_DOES_NOT_FIT", null, violation);
            assertEquals("a value", violation.allowed());
        }

        @Test
        void bandWithoutAWishIsMissed() {
            Violation violation = refusal(upright(DESIGN, wish(1, Measure.CORNER, 5), rest(2)));
            assertViolation("/wishes", "ONE_REST_NEEDED", "2", violation);
            assertEquals("3 wishes, one of them REST", violation.allowed());
        }

        @Test
        void oneBandHasToTakeTheRest() {
            Violation none = refusal(upright(
                    DESIGN, wish(1, Measure.CORNER, 5), wish(2, Measure.CORNER, 5), wish(3, Measure.CORNER, 5)));
            assertViolation("/wishes", "ONE_REST_NEEDED", "3", none);
            Violation two = refusal(upright(DESIGN, rest(1), wish(2, Measure.CORNER, 5), rest(3)));
            assertViolation("/wishes", "ONE_REST_NEEDED", "3", two);
        }

        @Test
        void loneBandTakesTheRest() {
            DesignRequest one =
                    sketch().laminations(lamination(null, null, (Double) null)).request();
            WidthSolution solution = WidthSolver.solve(upright(one, rest(1)));
            assertEquals(1, solution.bands().get(0).seen().shareOfSphere(), 1e-12);
            assertTrue(solution.bands().get(0).sensitivities().isEmpty());
        }
    }

    @Nested
    class Room {
        @Test
        void wishIsNamedByItsPlaceInTheRequestAndNotByItsBand() {
            Violation violation =
                    refusal(upright(DESIGN, rest(2), wish(3, Measure.CORNER, 5), wish(1, Measure.EDGE_MIDDLE, 200)));
            assertViolation("/wishes/2/value", "WISH_TOO_LARGE", "200", violation);
            assertSays(violation, "Band 1 cannot show 200 mm");
        }

        @Test
        void wishesFromBothSidesThatMeetLeaveNothingForTheRest() {
            WidthRequest wishes =
                    upright(DESIGN, wish(1, Measure.EDGE_MIDDLE, 30), rest(2), wish(3, Measure.EDGE_MIDDLE, 30));
            List<Violation> violations = assertThrows(ImpossibleDesignException.class, () -> WidthSolver.solve(wishes))
                    .violations();
            assertEquals(
                    List.of("/wishes/0/value", "/wishes/2/value"),
                    violations.stream().map(Violation::path).toList());
            for (Violation violation : violations) {
                assertEquals("WISH_TOO_LARGE", violation.code());
                assertSays(violation, "30 mm");
                assertSays(violation, "18.2 mm at most");
            }
        }

        @Test
        void stepThatLeavesNothingForTheRestIsTooCoarse() {
            Violation violation = refusal(
                    inSteps(30, DESIGN, wish(1, Measure.EDGE_MIDDLE, 12), rest(2), wish(3, Measure.EDGE_MIDDLE, 20)));
            assertViolation("/step", "STEP_TOO_COARSE", "30", violation);
            assertSays(violation, "30 mm");
        }

        @Test
        void designThatCannotExistIsRefusedAsEverywhere() {
            Violation violation = refusal(upright(
                    sketch().solid("dodecahedrone").request(),
                    wish(1, Measure.CORNER, 5),
                    rest(2),
                    wish(3, Measure.CORNER, 5)));
            assertViolation("/solid", "UNKNOWN_SOLID", "dodecahedrone", violation);
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
