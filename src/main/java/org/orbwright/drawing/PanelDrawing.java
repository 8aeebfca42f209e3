package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.Places;
import org.orbwright.drawing.PanelPlan.Place;
import org.orbwright.drawing.SegmentPatches.Patch;

/** The flat panel of one face kind at true size, with the line beyond which its wood is turned away. */
public final class PanelDrawing {
    /** Room at each side of the panel, in letters. */
    private static final double AROUND = 2;
    /** The sheet is at least this wide for a panel of height 1. */
    private static final double SHEET_PER_HEIGHT = 0.95;
    /** How much paper covers the wood that will be turned away. */
    private static final double LOST_COVER = 0.6;

    private final Design design;
    private final Panel panel;
    private final BandSet set;
    private final Legend legend;
    private final PanelPlan plan;
    private final BandRule rule;
    private final double width;
    private final double letters;
    private final double centreX;
    private final double centreY;
    private final double bottom;
    private final List<Mark> marks = new ArrayList<>();

    private PanelDrawing(Design design, Panel panel, BandSet set) {
        this.design = design;
        this.panel = panel;
        this.set = set;
        this.legend = new Legend(design);
        this.plan = PanelPlan.of(design, panel);
        Box flat = Box.around(plan.corners());
        this.rule = new BandRule(design, plan.places().get(0), set);
        double beside = 1 - Legend.letters(1) * (rule.width() + 2 * AROUND + 1);
        this.width = Math.max(flat.width() / beside, SHEET_PER_HEIGHT * flat.height());
        this.letters = Legend.letters(width);
        double base = plan.places().get(0).piece().base();
        this.centreX = (width - (rule.width() + 1) * letters) / 2 - flat.middle();
        this.centreY = 4 * letters + Math.max(letters - flat.top(), rule.above(letters) - base);
        this.bottom = centreY + Math.max(flat.bottom() + 5 * letters, base + rule.below(letters) + letters);
    }

    /** Draws the panel of a face kind, which is null for a solid with only one, made from a set of segments. */
    public static Drawing draw(Design design, String face, BandSet set) {
        Panel panel = DrawnFace.of(design, face);
        return new PanelDrawing(design, panel, set).drawing();
    }

    private Drawing drawing() {
        marks.add(Callout.heading(heading(), width, letters));
        plan.places().forEach(this::bands);
        marks.add(new Paper(lost(), LOST_COVER, Pen.NONE));
        plan.places().forEach(this::joint);
        marks.add(new Line(path(plan.corners(), true), Pen.THICK));
        plan.places().forEach(this::reach);
        if (flatRadius() > 0) {
            marks.add(new Line(new PathData().circle(centreX, centreY, flatRadius()), Pen.CASED));
        }
        marks.addAll(new PanelNumbers(plan.places().get(0), this::onSheet, letters)
                .marks(patches(plan.places().get(0)).flat()));
        if (panel.kind().segments().size() > 1 || panel.kind().segments().get(0).mirroredCount() > 0) {
            plan.places().forEach(this::letter);
        }
        rule.ring().stream()
                .map(this::onSheet)
                .forEach(at -> marks.add(new Line(new PathData().circle(at.x(), at.y(), letters / 3), Pen.CASED)));
        Place first = plan.places().get(0);
        marks.addAll(rule.marks(
                width - (rule.width() + 1) * letters, centreY + first.piece().base(), letters, legend));
        return Caption.below(design, heading(), description(), width, bottom, caption(), lines(), legend, marks);
    }

