package org.orbwright.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Violation;
import org.orbwright.diagnosis.DiagnosisRequest.LengthReadingRequest;
import org.orbwright.quantity.Rounding;
import org.orbwright.tolerance.Levers;

/** Reads measured values to millimetres and notes those that cannot be. */
final class Checks {
    /** A gap of more than this share of its distance is no error of a setting, but of the kind of segment. */
    private static final double WIDEST_GAP = 0.25;
    /** A face that is off by more than this share is none of the design's. */
    private static final double FARTHEST = 0.25;

    private static final int SHOWN_DECIMALS = 6;

    private final Design design;
    private final List<Violation> broken = new ArrayList<>();

    Checks(Design design) {
        this.design = design;
    }

    List<Violation> broken() {
        return broken;
    }

    Reading length(LengthReadingRequest asked) {
        return length(asked.value(), asked.resolution());
    }

    Reading length(double value, double resolution) {
        return Reading.of(design.unit().toMillimetres(value), design.unit().toMillimetres(resolution));
    }

    /** The panel of a face kind that a request names or, where there is just one, leaves out; null if it is broken. */
    Panel panel(String face, String pointer) {
        List<Panel> kinds = design.facePanels();
        String names = kinds.stream().map(Panel::face).collect(Collectors.joining(", "));
        if (face == null && kinds.size() > 1) {
            refuse(pointer, "FACE_MISSING", "The solid has several face kinds, and none is named.", null, names);
            return null;
        }
        if (face != null && kinds.stream().noneMatch(kind -> kind.face().equals(face))) {
            refuse(pointer, "UNKNOWN_FACE", "The solid has no face kind of this name.", face, names);
            return null;
        }
        return Levers.panel(design, face == null ? kinds.get(0).face() : face);
    }

    /** Where a gap was measured: the request's distance, or the whole lever. */
    Reading distance(LengthReadingRequest asked, double lever, String pointer) {
        if (asked == null) {
            return Reading.exact(lever);
        }
        Reading distance = length(asked);
        double longest = lever + design.unit().toMillimetres(asked.resolution());
        if (distance.value() <= 0 || distance.value() > longest) {
            refuse(
                    pointer + "/value",
                    "DISTANCE_TOO_LARGE",
                    "The gap cannot have been measured " + design.say(distance.value())
                            + " from the closed end of a joint that is " + design.say(lever) + " long.",
                    shown(asked.value()),
                    "more than 0 and at most " + design.sayAtMost(lever));
        }
        return distance;
    }

    /** Whether a gap is small enough for its distance. */
    boolean fits(Reading gap, Reading distance, String pointer) {
        double widest = WIDEST_GAP * distance.value();
        if (gap.value() <= widest) {
            return true;
        }
        refuse(
                pointer,
                "GAP_TOO_LARGE",
                "A gap of " + design.say(gap.value()) + " at " + design.say(distance.value())
                        + " is no error of a setting.",
                shown(design.unit().fromMillimetres(gap.value())),
                "at most a quarter of the distance, " + design.sayAtMost(Math.max(0, widest)));
        return false;
    }

    /** Notes a measured size that is far from the designed one. */
    void near(Reading measured, double designed, String pointer) {
        if (Math.abs(measured.value() - designed) > FARTHEST * designed) {
            refuse(
                    pointer,
                    "MEASURE_FAR_OFF",
                    "The design has " + design.say(designed) + " where " + design.say(measured.value())
                            + " was measured.",
                    shown(design.unit().fromMillimetres(measured.value())),
                    "within a quarter of " + design.say(designed));
        }
    }

    static String shown(double value) {
        return Rounding.plain(value, SHOWN_DECIMALS);
    }

    /** Notes a broken rule, once for each field. */
    void refuse(String path, String code, String message, String rejected, String allowed) {
        boolean known = broken.stream()
                .anyMatch(violation ->
                        violation.path().equals(path) && violation.code().equals(code));
        if (!known) {
            broken.add(new Violation(path, code, message, rejected, allowed));
        }
    }
}
