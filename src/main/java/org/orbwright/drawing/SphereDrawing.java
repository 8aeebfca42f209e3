package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.SphereKind;
import org.orbwright.notice.Article;

/** The finished sphere in orthographic projection with the key to its woods. */
public final class SphereDrawing {
    /** Where the eye stands around the third axis where nobody says so; in radians. */
    public static final double AZIMUTH = Math.toRadians(25);
    /** How far it stands above the plane of the first two axes; in radians. */
    public static final double ELEVATION = Math.toRadians(20);

    /** Height of a set's name below its sphere, with the room below it, in letters. */
    private static final double SUBTITLE = 2.5;

    private SphereDrawing() {}

    /** Draws a sphere without a light, as {@link SphereLook} has it; angles in radians. */
    public static Drawing draw(Design design, SphereKind sphere, double azimuth, double elevation, boolean numbered) {
        return draw(design, sphere, new SphereLook(azimuth, elevation, numbered, false));
    }

    /** Draws a sphere whose panels are made from the sets of a kind. */
    public static Drawing draw(Design design, SphereKind sphere, SphereLook look) {
        double middle = design.sphereRadius() * (1 + Legend.MARGIN);
        double width = 2 * middle;
        List<Mark> marks = new ArrayList<>(
                new SphereDisc(design, sphere, look, new Point(middle, middle), Legend.letters(width)).marks());
        String name = Article.with(design.solid().name());
        String set = Legend.setName(sphere.set());
        return sheet(
                design,
                look,
                "Sphere from " + name + ", " + set,
                "The finished sphere of " + design.say(2 * design.sphereRadius()) + " in diameter, made from " + set
                        + " segments of " + name + ", seen from outside.",
                width,
                width,
                marks);
    }

    /** Draws spheres of a design side by side, each with the name of its set below it, and one key. */
    public static Drawing sideBySide(Design design, List<SphereKind> spheres, SphereLook look) {
        double middle = design.sphereRadius() * (1 + Legend.MARGIN);
        double width = 2 * middle * spheres.size();
        double letters = Legend.letters(width);
        List<Mark> marks = new ArrayList<>();
        List<String> sets = new ArrayList<>();
        for (SphereKind sphere : spheres) {
            double x = (2 * sets.size() + 1) * middle;
            String set = Legend.setName(sphere.set());
            marks.addAll(new SphereDisc(design, sphere, look, new Point(x, middle), letters).marks());
            marks.add(new Label(x, 2 * middle + letters, letters, Anchor.MIDDLE, set + " segments"));
            sets.add(set);
        }
        String name = Article.with(design.solid().name());
        return sheet(
                design,
                look,
                "Spheres from " + name + ", " + String.join(" and ", sets),
                "Finished spheres of " + design.say(2 * design.sphereRadius()) + " in diameter side by side, from "
                        + name + ", seen from outside. From left to right: made from " + String.join(", from ", sets)
                        + " segments.",
                width,
                2 * middle + SUBTITLE * letters,
                marks);
    }

    /** The sheet with the key to the woods below the height that the picture takes. */
    private static Drawing sheet(
            Design design,
            SphereLook look,
            String title,
            String description,
            double width,
            double bottom,
            List<Mark> marks) {
        Legend shown = new Legend(design).drawn(marks);
        marks.addAll(shown.marks(width, bottom));
        if (look.lit()) {
            marks.replaceAll(mark -> mark instanceof Area area ? area.plain() : mark);
        }
        return new Drawing(
                title,
                description
                        + (look.numbered() ? " On discs: the panels' numbers." : "")
                        + (look.lit() ? " A light from the upper left shades it." : "")
                        + (shown.species().isEmpty() ? "" : " Woods: " + String.join(", ", shown.species()) + "."),
                width,
                bottom + shown.height(width),
                shown.species(),
                marks);
    }
}
