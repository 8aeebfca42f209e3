package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Stocks;
import org.orbwright.fixture.Stocks.Planned;
import org.orbwright.stock.StockPlan.SpeciesStock;
import org.orbwright.stock.StockPlan.StripNeed;

/** Cut lists are followed step by step with a tape, from the board on the rack to the last strip. */
@Slow
class CutListTest {
    /** In millimetres; sums of a few hundred lengths. */
    private static final double EXACT = 1e-9;

    private static List<List<CutStep>> boards(Planned planned) {
        return List.copyOf(CutList.of(planned.plan(), planned.design().unit()).stream()
                .collect(Collectors.groupingBy(CutStep::board, TreeMap::new, Collectors.toList()))
                .values());
    }

    private static List<CutStep> those(List<CutStep> steps, Predicate<CutStep> wanted) {
        return steps.stream().filter(wanted).toList();
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void boardsAndStepsAreInTheirOrder(Planned planned) {
        List<CutStep> all = CutList.of(planned.plan(), planned.design().unit());
        List<List<CutStep>> boards = boards(planned);
        assertEquals(planned.plan().boards().size(), boards.size());
        assertFalse(boards.isEmpty());
        assertEquals(all, boards.stream().flatMap(List::stream).toList());
        for (List<CutStep> steps : boards) {
            for (int i = 0; i < steps.size(); i++) {
                assertEquals(i + 1, steps.get(i).step());
                assertTrue(
                        i == 0 || order(steps, steps.get(i - 1)) <= order(steps, steps.get(i)), () -> steps.toString());
            }
        }
    }

    /** Whole boards first, then all sections, then section by section what is ripped before what is sliced. */
    private static int order(List<CutStep> steps, CutStep step) {
        if (step.section() == null) {
            return step.operation().compareTo(CutOperation.KEEP);
        }
        if (step.lane() == null) {
            return step.section();
        }
        return 100_000 + 10 * step.section() + (isLane(steps, step) ? 0 : 1);
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void everyCutTakesItsPartAndItsKerf(Planned planned) {
        double crosscut = planned.design().kerf();
        double rip = planned.design()
                .unit()
                .toMillimetres(planned.plan().allowances().ripKerf());
        for (List<CutStep> steps : boards(planned)) {
            CutStep board = last(those(steps, step -> step.part() == CutPart.BOARD));
            List<CutStep> sections = those(steps, step -> step.section() != null && step.lane() == null);
            followed(
                    sections,
                    board.length(),
                    crosscut,
                    sections.stream().map(CutStep::length).toList());
            for (CutStep section : sections) {
                List<CutStep> lanes = those(
                        steps,
                        step -> section.section().equals(step.section()) && step.lane() != null && isLane(steps, step));
                followed(
                        lanes,
                        section.width(),
                        rip,
                        lanes.stream().map(CutStep::width).toList());
                for (CutStep lane : lanes) {
                    List<CutStep> strips = those(
                            steps,
                            step -> section.section().equals(step.section())
                                    && lane.lane().equals(step.lane())
                                    && !isLane(steps, step));
                    followed(
                            strips,
                            lane.thickness(),
                            rip,
                            strips.stream().map(step -> deep(lane, step)).toList());
                }
            }
        }
    }

    /** The first step of a lane makes the lane, all others take strips off it. */
    private static boolean isLane(List<CutStep> steps, CutStep step) {
        CutStep first = those(
                        steps,
                        other -> step.section().equals(other.section())
                                && step.lane().equals(other.lane()))
                .get(0);
        return first.step() == step.step();
    }

    /** What a strip takes of the thickness of its stick: its width if the stick is turned. */
    private static double deep(CutStep stick, CutStep strip) {
        boolean turned = Math.abs(strip.thickness() - stick.width()) < EXACT && strip.width() != stick.width();
        return turned ? strip.width() : strip.thickness();
    }

    /** With a tape: each cut is set to its part, and leaves what was there less the part and the kerf. */
    private static void followed(List<CutStep> cuts, double whole, double kerf, List<Double> parts) {
        double left = whole;
        for (int i = 0; i < cuts.size(); i++) {
            CutStep cut = cuts.get(i);
            assertEquals(whole - left + parts.get(i), cut.position(), EXACT, cut::toString);
            if (cut.operation() == CutOperation.KEEP) {
                assertEquals(cuts.size() - 1, i, "nothing is left behind what is kept");
                assertNull(cut.setting());
                assertNull(cut.left());
                assertNull(cut.waste());
                assertEquals(left, parts.get(i), 1e-6);
            } else if (cut.operation() == CutOperation.TRIM) {
                assertEquals(cuts.size() - 1, i, "nothing is left behind what is trimmed");
                assertEquals(parts.get(i), cut.setting(), EXACT, cut::toString);
                assertNull(cut.left());
                assertNull(cut.waste());
                double shaving = left - parts.get(i);
                assertTrue(shaving > 1e-6 && shaving <= kerf + 1e-6, () -> shaving + " in " + cut);
            } else {
                assertEquals(parts.get(i), cut.setting(), EXACT, cut::toString);
                left = left - cut.setting() - kerf;
                assertTrue(left > 0, cut::toString);
                boolean last = i + 1 == cuts.size();
                assertNull(last ? cut.left() : cut.waste(), "what is left behind the last cut is waste");
                assertEquals(left, last ? cut.waste() : cut.left(), EXACT, cut::toString);
            }
        }
    }

    private static CutStep last(List<CutStep> steps) {
        return steps.get(steps.size() - 1);
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void aBoardIsTrimmedToWhatIsSawn(Planned planned) {
        List<List<CutStep>> lists = boards(planned);
        for (int b = 0; b < lists.size(); b++) {
            CutBoard board = planned.plan().boards().get(b);
            List<CutStep> steps = those(lists.get(b), step -> step.part() == CutPart.BOARD);
            assertEquals(
                    board.offer() == null ? CutOperation.TAKE : CutOperation.BUY,
                    steps.get(0).operation());
            assertEquals(board.length(), steps.get(0).length());
            assertEquals(board.width(), steps.get(0).width());
            assertEquals(board.thickness(), steps.get(0).thickness());
            CutStep trimmed = last(steps);
            assertEquals(board.clearLength(), trimmed.length(), EXACT);
            assertEquals(board.clearWidth(), trimmed.width(), EXACT);
            assertEquals(board.surfacedThickness(), trimmed.thickness(), EXACT);
            double ends = those(steps, step -> step.operation() == CutOperation.TRIM_END).stream()
                    .mapToDouble(CutStep::setting)
                    .sum();
            assertEquals(board.length() - board.clearLength(), ends, EXACT);
        }
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void everyStripOfThePlanComesOfOneStep(Planned planned) {
        StockPlan plan = planned.plan();
        List<CutStep> strips = those(
                CutList.of(plan, planned.design().unit()),
                step -> step.part() == CutPart.STRIP || step.part() == CutPart.SPARE);
        List<CutBoard.StripCut> laid = new ArrayList<>();
        plan.boards()
                .forEach(board -> board.sections()
                        .forEach(section -> section.lanes().forEach(lane -> laid.addAll(lane.strips()))));
        laid.removeIf(strip -> strip.part() == CutPart.KEPT);
        assertEquals(laid.size(), strips.size());
        for (CutStep strip : strips) {
            if (strip.part() == CutPart.SPARE) {
                assertNull(strip.band());
                continue;
            }
            assertTrue(plan.strips().stream().anyMatch(need -> isFor(strip, need)), strip::toString);
        }
        long supplied = plan.species().stream().mapToInt(SpeciesStock::supplied).sum();
        long whole = strips.stream()
                .filter(step -> step.part() == CutPart.STRIP)
                .filter(step -> step.piece() == null || step.piece() == 1)
                .count();
        assertEquals(supplied, whole);
    }

    private static boolean isFor(CutStep strip, StripNeed need) {
        return need.band() == strip.band()
                && need.lamination() == strip.lamination()
                && Math.abs(need.width() - strip.width()) < EXACT
                && Math.abs(need.thickness() - strip.thickness()) < EXACT
                && need.makeUps().stream()
                        .flatMap(makeUp -> makeUp.pieces().stream())
                        .anyMatch(piece -> piece.length() <= strip.length() + 1e-6);
    }

    @Test
    void piecesAreNumbered() {
        List<CutStep> steps =
                CutList.of(Stocks.pieces().plan(), Stocks.pieces().design().unit());
        assertTrue(steps.stream().anyMatch(step -> step.piece() != null && step.piece() == 2));
    }

    @Test
    void whatNeedsNoCutIsKept() {
        List<CutStep> steps =
                CutList.of(Stocks.exact().plan(), Stocks.exact().design().unit());
        Map<CutOperation, Long> counts =
                steps.stream().collect(Collectors.groupingBy(CutStep::operation, Collectors.counting()));
        assertEquals(Map.of(CutOperation.TAKE, 1L, CutOperation.RIP, 1L, CutOperation.KEEP, 2L), counts);
        assertEquals(CutPart.SECTION, steps.get(1).part());
        assertEquals(CutPart.STRIP, steps.get(2).part());
        assertEquals(CutPart.STRIP, steps.get(3).part());
    }

    @Test
    void shavingsAreNotSawnOff() {
        List<CutStep> steps = CutList.of(
                Stocks.nearlyExact().plan(), Stocks.nearlyExact().design().unit());
        Map<CutOperation, Long> counts =
                steps.stream().collect(Collectors.groupingBy(CutStep::operation, Collectors.counting()));
        // The section by 2 mm, the second lane by 1.6 mm and both strips by 1 mm; kerfs take 3.2 and 2.4 mm.
        assertEquals(Map.of(CutOperation.TAKE, 1L, CutOperation.RIP, 1L, CutOperation.TRIM, 4L), counts);
    }

    @Test
    void aShoppingListAddsUpAndSaysWhatIsShort() {
        StockPlan plan = Stocks.bought().plan();
        ShoppingList list = ShoppingList.of(plan);
        assertEquals(2, list.total().count());
        assertEquals(60, list.total().cost(), EXACT);
        assertEquals(2 * 1300.0 * 100 * 38, list.total().boardFeet(), 1e-3);
        assertEquals(
                plan.species().stream().mapToInt(SpeciesStock::missing).sum(),
                list.missing().stream()
                        .mapToInt(ShoppingList.MissingStrips::count)
                        .sum());
        assertEquals(
                plan.species().stream()
                        .mapToDouble(SpeciesStock::missingBoardFeet)
                        .sum(),
                list.missing().stream()
                        .mapToDouble(ShoppingList.MissingStrips::boardFeet)
                        .sum(),
                1e-3);
        assertFalse(list.missing().isEmpty());
        assertFalse(list.complete());
        List<ShoppingRow> rows = list.rows();
        assertEquals(ShoppingRow.Kind.PURCHASE, rows.get(0).row());
        assertEquals(30, rows.get(0).costEach(), EXACT);
        assertEquals(ShoppingRow.Kind.TOTAL, rows.get(1).row());
        assertNull(rows.get(1).species());
        assertEquals(ShoppingRow.Kind.MISSING, rows.get(2).row());
        assertNotNull(rows.get(2).width());
        assertNull(rows.get(2).cost());
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void aListIsCompleteIfNothingIsMissing(Planned planned) {
        ShoppingList list = ShoppingList.of(planned.plan());
        assertEquals(list.missing().isEmpty(), list.complete());
    }

    @Test
    void nothingToBuyIsATotalOfNothing() {
        ShoppingList list = ShoppingList.of(Stocks.longBoard().plan());
        assertEquals(0, list.total().count());
        assertEquals(List.of(), list.purchases());
        assertEquals(ShoppingRow.Kind.TOTAL, list.rows().get(0).row());
    }
}
