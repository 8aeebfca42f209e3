package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.notice.Article;
import org.orbwright.quantity.Rounding;
import org.orbwright.solid.Face;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.Solid;

/**
 * A solid of the catalogue in orthographic projection, each face kind in a tone of its own. The solid is convex, so its
 * faces that look towards the eye hide all others and none of each other.
 */
public final class SolidDrawing {
    /** Width of the sheet. */
    private static final double WIDTH = 100;
    /** The direction from which spheres are seen too. It shows every face kind of every solid, and no face edge-on. */
    private static final double AZIMUTH = SphereDrawing.AZIMUTH;

    private static final double ELEVATION = SphereDrawing.ELEVATION;
    /** Light, darker and, for a third kind, dark; no solid has more face kinds. */
    private static final int[] TONES = {0, 2, 1};

    private SolidDrawing() {}

    /** Draws a solid; the key names the face kinds that are seen. */
    public static Drawing draw(Solid solid) {
        SphereView view = new SphereView(AZIMUTH, ELEVATION, solid.circumradius());
        double scale = WIDTH / 2 / (1 + Legend.MARGIN) / solid.circumradius();
        List<Mark> marks = new ArrayList<>();
        Map<String, Function<Box, List<Mark>>> looks = new LinkedHashMap<>();
        List<String> counts = new ArrayList<>();
        for (FaceKind kind : solid.faceKinds()) {
            int tone = TONES[looks.size()];
            List<Face> seen = solid.faces().stream()
                    .filter(face -> face.kind().equals(kind.face()))
                    .filter(face -> view.project(solid.normal(face)).getZ() > 0)
                    .toList();
            seen.forEach(face -> marks.add(new Area(outline(solid, face, view, scale), tone, Pen.MEDIUM)));
            looks.put(kind.face(), box -> List.of(new Area(box.path(), tone, Pen.THIN)));
            counts.add(kind.face() + ", " + seen.size() + " of " + kind.count());
        }
        Legend legend = new Legend(looks);
        marks.addAll(legend.marks(WIDTH, WIDTH));
        return new Drawing(
                Article.first(solid.name()),
                Article.first(solid.name()) + " of the catalogue, seen from outside. Faces seen: "
                        + String.join("; ", counts) + ". The scale is " + Rounding.plain(scale, 2)
                        + " mm for the shortest edge.",
                WIDTH,
                WIDTH + legend.height(WIDTH),
                List.of(),
                marks);
    }

    private static PathData outline(Solid solid, Face face, SphereView view, double scale) {
        List<Point> corners = new ArrayList<>();
        for (int place = 0; place < face.vertices().size(); place++) {
            Vector3D corner = view.project(solid.corner(face, place)).multiply(scale);
            corners.add(new Point(WIDTH / 2 + corner.getX(), WIDTH / 2 - corner.getY()));
        }
        return new PathData().lines(corners).close();
    }
}
