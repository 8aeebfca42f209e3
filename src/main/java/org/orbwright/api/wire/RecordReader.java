package org.orbwright.api.wire;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.design.Violation;

/**
 * Reads a record of a request from JSON as strictly as the contract states it: no unknown and no repeated fields, no
 * text for a number or number for a text, no fraction for a whole number, nothing that is not finite. It goes on after
 * a broken rule, so that a caller learns of all of them at once; a field that broke one is left null.
 *
 * <p>A general binder would do most of this by configuration, but it stops at the first fault and words it for a
 * programmer.
 */
final class RecordReader {
    private static final ClassValue<RecordReader> READERS = new ClassValue<>() {
        @Override
        protected RecordReader computeValue(Class<?> type) {
            return new RecordReader(type);
        }
    };

    private final Constructor<?> constructor;
    private final FieldRules[] fields;
    private final Map<String, Integer> positions = new HashMap<>();

    private RecordReader(Class<?> type) {
        fields = FieldRules.of(type).toArray(FieldRules[]::new);
        for (int i = 0; i < fields.length; i++) {
            positions.put(fields[i].name(), i);
        }
        try {
            constructor = type.getDeclaredConstructor(Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * Reads a record whose opening brace is the parser's token.
     *
     * @param broken where broken rules are added
     */
    static <T> T read(Class<T> type, JsonParser json, List<Violation> broken) throws IOException {
        return type.cast(READERS.get(type).read(json, broken));
    }

    private Object read(JsonParser json, List<Violation> broken) throws IOException {
        Object[] values = new Object[fields.length];
        boolean[] seen = new boolean[fields.length];
        while (json.nextToken() != JsonToken.END_OBJECT) {
            Integer position = positions.get(json.currentName());
            if (position == null || seen[position]) {
                broken.add(position == null ? unknown(json) : repeated(json));
                json.nextToken();
                json.skipChildren();
            } else {
                seen[position] = true;
                json.nextToken();
                values[position] = value(fields[position], json, broken);
            }
        }
        try {
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private Violation unknown(JsonParser json) throws IOException {
        String owner = json.getParsingContext().getParent().pathAsPointer().toString();
        String name = Sentences.cut(json.currentName());
        return new Violation(
                owner + Sentences.step(name),
                "UNKNOWN_FIELD",
                Sentences.field(owner) + " has no field named " + name + ".",
                name,
                "one of "
                        + String.join(
                                ", ",
                                Arrays.stream(fields).map(FieldRules::name).toList()));
    }

    private static Violation repeated(JsonParser json) throws IOException {
        String pointer = pointer(json);
        return new Violation(
                pointer,
                "REPEATED_FIELD",
                Sentences.field(pointer) + " is written more than once.",
                json.currentName(),
                "each field once");
    }

    private static Object value(FieldRules field, JsonParser json, List<Violation> broken) throws IOException {
        JsonToken token = json.currentToken();
        if (token == JsonToken.VALUE_NULL) {
            // The contract cannot say of a named enumeration or record that it may be null: it may only be left out.
            boolean named = field.type().isEnum() || field.type().isRecord();
            return named && !field.required() ? refuse(field, json, broken) : null;
        }
        if (field.isList()) {
            return token == JsonToken.START_ARRAY ? list(field, json, broken) : refuse(field, json, broken);
        }
        if (field.type().isRecord()) {
            return token == JsonToken.START_OBJECT
                    ? READERS.get(field.type()).read(json, broken)
                    : refuse(field, json, broken);
        }
        if (field.isFlag()) {
            return token.isBoolean() ? (Object) json.getBooleanValue() : refuse(field, json, broken);
        }
        if (field.isNumber()) {
            return token.isNumeric() ? number(field, json, broken) : refuse(field, json, broken);
        }
        if (token != JsonToken.VALUE_STRING) {
            return refuse(field, json, broken);
        }
        return field.type() == String.class ? json.getText() : constant(field, json, broken);
    }

    private static List<Object> list(FieldRules field, JsonParser json, List<Violation> broken) throws IOException {
        List<Object> list = new ArrayList<>();
        while (json.nextToken() != JsonToken.END_ARRAY) {
            if (field.items() != null) {
                list.add(scalar(field.items(), json, broken));
            } else if (json.currentToken() == JsonToken.START_OBJECT) {
                list.add(READERS.get(field.element()).read(json, broken));
            } else {
                list.add(null);
                if (json.currentToken() != JsonToken.VALUE_NULL) {
                    broken.add(wrongType("an object", json, "an object"));
                    json.skipChildren();
                }
            }
        }
        return list;
    }

    /** A number, a text or a constant in a list. */
    private static Object scalar(FieldRules item, JsonParser json, List<Violation> broken) throws IOException {
        if (json.currentToken() == JsonToken.VALUE_NULL) {
            return null;
        }
        if (item.isNumber()) {
            return json.currentToken().isNumeric() ? number(item, json, broken) : refuse(item, json, broken);
        }
        if (json.currentToken() != JsonToken.VALUE_STRING) {
            return refuse(item, json, broken);
        }
        return item.type().isEnum() ? constant(item, json, broken) : json.getText();
    }

    private static Object number(FieldRules field, JsonParser json, List<Violation> broken) throws IOException {
        if (!field.isWhole()) {
            double value = json.getDoubleValue();
            return Double.isFinite(value) ? (Object) value : outOfRange(field, json, broken);
        }
        if (json.currentToken() != JsonToken.VALUE_NUMBER_INT) {
            return refuse(field, json, broken);
        }
        return json.getNumberType() == JsonParser.NumberType.INT
                ? (Object) json.getIntValue()
                : outOfRange(field, json, broken);
    }

    private static Object outOfRange(FieldRules field, JsonParser json, List<Violation> broken) throws IOException {
        String pointer = pointer(json);
        String number = Sentences.cut(json.getText());
        broken.add(new Violation(
                pointer,
                "OUT_OF_RANGE",
                Sentences.field(pointer) + " must be " + field.allowed() + ", but is " + number + ".",
                number,
                field.allowed()));
        return null;
    }

    private static Object constant(FieldRules field, JsonParser json, List<Violation> broken) throws IOException {
        String text = json.getText();
        for (Object constant : field.element().getEnumConstants()) {
            if (WireNames.of(constant).equals(text)) {
                return constant;
            }
        }
        String pointer = pointer(json);
        String allowed = field.allowed();
        String shown = Sentences.cut(text);
        broken.add(new Violation(
                pointer,
                "UNKNOWN_VALUE",
                Sentences.field(pointer) + " must be " + allowed + ", but is \"" + shown + "\".",
                shown,
                allowed));
        return null;
    }

    /** Notes a value of the wrong type and passes over it. */
    private static Object refuse(FieldRules field, JsonParser json, List<Violation> broken) throws IOException {
        broken.add(wrongType(wanted(field), json, field.allowed()));
        json.skipChildren();
        return null;
    }

    /** What is said of a value of the wrong type; the parser stands on the value. */
    static Violation wrongType(String wanted, JsonParser json, String allowed) throws IOException {
        String pointer = pointer(json);
        return new Violation(
                pointer,
                "WRONG_TYPE",
                Sentences.field(pointer) + " must be " + wanted + ", but is " + found(json) + ".",
                json.currentToken().isScalarValue() ? Sentences.cut(json.getText()) : null,
                allowed);
    }

    private static String pointer(JsonParser json) {
        return json.getParsingContext().pathAsPointer().toString();
    }

    private static String wanted(FieldRules field) {
        if (field.isList()) {
            return "a list";
        }
        if (field.isNumber()) {
            return field.isWhole() ? "a whole number" : "a number";
        }
        if (field.isFlag()) {
            return "true or false";
        }
        return field.type().isRecord() ? "an object" : "a text";
    }

    private static String found(JsonParser json) {
        return switch (json.currentToken()) {
            case START_ARRAY -> "a list";
            case START_OBJECT -> "an object";
            case VALUE_STRING -> "a text";
            case VALUE_NUMBER_INT -> "a number";
            case VALUE_NUMBER_FLOAT -> "a number with a fraction";
            case VALUE_NULL -> "null";
            default -> "true or false";
        };
    }
}
