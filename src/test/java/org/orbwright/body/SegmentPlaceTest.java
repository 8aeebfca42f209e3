package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.SolidNames;

/** Segments lie where their neighbours end. */
class SegmentPlaceTest {

    static Stream<String> solids() {
        return SolidNames.each();
    }

    private static Vector3D end(SegmentPlace place, double along) {
        return place.x()
                .multiply(place.piece().base())
                .add(place.y().multiply(along))
                .add(place.normal().multiply(place.panel().jointDistance()));
    }

    private static Vector3D left(SegmentPlace place) {
        return end(place, -place.piece().left());
    }

    private static Vector3D right(SegmentPlace place) {
        return end(place, place.piece().right());
    }

    private static void assertAt(Vector3D expected, Vector3D found, double size) {
        assertEquals(0, expected.distance(found), 1e-9 * size);
    }

    private static void assertInARing(List<SegmentPlace> places) {
        for (SegmentPlace place : places) {
            double size = place.panel().cornerRadius();
            assertAt(right(place), left(places.get(place.right())), size);
            assertAt(left(place), right(places.get(place.left())), size);
        }
    }

    @ParameterizedTest
    @MethodSource("solids")
    void eachBaseBeginsWhereItsLeftNeighbourEndsAndRunsAgainstTheOneAcross(String solid) {
        Design design = Designs.of(solid).build();
        List<SegmentPlace> places = SegmentPlace.ofSolid(design, design.sphere(null));
        assertInARing(places);
        for (SegmentPlace place : places) {
            SegmentPlace across = places.get(place.across());
            double size = place.panel().cornerRadius();
            assertAt(right(place), left(across), size);
            assertAt(left(place), right(across), size);
        }
        design.facePanels()
                .forEach(panel -> assertInARing(SegmentPlace.ofPanel(design, panel.face(), BandSet.UPRIGHT)));
    }
}
