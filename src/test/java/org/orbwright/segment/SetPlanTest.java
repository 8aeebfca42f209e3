package org.orbwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.ORACLE;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.source.Source;

@Source(
        value = HAND,
        text = "counting: N segments a blank are half of N, rounded up, of one set and the rest of the other")
class SetPlanTest {
    private static final int MOST = 24;

    /** Tries every number of blanks and of turned ones among them. */
    private static int fewestBlanks(int perBlank, int upright, int inverted) {
        int more = (perBlank + 1) / 2;
        int less = perBlank / 2;
        for (int blanks = 0; ; blanks++) {
            for (int turned = 0; turned <= blanks; turned++) {
                int straight = blanks - turned;
                if (straight * more + turned * less >= upright && straight * less + turned * more >= inverted) {
                    return blanks;
                }
            }
        }
    }

    @Test
    @Source(value = ORACLE, text = "exhaustive search of all numbers of blanks and of turned ones")
    void alternatingSetsTakeTheFewestBlanksThereAre() {
        for (int perBlank = 1; perBlank <= 9; perBlank++) {
            for (int upright = 0; upright <= MOST; upright++) {
                for (int inverted = 0; inverted <= MOST; inverted++) {
                    if (perBlank == 1 || upright + inverted > 0) {
                        check(perBlank, upright, inverted);
                    }
                }
            }
        }
    }

    private static void check(int perBlank, int upright, int inverted) {
        String what = perBlank + " per blank, " + upright + " upright, " + inverted + " inverted";
        SetPlan plan = SetPlan.alternating(perBlank, upright, inverted);
        assertEquals(fewestBlanks(perBlank, upright, inverted), plan.blanks(), what);
        assertTrue(plan.turned() >= 0 && plan.turned() <= plan.blanks(), what);
        int straight = plan.blanks() - plan.turned();
        assertEquals(straight * ((perBlank + 1) / 2) + plan.turned() * (perBlank / 2), plan.upright(), what);
        assertEquals(plan.blanks() * perBlank, plan.upright() + plan.inverted(), what);
        assertTrue(plan.upright() >= upright && plan.inverted() >= inverted, what);
    }

    @Test
    @Source(INVARIANT)
    void oneSetTakesTheFewestBlanksThereAre() {
        for (int perBlank = 1; perBlank <= 15; perBlank++) {
            for (int needed = 0; needed <= 200; needed++) {
                SetPlan plan = SetPlan.single(perBlank, needed);
                assertTrue(plan.blanks() * perBlank >= needed);
                assertTrue((plan.blanks() - 1) * perBlank < needed);
                assertEquals(new SetPlan(plan.blanks(), 0, plan.blanks() * perBlank, 0), plan);
            }
        }
    }

    @Test
    @DisplayName("60 and 60 at 12 a blank: 10 blanks, none turned")
    void pairOfDodecahedra() {
        assertEquals(new SetPlan(10, 0, 60, 60), SetPlan.alternating(12, 60, 60));
    }

    @Test
    @DisplayName("60 and 60 at 11 a blank: 11 blanks, 5 of them turned, 61 and 60")
    void oddBlanksAreTurnedToEvenOut() {
        assertEquals(new SetPlan(11, 5, 61, 60), SetPlan.alternating(11, 60, 60));
    }

    @Test
    @DisplayName("60 of one set only at 11 a blank: 10 blanks, none turned, 50 of the other set left")
    void oneSetOnly() {
        assertEquals(new SetPlan(10, 0, 60, 50), SetPlan.alternating(11, 60, 0));
    }

    @Test
    @DisplayName("one segment a blank: half of the blanks are turned")
    void oneSegmentABlank() {
        assertEquals(new SetPlan(120, 60, 60, 60), SetPlan.alternating(1, 60, 60));
    }
}
