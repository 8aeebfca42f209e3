package org.orbwright.sphere;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.REFERENCE;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.design.SizeBy;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.source.Source;
import org.orbwright.sphere.SphereSizing.FaceSizing;
import org.orbwright.sphere.SphereSizing.SphereLimit;

@Source(value = HAND, text = "Pythagoras in a cube of 200 mm")
class SphereCalculatorTest {
    private static final double EXACT = 1e-9;

    private static SphereSizing sizing(Designs design) {
        return SphereCalculator.calculate(design.build());
    }

    /**
     * By hand, from the ratios of the regular dodecahedron: a = g / 1.6180339887, edge = g / 1.1135163644, seam radius
     * = 1.1755705046 g, corner radius = 1.2584085724 g. All digits were worked out anew by mpmath.
     */
    @Nested
    @DisplayName("dodecahedron 177.8 across flats, land 4, panels 28, sphere 172, wall 6, by hand")
    @Source(
            value = HAND,
            text = "the dodecahedron's ratios, a = g / phi, rho = g sqrt(1 + 1 / phi^2), and the formulas in each "
                    + "name; digits by mpmath")
    class DodecahedronByHand {
        private final SphereSizing sizing = sizing(Designs.of("dodecahedron")
                .acrossFlats(177.8)
                .thickness(28)
                .land(4)
                .diameter(172.0)
                .minimumWall(6));
        private final FaceSizing face = sizing.faces().get(0);

        @Test
        @DisplayName("h = 177.8 / 2 = 88.9, g = h - 4 = 84.9")
        void distances() {
            assertEquals(177.8, sizing.acrossFlats(), EXACT);
            assertEquals(88.9, face.faceDistance(), EXACT);
            assertEquals(84.9, face.jointDistance(), EXACT);
            assertEquals(99.805935839262, face.seamRadius(), EXACT);
            assertEquals(106.838887793773, face.cornerRadius(), EXACT);
            assertEquals(76.244950423214, sizing.edge(), EXACT);
        }

        @Test
        @DisplayName("removal: h - R = 2.9, hypot(h, a) - R = 17.2300, sqrt(h^2 + c^2 - g^2) - R = 24.0443")
        void removal() {
            assertEquals(88.9 - 86, face.removal().faceCentre(), EXACT);
            assertEquals(Math.hypot(88.9, 52.471085644866) - 86, face.removal().edgeMiddle(), EXACT);
            assertEquals(17.229960906468, face.removal().edgeMiddle(), EXACT);
            assertEquals(24.044299920579, face.removal().corner(), EXACT);
        }

        @Test
        @DisplayName("wall: R - (h - t) = 25.1, R - (h - t) rho / g = 14.4078, R - (h - t) c / g = 9.3629")
        void wall() {
            assertEquals(86 - 60.9, face.wall().faceCentre(), EXACT);
            assertEquals(86 - 60.9 * 99.805935839262 / 84.9, face.wall().edgeMiddle(), EXACT);
            assertEquals(14.407756270777, face.wall().edgeMiddle(), EXACT);
            assertEquals(9.362917942983, face.wall().corner(), EXACT);
            assertEquals(9.362917942983, sizing.thinnestWall(), EXACT);
        }

        @Test
        @DisplayName("smallest thickness: h - (R - 6) g / c = 25.3276")
        void smallestThickness() {
            assertEquals(88.9 - 80 * 84.9 / 106.838887793773, face.smallestThickness(), EXACT);
            assertEquals(25.327642216659, sizing.smallestThickness(), EXACT);
        }

        @Test
        @DisplayName("land: rho - g = 14.9059, h (1 - g / rho) = 13.2771, h - R g / rho = 15.7440")
        void landLimits() {
            assertEquals(4, sizing.land().land());
            assertEquals(14.905935839262, sizing.land().largestForPanels(), EXACT);
            assertEquals(13.277143137504, sizing.land().largestForAcrossFlats(), EXACT);
            assertEquals(15.744030481725, sizing.land().largestForDiameter(), EXACT);
        }

