package org.orbwright.segment;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.segment.SawAngles.EdgeAngles;
import org.orbwright.segment.SawAngles.FaceAngles;
import org.orbwright.segment.SawAngles.SegmentAngles;
import org.orbwright.solid.EdgeKind;
import org.orbwright.solid.SegmentKind;

/** The angles of a design. They depend on the solid alone; only edge lengths depend on the size. */
public final class AngleCalculator {
    private static final double RIGHT_ANGLE = Math.PI / 2;

    private AngleCalculator() {}

    /** Every angle that a saw or a bevelling set-up needs. */
    public static SawAngles calculate(Design design) {
        List<FaceAngles> faces = new ArrayList<>();
        for (Panel panel : design.facePanels()) {
            double bevel = panel.bevel();
            faces.add(new FaceAngles(
                    panel.face(),
                    panel.kind().sides(),
                    panel.kind().count(),
                    bevel,
                    RIGHT_ANGLE - bevel,
                    panel.kind().segments().stream()
                            .map(AngleCalculator::segment)
                            .toList()));
        }
        List<EdgeAngles> edges = new ArrayList<>();
        for (EdgeKind edge : design.solid().edgeKinds()) {
            edges.add(new EdgeAngles(
                    edge.face(),
                    edge.neighbour(),
                    edge.count(),
                    edge.length() * design.edge(),
                    edge.dihedral(),
                    edge.bevel(),
                    edge.neighbourBevel()));
        }
        return new SawAngles(faces, edges);
    }

    private static SegmentAngles segment(SegmentKind kind) {
        double left = Math.atan2(kind.baseLeft(), kind.baseDistance());
        double right = Math.atan2(kind.baseRight(), kind.baseDistance());
        return new SegmentAngles(kind.segment(), left + right, RIGHT_ANGLE - left, RIGHT_ANGLE - right, left, right);
    }
}
