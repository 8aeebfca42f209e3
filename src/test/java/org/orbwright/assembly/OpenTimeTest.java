package org.orbwright.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.assembly.AssemblyPlan.GluedSeam;
import org.orbwright.assembly.AssemblyPlan.SolidStage;
import org.orbwright.assembly.AssemblyPlan.SolidWork;
import org.orbwright.assembly.AssemblyRequest.GlueRequest;
import org.orbwright.fixture.Slow;

/** Stages that do not fit into the open time. */
@Slow
class OpenTimeTest {
    private static List<SolidStage> stages(String solid, double most) {
        return Assemblies.plan(Assemblies.small(solid), most).stages();
    }

    private static List<SolidWork> works(List<SolidStage> stages) {
        return stages.stream().map(SolidStage::work).toList();
    }

    private static Glue glue(double openTime, double pace) {
        return Glue.of(new AssemblyRequest(new GlueRequest(null, openTime, pace), null)
                .filled()
                .glue());
    }

    @Test
    void tenMinutesAreEnoughForTheDodecahedronAndNineAreNot() {
        assertEquals(
                List.of(SolidWork.FIRST_CAP, SolidWork.SECOND_CAP, SolidWork.CLOSING),
                works(stages("dodecahedron", 10)));
        List<SolidStage> nine = stages("dodecahedron", 9);
        assertEquals(
                List.of(
                        SolidWork.FIRST_CAP,
                        SolidWork.FIRST_CAP,
                        SolidWork.ONTO_FIRST_CAP,
                        SolidWork.ONTO_FIRST_CAP,
                        SolidWork.ONTO_FIRST_CAP),
                works(nine));
        assertTrue(nine.stream().allMatch(stage -> stage.glue().fits()));
        // The six panels of a cap touch along 0, 1, 2, 2, 2 and 3 edges.
        assertEquals(7, nine.get(0).glue().seams());
        assertEquals(3, nine.get(1).glue().seams());
        // The last panel falls into a hole with five sides.
        List<GluedSeam> last = nine.get(4).seams();
        assertEquals(
                5,
                last.stream()
                        .filter(seam ->
                                seam.panel() == last.get(last.size() - 1).panel())
                        .count());
    }

    /** The last panel closes five seams at once, the two caps would close ten. */
    @Test
    void whereNothingFitsTheOrderWithTheSmallestLargestStepIsTaken() {
        List<SolidStage> four = stages("dodecahedron", 4);
        SolidStage last = four.get(four.size() - 1);
        assertEquals(SolidWork.ONTO_FIRST_CAP, last.work());
        assertFalse(last.glue().fits());
        assertEquals(5, last.glue().seams());
        assertTrue(four.get(0).glue().fits());
    }

    /** Hand count: a tetrahedron's caps close four seams, its last panel three. */
    @ParameterizedTest
    @CsvSource({"tetrahedron, 2, 3", "cube, 3, 4", "dodecahedron, 1, 5"})
    void noStageIsLargerThanTheLastPanel(String solid, double most, int largest) {
        assertEquals(
                largest,
                stages(solid, most).stream()
                        .mapToInt(stage -> stage.glue().seams())
                        .max()
                        .orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"9.9996, 10", "9.9994, 9.999", "10, 10"})
    void theOpenTimeThatIsAnsweredIsTheOneThatCounts(double asked, double answered) {
        Glue glue = glue(asked, 1.0);
        assertEquals(answered, glue.openTime(), 1e-12);
        assertEquals((int) answered, glue.mostSeams());
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.assembly.Assemblies#solids")
    void aStageFitsUnlessItIsASinglePanelOrTheClosing(String solid) {
        for (int most : new int[] {1, 2, 3, 5, 8, 13, 21}) {
            for (SolidStage stage : stages(solid, most)) {
                int seams = stage.glue().seams();
                assertEquals(seams <= most, stage.glue().fits());
                assertEquals(seams, stage.glue().time(), 1e-12);
                long joining =
                        stage.seams().stream().map(GluedSeam::panel).distinct().count();
                assertTrue(
                        seams <= most || stage.work() == SolidWork.CLOSING || joining == 1,
                        solid + " " + most + " " + stage);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.assembly.Assemblies#solids")
    void noStageCouldTakeTheFirstPanelOfTheNext(String solid) {
        List<SolidStage> stages = stages(solid, 6);
        for (int i = 0; i + 1 < stages.size(); i++) {
            SolidStage next = stages.get(i + 1);
            if (next.work() == stages.get(i).work()) {
                long more = next.seams().stream()
                        .filter(seam -> seam.panel() == next.panels().get(0))
                        .count();
                assertTrue(stages.get(i).glue().seams() + more > 6);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"10, 3, 30", "2.9, 10, 29", "0.3, 10, 3", "9.99, 1, 9", "0.1, 0.01, 0", "1440, 60, 86400"})
    void seamsThatFitIntoTheOpenTime(double openTime, double pace, int most) {
        assertEquals(most, glue(openTime, pace).mostSeams());
    }
}
