package org.orbwright.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.orbwright.assembly.AssemblyPlan.AssembledPanel;
import org.orbwright.assembly.AssemblyPlan.Cap;
import org.orbwright.assembly.AssemblyPlan.GluedSeam;
import org.orbwright.assembly.AssemblyPlan.SolidWork;
import org.orbwright.assembly.AssemblyRequest.GlueRequest;
import org.orbwright.assembly.CapGrowth.Step;
import org.orbwright.assembly.Net.Closing;
import org.orbwright.assembly.Net.Hinge;
import org.orbwright.assembly.Net.NetCorner;
import org.orbwright.assembly.Net.NetEdge;
import org.orbwright.assembly.Net.NetPanel;
import org.orbwright.assembly.Net.NetSeam;
import org.orbwright.design.Design;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.solid.Edge;
import org.orbwright.solid.EdgeKind;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;

/** The flat layout of every solid: no overlap by the judgement of JTS, and folded up it is the solid again. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Slow
class NetCalculatorTest {
    private static final String SOLIDS = "org.orbwright.assembly.Assemblies#solids";
    /** Agreed on lengths, for shortest edges of 10 mm. */
    private static final double EXACT = 1e-9;
    /** Millimetres by which panels are made smaller before JTS looks for overlaps, as hinges are common to two. */
    private static final double SHRUNK = 1e-6;

    private static final GeometryFactory JTS = new GeometryFactory();

    /** Nets of the small designs by solid, laid out once for all tests. */
    private final Map<String, List<Net>> known = new HashMap<>();

    private static Design design(String solid) {
        return Assemblies.small(solid).build();
    }

    /** The nets of both caps and of the whole solid. */
    private static List<Net> nets(Design design) {
        List<Net> nets = new ArrayList<>(NetCalculator.calculate(null, design));
        nets.addAll(NetCalculator.calculate(new AssemblyRequest(null, NetForm.WHOLE), design));
        return nets;
    }

    private List<Net> nets(String solid) {
        return known.computeIfAbsent(solid, name -> nets(design(name)));
    }

    private static Net whole(Designs designs) {
        return nets(designs.build()).get(2);
    }

    private static Geometry polygon(List<NetCorner> corners) {
        List<Coordinate> ring = new ArrayList<>();
        corners.forEach(corner -> ring.add(new Coordinate(corner.x(), corner.y())));
        ring.add(ring.get(0));
        return JTS.createPolygon(ring.toArray(new Coordinate[0]));
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void eachCapHasANetAndAllPanelsHaveOne(String name) {
        List<Net> nets = nets(name);
        assertEquals(
                Arrays.asList(Cap.FIRST, Cap.SECOND, null),
                nets.stream().map(Net::cap).toList());
        AssemblyPlan plan = Assemblies.plan(Assemblies.small(name));
        for (Net net : nets) {
            Set<Integer> expected = plan.panels().stream()
                    .filter(panel -> net.cap() == null || panel.cap() == net.cap())
                    .map(AssembledPanel::panel)
                    .collect(Collectors.toSet());
            List<Integer> laid = net.panels().stream().map(NetPanel::panel).toList();
            assertEquals(expected, new HashSet<>(laid));
            assertEquals(expected.size(), laid.size());
        }
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void noPanelOverlapsAnother(String name) {
        for (Net net : nets(name)) {
            List<Geometry> panels = net.panels().stream()
                    .map(panel -> polygon(panel.corners()).buffer(-SHRUNK))
                    .toList();
            for (int i = 0; i < panels.size(); i++) {
                assertFalse(panels.get(i).isEmpty());
                for (int j = 0; j < i; j++) {
                    assertTrue(panels.get(i).disjoint(panels.get(j)), name + ": " + i + " and " + j);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void eachLayoutIsOnePieceAsLargeAsItsFaces(String name) {
        Design design = design(name);
        double surface = 0;
        for (Net net : nets(name)) {
            List<Geometry> parts = new ArrayList<>();
            net.panels().forEach(panel -> parts.add(polygon(panel.corners()).buffer(SHRUNK)));
            net.hinges().forEach(hinge -> parts.add(tape(net, hinge).buffer(SHRUNK)));
            Geometry whole =
                    JTS.createGeometryCollection(parts.toArray(new Geometry[0])).union();
            assertEquals(1, whole.getNumGeometries());
            surface += net.panels().stream()
                    .mapToDouble(panel -> polygon(panel.corners()).getArea())
                    .sum();
            assertEquals(-SHRUNK, whole.getEnvelopeInternal().getMinX(), 2 * SHRUNK);
            assertEquals(-SHRUNK, whole.getEnvelopeInternal().getMinY(), 2 * SHRUNK);
            assertEquals(net.width(), whole.getEnvelopeInternal().getMaxX(), 2 * SHRUNK);
            assertEquals(net.height(), whole.getEnvelopeInternal().getMaxY(), 2 * SHRUNK);
        }
        assertEquals(2 * design.solid().surfaceArea() * 100, surface, 1e-7);
    }

    /** The tape between the rims of a hinge. */
    private static Geometry tape(Net net, Hinge hinge) {
        NetPanel parent = net.panel(hinge.neighbour());
        NetPanel neighbour = net.panel(hinge.panel());
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
    void hingesAreATreeOverItsPanelsInTheirOrder(String name) {
        for (Net net : nets(name)) {
            Set<Integer> reached = new HashSet<>(Set.of(net.panels().get(0).panel()));
            for (int i = 0; i < net.hinges().size(); i++) {
                Hinge hinge = net.hinges().get(i);
                assertEquals(net.panels().get(i + 1).panel(), hinge.panel());
                assertTrue(reached.contains(hinge.neighbour()));
                assertTrue(reached.add(hinge.panel()));
            }
            assertEquals(net.panels().size(), reached.size());
        }
    }

    /**
     * With so much time that nothing is split, and with so little that the second cap's panels are glued one by one.
     */
    @ParameterizedTest
    @MethodSource(SOLIDS)
    void seamsAreInTheOrderOfTheStages(String name) {
        for (int most : new int[] {1000, 3}) {
            AssemblyPlan plan = Assemblies.plan(Assemblies.small(name), most);
            boolean oneByOne = work(plan, SolidWork.CLOSING).isEmpty();
            Net first = plan.nets().get(0);
            Net second = plan.nets().get(1);
            assertTrue(first.followsStages());
            assertEquals(!oneByOne, second.followsStages());
            assertGlued(work(plan, SolidWork.FIRST_CAP), first);
            if (!oneByOne) {
                assertGlued(work(plan, SolidWork.SECOND_CAP), second);
                assertEquals(
                        work(plan, SolidWork.CLOSING).stream()
                                .map(GluedSeam::seam)
                                .toList(),
                        second.last().stream().map(NetSeam::seam).toList());
            }
            assertEquals(
                    plan.caps().loop(), first.last().stream().map(NetSeam::seam).toList());
            assertEquals(
                    plan.caps().loop(),
                    second.last().stream().map(NetSeam::seam).toList());
            assertTrue(most == 3 || plan.nets().stream().allMatch(Net::followsStages));
        }
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void theWholeNetIsInTheOrderOfPanelsThatAreGluedOneByOne(String name) {
        Design design = design(name);
        AssemblyRequest little = new AssemblyRequest(new GlueRequest(200.0, 1.0, 1.0), NetForm.WHOLE);
        AssemblyPlan plan = AssemblyCalculator.plan(little, design);
        Net whole = plan.nets().get(0);
        boolean oneByOne = work(plan, SolidWork.CLOSING).isEmpty();
        assertEquals(oneByOne, whole.followsStages());
        assertEquals(List.of(), whole.last());
        if (oneByOne) {
            List<GluedSeam> all = new ArrayList<>(work(plan, SolidWork.FIRST_CAP));
            all.addAll(work(plan, SolidWork.ONTO_FIRST_CAP));
            assertGlued(all, whole);
        }
    }

    private static List<GluedSeam> work(AssemblyPlan plan, SolidWork work) {
        return plan.stages().stream()
                .filter(stage -> stage.work() == work)
                .flatMap(stage -> stage.seams().stream())
                .toList();
    }

    /** Hinges and seams that fold up are what is glued, each list in that order. */
    private static void assertGlued(List<GluedSeam> glued, Net net) {
        Map<Integer, List<Integer>> hinges = new LinkedHashMap<>();
        net.hinges()
                .forEach(hinge -> hinges.put(hinge.seam(), List.of(hinge.seam(), hinge.panel(), hinge.neighbour())));
        List<List<Integer>> taped = new ArrayList<>();
        List<List<Integer>> folded = new ArrayList<>();
        for (GluedSeam seam : glued) {
            (hinges.containsKey(seam.seam()) ? taped : folded)
                    .add(List.of(seam.seam(), seam.panel(), seam.neighbour()));
        }
        assertEquals(List.copyOf(hinges.values()), taped);
        assertEquals(
                net.folding().stream()
                        .map(seam -> List.of(seam.seam(), seam.panel(), seam.neighbour()))
                        .toList(),
                folded);
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void everyEdgeSaysHowItsSeamCloses(String name) {
        Solid solid = Designs.solid(name);
        for (Net net : nets(name)) {
            Map<Integer, Closing> closings = new HashMap<>();
            net.hinges().forEach(hinge -> assertNull(closings.put(hinge.seam(), Closing.TAPED)));
            net.folding().forEach(seam -> assertNull(closings.put(seam.seam(), Closing.FOLDED)));
            net.last().forEach(seam -> assertNull(closings.put(seam.seam(), Closing.LAST)));
            Map<Integer, List<Integer>> panelsOfSeam = new HashMap<>();
            for (NetPanel panel : net.panels()) {
                Face face = solid.faces().get(panel.panel());
                for (int i = 0; i < panel.edges().size(); i++) {
                    NetEdge edge = panel.edges().get(i);
                    assertEquals(closings.get(edge.seam()), edge.closing());
                    Edge line = solid.edges().get(edge.seam());
                    assertEquals(
                            Set.of(line.from(), line.to()),
                            Set.of(
                                    face.vertices().get(i),
                                    face.vertices()
                                            .get((i + 1) % face.vertices().size())));
                    assertEquals(Set.of(line.face(), line.neighbour()), Set.of(panel.panel(), edge.partner()));
                    panelsOfSeam
                            .computeIfAbsent(edge.seam(), seam -> new ArrayList<>())
                            .add(panel.panel());
                }
            }
            assertEquals(closings.keySet(), panelsOfSeam.keySet());
            panelsOfSeam.forEach((seam, panels) ->
                    assertEquals(closings.get(seam) == Closing.LAST ? 1 : 2, panels.size(), name + " " + seam));
        }
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
        Design design = design(name);
        nets(name).forEach(net -> assertFoldsUp(net, design));
    }

    private static void assertFoldsUp(Net net, Design design) {
        Solid solid = design.solid();
        Vector3D land = Vector3D.of(0, 0, design.land());
        Map<Integer, AffineTransformMatrix3D> places = new HashMap<>();
        places.put(net.panels().get(0).panel(), ontoTheSolid(net, design));
        for (Hinge hinge : net.hinges()) {
            NetPanel parent = net.panel(hinge.neighbour());
            NetPanel neighbour = net.panel(hinge.panel());
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
            places.put(hinge.panel(), places.get(hinge.neighbour()).multiply(folded));
            for (int end : new int[] {0, 1}) {
                Vector3D one = places.get(hinge.neighbour()).apply(flat(parent, place + end));
                Vector3D other = places.get(hinge.panel()).apply(flat(neighbour, othersPlace + 1 - end));
                assertEquals(hinge.gap(), one.distance(other), EXACT, "hinge " + hinge.seam());
            }
        }
        for (NetPanel panel : net.panels()) {
            Face face = solid.faces().get(panel.panel());
            Vector3D out = solid.normal(face).multiply(design.land());
            for (int i = 0; i < face.vertices().size(); i++) {
                Vector3D corner = solid.corner(face, i).multiply(design.edge()).add(out);
                Vector3D folded = places.get(panel.panel()).apply(flat(panel, i));
                assertEquals(0, corner.distance(folded), EXACT, "panel " + panel.panel());
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
        NetPanel root = net.panels().get(0);
        Face face = solid.faces().get(root.panel());
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
    @DisplayName("hand calculation: each cap of the cube of 200 mm is three squares in an L, hinged at 90 degrees")
    void cube() {
        for (Net net : nets(Designs.of("cube").build()).subList(0, 2)) {
            assertEquals(400, net.width(), 1e-9);
            assertEquals(400, net.height(), 1e-9);
            net.hinges().forEach(hinge -> assertEquals(Math.PI / 2, hinge.fold(), 1e-12));
            assertEquals(1, net.folding().size());
            assertEquals(6, net.last().size());
        }
    }

    /** Common practice, no source: half a solid is taped as one panel with others on each of its edges. */
    @ParameterizedTest
    @CsvSource({"dodecahedron, 5", "icosahedron, 3", "truncated-icosahedron, 6"})
    void aCapIsARosette(String name, int petals) {
        for (Net net : nets(name).subList(0, 2)) {
            int middle = net.panels().get(0).panel();
            assertEquals(
                    petals,
                    net.hinges().stream()
                            .filter(hinge -> hinge.neighbour() == middle)
                            .count(),
                    name + " " + net.hinges());
        }
    }

    /** Half the dihedral angle of acos(-1/sqrt 5) is 58.2825 degrees, so half the fold is 31.7175. */
    @Test
    @DisplayName(
            "hand calculation: below a land of 4 mm a dodecahedron's rims stand 2 x 4 x sin 31.7175 = 4.2058 apart")
    void aLandHoldsTheRimsApart() {
        whole(Designs.example("dodecahedron-with-land"))
                .hinges()
                .forEach(hinge -> assertEquals(4.2058, hinge.gap(), 5e-5));
    }

    @Test
    void withoutALandTheRimsTouch() {
        whole(Designs.of("dodecahedron").edge(80)).hinges().forEach(hinge -> assertEquals(0, hinge.gap()));
    }

    @Test
    void aLandLeavesTheOuterFacesAsLargeAsTheyAre() {
        Designs plain = Designs.of("dodecahedron").edge(80);
        Net without = whole(plain);
        Net with = whole(plain.land(3));
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
    void spreadsWithoutOverlapWhateverTheLand(String name) {
        Solid solid = Designs.solid(name);
        Neighbourhood neighbourhood = new Neighbourhood(solid);
        GluingOrder order = GluingOrder.of(CapFinder.find(solid), neighbourhood);
        for (double land : new double[] {0, 0.01, 0.05, 0.2, 0.3, 0.5, 1, 3, 10, 1000}) {
            for (List<Step> steps : List.of(order.first(), order.second(), order.whole())) {
                Unfolding laid = Unfolding.of(solid, neighbourhood, steps, land);
                assertEquals(steps.size() - 1, laid.hinges().size(), name + " with a land of " + land);
            }
        }
    }
}
