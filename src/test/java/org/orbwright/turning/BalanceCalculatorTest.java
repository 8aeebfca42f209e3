package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Sets;
import org.orbwright.fixture.DesignArbitraries;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.Numbering;
import org.orbwright.segment.YieldCalculator;
import org.orbwright.solid.PanelMix;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.Balance.HeldBody;
import org.orbwright.turning.Balance.PanelMass;
import org.orbwright.turning.BalanceRequest.OddPanelRequest;
import org.orbwright.turning.BalanceRequest.OtherWoodRequest;
import org.orbwright.turning.TurningRequest.SpeedRequest;
import org.orbwright.wood.WoodRequest;

/** Centre of mass and imbalance. */
class BalanceCalculatorTest {
    private static final double EXACT = 1e-9;

    private static Balance balance(
            Designs designs, List<OddPanelRequest> panels, AxisRequest axis, Double mounting, Double speed) {
        Design design = designs.build();
        return BalanceCalculator.calculate(new BalanceRequest(panels, mounting), turning(axis, speed), design);
    }

    private static TurningRequest turning(AxisRequest axis, Double speed) {
        SpeedRequest turns = speed == null ? null : new SpeedRequest(speed, null, null);
        return new TurningRequest(axis, null, null, null, turns, null, null);
    }

    private static OddPanelRequest heavier(int panel, double factor) {
        return new OddPanelRequest(Numbering.of(panel), factor, null);
    }

    /** A cube 100 mm across, 26 mm thick, of one wood, turned to a sphere of 96 mm. */
    private static Designs cube() {
        return Designs.of("cube")
                .acrossFlats(100)
                .thickness(26)
                .land(0)
                .diameter(96.0)
                .minimumWall(1);
    }

    /** The face of a cube whose normal is square to the one of the first face, or against it. */
    private static List<Integer> across(Designs designs, boolean opposite) {
        var solid = designs.build().solid();
        return IntStream.range(1, solid.faces().size())
                .filter(f -> {
                    double dot = solid.normal(solid.faces().get(0))
                            .dot(solid.normal(solid.faces().get(f)));
                    return opposite ? dot < -0.5 : Math.abs(dot) < 0.5;
                })
                .boxed()
                .toList();
    }

    @Provide
    Arbitrary<Designs> designs() {
        return DesignArbitraries.designs();
    }

    @Property(tries = 150, seed = "20261125")
    void aSolidOfAlikePanelsIsInBalanceAboutAnyAxis(@ForAll("designs") Designs designs) {
        for (Through through : Through.values()) {
            Balance balance = balance(designs, null, new AxisRequest(through, 1), null, 500.0);
            assertBalanced(balance.solid());
            if (balance.sphere() != null) {
                assertBalanced(balance.sphere());
            }
        }
    }

    private static void assertBalanced(HeldBody body) {
        assertEquals(0, body.offAxis());
        assertEquals(0, body.alongAxis(), 1e-6);
        assertNull(body.heavyPanel());
        assertEquals(0.0, body.force());
    }

    @Property(tries = 60, seed = "20261125")
    void massesAreThoseOfTheYield(@ForAll("designs") Designs designs) {
        Design design = designs.build();
        Balance balance = balance(designs, null, null, null, null);
        Double sphere = YieldCalculator.calculate(design).spheres().get(0).mass();
        assertEquals(sphere == null, balance.sphere() == null);
        if (sphere != null) {
            assertEquals(sphere, balance.sphere().mass(), 1e-9 * sphere);
        }
        assertEquals(
                balance.panels().stream().mapToDouble(PanelMass::inSolid).sum(),
                balance.solid().mass(),
                1e-9 * balance.solid().mass());
    }

