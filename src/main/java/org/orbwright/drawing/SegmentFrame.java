package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;

/** Where a segment lies on the solid: unit vectors from the tip to the base, along the base, and out of the face. */
record SegmentFrame(Panel panel, Piece piece, Vector3D x, Vector3D y, Vector3D normal) {

    /** The segments of one face. */
    static List<SegmentFrame> of(Design design, Face face) {
        Solid solid = design.solid();
        List<SegmentFrame> frames = new ArrayList<>();
        int sides = face.vertices().size();
        Vector3D normal = solid.normal(face);
        for (int i = 0; i < sides; i++) {
            Vector3D from = solid.corner(face, i);
            Vector3D along = solid.corner(face, (i + 1) % sides).subtract(from).normalize();
            Panel panel = design.panelAt(face.kind(), i);
            Piece piece = panel.pieceOf(face.segments().get(i), i);
            frames.add(new SegmentFrame(panel, piece, along.cross(normal), along, normal));
        }
        return frames;
    }

    /** A point of the finished surface above a point of the panel. */
    Vector3D lift(Point point, double radius) {
        double across = point.x() * point.x() + point.y() * point.y();
        double height = Math.min(panel.faceDistance(), Math.sqrt(Math.max(0, radius * radius - across)));
        return x.multiply(point.x()).add(y.multiply(point.y())).add(normal.multiply(height));
    }
}
