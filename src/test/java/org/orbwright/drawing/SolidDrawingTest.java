package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.orbwright.solid.Face;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;

/**
 * Pictures of all solids, read back from their path data. JTS (Eclipse, 1.20) has the convex hull of all corners, the
 * turn of each outline and the areas; the projection is written out here from the definition of azimuth and elevation.
 */
class SolidDrawingTest {
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final double AZIMUTH = Math.toRadians(25);
    private static final double ELEVATION = Math.toRadians(20);
    /** Coordinates are written to a thousandth of a millimetre, along outlines of some 300 mm. */
    private static final double WRITTEN = 0.2;
    /** The smallest area that a face has where it can still be seen, in square millimetres on a sheet of 100 mm. */
    private static final double SEEN = 0.1;

    private record Picture(Solid solid, Drawing drawing) {
        static Picture of(String name) {
            Solid solid = SolidCatalogue.find(name).orElseThrow();
            return new Picture(solid, SolidDrawing.draw(solid));
        }

        List<Area> areas() {
            return drawing.marks().stream()
                    .filter(Area.class::isInstance)
                    .map(Area.class::cast)
                    .toList();
        }

        /** The areas of the solid without the boxes of the key, which stand below the square of the picture. */
        List<Area> faces() {
            return areas().stream()
                    .filter(area -> polygon(area).getCoordinate().y < drawing.width())
                    .toList();
        }

        Coordinate seen(Vector3D corner) {
            double scale = 50 / 1.06 / solid.circumradius();
            double ahead = Math.cos(AZIMUTH) * corner.getX() + Math.sin(AZIMUTH) * corner.getY();
            double right = Math.cos(AZIMUTH) * corner.getY() - Math.sin(AZIMUTH) * corner.getX();
            double up = Math.cos(ELEVATION) * corner.getZ() - Math.sin(ELEVATION) * ahead;
            return new Coordinate(50 + scale * right, 50 - scale * up);
        }

        Coordinate[] seen(Face face) {
            List<Coordinate> corners = new ArrayList<>();
            for (int place = 0; place < face.vertices().size(); place++) {
                corners.add(seen(solid.corner(face, place)));
            }
            corners.add(corners.get(0));
            return corners.toArray(new Coordinate[0]);
        }

        /** Faces are listed counter-clockwise seen from outside, so clockwise on a sheet whose y goes down. */
        List<Face> visible() {
            return solid.faces().stream()
                    .filter(face -> !Orientation.isCCW(seen(face)))
                    .toList();
        }
    }

    private static Polygon polygon(Area area) {
        return JTS.createPolygon(DrawnPaths.parts(area.path()).get(0).toArray(new Coordinate[0]));
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#solids")
    void facesFillTheHullOfAllCornersOnce(String name) {
        Picture picture = Picture.of(name);
        Coordinate[] corners = picture.solid().vertices().stream()
                .map(vertex -> picture.seen(vertex.vector()))
                .toArray(Coordinate[]::new);
        Geometry hull = JTS.createMultiPointFromCoords(corners).convexHull();
        Geometry union = JTS.createPolygon();
        double sum = 0;
        for (Area area : picture.faces()) {
            Polygon face = polygon(area);
            assertTrue(face.getArea() > SEEN, "no face is seen from its edge: " + face.getArea());
            union = union.union(face);
            sum += face.getArea();
        }
        assertEquals(hull.getArea(), union.getArea(), WRITTEN);
        assertEquals(0, hull.symDifference(union).getArea(), WRITTEN);
        assertEquals(union.getArea(), sum, WRITTEN, "no two overlap");
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#solids")
    void everyFaceKindHasItsToneInPictureAndKey(String name) {
        Picture picture = Picture.of(name);
        Map<String, Double> expected = new TreeMap<>();
        for (Face face : picture.visible()) {
            expected.merge(face.kind(), JTS.createPolygon(picture.seen(face)).getArea(), Double::sum);
        }
        Map<String, Integer> key = key(picture.drawing());
        assertEquals(expected.keySet(), key.keySet());
        assertEquals(kinds(picture.solid()), key.keySet(), "every kind is seen from here");
        assertEquals(key.size(), Set.copyOf(key.values()).size(), "each kind has a tone of its own");
        Map<Integer, Double> drawn = new TreeMap<>();
        picture.faces().forEach(area -> drawn.merge(area.tone(), polygon(area).getArea(), Double::sum));
        assertEquals(new TreeSet<>(key.values()), drawn.keySet());
        key.forEach((kind, tone) -> assertEquals(expected.get(kind), drawn.get(tone), WRITTEN, kind));
        assertEquals(picture.visible().size(), picture.faces().size());
    }

    private static Set<String> kinds(Solid solid) {
        Set<String> kinds = new TreeSet<>();
        for (FaceKind kind : solid.faceKinds()) {
            kinds.add(kind.face());
        }
        return kinds;
    }

    /** The tone of the box before each name. */
    private static Map<String, Integer> key(Drawing drawing) {
        Map<String, Integer> key = new TreeMap<>();
        List<Mark> marks = drawing.marks();
        for (int i = 1; i < marks.size(); i++) {
            if (marks.get(i) instanceof Label label) {
                key.put(label.text(), ((Area) marks.get(i - 1)).tone());
            }
        }
        return key;
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#solids")
    void isStructurallyValidAndSaysWhatIsSeen(String name) {
        Picture picture = Picture.of(name);
        SvgDocument.of(picture.drawing()).check(picture.drawing());
        picture.drawing().marks().forEach(mark -> EveryDrawingTest.labelOnSheet(picture.drawing(), mark));
        for (FaceKind kind : picture.solid().faceKinds()) {
            long seen = picture.visible().stream()
                    .filter(face -> face.kind().equals(kind.face()))
                    .count();
            String words = kind.face() + ", " + seen + " of " + kind.count();
            assertTrue(
                    picture.drawing().description().contains(words),
                    picture.drawing().description());
        }
    }
}
