package org.orbwright.workbook;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.orbwright.cell.CellDesign;
import org.orbwright.cell.Parameter;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.wood.WoodSpecies;
import org.orbwright.wood.WoodTable;

/**
 * What is filled into a workbook: the address where the service answers, without a slash at its end, the lists to
 * choose from, and answers for the design that the workbook starts with. That design is made of the parameters'
 * examples. The cells are the service's answers for a cell's name and query, such as {@code bevel?solid=cube}.
 */
public record Contents(String service, UnaryOperator<String> cells) {
    private static final Map<String, List<String>> LISTS = Map.of(
            "solids", SolidCatalogue.all().stream().map(Solid::name).toList(),
            "faces",
                    SolidCatalogue.all().stream()
                            .map(Solid::faceKinds)
                            .flatMap(Collection::stream)
                            .map(FaceKind::face)
                            .distinct()
                            .sorted()
                            .toList(),
            "woods", WoodTable.all().stream().map(WoodSpecies::name).toList(),
            "units", Arrays.stream(LengthUnit.values()).map(LengthUnit::symbol).toList(),
            "sets", CellDesign.SETS.stream().map(Enum::name).toList());

    private static final int HEADING_ROWS = 1;
    private static final List<Parameter> LEFT_OUT = List.of(Parameter.EDGE, Parameter.SPHERE_DIAMETER);
    private static final String BETWEEN_BANDS = ";";
    /** As both file formats write a number in a cell. */
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

    static int longestList() {
        return LISTS.values().stream().mapToInt(List::size).max().orElse(0);
    }

    /** What stands at a place, from 0, of the list that is named; its number for {@code row}. */
    static String listed(String words, int place) {
        if (words.equals("row")) {
            return Integer.toString(HEADING_ROWS + 1 + place);
        }
        List<String> list = LISTS.get(words);
        return place < list.size() ? list.get(place) : "";
    }

    /** The text for some words: what kind of text, and of what. */
    String text(String words) {
        String kind = words.replaceFirst(" .*", "");
        String of = words.substring(Math.min(words.length(), kind.length() + 1));
        return switch (kind) {
            case "service" -> service;
            case "lastRow" -> Integer.toString(HEADING_ROWS + LISTS.get(of).size());
            case "example" -> Parameter.of(of).orElseThrow().example();
            case "wood" -> band(of).substring(0, band(of).lastIndexOf(' '));
            case "width" -> band(of).substring(band(of).lastIndexOf(' ') + 1);
            case "bands" -> bands(Integer.parseInt(of));
            case "query" -> query(Parameter.of(of).orElseThrow());
            case "cell" -> cells.apply(asked(of));
            case "number" -> number(of);
            default -> throw new IllegalStateException("nothing is known as " + words);
        };
    }

    /** A text in a cell for numbers would break the file, and be found out only by who opens it. */
    private String number(String cell) {
        String answer = cells.apply(asked(cell));
        if (!NUMBER.matcher(answer).matches()) {
            throw new IllegalStateException("the cell " + cell + " answers no number: " + answer);
        }
        return answer;
    }

    private static String band(String number) {
        return Parameter.BANDS
                .example()
                .split(BETWEEN_BANDS, -1)[Integer.parseInt(number) - 1]
                .strip();
    }

    private static String bands(int count) {
        return Arrays.stream(Parameter.BANDS.example().split(BETWEEN_BANDS, -1))
                .limit(count)
                .collect(Collectors.joining(BETWEEN_BANDS));
    }

    /** The query of the design up to a parameter, as the workbook's formulas make it. */
    private static String query(Parameter last) {
        return "?errors=text"
                + Arrays.stream(Parameter.values())
                        .filter(parameter -> parameter.compareTo(last) <= 0)
                        .filter(parameter -> !parameter.selects() && !LEFT_OUT.contains(parameter))
                        .map(parameter -> "&" + parameter + "=" + encoded(parameter))
                        .collect(Collectors.joining());
    }

    /** The formula writes a blank before bands: Calc encodes no empty text. */
    private static String encoded(Parameter parameter) {
        String text = (parameter == Parameter.BANDS ? " " : "") + parameter.example();
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    private static String asked(String cell) {
        String name = cell.replaceFirst(" .*", "");
        return name
                + query(Parameter.MINIMUM_WALL)
                + cell.substring(name.length()).replace(' ', '&');
    }
}
