package org.orbwright.movement;

import static java.util.Objects.requireNonNullElse;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Violation;
import org.orbwright.movement.Movement.MoistureContents;
import org.orbwright.movement.Movement.Season;
import org.orbwright.movement.MovementRequest.ClimateRequest;
import org.orbwright.quantity.Rounding;

/** Reads the moisture contents of a request. */
final class Moisture {
    private static final int SHOWN_DECIMALS = 2;
    private static final String EITHER = "a moistureContent, or a temperature and a relativeHumidity";

    private final List<Violation> violations = new ArrayList<>();

    private Moisture() {}

    /**
     * The moisture contents of a request.
     *
     * @param broken where broken rules are added; the moisture contents mean nothing if there are any
     */
    static MoistureContents of(MovementRequest request, List<Violation> broken) {
        Moisture reader = new Moisture();
        double stock = reader.content(request.stock(), "/movement/stock");
        double driest = reader.content(request.home().driest(), "/movement/home/driest");
        double dampest = reader.content(request.home().dampest(), "/movement/home/dampest");
        if (reader.violations.isEmpty() && driest > dampest) {
            reader.refuse(
                    "/movement/home/driest",
                    "SEASONS_REVERSED",
                    "The driest season leaves " + shown(driest) + " % of moisture in the wood, more than the "
                            + shown(dampest) + " % of the dampest one.",
                    shown(driest),
                    "a season that is no damper than home.dampest");
        }
        broken.addAll(reader.violations);
        Season worse = distance(stock, dampest) > distance(stock, driest) ? Season.DAMPEST : Season.DRIEST;
        return new MoistureContents(stock, driest, dampest, (driest + dampest) / 2, worse);
    }

    private static double distance(double stock, double season) {
        return Math.abs(DimensionalChange.moving(season) - DimensionalChange.moving(stock));
    }

    private double content(ClimateRequest climate, String pointer) {
        Double content = climate.moistureContent();
        boolean air = climate.temperature() != null || climate.relativeHumidity() != null;
        if (content != null && air) {
            refuse(
                    pointer + "/moistureContent",
                    "CONFLICTING_MOISTURE",
                    "The moisture content already says how moist the wood is; the air cannot say it again.",
                    shown(content),
                    "either " + EITHER);
        } else if (content == null && !air) {
            refuse(pointer, "MOISTURE_MISSING", "Nothing says how moist the wood is.", null, EITHER);
        } else if (content == null && climate.temperature() == null) {
            refuse(
                    pointer + "/temperature",
                    "MOISTURE_MISSING",
                    "The temperature of the air is missing.",
                    null,
                    EITHER);
        } else if (content == null && climate.relativeHumidity() == null) {
            String message = "The relative humidity of the air is missing.";
            refuse(pointer + "/relativeHumidity", "MOISTURE_MISSING", message, null, EITHER);
        } else if (content == null) {
            return EquilibriumMoisture.of(climate.temperature(), climate.relativeHumidity());
        }
        return requireNonNullElse(content, 0.0);
    }

    private static String shown(double percent) {
        return Rounding.plain(percent, SHOWN_DECIMALS);
    }

    private void refuse(String path, String code, String message, String rejected, String allowed) {
        violations.add(new Violation(path, code, message, rejected, allowed));
    }
}
