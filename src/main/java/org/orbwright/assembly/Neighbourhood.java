package org.orbwright.assembly;

import java.util.List;
import org.orbwright.solid.Edge;
import org.orbwright.solid.Solid;

/** Which seam and which panel lie at each edge of each face. */
final class Neighbourhood {
    private final int[][] seams;
    private final int[][] panels;

    Neighbourhood(Solid solid) {
        int count = solid.faces().size();
        seams = new int[count][];
        panels = new int[count][];
        for (int face = 0; face < count; face++) {
            int sides = solid.faces().get(face).vertices().size();
            seams[face] = new int[sides];
            panels[face] = new int[sides];
        }
        for (int seam = 0; seam < solid.edges().size(); seam++) {
            Edge edge = solid.edges().get(seam);
            note(solid, seam, edge.face(), edge.from(), edge.neighbour());
            note(solid, seam, edge.neighbour(), edge.to(), edge.face());
        }
    }

    private void note(Solid solid, int seam, int face, int start, int other) {
        List<Integer> corners = solid.faces().get(face).vertices();
        int place = corners.indexOf(start);
        seams[face][place] = seam;
        panels[face][place] = other;
    }

    /** Number of edges of a face. */
    int sides(int face) {
        return seams[face].length;
    }

    /** Number of the seam at an edge of a face. */
    int seam(int face, int place) {
        return seams[face][place];
    }

    /** Number of the panel at an edge of a face. */
    int panel(int face, int place) {
        return panels[face][place];
    }

    /** The place of a seam among the edges of a face. */
    int place(int face, int seam) {
        for (int place = 0; place < sides(face); place++) {
            if (seams[face][place] == seam) {
                return place;
            }
        }
        throw new IllegalArgumentException("Face " + face + " has no seam " + seam);
    }
}
