package org.orbwright.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.explore.Sweeps.DIAMETER;
import static org.orbwright.explore.Sweeps.SURVIVAL;
import static org.orbwright.explore.Sweeps.WALL;
import static org.orbwright.explore.Sweeps.imperial;
import static org.orbwright.explore.Sweeps.list;
import static org.orbwright.explore.Sweeps.metric;
import static org.orbwright.explore.Sweeps.range;
import static org.orbwright.explore.Sweeps.request;
import static org.orbwright.explore.Sweeps.rows;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.RequestSketch;
import org.orbwright.design.SizeBy;
import org.orbwright.document.Document;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.quantity.Rounding;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;

/** Rows of a sweep against single sheets, their order, and what becomes of designs that cannot exist. */
class SweepTest {
    private static final String COPIES = "/copies";
    private static final String AREA = "/bands/faces/0/segments/0/flatArea";

    @Nested
    class Rows {
        @Test
        void rowsAreWhatSingleSheetsSay() {
            List<SweepRow> rows = rows(metric(), List.of(list(DIAMETER, 160.0, 171.5, 176.0)), WALL, SURVIVAL);
            assertEquals(3, rows.size());
            for (SweepRow row : rows) {
                Answer sheet = sheet(sketch().diameter(row.inputs().get(0)));
                assertEquals(wall(sheet, LengthUnit.MM), row.outputs().get(0));
                assertEquals(survival(sheet), row.outputs().get(1));
                assertNull(row.problem());
            }
        }

        @Test
        @DisplayName("the rows of three fields against three loops, each computed alone and from the last to the first")
        void aRowIsComputedFromItsNumberAlone() {
            List<Double> kerfs = List.of(2.0, 3.0);
            List<Double> sizes = List.of(160.0, 170.0, 171.5);
            List<Double> copies = List.of(1.0, 2.0);
            List<List<Double>> inputs = new ArrayList<>();
            for (double kerf : kerfs) {
                for (double size : sizes) {
                    for (double copy : copies) {
                        inputs.add(List.of(kerf, size, copy));
                    }
                }
            }
            Sweep sweep = Sweep.of(request(
                    metric(),
                    List.of(list("/saw/kerf", 2.0, 3.0), list(DIAMETER, 160.0, 170.0, 171.5), list(COPIES, 1.0, 2.0)),
                    WALL));
            assertEquals(12, sweep.size());
            for (int number = 11; number >= 0; number--) {
                SweepRow row = sweep.row(number);
                assertEquals(inputs.get(number), row.inputs());
                Answer sheet = sheet(sketch().diameter(row.inputs().get(1)));
                assertEquals(wall(sheet, LengthUnit.MM), row.outputs().get(0));
            }
            assertThrows(IndexOutOfBoundsException.class, () -> sweep.row(12));
        }

        @Test
        void anyNumberOfADesignCanBeVaried() {
            DesignRequest tilted =
                    sketch().laminations(lamination(null, 10.0, 20.0, null)).request();
            for (String field : List.of(
                    "/size/value",
                    "/panel/thickness",
                    "/panel/land",
                    "/laminations/0/bandAngle",
                    "/laminations/0/bands/0/width",
                    "/saw/kerf",
                    "/saw/endTrim",
                    "/blank/length",
                    "/sphere/turningAllowance",
                    "/sphere/minimumWall")) {
                SweepRow row = rows(tilted, List.of(list(field, 12.0)), WALL).get(0);
                boolean small = field.equals("/size/value");
                assertEquals(small, row.problem() != null, field);
            }
        }

        @Test
        void widthOfABandIsVariedWhileTheRestGivesWay() {
            List<SweepRow> rows = rows(metric(), List.of(range("/laminations/0/bands/0/width", 10, 20, 11)), SURVIVAL);
            for (SweepRow row : rows) {
                Answer sheet = sheet(
                        sketch().laminations(lamination(null, null, row.inputs().get(0), null, 10.0)));
                assertEquals(survival(sheet), row.outputs().get(0));
            }
        }

