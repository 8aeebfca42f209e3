package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.fixture.Stocks;
import org.orbwright.fixture.Stocks.Planned;

/** How boards are surfaced, by hand, and what belongs to what in the rest of a cut list. */
class CutListByHandTest {
    private static final double INCH = 25.4;
    /** In millimetres; a few sums. */
    private static final double EXACT = 1e-9;

    private static List<CutStep> steps(Planned planned) {
        return CutList.of(planned.plan(), planned.design().unit());
    }

    private static void assertStep(
            CutStep step, CutOperation operation, Double setting, Double position, double... measures) {
        assertEquals(operation, step.operation());
        assertLength(setting, step.setting());
        assertLength(position, step.position());
        assertLength(measures[0], step.length());
        assertLength(measures[1], step.width());
        assertLength(measures[2], step.thickness());
    }

    private static void assertLength(Double inches, Double millimetres) {
        if (inches == null) {
            assertEquals(null, millimetres);
        } else {
            assertEquals(INCH * inches, millimetres, EXACT);
        }
    }

    /**
     * A rough board of 96 x 9 1/4 x 2 in, of which planing takes 1/16 from each face, jointing and cleaning 1/8 from
     * each edge, and checks 1 1/2 from each end.
     */
    @Test
    void aRoughBoardIsSurfacedJointedCleanedAndTrimmed() {
        List<CutStep> steps = steps(Stocks.inches()).stream()
                .filter(step -> step.species().equals("walnut") && step.part() == CutPart.BOARD)
                .toList();
        assertEquals(6, steps.size());
        assertStep(steps.get(0), CutOperation.TAKE, null, null, 96, 9.25, 2);
        assertStep(steps.get(1), CutOperation.SURFACE, 1.875, null, 96, 9.25, 1.875);
        assertStep(steps.get(2), CutOperation.JOINT_EDGE, 0.125, 0.0, 96, 9.125, 1.875);
        assertStep(steps.get(3), CutOperation.CLEAN_EDGE, 9.0, 9.0, 96, 9, 1.875);
        assertStep(steps.get(4), CutOperation.TRIM_END, 1.5, 0.0, 94.5, 9, 1.875);
        assertStep(steps.get(5), CutOperation.TRIM_END, 1.5, 93.0, 93, 9, 1.875);
    }

    /** A surfaced board without allowances is taken as it is. */
    @Test
    void nothingIsDoneToABoardThatIsReady() {
        assertEquals(
                List.of(CutOperation.TAKE),
                steps(Stocks.exact()).stream()
                        .filter(step -> step.part() == CutPart.BOARD)
                        .map(CutStep::operation)
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void boardsSectionsAndLanesAreCountedFromOne(Planned planned) {
        List<CutStep> steps = steps(planned);
        assertEquals(1, steps.get(0).board());
        for (CutStep section : steps) {
            if (section.part() == CutPart.SECTION) {
                List<Integer> lanes = steps.stream()
                        .filter(step -> step.board() == section.board()
                                && Objects.equals(step.section(), section.section())
                                && step.lane() != null)
                        .map(CutStep::lane)
                        .distinct()
                        .toList();
                assertFalse(lanes.isEmpty());
                assertEquals(IntStream.rangeClosed(1, lanes.size()).boxed().toList(), lanes);
            }
        }
        for (int board : steps.stream().mapToInt(CutStep::board).distinct().toArray()) {
            List<Integer> sections = steps.stream()
                    .filter(step -> step.board() == board && step.part() == CutPart.SECTION)
                    .map(CutStep::section)
                    .toList();
            assertEquals(IntStream.rangeClosed(1, sections.size()).boxed().toList(), sections);
        }
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void partsOfASectionAreAsLongAsIt(Planned planned) {
        List<CutStep> steps = steps(planned);
        for (CutStep section : steps) {
            if (section.part() == CutPart.SECTION) {
                steps.stream()
                        .filter(step ->
                                step.board() == section.board() && Objects.equals(step.section(), section.section()))
                        .forEach(step -> assertEquals(section.length(), step.length(), EXACT));
            }
        }
    }

    /** What is sliced off a stick is as thick as the stick is wide; what is resawn is as wide as its lane. */
    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void sticksAreSlicedAndWideLanesResawn(Planned planned) {
        List<CutStep> steps = steps(planned);
        for (CutStep step : steps) {
            if (step.operation() == CutOperation.SLICE || step.operation() == CutOperation.RESAW) {
                double lane = steps.stream()
                        .filter(other -> other.board() == step.board()
                                && Objects.equals(other.section(), step.section())
                                && Objects.equals(other.lane(), step.lane()))
                        .findFirst()
                        .orElseThrow()
                        .width();
                assertEquals(lane, step.operation() == CutOperation.SLICE ? step.thickness() : step.width(), EXACT);
            }
        }
    }
}
