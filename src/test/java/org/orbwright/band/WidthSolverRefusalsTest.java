package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.band.Wishes.inSteps;
import static org.orbwright.band.Wishes.inverted;
import static org.orbwright.band.Wishes.refusal;
import static org.orbwright.band.Wishes.rest;
import static org.orbwright.band.Wishes.upright;
import static org.orbwright.band.Wishes.wish;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.source.Kind.CONTRACT;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.SolveRequest.WishRequest;
import org.orbwright.band.Wishes.Wished;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.SizeBy;
import org.orbwright.design.SphereSet;
import org.orbwright.design.Violation;
import org.orbwright.source.Source;

/** Every rule that a request for widths can break: its code, the field it names, and the numbers in its sentence. */
@Source(CONTRACT)
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
            Violation violation = refusal(new Wished(
                    TWO_FACES, new SolveRequest("square", null, List.of(rest(1), wish(2, Measure.CORNER, 1)), null)));
            assertViolation("/solve/face", "UNKNOWN_FACE", "square", violation);
        }

        @Test
        void faceThatIsLeftOutIsUnclearForTwoLaminations() {
            Violation violation =
                    refusal(new Wished(TWO_FACES, new SolveRequest(null, null, List.of(rest(1), rest(2)), null)));
            assertViolation("/solve/face", "UNKNOWN_FACE", null, violation);
        }

        @Test
        void faceKindsAreSolvedForOneByOne() {
            SolvedDesign solution = new Wished(
                            TWO_FACES,
                            new SolveRequest("hexagon", null, List.of(wish(1, Measure.CORNER, 5), rest(2)), null))
                    .solved();
            assertEquals("hexagon", solution.widths().face());
            assertEquals(
                    TWO_FACES.laminations().get(0),
                    solution.design().laminations().get(0));
        }
    }

    @Nested
    class WishesAndBands {
        @Test
        void bandThatTheLaminationLacksIsRefused() {
            for (Wished request : List.of(
                    upright(DESIGN, wish(1, Measure.CORNER, 5), rest(4)),
                    inverted(DESIGN, wish(1, Measure.CORNER, 5), rest(4)))) {
                Violation violation = refusal(request);
                assertViolation("/solve/wishes/1/band", "WISHES_DO_NOT_MATCH", "4", violation);
                assertSays(violation, "3 bands");
            }
        }

        @Test
        void bandWithTwoWishesIsRefused() {
            Violation violation =
                    refusal(upright(DESIGN, wish(1, Measure.CORNER, 5), rest(2), wish(1, Measure.CORNER, 6)));
            assertViolation("/solve/wishes/2", "WISHES_DO_NOT_MATCH", "1", violation);
            assertEquals("one wish for a band, a measure and a set", violation.allowed());
            Violation named = refusal(upright(
                    DESIGN, wish(1, Measure.CORNER, 5), wish(1, Measure.CORNER, SphereSet.UPRIGHT, 6), rest(2)));
            assertViolation("/solve/wishes/1", "WISHES_DO_NOT_MATCH", "1", named);
            Violation rests = refusal(upright(DESIGN, rest(1), rest(1)));
            assertViolation("/solve/wishes/1", "WISHES_DO_NOT_MATCH", "1", rests);
            assertEquals("Band 1 has two wishes of this measure.", rests.message());
        }

        @Test
        void bandThatIsRestHasNoWishOfItsOwn() {
            for (WishRequest[] wishes :
                    new WishRequest[][] {{rest(1), wish(1, Measure.CORNER, 5)}, {wish(1, Measure.CORNER, 5), rest(1)}
                    }) {
                Violation violation = refusal(upright(DESIGN, wishes));
                assertViolation("/solve/wishes/1", "WISHES_DO_NOT_MATCH", "1", violation);
                assertSays(violation, "REST");
            }
        }

        @Test
        void restTakesNoSet() {
            Violation violation = refusal(upright(DESIGN, wish(1, Measure.REST, SphereSet.INVERTED, 1)));
            assertViolation("/solve/wishes/0/set", "NOT_APPLICABLE", "INVERTED", violation);
        }

        @Test
        void mixedSphereThatIsNotMadeIsRefused() {
            Violation own = refusal(upright(DESIGN, wish(1, Measure.CORNER, SphereSet.MIXED, 5)));
            assertViolation("/solve/wishes/0/set", "SET_NOT_MADE", "MIXED", own);
            Violation all = refusal(new Wished(DESIGN, new SolveRequest(null, SphereSet.MIXED, null, null)));
            assertViolation("/solve/set", "SET_NOT_MADE", "MIXED", all);
        }

        @Test
        void wishTakesAValue() {
            Violation violation = refusal(
                    upright(DESIGN, new WishRequest(1, Measure.CORNER, null), rest(2), wish(3, Measure.CORNER, 5)));
            assertViolation("/solve/wishes/0/value", "VALUE_DOES_NOT_FIT", null, violation);
            assertEquals("a value", violation.allowed());
        }

        @Test
        void lastBandStaysOpenWhereNoneIsRest() {
            SolvedDesign solved = upright(
                            DESIGN, wish(1, Measure.CORNER, 5), wish(2, Measure.CORNER, 5), wish(3, Measure.CORNER, 5))
                    .solved();
            List<Double> widths = solved.design().laminations().get(0).bands().stream()
                    .map(band -> band.width())
                    .toList();
            assertNull(widths.get(2));
            assertEquals(solved.widths().bands().get(0).width(), widths.get(0));
        }

        @Test
        void loneBandTakesTheRest() {
            DesignRequest one =
                    sketch().laminations(lamination(null, null, (Double) null)).request();
            SolvedDesign solution = upright(one, rest(1)).solved();
            assertEquals(1, solution.widths().bands().get(0).seen().get(0).shareOfSphere(), 1e-12);
            assertTrue(solution.widths().wishes().isEmpty());
        }
    }

    @Nested
    class Room {
        @Test
        void wishIsNamedByItsPlaceInTheRequestAndNotByItsBand() {
            Violation violation =
                    refusal(upright(DESIGN, rest(2), wish(3, Measure.CORNER, 5), wish(1, Measure.EDGE_MIDDLE, 200)));
            assertViolation("/solve/wishes/2/value", "WISH_TOO_LARGE", "200", violation);
            assertSays(violation, "Band 1 cannot show 200 mm");
        }

        @Test
        void stepThatLeavesNothingForTheRestIsTooCoarse() {
            Violation violation = refusal(
                    inSteps(30, DESIGN, wish(1, Measure.EDGE_MIDDLE, 12), rest(2), wish(3, Measure.EDGE_MIDDLE, 20)));
            assertViolation("/solve/step", "STEP_TOO_COARSE", "30", violation);
        }

        @Test
        void restsThatNoStepMakesRoomForAreNotBlamedOnTheStep() {
            WishRequest[] uneven = {new WishRequest(1, Measure.REST, 1e-4), new WishRequest(2, Measure.REST, 1e5)};
            for (Wished request : List.of(upright(DESIGN, uneven), inSteps(0.5, DESIGN, uneven))) {
                assertViolation("/laminations/0/bands", "TOO_MANY_BANDS", "3", refusal(request));
            }
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