        @Test
        void wholeNumbersAreVariedAsSuch() {
            // Twelve panels a sphere.
            List<Double> panels =
                    rows(metric(), List.of(list(COPIES, 1.0, 2.0, 5.0)), "/segments/faces/0/panels").stream()
                            .map(row -> row.outputs().get(0))
                            .toList();
            assertEquals(List.of(12.0, 24.0, 60.0), panels);
        }

        @Test
        void designIsLeftAsItWas() {
            DesignRequest design = metric();
            rows(design, List.of(list(DIAMETER, 160.0)), WALL);
            assertEquals(metric(), design);
        }
    }

    @Nested
    class Ranges {
        @Test
        void rangeHoldsBothEndsAndEvenStepsBetween() {
            List<Double> inputs = rows(metric(), List.of(range(DIAMETER, 160, 170, 5)), WALL).stream()
                    .map(row -> row.inputs().get(0))
                    .toList();
            assertEquals(List.of(160.0, 162.5, 165.0, 167.5, 170.0), inputs);
        }

        @Test
        void rangeMayFall() {
            List<Double> inputs = rows(metric(), List.of(range(DIAMETER, 170, 160, 3)), WALL).stream()
                    .map(row -> row.inputs().get(0))
                    .toList();
            assertEquals(List.of(170.0, 165.0, 160.0), inputs);
        }

        @Test
        void listKeepsItsOrderAndItsRepetitions() {
            List<Double> inputs = rows(metric(), List.of(list(DIAMETER, 170.0, 150.0, 170.0)), WALL).stream()
                    .map(row -> row.inputs().get(0))
                    .toList();
            assertEquals(List.of(170.0, 150.0, 170.0), inputs);
        }
    }

    @Nested
    class TwoFields {
        @Test
        void twoFieldsAreCombinedInAllWaysTheSecondFastest() {
            List<SweepRow> rows = rows(
                    metric(),
                    List.of(list(DIAMETER, 160.0, 170.0), range("/panel/thickness", 24, 28, 3)),
                    WALL,
                    SURVIVAL);
            assertEquals(
                    List.of(
                            List.of(160.0, 24.0),
                            List.of(160.0, 26.0),
                            List.of(160.0, 28.0),
                            List.of(170.0, 24.0),
                            List.of(170.0, 26.0),
                            List.of(170.0, 28.0)),
                    rows.stream().map(SweepRow::inputs).toList());
            for (SweepRow row : rows) {
                Answer sheet = sheet(sketch().diameter(row.inputs().get(0))
                        .panel(row.inputs().get(1), null));
                assertEquals(wall(sheet, LengthUnit.MM), row.outputs().get(0));
                assertEquals(survival(sheet), row.outputs().get(1));
            }
        }

        @Test
        void sizeIsTheProductOfBoth() {
            Sweep sweep = Sweep.of(request(
                    metric(), List.of(range(DIAMETER, 150, 170, 20), range("/panel/thickness", 24, 28, 30)), WALL));
            assertEquals(600, sweep.size());
        }
    }

    @Nested
    class Units {
        @Test
        void inchDesignsTakeAndGiveInches() {
            List<SweepRow> rows = rows(imperial(), List.of(list(DIAMETER, 6.5, 6.75)), WALL, SURVIVAL, DIAMETER, AREA);
            for (SweepRow row : rows) {
                Answer sheet = sheet(inches().diameter(row.inputs().get(0)));
                assertEquals(wall(sheet, LengthUnit.IN), row.outputs().get(0));
                assertEquals(survival(sheet), row.outputs().get(1));
                assertEquals(row.inputs().get(0), row.outputs().get(2));
                // Area of a segment: a^2 tan(36 deg), with a = 7 / 2 * 0.688191 / 1.113516.
                assertEquals(3.399553, row.outputs().get(3));
            }
        }

