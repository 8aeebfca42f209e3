package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.Places;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Stocks;
import org.orbwright.sheet.SheetCalculator;
import org.orbwright.stock.CutBoard.StripCut;
import org.orbwright.stock.StockPlan.StripNeed;

/** Strips are called as a turner calls them. */
@Slow
class StripNamesTest {
    private static Set<String> labels(List<CutStep> steps) {
        return steps.stream()
                .filter(step -> step.part() == CutPart.STRIP)
                .map(CutStep::label)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @CsvSource({"mm, 1", "in, 25.6"})
    void twoLaminationsAreToldApartByTheirFaces(String unit, double by) {
        List<CutStep> steps =
                SheetCalculator.cuts(Stocks.document(Stocks.twoFaces(unit, by))).cuts();
        assertEquals(
                Set.of("triangle, band 1", "triangle, band 2", "square, band 1", "square, band 2", "square, band 3"),
                labels(steps));
        for (CutStep step : steps) {
            if (step.part() == CutPart.STRIP) {
                assertEquals(step.label().startsWith("triangle") ? 1 : 2, step.lamination());
                assertTrue(step.label().endsWith("band " + step.band()), step::toString);
            }
        }
    }

    @Test
    void theOnlyLaminationNeedsNoName() {
        Set<String> labels =
                labels(SheetCalculator.cuts(Stocks.document(Stocks.oneWood(12))).cuts());
        assertTrue(labels.contains("band 4"), labels::toString);
        assertTrue(labels.stream().allMatch(label -> label.startsWith("band ")), labels::toString);
    }

    @Test
    void sparesAreLabelledAndWhatIsCutFurtherIsNot() {
        List<CutStep> steps =
                CutList.of(Stocks.inches().plan(), Stocks.inches().design().unit());
        Collection<CutPart> seen = new TreeSet<>();
        for (CutStep step : steps) {
            seen.add(step.part());
            switch (step.part()) {
                case SPARE -> assertEquals("spare", step.label());
                case KEPT -> assertEquals("keep", step.label());
                case STRIP -> assertTrue(step.label().startsWith("band "), step::toString);
                default -> assertEquals(null, step.label());
            }
        }
        assertEquals(Set.of(CutPart.values()), seen);
    }

    private static LaminationNames names(Object... facesAndPlaces) {
        LaminationRequest[] laminations = new LaminationRequest[facesAndPlaces.length / 2];
        for (int i = 0; i < laminations.length; i++) {
            laminations[i] = new LaminationRequest(
                    (String) facesAndPlaces[2 * i], (Places) facesAndPlaces[2 * i + 1], null, null, List.of());
        }
        return LaminationNames.of(Arrays.asList(laminations));
    }

    @Test
    void halvesOfAPanelAreNamedByTheirSegments() {
        LaminationNames halves = names(null, Places.ODD, null, Places.EVEN);
        assertEquals("odd segments, band 2", halves.before(1, "band 2"));
        assertEquals("even 2", halves.shortlyBefore(2, "2"));
        LaminationNames three = names("pentagon", null, "hexagon", Places.ODD, "hexagon", Places.EVEN);
        assertEquals("pentagon, band 2", three.before(1, "band 2"));
        assertEquals("hexagon, even segments, band 1", three.before(3, "band 1"));
        assertEquals("p2", three.shortlyBefore(1, "2"));
        assertEquals("h odd 2", three.shortlyBefore(2, "2"));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void facesWithOneInitialHaveAsManyLettersAsTellThemApart(int lamination) {
        LaminationNames names = names("decagon", null, "dodecagon", null);
        assertEquals(lamination == 1 ? "de4" : "do4", names.shortlyBefore(lamination, "4"));
    }

    private static StripNeed need(String segment, boolean mirrored, boolean turned) {
        return new StripNeed(1, segment, mirrored, turned, 2, "ash", 20, 20, 600, 4, 0, List.of());
    }

    private static String label(Integer piece, StripNeed... needs) {
        StockPlan plan = new StockPlan(
                true,
                null,
                List.of(),
                List.of(needs),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                0,
                0);
        return new StripLabels(plan).of(new StripCut(0, 20, 20, CutPart.STRIP, 1, 1, 2, piece));
    }

    /** Pieces join where the blank is cut, so they belong to one kind of blank; strips in one piece suit them all. */
    @Test
    void piecesNameTheirBlankWhereThereAreSeveral() {
        StripNeed plain = need("A", false, false);
        assertEquals("band 2, piece 1", label(1, plain));
        assertEquals("band 2, piece 1, turned blank", label(1, need("A", false, true), plain));
        assertEquals("band 2, piece 2, segments B", label(2, need("B", false, false), plain));
        assertEquals("band 2, piece 2, segments A mirrored", label(2, need("A", true, false), plain));
        assertEquals("band 2, piece 2, segments A", label(2, plain, need("A", true, false)));
        assertEquals("band 2", label(null, need("B", false, true), plain));
    }
}
