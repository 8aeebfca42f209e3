package org.orbwright.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.orbwright.assembly.Net.Hinge;
import org.orbwright.assembly.Net.NetCorner;
import org.orbwright.assembly.Net.NetEdge;
import org.orbwright.assembly.Net.NetPanel;
import org.orbwright.design.Design;
import org.orbwright.fixture.Designs;
import org.orbwright.solid.Edge;
import org.orbwright.solid.EdgeKind;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;

/** The flat layout of every solid: no overlap by the judgement of JTS, and folded up it is the solid again. */
class NetCalculatorTest {
    private static final String SOLIDS = "org.orbwright.assembly.Assemblies#solids";
    /** Agreed on lengths, for shortest edges of 10 mm. */
    private static final double EXACT = 1e-9;
    /** Millimetres by which panels are made smaller before JTS looks for overlaps, as hinges are common to two. */
    private static final double SHRUNK = 1e-6;

    private static final GeometryFactory JTS = new GeometryFactory();

    private static Net net(String solid) {
        return NetCalculator.calculate(Assemblies.small(solid).build());
    }

    private static Geometry polygon(List<NetCorner> corners) {
        List<Coordinate> ring = new ArrayList<>();
        corners.forEach(corner -> ring.add(new Coordinate(corner.x(), corner.y())));
        ring.add(ring.get(0));
        return JTS.createPolygon(ring.toArray(new Coordinate[0]));
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void noPanelOverlapsAnother(String name) {
        List<Geometry> panels = net(name).panels().stream()
                .map(panel -> polygon(panel.corners()).buffer(-SHRUNK))
                .toList();
        for (int i = 0; i < panels.size(); i++) {
            assertFalse(panels.get(i).isEmpty());
            for (int j = 0; j < i; j++) {
                assertTrue(panels.get(i).disjoint(panels.get(j)), name + ": " + i + " and " + j);
            }
        }
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void theLayoutIsOnePieceAsLargeAsTheSurface(String name) {
        Design design = Assemblies.small(name).build();
        Net net = NetCalculator.calculate(design);
        List<Geometry> parts = new ArrayList<>();
        net.panels().forEach(panel -> parts.add(polygon(panel.corners()).buffer(SHRUNK)));
        net.hinges().forEach(hinge -> parts.add(tape(net, hinge).buffer(SHRUNK)));
        Geometry whole =
                JTS.createGeometryCollection(parts.toArray(new Geometry[0])).union();
        assertEquals(1, whole.getNumGeometries());
        double area = net.panels().stream()
                .mapToDouble(panel -> polygon(panel.corners()).getArea())
                .sum();
        assertEquals(design.solid().surfaceArea() * 100, area, 1e-8);
        assertEquals(-SHRUNK, whole.getEnvelopeInternal().getMinX(), 2 * SHRUNK);
        assertEquals(-SHRUNK, whole.getEnvelopeInternal().getMinY(), 2 * SHRUNK);
        assertEquals(net.width(), whole.getEnvelopeInternal().getMaxX(), 2 * SHRUNK);
        assertEquals(net.height(), whole.getEnvelopeInternal().getMaxY(), 2 * SHRUNK);
    }

    /** The tape between the rims of a hinge. */
    private static Geometry tape(Net net, Hinge hinge) {
        NetPanel parent = net.panels().get(hinge.panel());
        NetPanel neighbour = net.panels().get(hinge.neighbour());
        int place = place(parent, hinge);
        int othersPlace = place(neighbour, hinge);
        return polygon(List.of(
                corner(parent, place),
                corner(neighbour, othersPlace + 1),
                corner(neighbour, othersPlace),
                corner(parent, place + 1)));
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void hingesAreATreeOverAllPanelsFromTheRootOutwards(String name) {
        Net net = net(name);
        Set<Integer> reached = new HashSet<>(Set.of(net.root()));
        for (Hinge hinge : net.hinges()) {
            assertTrue(reached.contains(hinge.panel()));
            assertTrue(reached.add(hinge.neighbour()));
        }
        assertEquals(net.panels().size(), reached.size());
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void everyEdgeIsAHingeOrHasAFreePartner(String name) {
        Solid solid = Designs.solid(name);
        Net net = net(name);
        Set<Integer> hinges = new HashSet<>();
        net.hinges().forEach(hinge -> assertTrue(hinges.add(hinge.seam())));
        Map<Integer, List<Integer>> panelsOfSeam = new HashMap<>();
        for (NetPanel panel : net.panels()) {
            Face face = solid.faces().get(panel.panel());
            for (int i = 0; i < panel.edges().size(); i++) {
                NetEdge edge = panel.edges().get(i);
                assertEquals(hinges.contains(edge.seam()), edge.hinge());
                Edge line = solid.edges().get(edge.seam());
                assertEquals(
                        Set.of(line.from(), line.to()),
                        Set.of(
                                face.vertices().get(i),
                                face.vertices().get((i + 1) % face.vertices().size())));
                assertEquals(Set.of(line.face(), line.neighbour()), Set.of(panel.panel(), edge.partner()));
                panelsOfSeam
                        .computeIfAbsent(edge.seam(), seam -> new ArrayList<>())
                        .add(panel.panel());
            }
        }
        assertEquals(solid.edges().size(), panelsOfSeam.size());
        panelsOfSeam.forEach((seam, panels) -> assertEquals(2, panels.size()));
    }

    /**
     * The rims of a hinge are pushed together, and the neighbour is folded about the line of the outline at the joint
     * distance, a land below the outer faces.
     */
    @ParameterizedTest
    @MethodSource(SOLIDS)
    @DisplayName(
            "folded by 180 degrees less the catalogue's dihedral angles, every rim is a land above the solid's face"
                    + " and the tape over a gap is as long as the gap was flat")
    void foldsUpToTheSolid(String name) {
        Design design = Assemblies.small(name).build();
        Solid solid = design.solid();
        Net net = NetCalculator.calculate(design);
        Vector3D land = Vector3D.of(0, 0, design.land());
        Map<Integer, AffineTransformMatrix3D> places = new HashMap<>();
        places.put(net.root(), ontoTheSolid(net, design));
        for (Hinge hinge : net.hinges()) {
            NetPanel parent = net.panels().get(hinge.panel());
            NetPanel neighbour = net.panels().get(hinge.neighbour());
            int place = place(parent, hinge);
            int othersPlace = place(neighbour, hinge);
            Vector3D from = flat(parent, place);
            Vector3D axis = flat(parent, place + 1).subtract(from);
            double fold = Math.PI - dihedral(solid, hinge.seam());
            assertEquals(fold, hinge.fold(), 1e-12);
            assertEquals(
                    0,
                    axis.distance(flat(neighbour, othersPlace).subtract(flat(neighbour, othersPlace + 1))),
                    EXACT,
                    "the rims of a hinge are parallel");
            Vector3D apart = flat(neighbour, othersPlace + 1).subtract(from);
            assertEquals(hinge.gap(), apart.norm(), EXACT);
            assertEquals(0, apart.dot(axis), EXACT * axis.norm(), "the gap is square to the rims");
            AffineTransformMatrix3D folded = AffineTransformMatrix3D.createTranslation(
                            land.subtract(from).subtract(apart))
                    .rotate(QuaternionRotation.fromAxisAngle(axis, fold))
                    .translate(from.subtract(land));
            places.put(hinge.neighbour(), places.get(hinge.panel()).multiply(folded));
            for (int end : new int[] {0, 1}) {
                Vector3D one = places.get(hinge.panel()).apply(flat(parent, place + end));
                Vector3D other = places.get(hinge.neighbour()).apply(flat(neighbour, othersPlace + 1 - end));
                assertEquals(hinge.gap(), one.distance(other), EXACT, name + " hinge " + hinge.seam());
            }
        }
        for (NetPanel panel : net.panels()) {
            Face face = solid.faces().get(panel.panel());
            Vector3D out = solid.normal(face).multiply(design.land());
            for (int i = 0; i < face.vertices().size(); i++) {
                Vector3D corner = solid.corner(face, i).multiply(design.edge()).add(out);
                Vector3D folded = places.get(panel.panel()).apply(flat(panel, i));
                assertEquals(0, corner.distance(folded), EXACT, name + " panel " + panel.panel());
            }
        }
    }

    private static int place(NetPanel panel, Hinge hinge) {
        return panel.edges().stream().map(NetEdge::seam).toList().indexOf(hinge.seam());
    }

    private static NetCorner corner(NetPanel panel, int place) {
        return panel.corners().get(place % panel.corners().size());
    }

    private static Vector3D flat(NetPanel panel, int place) {
        NetCorner corner = corner(panel, place);
        return Vector3D.of(corner.x(), corner.y(), 0);
    }

    /** Moves the layout so that its root lies on the solid's face, outer side out. */
    private static AffineTransformMatrix3D ontoTheSolid(Net net, Design design) {
        Solid solid = design.solid();
        Face face = solid.faces().get(net.root());
        NetPanel root = net.panels().get(net.root());
        Vector3D along = flat(root, 1).subtract(flat(root, 0));
        Vector3D target = solid.corner(face, 1).subtract(solid.corner(face, 0));
        QuaternionRotation turn =
                QuaternionRotation.createBasisRotation(along, Vector3D.Unit.PLUS_Z, target, solid.normal(face));
        return AffineTransformMatrix3D.createTranslation(flat(root, 0).negate())
                .rotate(turn)
                .translate(solid.corner(face, 0)
                        .multiply(design.edge())
                        .add(solid.normal(face).multiply(design.land())));
    }

    /** The dihedral angle of the edge's kind. */
    private static double dihedral(Solid solid, int seam) {
        Edge edge = solid.edges().get(seam);
        String one = solid.faces().get(edge.face()).kind();
        String other = solid.faces().get(edge.neighbour()).kind();
        double length = solid.vertices()
                .get(edge.from())
                .vector()
                .distance(solid.vertices().get(edge.to()).vector());
        return solid.edgeKinds().stream()
                .filter(kind -> new HashSet<>(List.of(kind.face(), kind.neighbour()))
                        .equals(new HashSet<>(List.of(one, other))))
                .filter(kind -> Math.abs(kind.length() - length) < 1e-9)
                .mapToDouble(EdgeKind::dihedral)
                .findFirst()
                .orElseThrow();
    }

    @Test
    @DisplayName(
            "hand calculation: the cube of 200 mm lies flat as a cross of 600 mm by 800 mm, its hinges at 90 degrees")
    void cube() {
        Net net = NetCalculator.calculate(Designs.of("cube").build());
        assertEquals(600, Math.min(net.width(), net.height()), 1e-9);
        assertEquals(800, Math.max(net.width(), net.height()), 1e-9);
        net.hinges().forEach(hinge -> assertEquals(Math.PI / 2, hinge.fold(), 1e-12));
    }

    /** Half the dihedral angle of acos(-1/sqrt 5) is 58.2825 degrees, so half the fold is 31.7175. */
    @Test
    @DisplayName(
            "hand calculation: below a land of 4 mm a dodecahedron's rims stand 2 x 4 x sin 31.7175 = 4.2058 apart")
    void aLandHoldsTheRimsApart() {
        Net net = NetCalculator.calculate(
                Designs.example("dodecahedron-with-land").build());
        net.hinges().forEach(hinge -> assertEquals(4.2058, hinge.gap(), 5e-5));
    }

    @Test
    void withoutALandTheRimsTouch() {
        Net net = NetCalculator.calculate(Designs.of("dodecahedron").edge(80).build());
        net.hinges().forEach(hinge -> assertEquals(0, hinge.gap()));
    }

    @Test
    void aLandLeavesTheOuterFacesAsLargeAsTheyAre() {
        Designs plain = Designs.of("dodecahedron").edge(80);
        Net without = NetCalculator.calculate(plain.build());
        Net with = NetCalculator.calculate(plain.land(3).build());
        for (int i = 0; i < without.panels().size(); i++) {
            Geometry panel = polygon(without.panels().get(i).corners());
            assertEquals(
                    panel.getArea(), polygon(with.panels().get(i).corners()).getArea(), EXACT * panel.getArea());
        }
        assertTrue(with.height() > without.height());
    }

    /** A square against others: beside it, at its corner, a little over it, inside it. */
    @ParameterizedTest
    @CsvSource({"1, 0, 1, false", "1, 1, 1, false", "0.999999, 0, 1, true", "0.25, 0.25, 0.5, true", "0, 0, 1, true"})
    void facesThatTouchDoNotOverlap(double x, double y, double side, boolean overlap) {
        FlatFace unit = square(0, 0, 1);
        FlatFace other = square(x, y, side);
        assertEquals(overlap, unit.overlaps(other));
        assertEquals(overlap, other.overlaps(unit));
        Geometry one = JTS.createPolygon(ring(unit)).buffer(-1e-9);
        assertEquals(overlap, one.intersects(JTS.createPolygon(ring(other)).buffer(-1e-9)));
    }

    private static FlatFace square(double x, double y, double side) {
        return new FlatFace(List.of(
                Vector2D.of(x, y),
                Vector2D.of(x + side, y),
                Vector2D.of(x + side, y + side),
                Vector2D.of(x, y + side)));
    }

    private static Coordinate[] ring(FlatFace face) {
        List<Coordinate> ring = new ArrayList<>();
        face.corners().forEach(corner -> ring.add(new Coordinate(corner.getX(), corner.getY())));
        ring.add(ring.get(0));
        return ring.toArray(new Coordinate[0]);
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void spreadsWithoutOverlapAroundAnyFaceWhateverTheLand(String name) {
        Solid solid = Designs.solid(name);
        Neighbourhood neighbourhood = new Neighbourhood(solid);
        for (double land : new double[] {0, 0.01, 0.05, 0.2, 0.3, 0.5, 1, 3, 10, 1000}) {
            for (int root = 0; root < solid.faces().size(); root += 7) {
                Unfolding unfolding = Unfolding.around(solid, neighbourhood, root, land);
                assertNotNull(unfolding, name + " around " + root + " with a land of " + land);
            }
        }
    }
}
