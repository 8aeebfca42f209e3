package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.document.Document;
import org.orbwright.fixture.Designs;
import org.orbwright.sheet.Caution.Step;
import org.orbwright.source.Source;

@Source(CONTRACT)
class SheetCalculatorTest {
    private static final Document EXAMPLE =
            Designs.example("cube-with-chevrons").document();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "dodecahedron-vanishing-rim", "rhombic-triacontahedron", "truncated-icosidodecahedron",
                "deltoidal-hexecontahedron-upright-bands", "dodecahedron-two-spheres", "dodecahedron-with-land",
                "cube-with-chevrons", "truncated-icosahedron"
            })
    @Source(INVARIANT)
    void thePartsAnswerWhatTheSheetAnswers(String name) {
        Document design = Designs.example(name).document();
        Answer sheet = SheetCalculator.sheet(design, 9);
        Answer angles = SheetCalculator.angles(design);
        Answer segments = SheetCalculator.segments(design);
        Answer yields = SheetCalculator.yields(design);
        Answer sphere = SheetCalculator.sphere(design);
        Answer bands = SheetCalculator.bands(design, 9);
        assertEquals(sheet.angles(), angles.angles());
        assertEquals(sheet.segments(), segments.segments());
        assertEquals(sheet.yield(), yields.yield());
        assertEquals(sheet.sphere(), sphere.sphere());
        assertEquals(sheet.bands(), bands.bands());
        for (Object understood : List.of(
                angles.document(), segments.document(), yields.document(), sphere.document(), bands.document())) {
            assertEquals(sheet.document(), understood);
        }
        Set<Finding> parts = new HashSet<>();
        for (List<Finding> findings : List.of(
                angles.findings(), segments.findings(), yields.findings(), sphere.findings(), bands.findings())) {
            assertGravestFirst(findings);
            parts.addAll(findings);
        }
        assertGravestFirst(sheet.findings());
        assertEquals(new HashSet<>(sheet.findings()), parts);
    }

    private static void assertGravestFirst(List<Finding> findings) {
        for (int i = 1; i < findings.size(); i++) {
            assertTrue(findings.get(i - 1).severity().compareTo(findings.get(i).severity()) <= 0);
        }
    }

    @Test
    void findingsComeGravestFirst() {
        // Panels too thin, a rim that vanishes, small segments, an odd number of sides, an unknown wood, one copy.
        Document poor = Designs.of("dodecahedron")
                .acrossFlats(70)
                .thickness(5)
                .bands(List.of(Designs.band("bog oak", 2.0), Designs.band("sugar maple", null)))
                .document();
        List<Finding> findings = SheetCalculator.sheet(poor, 9).findings();
        assertGravestFirst(findings);
        assertEquals(
                EnumSet.allOf(Finding.Severity.class),
                EnumSet.copyOf(findings.stream().map(Finding::severity).toList()));
        assertEquals(FindingCode.BREAK_THROUGH, findings.get(0).code());
    }

    @Test
    void aGoodDesignHasNoFindings() {
        Document good = Designs.of("cube")
                .acrossFlats(240)
                .thickness(70)
                .copies(2)
                .spares(1, 0)
                .document();
        assertEquals(List.of(), SheetCalculator.sheet(good, 9).findings());
    }

    @Test
    void theSheetHasTheCautionsOfEveryStepInTheOrderOfTheWork() {
        assertEquals(
                Arrays.stream(Step.values())
                        .flatMap(step -> step.cautions().stream())
                        .toList(),
                SheetCalculator.sheet(EXAMPLE, 9).cautions());
    }

    @Test
    void theGeneralCautionDefersToTheManualAndToLocalRules() {
        Caution general = SheetCalculator.sheet(EXAMPLE, 9).cautions().get(0);
        assertEquals(Step.GENERAL, general.step());
        assertTrue(general.text().contains("machine's manual"));
        assertTrue(general.text().contains("local rules"));
    }

    @Test
    void everyPartHasTheGeneralCautionAndThoseOfItsSteps() {
        assertEquals(
                List.of(Step.GENERAL, Step.SETTING_UP, Step.CROSSCUTTING, Step.DISC_SANDING, Step.BEVELLING),
                steps(SheetCalculator.angles(EXAMPLE).cautions()));
        assertEquals(
                List.of(Step.GENERAL, Step.CROSSCUTTING),
                steps(SheetCalculator.segments(EXAMPLE).cautions()));
        assertEquals(
                List.of(Step.GENERAL, Step.SURFACING, Step.RIPPING, Step.GLUING, Step.CROSSCUTTING),
                steps(SheetCalculator.yields(EXAMPLE).cautions()));
        assertEquals(
                List.of(Step.GENERAL, Step.MOUNTING, Step.TURNING),
                steps(SheetCalculator.sphere(EXAMPLE).cautions()));
        assertEquals(
                List.of(Step.GENERAL, Step.RIPPING),
                steps(SheetCalculator.bands(EXAMPLE, 9).cautions()));
    }

    private static List<Step> steps(List<Caution> cautions) {
        return cautions.stream().map(Caution::step).distinct().toList();
    }
}