        @Test
        @DisplayName("fence shift: 4 / tan 58.2825 deg = 4 a / g = 2.4721")
        void fenceShift() {
            assertEquals(4 / Math.tan(Math.toRadians(58.28252558853899)), face.fenceShift(), EXACT);
            assertEquals(2.472135955000, face.fenceShift(), EXACT);
        }

        @Test
        @DisplayName("mounting disc: 2 a = 104.9422")
        void mountingDisc() {
            assertEquals(104.942171289732, face.mountingDiscDiameter(), EXACT);
            assertTrue(face.opposite());
        }

        @Test
        @DisplayName("swing: 2 sqrt(h^2 + c^2 - g^2) = 220.0886")
        void swing() {
            assertEquals(220.088599841159, sizing.swingDiameter(), EXACT);
        }

        @Test
        @DisplayName("largest sphere 177.8, limited by flats; seams closed inside 199.6119; area 4 pi 86^2")
        void sphere() {
            assertEquals(199.611871678524, sizing.seamDiameter(), EXACT);
            assertEquals(177.8, sizing.largestDiameter(), EXACT);
            assertEquals(SphereLimit.FLATS, sizing.largestLimitedBy());
            assertEquals(172, sizing.diameter(), EXACT);
            assertEquals(4 * Math.PI * 86 * 86, sizing.area(), 1e-9);
            assertEquals(0, face.flatDiameter());
        }
    }

    /** A cube is a box: everything is Pythagoras. */
    @Nested
    @DisplayName("cube 200 mm, panels 60 mm, sphere 190 mm: a box, by Pythagoras")
    class CubeAsABox {
        private final SphereSizing sizing =
                sizing(Designs.of("cube").thickness(60).diameter(190.0).minimumWall(6));
        private final FaceSizing face = sizing.faces().get(0);

        @Test
        void outside() {
            assertEquals(200, sizing.acrossFlats(), EXACT);
            assertEquals(200, sizing.edge(), EXACT);
            assertEquals(200 * Math.sqrt(3), sizing.swingDiameter(), EXACT);
            assertEquals(200 * Math.sqrt(2), sizing.seamDiameter(), EXACT);
            assertEquals(200, face.mountingDiscDiameter(), EXACT);
        }

        @Test
        @DisplayName("the hollow is a box of 80 mm: its corner lies 40 sqrt 3, its edge 40 sqrt 2 from the centre")
        void inside() {
            assertEquals(95 - 40, face.wall().faceCentre(), EXACT);
            assertEquals(95 - 40 * Math.sqrt(2), face.wall().edgeMiddle(), EXACT);
            assertEquals(95 - 40 * Math.sqrt(3), face.wall().corner(), EXACT);
            // A wall of 6 wants a hollow with corners 89 from the centre: a box of 2 x 89 / sqrt 3.
            assertEquals(100 - 89 / Math.sqrt(3), sizing.smallestThickness(), EXACT);
        }

        @Test
        void removal() {
            assertEquals(5, face.removal().faceCentre(), EXACT);
            assertEquals(100 * Math.sqrt(2) - 95, face.removal().edgeMiddle(), EXACT);
            assertEquals(100 * Math.sqrt(3) - 95, face.removal().corner(), EXACT);
        }

        @Test
        @DisplayName("land: 100 (sqrt 2 - 1) more on these panels, 100 (1 - 1 / sqrt 2) within 200 mm across flats")
        void land() {
            assertEquals(100 * (Math.sqrt(2) - 1), sizing.land().largestForPanels(), EXACT);
            assertEquals(100 * (1 - Math.sqrt(0.5)), sizing.land().largestForAcrossFlats(), EXACT);
            assertEquals(0, face.fenceShift());
        }
    }

    @Test
    @DisplayName("a sphere of radius 101 on a cube with faces at 100: flats of 2 sqrt(101^2 - 100^2) = 28.3549")
    void flatsOfASphereThatIsTooLarge() {
        FaceSizing face = sizing(Designs.of("cube").diameter(202.0)).faces().get(0);
        assertEquals(2 * Math.sqrt(201), face.flatDiameter(), EXACT);
        assertEquals(-1, face.removal().faceCentre(), EXACT);
        assertEquals(25, face.wall().faceCentre(), EXACT, "there the panel itself is the wall");
    }

