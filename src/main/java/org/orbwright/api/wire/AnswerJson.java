package org.orbwright.api.wire;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.introspect.Annotated;
import com.fasterxml.jackson.databind.introspect.AnnotatedField;
import com.fasterxml.jackson.databind.introspect.NopAnnotationIntrospector;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdScalarSerializer;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;
import org.orbwright.sheet.Answer;

/**
 * Answers as JSON. Numbers are converted from millimetres and radians to the unit of the answer's document, and rounded
 * here, once. The document itself, which an answer repeats, is in its author's units already: it is only rounded.
 */
public final class AnswerJson {
    private static final Map<LengthUnit, ObjectWriter> WRITERS = new EnumMap<>(LengthUnit.class);

    static {
        for (LengthUnit unit : LengthUnit.values()) {
            WRITERS.put(unit, mapper(unit).writer());
        }
    }

    private AnswerJson() {}

    /** The JSON of an answer, in the unit of its document; in millimetres if it has none. */
    public static byte[] write(Record answer) {
        LengthUnit unit = answer instanceof Answer sheet ? sheet.document().unit() : LengthUnit.MM;
        try {
            return WRITERS.get(unit).writeValueAsBytes(answer);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an answer cannot be written", e);
        }
    }

    private static ObjectMapper mapper(LengthUnit unit) {
        ObjectMapper mapper = JsonMapper.builder()
                .annotationIntrospector(new Descriptions(unit))
                .visibility(PropertyAccessor.ALL, Visibility.NONE)
                .visibility(PropertyAccessor.FIELD, Visibility.ANY)
                .addModule(new SimpleModule().addSerializer(new Constant()))
                .build();
        mapper.getSerializerProvider().setNullValueSerializer(new Lacking());
        return mapper;
    }

    /** Tells Jackson what {@link Describe} says of a record's component. */
    private static final class Descriptions extends NopAnnotationIntrospector {
        private static final long serialVersionUID = 1L;
        private final LengthUnit unit;

        Descriptions(LengthUnit unit) {
            this.unit = unit;
        }

        @Override
        public Object findSerializer(Annotated member) {
            return member instanceof AnnotatedField field ? serializer(field, field.getRawType()) : null;
        }

        @Override
        public Object findContentSerializer(Annotated member) {
            boolean isList =
                    member instanceof AnnotatedField && member.getType().isCollectionLikeType();
            return isList
                    ? serializer(
                            (AnnotatedField) member,
                            member.getType().getContentType().getRawClass())
                    : null;
        }

        @Override
        public JsonInclude.Value findPropertyInclusion(Annotated member) {
            Describe describe =
                    member instanceof AnnotatedField field ? component(field).getAnnotation(Describe.class) : null;
            return describe != null && describe.optional()
                    ? JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, null)
                    : JsonInclude.Value.empty();
        }

        private JsonSerializer<?> serializer(AnnotatedField field, Class<?> type) {
            boolean asWritten = FieldRules.isRequest(field.getDeclaringClass());
            if (type == double.class || type == Double.class) {
                return new Decimal(Scale.of(component(field), asWritten).get(unit));
            }
            return FieldRules.isWhole(type) ? new Whole(Scale.first(component(field), asWritten)) : null;
        }

        private static RecordComponent component(AnnotatedField field) {
            return Arrays.stream(field.getDeclaringClass().getRecordComponents())
                    .filter(component -> component.getName().equals(field.getName()))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static final class Decimal extends StdScalarSerializer<Double> {
        private static final long serialVersionUID = 1L;
        private final transient Scale scale;

        Decimal(Scale scale) {
            super(Double.class);
            this.scale = scale;
        }

        @Override
        public void serialize(Double number, JsonGenerator json, SerializerProvider provider) throws IOException {
            json.writeNumber(Rounding.plain(number * scale.factor(), scale.decimals()));
        }
    }

    private static final class Whole extends StdScalarSerializer<Number> {
        private static final long serialVersionUID = 1L;
        private final int first;

        Whole(int first) {
            super(Number.class);
            this.first = first;
        }

        @Override
        public void serialize(Number number, JsonGenerator json, SerializerProvider provider) throws IOException {
            json.writeNumber(number.longValue() + first);
        }
    }

    private static final class Constant extends StdScalarSerializer<Enum<?>> {
        private static final long serialVersionUID = 1L;

        Constant() {
            super(Enum.class, false);
        }

        @Override
        public void serialize(Enum<?> constant, JsonGenerator json, SerializerProvider provider) throws IOException {
            json.writeString(WireNames.of(constant));
        }
    }

    /** An answer without what it must have is our fault. */
    private static final class Lacking extends StdScalarSerializer<Object> {
        private static final long serialVersionUID = 1L;

        Lacking() {
            super(Object.class);
        }

        @Override
        public void serialize(Object nothing, JsonGenerator json, SerializerProvider provider) {
            throw new IllegalStateException(
                    "an answer lacks its " + json.getOutputContext().getCurrentName());
        }
    }
}
