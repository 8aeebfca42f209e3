package org.orbwright.api.query;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import org.orbwright.api.wire.RequestException;
import org.orbwright.api.wire.Sentences;
import org.orbwright.api.wire.WireNames;
import org.orbwright.design.Violation;

/** Reads query parameters; they are taken as text so that a wrong one can be named. */
public final class Query {
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,12}(\\.[0-9]{1,15})?([eE][+-]?[0-9]{1,2})?");
    private static final int NARROWEST = 100;
    private static final int WIDEST = 4000;

    private Query() {}

    /** A whole number between two bounds, or the default where there is none. */
    public static int whole(String name, String text, int least, int most, String otherwise) {
        String given = isEmpty(text) ? otherwise : text;
        if (given.matches("[0-9]{1,6}")) {
            int value = Integer.parseInt(given);
            if (value >= least && value <= most) {
                return value;
            }
        }
        throw refuse(name, "OUT_OF_RANGE", given, "a whole number, " + least + " to " + most);
    }

    /** Width of a picture in dots. */
    static int width(String text, String otherwise) {
        return whole("width", text, NARROWEST, WIDEST, otherwise);
    }

    /** A number between two bounds, or the default where there is none. */
    public static double number(String name, String text, double least, double most, String otherwise) {
        String given = isEmpty(text) ? otherwise : text;
        if (NUMBER.matcher(given).matches()) {
            double value = Double.parseDouble(given);
            if (value >= least && value <= most) {
                return value;
            }
        }
        throw refuse(name, "OUT_OF_RANGE", given, plain(least) + " to " + plain(most));
    }

    /** One of an enumeration's names as they are on the wire, or the default where there is none. */
    public static <E extends Enum<E>> E constant(String name, String text, Class<E> type, E otherwise) {
        if (isEmpty(text)) {
            return otherwise;
        }
        for (E constant : type.getEnumConstants()) {
            if (WireNames.of(constant).equals(text)) {
                return constant;
            }
        }
        throw refuse(name, "UNKNOWN_VALUE", text, "one of " + String.join(", ", WireNames.all(type)));
    }

    /** One of some names, or the first of them where there is none. */
    public static String name(String name, String text, List<String> names) {
        if (isEmpty(text)) {
            return names.get(0);
        }
        if (names.contains(text)) {
            return text;
        }
        throw refuse(name, "UNKNOWN_VALUE", text, "one of " + String.join(", ", names));
    }

    /** A parameter that is true or false; false where there is none. */
    public static boolean flag(String name, String text) {
        return Boolean.parseBoolean(name(name, text, List.of("false", "true")));
    }

    /** Whether a parameter says nothing. */
    public static boolean isEmpty(String text) {
        return text == null || text.isEmpty();
    }

    /**
     * Refuses a parameter that means nothing here.
     *
     * @param where where, and why not, to be read after "left out"
     */
    public static void leftOut(String name, String text, String where) {
        if (!isEmpty(text)) {
            throw refuse(name, "NOT_APPLICABLE", text, "left out " + where);
        }
    }

    private static String plain(double bound) {
        return BigDecimal.valueOf(bound).stripTrailingZeros().toPlainString();
    }

    /** Refuses a query parameter and says what is allowed. */
    static RequestException refuse(String name, String code, String given, String allowed) {
        String rejected = Sentences.cut(given);
        return RequestException.invalid(List.of(new Violation(
                name,
                code,
                "The query parameter " + name + " must be " + allowed + ", but is \"" + rejected + "\".",
                rejected,
                allowed)));
    }

    /** The refusal of a parameter that is stated twice. */
    public static Violation repeated(String name, String text) {
        String message = name + " is stated twice; once is enough.";
        return new Violation(name, "REPEATED", message, Sentences.cut(text), "one value");
    }
}
