package org.orbwright.api.contract;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.orbwright.api.wire.FieldRules;
import org.orbwright.api.wire.WireNames;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Rounding;

/**
 * The schemas of the contract, made from the same descriptions and bounds that the reader and the writer go by: one
 * named schema for each record and each enumeration, closed to further fields.
 */
final class ContractSchemas {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int USUAL_DECIMALS = 3;

    private final Map<String, Schema> schemas = new TreeMap<>();
    private final Map<String, Class<?>> types = new TreeMap<>();

    /** The schemas of these records and of everything in them, by name. */
    static Map<String, Schema> of(List<Class<?>> roots) {
        ContractSchemas contract = new ContractSchemas();
        roots.forEach(root -> contract.add(root, null));
        return contract.schemas;
    }

    private Schema reference(Class<?> type, Describe describe) {
        add(type, describe);
        return OASFactory.createSchema().ref("#/components/schemas/" + type.getSimpleName());
    }

    private void add(Class<?> type, Describe describe) {
        String name = type.getSimpleName();
        Class<?> known = types.putIfAbsent(name, type);
        if (known == null) {
            schemas.put(name, type.isEnum() ? constants(type, describe) : record(type));
        } else if (known != type) {
            throw new IllegalStateException("two schemas are named " + name + ": " + known + " and " + type);
        }
    }

    private Schema record(Class<?> type) {
        Schema schema = OASFactory.createSchema()
                .addType(SchemaType.OBJECT)
                .description(type.getAnnotation(Describe.class).value())
                .additionalPropertiesSchema(OASFactory.createSchema().booleanSchema(false));
        for (FieldRules field : FieldRules.of(type)) {
            schema.addProperty(field.name(), property(field, FieldRules.isRequest(type)));
            if (field.required()) {
                schema.addRequired(field.name());
            }
        }
        return schema;
    }

    /** The only field that holds an enumeration lends it its description; with several it has one of its own. */
    private static Schema constants(Class<?> type, Describe describe) {
        Describe own = type.getAnnotation(Describe.class);
        Schema schema = OASFactory.createSchema()
                .addType(SchemaType.STRING)
                .description(own == null ? describe.value() : own.value());
        WireNames.all(type).forEach(schema::addEnumeration);
        return schema;
    }

    private Schema property(FieldRules field, boolean request) {
        if (!field.isList() && (field.type().isRecord() || field.type().isEnum())) {
            return reference(field.type(), field.describe());
        }
        Schema schema = field.isList() ? list(field) : scalar(field);
        schema.setDescription(description(field.describe()));
        example(field, schema);
        if (request && !field.required()) {
            schema.addType(SchemaType.NULL);
        }
        return schema;
    }

    private Schema list(FieldRules field) {
        Schema schema = OASFactory.createSchema().addType(SchemaType.ARRAY);
        boolean named = field.element().isRecord() || field.element().isEnum();
        schema.setItems(named ? reference(field.element(), field.describe()) : scalar(field.items()));
        if (field.size() != null) {
            schema.setMinItems(field.size().min());
            schema.setMaxItems(field.size().max());
        }
        return schema;
    }

    private static Schema scalar(FieldRules field) {
        Schema schema = plain(field.type());
        schema.setMinimum(field.min());
        schema.setMaximum(field.max());
        if (field.size() != null) {
            schema.setMinLength(field.size().min() == 0 ? null : field.size().min());
            schema.setMaxLength(field.size().max());
        }
        if (field.notBlank()) {
            schema.minLength(1).pattern("\\S");
        }
        return schema;
    }

    private static Schema plain(Class<?> type) {
        Schema schema = OASFactory.createSchema();
        if (type == String.class) {
            return schema.addType(SchemaType.STRING);
        }
        if (type == boolean.class || type == Boolean.class) {
            return schema.addType(SchemaType.BOOLEAN);
        }
        boolean whole = FieldRules.isWhole(type);
        return whole
                ? schema.addType(SchemaType.INTEGER).format("int32")
                : schema.addType(SchemaType.NUMBER).format("double");
    }

    /** The unit follows the first sentence's end, so that no number stands without one. */
    private static String description(Describe describe) {
        String unit = describe.quantity().unitPhrase();
        return unit.isEmpty() ? describe.value() : describe.value() + " Stated " + unit + "." + usual(describe.usual());
    }

    private static String usual(double[] range) {
        return range.length == 0
                ? ""
                : " Usually " + Rounding.plain(range[0], USUAL_DECIMALS) + " to "
                        + Rounding.plain(range[1], USUAL_DECIMALS) + " mm.";
    }

    private static void example(FieldRules field, Schema schema) {
        if (!field.describe().example().isEmpty()) {
            try {
                schema.addExample(JSON.readValue(field.describe().example(), Object.class));
            } catch (JsonProcessingException e) {
                throw new IllegalStateException("the example of " + field.name() + " is not JSON", e);
            }
        }
    }
}
