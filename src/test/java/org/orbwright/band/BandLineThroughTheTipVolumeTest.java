package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.INVARIANT;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.band.BandSurvival.BandView;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.fixture.Designs;
import org.orbwright.source.Source;

@Source(INVARIANT)
class BandLineThroughTheTipVolumeTest {
    /** Two bands from tip to base that meet in the tip's axis. */
    private static Design halves(String solid) {
        double half = Designs.of(solid).build().panels().get(0).pieces().get(0).right();
        return Designs.of(solid)
                .thickness(60)
                .bands(90, Designs.widths(half, null))
                .build();
    }

    @ParameterizedTest
    @ValueSource(strings = {"cube", "octahedron", "dodecahedron", "icosahedron"})
    void theAxisHalvesTheWood(String solid) {
        Design design = halves(solid);
        Panel panel = design.panels().get(0);
        Piece piece = panel.pieces().get(0);
        BandLine axis = BandLine.of(0, Math.PI / 2);
        SegmentVolume before = SegmentVolume.ofSolid(panel, piece, design.thickness());
        assertEquals(before.whole() / 2, before.below(axis), 1e-12 * before.whole());
        SegmentVolume sphere = SegmentVolume.ofSphere(panel, piece, design.thickness(), design.sphereRadius());
        assertEquals(sphere.whole() / 2, sphere.below(axis), 1e-12 * sphere.whole());
    }

    @ParameterizedTest
    @ValueSource(strings = {"cube", "octahedron", "dodecahedron", "icosahedron"})
    void theAxisHalvesTheSphere(String solid) {
        BandSurvival bands = BandCalculator.calculate(halves(solid), 9);
        for (BandView view : bands.faces().get(0).segments().get(0).upright()) {
            assertEquals(0.5, view.shareOfSphere(), 1e-12);
        }
    }

    @ParameterizedTest(name = "{0} mm beside the tip at {1} degrees")
    @CsvSource({
        "0, 60",
        "0, -60",
        "0, 90",
        "0, -90",
        "0, 47",
        "1e-300, 60",
        "1e-17, 60",
        "-1e-17, 60",
        "1e-15, 60",
        "-1e-15, 60",
        "1e-15, -60",
        "1e-14, 60",
        "1e-15, 90",
        "-1e-15, 90"
    })
    @DisplayName("a line beside the tip by less than rounding cuts off what one 1e-7 mm beside it does")
    void aLineBesideTheTipIsAsGoodAsOneThroughIt(double offset, double degrees) {
        Design design = Designs.of("cube").thickness(60).build();
        Panel panel = design.panels().get(0);
        Piece piece = panel.pieces().get(0);
        double angle = Math.toRadians(degrees);
        SegmentVolume sphere = SegmentVolume.ofSphere(panel, piece, design.thickness(), design.sphereRadius());
        double near = sphere.below(BandLine.of(1e-7, angle));
        assertEquals(near, sphere.below(BandLine.of(offset, angle)), 1e-3);
    }
}
