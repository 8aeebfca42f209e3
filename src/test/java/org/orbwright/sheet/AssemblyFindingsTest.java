package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.orbwright.assembly.Assemblies;
import org.orbwright.assembly.AssemblyRequest;
import org.orbwright.assembly.AssemblyRequest.GlueRequest;
import org.orbwright.document.Section;
import org.orbwright.fixture.Designs;
import org.orbwright.sheet.Caution.Step;
import org.orbwright.sheet.Finding.Severity;
import org.orbwright.source.Source;

/** What is found about the order of gluing, on both sides of the open time. */
@Source(CONTRACT)
class AssemblyFindingsTest {
    private static List<Finding> found(FindingCode code, String solid, double mostSeams) {
        return SheetCalculator.assembly(Assemblies.document(Designs.of(solid), mostSeams)).findings().stream()
                .filter(finding -> finding.code() == code)
                .toList();
    }

    private static void assertSays(List<Finding> found, Severity severity, String words) {
        assertTrue(
                found.stream()
                        .anyMatch(finding -> finding.severity() == severity
                                && finding.field().equals("/assembly/glue/openTime")
                                && finding.message().contains(words)),
                () -> words + " in " + found);
    }

    @Test
    void nothingWhereEverythingFits() {
        assertEquals(List.of(), found(FindingCode.OPEN_TIME_SHORT, "dodecahedron", 10));
        assertEquals(List.of(), found(FindingCode.STAGES_ADDED, "dodecahedron", 10));
    }

    @Test
    void stagesAreAddedWhereTheyHelp() {
        assertEquals(List.of(), found(FindingCode.OPEN_TIME_SHORT, "dodecahedron", 9));
        List<Finding> added = found(FindingCode.STAGES_ADDED, "dodecahedron", 9);
        assertSays(
                added, Severity.NOTE, "2 stages are needed for the first cap. The open time of 9 min is enough for 9");
        assertSays(added, Severity.NOTE, "Closing two caps would take 10 min for 10 seams");
    }

    @Test
    void whatClosesAtOnceAndDoesNotFitIsWarnedOf() {
        List<Finding> cube = found(FindingCode.OPEN_TIME_SHORT, "cube", 2);
        assertSays(
                cube,
                Severity.WARN,
                "A stage of the remaining panels on the first cap takes 4 min for 4 seams that close at once, longer"
                        + " than the glue's open time of 2 min. Get more hands, or a glue that stays open longer."
                        + " Every stage fits into an open time of 4 min.");
        assertEquals(1, cube.size());
        assertEquals(List.of(), found(FindingCode.OPEN_TIME_SHORT, "cube", 4));
    }

    @Test
    void noStagesAreAddedWhereTheyDoNotHelp() {
        List<Finding> added = found(FindingCode.STAGES_ADDED, "cube", 2);
        assertTrue(
                added.stream().noneMatch(finding -> finding.message().contains("remaining panels")), added::toString);
        assertTrue(added.stream().noneMatch(finding -> finding.message().contains("two caps")), added::toString);
    }

    /** Ten seams at 1.0001 a minute take 9.9990001 minutes, a trace longer than 9.999. */
    @Test
    void longerIsLongerInWordsToo() {
        List<Finding> added = SheetCalculator.assembly(Designs.of("dodecahedron")
                        .document(Section.ASSEMBLY, new AssemblyRequest(new GlueRequest(null, 9.999, 1.0001), null)))
                .findings();
        assertSays(added, Severity.NOTE, "would take 10 min for 10 seams, longer than the open time of 9.99 min");
    }

    @Test
    void blanksThatTakeMoreStagesAreNoted() {
        Designs cube = Designs.of("cube").thickness(60).bands(Designs.widths(20.0, 20.0, 20.0, 20.0, null));
        List<Finding> found =
                SheetCalculator.assembly(Assemblies.document(cube, 3)).findings();
        assertSays(found, Severity.NOTE, "2 stages are needed for a blank for the square segments");
    }

    @Test
    void aSingleSeamThatDoesNotFitIsWarnedOf() {
        List<Finding> short0 = found(FindingCode.OPEN_TIME_SHORT, "cube", 0.5);
        assertSays(
                short0, Severity.WARN, "A stage of the first half of a square panel takes 1 min for one seam, longer");
        assertSays(
                short0, Severity.WARN, "A stage of the straight joint of a square panel takes 2 min for 2 seams that");
    }

    @Test
    void aSphereThatBreaksThroughStopsTheGluingToo() {
        List<Finding> found = SheetCalculator.assembly(
                        Assemblies.document(Designs.of("cube").thickness(10), 100))
                .findings();
        assertEquals(
                List.of(FindingCode.BREAK_THROUGH),
                found.stream().map(Finding::code).toList());
        assertEquals(Severity.STOP, found.get(0).severity());
        assertEquals("/panel/thickness", found.get(0).field());
    }

    @Test
    void oddPanelsHaveNoHalvesAndGluingHasItsCautions() {
        Answer answer = SheetCalculator.assembly(Assemblies.document(Designs.of("dodecahedron"), 100));
        assertEquals(
                List.of("/solid"),
                answer.findings().stream().map(Finding::field).toList());
        assertEquals(FindingCode.NO_HALVES, answer.findings().get(0).code());
        assertEquals(
                List.of(Step.GENERAL, Step.SURFACING, Step.GLUING, Step.DISC_SANDING, Step.BEVELLING),
                answer.cautions().stream().map(Caution::step).distinct().toList());
        assertEquals(
                List.of(),
                SheetCalculator.assembly(Assemblies.document(Designs.of("cube").thickness(60), 100))
                        .findings());
    }
}
