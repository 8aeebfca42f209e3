package org.orbwright.cell;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The texts by which a spreadsheet writes a design, and by which it says what of the design it asks for. */
public enum Parameter {
    SOLID(
            "solid",
            "icosahedron",
            "The solid, by its name in the catalogue (GET /v1/solids). Capitals do not matter, nor do blanks for hyphens."),
    UNIT("unit", "mm", "The unit of the answer, and of every length that is written without one: mm or in."),
    ACROSS_FLATS(
            "acrossFlats", "212", "Size of the solid across two opposite flats; one of the three sizes is needed."),
    EDGE("edge", "5 3/8in", "Size of the solid by its shortest edge, in place of acrossFlats."),
    SPHERE_DIAMETER(
            "sphereDiameter",
            "206",
            "Size of the solid by the finished sphere, in place of acrossFlats: the solid measures the turning"
                    + " allowance more on both sides."),
    THICKNESS("thickness", "30", "Thickness of the panels."),
    LAND("land", "3", "Height of the square strip left at the panel's outer rim; 0 if left out."),
    BANDS(
            "bands",
            "white ash 17; red alder 5; american beech 9; white ash rest",
            "The bands from the base to the tip, each a wood and a width, or rest for one of them; separated by ;."
                    + " Names of woods have no comma and no number here. One list is for all face kinds. Or there is one"
                    + " for each, headed by its name and a colon, and lists are separated by |. Every other segment of"
                    + " a panel may have its own: hexagon ODD: white ash rest | hexagon EVEN: red alder rest."),
    BAND_ANGLE("bandAngle", "0", "How far the bands are turned from running parallel to the base, in degrees."),
    KERF("kerf", "2.6", "Width of the saw cut."),
    END_TRIM("endTrim", "10", "Length cut off each end of the blank before the first segment; 0 if left out."),
    BLANK_LENGTH("blankLength", "720", "Length of the blank."),
    COPIES("copies", "2", "How many spheres are wanted; 1 if left out."),
    SETS(
            "sets",
            "TWINS",
            "Which sets of segments the spheres are made from: TWINS, UPRIGHT, INVERTED or MIXED; TWINS if left out."),
    DIAMETER("diameter", "206", "Diameter of the finished sphere; the largest less twice the allowance if left out."),
    TURNING_ALLOWANCE(
            "turningAllowance",
            "2",
            "Wood to be turned away at the middle of the lowest face before the sphere is reached."),
    MINIMUM_WALL("minimumWall", "6", "The thinnest wall that is acceptable anywhere in the finished sphere."),
    FACE("face", "triangle", "The face kind that is asked for; the first of the solid if left out."),
    NEIGHBOUR("neighbour", "triangle", "The face kind beyond the edge; the first if left out."),
    PLACES("places", "ALL", "The segments that a lamination is for: ALL, ODD or EVEN; the first if left out."),
    SEGMENT("segment", "A", "The kind of segment; the first if left out."),
    BAND("band", "1", "Number of the band, from 1 at the base; the first in the set if left out."),
    SET("set", "UPRIGHT", "The set of segments, UPRIGHT or INVERTED; UPRIGHT if left out."),
    SPECIES("species", "red alder", "The wood that is asked for; the first if left out.");

    /** Parameters that say what is asked for, not what the design is. */
    private static final List<Parameter> SELECTING = List.of(FACE, NEIGHBOUR, PLACES, SEGMENT, BAND, SET, SPECIES);

    private final String text;
    private final String example;
    private final String words;

    Parameter(String text, String example, String words) {
        this.text = text;
        this.example = example;
        this.words = words;
    }

    /** Its name as a spreadsheet writes it. */
    public String text() {
        return text;
    }

    /** A value that it may have. */
    public String example() {
        return example;
    }

    /** What it means. */
    public String words() {
        return words;
    }

    /** Whether it says what is asked for, and not what the design is. */
    public boolean selects() {
        return SELECTING.contains(this);
    }

    /** The parameter of a name. */
    public static Optional<Parameter> of(String text) {
        return Arrays.stream(values())
                .filter(parameter -> parameter.text.equals(text))
                .findFirst();
    }

    @Override
    public String toString() {
        return text;
    }
}