    @Test
    void aSphereAtTheFaceDistanceLeavesNoFlat() {
        assertEquals(
                0, sizing(Designs.of("cube").diameter(200.0)).faces().get(0).flatDiameter());
    }

    @Test
    @DisplayName("truncated icosahedron: pentagons at 2.3274, hexagons at 2.2673 edges")
    @Source(
            value = REFERENCE,
            text = "mpmath 1.3, 40 digits, src/test/python/solids.py: by the trigonometry of one corner")
    void severalFaceKinds() {
        SphereSizing sizing = sizing(Designs.of("truncated-icosahedron").edge(100));
        FaceSizing pentagon = sizing.faces().get(0);
        FaceSizing hexagon = sizing.faces().get(1);
        assertEquals("pentagon", pentagon.face());
        assertEquals("hexagon", hexagon.face());
        assertEquals(232.74384, pentagon.faceDistance(), 1e-4);
        assertEquals(226.72839, hexagon.faceDistance(), 1e-4);
        assertEquals(2 * hexagon.faceDistance(), sizing.acrossFlats(), EXACT);
        assertEquals(pentagon.seamRadius(), hexagon.seamRadius(), EXACT);
        assertEquals(pentagon.cornerRadius(), hexagon.cornerRadius(), EXACT);
        assertEquals(
                Math.max(pentagon.smallestThickness(), hexagon.smallestThickness()), sizing.smallestThickness(), EXACT);
        assertEquals(Math.min(pentagon.wall().corner(), hexagon.wall().corner()), sizing.thinnestWall(), EXACT);
    }

    @ParameterizedTest(name = "{0}, allowance {1}, land {2}: across flats {0} + 2 x {1}")
    @CsvSource({"300, 1.5, 0", "300, 1.5, 3", "120, 0, 0", "120, 5, 1"})
    @Source(CONTRACT)
    void sizeByTheFinishedSphere(double diameter, double allowance, double land) {
        SphereSizing sizing = sizing(Designs.of("truncated-octahedron")
                .size(SizeBy.SPHERE_DIAMETER, diameter)
                .allowance(allowance)
                .land(land));
        assertEquals(diameter + 2 * allowance, sizing.acrossFlats(), EXACT);
        assertEquals(diameter, sizing.diameter(), EXACT);
    }

    @Test
    @DisplayName("left out, the sphere is the largest less twice the turning allowance: 200 - 2 x 2")
    @Source(CONTRACT)
    void sphereLeftOut() {
        assertEquals(196, sizing(Designs.of("cube")).diameter(), EXACT);
        assertEquals(196 * 25.4, sizing(Designs.of("cube").in(LengthUnit.IN)).diameter(), 1e-7);
    }

    @Test
    @DisplayName("a land of 45 mm on a cube of 200 mm: seams close inside 110 sqrt 2 = 155.6, which limits the sphere")
    void seamsLimitTheLargestSphere() {
        SphereSizing sizing = sizing(Designs.of("cube").thickness(60).land(45));
        assertEquals(SphereLimit.SEAMS, sizing.largestLimitedBy());
        assertEquals(110 * Math.sqrt(2), sizing.largestDiameter(), EXACT);
        assertEquals(110 * Math.sqrt(2) - 4, sizing.diameter(), EXACT);
    }

    @Test
    void theSizeOfTheSphereAgreesWithTheEdge() {
        SphereSizing flats = sizing(Designs.of("cube").acrossFlats(150).land(5));
        assertEquals(140, flats.edge(), EXACT);
        assertEquals(150, sizing(Designs.of("cube").edge(140).land(5)).acrossFlats(), EXACT);
    }

    @Test
    @Source(
            value = HAND,
            text = "of four normals that add up to nothing no two are opposite; an octahedron's come in pairs")
    void aTetrahedronHasNoOppositeFaceForASecondDisc() {
        assertFalse(sizing(Designs.of("tetrahedron")).faces().get(0).opposite());
        assertTrue(sizing(Designs.of("octahedron")).faces().get(0).opposite());
    }
}
