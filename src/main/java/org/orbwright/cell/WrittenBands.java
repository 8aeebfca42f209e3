package org.orbwright.cell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.Places;
import org.orbwright.design.Violation;
import org.orbwright.quantity.LengthUnit;

/**
 * Laminations written in one text: {@code white ash 17; red alder rest}, with several face kinds {@code pentagon: white
 * ash 20; red alder rest | hexagon: white ash rest}, and for every other segment {@code hexagon ODD: sugar maple rest |
 * hexagon EVEN: red alder rest}.
 */
final class WrittenBands {
    private static final String ALLOWED = "woods with widths, separated by ;, such as white ash 17; red alder rest";

    /** Names have neither, so that a band that is not parted from the next by ; cannot hide in the name of a wood. */
    private static final Pattern NO_NAME = Pattern.compile("[,\\p{N}]");

    private WrittenBands() {}

    /** The laminations; what cannot be read is added to the broken rules. */
    static List<LaminationRequest> read(String text, LengthUnit unit, Double bandAngle, List<Violation> broken) {
        List<LaminationRequest> laminations = new ArrayList<>();
        for (String lamination : text.split("\\|", -1)) {
            String[] parts = lamination.split(":", -1);
            if (parts.length > 2) {
                broken.add(refusal("has two colons in", lamination));
            } else if (parts.length == 2 && parts[0].isBlank()) {
                broken.add(refusal("has nothing before the colon in", lamination));
            } else {
                laminations.add(lamination(
                        parts.length == 2 ? parts[0].strip() : "",
                        bandAngle,
                        bands(parts[parts.length - 1], unit, broken)));
            }
        }
        return laminations;
    }

    /** Spreadsheets make the first letter of a cell a capital, so that it does not matter here. */
    private static LaminationRequest lamination(String heading, Double bandAngle, List<BandRequest> bands) {
        String last = heading.substring(heading.lastIndexOf(' ') + 1).toUpperCase(Locale.ROOT);
        Optional<Places> places = Arrays.stream(Places.values())
                .filter(known -> known.name().equals(last))
                .findFirst();
        String face = places.isPresent()
                ? heading.substring(0, heading.length() - last.length()).strip()
                : heading;
        return new LaminationRequest(
                face.isEmpty() ? null : CellDesign.name(face), places.orElse(null), bandAngle, null, bands);
    }

    private static List<BandRequest> bands(String text, LengthUnit unit, List<Violation> broken) {
        List<BandRequest> bands = new ArrayList<>();
        for (String written : text.split(";", -1)) {
            Optional<BandRequest> band = written.isBlank() ? Optional.empty() : band(written.strip(), unit);
            if (band.isEmpty() && !written.isBlank()) {
                broken.add(refusal("has no wood and width in", written));
            } else if (band.isPresent() && NO_NAME.matcher(band.get().species()).find()) {
                broken.add(refusal("has a comma or a number within a wood's name in", written));
            }
            band.ifPresent(bands::add);
        }
        if (bands.isEmpty() && broken.isEmpty()) {
            broken.add(refusal("names no wood in", text));
        }
        return bands;
    }

    /** The fewest words that leave a width behind them are the wood. */
    private static Optional<BandRequest> band(String text, LengthUnit unit) {
        for (int blank = text.indexOf(' '); blank > 0; blank = text.indexOf(' ', blank + 1)) {
            String width = text.substring(blank).strip();
            String species = text.substring(0, blank).strip();
            if (width.equalsIgnoreCase("rest")) {
                return Optional.of(new BandRequest(species, null));
            }
            OptionalDouble length = WrittenLength.read(width, unit);
            if (length.isPresent()) {
                return Optional.of(new BandRequest(species, length.getAsDouble()));
            }
        }
        return Optional.empty();
    }

    private static Violation refusal(String fault, String text) {
        String shown = CellDesign.shown(text);
        return new Violation(
                Parameter.BANDS.text(),
                "UNREADABLE_BANDS",
                "bands " + fault + " \"" + shown + "\"; it takes " + ALLOWED + ".",
                shown,
                ALLOWED);
    }
}
