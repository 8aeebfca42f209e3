package org.orbwright.workbook;

import static org.orbwright.workbook.Book.Content.formula;
import static org.orbwright.workbook.Book.Content.none;
import static org.orbwright.workbook.Book.Content.number;
import static org.orbwright.workbook.Book.Content.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.cell.Cell;
import org.orbwright.cell.Parameter;
import org.orbwright.workbook.Book.Chart;
import org.orbwright.workbook.Book.Content;
import org.orbwright.workbook.Book.Look;
import org.orbwright.workbook.Book.Page;

/**
 * The workbook: a sheet to write a design in, one with the numbers that the service answers, and one with what is left
 * of the bands, and a chart of it.
 */
public final class DesignBook {
    private static final String DESIGN = "Design";
    /** Bands of a face kind that have a row in the sheet of bands. */
    private static final int BANDS = 8;
    /** No solid has more face kinds. */
    private static final int FACE_KINDS = 3;

    private static final List<Parameter> INPUTS = List.of(
            Parameter.SOLID,
            Parameter.UNIT,
            Parameter.ACROSS_FLATS,
            Parameter.EDGE,
            Parameter.SPHERE_DIAMETER,
            Parameter.THICKNESS,
            Parameter.LAND,
            Parameter.KERF,
            Parameter.END_TRIM,
            Parameter.BLANK_LENGTH,
            Parameter.COPIES,
            Parameter.DIAMETER,
            Parameter.TURNING_ALLOWANCE,
            Parameter.MINIMUM_WALL);
    private static final int FIRST_INPUT = 6;
    private static final int FIRST_FACE = FIRST_INPUT + INPUTS.size() + 2;
    private static final int SHOWN_FACE = FIRST_FACE + FACE_KINDS + 1;
    private static final int QUERY = SHOWN_FACE + 2;
    /** What the service says of a band that there is not. */
    private static final String NO_BAND = "ERROR: band must be ";

    private static final List<Cell> WORDS = List.of(Cell.SEVERITY, Cell.FINDING);
    private static final List<Cell> NUMBERS = List.of(
            Cell.BLADE_TILT,
            Cell.BEVEL,
            Cell.MITRE_GAUGE_LEFT,
            Cell.TIP_ANGLE,
            Cell.ACROSS_FLATS,
            Cell.EDGE,
            Cell.BASE,
            Cell.BASE_DISTANCE,
            Cell.STOP_DISTANCE,
            Cell.SEGMENTS_PER_SPHERE,
            Cell.PER_BLANK,
            Cell.LENGTH_USED,
            Cell.BLANKS,
            Cell.SPHERE_DIAMETER,
            Cell.LARGEST_DIAMETER,
            Cell.SWING_DIAMETER,
            Cell.THINNEST_WALL,
            Cell.SMALLEST_THICKNESS,
            Cell.REMOVAL_CORNER,
            Cell.MOUNTING_DISC,
            Cell.SPHERE_MASS);
    private static final List<Cell> OF_A_BAND =
            List.of(Cell.BAND_SPECIES, Cell.BAND_WIDTH, Cell.VISIBLE_WIDTH, Cell.VISIBLE_WIDTH_CORNER, Cell.SURVIVAL);
    private static final List<String> BAND_HEADINGS =
            List.of("Band", "Wood", "Flat width", "Visible, edge middle", "Visible, corner", "Survival");

    /** Column of the bands' first answer as it came. */
    private static final int FIRST_RAW = 7;

    private DesignBook() {}

    /**
     * The workbook.
     *
     * @param service address of the service, without a slash at its end
     */
    public static Book of(String service) {
        return new Book(List.of(design(service), results(), bands()));
    }

    private static Page design(String service) {
        List<List<Content>> rows = new ArrayList<>();
        rows.add(List.of(text("A sphere of laminated segments", Look.TITLE)));
        rows.add(List.of(text(
                "Fill in the framed cells. The design is invented. Lengths may be written as 79.4, 3 1/8 or"
                        + " 79.4mm.",
                Look.NOTE)));
        rows.add(List.of(
                text("Service", Look.HEADING),
                text(service, Look.INPUT),
                text(
                        "Where the service answers; it has to run, and the spreadsheet has to be allowed to fetch.",
                        Look.NOTE)));
        rows.add(List.of());
        rows.add(List.of(text("Design", Look.HEADING)));
        Map<Parameter, Content> given = given();
        for (Parameter input : INPUTS) {
            rows.add(List.of(
                    text(input.text(), Look.PLAIN),
                    given.getOrDefault(input, text("", Look.INPUT)),
                    text(input.words(), Look.NOTE)));
        }
        rows.add(List.of());
        rows.add(List.of(
                text("Face kind", Look.HEADING),
                text("Bands from the base to the tip", Look.HEADING),
                text(
                        "A row without a face kind is for all of them. Else write a row for each face kind that the"
                                + " solid has (GET /v1/solids names them). One wood's width may be rest.",
                        Look.NOTE)));
        for (int face = 0; face < FACE_KINDS; face++) {
            rows.add(List.of(text("", Look.INPUT), text(face == 0 ? Parameter.BANDS.example() : "", Look.INPUT)));
        }
        rows.add(List.of());
        rows.add(List.of(
                text("Face kind that the other sheets show", Look.HEADING),
                text("", Look.INPUT),
                text(Parameter.FACE.words(), Look.NOTE)));
        rows.add(List.of());
        rows.add(List.of(
                text("The query that the other sheets send", Look.NOTE),
                formula(query(), Look.NOTE),
                text("Made of the cells above.", Look.NOTE)));
        return new Page(DESIGN, List.of(55, 110, 150), rows, null);
    }