        @Test
        void anglesAreInDegrees() {
            // Half of a dodecahedron's dihedral angle, pi - arctan 2 (GNU 3DLDF, user manual, Dodecahedron).
            SweepRow row = rows(metric(), List.of(list(DIAMETER, 170.0)), "/angles/faces/0/bevel")
                    .get(0);
            assertEquals(58.2825, row.outputs().get(0));
        }

        private static RequestSketch inches() {
            return sketch().unit(LengthUnit.IN)
                    .size(SizeBy.ACROSS_FLATS, 7)
                    .panel(1.1, null)
                    .allowance(0.08)
                    .wall(0.25)
                    .laminations(lamination(null, null, 0.75, 0.25, null));
        }
    }

    @Nested
    class ImpossibleDesigns {
        @Test
        void impossibleDesignGivesAProblemAndTheSweepGoesOn() {
            // Panels of 90 mm fill a dodecahedron of 180 mm across flats.
            List<SweepRow> rows = rows(metric(), List.of(list("/panel/thickness", 28.0, 90.0, 95.0, 30.0)), WALL);
            assertEquals(4, rows.size());
            assertNull(rows.get(0).problem());
            assertEquals(List.of(), rows.get(1).outputs());
            assertTrue(rows.get(1).problem().contains("90 mm"), rows.get(1)::problem);
            assertNotNull(rows.get(2).problem());
            assertEquals(List.of(90.0), rows.get(1).inputs());
            assertEquals(1, rows.get(3).outputs().size());
            assertNull(rows.get(3).problem());
        }

        @Test
        void numberThatASheetLacksIsNull() {
            List<SweepRow> rows = rows(
                    metric(),
                    List.of(list(DIAMETER, 170.0)),
                    "/bands/faces/7/bandAngle",
                    "/bands/faces/0/segments/0/upright/2/survival");
            assertNull(rows.get(0).problem());
            assertNull(rows.get(0).outputs().get(0));
            assertNotNull(rows.get(0).outputs().get(1));
        }
    }

    @Nested
    class OneRowAtATime {
        @Test
        @DisplayName("a sweep of 10,000 designs is ready at once, and a caller may stop after three rows")
        void rowsAreComputedWhenTheyAreAskedFor() {
            Sweep sweep = Sweep.of(request(
                    metric(), List.of(range(DIAMETER, 150, 170, 100), range("/panel/thickness", 24, 28, 100)), WALL));
            assertEquals(10_000, sweep.size());
            assertEquals(24, sweep.next().inputs().get(1));
            assertEquals(24 + 4.0 / 99, sweep.next().inputs().get(1), 1e-9);
            assertEquals(24 + 8.0 / 99, sweep.next().inputs().get(1), 1e-9);
            assertTrue(sweep.hasNext());
        }

        @Test
        void askingWhetherThereIsMoreTakesNoRow() {
            Sweep sweep = Sweep.of(request(metric(), List.of(list(DIAMETER, 160.0, 170.0)), WALL));
            assertTrue(sweep.hasNext());
            assertTrue(sweep.hasNext());
            assertEquals(160, sweep.next().inputs().get(0));
            assertEquals(170, sweep.next().inputs().get(0));
            assertFalse(sweep.hasNext());
            assertThrows(NoSuchElementException.class, sweep::next);
        }
    }

    private static Answer sheet(RequestSketch sketch) {
        return SheetCalculator.sheet(Document.of(sketch.request()), 9);
    }

    private static double wall(Answer sheet, LengthUnit unit) {
        double wall = sheet.sphere().thinnestWall() * Quantity.LENGTH.factor(unit);
        return Rounding.round(wall, Quantity.LENGTH.decimals(unit));
    }

    private static double survival(Answer sheet) {
        double survival =
                sheet.bands().faces().get(0).segments().get(0).upright().get(0).survival();
        return Rounding.round(survival, Quantity.RATIO.decimals(LengthUnit.MM));
    }
}
