package org.orbwright.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.orbwright.api.wire.DesignLibrary;
import org.orbwright.document.Section;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.solid.SolidSummary;

/** Makes up documents that fit the contract, from its schema or from a worked one, and damages them. */
final class DesignMaker {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final String DOCUMENT = "Document";
    private static final String[] DAMAGE = {
        "null",
        "-1",
        "0",
        "1.5",
        "1e308",
        "-1e308",
        "1e-320",
        "99999999999",
        "\"text\"",
        "\"\"",
        "\" \"",
        "true",
        "[]",
        "{}",
        "[[]]",
        "[null]",
        "{\"a\":1}",
        "\"\\u0000\"",
        "\"\\ud800\""
    };

    /** Every how many'th document that is made up has a certain section, so that most documents are small. */
    private static final int SECTION = 6;

    /** Every how many'th worked document keeps a certain section that it has. */
    private static final int KEPT = 3;

    private final JsonNode contract;
    private final Random random;
    private final List<String> worked = List.copyOf(DesignLibrary.all().keySet());
    private final List<SolidSummary> solids = SolidCatalogue.summaries();

    DesignMaker(JsonNode contract, Random random) {
        this.contract = contract;
        this.random = random;
    }

    /** A document that fits the contract; two of three are a worked one with some numbers changed. */
    ObjectNode make() {
        ObjectNode document = random.nextInt(3) == 0 ? madeUp() : shifted();
        if (document.path("stock") instanceof ObjectNode stock) {
            // A search that is allowed its seconds would take them, thousands of times.
            stock.set("search", NODES.objectNode().put("seconds", 0.05));
        }
        if (document.path("tolerance") instanceof ObjectNode tolerance) {
            tolerance.put("samples", 100 + random.nextInt(400));
        }
        return document;
    }

    private ObjectNode madeUp() {
        ObjectNode document = (ObjectNode) value(schema(DOCUMENT), "");
        for (Section section : Section.values()) {
            if (random.nextInt(SECTION) > 0) {
                document.remove(section.text());
            }
        }
        return document;
    }

    private ObjectNode shifted() {
        boolean main = random.nextBoolean();
        ObjectNode document = Posted.worked(main ? Posted.MAIN : worked.get(random.nextInt(worked.size())));
        for (Section section : Section.values()) {
            if (random.nextInt(KEPT) > 0) {
                document.remove(section.text());
            }
        }
        for (int i = random.nextInt(3); i > 0; i--) {
            shift(document, schema(DOCUMENT));
        }
        return document;
    }

    /** Changes one number somewhere, within its bounds. */
    private void shift(JsonNode object, JsonNode schema) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        String name = names.get(random.nextInt(names.size()));
        JsonNode property = resolved(schema.path("properties").path(name));
        JsonNode value = object.get(name);
        if (value.isObject()) {
            shift(value, property);
        } else if (value.isArray() && !value.get(0).isObject()) {
            return;
        } else if (value.isArray()) {
            shift(value.get(random.nextInt(value.size())), resolved(property.path("items")));
        } else if (value.isNumber()) {
            double shifted = value.asDouble() * Math.exp(random.nextGaussian());
            double bounded = Math.max(
                    property.path("minimum").asDouble(),
                    Math.min(shifted, property.path("maximum").asDouble()));
            boolean whole = property.path("type").asText().equals("integer");
            ((ObjectNode) object)
                    .set(name, whole ? NODES.numberNode((int) Math.ceil(bounded)) : NODES.numberNode(bounded));
        }
    }

    /** A value that fits a schema. */
    private JsonNode value(JsonNode schema, String name) {
        if (schema.path("nullable").asBoolean() && random.nextInt(4) == 0) {
            return NODES.nullNode();
        }
        if (schema.has("enum")) {
            return schema.path("enum").get(random.nextInt(schema.path("enum").size()));
        }
        return switch (schema.path("type").asText()) {
            case "object" -> object(schema);
            case "array" -> array(schema);
            case "integer" -> NODES.numberNode((int) Math.round(number(schema)));
            case "number" -> NODES.numberNode(number(schema));
            case "boolean" -> NODES.booleanNode(random.nextBoolean());
            default ->
                NODES.textNode(
                        name.equals("solid")
                                ? solids.get(random.nextInt(solids.size())).name()
                                : "abc".substring(random.nextInt(3)));
        };
    }

    private JsonNode object(JsonNode schema) {
        ObjectNode object = NODES.objectNode();
        for (Map.Entry<String, JsonNode> property : schema.path("properties").properties()) {
            boolean required = schema.path("required").toString().contains('"' + property.getKey() + '"');
            if (required || random.nextBoolean()) {
                object.set(property.getKey(), value(resolved(property.getValue()), property.getKey()));
            }
        }
        return object;
    }

    private JsonNode array(JsonNode schema) {
        ArrayNode array = NODES.arrayNode();
        int fewest = schema.path("minItems").asInt();
        int size = fewest + random.nextInt(Math.min(6, schema.path("maxItems").asInt() - fewest + 1));
        for (int i = 0; i < size; i++) {
            array.add(value(resolved(schema.path("items")), ""));
        }
        return array;
    }

    /** Often the very bounds, otherwise any size between them. */
    private double number(JsonNode schema) {
        double min = schema.path("minimum").asDouble();
        double max = schema.path("maximum").asDouble();
        return switch (random.nextInt(6)) {
            case 0 -> min;
            case 1 -> max;
            case 2 -> min + (max - min) * random.nextDouble();
            default -> Math.min(max, Math.max(min, Math.exp(random.nextDouble() * 7)));
        };
    }

    /** Damages one node: takes it away, puts something else in its place, or adds a field beside it. */
    void damage(JsonNode design) {
        JsonNode parent = design;
        while (random.nextInt(4) > 0) {
            JsonNode child = anyChild(parent);
            if (child == null || child.isEmpty()) {
                break;
            }
            parent = child;
        }
        JsonNode other = Contract.json(DAMAGE[random.nextInt(DAMAGE.length)]);
        if (parent instanceof ArrayNode array) {
            array.set(random.nextInt(array.size()), other);
        } else if (random.nextInt(5) == 0) {
            ((ObjectNode) parent).set("surplus", other);
        } else if (random.nextInt(4) == 0) {
            ((ObjectNode) parent).remove(anyName(parent));
        } else {
            ((ObjectNode) parent).set(anyName(parent), other);
        }
    }

    private JsonNode anyChild(JsonNode parent) {
        return parent.isArray() ? parent.get(random.nextInt(parent.size())) : parent.get(anyName(parent));
    }

    private String anyName(JsonNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names.get(random.nextInt(names.size()));
    }

    private JsonNode schema(String name) {
        return contract.at("/components/schemas/" + name);
    }

    private JsonNode resolved(JsonNode schema) {
        return schema.has("$ref") ? contract.at(schema.path("$ref").asText().substring(1)) : schema;
    }
}
