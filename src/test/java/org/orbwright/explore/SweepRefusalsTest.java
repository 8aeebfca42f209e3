package org.orbwright.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.explore.Sweeps.DIAMETER;
import static org.orbwright.explore.Sweeps.WALL;
import static org.orbwright.explore.Sweeps.list;
import static org.orbwright.explore.Sweeps.metric;
import static org.orbwright.explore.Sweeps.range;
import static org.orbwright.explore.Sweeps.refusal;
import static org.orbwright.explore.Sweeps.refusals;
import static org.orbwright.explore.Sweeps.request;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.design.Violation;
import org.orbwright.document.ExploreRequest.VaryRequest;

/** Every rule that a sweep can break: its code, the field it names, and the numbers in its sentence. */
class SweepRefusalsTest {

    @Nested
    class Fields {
        @ParameterizedTest
        @ValueSource(
                strings = {
                    "/sphere/radius",
                    "sphere/diameter",
                    "/name",
                    "/unit",
                    "/solid",
                    "/size/by",
                    "/sphere",
                    "/laminations",
                    "/laminations/0",
                    "/laminations/1/bandAngle",
                    "/laminations/-/bandAngle",
                    "/laminations/0/bands/3/width",
                    "/laminations/0/bands/0/species",
                    "/laminations/0/bands/-1/width",
                    "/laminations/0/bands/0/width/0",
                    "/laminations/0/bands/99999999999/width",
                    "/",
                    "/sphere/diameter/",
                    "/sphere~1diameter",
                    "/SPHERE/DIAMETER"
                })
        void pointerThatLeadsToNoNumberOfTheDesignIsRefused(String pointer) {
            Violation violation = refusal(metric(), List.of(list(pointer, 1.0)), WALL);
            assertEquals("/explore/vary/0/field", violation.path());
            assertEquals("NOT_A_NUMBER_FIELD", violation.code());
            assertEquals(pointer, violation.rejected());
        }

        @Test
        void secondFieldIsNamedAsSuch() {
            Violation violation = refusal(metric(), List.of(list(DIAMETER, 170.0), list("/solid", 1.0)), WALL);
            assertEquals("/explore/vary/1/field", violation.path());
        }
    }

    @Nested
    class Values {
        @ParameterizedTest
        @CsvSource({
            "/sphere/diameter, 0, 'numbers from 0.001 to 100000'",
            "/sphere/diameter, -170, 'numbers from 0.001 to 100000'",
            "/laminations/0/bandAngle, 91, 'numbers from -90 to 90'",
            "/laminations/0/bands/0/width, 0.0005, 'numbers from 0.001 to 10000'",
            "/saw/kerf, 100.5, 'numbers from 0 to 100'",
            "/copies, 0, 'whole numbers from 1 to 1000'",
            "/copies, 1001, 'whole numbers from 1 to 1000'",
            "/copies, 2.5, 'whole numbers from 1 to 1000'"
        })
        void valueBeyondTheFieldsBoundsIsRefused(String field, double value, String allowed) {
            Violation violation = refusal(metric(), List.of(list(field, value)), WALL);
            assertEquals("/explore/vary/0", violation.path());
            assertEquals("VALUE_NOT_ALLOWED", violation.code());
            assertEquals(allowed, violation.allowed());
            assertTrue(violation.message().contains(violation.rejected()), violation::message);
        }

        @Test
        void rangeThatLeavesTheBoundsIsRefused() {
            Violation violation = refusal(metric(), List.of(range("/laminations/0/bandAngle", 0, 100, 11)), WALL);
            assertEquals("VALUE_NOT_ALLOWED", violation.code());
            assertEquals("100", violation.rejected());
        }

        @Test
        void boundsThemselvesAreAllowed() {
            assertEquals(
                    3,
                    Sweep.of(request(metric(), List.of(list("/laminations/0/bandAngle", -90.0, 0.0, 90.0)), WALL))
                            .size());
            assertEquals(
                    2,
                    Sweep.of(request(metric(), List.of(list("/copies", 1.0, 1000.0)), WALL))
                            .size());
        }

        @Test
        void fieldTakesAListOrARangeAndAllOfIt() {
            for (VaryRequest vary : List.of(
                    new VaryRequest("/saw/kerf", null, null, null, null),
                    new VaryRequest("/saw/kerf", List.of(1.0), 1.0, 2.0, 2),
                    new VaryRequest("/saw/kerf", List.of(1.0), null, null, 2),
                    new VaryRequest("/saw/kerf", null, 1.0, 2.0, null),
                    new VaryRequest("/saw/kerf", null, null, 2.0, 2),
                    new VaryRequest("/saw/kerf", null, 1.0, null, 2))) {
                Violation violation = refusal(metric(), List.of(vary), WALL);
                assertEquals("/explore/vary/0", violation.path());
                assertEquals("VALUES_OR_RANGE", violation.code());
            }
        }
    }

    @Nested
    class Sizes {
        @Test
        void tenThousandDesignsAreAllowedAndMoreAreNot() {
            VaryRequest hundred = range(DIAMETER, 150, 170, 100);
            assertEquals(
                    10_000,
                    Sweep.of(request(metric(), List.of(hundred, range("/saw/kerf", 1, 3, 100)), WALL))
                            .size());
            Violation violation = refusal(metric(), List.of(hundred, range("/saw/kerf", 1, 3, 101)), WALL);
            assertEquals("/explore/vary", violation.path());
            assertEquals("TOO_MANY_DESIGNS", violation.code());
            assertEquals("10100", violation.rejected());
            assertEquals("at most 10000 designs", violation.allowed());
        }

        @Test
        void hundredMillionDesignsAreCountedWithoutOverflow() {
            VaryRequest most = range(DIAMETER, 150, 170, 10_000);
            Violation violation = refusal(metric(), List.of(most, range("/saw/kerf", 1, 3, 10_000)), WALL);
            assertEquals("100000000", violation.rejected());
        }
    }

    @Nested
    class Outputs {
        @ParameterizedTest
        @ValueSource(
                strings = {
                    "/sphere/nothing",
                    "sphere/thinnestWall",
                    "/sphere",
                    "/bands/faces",
                    "/bands/faces/0",
                    "/bands/faces/x/bandAngle",
                    "/bands/faces/0/face",
                    "/bands/faces/0/segments/0/mirrored",
                    "/sphere/largestLimitedBy",
                    "/findings/0/message",
                    "/design/size/value",
                    "/design/sphere/diameter",
                    "/"
                })
        void pointerThatLeadsToNoNumberOfASheetIsRefused(String pointer) {
            Violation violation = refusal(metric(), List.of(list(DIAMETER, 170.0)), WALL, pointer);
            assertEquals("/explore/outputs/1", violation.path());
            assertEquals("NOT_A_NUMBER_OF_THE_SHEET", violation.code());
            assertEquals(pointer, violation.rejected());
        }
    }

    @Test
    void everyBrokenRuleIsNamedAtOnce() {
        List<Violation> violations = refusals(
                request(metric(), List.of(list("/solid", 1.0), list("/copies", 0.5)), "/nothing", "/sphere/nothing"));
        assertEquals(
                List.of("/explore/vary/0/field", "/explore/vary/1", "/explore/outputs/0", "/explore/outputs/1"),
                violations.stream().map(Violation::path).toList());
    }
}