    /** The measures of the bands, of both laminations where every other segment has its own. */
    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        Set<Places> told = EnumSet.noneOf(Places.class);
        for (Place place : plan.places()) {
            Places places = place.panel().places();
            if (told.add(places)) {
                if (places != Places.ALL) {
                    lines.add("Segments at " + places.name().toLowerCase(Locale.ROOT) + " places:");
                }
                lines.addAll(new BandRule(design, place, set).lines());
            }
        }
        return lines;
    }

    private SegmentPatches patches(Place place) {
        return SegmentPatches.used(place.panel(), place.piece(), set);
    }

    private double flatRadius() {
        double h = panel.faceDistance();
        double r = design.sphereRadius();
        return r > h ? Math.sqrt((r - h) * (r + h)) : 0;
    }

    private void bands(Place place) {
        for (Patch patch : patches(place).flat()) {
            int tone = legend.tone(patch.layer().band().species());
            marks.add(new Area(path(place, patch.polygon().points(), true), tone, Pen.THIN));
        }
    }

    /** What lies between the outline and the line that the sphere reaches. */
    private PathData lost() {
        PathData path = path(plan.corners(), true);
        List<Point> kept = new ArrayList<>();
        for (Place place : plan.places()) {
            patches(place)
                    .reach(design.sphereRadius(), Flattening.TOLERANCE)
                    .forEach(point -> kept.add(place.at(point)));
        }
        return append(path, kept, true);
    }

    private void joint(Place place) {
        List<Point> joint = List.of(
                new Point(0, 0), new Point(place.piece().base(), -place.piece().left()));
        marks.add(new Line(path(place, joint, false), Pen.MEDIUM));
    }

    private void reach(Place place) {
        List<Point> reach = patches(place).reach(design.sphereRadius(), Flattening.TOLERANCE);
        marks.add(new Line(path(place, reach, false), Pen.DASHED));
    }

    /** The letter of a segment's kind outside its base; an asterisk marks the mirror image. */
    private void letter(Place place) {
        Piece piece = place.piece();
        double along = plan.places().indexOf(place) == 0 ? 0.8 * piece.right() : (piece.right() - piece.left()) / 2;
        Point at = onSheet(place.at(new Point(piece.base() + 1.3 * letters, along)));
        String name = piece.segment() + (piece.mirrored() ? "*" : "");
        marks.add(new Label(at.x(), at.y() + 0.36 * letters, letters, Anchor.MIDDLE, name));
    }

    private PathData path(Place place, List<Point> points, boolean closed) {
        return path(points.stream().map(place::at).toList(), closed);
    }

    private PathData path(List<Point> points, boolean closed) {
        return append(new PathData(), points, closed);
    }

    private PathData append(PathData path, List<Point> points, boolean closed) {
        path.lines(points.stream().map(this::onSheet).toList());
        return closed ? path.close() : path;
    }

    private Point onSheet(Point point) {
        return new Point(centreX + point.x(), centreY + point.y());
    }

    private String heading() {
        String name = panel.face();
        boolean twoSets =
                plan.places().stream().anyMatch(p -> p.panel().lamination().sets() == 2);
        String which = twoSets ? ", " + Legend.setName(set) : "";
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1) + " of the "
                + design.solid().name() + which;
    }

    private String caption() {
        String bases = panel.pieces().stream()
                .mapToDouble(Piece::baseLength)
                .distinct()
                .mapToObj(design::say)
                .collect(Collectors.joining(" and "));
        String mirrored = plan.places().stream().anyMatch(p -> p.piece().mirrored())
                ? " An asterisk marks the mirror image of a segment"
                        + (panel.lamination().straight() ? ", which is the same piece turned face down." : ".")
                : "";
        String flat =
                flatRadius() > 0 ? " Circle: inside it a flat of " + design.say(2 * flatRadius()) + " stays." : "";
        String places = panel.places() == Places.ALL ? "" : " It is of the segment whose base is down.";
        return "Across corners " + design.say(plan.acrossCorners()) + ", base " + bases + ", base distance "
                + design.say(panel.baseDistance()) + ". Dashed: beyond this line the wood is turned away." + flat
                + mirrored + " " + rule.sentence() + places;
    }

    private String description() {
        return "The flat panel of the face kind " + panel.face() + " at true size, seen from outside, made of "
                + plan.places().size() + " segments whose tips meet at its centre. " + caption() + " "
                + String.join("; ", lines()) + ".";
    }
}
