package org.orbwright.diagnosis;

import java.util.List;
import java.util.stream.Collectors;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.PlacedPiece;
import org.orbwright.solid.EdgeKind;
import org.orbwright.tolerance.JointLengths;

/**
 * How the error of a setting shows: by a gap, and by a reading of the thing itself. Errors are in degrees or in the
 * design's unit; above 0 the setting goes too far.
 *
 * @param face the face kind
 * @param lever length over which an error opens a gap, in millimetres; 0 where it opens none
 * @param times how many times the error the open angle is
 * @param designed what the reading should be, in degrees or in the design's unit
 * @param perReading how far the setting is off for each unit that the reading is
 */
record Dial(DialSetting setting, String face, double lever, double times, double designed, double perReading) {

    /** The dial of a request, or null if it breaks a rule, which is noted. */
    static Dial of(DialInRequest asked, Design design, Checks checks, String pointer) {
        Panel panel = checks.panel(asked.face(), pointer + "/face");
        int before = checks.broken().size();
        if (panel == null) {
            return null;
        }
        Dial dial = switch (asked.setting()) {
            case TIP_ANGLE -> {
                Piece piece = segment(asked, panel, design, checks, pointer);
                double tip = Math.atan2(piece.left(), piece.base()) + Math.atan2(piece.right(), piece.base());
                double lever = JointLengths.joint(design, panel);
                yield new Dial(
                        asked.setting(), panel.face(), lever, 2.0 * panel.kind().sides(), Math.toDegrees(tip), 0.5);
            }
            case BEVEL -> {
                double lever = seam(asked, panel, design, checks, pointer);
                yield new Dial(asked.setting(), panel.face(), lever, 2, 90 - Math.toDegrees(panel.bevel()), 1);
            }
            case BLADE_SQUARE -> new Dial(asked.setting(), panel.face(), design.thickness(), 2, 0, 1);
            case STOP -> {
                double base = segment(asked, panel, design, checks, pointer).baseLength();
                yield length(asked, panel, design, base);
            }
            case BLANK_WIDTH -> length(asked, panel, design, panel.blankWidth());
        };
        return checks.broken().size() == before ? dial : null;
    }

    private static Dial length(DialInRequest asked, Panel panel, Design design, double millimetres) {
        return new Dial(asked.setting(), panel.face(), 0, 0, design.unit().fromMillimetres(millimetres), 1);
    }

    /** The kind of segment that is read; gaps of a panel depend on none. */
    private static Piece segment(DialInRequest asked, Panel panel, Design design, Checks checks, String pointer) {
        List<Piece> around = PlacedPiece.around(design, panel.face()).stream()
                .map(PlacedPiece::piece)
                .toList();
        String kinds = around.stream().map(Piece::segment).distinct().sorted().collect(Collectors.joining(", "));
        boolean read = asked.trials().stream().anyMatch(trial -> trial.reading() != null);
        if (asked.segment() == null && read && kinds.contains(",")) {
            checks.refuse(
                    pointer + "/segment",
                    "SEGMENT_MISSING",
                    "The face has several kinds of segment, and none is named.",
                    null,
                    kinds);
        }
        return around.stream()
                .filter(piece -> asked.segment() == null || piece.segment().equals(asked.segment()))
                .findFirst()
                .orElseGet(() -> {
                    checks.refuse(
                            pointer + "/segment",
                            "UNKNOWN_SEGMENT",
                            "The face has no kind of segment of this name.",
                            asked.segment(),
                            kinds);
                    return around.get(0);
                });
    }

    /** Length of the seam with the neighbour. */
    private static double seam(DialInRequest asked, Panel panel, Design design, Checks checks, String pointer) {
        Panel other = asked.neighbour() == null ? panel : checks.panel(asked.neighbour(), pointer + "/neighbour");
        if (other == null) {
            return 0;
        }
        List<String> neighbours = design.solid().edgeKinds().stream()
                .filter(edge ->
                        edge.face().equals(panel.face()) || edge.neighbour().equals(panel.face()))
                .map(edge -> other(edge, panel.face()))
                .distinct()
                .toList();
        boolean gaps = asked.trials().stream().anyMatch(trial -> trial.gap() != null);
        if (gaps && !neighbours.contains(other.face())) {
            checks.refuse(
                    pointer + "/neighbour",
                    "NOT_NEIGHBOURS",
                    "On this solid no seam joins panels of these two face kinds.",
                    asked.neighbour(),
                    String.join(", ", neighbours));
        }
        return JointLengths.seam(design, panel, other);
    }

    private static String other(EdgeKind edge, String face) {
        return edge.face().equals(face) ? edge.neighbour() : edge.face();
    }

    boolean hasGap() {
        return setting.hasGap();
    }

    /**
     * How far the setting is off where this gap is open; a chord, but for a blade that is not square, whose gap lies
     * across the joint.
     *
     * @param gap in millimetres, below 0 where the setting does not go far enough
     * @param distance from the closed end, in millimetres
     */
    double error(double gap, double distance) {
        double half = gap / (2 * distance);
        double angle = setting == DialSetting.BLADE_SQUARE ? Math.atan(half) : Math.asin(half);
        return Math.toDegrees(2 * angle / times);
    }

    /** The widest gap that an error opens, in millimetres. */
    double gap(double error) {
        double half = Math.min(Math.PI / 2, Math.toRadians(Math.abs(error)) * times / 2);
        return 2 * lever * (setting == DialSetting.BLADE_SQUARE ? Math.tan(half) : Math.sin(half));
    }
}
