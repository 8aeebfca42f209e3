package org.orbwright.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.ORACLE;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SortedSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.fixture.Slow;
import org.orbwright.source.Source;

/** Upright and inverted panels on one sphere: shared evenly, unlike ones side by side, in balance. */
@Source(CONTRACT)
@Slow
class PanelMixTest {
    private static final String ALL = "org.orbwright.solid.Solids#names";
    private static final double ACCURACY = 1e-9;
    private static final Set<String> PROVED_BY_SEARCH = Set.of(
            "cuboctahedron",
            "rhombicuboctahedron",
            "truncated-cuboctahedron",
            "icosidodecahedron",
            "rhombicosidodecahedron");

    @ParameterizedTest
    @MethodSource(ALL)
    @Source(INVARIANT)
    void halfOfEveryFaceKindIsInvertedAndEveryCountIsEven(String name) {
        Solid solid = Solids.listed(name);
        for (FaceKind kind : solid.faceKinds()) {
            long inverted = PanelMix.inverted(solid).stream()
                    .filter(panel -> solid.faces().get(panel).kind().equals(kind.face()))
                    .count();
            assertEquals(0, kind.count() % 2, kind.face());
            assertEquals(kind.count() / 2, inverted, kind.face());
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void panelZeroIsUprightAndTheSameSolidAlwaysGivesTheSamePanels(String name) {
        SortedSet<Integer> inverted = PanelMixSearch.inverted(Solids.solid(name));
        assertFalse(inverted.contains(0));
        assertEquals(List.copyOf(inverted), List.copyOf(PanelMix.inverted(Solids.listed(name))));
    }

    @ParameterizedTest
    @CsvSource({
        "tetrahedron, '1,2'",
        "cube, '1,2,3'",
        "octahedron, '1,2,4,7'",
        "icosahedron, '1,2,3,5,7,8,11,12,15,17'",
        "truncated-octahedron, '1,4,6,9,10,11,12'"
    })
    void amongEqualsThePanelsNextOnTheWalkAreInverted(String name, String panels) {
        assertEquals(
                panels,
                PanelMix.inverted(Solids.listed(name)).stream()
                        .map(String::valueOf)
                        .collect(Collectors.joining(",")));
    }

    /** For each solid its like seams, those that the corners force, and the length of the sum of normals. */
    @ParameterizedTest
    @CsvSource({
        "tetrahedron, 2, 2, 0.5",
        "cube, 4, 4, 1",
        "octahedron, 0, 0, 0",
        "dodecahedron, 10, 10, 1.118033988750",
        "icosahedron, 6, 6, 0.118033988750",
        "truncated-tetrahedron, 6, 6, 2.5",
        "cuboctahedron, 6, 0, 0.866025403784",
        "truncated-cube, 12, 12, 3.828427124746",
        "truncated-octahedron, 12, 12, 1",
        "rhombicuboctahedron, 8, 0, 0.828427124746",
        "truncated-cuboctahedron, 26, 24, 4.126673872688",
        "snub-cube, 12, 12, 0.202691915703",
        "icosidodecahedron, 10, 0, 3.440954801178",
        "truncated-dodecahedron, 30, 30, 3.881966011250",
        "truncated-icosahedron, 30, 30, 0.409830056251",
        "rhombicosidodecahedron, 16, 0, 2.032723791185",
        "truncated-icosidodecahedron, 60, 60, 3.872983346207",
        "snub-dodecahedron, 30, 30, 0.991945365917",
        "triakis-tetrahedron, 4, 4, 0.277777777778",
        "rhombic-dodecahedron, 8, 8, 0",
        "triakis-octahedron, 8, 8, 0",
        "tetrakis-hexahedron, 0, 0, 0",
        "deltoidal-icositetrahedron, 8, 8, 0",
        "disdyakis-dodecahedron, 0, 0, 0",
        "pentagonal-icositetrahedron, 16, 16, 0",
        "rhombic-triacontahedron, 20, 20, 0",
        "triakis-icosahedron, 20, 20, 0",
        "pentakis-dodecahedron, 12, 12, 0",
        "deltoidal-hexecontahedron, 32, 32, 0",
        "disdyakis-triacontahedron, 0, 0, 0",
        "pentagonal-hexecontahedron, 46, 46, 0.017048996223"
    })
    void likeSeamsAreAsFewAsTheCornersAllowAndNormalsNearlyCancel(
            String name, int likeSeams, int forced, double length) {
        Solid solid = Solids.listed(name);
        boolean[] inverted = flags(solid, PanelMix.inverted(solid));
        assertEquals(likeSeams, likeSeams(solid, inverted));
        assertEquals(forced, forcedByCorners(solid));
        assertEquals(PROVED_BY_SEARCH.contains(name), forced < likeSeams);
        assertEquals(length, imbalance(normals(solid), inverted), ACCURACY);
    }

    @ParameterizedTest
    @CsvSource({
        "cuboctahedron, 6",
        "rhombicuboctahedron, 8",
        "truncated-cuboctahedron, 26",
        "icosidodecahedron, 10",
        "rhombicosidodecahedron, 16"
    })
    @Source(value = ORACLE, text = "exhaustive search: EvenSharing looks through all choices")
    void halfOfEveryKindNeedsMoreLikeSeamsThanTheCorners(String name, int likeSeams) {
        assertTrue(new EvenSharing(Solids.listed(name), likeSeams).exists());
        assertFalse(new EvenSharing(Solids.listed(name), likeSeams - 1).exists());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tetrahedron",
                "cube",
                "octahedron",
                "dodecahedron",
                "icosahedron",
                "truncated-tetrahedron",
                "cuboctahedron",
                "truncated-cube",
                "truncated-octahedron",
                "triakis-tetrahedron",
                "rhombic-dodecahedron"
            })
    @Source(value = ORACLE, text = "exhaustive search of all ways to share out the panels")
    void noneOfAllChoicesIsBetter(String name) {
        Solid solid = Solids.listed(name);
        List<Vector3D> normals = normals(solid);
        int panels = solid.faces().size();
        int fewest = Integer.MAX_VALUE;
        double shortest = Double.POSITIVE_INFINITY;
        for (int choice = 0; choice < 1 << panels; choice++) {
            if (2 * Integer.bitCount(choice) == panels) {
                boolean[] inverted = flags(panels, choice);
                int likeSeams = halves(solid, inverted) ? likeSeams(solid, inverted) : Integer.MAX_VALUE;
                if (likeSeams < fewest) {
                    fewest = likeSeams;
                    shortest = Double.POSITIVE_INFINITY;
                }
                if (likeSeams == fewest) {
                    shortest = Math.min(shortest, imbalance(normals, inverted));
                }
            }
        }
        boolean[] taken = flags(solid, PanelMix.inverted(solid));
        assertEquals(fewest, likeSeams(solid, taken));
        assertEquals(shortest, imbalance(normals, taken), ACCURACY);
    }

    @ParameterizedTest
    @MethodSource(ALL)
    @Source(INVARIANT)
    void boundOnLikeSeamsNeverFallsAndIsExactInTheEnd(String name) {
        Solid solid = Solids.listed(name);
        LikeSeams seams = new LikeSeams(solid);
        int first = seams.atLeast();
        boolean[] inverted = new boolean[solid.faces().size()];
        Random random = new Random(name.hashCode());
        for (int panel = 0; panel < inverted.length; panel++) {
            int before = seams.atLeast();
            inverted[panel] = random.nextBoolean();
            seams.decide(panel, inverted[panel] ? 1 : 0);
            assertTrue(before <= seams.atLeast());
        }
        assertEquals(likeSeams(solid, inverted), seams.atLeast());
        for (int panel = 0; panel < inverted.length; panel++) {
            seams.undo(panel);
        }
        assertEquals(first, seams.atLeast());
    }

    @Test
    void panelsCannotBeChanged() {
        SortedSet<Integer> inverted = PanelMix.inverted(Solids.listed("cube"));
        assertThrows(UnsupportedOperationException.class, () -> inverted.add(0));
    }

    private static boolean[] flags(Solid solid, Set<Integer> inverted) {
        boolean[] flags = new boolean[solid.faces().size()];
        inverted.forEach(panel -> flags[panel] = true);
        return flags;
    }

    private static boolean[] flags(int panels, int choice) {
        boolean[] flags = new boolean[panels];
        for (int panel = 0; panel < panels; panel++) {
            flags[panel] = ((choice >> panel) & 1) == 1;
        }
        return flags;
    }

    private static boolean halves(Solid solid, boolean[] inverted) {
        return solid.faceKinds().stream()
                .allMatch(kind -> 2
                                * IntStream.range(0, inverted.length)
                                        .filter(panel -> inverted[panel])
                                        .filter(panel ->
                                                solid.faces().get(panel).kind().equals(kind.face()))
                                        .count()
                        == kind.count());
    }

    private static int likeSeams(Solid solid, boolean[] inverted) {
        int seams = 0;
        for (Edge edge : solid.edges()) {
            seams += inverted[edge.face()] == inverted[edge.neighbour()] ? 1 : 0;
        }
        return seams;
    }

    private static List<Vector3D> normals(Solid solid) {
        return IntStream.range(0, solid.faces().size())
                .mapToObj(panel -> Solids.normal(solid, panel)
                        .multiply(Solids.kind(solid, solid.faces().get(panel).kind())
                                .area()))
                .toList();
    }

    private static double imbalance(List<Vector3D> normals, boolean[] inverted) {
        Vector3D sum = Vector3D.ZERO;
        for (int panel = 0; panel < inverted.length; panel++) {
            sum = inverted[panel] ? sum.add(normals.get(panel)) : sum;
        }
        return sum.norm();
    }

    /**
     * Every corner where an odd number of edges meet has a like seam. A seam serves two such corners at most, and only
     * one where no two corners of the class share an edge.
     */
    private static int forcedByCorners(Solid solid) {
        int[] meeting = new int[solid.vertices().size()];
        for (Edge edge : solid.edges()) {
            meeting[edge.from()]++;
            meeting[edge.to()]++;
        }
        int forced = (int) (Arrays.stream(meeting).filter(n -> n % 2 == 1).count() + 1) / 2;
        for (int most = 3; most <= 5; most += 2) {
            int upTo = most;
            boolean apart = solid.edges().stream()
                    .noneMatch(edge -> odd(meeting[edge.from()], upTo) && odd(meeting[edge.to()], upTo));
            if (apart) {
                forced = Math.max(forced, (int)
                        Arrays.stream(meeting).filter(n -> odd(n, upTo)).count());
            }
        }
        return forced;
    }

    private static boolean odd(int number, int most) {
        return number % 2 == 1 && number <= most;
    }
}
