package org.orbwright.api.wire;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.lang.annotation.Annotation;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.orbwright.document.Document;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/**
 * What one field of a request or an answer may hold: read once from the record component's types and annotations, and
 * used alike by the contract, by the reader of requests and by the words of violations.
 *
 * @param name the field's name in JSON
 * @param type the component's type
 * @param element for a list the type of its elements, otherwise the type itself
 * @param describe the component's description, or null where its type says it all
 * @param required whether the field has to be there
 * @param min smallest number, or null
 * @param max largest number, or null
 * @param size bounds of a text's or a list's length, or null
 * @param notBlank whether a text has to hold more than blanks
 * @param items the rules of a list's items if they are numbers, texts or constants, otherwise null
 */
public record FieldRules(
        String name,
        Class<?> type,
        Class<?> element,
        Describe describe,
        boolean required,
        BigDecimal min,
        BigDecimal max,
        Size size,
        boolean notBlank,
        FieldRules items) {
    /** Quantities whose unit is said with their bounds. */
    private static final Set<Quantity> NAMED =
            EnumSet.of(Quantity.LENGTH, Quantity.PERCENT, Quantity.CELSIUS, Quantity.SPREAD, Quantity.MINUTES);

    /**
     * Whether a record is the document or part of it: the parts are named requests. They are in their author's units,
     * may hold null where a field is optional, and carry their bounds as Bean Validation.
     */
    public static boolean isRequest(Class<?> type) {
        return type == Document.class
                || (type.isRecord() && type.getSimpleName().endsWith("Request"));
    }

    /** The fields of a record, in their order. */
    public static List<FieldRules> of(Class<?> recordType) {
        return Arrays.stream(recordType.getRecordComponents())
                .map(FieldRules::of)
                .toList();
    }

    /** The rules of one field. */
    public static FieldRules of(RecordComponent component) {
        Describe describe = component.getAnnotation(Describe.class);
        AnnotatedElement rules = component.getAccessor();
        boolean described = describe != null && !hasBounds(rules) && isNumber(component.getType());
        return new FieldRules(
                component.getName(),
                component.getType(),
                elementOf(component),
                describe,
                describe == null || !describe.optional(),
                described ? lowest(describe) : lowest(rules),
                described ? highest(describe) : highest(rules),
                rules.getAnnotation(Size.class),
                rules.isAnnotationPresent(NotBlank.class),
                items(component));
    }

    private static FieldRules items(RecordComponent component) {
        Class<?> element = elementOf(component);
        boolean scalars = element == String.class || element.isEnum() || isNumber(element);
        if (!scalars || !(component.getAnnotatedType() instanceof AnnotatedParameterizedType list)) {
            return null;
        }
        AnnotatedElement rules = list.getAnnotatedActualTypeArguments()[0];
        return new FieldRules(
                component.getName(),
                element,
                element,
                component.getAnnotation(Describe.class),
                true,
                lowest(rules),
                highest(rules),
                rules.getAnnotation(Size.class),
                rules.isAnnotationPresent(NotBlank.class),
                null);
    }

    private static boolean hasBounds(AnnotatedElement rules) {
        return Arrays.stream(rules.getAnnotations())
                .map(Annotation::annotationType)
                .anyMatch(type -> type == DecimalMin.class || type == Min.class || type == NotNull.class);
    }

    private static BigDecimal lowest(AnnotatedElement rules) {
        return bound(rules, DecimalMin.class, DecimalMin::value)
                .or(() -> bound(rules, Min.class, min -> Long.toString(min.value())))
                .orElse(null);
    }

    private static BigDecimal highest(AnnotatedElement rules) {
        return bound(rules, DecimalMax.class, DecimalMax::value)
                .or(() -> bound(rules, Max.class, max -> Long.toString(max.value())))
                .orElse(null);
    }

    private static <A extends Annotation> Optional<BigDecimal> bound(
            AnnotatedElement rules, Class<A> annotation, Function<A, String> value) {
        return Optional.ofNullable(rules.getAnnotation(annotation)).map(value).map(BigDecimal::new);
    }

    /** The describing annotation's widest bounds stand for none. */
    private static BigDecimal lowest(Describe describe) {
        double least = describe.min() == 0 ? describe.quantity().first() : describe.min();
        return least <= -1e18 ? null : plain(least);
    }

    private static BigDecimal highest(Describe describe) {
        return describe.max() >= 1e18 ? null : plain(describe.max());
    }

    private static BigDecimal plain(double value) {
        return new BigDecimal(BigDecimal.valueOf(value).stripTrailingZeros().toPlainString());
    }

    private static Class<?> elementOf(RecordComponent component) {
        return component.getGenericType() instanceof ParameterizedType list
                ? (Class<?>) list.getActualTypeArguments()[0]
                : component.getType();
    }

    /** Whether it holds a list. */
    public boolean isList() {
        return type == List.class;
    }

    boolean isFlag() {
        return type == boolean.class || type == Boolean.class;
    }

    boolean isNumber() {
        return isNumber(type);
    }

    /** Whether it holds whole numbers. */
    public boolean isWhole() {
        return isWhole(type);
    }

    /** Whether a type is one of whole numbers. */
    public static boolean isWhole(Class<?> type) {
        return type == int.class || type == Integer.class || type == long.class || type == Long.class;
    }

    private static boolean isNumber(Class<?> type) {
        return (type.isPrimitive() && type != boolean.class) || Number.class.isAssignableFrom(type);
    }

    /** What is allowed, as a violation states it: {@code 2 to 91}, {@code one of mm, in}. */
    String allowed() {
        if (isList()) {
            return "a list of " + size.min() + " to " + size.max() + (items == null ? "" : ", each " + items.allowed());
        }
        if (type.isEnum()) {
            return "one of " + String.join(", ", WireNames.all(type));
        }
        if (isNumber()) {
            String range = min.toPlainString() + " to " + max.toPlainString();
            boolean named = describe != null && NAMED.contains(describe.quantity());
            return (isWhole() ? "a whole number, " : "")
                    + range
                    + (named ? " " + describe.quantity().unitPhrase() : "");
        }
        if (isFlag()) {
            return "true or false";
        }
        return type == String.class
                ? "a text of " + Math.max(size.min(), notBlank ? 1 : 0) + " to " + size.max() + " characters"
                : "an object";
    }
}
