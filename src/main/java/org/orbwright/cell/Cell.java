package org.orbwright.cell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A value of the sheet that a spreadsheet's cell may ask for. Its path leads to it from the sheet's root: of a list,
 * the item is taken in which the fields in brackets are as the caller's parameters of these names say; {@code {set}} is
 * the set that is asked for.
 */
public enum Cell {
    BLADE_TILT(Inputs.SHAPE, "/angles/faces[face]/bladeTilt", "Tilt of the saw blade for the bevel, degrees."),
    BEVEL(Inputs.SHAPE, "/angles/faces[face]/bevel", "Angle between the panel's face and its seam, degrees."),
    DIHEDRAL(Inputs.SHAPE, "/angles/edges[face,neighbour]/dihedral", "Angle between two panels, degrees."),
    MITRE_GAUGE_LEFT(
            Inputs.SHAPE,
            "/angles/faces[face]/segments[segment]/mitreGaugeLeft",
            "Setting of the mitre gauge off square for the segment's left side, degrees."),
    MITRE_GAUGE_RIGHT(
            Inputs.SHAPE, "/angles/faces[face]/segments[segment]/mitreGaugeRight", "The same for its right side."),
    TIP_ANGLE(Inputs.SHAPE, "/angles/faces[face]/segments[segment]/tipAngle", "Angle at the segment's tip, degrees."),
    ACROSS_FLATS(Inputs.SIZE, "/sphere/acrossFlats", "Size of the solid across flats."),
    EDGE(Inputs.SIZE, "/sphere/edge", "Shortest edge of the solid."),
    BASE(Inputs.SIZE, "/segments/faces[face,places]/segments[segment]/base", "Base of the segment."),
    BASE_DISTANCE(
            Inputs.SIZE,
            "/segments/faces[face,places]/baseDistance",
            "Height of the segment, from its base to its tip."),
    LEG_LEFT(Inputs.SIZE, "/segments/faces[face,places]/segments[segment]/legLeft", "Left leg of the segment."),
    LEG_RIGHT(Inputs.SIZE, "/segments/faces[face,places]/segments[segment]/legRight", "Right leg of the segment."),
    SEGMENTS_PER_SPHERE(
            Inputs.SHAPE, "/segments/faces[face,places]/segments[segment]/perSphere", "Segments that a sphere needs."),
    STOP_DISTANCE(
            Inputs.BLANK,
            "/segments/faces[face,places]/segments[segment]/stopDistance",
            "From the stop to the blade, along the blank."),
    PER_BLANK(Inputs.BLANK, "/segments/faces[face,places]/segments[segment]/perBlank", "Segments that a blank gives."),
    LENGTH_USED(
            Inputs.BLANK,
            "/segments/faces[face,places]/segments[segment]/lengthUsed",
            "Length of the blank that its segments use."),
    BLANKS(Inputs.DESIGN, "/yield/laminations[face,places]/blanks", "Blanks to glue for all copies."),
    STRIPS(Inputs.DESIGN, "/yield/laminations[face,places]/strips[band]/count", "Strips of one band for all copies."),
    BOARD_FEET(Inputs.DESIGN, "/yield/species[species]/stripBoardFeet", "Board feet in the strips of one wood."),
    SPHERE_MASS(Inputs.DESIGN, "/yield/spheres[set]/mass", "Mass of the finished sphere, kilograms."),
    SPHERE_DIAMETER(Inputs.WALL, "/sphere/diameter", "Diameter of the finished sphere."),
    LARGEST_DIAMETER(Inputs.WALL, "/sphere/largestDiameter", "Diameter of the largest sphere that the solid allows."),
    SWING_DIAMETER(
            Inputs.WALL, "/sphere/swingDiameter", "What has to clear the lathe's bed: twice the farthest corner."),
    THINNEST_WALL(Inputs.WALL, "/sphere/thinnestWall", "The thinnest wall of the sphere; below 0 it breaks through."),
    SMALLEST_THICKNESS(
            Inputs.DESIGN, "/sphere/smallestThickness", "Thickness of the panels that leaves the minimum wall."),
    REMOVAL_FACE_CENTRE(Inputs.WALL, "/sphere/faces[face]/removal/faceCentre", "Wood turned away at the face centre."),
    REMOVAL_CORNER(Inputs.WALL, "/sphere/faces[face]/removal/corner", "Wood turned away at the corners."),
    MOUNTING_DISC(
            Inputs.SIZE, "/sphere/faces[face]/mountingDiscDiameter", "Diameter of a disc that just covers the face."),
    BAND_SPECIES(Inputs.SURVIVAL, band("species"), "The wood of a band."),
    BAND_WIDTH(Inputs.SURVIVAL, band("flatWidth"), "Width of a band on the flat panel."),
    VISIBLE_WIDTH(
            Inputs.SURVIVAL, band("visibleWidth/edgeMiddle"), "Width of a band on the sphere, at the edge middle."),
    VISIBLE_WIDTH_CORNER(
            Inputs.SURVIVAL, band("visibleWidth/leftCorner"), "Width of a band on the sphere, at the left corner."),
    SURVIVAL(Inputs.SURVIVAL, band("survival"), "Share of the flat band's area that is left, 0 to 1."),
    SHARE_OF_SPHERE(Inputs.SURVIVAL, band("shareOfSphere"), "A band's share of the sphere's surface, 0 to 1."),
    SHARE_OF_SPECIES(
            Inputs.SURVIVAL, "/bands/spheres[set]/species[species]/share", "A wood's share of the sphere, 0 to 1."),
    SEVERITY(Inputs.DESIGN, "/findings/0/severity", "The gravest finding's severity, STOP, WARN or NOTE, or nothing."),
    FINDING(Inputs.DESIGN, "/findings/0/message", "The gravest finding in a sentence, or nothing.");

    private static final Pattern CHOICES = Pattern.compile("[\\[{]([a-zA-Z,]+)[]}]");

    private final Inputs needs;
    private final String path;
    private final String words;

    Cell(Inputs needs, String path, String words) {
        this.needs = needs;
        this.path = path;
        this.words = words;
    }

    private static String band(String field) {
        return "/bands/faces[face,places]/segments[segment]/{set}[band]/" + field;
    }

    /** Its name in an address, for example {@code blade-tilt}. */
    public String text() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What it depends on. */
    public Inputs needs() {
        return needs;
    }

    /** Where it stands in the sheet. */
    public String path() {
        return path;
    }

    /** The names of the parameters that choose it. */
    public List<String> choices() {
        return choices(path);
    }

    /** The names of the fields that a path's items are chosen by. */
    public static List<String> choices(String path) {
        List<String> choices = new ArrayList<>();
        Matcher fields = CHOICES.matcher(path);
        while (fields.find()) {
            choices.addAll(Arrays.asList(fields.group(1).split(",")));
        }
        return choices;
    }

    /** What it is. */
    public String words() {
        return words;
    }

    /** The names of all cells. */
    public static List<String> names() {
        return Arrays.stream(values()).map(Cell::text).toList();
    }

    /** The cell of a name. */
    public static Optional<Cell> of(String text) {
        return Arrays.stream(values()).filter(cell -> cell.text().equals(text)).findFirst();
    }
}
