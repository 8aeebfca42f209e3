package org.orbwright.sphere;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.fixture.Designs;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.source.Source;
import org.orbwright.sphere.SphereSizing.FaceSizing;

/** A design that is changed to a limit that the service states meets that limit. */
@Source(INVARIANT)
class SphereLimitsTest {
    private static final double EXACT = 1e-9;

    static List<Solid> solids() {
        return SolidCatalogue.all();
    }

    private static SphereSizing sizing(Designs design) {
        return SphereCalculator.calculate(design.build());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void theSmallestThicknessLeavesTheMinimumWall(Solid solid) {
        Designs design = Designs.of(solid.name()).minimumWall(7);
        double smallest = sizing(design).smallestThickness();
        SphereSizing sizing = sizing(design.thickness(smallest));
        assertEquals(7, sizing.thinnestWall(), EXACT);
        assertEquals(smallest, sizing.smallestThickness(), EXACT);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void theSmallestThicknessWithALandLeavesTheMinimumWall(Solid solid) {
        Designs design = Designs.of(solid.name()).land(1.5).minimumWall(7);
        assertEquals(
                7, sizing(design.thickness(sizing(design).smallestThickness())).thinnestWall(), EXACT);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void whereFlatsStayTheSmallestThicknessLeavesTheMinimumWallToo(Solid solid) {
        Designs design = Designs.of(solid.name());
        double seam = sizing(design).seamDiameter();
        Designs flats = design.diameter(Math.min(202, seam)).minimumWall(7);
        assertEquals(
                7, sizing(flats.thickness(sizing(flats).smallestThickness())).thinnestWall(), EXACT);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void theThinnestWallIsNowhereThicker(Solid solid) {
        SphereSizing sizing = sizing(Designs.of(solid.name()));
        for (FaceSizing face : sizing.faces()) {
            assertTrue(face.wall().corner() <= face.wall().edgeMiddle());
            assertTrue(face.wall().edgeMiddle() <= face.wall().faceCentre());
            assertTrue(sizing.thinnestWall() <= face.wall().corner());
            assertTrue(face.removal().faceCentre() >= 2 - EXACT);
            assertTrue(face.removal().edgeMiddle() <= face.removal().corner());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void withTheLargestLandForAcrossFlatsSeamsJustCloseOnTheLargestSphere(Solid solid) {
        Designs design = Designs.of(solid.name()).thickness(99);
        double land = sizing(design).land().largestForAcrossFlats();
        SphereSizing sizing = sizing(design.land(land));
        assertEquals(200, sizing.acrossFlats(), EXACT);
        assertEquals(200, sizing.seamDiameter(), EXACT);
        assertEquals(200, sizing.largestDiameter(), EXACT);
        assertEquals(land, sizing.land().largestForAcrossFlats(), EXACT);
        assertEquals(land, sizing.land().largestForPanels(), EXACT);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void withTheLargestLandForThesePanelsSeamsJustCloseOnTheLargestSphere(Solid solid) {
        Designs design = Designs.of(solid.name()).thickness(60);
        double edge = sizing(design).edge();
        double land = sizing(design).land().largestForPanels();
        // The same panels with a land grow across flats.
        SphereSizing sizing = sizing(design.edge(edge).thickness(land + 1).land(land));
        assertEquals(200 + 2 * land, sizing.acrossFlats(), EXACT);
        assertEquals(sizing.acrossFlats(), sizing.seamDiameter(), EXACT);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void withTheLargestLandForTheDiameterSeamsJustCloseOnTheChosenSphere(Solid solid) {
        Designs design = Designs.of(solid.name()).thickness(99).diameter(190.0);
        double land = sizing(design).land().largestForDiameter();
        SphereSizing sizing = sizing(design.land(land));
        assertEquals(190, sizing.seamDiameter(), EXACT);
        assertEquals(land, sizing.land().largestForDiameter(), EXACT);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void theFenceShiftIsTheLandOverTheTangentOfTheBevel(Solid solid) {
        SphereSizing sizing = sizing(Designs.of(solid.name()).land(3));
        for (FaceSizing face : sizing.faces()) {
            double tangent = face.jointDistance() / (face.mountingDiscDiameter() / 2);
            assertEquals(3 / tangent, face.fenceShift(), EXACT);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void theSwingReachesTheOutermostCorner(Solid solid) {
        SphereSizing plain = sizing(Designs.of(solid.name()));
        assertEquals(2 * solid.circumradius() * plain.edge(), plain.swingDiameter(), EXACT);
        assertTrue(sizing(Designs.of(solid.name()).edge(plain.edge()).land(3)).swingDiameter() > plain.swingDiameter());
    }
}
