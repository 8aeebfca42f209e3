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
    private static final int STRIPS = 8;
    /** The sheet has the same columns for all bands, from the first strip on. */
    private static final int FIRST_STRIP = 24;

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
        while (rows.size() < FIRST_STRIP - 3) {
            rows.add(List.of());
        }
        rows.add(List.of(text("Strips from the base to the tip", Look.HEADING)));
        rows.add(List.of(text("Wood", Look.HEADING), text("Width", Look.HEADING)));
        List<Content> strips = List.of(
                text("white ash", Look.INPUT),
                text("17", Look.INPUT),
                text("red alder", Look.INPUT),
                text("5", Look.INPUT),
                text("american beech", Look.INPUT),
                text("9", Look.INPUT),
                text("white ash", Look.INPUT),
                text("rest", Look.INPUT));
        for (int strip = 0; strip < STRIPS; strip++) {
            boolean filled = 2 * strip < strips.size();
            rows.add(List.of(
                    filled ? strips.get(2 * strip) : text("", Look.INPUT),
                    filled ? strips.get(2 * strip + 1) : text("", Look.INPUT)));
        }
        rows.add(List.of());
        rows.add(List.of(
                text("The query that the other sheets send", Look.NOTE),
                formula(query(), Look.NOTE),
                text("Made of the cells above.", Look.NOTE)));
        rows.add(List.of(text("The number of strips", Look.NOTE), formula(count(), Look.NOTE)));
        return new Page(DESIGN, List.of(55, 60, 150), rows, null);
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

    /** The query of the filled-in design, in the cell below the strips. */
    private static String query() {
        StringBuilder query = new StringBuilder("\"?errors=text\"");
        for (int i = 0; i < INPUTS.size(); i++) {
            String cell = "{B" + (FIRST_INPUT + i) + "}";
            // Calc encodes no empty text.
            query.append("&IF(")
                    .append(cell)
                    .append("=\"\";\"\";\"&")
                    .append(INPUTS.get(i).text());
            query.append("=\"&@ENCODEURL(").append(cell).append("&\"\"))");
        }
        query.append("&\"&bands=\"&@ENCODEURL(\" \"&");
        for (int strip = 0; strip < STRIPS; strip++) {
            String wood = "{A" + (FIRST_STRIP + strip) + "}";
            String width = "{B" + (FIRST_STRIP + strip) + "}";
            query.append(strip == 0 ? "" : "&")
                    .append("IF(")
                    .append(wood)
                    .append("&")
                    .append(width)
                    .append("=\"\";\"\";")
                    .append(wood)
                    .append("&\" \"&")
                    .append(width)
                    .append("&\"; \")");
        }
        return query.append(")").toString();
    }

    /** The number of strips that are filled in: the service numbers bands without the empty rows between them. */
    private static String count() {
        String last = Integer.toString(FIRST_STRIP + STRIPS - 1);
        return "SUMPRODUCT(1*({A" + FIRST_STRIP + ":A" + last + "}&{B" + FIRST_STRIP + ":B" + last + "}<>\"\"))";
    }

    private static String fetch(Cell cell, String choice) {
        return "@WEBSERVICE({" + DESIGN + "!B3}&\"/v1/cell/" + cell.text() + "\"&{" + DESIGN + "!B"
                + (FIRST_STRIP + STRIPS + 1) + "}" + choice + ")";
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
        rows.add(List.of(
                text("Of the upright set; survival is the share of the flat band's area that is left.", Look.NOTE)));
        List<Content> headings = new ArrayList<>();
        BAND_HEADINGS.forEach(heading -> headings.add(text(heading, Look.HEADING)));
        headings.add(none());
        headings.add(text("As they came", Look.HEADING));
        rows.add(headings);
        for (int band = 1; band <= STRIPS; band++) {
            String beyond = "{" + DESIGN + "!B" + (FIRST_STRIP + STRIPS + 2) + "}<" + band;
            List<Content> row = new ArrayList<>();
            row.add(number(band, Look.PLAIN));
            for (int i = 0; i < OF_A_BAND.size(); i++) {
                String raw = Book.column(FIRST_RAW + i) + (rows.size() + 1);
                row.add(formula(shown(raw), Look.PLAIN));
            }
            row.add(none());
            for (Cell cell : OF_A_BAND) {
                String answer = fetch(cell, "&\"&band=" + band + "\"");
                row.add(formula("IF(" + beyond + ";\"\";" + answer + ")", Look.NOTE));
            }
            rows.add(row);
        }
        rows.add(List.of(none()));
        return new Page(
                "Bands",
                List.of(25, 45, 35, 45, 35, 35, 10, 35, 25, 25, 25, 25),
                rows,
                new Chart("Survival of the bands, from the base to the tip", 1, 5, 3, 2 + STRIPS));
    }
}
