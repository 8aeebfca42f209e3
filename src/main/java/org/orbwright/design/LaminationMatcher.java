package org.orbwright.design;

import static java.util.Objects.requireNonNullElse;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.Solid;

/** Finds the lamination of each face kind and fits its bands to the segments. */
final class LaminationMatcher {
    /** Bands may miss the base distance by this much in millimetres; the band at the tip takes up the difference. */
    private static final double WIDTH_TOLERANCE = 0.01;

    private final List<LaminationRequest> laminations;
    private final LengthUnit unit;
    private final Violations violations;

    LaminationMatcher(DesignRequest request, Violations violations) {
        this.laminations = request.laminations();
        this.unit = request.unit();
        this.violations = violations;
    }

    /** The lamination of a face kind, unless it is missing or does not fit. */
    Optional<Lamination> match(Solid solid, FaceKind kind, double edge) {
        for (int i = 0; i < laminations.size(); i++) {
            if (kind.face().equals(faceOf(solid, laminations.get(i)))) {
                return fit(i, kind, edge);
            }
        }
        violations.add(
                "/laminations",
                "LAMINATION_MISSING",
                "There is no lamination for the " + kind.face() + " panels of this solid.",
                null,
                "one lamination for each of: " + names(solid));
        return Optional.empty();
    }

    /** Adds a violation for every face that the solid does not have, or that has two laminations. */
    void checkNames(Solid solid) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < laminations.size(); i++) {
            String face = faceOf(solid, laminations.get(i));
            String path = "/laminations/" + i + "/face";
            if (face == null) {
                violations.add(
                        path,
                        "FACE_MISSING",
                        "This solid has more than one face kind, so each lamination has to name its own.",
                        null,
                        "one of " + names(solid));
            } else if (solid.faceKinds().stream().noneMatch(kind -> kind.face().equals(face))) {
                violations.add(
                        path, "UNKNOWN_FACE", "This solid has no such face kind.", face, "one of " + names(solid));
            } else if (!seen.add(face)) {
                violations.add(
                        path,
                        "FACE_TWICE",
                        "There already is a lamination for this face kind.",
                        face,
                        "each face once");
            }
        }
    }

    private static String faceOf(Solid solid, LaminationRequest lamination) {
        boolean single = solid.faceKinds().size() == 1;
        return lamination.face() == null && single ? solid.faceKinds().get(0).face() : lamination.face();
    }

    private static String names(Solid solid) {
        return String.join(", ", solid.faceKinds().stream().map(FaceKind::face).toList());
    }

    private Optional<Lamination> fit(int index, FaceKind kind, double edge) {
        LaminationRequest asked = laminations.get(index);
        double angle = Math.toRadians(requireNonNullElse(asked.bandAngle(), 0.0));
        double needed = 0;
        for (Piece piece : DesignBuilder.pieces(kind, edge, angle == 0)) {
            needed = Math.max(needed, piece.extent(angle));
        }
        double sum = 0;
        int rest = -1;
        String pointer = "/laminations/" + index + "/bands";
        for (int i = 0; i < asked.bands().size(); i++) {
            Double width = asked.bands().get(i).width();
            if (width != null) {
                sum += unit.toMillimetres(width);
            } else if (rest < 0) {
                rest = i;
            } else {
                violations.add(
                        pointer + "/" + i + "/width",
                        "TWO_REST_BANDS",
                        "Band " + (rest + 1) + " already takes the rest; only one band can.",
                        "null",
                        "a width");
                return Optional.empty();
            }
        }
        boolean fits = rest >= 0
                ? checkRest(pointer + "/" + rest + "/width", kind, angle, needed, sum)
                : checkSum(pointer, kind, angle, needed, sum);
        return fits ? Optional.of(lamination(index, asked, angle, needed - sum)) : Optional.empty();
    }

    private boolean checkRest(String path, FaceKind kind, double angle, double needed, double sum) {
        if (needed - sum > 0) {
            return true;
        }
        violations.add(
                path,
                "NOTHING_LEFT_FOR_REST",
                "The other bands of the " + kind.face() + " lamination already add up to " + unit.say(sum)
                        + "; nothing is left of " + measure(angle) + " " + unit.say(needed) + ".",
                "null",
                "other bands that add up to less than " + unit.say(needed));
        return false;
    }

    private boolean checkSum(String path, FaceKind kind, double angle, double needed, double sum) {
        boolean tooWide = angle == 0 && sum > needed + WIDTH_TOLERANCE;
        if (!tooWide && sum >= needed - WIDTH_TOLERANCE) {
            return true;
        }
        violations.add(
                path,
                tooWide ? "BANDS_TOO_WIDE" : "BANDS_TOO_NARROW",
                "The bands of the " + kind.face() + " lamination add up to " + unit.say(sum) + ", but " + measure(angle)
                        + " is " + unit.say(needed) + ".",
                Rounding.plain(unit.fromMillimetres(sum), 4),
                (angle == 0 ? "bands that add up to " : "bands that add up to at least ") + unit.say(needed)
                        + ", or one band without a width that takes the rest");
        return false;
    }

    private static String measure(double angle) {
        return angle == 0 ? "the base distance" : "the segment's extent square to the bands";
    }

    private Lamination lamination(int index, LaminationRequest asked, double angle, double rest) {
        List<Band> bands = new ArrayList<>();
        for (BandRequest band : asked.bands()) {
            bands.add(new Band(band.species(), band.width() == null ? rest : unit.toMillimetres(band.width())));
        }
        return new Lamination(index, angle, bands);
    }
}
