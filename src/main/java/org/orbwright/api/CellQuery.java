package org.orbwright.api;

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
import org.orbwright.cell.CellDesign;
import org.orbwright.cell.Needs;
import org.orbwright.cell.Parameter;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.Violation;

/** The query of a cell or a table: a design, and what of it is asked for. A blank text counts as left out. */
final class CellQuery {
    static final String ERRORS = "errors";
    static final String FORMAT = "format";
    static final String AS_TEXT = "text";
    static final String BY_STATUS = "status";

    private static final Pattern STRIP = Pattern.compile("laminations\\[\\d+]\\.bands\\[(\\d+)]\\.(width|species)");
    private static final Map<String, String> NAMES = Map.of(
            "panel.", "",
            "saw.", "",
            "sphere.", "",
            "blank.length", Parameter.BLANK_LENGTH.text(),
            "laminations[0].bandAngle", Parameter.BAND_ANGLE.text());

    private final Map<String, String> texts = new TreeMap<>();
    private final List<Violation> broken = new ArrayList<>();

    /**
     * Reads a query.
     *
     * @param query what stands behind the question mark, null if nothing does: a semicolon parts bands in it, which the
     *     framework would take for the end of a parameter
     */
    CellQuery(String query) {
        Set<String> known = Set.copyOf(names());
        Set<String> seen = new HashSet<>();
        for (String part : query == null ? new String[0] : query.split("&", -1)) {
            int equals = part.indexOf('=');
            String name = decoded(equals < 0 ? part : part.substring(0, equals));
            String text = equals < 0 ? "" : decoded(part.substring(equals + 1)).strip();
            if (!known.contains(name) && !part.isEmpty()) {
                broken.add(unknown(name));
            } else if (!seen.add(name) && !part.isEmpty()) {
                String message = name + " is stated twice; once is enough.";
                broken.add(new Violation(name, "REPEATED", message, Sentences.cut(text), "one value"));
            } else if (!text.isEmpty()) {
                texts.put(name, text);
            }
        }
    }

    /** The text; where it is wrongly encoded, as it stands. */
    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            return text;
        }
    }

    /** The names of all parameters. */
    static List<String> names() {
        return Stream.concat(Arrays.stream(Parameter.values()).map(Parameter::text), Stream.of(ERRORS, FORMAT))
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
        Query.constant(Parameter.SET.text(), texts.get(Parameter.SET.text()), BandSet.class, BandSet.UPRIGHT);
        Map<String, String> given = new TreeMap<>();
        for (Parameter parameter : Parameter.values()) {
            if (parameter.selects() && texts.containsKey(parameter.text())) {
                if (choices.contains(parameter.text())) {
                    given.put(parameter.text(), texts.get(parameter.text()));
                } else {
                    String allowed = choices.isEmpty() ? "nothing" : "by " + String.join(", ", choices);
                    broken.add(new Violation(
                            parameter.text(),
                            "UNKNOWN_PARAMETER",
                            parameter + " chooses nothing of " + of + ", which is chosen " + allowed + ".",
                            Sentences.cut(texts.get(parameter.text())),
                            allowed));
                }
            }
        }
        return given;
    }

    /** The design, which keeps every rule that it would have to keep as JSON. */
    Design design(Needs needs, Validator validator) {
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
        broken.addAll(reading.broken());
        if (broken.isEmpty()) {
            BeanRules.addBroken(validator.validate(reading.design()), broken);
            broken.replaceAll(this::inWordsOfTheQuery);
        }
        if (!broken.isEmpty()) {
            throw RequestException.invalid(broken);
        }
        DesignRequest read = reading.design();
        return Design.of(read);
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

    private static Violation unknown(String name) {
        String shown = Sentences.cut(name);
        String allowed = "one of " + String.join(", ", names());
        return new Violation(
                shown,
                "UNKNOWN_PARAMETER",
                "There is no parameter " + shown + "; GET /v1/cell lists them.",
                shown,
                allowed);
    }
}
