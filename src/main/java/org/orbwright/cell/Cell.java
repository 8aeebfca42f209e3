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
    /** Blade tilt. */
    BLADE_TILT(Needs.SHAPE, "/angles/faces[face]/bladeTilt", "Tilt of the saw blade for the bevel, degrees."),
    /** Bevel. */
    BEVEL(Needs.SHAPE, "/angles/faces[face]/bevel", "Angle between the panel's face and its seam, degrees."),
    /** Dihedral angle. */
    DIHEDRAL(Needs.SHAPE, "/angles/edges[face,neighbour]/dihedral", "Angle between two panels, degrees."),
    /** Mitre gauge, left. */
    MITRE_GAUGE_LEFT(
            Needs.SHAPE,
            "/angles/faces[face]/segments[segment]/mitreGaugeLeft",
            "Setting of the mitre gauge off square for the segment's left side, degrees."),
    /** Mitre gauge, right. */
    MITRE_GAUGE_RIGHT(
            Needs.SHAPE, "/angles/faces[face]/segments[segment]/mitreGaugeRight", "The same for its right side."),
    /** Tip angle. */
    TIP_ANGLE(Needs.SHAPE, "/angles/faces[face]/segments[segment]/tipAngle", "Angle at the segment's tip, degrees."),
    /** Size across flats. */
    ACROSS_FLATS(Needs.SIZE, "/sphere/acrossFlats", "Size of the solid across flats."),
    /** Edge. */
    EDGE(Needs.SIZE, "/sphere/edge", "Shortest edge of the solid."),
    /** Base. */
    BASE(Needs.SIZE, "/segments/faces[face,places]/segments[segment]/base", "Base of the segment."),
    /** Base distance. */
    BASE_DISTANCE(
            Needs.SIZE,
            "/segments/faces[face,places]/baseDistance",
            "Height of the segment, from its base to its tip."),
    /** Left leg. */
    LEG_LEFT(Needs.SIZE, "/segments/faces[face,places]/segments[segment]/legLeft", "Left leg of the segment."),
    /** Right leg. */
    LEG_RIGHT(Needs.SIZE, "/segments/faces[face,places]/segments[segment]/legRight", "Right leg of the segment."),
    /** Segments per sphere. */
    SEGMENTS_PER_SPHERE(
            Needs.SHAPE, "/segments/faces[face,places]/segments[segment]/perSphere", "Segments that a sphere needs."),
    /** Stop distance. */
    STOP_DISTANCE(
            Needs.BLANK,
            "/segments/faces[face,places]/segments[segment]/stopDistance",
            "From the stop to the blade, along the blank."),
    /** Segments per blank. */
    PER_BLANK(Needs.BLANK, "/segments/faces[face,places]/segments[segment]/perBlank", "Segments that a blank gives."),
    /** Length used. */
    LENGTH_USED(
            Needs.BLANK,
            "/segments/faces[face,places]/segments[segment]/lengthUsed",
            "Length of the blank that its segments use."),
    /** Blanks. */
    BLANKS(Needs.DESIGN, "/yield/laminations[face,places]/blanks", "Blanks to glue for all copies."),
    /** Strips of one band. */
    STRIPS(Needs.DESIGN, "/yield/laminations[face,places]/strips[band]/count", "Strips of one band for all copies."),
    /** Board feet of a wood. */
    BOARD_FEET(Needs.DESIGN, "/yield/species[species]/stripBoardFeet", "Board feet in the strips of one wood."),
    /** Mass of the sphere. */
    SPHERE_MASS(Needs.DESIGN, "/yield/spheres[set]/mass", "Mass of the finished sphere, kilograms."),
    /** Diameter of the sphere. */
    SPHERE_DIAMETER(Needs.WALL, "/sphere/diameter", "Diameter of the finished sphere."),
    /** The largest sphere. */
    LARGEST_DIAMETER(Needs.WALL, "/sphere/largestDiameter", "Diameter of the largest sphere that the solid allows."),
    /** Swing. */
    SWING_DIAMETER(
            Needs.WALL, "/sphere/swingDiameter", "What has to clear the lathe's bed: twice the farthest corner."),
    /** The thinnest wall. */
    THINNEST_WALL(Needs.WALL, "/sphere/thinnestWall", "The thinnest wall of the sphere; below 0 it breaks through."),
    /** The smallest thickness. */
    SMALLEST_THICKNESS(
            Needs.DESIGN, "/sphere/smallestThickness", "Thickness of the panels that leaves the minimum wall."),
    /** Removal at the face centre. */
    REMOVAL_FACE_CENTRE(Needs.WALL, "/sphere/faces[face]/removal/faceCentre", "Wood turned away at the face centre."),
    /** Removal at the corner. */
    REMOVAL_CORNER(Needs.WALL, "/sphere/faces[face]/removal/corner", "Wood turned away at the corners."),
    /** Mounting disc. */
    MOUNTING_DISC(
            Needs.SIZE, "/sphere/faces[face]/mountingDiscDiameter", "Diameter of a disc that just covers the face."),
    /** Wood of a band. */
    BAND_SPECIES(Needs.SURVIVAL, band("species"), "The wood of a band."),
    /** Width of a band on the flat panel. */
    BAND_WIDTH(Needs.SURVIVAL, band("flatWidth"), "Width of a band on the flat panel."),
    /** Width of a band on the sphere at the edge middle. */
    VISIBLE_WIDTH(
            Needs.SURVIVAL, band("visibleWidth/edgeMiddle"), "Width of a band on the sphere, at the edge middle."),
    /** Width of a band on the sphere at the corner. */
    VISIBLE_WIDTH_CORNER(
            Needs.SURVIVAL, band("visibleWidth/leftCorner"), "Width of a band on the sphere, at the left corner."),
    /** Survival of a band. */
    SURVIVAL(Needs.SURVIVAL, band("survival"), "Share of the flat band's area that is left, 0 to 1."),
    /** Share of the sphere. */
    SHARE_OF_SPHERE(Needs.SURVIVAL, band("shareOfSphere"), "A band's share of the sphere's surface, 0 to 1."),
    /** Share of a wood. */
    SHARE_OF_SPECIES(
            Needs.SURVIVAL, "/bands/spheres[set]/species[species]/share", "A wood's share of the sphere, 0 to 1."),
    /** The gravest finding's severity. */
    SEVERITY(Needs.DESIGN, "/findings/0/severity", "The gravest finding's severity, STOP, WARN or NOTE, or nothing."),
    /** The gravest finding. */
    FINDING(Needs.DESIGN, "/findings/0/message", "The gravest finding in a sentence, or nothing.");

    private static final Pattern CHOICES = Pattern.compile("[\\[{]([a-zA-Z,]+)[]}]");

    private final Needs needs;
    private final String path;
    private final String words;

    Cell(Needs needs, String path, String words) {
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
    public Needs needs() {
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