    @Test
    @DisplayName("by hand: a frustum's centroid is the integral of z^3 over that of z^2: 3/4 (h^4 - k^4) / (h^3 - k^3)")
    void oneHeavyPanelOfACube() {
        Designs cube = cube();
        int side = across(cube, false).get(0);
        HeldBody solid =
                balance(cube, List.of(heavier(side, 1.5)), null, null, null).solid();
        double h = 50;
        double k = 24;
        double centroid = 0.75 * (Math.pow(h, 4) - Math.pow(k, 4)) / (Math.pow(h, 3) - Math.pow(k, 3));
        assertEquals(39.9247, centroid, 1e-4);
        // Half a panel more than six panels.
        assertEquals(0.5 * centroid / 6.5, solid.offAxis(), EXACT);
        assertEquals(0, solid.alongAxis());
        assertEquals(side, solid.heavyPanel());
        assertEquals(0, solid.fromHeavyPanel(), EXACT);
        assertEquals(solid.mass() * solid.offAxis(), solid.imbalance(), EXACT);
    }

    @Test
    @DisplayName("by symmetry: two heavy panels side by side pull to the edge between them, at 45 degrees from both")
    void twoHeavyPanelsPullBetweenThem() {
        Designs cube = cube();
        List<Integer> sides = across(cube, false);
        int first = sides.get(0);
        int second = sides.stream()
                .filter(f -> f != first
                        && Math.abs(cube.build()
                                        .solid()
                                        .normal(cube.build().solid().faces().get(f))
                                        .dot(cube.build()
                                                .solid()
                                                .normal(cube.build()
                                                        .solid()
                                                        .faces()
                                                        .get(first))))
                                < 0.5)
                .findFirst()
                .orElseThrow();
        for (HeldBody body : bodies(balance(cube, List.of(heavier(first, 2), heavier(second, 2)), null, null, null))) {
            assertEquals(first, body.heavyPanel());
            assertEquals(Math.PI / 4, Math.abs(body.fromHeavyPanel()), EXACT);
        }
    }

    private static List<HeldBody> bodies(Balance balance) {
        return List.of(balance.solid(), balance.sphere());
    }

    @Test
    void aHeavyPanelOnTheAxisShiftsTheCentreAlongIt() {
        Designs cube = cube();
        for (HeldBody body : bodies(balance(cube, List.of(heavier(0, 1.5)), null, null, null))) {
            assertEquals(0, body.offAxis());
            assertTrue(body.alongAxis() > 1);
        }
        int opposite = across(cube, true).get(0);
        for (HeldBody body : bodies(balance(cube, List.of(heavier(opposite, 1.5)), null, null, null))) {
            assertTrue(body.alongAxis() < -1);
        }
    }

    @Test
    @DisplayName("hand calculation: 1 g mm at 1000 radians a second is 1 N; 30000 / pi turns a minute are that speed")
    void forceAtASpeed() {
        Designs cube = cube();
        int side = across(cube, false).get(0);
        HeldBody body = balance(cube, List.of(heavier(side, 1.01)), null, 0.7, 30000 / Math.PI)
                .solid();
        assertEquals(1000 * body.imbalance(), body.force(), EXACT);
        assertEquals(body.mass() + 0.7, body.turningMass(), EXACT);
        assertEquals(body.imbalance() / body.turningMass(), body.eccentricity(), EXACT);
        assertEquals(1000 * body.eccentricity(), body.grade(), EXACT);
        assertEquals(body.force() / (9.80665 * body.turningMass()), body.forceToWeight(), EXACT);
    }

    @Test
    void aPanelOfOtherWoodIsAsHeavyAsThatWood() {
        Designs cube = cube().bands(List.of(Designs.band("black walnut", null)))
                .woods(
                        new WoodRequest("Black Walnut", null, null, 500.0),
                        new WoodRequest("own ash", null, null, 750.0));
        int side = across(cube, false).get(0);
        OddPanelRequest ash =
                new OddPanelRequest(Numbering.of(side), null, List.of(new OtherWoodRequest("black walnut", "Own Ash")));
        Balance other =
                BalanceCalculator.calculate(new BalanceRequest(List.of(ash), null), TurningRequest.USUAL, cube.build());
        Balance heavy = balance(cube, List.of(heavier(side, 1.5)), null, null, null);
        assertEquals(heavy.solid().offAxis(), other.solid().offAxis(), EXACT);
        assertEquals(heavy.sphere().offAxis(), other.sphere().offAxis(), EXACT);
        assertEquals(
                List.of(true, true),
                other.densities().stream().map(d -> d.stated()).toList());
    }