    private static Map<Parameter, Content> given() {
        Map<Parameter, Content> given = new LinkedHashMap<>();
        given.put(Parameter.SOLID, text("icosahedron", Look.INPUT));
        given.put(Parameter.UNIT, text("mm", Look.INPUT));
        given.put(Parameter.ACROSS_FLATS, text("212", Look.INPUT));
        given.put(Parameter.THICKNESS, text("30", Look.INPUT));
        given.put(Parameter.LAND, text("3", Look.INPUT));
        given.put(Parameter.KERF, text("2.6", Look.INPUT));
        given.put(Parameter.END_TRIM, text("10", Look.INPUT));
        given.put(Parameter.BLANK_LENGTH, text("720", Look.INPUT));
        given.put(Parameter.COPIES, text("2", Look.INPUT));
        given.put(Parameter.DIAMETER, text("206", Look.INPUT));
        given.put(Parameter.TURNING_ALLOWANCE, text("2", Look.INPUT));
        given.put(Parameter.MINIMUM_WALL, text("6", Look.INPUT));
        return given;
    }

    /** The query of the filled-in design, in the cell below it. */
    private static String query() {
        StringBuilder query = new StringBuilder("\"?errors=text\"");
        for (int i = 0; i < INPUTS.size(); i++) {
            query.append("&").append(stated(INPUTS.get(i), "{B" + (FIRST_INPUT + i) + "}"));
        }
        query.append("&\"&bands=\"&@ENCODEURL(\" \"");
        for (int row = FIRST_FACE; row < FIRST_FACE + FACE_KINDS; row++) {
            String face = "{A" + row + "}";
            String bands = "{B" + row + "}";
            query.append(row == FIRST_FACE ? "" : "&IF(" + face + "&" + bands + "=\"\";\"\";\" | \")")
                    .append("&IF(" + face + "=\"\";\"\";" + face + "&\": \")&" + bands);
        }
        return query.append(")").toString();
    }

    /** A parameter with the text of a cell, or nothing where the cell is empty: Calc encodes no empty text. */
    private static String stated(Parameter parameter, String cell) {
        return "IF(" + cell + "=\"\";\"\";\"&" + parameter.text() + "=\"&@ENCODEURL(" + cell + "&\"\"))";
    }

    private static String fetch(Cell cell, String choice) {
        String face = cell.choices().contains(Parameter.FACE.text())
                ? "&" + stated(Parameter.FACE, "{" + DESIGN + "!B" + SHOWN_FACE + "}")
                : "";
        return "@WEBSERVICE({" + DESIGN + "!B3}&\"/v1/cell/" + cell.text() + "\"&{" + DESIGN + "!B" + QUERY + "}" + face
                + choice + ")";
    }

    /** A number as this spreadsheet's language has it; a text, and what is wrong, as it came. */
    private static String shown(String cell) {
        return "IFERROR(IF({" + cell + "}=\"\";\"\";IFERROR(@NUMBERVALUE({" + cell + "};\".\";\",\");{" + cell
                + "}));\"no answer\")";
    }

    private static Page results() {
        List<List<Content>> rows = new ArrayList<>();
        rows.add(List.of(text("What the service answers", Look.TITLE)));
        rows.add(List.of(text(
                "These numbers say what fits, not what is safe: the machine's manual, local rules and qualified"
                        + " instruction come first.",
                Look.NOTE)));
        for (Cell word : WORDS) {
            String answer = "IFERROR(" + fetch(word, "") + ";\"no answer\")";
            rows.add(List.of(text(word.words(), Look.PLAIN), formula(answer, Look.HEADING)));
        }
        rows.add(List.of());
        rows.add(List.of(text("Number", Look.HEADING), text("Value", Look.HEADING), text("As it came", Look.HEADING)));
        for (Cell result : NUMBERS) {
            rows.add(List.of(
                    text(result.words(), Look.PLAIN),
                    formula(shown("C" + (rows.size() + 1)), Look.HEADING),
                    formula(fetch(result, ""), Look.NOTE)));
        }
        return new Page("Results", List.of(110, 60, 60), rows, null);
    }

    private static Page bands() {
        List<List<Content>> rows = new ArrayList<>();
        rows.add(List.of(text("What is left of every band", Look.TITLE)));
        rows.add(List.of(text(
                "Of the upright set of the face kind that is shown; survival is the share of the flat band's area that is left.",
                Look.NOTE)));
        List<Content> headings = new ArrayList<>();
        BAND_HEADINGS.forEach(heading -> headings.add(text(heading, Look.HEADING)));
        headings.add(none());
        headings.add(text("As they came", Look.HEADING));
        rows.add(headings);
        for (int band = 1; band <= BANDS; band++) {
            List<Content> row = new ArrayList<>();
            row.add(number(band, Look.PLAIN));
            for (int i = 0; i < OF_A_BAND.size(); i++) {
                String raw = Book.column(FIRST_RAW + i) + (rows.size() + 1);
                String none = "IFERROR(LEFT({" + raw + "};" + NO_BAND.length() + ")=\"" + NO_BAND + "\";FALSE())";
                row.add(formula("IF(" + none + ";\"\";" + shown(raw) + ")", Look.PLAIN));
            }
            row.add(none());
            for (Cell cell : OF_A_BAND) {
                row.add(formula(fetch(cell, "&\"&band=" + band + "\""), Look.NOTE));
            }
            rows.add(row);
        }
        rows.add(List.of(none()));
        return new Page(
                "Bands",
                List.of(25, 45, 35, 45, 35, 35, 10, 35, 25, 25, 25, 25),
                rows,
                new Chart("Survival of the bands, from the base to the tip", 1, 5, 3, 2 + BANDS));
    }
}
