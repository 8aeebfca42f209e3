package org.orbwright.cell;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A table of the sheet that a spreadsheet may ask for. Its path names the lists whose items are its rows; a row has the
 * plain values of an item and of the items around it.
 */
public enum CellTable {
    ANGLES("/angles/faces/segments", "Bevel, blade tilt, mitre gauge and angles of each kind of segment."),
    EDGES("/angles/edges", "Edges by the face kinds that they join, with dihedral angle and bevels."),
    SEGMENTS("/segments/faces/segments", "Sizes and counts of each kind of segment."),
    CUTS("/segments/faces/segments/cuts", "Where each cut crosses the blank."),
    BLANKS("/yield/laminations", "Blanks of each lamination."),
    STRIPS("/yield/laminations/strips", "Strips of each band."),
    WOODS("/yield/species", "Stock of each wood, with volumes and masses."),
    WALLS("/sphere/faces", "Distances, removal and wall of each face kind."),
    BANDS("/bands/faces/segments/{set}", "What is left of every band on the sphere."),
    PROFILE("/bands/faces/segments/{set}/profile", "Visible width of every band along the base."),
    FINDINGS("/findings", "What is wrong with the design."),
    SHEET("", "Every value of the sheet with the JSON pointer to it and its unit.");

    private final String path;
    private final String words;

    CellTable(String path, String words) {
        this.path = path;
        this.words = words;
    }

    /** Its name in an address. */
    public String text() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The lists whose items are its rows; empty for the whole sheet. */
    public String path() {
        return path;
    }

    /** What it holds. */
    public String words() {
        return words;
    }

    /** The names of all tables. */
    public static List<String> names() {
        return Arrays.stream(values()).map(CellTable::text).toList();
    }

    /** The table of a name. */
    public static Optional<CellTable> of(String text) {
        return Arrays.stream(values())
                .filter(table -> table.text().equals(text))
                .findFirst();
    }
}
