package org.orbwright.api.cells;

import jakarta.validation.Validator;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.orbwright.api.query.Query;
import org.orbwright.api.query.SetQuery;
import org.orbwright.api.wire.BeanRules;
import org.orbwright.api.wire.RequestException;
import org.orbwright.api.wire.Sentences;
import org.orbwright.cell.CellDesign;
import org.orbwright.cell.Inputs;
import org.orbwright.cell.Parameter;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.document.Document;

/** The query of a cell or a table: a design, and what of it is asked for. A blank text counts as left out. */
public final class CellQuery {
    /** The parameter that says how errors are told. */
    public static final String ERRORS = "errors";
    /** What that parameter means. */
    public static final String ERRORS_DESCRIPTION =
            "text to be told in a cell what is wrong, with status 200 and a text that begins with"
                    + " ERROR:; status to be told by status, as is done if it is left out.";

    /** The parameter that chooses the form of a table. */
    public static final String FORMAT = "format";
    /** Errors as a text with status 200. */
    public static final String AS_TEXT = "text";

    static final String BY_STATUS = "status";
    /** What may be stated beside the design of a cell. */
    static final List<String> OF_A_CELL = List.of(ERRORS);
    /** The same of a table. */
    public static final List<String> OF_A_TABLE = List.of(ERRORS, FORMAT);

    private static final Pattern STRIP = Pattern.compile("laminations\\[\\d+]\\.bands\\[(\\d+)]\\.(width|species)");
    private static final Map<String, String> NAMES = Map.of(
            "panel.", "",
            "saw.", "",
            "sphere.", "",
            "blank.length", Parameter.BLANK_LENGTH.text(),
            "laminations[0].bandAngle", Parameter.BAND_ANGLE.text());

    /** Pasted cells have blanks that forbid a line break. */
    private static final Pattern BLANK = Pattern.compile("\\p{Zs}");

    private final List<String> known;
    private final Map<String, String> texts = new TreeMap<>();
    private final List<Violation> broken = new ArrayList<>();

    /**
     * Reads a query.
     *
     * @param others the names of what may be stated beside the design and what is chosen of it
     * @param query what stands behind the question mark, null if nothing does: a semicolon parts bands in it, which the
     *     framework would take for the end of a parameter
     */
    CellQuery(List<String> others, String query) {
        this.known = names(others);
        Set<String> seen = new HashSet<>();
        for (String part : query == null ? new String[0] : query.split("&", -1)) {
            int equals = part.indexOf('=');
            String name = decoded(equals < 0 ? part : part.substring(0, equals));
            String text = equals < 0
                    ? ""
                    : BLANK.matcher(decoded(part.substring(equals + 1)))
                            .replaceAll(" ")
                            .strip();
            if (!known.contains(name) && !part.isEmpty()) {
                broken.add(unknown(name));
            } else if (!seen.add(name) && !part.isEmpty()) {
                broken.add(Query.repeated(name, text));
            } else if (!text.isEmpty()) {
                texts.put(name, text);
            }
        }
    }

    /** The text; what is wrongly encoded never comes here, since it is no address to the HTTP server. */
    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }

    private static List<String> names(List<String> others) {
        return Stream.concat(Arrays.stream(Parameter.values()).map(Parameter::text), others.stream())
                .toList();
    }

    /** The text of a parameter, if there is one. */
    Optional<String> text(String name) {
        return Optional.ofNullable(texts.get(name));
    }

    /**
     * The parameters that choose what is asked for.
     *
     * @param choices those that may
     * @param of what is asked for
     */
    Map<String, String> choices(List<String> choices, String of) {
        SetQuery.asked(texts.get(Parameter.SET.text()));
        Map<String, String> given = new TreeMap<>();
        for (Parameter parameter : Parameter.values()) {
            if (parameter.selects() && texts.containsKey(parameter.text())) {
                if (choices.contains(parameter.text())) {
                    given.put(parameter.text(), texts.get(parameter.text()));
                } else {
                    broken.add(choosesNothing(parameter, texts.get(parameter.text()), choices, of));
                }
            }
        }
        return given;
    }

    /** The refusal of a parameter that chooses nothing of what is asked for. */
    static Violation choosesNothing(Parameter parameter, String text, List<String> choices, String of) {
        String chosen =
                choices.isEmpty() ? "of which there is only one" : "which is chosen by " + String.join(", ", choices);
        return new Violation(
                parameter.text(),
                "UNKNOWN_PARAMETER",
                parameter + " chooses nothing of " + of + ", " + chosen + ".",
                Sentences.cut(text),
                choices.isEmpty() ? "nothing" : "one of " + String.join(", ", choices));
    }

    /** A document with the design, which keeps every rule that it would have to keep as JSON. */
    Document document(Inputs needs, Validator validator) {
        if (texts.containsKey(ERRORS)) {
            Query.name(ERRORS, texts.get(ERRORS), List.of(BY_STATUS, AS_TEXT));
        }
        Map<Parameter, String> design = new EnumMap<>(Parameter.class);
        for (Parameter parameter : Parameter.values()) {
            if (!parameter.selects() && texts.containsKey(parameter.text())) {
                design.put(parameter, texts.get(parameter.text()));
            }
        }
        CellDesign.Reading reading = CellDesign.read(design, needs);
        Document document = Document.of(reading.design());
        broken.addAll(reading.broken());
        if (broken.isEmpty()) {
            BeanRules.addBroken(validator.validate(document), broken);
            broken.replaceAll(this::inWordsOfTheQuery);
        }
        if (!broken.isEmpty()) {
            throw RequestException.invalid(broken);
        }
        try {
            Design.of(reading.design());
            return document;
        } catch (ImpossibleDesignException e) {
            throw new ImpossibleDesignException(
                    e.violations().stream().map(this::inWordsOfTheQuery).toList());
        }
    }

    private Violation inWordsOfTheQuery(Violation violation) {
        String field = Sentences.field(violation.path());
        String name = field;
        if (field.equals("size.value")) {
            name = Stream.of(Parameter.ACROSS_FLATS, Parameter.EDGE, Parameter.SPHERE_DIAMETER)
                    .map(Parameter::text)
                    .filter(texts::containsKey)
                    .findFirst()
                    .orElse(field);
        } else if (STRIP.matcher(field).matches()) {
            int number = Integer.parseInt(STRIP.matcher(field).replaceFirst("$1")) + 1;
            name = "the " + STRIP.matcher(field).replaceFirst("$2") + " of strip " + number + " in bands";
        } else if (field.matches("laminations(\\[\\d+](?!\\.bandAngle).*)?")) {
            name = Parameter.BANDS.text();
        } else {
            for (Map.Entry<String, String> known : NAMES.entrySet()) {
                name = name.replace(known.getKey(), known.getValue());
            }
        }
        return new Violation(
                name,
                violation.code(),
                violation.message().replace(field, name),
                violation.rejected(),
                violation.allowed());
    }

    private Violation unknown(String name) {
        String shown = Sentences.cut(name);
        String allowed = "one of " + String.join(", ", known);
        return new Violation(
                shown,
                "UNKNOWN_PARAMETER",
                "There is no parameter " + shown + "; GET /v1/cell lists them.",
                shown,
                allowed);
    }
}
