package org.orbwright.movement;

import static java.util.Objects.requireNonNullElse;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Violation;
import org.orbwright.movement.MovementRequest.GrainRequest;
import org.orbwright.quantity.Rounding;

/** How the growth rings lie in every strip of a design: the angle between them and the strip's width. */
final class Grain {
    private static final int SHOWN_DECIMALS = 4;

    private final Map<Strip, Double> ringAngles = new HashMap<>();
    private final Design design;
    private final List<Violation> broken;

    private Grain(Design design, List<Violation> broken) {
        this.design = design;
        this.broken = broken;
    }

    /**
     * A strip by its place in the design.
     *
     * @param lamination the lamination's index
     * @param band the band's number, from 1
     */
    private record Strip(int lamination, int band) {}

    /**
     * The grain of a request's design.
     *
     * @param broken where broken rules are added
     */
    static Grain of(MovementRequest request, Design design, List<Violation> broken) {
        Grain grain = new Grain(design, broken);
        List<GrainRequest> asked = request.grain();
        for (int i = 0; i < asked.size(); i++) {
            grain.read(asked.get(i), "/movement/grain/" + i);
        }
        return grain;
    }

    /** Angle between the growth rings and the width of a strip, in radians. */
    double ringAngle(Panel panel, int band) {
        return ringAngles.getOrDefault(new Strip(panel.lamination().index(), band), 0.0);
    }

    private void read(GrainRequest grain, String pointer) {
        List<Panel> panels = design.panels().stream()
                .filter(panel -> grain.face() == null || grain.face().equals(panel.face()))
                .filter(panel -> grain.places() == null || grain.places() == panel.places())
                .toList();
        if (panels.size() != 1) {
            refuse(
                    pointer + "/face",
                    "UNKNOWN_FACE",
                    panels.isEmpty()
                            ? "The design has no lamination for this face kind and these places."
                            : "The design has " + panels.size() + " laminations that this could mean.",
                    grain.face(),
                    "the face, and where it has two laminations the places, of one of the design's laminations");
            return;
        }
        Panel panel = panels.get(0);
        int bands = panel.lamination().bands().size();
        if (grain.band() > bands) {
            String message = "The " + panel.face() + " lamination has no band " + grain.band() + ".";
            refuse(pointer + "/band", "UNKNOWN_BAND", message, grain.band().toString(), "1 to " + bands);
        }
        if (grain.orientation() != null && grain.ringAngle() != null) {
            refuse(
                    pointer + "/ringAngle",
                    "CONFLICTING_GRAIN",
                    "The orientation already says how the growth rings lie; the ring angle cannot say it again.",
                    Rounding.plain(grain.ringAngle(), SHOWN_DECIMALS),
                    "either an orientation or a ringAngle");
        }
        double degrees = requireNonNullElse(
                grain.ringAngle(),
                requireNonNullElse(grain.orientation(), GrainOrientation.FLAT_SAWN)
                        .degrees());
        Strip strip = new Strip(panel.lamination().index(), grain.band());
        if (ringAngles.put(strip, Math.toRadians(degrees)) != null) {
            String message = "The grain of band " + grain.band() + " is stated before.";
            refuse(pointer + "/band", "GRAIN_TWICE", message, grain.band().toString(), "each band once");
        }
    }

    private void refuse(String path, String code, String message, String rejected, String allowed) {
        broken.add(new Violation(path, code, message, rejected, allowed));
    }
}
