package org.orbwright.api;

import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import org.orbwright.document.Document;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;

/**
 * Writes the records of one type as JSON. What each component needs (its name in bytes, how it is read, its factor and
 * decimals in either unit) is worked out once per type from {@link Describe}; writing then only follows the list.
 *
 * <p>Numbers are converted from millimetres and radians to the unit of the answer's document and rounded here, once.
 * The document itself, which an answer repeats, is already in its author's units: it is only rounded.
 */
final class RecordWriter {
    private static final ClassValue<RecordWriter> WRITERS = new ClassValue<>() {
        @Override
        protected RecordWriter computeValue(Class<?> type) {
            return new RecordWriter(type);
        }
    };

    private final Part[] parts;
    private final Function<Object, Object> document;
    /** How long the longest answer of this type was so far: the next buffer starts with that. */
    private volatile int capacity = 512;

    private RecordWriter(Class<?> type) {
        boolean asWritten = FieldRules.isRequest(type);
        RecordComponent[] components = type.getRecordComponents();
        parts = Arrays.stream(components)
                .map(component -> part(component, asWritten))
                .toArray(Part[]::new);
        document = Arrays.stream(components)
                .filter(component -> component.getType() == Document.class)
                .findFirst()
                .map(Accessors::ofObject)
                .orElse(null);
    }

    /** The JSON of an answer, in the unit of its document; in millimetres if it has none. */
    static byte[] toJson(Object answer) {
        RecordWriter writer = WRITERS.get(answer.getClass());
        JsonBytes out = new JsonBytes(writer.capacity);
        writer.write(answer, out, writer.unitOf(answer));
        if (out.length() > writer.capacity) {
            writer.capacity = out.length() + out.length() / 8;
        }
        return out.toArray();
    }

    private LengthUnit unitOf(Object answer) {
        return document == null ? LengthUnit.MM : ((Document) document.apply(answer)).unit();
    }

    private void write(Object answer, JsonBytes out, LengthUnit unit) {
        out.raw('{');
        int start = out.length();
        for (Part part : parts) {
            part.write(answer, out, unit);
        }
        if (out.length() > start) {
            out.drop();
        }
        out.raw('}');
    }

    /** One component: its name, its value and a comma, or nothing if it is left out. */
    private interface Part {
        void write(Object answer, JsonBytes out, LengthUnit unit);
    }

    /** A value of a component or of a list. */
    private interface Value {
        void write(Object value, JsonBytes out, LengthUnit unit);
    }

    private static Part part(RecordComponent component, boolean asWritten) {
        byte[] name = ('"' + component.getName() + "\":").getBytes(StandardCharsets.UTF_8);
        Class<?> type = component.getType();
        if (type == double.class) {
            return numberPart(name, Accessors.ofDouble(component), Scale.of(component, asWritten));
        }
        if (type == int.class || type == long.class) {
            return wholePart(name, Accessors.ofWhole(component), Scale.first(component, asWritten));
        }
        return objectPart(name, component, value(component, asWritten));
    }

    private static Part numberPart(byte[] name, ToDoubleFunction<Object> read, Map<LengthUnit, Scale> scales) {
        Scale metric = scales.get(LengthUnit.MM);
        Scale inch = scales.get(LengthUnit.IN);
        return (answer, out, unit) -> {
            Scale scale = unit == LengthUnit.MM ? metric : inch;
            out.raw(name);
            out.number(read.applyAsDouble(answer) * scale.factor(), scale.decimals());
            out.raw(',');
        };
    }

    private static Part wholePart(byte[] name, ToLongFunction<Object> read, int first) {
        return (answer, out, unit) -> {
            out.raw(name);
            out.whole(read.applyAsLong(answer) + first);
            out.raw(',');
        };
    }

    private static Part objectPart(byte[] name, RecordComponent component, Value value) {
        Function<Object, Object> read = Accessors.ofObject(component);
        Describe describe = component.getAnnotation(Describe.class);
        boolean optional = describe != null && describe.optional();
        return (answer, out, unit) -> {
            Object object = read.apply(answer);
            if (object != null) {
                out.raw(name);
                value.write(object, out, unit);
                out.raw(',');
            } else if (!optional) {
                throw new IllegalStateException("an answer lacks its " + component);
            }
        };
    }

    private static Value value(RecordComponent component, boolean asWritten) {
        FieldRules rules = FieldRules.of(component);
        Value element = elementValue(component, rules.element(), asWritten);
        return rules.isList() ? (list, out, unit) -> writeList((List<?>) list, element, out, unit) : element;
    }

    private static Value elementValue(RecordComponent component, Class<?> type, boolean asWritten) {
        if (type.isRecord()) {
            RecordWriter writer = WRITERS.get(type);
            return writer::write;
        }
        if (type.isEnum()) {
            return constants(type);
        }
        if (type == String.class) {
            return (text, out, unit) -> out.text((String) text);
        }
        if (type == Double.class) {
            Map<LengthUnit, Scale> scales = Scale.of(component, asWritten);
            return (number, out, unit) -> out.number(
                    (Double) number * scales.get(unit).factor(),
                    scales.get(unit).decimals());
        }
        if (type == Integer.class || type == Long.class) {
            int first = Scale.first(component, asWritten);
            return (number, out, unit) -> out.whole(((Number) number).longValue() + first);
        }
        if (type == boolean.class || type == Boolean.class) {
            return (flag, out, unit) -> out.raw(flag.toString().getBytes(StandardCharsets.US_ASCII));
        }
        throw new IllegalStateException("no way to write " + component);
    }

    /** By position and not by a map: the positions are those of the same running program. */
    @SuppressWarnings("EnumOrdinal")
    private static Value constants(Class<?> type) {
        byte[][] names = WireNames.all(type).stream()
                .map(name -> ('"' + name + '"').getBytes(StandardCharsets.UTF_8))
                .toArray(byte[][]::new);
        return (constant, out, unit) -> out.raw(names[((Enum<?>) constant).ordinal()]);
    }

    private static void writeList(List<?> list, Value element, JsonBytes out, LengthUnit unit) {
        out.raw('[');
        for (int i = 0; i < list.size(); i++) {
            if (i > 0) {
                out.raw(',');
            }
            element.write(list.get(i), out, unit);
        }
        out.raw(']');
    }
}
