package org.orbwright.api.cells;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.orbwright.api.wire.RequestException;
import org.orbwright.api.wire.Sentences;
import org.orbwright.cell.CellDesign;
import org.orbwright.design.BandSet;
import org.orbwright.design.Violation;

/**
 * Follows the path of a cell or a table through a sheet's JSON, so that a spreadsheet gets the very digits that the
 * sheet has.
 */
public final class SheetPath {
    private static final Pattern STEP = Pattern.compile("(?<name>[A-Za-z0-9]+)(?:\\[(?<fields>[a-zA-Z,]+)])?");
    /** The column of a value's JSON pointer in the table of the whole sheet. */
    static final String POINTER = "pointer";

    private static final String SET = "set";
    private static final String FACE = "face";
    private static final String NEIGHBOUR = "neighbour";

    private final Map<String, String> wanted;

    /** @param wanted what the items of lists have to be, by the names of their fields */
    public SheetPath(Map<String, String> wanted) {
        this.wanted = wanted;
    }

    /** The value at the end of a cell's path; nothing where a list is empty. */
    Optional<String> value(JsonNode sheet, String path) {
        JsonNode at = sheet;
        for (String text : steps(path)) {
            Matcher step = STEP.matcher(text);
            if (!step.matches()) {
                throw new IllegalStateException("no step of a path: " + text);
            }
            at = at.isArray() ? at.path(Integer.parseInt(step.group("name"))) : at.path(step.group("name"));
            if (step.group("fields") != null) {
                at = item(at, List.of(step.group("fields").split(",")));
            }
        }
        return at.isMissingNode() ? Optional.empty() : Optional.of(text(at));
    }

    /** The rows of a table: every item of the path's last list, with the plain values of the items around it. */
    List<Map<String, JsonNode>> rows(JsonNode sheet, String path) {
        List<Map<String, JsonNode>> rows = new ArrayList<>();
        if (path.isEmpty()) {
            addLeaves("", sheet, rows);
        } else {
            addRows(sheet, steps(path), Map.of(), rows);
        }
        return rows;
    }

    private List<String> steps(String path) {
        String set = wanted.getOrDefault(SET, BandSet.UPRIGHT.name()).toLowerCase(Locale.ROOT);
        return List.of(path.substring(1).replace("{" + SET + "}", set).split("/"));
    }

    /** The first item whose fields are as wanted; each wish is for what fits those before it. */
    private JsonNode item(JsonNode list, List<String> fields) {
        List<JsonNode> fitting = ways(list, fields);
        for (String field : fields) {
            TreeSet<String> known = new TreeSet<>();
            fitting.forEach(item -> known.add(text(item.path(field))));
            fitting = fitting.stream().filter(item -> fits(item, field)).toList();
            if (fitting.isEmpty() && wanted.containsKey(field)) {
                throw unfitting(field, known);
            }
        }
        return fitting.isEmpty() ? MissingNode.getInstance() : fitting.get(0);
    }

    /** The items of a list; an edge's two faces have no order, so that edges follow the other way round. */
    private static List<JsonNode> ways(JsonNode list, List<String> fields) {
        List<JsonNode> ways = new ArrayList<>();
        list.forEach(ways::add);
        if (fields.contains(NEIGHBOUR)) {
            for (JsonNode edge : list) {
                ObjectNode turned = edge.deepCopy();
                ways.add(turned.setAll(Map.of(FACE, edge.path(NEIGHBOUR), NEIGHBOUR, edge.path(FACE))));
            }
        }
        return ways;
    }

    private RequestException unfitting(String field, Set<String> known) {
        String allowed = known.isEmpty() ? "nothing here" : "one of " + String.join(", ", known);
        String given = Sentences.cut(wanted.get(field));
        return RequestException.invalid(List.of(new Violation(
                field,
                "UNKNOWN_VALUE",
                field + " must be " + allowed + ", but is \"" + given + "\".",
                given,
                allowed)));
    }

    private boolean fits(JsonNode item, String field) {
        return !wanted.containsKey(field)
                || CellDesign.name(wanted.get(field)).equals(CellDesign.name(text(item.path(field))));
    }

    private static void addRows(
            JsonNode at, List<String> steps, Map<String, JsonNode> around, List<Map<String, JsonNode>> rows) {
        JsonNode list = at.path(steps.get(0));
        List<String> rest = steps.subList(1, steps.size());
        if (!list.isArray()) {
            if (list.isObject()) {
                addRows(list, rest, around, rows);
            }
            return;
        }
        for (JsonNode item : list) {
            Map<String, JsonNode> values = new LinkedHashMap<>(around);
            addPlain("", item, values);
            if (rest.isEmpty()) {
                rows.add(values);
            } else {
                addRows(item, rest, values, rows);
            }
        }
    }

    /** The values that are no lists; those of an object under its name and theirs. */
    private static void addPlain(String prefix, JsonNode item, Map<String, JsonNode> values) {
        item.properties().forEach(field -> {
            String name = prefix.isEmpty()
                    ? field.getKey()
                    : prefix
                            + Character.toUpperCase(field.getKey().charAt(0))
                            + field.getKey().substring(1);
            if (field.getValue().isObject()) {
                addPlain(name, field.getValue(), values);
            } else if (field.getValue().isValueNode()) {
                values.put(name, field.getValue());
            }
        });
    }

    private static void addLeaves(String pointer, JsonNode at, List<Map<String, JsonNode>> rows) {
        if (at.isValueNode()) {
            Map<String, JsonNode> row = new LinkedHashMap<>();
            row.put(POINTER, TextNode.valueOf(pointer));
            row.put("value", at);
            rows.add(row);
        } else if (at.isArray()) {
            for (int i = 0; i < at.size(); i++) {
                addLeaves(pointer + "/" + i, at.get(i), rows);
            }
        } else {
            at.properties().forEach(field -> addLeaves(pointer + "/" + field.getKey(), field.getValue(), rows));
        }
    }

    /** A plain value as it stands in the JSON, without an exponent. */
    static String text(JsonNode value) {
        return value.isBigDecimal() ? value.decimalValue().toPlainString() : value.asText();
    }
}
