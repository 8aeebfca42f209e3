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
import org.orbwright.solid.Edge;
import org.orbwright.solid.Solid;

/**
 * Shares motifs out over panels: each motif as often as the others, to within one, and every next one on the free panel
 * that lies farthest from the panels with the same motif and, among those, from the panel before. Deterministic; the
 * lowest number wins among equals.
 */
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
            if (number >= solid.faces().size() || !isOfKind(number) || !numbers.add(number)) {
                throw InlayCalculator.refuse(
                        "/panels/" + i,
                        "UNKNOWN_PANEL",
                        "Panel " + number + " is not a " + panel.face() + " of this solid, or is listed twice.",
                        String.valueOf(number),
                        "each " + panel.face() + " once, by its place among the solid's faces from 0 to "
                                + (solid.faces().size() - 1));
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
                    "/motifs",
                    "MORE_MOTIFS_THAN_PANELS",
                    "There are " + names.size() + " motifs for only " + numbers.size() + " panels.",
                    String.valueOf(names.size()),
                    "at most " + numbers.size() + " motifs");
        }
        if (new HashSet<>(names).size() < names.size()) {
            throw InlayCalculator.refuse(
                    "/motifs", "MOTIF_TWICE", "A motif is named more than once.", null, "each motif once");
        }
        Map<Integer, String> shared = new HashMap<>();
        int before = -1;
        for (int i = 0; i < names.size(); i++) {
            for (int placed = i; placed < numbers.size(); placed += names.size()) {
                before = farthest(numbers, shared, names.get(i), before);
                shared.put(before, names.get(i));
            }
        }
        spread(numbers, shared);
        return shared;
    }

    /** Exchanges the motifs of two panels as long as that brings equal ones farther apart. */
    private void spread(List<Integer> numbers, Map<Integer, String> shared) {
        boolean better = true;
        while (better) {
            better = false;
            for (int a : numbers) {
                for (int b : numbers) {
                    better |= a < b && exchange(numbers, shared, a, b);
                }
            }
        }
    }

    private boolean exchange(List<Integer> numbers, Map<Integer, String> shared, int a, int b) {
        String ofA = shared.get(a);
        String ofB = shared.get(b);
        if (ofA.equals(ofB)) {
            return false;
        }
        double before = crowding(numbers, shared, a) + crowding(numbers, shared, b);
        shared.put(a, ofB);
        shared.put(b, ofA);
        double after = crowding(numbers, shared, a) + crowding(numbers, shared, b);
        if (after < before - SAME_ANGLE) {
            return true;
        }
        shared.put(a, ofA);
        shared.put(b, ofB);
        return false;
    }

    /** How near the panels with the same motif are to a panel, the nearest counting most. */
    private double crowding(List<Integer> numbers, Map<Integer, String> shared, int panelNumber) {
        double sum = 0;
        for (int other : numbers) {
            if (other != panelNumber && shared.get(other).equals(shared.get(panelNumber))) {
                double angle = angle(panelNumber, other);
                sum += 1 / (angle * angle);
            }
        }
        return sum;
    }

    private int farthest(List<Integer> numbers, Map<Integer, String> shared, String motif, int before) {
        int best = -1;
        double bestSame = -1;
        double bestBefore = -1;
        for (int number : numbers) {
            if (shared.containsKey(number)) {
                continue;
            }
            double same = Math.PI;
            for (Map.Entry<Integer, String> entry : shared.entrySet()) {
                same = entry.getValue().equals(motif) ? Math.min(same, angle(number, entry.getKey())) : same;
            }
            double fromBefore = before < 0 ? 0 : angle(number, before);
            if (same > bestSame + SAME_ANGLE
                    || (same > bestSame - SAME_ANGLE && fromBefore > bestBefore + SAME_ANGLE)) {
                best = number;
                bestSame = same;
                bestBefore = fromBefore;
            }
        }
        return best;
    }

    private double angle(int a, int b) {
        return normals.get(a).angle(normals.get(b));
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
