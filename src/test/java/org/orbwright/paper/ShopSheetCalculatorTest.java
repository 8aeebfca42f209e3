package org.orbwright.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.fixture.Designs;
import org.orbwright.paper.ShopSheet.Advice;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.paper.ShopSheet.Text;
import org.orbwright.paper.ShopSheet.Value;
import org.orbwright.sheet.Caution;
import org.orbwright.sheet.Finding;
import org.orbwright.sheet.FindingCode;
import org.orbwright.sheet.SheetCalculator;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.solid.SolidSummary;

/** What stands on a sheet, and where. */
class ShopSheetCalculatorTest {
    private static ShopSheet sheet(Designs design) {
        return ShopSheetCalculator.sheet(new ShopSheetRequest(design.request(), null, null));
    }

    private static Section section(ShopSheet sheet, String title) {
        return sheet.sections().stream()
                .filter(section -> section.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    private static Value value(Section section, String label) {
        return section.steps().stream()
                .filter(Value.class::isInstance)
                .map(Value.class::cast)
                .filter(value -> value.label().startsWith(label))
                .findFirst()
                .orElseThrow();
    }

    /** Check values that the trade knows (common practice, no source), as in the README's worked example. */
    @Test
    void theKnownDodecahedronHasItsKnownNumbers() {
        ShopSheet sheet = sheet(Designs.example("dodecahedron-two-spheres"));
        assertEquals(
                "31.72",
                value(section(sheet, "Bevelling the panels"), "Blade tilt").number());
        assertEquals(
                "36",
                value(section(sheet, "Crosscutting the segments"), "Mitre gauge")
                        .number());
        Value base = value(section(sheet, "Crosscutting the segments"), "Stop to blade");
        assertEquals("3.143", base.number());
        assertEquals("in", base.unit());
        assertEquals("3 9/64 + 0.003", base.fraction());
        assertEquals("10", value(section(sheet, "Blanks"), "Blanks").number());
    }

    @Test
    void paperGoesWithTheUnitAndMillimetresHaveNoFractions() {
        assertEquals(
                PaperSize.LETTER,
                sheet(Designs.example("dodecahedron-two-spheres")).paper());
        ShopSheet metric = sheet(Designs.example("dodecahedron-with-land"));
        assertEquals(PaperSize.A4, metric.paper());
        for (Section section : metric.sections()) {
            section.steps().stream()
                    .filter(Value.class::isInstance)
                    .forEach(step -> assertEquals("", ((Value) step).fraction()));
        }
    }

    @Test
    void everyCautionStandsAtItsStep() {
        ShopSheet sheet = sheet(Designs.of("dodecahedron"));
        Set<Caution> placed = new HashSet<>();
        for (Section section : sheet.sections()) {
            section.steps().stream()
                    .filter(Advice.class::isInstance)
                    .forEach(step -> placed.add(((Advice) step).caution()));
        }
        List<Caution> standing =
                SheetCalculator.sheet(Designs.of("dodecahedron").build(), 2).cautions();
        for (Caution caution : standing) {
            assertEquals(caution.step() != Caution.Step.INLAYING, placed.contains(caution), caution.text());
        }
        assertTrue(section(sheet, "Bevelling the panels").steps().get(0) instanceof Advice advice
                && advice.caution().step() == Caution.Step.BEVELLING);
    }

    @Test
    void findingsComeGravestFirstAndOnce() {
        List<Finding> findings =
                sheet(Designs.example("dodecahedron-vanishing-rim")).findings();
        assertEquals(FindingCode.BAND_VANISHES, findings.get(0).code());
        assertEquals(
                findings.size(),
                findings.stream().map(Finding::message).distinct().count());
    }

    @Test
    void templatesOfTooManyPagesAreLeftOutInWords() {
        ShopSheet sheet = sheet(Designs.of("dodecahedron").acrossFlats(20_000).blank(60_000));
        List<String> texts = section(sheet, "Full-size templates").steps().stream()
                .filter(Text.class::isInstance)
                .map(step -> ((Text) step).text())
                .toList();
        assertTrue(texts.stream().anyMatch(text -> text.startsWith("Left out: Pentagon panel")), texts::toString);
        assertTrue(sheet.templates().isEmpty());
    }

    @Test
    void templatesAreNotThereWhereTheyAreNotWanted() {
        ShopSheet sheet = ShopSheetCalculator.sheet(
                new ShopSheetRequest(Designs.of("cube").request(), PaperSize.A4, false));
        assertTrue(sheet.templates().isEmpty());
        assertFalse(
                sheet.sections().stream().anyMatch(section -> section.title().contains("templates")));
    }

    static Stream<String> solids() {
        return SolidCatalogue.summaries().stream().map(SolidSummary::name);
    }

    @ParameterizedTest
    @MethodSource("solids")
    void everySolidHasASheet(String solid) {
        ShopSheet sheet = sheet(Designs.of(solid));
        assertEquals(12, sheet.sections().size());
        assertTrue(PdfWriter.write(sheet).length > 10_000);
        assertTrue(HtmlWriter.write(sheet).endsWith("</html>"));
    }
}
