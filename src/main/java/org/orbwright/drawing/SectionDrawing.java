package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.notice.Article;
import org.orbwright.solid.Edge;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;
import org.orbwright.sphere.SphereCalculator;
import org.orbwright.sphere.SphereSizing.FaceSizing;

/**
 * Sections through the wood: for each face kind one through the panel's centre and the middle of an edge, with the
 * neighbour beyond the seam, and one through the centre and the farthest corner. What stays is in the tones of its
 * bands, what is turned away is bare with a dashed outline. Every panel is of the set that it is made from in the first
 * of the spheres.
 */
public final class SectionDrawing {
    private static final double WIDTH = 280;
    private static final double LETTERS = 0.014 * WIDTH;
    private static final double TALLEST = 125;
    /** The neighbour is shown to this many base distances of the panel beyond the seam. */
    private static final double NEIGHBOUR = 1.1;
    /** Letters of this share of the width are as large in the key as in the drawing. */
    private static final double KEY_WIDTH = LETTERS / Legend.letters(1);

    private final Design design;
    private final Legend legend;
    private final List<Mark> marks = new ArrayList<>();
    private final StringBuilder words = new StringBuilder();

    private SectionDrawing(Design design) {
        this.design = design;
        this.legend = new Legend(design);
    }

    /** Draws the sections of every face kind. */
    public static Drawing draw(Design design) {
        design.require("the section depends", DesignPart.THICKNESS);
        return new SectionDrawing(design).drawing(design.facePanels());
    }

    /** Draws the sections of one face kind; null for a solid with only one. */
    public static Drawing draw(Design design, String face) {
        design.require("the section depends", DesignPart.THICKNESS);
        return new SectionDrawing(design).drawing(List.of(DrawnFace.of(design, face)));
    }

    private Drawing drawing(List<Panel> panels) {
        String title = "Sections of the " + design.solid().name();
        marks.add(Callout.heading(title, WIDTH, 1.3 * LETTERS));
        double y = 5 * LETTERS;
        List<FaceSizing> sizings = SphereCalculator.calculate(design).faces();
        for (Panel panel : panels) {
            FaceSizing sizing = sizings.get(design.facePanels().indexOf(panel));
            Neighbour neighbour = neighbour(panel);
            double edge = section(neighbour.own(), neighbour.other(), sizing, 0, y);
            double corner =
                    section(SectionPanel.corner(design, panel, neighbour.own().set()), null, sizing, WIDTH / 2, y);
            y = Math.max(edge, corner) + 2 * LETTERS;
        }
        Legend shown = legend.drawn(marks);
        marks.addAll(shown.marks(KEY_WIDTH, y));
        return new Drawing(
                title,
                "Sections square to the panels, from the solid's centre. The wood that stays inside the sphere is"
                        + " drawn in tones, what is turned away is bare with a dashed outline. "
                        + words,
                WIDTH,
                y + shown.height(KEY_WIDTH),
                shown.species(),
                marks);
    }

    /** Draws one section with its dimensions below; returns where it ends. */
    private double section(SectionPanel main, SectionPanel neighbour, FaceSizing sizing, double x, double y) {
        boolean edge = neighbour != null;
        String where = edge ? "edge middle" : "corner";
        String beside = edge ? ", beside " + Article.with(neighbour.panel().face()) : "";
        String heading = sizing.face() + ", through the " + where + beside;
        marks.addAll(Callout.text(x + 2 * LETTERS, y, 1.1 * LETTERS, Anchor.START, List.of(heading)));
        double top = y + 1.5 * LETTERS;
        SectionView view =
                new SectionView(main, neighbour, design.sphereRadius(), legend, x, top, WIDTH / 2, TALLEST, LETTERS);
        marks.addAll(view.marks());
        List<String> key = key(sizing, where, edge);
        double below = top + view.height();
        marks.addAll(Callout.text(x + 2 * LETTERS, below, LETTERS, Anchor.START, key));
        words.append(heading).append(": ").append(String.join("; ", key)).append(". ");
        return below + Callout.textHeight(key.size(), LETTERS);
    }

    private List<String> key(FaceSizing sizing, String where, boolean edge) {
        double wall = edge ? sizing.wall().edgeMiddle() : sizing.wall().corner();
        double removal = edge ? sizing.removal().edgeMiddle() : sizing.removal().corner();
        List<String> key = new ArrayList<>();
        if (sizing.jointDistance() < sizing.faceDistance()) {
            key.add("A: face distance " + design.say(sizing.faceDistance()));
            key.add("B: joint distance " + design.say(sizing.jointDistance()));
        } else {
            key.add("A: face distance and joint distance " + design.say(sizing.faceDistance()));
        }
        key.add("C: panel thickness " + design.say(design.thickness()));
        key.add("D: sphere radius " + design.say(design.sphereRadius()));
        key.add("E: " + wall("face centre", sizing.wall().faceCentre()));
        key.add("F: " + wall(where, wall));
        key.add(
                sizing.flatDiameter() > 0
                        ? "G: none at the face centre: a flat of " + design.say(sizing.flatDiameter()) + " stays"
                        : "G: turned away at the face centre "
                                + design.say(sizing.removal().faceCentre()));
        key.add("H: turned away at the " + where + " " + design.say(Math.max(0, removal)));
        return key;
    }

    private String wall(String where, double wall) {
        return wall > 0
                ? "wall at the " + where + " " + design.say(wall)
                : "no wall at the " + where + ": breaks through by " + design.say(-wall);
    }

    /** A panel and the one beyond its seam. */
    private record Neighbour(SectionPanel own, SectionPanel other) {}

    /** The neighbour of another kind if there is one, else one of the same kind. */
    private Neighbour neighbour(Panel panel) {
        Solid solid = design.solid();
        Neighbour found = null;
        for (Edge edge : solid.edges()) {
            for (boolean swapped : new boolean[] {false, true}) {
                int own = swapped ? edge.neighbour() : edge.face();
                int other = swapped ? edge.face() : edge.neighbour();
                boolean sameKind = solid.faces()
                        .get(own)
                        .kind()
                        .equals(solid.faces().get(other).kind());
                if (solid.faces().get(own).kind().equals(panel.face()) && (found == null || !sameKind)) {
                    found = new Neighbour(side(edge, own), side(edge, other));
                }
            }
        }
        double shown = NEIGHBOUR * panel.baseDistance();
        return new Neighbour(found.own(), found.other().beyond(found.other().across() - shown));
    }

    private SectionPanel side(Edge edge, int number) {
        Face face = design.solid().faces().get(number);
        int from = face.vertices().indexOf(edge.from());
        int to = face.vertices().indexOf(edge.to());
        // The segment's base runs from the corner of its place to the next one, whichever way the edge is written.
        boolean forwards = (from + 1) % face.vertices().size() == to;
        int place = forwards ? from : to;
        Panel panel = design.panelAt(face.kind(), place);
        Piece piece = panel.pieceOf(face.segments().get(place), place);
        return SectionPanel.edge(
                design, panel, piece, design.spheres().get(0).panels().get(number));
    }
}
