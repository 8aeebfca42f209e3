package org.orbwright.api.query;

import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.Violation;
import org.orbwright.turning.Holding.Seat;
import org.orbwright.turning.TurningPlan;
import org.orbwright.turning.TurningRequest;
import org.orbwright.turning.TurningRequest.DiscsRequest;

/** Reads query parameters that name a part of a design. */
public final class DesignQuery {
    /** What the parameter of an end means. */
    public static final String END =
            "HEAD: the end that the axis is named after. TAIL: the other one. HEAD if left out.";

    /** The ends of the axis. */
    enum End {
        /** The end that the axis is named after. */
        HEAD,
        /** The other one. */
        TAIL
    }

    private DesignQuery() {}

    /** The seat of the disc at one end of the axis. */
    public static Seat seat(TurningPlan plan, String end) {
        boolean head = Query.constant("end", end, End.class, End.HEAD) == End.HEAD;
        Seat seat = head ? plan.holding().head() : plan.holding().tail();
        if (seat.disc() <= 0) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/turning/discs/diameter",
                    "NO_ROOM_FOR_DISC",
                    "No disc at this end of the axis stays clear of the sphere.",
                    null,
                    "another axis or end, or a diameter")));
        }
        return seat;
    }

    /** Thickness of a disc in millimetres: what is stated, or what its screws ask for. */
    public static double thickness(Seat seat, String thickness, Design design) {
        if (!Query.isEmpty(thickness)) {
            return design.unit().toMillimetres(Query.number("thickness", thickness, 0.001, 1000, thickness));
        }
        if (seat.discThickness() == null) {
            throw Query.refuse("thickness", "MISSING", "", "stated where no screws ask for one: 0.001 to 1000");
        }
        return seat.discThickness();
    }

    /** Diameter of the hole through a disc in millimetres; 0 for none. */
    public static double centreHole(TurningRequest turning, Design design) {
        DiscsRequest discs = turning.discs();
        return discs == null || discs.centreHole() == null ? 0 : design.unit().toMillimetres(discs.centreHole());
    }

    /** The panel of a face kind, the first where none is named. */
    public static Panel panel(Design design, String face) {
        List<Panel> panels = design.facePanels();
        String name = Query.name("face", face, panels.stream().map(Panel::face).toList());
        return panels.stream()
                .filter(panel -> panel.face().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The segment of a kind, the first where none is named. */
    static Piece piece(Panel panel, String segment) {
        String letter = Query.name(
                "segment",
                segment,
                panel.pieces().stream().map(Piece::segment).distinct().toList());
        return panel.pieces().stream()
                .filter(piece -> piece.segment().equals(letter))
                .findFirst()
                .orElseThrow();
    }
}
