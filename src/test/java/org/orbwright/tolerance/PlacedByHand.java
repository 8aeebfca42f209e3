package org.orbwright.tolerance;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.PlacedPiece;
import org.orbwright.solid.Edge;
import org.orbwright.solid.Face;

/**
 * Segments and panels as rigid bodies, put edge to edge by their corners' coordinates: the gaps as a feeler gauge finds
 * them, without any formula for small angles.
 */
final class PlacedByHand {
    private final Design design;

    PlacedByHand(Design design) {
        this.design = design;
    }

    /**
     * The gap at the rim of a panel: each segment is laid with its right leg on the left leg of the one before, all
     * tips in the middle.
     *
     * @param tips the tip angles, around the panel
     * @param joint length of the open joint's two legs
     */
    static double gapAtRim(double[] tips, double joint) {
        double direction = 0;
        Vector2D start = corner(direction, joint);
        for (double tip : tips) {
            direction += tip;
        }
        return start.distance(corner(direction, joint));
    }

    private static Vector2D corner(double direction, double leg) {
        return Vector2D.of(leg * Math.cos(direction), leg * Math.sin(direction));
    }

    /** Tip angles of a face's segments as they should be. */
    double[] tips(Face face) {
        return PlacedPiece.around(design, face.kind(), face.mirrored()).stream()
                .mapToDouble(placed -> Math.atan2(
                                placed.piece().left(), placed.piece().base())
                        + Math.atan2(placed.piece().right(), placed.piece().base()))
                .toArray();
    }

    /** One side of a seam: the point of the joint and the way its seam face runs into the hollow. */
    record Side(Vector3D normal, Vector3D outwards, double bevel) {
        Vector3D seamFace(double error) {
            double real = bevel + error;
            return outwards.multiply(-Math.cos(real)).add(normal.multiply(-Math.sin(real)));
        }
    }

    /** The two sides of an edge, as the solid's coordinates have them. */
    List<Side> sides(Edge edge) {
        Vector3D from = design.solid().vertices().get(edge.from()).vector();
        Vector3D to = design.solid().vertices().get(edge.to()).vector();
        Vector3D along = to.subtract(from).normalize();
        List<Side> sides = new ArrayList<>();
        for (int number : new int[] {edge.face(), edge.neighbour()}) {
            Face face = design.solid().faces().get(number);
            Vector3D normal = design.solid().normal(face);
            Vector3D across = along.cross(normal);
            Vector3D outwards = across.dot(from) > 0 ? across : across.negate();
            sides.add(new Side(
                    normal, outwards, JointLengths.panel(design, face.kind()).bevel()));
        }
        return sides;
    }

    /** The gap of a seam: two panels whose joints lie on each other, measured at the end of the shorter seam face. */
    double gapOfSeam(Edge edge, double[] errors, double[] thickness) {
        List<Side> sides = sides(edge);
        double length = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 2; i++) {
            length = Math.min(
                    length,
                    // The blade cuts to this height over the inner face, if there is as much wood.
                    Math.min(design.thickness() - design.land(), thickness[i])
                            / Math.sin(sides.get(i).bevel()));
        }
        Vector3D one = sides.get(0).seamFace(errors[0]).multiply(length);
        Vector3D other = sides.get(1).seamFace(errors[1]).multiply(length);
        return one.distance(other);
    }

    /** The largest gaps of a solid whose every cut is drawn on its own: of its panels, and of its seams. */
    double[] largestGaps(Random random, double[] tip, double[] bevel, double[] thickness) {
        double panels = 0;
        List<Face> faces = design.solid().faces();
        double[] real = new double[faces.size()];
        for (int i = 0; i < faces.size(); i++) {
            Panel panel = JointLengths.panel(design, faces.get(i).kind());
            double[] tips = tips(faces.get(i));
            for (int j = 0; j < tips.length; j++) {
                tips[j] += drawn(random, tip);
            }
            panels = Math.max(panels, gapAtRim(tips, JointLengths.joint(design, panel)));
            real[i] = design.thickness() + drawn(random, thickness);
        }
        double seams = 0;
        for (Edge edge : design.solid().edges()) {
            double[] errors = {drawn(random, bevel), drawn(random, bevel)};
            double[] both = {real[edge.face()], real[edge.neighbour()]};
            seams = Math.max(seams, gapOfSeam(edge, errors, both));
        }
        return new double[] {panels, seams};
    }

    private static double drawn(Random random, double[] error) {
        return error[0] + error[1] * random.nextGaussian();
    }
}
