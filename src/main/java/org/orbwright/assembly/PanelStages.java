package org.orbwright.assembly;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.assembly.PanelGluing.PanelJoint;
import org.orbwright.assembly.PanelGluing.PanelStage;
import org.orbwright.assembly.PanelGluing.PanelWork;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.PlacedPiece;

/**
 * Glues the segments of one face kind to panels. A panel whose joints lie in one line with each other through the tips,
 * with as many segments on both sides, is made in two halves; any other in one go. The last segment of a ring closes
 * two joints at once, and so does the straight joint between two halves.
 */
final class PanelStages {
    /** Angles of a solid are accurate to 1e-14. */
    private static final double STRAIGHT = 1e-9;

    private final Panel panel;
    private final Glue glue;
    private final List<Piece> pieces;
    private final List<PanelJoint> joints = new ArrayList<>();
    private final List<PanelStage> stages = new ArrayList<>();

    private PanelStages(Design design, Panel panel, Glue glue) {
        this.panel = panel;
        this.glue = glue;
        this.pieces = PlacedPiece.around(design, panel.face()).stream()
                .map(PlacedPiece::piece)
                .toList();
        for (int i = 0; i < pieces.size(); i++) {
            double length = Math.hypot(pieces.get(i).base(), pieces.get(i).left());
            joints.add(new PanelJoint(i, at(i - 1), length, length * design.thickness()));
        }
    }

    static PanelGluing of(Design design, Panel panel, Glue glue) {
        return new PanelStages(design, panel, glue).gluing();
    }

    private PanelGluing gluing() {
        int straight = straightJoint();
        int sides = pieces.size();
        if (straight < 0) {
            stages(PanelWork.WHOLE, ring());
        } else {
            stages(PanelWork.FIRST_HALF, inRow(straight + 1, sides / 2 - 1));
            stages(PanelWork.SECOND_HALF, inRow(straight + sides / 2 + 1, sides / 2 - 1));
            stages(PanelWork.STRAIGHT_JOINT, List.of(List.of(straight, straight + sides / 2)));
        }
        return new PanelGluing(panel.face(), panel.kind().count(), straight >= 0, joints, stages);
    }

    /** The first joint that runs on straight beyond the tips as another one, half of the segments later; or -1. */
    private int straightJoint() {
        int sides = pieces.size();
        for (int start = 0; start < sides / 2 && sides % 2 == 0; start++) {
            double angle = 0;
            for (int i = start; i < start + sides / 2; i++) {
                Piece piece = pieces.get(i);
                angle += Math.atan2(piece.left(), piece.base()) + Math.atan2(piece.right(), piece.base());
            }
            if (Math.abs(angle - Math.PI) < STRAIGHT) {
                return start;
            }
        }
        return -1;
    }

    /** The joints of all segments: one with each but the first and the last, which closes the ring with two. */
    private List<List<Integer>> ring() {
        List<List<Integer>> steps = inRow(1, pieces.size() - 2);
        steps.add(List.of(pieces.size() - 1, 0));
        return steps;
    }

    private List<List<Integer>> inRow(int from, int count) {
        List<List<Integer>> steps = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            steps.add(List.of(at(from + i)));
        }
        return steps;
    }

    private void stages(PanelWork work, List<List<Integer>> steps) {
        for (List<List<Integer>> portion : Portions.of(steps, List::size, glue.mostSeams())) {
            List<Integer> glued = portion.stream().flatMap(List::stream).toList();
            double length = glued.stream()
                    .mapToDouble(joint -> joints.get(joint).length())
                    .sum();
            double area = glued.stream()
                    .mapToDouble(joint -> joints.get(joint).area())
                    .sum();
            stages.add(new PanelStage(stages.size() + 1, work, glued, GlueWork.of(glue, glued.size(), length, area)));
        }
    }

    private int at(int place) {
        return Math.floorMod(place, pieces.size());
    }
}
