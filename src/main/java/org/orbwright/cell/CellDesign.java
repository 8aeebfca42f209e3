package org.orbwright.cell;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BlankRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.DesignRequest.PanelRequest;
import org.orbwright.design.DesignRequest.SawRequest;
import org.orbwright.design.DesignRequest.SizeRequest;
import org.orbwright.design.DesignRequest.SphereRequest;
import org.orbwright.design.Sets;
import org.orbwright.design.SizeBy;
import org.orbwright.design.Violation;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;

/**
 * Makes a design of the texts of a spreadsheet. What the wanted number does not depend on may be left out. Angles need
 * no size; any edge then stands for it, and no part of an answer shows it.
 */
public final class CellDesign {
    private static final int LONGEST_SHOWN = 40;
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s_-]+");
    private static final String SIZES = "one of acrossFlats, edge and sphereDiameter";
    private static final String NUMBER = "a number such as 12.5";
    /** The sets that a text can name: it has no room for a list of panels. */
    public static final List<Sets> SETS = List.of(Sets.TWINS, Sets.UPRIGHT, Sets.INVERTED, Sets.MIXED);

    /** An edge in millimetres, for angles. */
    private static final double ANY_EDGE = 100;

    private final Map<Parameter, String> texts;
    private final Inputs needs;
    private final List<Violation> broken = new ArrayList<>();
    private final LengthUnit unit;

    private CellDesign(Map<Parameter, String> texts, Inputs needs) {
        this.texts = texts;
        this.needs = needs;
        this.unit = unit();
    }

    /** A design as far as it could be read, and every rule that its texts break. */
    public record Reading(DesignRequest design, List<Violation> broken) {}

    /**
     * Reads a design.
     *
     * @param texts the texts that are not blank
     * @param needs what the wanted number depends on
     */
    public static Reading read(Map<Parameter, String> texts, Inputs needs) {
        CellDesign reader = new CellDesign(new EnumMap<>(texts), needs);
        return new Reading(reader.design(), List.copyOf(reader.broken));
    }

    private DesignRequest design() {
        require(Parameter.SOLID);
        return new DesignRequest(
                null,
                unit,
                solid(),
                copies(),
                sets(),
                null,
                null,
                size(),
                new PanelRequest(length(Parameter.THICKNESS), length(Parameter.LAND)),
                laminations(),
                null,
                saw(),
                blank(),
                new SphereRequest(
                        length(Parameter.DIAMETER),
                        length(Parameter.TURNING_ALLOWANCE),
                        length(Parameter.MINIMUM_WALL)));
    }

    private String solid() {
        return name(texts.getOrDefault(Parameter.SOLID, ""));
    }

    /** A name as the catalogue has it: capitals do not matter, nor do blanks in place of hyphens. */
    public static String name(String text) {
        return BETWEEN_WORDS.matcher(text.strip()).replaceAll("-").toLowerCase(Locale.ROOT);
    }

    private LengthUnit unit() {
        require(Parameter.UNIT);
        String text = texts.getOrDefault(Parameter.UNIT, LengthUnit.MM.symbol()).strip();
        for (LengthUnit known : LengthUnit.values()) {
            if (known.symbol().equals(name(text))) {
                return known;
            }
        }
        refuse(Parameter.UNIT, "UNKNOWN_VALUE", "mm or in");
        return LengthUnit.MM;
    }

    private SizeRequest size() {
        Map<Parameter, SizeBy> sizes = Map.of(
                Parameter.ACROSS_FLATS, SizeBy.ACROSS_FLATS,
                Parameter.EDGE, SizeBy.EDGE,
                Parameter.SPHERE_DIAMETER, SizeBy.SPHERE_DIAMETER);
        List<Parameter> given = Stream.of(Parameter.ACROSS_FLATS, Parameter.EDGE, Parameter.SPHERE_DIAMETER)
                .filter(texts::containsKey)
                .toList();
        if (given.size() == 1) {
            return new SizeRequest(sizes.get(given.get(0)), length(given.get(0)));
        }
        if (given.isEmpty() && !needs.includes(Parameter.ACROSS_FLATS)) {
            return new SizeRequest(SizeBy.EDGE, unit.fromMillimetres(ANY_EDGE));
        }
        String names = given.stream().map(Parameter::text).collect(Collectors.joining(" and "));
        String message = given.isEmpty()
                ? "The size is missing: " + SIZES + " is needed."
                : "The size is stated by " + names + "; only one of them can hold.";
        broken.add(new Violation(
                given.isEmpty() ? Parameter.ACROSS_FLATS.text() : given.get(1).text(),
                given.isEmpty() ? "MISSING" : "CONTRADICTION",
                message,
                given.isEmpty() ? null : texts.get(given.get(1)),
                SIZES));
        return new SizeRequest(SizeBy.EDGE, unit.fromMillimetres(ANY_EDGE));
    }

    private List<LaminationRequest> laminations() {
        require(Parameter.BANDS);
        Double angle = number(Parameter.BAND_ANGLE);
        return texts.containsKey(Parameter.BANDS)
                ? onEveryFace(WrittenBands.read(texts.get(Parameter.BANDS), unit, angle, broken))
                : null;
    }

    /** Bands that name no face kind are those of every one. */
    private List<LaminationRequest> onEveryFace(List<LaminationRequest> laminations) {
        List<FaceKind> kinds =
                SolidCatalogue.find(solid()).map(Solid::faceKinds).orElse(List.of());
        if (kinds.size() < 2 || laminations.stream().anyMatch(lamination -> lamination.face() != null)) {
            return laminations;
        }
        return kinds.stream()
                .flatMap(kind -> laminations.stream()
                        .map(lamination -> new LaminationRequest(
                                kind.face(),
                                lamination.places(),
                                lamination.bandAngle(),
                                lamination.chevron(),
                                lamination.bands())))
                .toList();
    }

    private SawRequest saw() {
        Double kerf = length(Parameter.KERF);
        Double endTrim = length(Parameter.END_TRIM);
        if (endTrim != null && !texts.containsKey(Parameter.KERF)) {
            missing(Parameter.KERF);
        }
        return kerf == null ? null : new SawRequest(kerf, endTrim);
    }

    private BlankRequest blank() {
        Double length = length(Parameter.BLANK_LENGTH);
        return length == null ? null : new BlankRequest(length);
    }

    private Integer copies() {
        String text = texts.get(Parameter.COPIES);
        if (text == null) {
            return null;
        }
        if (!text.strip().matches("[0-9]{1,6}")) {
            refuse(Parameter.COPIES, "NOT_A_WHOLE_NUMBER", "a whole number, 1 to 1000");
            return null;
        }
        return Integer.valueOf(text.strip());
    }

    /** The sets, or null where they are left out. */
    private Sets sets() {
        String text = texts.get(Parameter.SETS);
        if (text == null) {
            return null;
        }
        String wanted = text.strip().toUpperCase(Locale.ROOT);
        Optional<Sets> sets =
                SETS.stream().filter(known -> known.name().equals(wanted)).findFirst();
        if (sets.isEmpty()) {
            refuse(
                    Parameter.SETS,
                    "UNKNOWN_VALUE",
                    SETS.stream().map(Sets::name).collect(Collectors.joining(" or ")));
        }
        return sets.orElse(null);
    }

    /** The parameter's length, or null where it is left out: with a broken rule if it is needed. */
    private Double length(Parameter parameter) {
        require(parameter);
        if (!texts.containsKey(parameter)) {
            return null;
        }
        String text = texts.get(parameter);
        if (!needs.includes(Parameter.UNIT) && !texts.containsKey(Parameter.UNIT) && !WrittenLength.namesUnit(text)) {
            missing(Parameter.UNIT);
        }
        OptionalDouble length = WrittenLength.read(text, unit);
        if (length.isEmpty()) {
            refuse(parameter, "NOT_A_LENGTH", WrittenLength.ALLOWED);
            return null;
        }
        return length.getAsDouble();
    }

    private Double number(Parameter parameter) {
        String text = texts.getOrDefault(parameter, "0").strip();
        String digits = text.startsWith("-") ? text.substring(1) : text;
        if (!digits.matches(WrittenLength.NUMBER)) {
            refuse(parameter, "NOT_A_NUMBER", NUMBER);
            return 0.0;
        }
        return (text.startsWith("-") ? -1 : 1) * WrittenLength.number(digits);
    }

    private void require(Parameter parameter) {
        if (needs.includes(parameter) && !texts.containsKey(parameter) && parameter != Parameter.ACROSS_FLATS) {
            missing(parameter);
        }
    }

    private void missing(Parameter parameter) {
        Violation missing = new Violation(
                parameter.text(),
                "MISSING",
                parameter + " is missing, for example " + parameter + "=" + parameter.example() + ".",
                null,
                parameter.words());
        if (!broken.contains(missing)) {
            broken.add(missing);
        }
    }

    /** A text as a refusal repeats it: a cell has little room. */
    static String shown(String text) {
        String whole = text.strip();
        return whole.length() > LONGEST_SHOWN ? whole.substring(0, LONGEST_SHOWN) : whole;
    }

    private void refuse(Parameter parameter, String code, String allowed) {
        String shown = shown(texts.get(parameter));
        broken.add(new Violation(
                parameter.text(),
                code,
                parameter + " must be " + allowed + ", but is \"" + shown + "\".",
                shown,
                allowed));
    }
}
