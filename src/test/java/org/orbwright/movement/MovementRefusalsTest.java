package org.orbwright.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.movement.Movements.air;
import static org.orbwright.movement.Movements.content;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.design.Places;
import org.orbwright.design.Violation;
import org.orbwright.fixture.Designs;
import org.orbwright.movement.MovementRequest.ClimateRequest;

/** Every rule that moisture and grain can break: its code, the field it names, and what is allowed. */
class MovementRefusalsTest {
    private static final Designs CUBE = Designs.of("cube").bands(Designs.widths(20.0, null));

    private static Movements movements() {
        return Movements.of(CUBE);
    }

    private static void assertRefused(String path, String code, String rejected, Movements movements) {
        List<Violation> violations = movements.refusals();
        assertEquals(1, violations.size(), violations::toString);
        assertEquals(path, violations.get(0).path());
        assertEquals(code, violations.get(0).code());
        assertEquals(rejected, violations.get(0).rejected());
    }

    @Nested
    class MoistureOfStockAndHome {
        @Test
        void airAndMoistureContentConflict() {
            Movements both = movements().stock(new ClimateRequest(20.0, 45.0, 8.0));
            assertRefused("/movement/stock/moistureContent", "CONFLICTING_MOISTURE", "8", both);
            Movements half = movements().stock(new ClimateRequest(20.0, null, 8.0));
            assertRefused("/movement/stock/moistureContent", "CONFLICTING_MOISTURE", "8", half);
        }

        @Test
        void nothingIsTooLittle() {
            assertRefused(
                    "/movement/home/driest",
                    "MOISTURE_MISSING",
                    null,
                    movements().home(content(null), content(9.0)));
        }

        @Test
        void airTakesTemperatureAndHumidity() {
            assertRefused(
                    "/movement/stock/relativeHumidity",
                    "MOISTURE_MISSING",
                    null,
                    movements().stock(air(20.0, null)));
            assertRefused(
                    "/movement/home/dampest/temperature",
                    "MOISTURE_MISSING",
                    null,
                    movements().home(content(6.0), air(null, 60.0)));
        }

        @Test
        void driestSeasonIsNoDamperThanTheDampest() {
            assertRefused(
                    "/movement/home/driest",
                    "SEASONS_REVERSED",
                    "10.5",
                    movements().moisture(8, 10.5, 10));
            assertEquals(0, movements().moisture(8, 10, 10).move().moisture().home() - 10);
        }

        @Test
        void everythingIsSaidAtOnce() {
            List<Violation> violations = movements()
                    .stock(content(null))
                    .home(air(20.0, null), content(null))
                    .grain(null, null, 3, null, null)
                    .refusals();
            assertEquals(
                    List.of(
                            "/movement/stock",
                            "/movement/home/driest/relativeHumidity",
                            "/movement/home/dampest",
                            "/movement/grain/0/band"),
                    violations.stream().map(Violation::path).toList());
        }
    }

    @Nested
    class GrainOfStrips {
        @Test
        void bandBeyondTheLaminationIsUnknown() {
            Movements third = movements().grain(null, null, 3, GrainOrientation.RIFT_SAWN, null);
            assertRefused("/movement/grain/0/band", "UNKNOWN_BAND", "3", third);
            assertEquals("1 to 2", third.refusals().get(0).allowed());
        }

        @Test
        void orientationAndRingAngleConflict() {
            assertRefused(
                    "/movement/grain/0/ringAngle",
                    "CONFLICTING_GRAIN",
                    "30",
                    movements().grain("square", null, 1, GrainOrientation.FLAT_SAWN, 30.0));
        }

        @Test
        void bandThatIsStatedTwiceIsRefused() {
            assertRefused(
                    "/movement/grain/1/band",
                    "GRAIN_TWICE",
                    "2",
                    movements().grain(null, null, 2, null, 30.0).grain("square", Places.ALL, 2, null, null));
        }

        @Test
        void faceThatTheSolidLacksIsUnknown() {
            assertRefused(
                    "/movement/grain/0/face",
                    "UNKNOWN_FACE",
                    "hexagon",
                    movements().grain("hexagon", null, 1, null, 0.0));
        }

        @Test
        void halvesOfAPanelAreToldApartByTheirPlaces() {
            Designs halves = Designs.example("truncated-octahedron-alternating");
            Movements unclear = Movements.of(halves).grain("hexagon", null, 1, null, 90.0);
            assertRefused("/movement/grain/0/face", "UNKNOWN_FACE", "hexagon", unclear);
            assertTrue(unclear.refusals().get(0).message().contains("2 laminations"));
            Movement moved = Movements.of(halves)
                    .grain("hexagon", Places.EVEN, 1, null, 90.0)
                    .move();
            List<Double> angles = moved.laminations().stream()
                    .map(lamination -> Math.toDegrees(lamination.bands().get(0).ringAngle()))
                    .toList();
            assertEquals(List.of(0.0, 0.0, 90.0), angles);
            assertEquals(2, moved.panels().size());
        }
    }
}
