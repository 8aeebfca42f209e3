package org.orbwright.design;

import static java.util.Objects.requireNonNullElse;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.SegmentKind;
import org.orbwright.solid.Solid;

/** Finds the lamination of each face kind and fits its bands to the segments. */
final class LaminationMatcher {
    /** Bands may miss the base distance by this much in millimetres; the band at the tip takes up the difference. */
    private static final double WIDTH_TOLERANCE = 0.01;
    /** But never by more than this share of it. */
    private static final double WIDTH_TOLERANCE_SHARE = 1e-3;

    private static final int SHOWN_DECIMALS = 6;

    private final List<LaminationRequest> laminations;
    private final LengthUnit unit;
    private final Violations violations;

    /** Whether every lamination names a face of the solid, so that one that is missing is not just misspelt. */
    private boolean namesFit = true;

    LaminationMatcher(DesignRequest request, Violations violations) {
        this.laminations = request.laminations();
        this.unit = request.unit();
        this.violations = violations;
    }

    /** The laminations of a face kind, one or two for every other segment; none if they are missing or do not fit. */
    List<Lamination> match(Solid solid, FaceKind kind, double edge) {
        if (laminations == null) {
            return List.of(Lamination.UNKNOWN);
        }
        List<Lamination> found = new ArrayList<>();
        Set<Places> seen = EnumSet.noneOf(Places.class);
        boolean refused = false;
        for (int i = 0; i < laminations.size(); i++) {
            if (kind.face().equals(faceOf(solid, laminations.get(i)))) {
                Places places = requireNonNullElse(laminations.get(i).places(), Places.ALL);
                boolean twice = seen.contains(places) || seen.contains(Places.ALL);
                if (twice || (places == Places.ALL && !seen.isEmpty())) {
                    violations.add(
                            "/laminations/" + i + "/face",
                            "FACE_TWICE",
                            "These segments of the " + kind.face() + " panels already have a lamination.",
                            kind.face(),
                            "one lamination for all segments of a face, or one for the odd and one for the even ones");
                } else if (!refused) {
                    // What cannot alternate is said once; the other half is not missed as well.
                    refused = !alternates(i, kind);
                    if (!refused) {
                        fit(i, solid, kind, edge).ifPresent(found::add);
                    }
                }
                seen.add(places);
            }
        }
        if (!refused) {
            checkComplete(solid, kind, seen);
        }
        return found;
    }

    private void checkComplete(Solid solid, FaceKind kind, Set<Places> seen) {
        boolean complete = seen.contains(Places.ALL) || seen.containsAll(EnumSet.of(Places.ODD, Places.EVEN));
        if (complete || !namesFit) {
            return;
        }
        String half = seen.contains(Places.ODD) ? "even segments of the " : "odd segments of the ";
        violations.add(
                "/laminations",
                "LAMINATION_MISSING",
                "There is no lamination for the " + (seen.isEmpty() ? "" : half) + kind.face()
                        + " panels of this solid.",
                null,
                "one lamination for each of: " + names(solid));
    }

    /** Whether every other segment can differ, where the lamination asks for it. */
    private boolean alternates(int index, FaceKind kind) {
        LaminationRequest asked = laminations.get(index);
        boolean halves = asked.places() != null && asked.places() != Places.ALL;
        boolean chevron = Boolean.TRUE.equals(asked.chevron());
        String pointer = "/laminations/" + index;
        if (halves && chevron) {
            violations.add(
                    pointer + "/chevron",
                    "CHEVRON_OF_HALF",
                    "A lamination for every other segment cannot also turn every other segment face down.",
                    "true",
                    "false, or places ALL");
            return false;
        }
        boolean symmetric = kind.segments().stream().anyMatch(SegmentKind::symmetric);
        if (kind.sides() % 2 == 1 && (halves || (chevron && symmetric))) {
            violations.add(
                    pointer + (halves ? "/places" : "/chevron"),
                    "ODD_PANEL",
                    "The " + kind.face() + " panels have " + kind.sides()
                            + " segments, an odd number, so that two alike would lie side by side.",
                    halves ? String.valueOf(asked.places()) : "true",
                    halves ? "ALL" : "false");
            return false;
        }
        return true;
    }

    /** Adds a violation for every lamination that names no face of the solid. */
    void checkNames(Solid solid) {
        for (int i = 0; laminations != null && i < laminations.size(); i++) {
            String face = faceOf(solid, laminations.get(i));
            String path = "/laminations/" + i + "/face";
            if (face == null) {
                namesFit = false;
                violations.add(
                        path,
                        "FACE_MISSING",
                        "This solid has more than one face kind, so each lamination has to name its own.",
                        null,
                        "one of " + names(solid));
            } else if (solid.faceKinds().stream().noneMatch(kind -> kind.face().equals(face))) {
                namesFit = false;
                violations.add(
                        path,
                        "UNKNOWN_FACE",
                        "This solid has no face kind named \"" + face + "\"; those that it has are: " + names(solid)
                                + ".",
                        face,
                        "one of " + names(solid));
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

    private Optional<Lamination> fit(int index, Solid solid, FaceKind kind, double edge) {
        LaminationRequest asked = laminations.get(index);
        double angle = Math.toRadians(requireNonNullElse(asked.bandAngle(), 0.0));
        double needed = 0;
        Lamination bare = lamination(index, asked, angle, List.of());
        for (Piece piece : PieceFinder.pieces(solid, kind, edge, bare)) {
            needed = Math.max(needed, piece.extent(piece.angle(bare)));
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
        return fits ? Optional.of(lamination(index, asked, angle, bands(asked, needed - sum))) : Optional.empty();
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
        double tolerance = Math.min(WIDTH_TOLERANCE, WIDTH_TOLERANCE_SHARE * needed);
        boolean tooWide = angle == 0 && sum > needed + tolerance;
        if (!tooWide && sum >= needed - tolerance) {
            return true;
        }
        violations.add(
                path,
                tooWide ? "BANDS_TOO_WIDE" : "BANDS_TOO_NARROW",
                "The bands of the " + kind.face() + " lamination add up to " + unit.sayFinely(sum) + ", but "
                        + measure(angle) + " is " + unit.sayFinely(needed) + ".",
                Rounding.plain(unit.fromMillimetres(sum), SHOWN_DECIMALS),
                (angle == 0 ? "bands that add up to " : "bands that add up to at least ") + unit.sayFinely(needed)
                        + " to within " + unit.sayFinely(tolerance)
                        + ", or one band without a width that takes the rest");
        return false;
    }

    private static String measure(double angle) {
        return angle == 0 ? "the base distance" : "the segment's extent square to the bands";
    }

    private List<Band> bands(LaminationRequest asked, double rest) {
        List<Band> bands = new ArrayList<>();
        for (BandRequest band : asked.bands()) {
            bands.add(new Band(band.species(), band.width() == null ? rest : unit.toMillimetres(band.width())));
        }
        return bands;
    }

    private static Lamination lamination(int index, LaminationRequest asked, double angle, List<Band> bands) {
        Places places = requireNonNullElse(asked.places(), Places.ALL);
        return new Lamination(index, places, angle, Boolean.TRUE.equals(asked.chevron()), bands);
    }
}
