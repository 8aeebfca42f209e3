package org.orbwright.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Violation;
import org.orbwright.diagnosis.DiagnosisRequest.LengthReadingRequest;
import org.orbwright.quantity.Rounding;
import org.orbwright.tolerance.JointLengths;

/** Reads measured values to millimetres and notes those that cannot be. */
final class Checks {
    /** A gap of more than this share of its distance is no error of a setting, but of the kind of segment. */
    static final double WIDEST_GAP = 0.25;
    /** A face that is off by more than this share is none of the design's. */
    static final double FARTHEST = 0.25;

    /** A scale is no coarser than this share of its reading. */
    private static final double COARSEST = 0.25;
    /** Degrees within which a reading is taken for an angle, and beyond which it is taken for another. */
    private static final double SAME_ANGLE = 1;

    private static final double OTHER_ANGLE = 5;

    private static final int SHOWN_DECIMALS = 6;
    private static final int DEGREE_DECIMALS = 4;

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
        return JointLengths.panel(design, face == null ? kinds.get(0).face() : face);
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
                    "The gap cannot have been measured "
                            + design.unit().sayApart(distance.value(), lever)
                            + " from the closed end of a joint that is "
                            + design.unit().sayApart(lever, distance.value()) + " long.",
                    shown(asked.value()),
                    "more than 0 and at most " + design.sayAtMost(lever));
        } else {
            fine(asked.value(), asked.resolution(), pointer);
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

    /** Notes a scale whose steps are so coarse that its reading says nothing. */
    void fine(double value, double resolution, String pointer) {
        if (value > 0 && resolution > COARSEST * value) {
            refuse(
                    pointer + "/resolution",
                    "RESOLUTION_TOO_COARSE",
                    "A reading of " + shown(value) + " on a scale with steps of " + shown(resolution)
                            + " says nothing.",
                    shown(resolution),
                    "at most a quarter of the reading");
        }
    }

    /**
     * Notes a blade tilt that is far from the designed one, or that is the bevel.
     *
     * @param reading in degrees
     * @param designed in radians
     */
    void nearTilt(double reading, double designed, String pointer) {
        double tilt = Math.toDegrees(designed);
        double off = Math.abs(reading - tilt);
        boolean bevel = Math.abs(reading - (90 - tilt)) <= SAME_ANGLE && off > OTHER_ANGLE;
        if (bevel || off > FARTHEST * tilt) {
            String wanted = Rounding.plain(tilt, DEGREE_DECIMALS) + " degrees";
            refuse(
                    pointer,
                    "MEASURE_FAR_OFF",
                    "The design has a blade tilt of " + wanted + " where " + shown(reading) + " degrees were read"
                            + (bevel ? ", which is its bevel: the tilt is counted from upright." : "."),
                    shown(reading),
                    "within a quarter of " + wanted);
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
