package org.orbwright.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.orbwright.source.Kind.CONTRACT;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.orbwright.fixture.Designs;
import org.orbwright.source.Source;
import org.orbwright.wood.WoodRequest;
import org.orbwright.wood.Woods;

/** What a document may not say of its own woods. */
@Source(CONTRACT)
class OwnWoodsTest {
    private static final WoodRequest PLUM = new WoodRequest("plum", 0.0018, 0.0035, 720.0);

    private static List<Violation> refusals(WoodRequest... woods) {
        return assertThrows(
                        ImpossibleDesignException.class,
                        () -> Designs.of("cube").woods(woods).build())
                .violations();
    }

    @Test
    void aWoodThatIsStatedTwiceIsRefused() {
        assertEquals(
                List.of(new Violation(
                        "/woods/2/name", "WOOD_TWICE", "The wood Plum  is stated twice.", "Plum ", "each wood once")),
                refusals(
                        PLUM,
                        new WoodRequest("pear", null, 0.0036, null),
                        new WoodRequest("Plum ", null, 0.003, null)));
    }

    @Test
    void aWoodIsStatedOnceByAllItsNames() {
        WoodRequest one = new WoodRequest("white oak", null, null, 750.0);
        WoodRequest other = new WoodRequest("White Oak (commercial)", null, null, 760.0);
        assertEquals("/woods/1/name", refusals(one, other).get(0).path());
        // A name of several woods is none of them.
        Designs.of("cube")
                .woods(new WoodRequest("oak", null, null, 700.0), one, new WoodRequest("red oak", null, null, 700.0))
                .build();
    }

    @Test
    void aWoodOfWhichNothingIsSaidIsRefused() {
        assertEquals(
                List.of(new Violation(
                        "/woods/1",
                        "WOOD_WITHOUT_NUMBERS",
                        "Nothing is said of pear but its name.",
                        "pear",
                        "a radialCoefficient, a tangentialCoefficient or a density")),
                refusals(PLUM, new WoodRequest("pear", null, null, null)));
    }

    @Test
    void aWoodThatIsNotUsedIsNoError() {
        Design design = Designs.of("cube").woods(PLUM).build();
        assertEquals(List.of(PLUM), design.request().woods());
        assertEquals(720, design.woods().density("Plum").orElseThrow(), 1e-9);
        assertEquals(Woods.TABLE, Designs.of("cube").build().woods());
    }
}
