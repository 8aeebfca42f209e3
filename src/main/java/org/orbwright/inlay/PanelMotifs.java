package org.orbwright.inlay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.inlay.InlayPlan.InlaidPanel;
import org.orbwright.notice.Article;
import org.orbwright.quantity.Numbering;
import org.orbwright.solid.Edge;
import org.orbwright.solid.Solid;

/** The panels that get an inlay, with their motifs, opposites and neighbours. */
final class PanelMotifs {
    /** Angles between faces that are equal agree to 1e-14. */
    private static final double SAME_ANGLE = 1e-9;

    private final InlayRequest request;
    private final Solid solid;
    private final Panel panel;
    private final List<Vector3D> normals;

    PanelMotifs(InlayRequest request, Design design, Panel panel) {
        this.request = request;
        this.solid = design.solid();
        this.panel = panel;
        this.normals = solid.faces().stream().map(solid::normal).toList();
    }

    List<InlaidPanel> share() {
        List<Integer> numbers = numbers();
        Map<Integer, String> motifs = request.motifs() == null ? Map.of() : motifs(numbers);
        List<InlaidPanel> panels = new ArrayList<>();
        for (int number : numbers) {
            panels.add(new InlaidPanel(number, motifs.get(number), opposite(number), neighbours(number)));
        }
        return panels;
    }

    /** The panels that get an inlay, in ascending order. */
    private List<Integer> numbers() {
        if (request.panels() == null) {
            return IntStream.range(0, solid.faces().size())
                    .filter(i -> isOfKind(i))
                    .boxed()
                    .toList();
        }
        TreeSet<Integer> numbers = new TreeSet<>();
        for (int i = 0; i < request.panels().size(); i++) {
            int number = request.panels().get(i);
            int face = Numbering.place(number);
            if (face >= solid.faces().size() || !isOfKind(face) || !numbers.add(face)) {
                throw InlayCalculator.refuse(
                        "/inlays/panels/" + i,
                        "UNKNOWN_PANEL",
                        "Panel " + number + " is not " + Article.with(panel.face())
                                + " of this solid, or is listed twice.",
                        String.valueOf(number),
                        "each " + panel.face() + " once, by its number among the solid's faces from 1 to "
                                + solid.faces().size());
            }
        }
        return List.copyOf(numbers);
    }

    private boolean isOfKind(int face) {
        return solid.faces().get(face).kind().equals(panel.face());
    }

    private Map<Integer, String> motifs(List<Integer> numbers) {
        List<String> names = request.motifs();
        if (names.size() > numbers.size()) {
            throw InlayCalculator.refuse(
                    "/inlays/motifs",
                    "MORE_MOTIFS_THAN_PANELS",
                    "There are " + names.size() + " motifs for only " + numbers.size() + " panels.",
                    String.valueOf(names.size()),
                    "at most " + numbers.size() + " motifs");
        }
        if (new HashSet<>(names).size() < names.size()) {
            throw InlayCalculator.refuse(
                    "/inlays/motifs", "MOTIF_TWICE", "A motif is named more than once.", null, "each motif once");
        }
        int count = numbers.size();
        double[][] angles = new double[count][count];
        boolean[][] sideBySide = new boolean[count][count];
        for (int a = 0; a < count; a++) {
            List<Integer> neighbours = neighbours(numbers.get(a));
            for (int b = 0; b < count; b++) {
                angles[a][b] = normal(numbers.get(a)).angle(normal(numbers.get(b)));
                sideBySide[a][b] = neighbours.contains(numbers.get(b));
            }
        }
        int[] places = new MotifSpread(angles, sideBySide, names.size()).share();
        Map<Integer, String> shared = new HashMap<>();
        for (int i = 0; i < count; i++) {
            shared.put(numbers.get(i), names.get(places[i]));
        }
        return shared;
    }

    private Vector3D normal(int face) {
        return normals.get(face);
    }

    private Integer opposite(int number) {
        for (int other = 0; other < solid.faces().size(); other++) {
            if (isOfKind(other) && normal(number).add(normal(other)).norm() < SAME_ANGLE) {
                return other;
            }
        }
        return null;
    }

    private List<Integer> neighbours(int number) {
        TreeSet<Integer> neighbours = new TreeSet<>();
        for (Edge edge : solid.edges()) {
            if (edge.face() == number) {
                neighbours.add(edge.neighbour());
            } else if (edge.neighbour() == number) {
                neighbours.add(edge.face());
            }
        }
        return List.copyOf(neighbours);
    }
}
