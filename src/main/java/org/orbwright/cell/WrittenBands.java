package org.orbwright.cell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.Violation;
import org.orbwright.quantity.LengthUnit;

/**
 * Laminations written in one text: {@code sugar maple 3/4; black walnut rest}, with several face kinds {@code pentagon:
 * sugar maple 20; black walnut rest | hexagon: sugar maple rest}.
 */
final class WrittenBands {
    private static final String ALLOWED = "woods with widths, parted by ;, such as sugar maple 3/4; black walnut rest";

    private static final Pattern FACE = Pattern.compile("\\s*(?:(?<face>[a-z][a-z -]*?)\\s*:)?(?<bands>[^:]*)");

    private WrittenBands() {}

    /** The laminations; what cannot be read is added to the broken rules. */
    static List<LaminationRequest> read(String text, LengthUnit unit, Double bandAngle, List<Violation> broken) {
        List<LaminationRequest> laminations = new ArrayList<>();
        for (String lamination : text.split("\\|", -1)) {
            Matcher parts = FACE.matcher(lamination);
            if (!parts.matches()) {
                broken.add(refusal("has two colons in", lamination));
                return laminations;
            }
            laminations.add(
                    new LaminationRequest(parts.group("face"), bandAngle, bands(parts.group("bands"), unit, broken)));
        }
        return laminations;
    }

    private static List<BandRequest> bands(String text, LengthUnit unit, List<Violation> broken) {
        List<BandRequest> bands = new ArrayList<>();
        for (String band : text.split(";", -1)) {
            if (!band.isBlank()) {
                band(band.strip(), unit)
                        .ifPresentOrElse(bands::add, () -> broken.add(refusal("has no wood and width in", band)));
            }
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
            if (width.equals("rest")) {
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
        String shown = text.strip().length() > 40 ? text.strip().substring(0, 40) : text.strip();
        return new Violation(
                Parameter.BANDS.text(),
                "UNREADABLE_BANDS",
                "bands " + fault + " \"" + shown + "\"; it takes " + ALLOWED + ".",
                shown,
                ALLOWED);
    }
}
