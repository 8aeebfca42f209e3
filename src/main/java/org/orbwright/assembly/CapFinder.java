package org.orbwright.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.assembly.AssemblyPlan.AxisThrough;
import org.orbwright.solid.Edge;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.Solid;

/**
 * Parts a solid into two caps with the same number of panels; all solids of the catalogue have an even one. Of all axes
 * through a face, a corner or the middle of an edge the best is the one along which no seams between the caps slide,
 * then the one with the fewest seams between them, then with the shortest; between equal ones the axis square to a seam
 * that lies in one plane is preferred, then a face of the largest kind, any face, a corner and an edge.
 */
final class CapFinder {
    /** A seam between caps that is shorter by less than this is no shorter, at unit edge. */
    private static final double SAME_LENGTH = 1e-9;

    private final Solid solid;
    private Caps best;

    private CapFinder(Solid solid) {
        this.solid = solid;
    }

    static Caps find(Solid solid) {
        CapFinder finder = new CapFinder(solid);
        finder.facesOfTheLargestKind();
        finder.others();
        return finder.best;
    }

    private void facesOfTheLargestKind() {
        String largest = largestKind(solid);
        for (int face = 0; face < solid.faces().size(); face++) {
            if (solid.faces().get(face).kind().equals(largest)) {
                tryAxis(AxisThrough.FACE, face, solid.normal(solid.faces().get(face)));
            }
        }
    }

    static String largestKind(Solid solid) {
        return solid.faceKinds().stream()
                .max(Comparator.comparingDouble(FaceKind::area))
                .orElseThrow()
                .face();
    }

    private void others() {
        for (int face = 0; face < solid.faces().size(); face++) {
            tryAxis(AxisThrough.FACE, face, solid.normal(solid.faces().get(face)));
        }
        for (int corner = 0; corner < solid.vertices().size(); corner++) {
            tryAxis(AxisThrough.CORNER, corner, solid.vertices().get(corner).vector());
        }
        for (int number = 0; number < solid.edges().size(); number++) {
            Edge edge = solid.edges().get(number);
            Vector3D from = solid.vertices().get(edge.from()).vector();
            tryAxis(
                    AxisThrough.EDGE,
                    number,
                    from.add(solid.vertices().get(edge.to()).vector()));
        }
    }

    /** The upper half along an axis; of the panels at its lower end as many as are needed, side by side. */
    private void tryAxis(AxisThrough through, int number, Vector3D axis) {
        Heights heights = new Heights(solid, axis);
        int count = solid.faces().size();
        double level = IntStream.range(0, count)
                .mapToDouble(heights::of)
                .sorted()
                .skip(count / 2)
                .findFirst()
                .orElseThrow();
        List<Integer> ring = new ArrayList<>();
        int above = 0;
        for (int panel = 0; panel < count; panel++) {
            above += heights.of(panel) > level ? 1 : 0;
            if (heights.of(panel) == level) {
                ring.add(panel);
            }
        }
        int needed = count / 2 - above;
        sortAround(ring, axis);
        for (int start = 0; start < (needed == ring.size() ? 1 : ring.size()); start++) {
            List<Boolean> first = new ArrayList<>();
            for (int panel = 0; panel < count; panel++) {
                first.add(heights.of(panel) > level);
            }
            for (int i = 0; i < needed; i++) {
                first.set(ring.get((start + i) % ring.size()), true);
            }
            keepIfBetter(new Caps(solid, through, number, heights, first));
        }
    }

    private void sortAround(List<Integer> ring, Vector3D axis) {
        Vector3D up = axis.normalize();
        Vector3D right = up.orthogonal();
        Vector3D ahead = up.cross(right);
        ring.sort(Comparator.comparingDouble(panel -> {
            Vector3D normal = solid.normal(solid.faces().get(panel));
            return Math.atan2(normal.dot(ahead), normal.dot(right));
        }));
    }

    private void keepIfBetter(Caps caps) {
        if (best == null || isBetter(caps)) {
            best = caps;
        }
    }

    private boolean isBetter(Caps caps) {
        if (caps.sliding() != best.sliding()) {
            return caps.sliding() < best.sliding();
        }
        int seams = caps.between().size();
        if (seams != best.between().size()) {
            return seams < best.between().size();
        }
        if (Math.abs(caps.length() - best.length()) > SAME_LENGTH) {
            return caps.length() < best.length();
        }
        return caps.squareToAxis() && !best.squareToAxis();
    }
}
