package org.orbwright.api.wire;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.ElementKind;
import jakarta.validation.Path;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.lang.annotation.Annotation;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.orbwright.design.Violation;

/** Words the rules of Bean Validation that a request breaks. */
public final class BeanRules {
    /** More digits than the number of an item in any list can have. */
    private static final int DIGITS = 9;

    private static final Pattern ITEM = Pattern.compile("\\d{1," + DIGITS + "}");

    private BeanRules() {}

    /** Adds the broken rules of all fields that are not known to break one already. */
    public static <T> void addBroken(Set<ConstraintViolation<T>> found, List<Violation> broken) {
        if (found.isEmpty()) {
            return;
        }
        Set<String> known = new HashSet<>();
        broken.forEach(violation -> known.add(violation.path()));
        for (ConstraintViolation<?> violation : found) {
            Violation worded = worded(violation);
            if (!keepsLengthInCharacters(violation) && !known.contains(worded.path())) {
                broken.add(worded);
            }
        }
    }

    /** Sorts by path, so that the order does not change from run to run; list items by their number. */
    static List<Violation> inOrder(List<Violation> broken) {
        // Each key is made once: a body may break tens of thousands of rules.
        record Keyed(String key, Violation violation) {}
        return broken.stream()
                .map(violation -> new Keyed(sortable(violation.path()), violation))
                .sorted(Comparator.comparing(Keyed::key)
                        .thenComparing(keyed -> keyed.violation().code()))
                .map(Keyed::violation)
                .toList();
    }

    private static String sortable(String path) {
        StringBuilder key = new StringBuilder();
        for (String step : path.split("/", -1)) {
            boolean number = ITEM.matcher(step).matches();
            key.append('/')
                    .append(number ? "0".repeat(DIGITS - step.length()) : "")
                    .append(step);
        }
        return key.toString();
    }

    private static Violation worded(ConstraintViolation<?> violation) {
        String pointer = pointer(violation.getPropertyPath());
        String field = Sentences.field(pointer);
        Object value = violation.getInvalidValue();
        Class<? extends Annotation> rule =
                violation.getConstraintDescriptor().getAnnotation().annotationType();
        String allowed = allowed(violation);
        if (rule == NotNull.class || (rule == NotBlank.class && value == null)) {
            return new Violation(pointer, "MISSING", field + " is missing.", null, allowed);
        }
        if (rule == NotBlank.class) {
            return new Violation(
                    pointer, "BLANK", field + " must not be blank.", Sentences.cut((String) value), allowed);
        }
        if (rule == Size.class) {
            return new Violation(
                    pointer,
                    "WRONG_LENGTH",
                    field + " must be " + allowed + ", but has " + length(value) + ".",
                    quote(value),
                    allowed);
        }
        String number = plain((Number) value);
        return new Violation(
                pointer, "OUT_OF_RANGE", field + " must be " + allowed + ", but is " + number + ".", number, allowed);
    }

    /** The allowed values of the field; of a list's item, which can only be missing, just its type. */
    private static String allowed(ConstraintViolation<?> violation) {
        String name = null;
        boolean item = false;
        for (Path.Node node : violation.getPropertyPath()) {
            item = node.getKind() == ElementKind.CONTAINER_ELEMENT;
            name = item ? name : node.getName();
        }
        String leaf = name;
        boolean ofItem = item;
        return FieldRules.of(violation.getLeafBean().getClass()).stream()
                .filter(rules -> rules.name().equals(leaf))
                .findFirst()
                .map(rules -> ofItem && rules.items() != null ? rules.items() : rules)
                .map(rules -> ofItem && rules.isList() ? "an object" : rules.allowed())
                .orElse("an object");
    }

    private static String pointer(Path path) {
        StringBuilder pointer = new StringBuilder();
        for (Path.Node node : path) {
            if (node.getIndex() != null) {
                pointer.append('/').append(node.getIndex());
            }
            if (node.getKind() == ElementKind.PROPERTY) {
                pointer.append('/').append(node.getName());
            }
        }
        return pointer.toString();
    }

    /** Bean Validation counts a character outside the basic plane as two, the contract as one. */
    private static boolean keepsLengthInCharacters(ConstraintViolation<?> violation) {
        return violation.getConstraintDescriptor().getAnnotation() instanceof Size size
                && violation.getInvalidValue() instanceof String text
                && characters(text) >= size.min()
                && characters(text) <= size.max();
    }

    private static String length(Object value) {
        return Integer.toString(value instanceof List<?> list ? list.size() : characters((String) value));
    }

    private static int characters(String text) {
        return text.codePointCount(0, text.length());
    }

    private static String quote(Object value) {
        return value instanceof String text ? Sentences.cut(text) : null;
    }

    private static String plain(Number number) {
        double size = Math.abs(number.doubleValue());
        boolean readable = size == 0 || (size >= 1e-9 && size < 1e15);
        return readable ? new BigDecimal(number.toString()).stripTrailingZeros().toPlainString() : number.toString();
    }
}