    @Test
    void invertedPanelsAmongUprightOnesAreOffBalance() {
        Designs lantern = Designs.example("dodecahedron-with-land");
        Balance one = balance(lantern, Sets.BY_PANEL, List.of(4));
        assertTrue(one.solid().offAxis() > 0.001);
        assertNotEquals(one.panels().get(3).inSolid(), one.panels().get(2).inSolid());
        List<Integer> all = IntStream.rangeClosed(1, 12).boxed().toList();
        assertEquals(0, balance(lantern, Sets.BY_PANEL, all).solid().offAxis());
        assertEquals(0, balance(lantern, Sets.INVERTED, null).solid().offAxis());
    }

    /**
     * Of three inverted panels around a corner of a cube none lies opposite another: it is off balance, and says so.
     */
    @Test
    void mixedPanelsAreWeighedWhereTheyLie() {
        Designs lantern = Designs.example("dodecahedron-with-land");
        Balance mixed = balance(lantern, Sets.MIXED, null);
        assertEquals(
                6,
                mixed.panels().stream().filter(p -> p.set() == BandSet.INVERTED).count());
        List<Integer> inverted = Numbering.of(PanelMix.inverted(Designs.solid("dodecahedron")));
        Balance listed = balance(lantern, Sets.BY_PANEL, inverted);
        assertEquals(listed.solid(), mixed.solid());
    }

    private static Balance balance(Designs designs, Sets sets, List<Integer> inverted) {
        Design design = Design.of(designs.sets(sets, inverted));
        return BalanceCalculator.calculate(BalanceRequest.USUAL, TurningRequest.USUAL, design);
    }

    @ParameterizedTest
    @EnumSource(Through.class)
    void everyAxisGoesThroughWhatItIsNamedAfter(Through through) {
        Designs cube = cube();
        // Seen along the axis all panels that the axis' end is nearest to pull it there; a heavy one shows how far.
        HeldBody body = balance(cube, List.of(heavier(0, 2)), new AxisRequest(through, 1), null, null)
                .solid();
        double along =
                balance(cube, List.of(heavier(0, 2)), null, null, null).solid().alongAxis();
        double distance = Math.hypot(body.offAxis(), body.alongAxis());
        assertEquals(along, distance, EXACT, "the centre of mass does not depend on the axis");
    }

    @ParameterizedTest
    @CsvSource({
        "PANEL, /balance/panels/0/panel, NO_SUCH_PANEL",
        "TWICE, /balance/panels/1/panel, PANEL_TWICE",
        "WOOD, /balance/panels/0/woods/0/species, NO_SUCH_WOOD",
        "UNKNOWN, /balance/panels/0/woods/0/by, DENSITY_UNKNOWN",
        "WOOD_TWICE, /balance/panels/0/woods/1/species, WOOD_TWICE",
        "AXIS, /turning/axis/number, NO_SUCH_AXIS"
    })
    void whatTheDesignHasNotIsRefused(String what, String path, String code) {
        Design design =
                cube().bands(List.of(Designs.band("black walnut", null))).build();
        List<OddPanelRequest> panels = switch (what) {
            case "PANEL" -> List.of(heavier(6, 2));
            case "TWICE" -> List.of(heavier(1, 2), heavier(1, 3));
            case "WOOD" -> List.of(new OddPanelRequest(1, null, List.of(new OtherWoodRequest("oak", "white ash"))));
            case "WOOD_TWICE" ->
                List.of(new OddPanelRequest(
                        1,
                        null,
                        List.of(
                                new OtherWoodRequest("black walnut", "white ash"),
                                new OtherWoodRequest("black walnut", "sugar maple"))));
            case "UNKNOWN" ->
                List.of(new OddPanelRequest(1, null, List.of(new OtherWoodRequest("black walnut", "moonwood"))));
            default -> null;
        };
        BalanceRequest request = new BalanceRequest(panels, null);
        TurningRequest turning = turning(what.equals("AXIS") ? new AxisRequest(Through.CORNER, 9) : null, null);
        var refused = assertThrows(
                ImpossibleDesignException.class, () -> BalanceCalculator.calculate(request, turning, design));
        assertEquals(path, refused.violations().get(0).path());
        assertEquals(code, refused.violations().get(0).code());
    }
}
