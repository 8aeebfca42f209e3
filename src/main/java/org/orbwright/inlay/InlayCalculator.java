package org.orbwright.inlay;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.band.BandLine;
import org.orbwright.band.BandStack;
import org.orbwright.band.BandStack.Layer;
import org.orbwright.band.SegmentSurface;
import org.orbwright.band.VisibleWidths;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.PlacedPiece;
import org.orbwright.design.Violation;
import org.orbwright.inlay.InlayPlan.CoveredBand;
import org.orbwright.inlay.InlayPlan.InlayLimit;
import org.orbwright.inlay.InlayPlan.Largest;
import org.orbwright.inlay.InlayPlan.Pocket;
import org.orbwright.inlay.InlayRequest.ShapeKind;
import org.orbwright.inlay.InlayRequest.ShapeRequest;
import org.orbwright.quantity.Rounding;

/**
 * Lets discs and polygons into the panels. The rim of an inlay lies lowest under the sphere, so that the pocket has to
 * be as deep below the sphere there as the rim is to be thick; the inlay is largest where such a pocket meets the floor
 * above the hollow or the bevelled seam.
 */
public final class InlayCalculator {
    private static final int SHOWN_DECIMALS = 6;
    /** An inlay as large as the largest that was answered, and so rounded, is not too large; in millimetres. */
    private static final double EXACT = 2e-4;

    private final InlayRequest request;
    private final Design design;
    private final Panel panel;
    private final PocketRoom room;
    private final double radius;
    private final List<Segment> segments;

    private InlayCalculator(InlayRequest request, Design design, Panel panel) {
        this.request = request;
        this.design = design;
        this.panel = panel;
        this.room = PocketRoom.of(request, design, panel);
        this.radius = design.sphereRadius();
        this.segments = segments();
    }

    /**
     * Plans the inlays of a request. Where it states chips and no shape, the inlay is the plug that hides them.
     *
     * @param asked a section that keeps its Bean Validation constraints
     * @throws ImpossibleDesignException if the inlay cannot be let in
     */
    public static InlayPlan plan(InlayRequest asked, Design design) {
        design.require("the pocket of an inlay depends", DesignPart.THICKNESS, DesignPart.LAMINATIONS);
        InlayRequest request = asked.filled(design);
        return new InlayCalculator(request, design, panel(request, design)).plan();
    }

    private InlayPlan plan() {
        InlayShape stated = request.shape() == null ? null : shape(request.shape());
        ChipPlan chips = request.chips() == null
                ? null
                : ChipCalculator.plan(request.chips(), design, room, segments, directions(), stated);
        InlayShape shape = stated == null && chips != null ? chips.shape() : stated;
        if (stated != null && !room.any()) {
            throw noRoom();
        }
        Largest largest = room.any() ? room.largest(shape == null ? new InlayShape(0, 0) : shape, directions()) : null;
        if (shape != null && 2 * shape.radius() > largest.diameter() + EXACT) {
            throw tooLarge(shape, largest);
        }
        return new InlayPlan(
                panel.face(),
                shape == null ? null : pocket(shape),
                largest,
                TipCalculator.compare(request, design),
                chips,
                coveredBands(shape),
                new PanelMotifs(request, design, panel).share());
    }

    private InlayShape shape(ShapeRequest stated) {
        boolean disc = stated.kind() == ShapeKind.DISC;
        if (disc != (stated.sides() == null)) {
            throw refuse(
                    "/inlays/shape/sides",
                    "SIDES_DO_NOT_FIT",
                    "A polygon takes a number of sides, and a disc takes none.",
                    disc ? String.valueOf(stated.sides()) : null,
                    disc ? "no sides" : "3 to 24 sides");
        }
        return new InlayShape(design.unit().toMillimetres(stated.diameter()) / 2, disc ? 0 : stated.sides());
    }

    private Pocket pocket(InlayShape shape) {
        double depth = room.depth(shape.radius());
        return new Pocket(
                depth,
                design.thickness() - room.floor(),
                room.rim(),
                room.top() - panel.faceDistance() + depth,
                design.thickness() - depth,
                2 * VisibleWidths.arc(segments.get(0).surface(), shape.radius()),
                segments.stream().mapToDouble(s -> area(s, null, shape)).sum());
    }

    private ImpossibleDesignException noRoom() {
        double wall = room.wall();
        return refuse(
                "/inlays/floor",
                "NO_ROOM_FOR_INLAY",
                wall <= 0
                        ? "The sphere breaks through at the middle of the face: there is no wall for an inlay."
                        : "A rim of " + design.say(room.rim()) + " and a floor of " + design.say(room.floor())
                                + " do not fit into the wall: it is " + design.say(wall)
                                + " at the middle of the face.",
                Rounding.plain(request.floor(), SHOWN_DECIMALS),
                "a rim and a floor that are together less than the wall");
    }

    /** The segments of one panel, counter-clockwise. */
    private List<Segment> segments() {
        List<Segment> segments = new ArrayList<>();
        for (PlacedPiece placed : PlacedPiece.around(design, panel.face())) {
            segments.add(new Segment(placed, SegmentSurface.of(placed.panel(), placed.piece(), radius)));
        }
        return segments;
    }

    /**
     * One segment of the panel.
     *
     * @param placed the segment in its place
     * @param surface its finished surface
     */
    record Segment(PlacedPiece placed, SegmentSurface surface) {}

    private double[] directions() {
        return segments.stream()
                .mapToDouble(segment -> segment.placed.direction())
                .toArray();
    }

    private double bandArea(Panel half, BandSet set, int place, InlayShape shape) {
        double area = 0;
        for (Segment segment : segments) {
            if (segment.placed.panel().equals(half)) {
                Layer layer = BandStack.of(half.lamination(), segment.placed.piece(), set)
                        .layers()
                        .get(place);
                double below = area(segment, layer.outermost() ? null : layer.outer(), shape);
                double belowInner = layer.innermost() ? 0 : area(segment, layer.inner(), shape);
                area += Math.max(0, below - belowInner);
            }
        }
        return area;
    }

    private double area(Segment segment, BandLine line, InlayShape shape) {
        if (shape != null) {
            return shape.covered(segment.surface(), segment.placed.direction(), line)
                    .visible();
        }
        return (line == null ? segment.surface().whole() : segment.surface().below(line)).visible();
    }

    private List<CoveredBand> coveredBands(InlayShape shape) {
        List<CoveredBand> bands = new ArrayList<>();
        if (shape == null) {
            return bands;
        }
        for (Panel half : design.panels()) {
            if (!half.face().equals(panel.face())) {
                continue;
            }
            for (BandSet set : design.setsOf(half)) {
                bands.addAll(coveredBands(half, set, shape));
            }
        }
        return bands;
    }

    /** The bands of a panel of one set, from the base to the tip. */
    private List<CoveredBand> coveredBands(Panel half, BandSet set, InlayShape shape) {
        List<CoveredBand> bands = new ArrayList<>();
        List<Layer> layers =
                BandStack.of(half.lamination(), half.pieces().get(0), set).layers();
        for (int place = 0; place < layers.size(); place++) {
            Layer layer = layers.get(place);
            double visible = bandArea(half, set, place, null);
            double covered = bandArea(half, set, place, shape);
            double share = visible > 0 ? Math.min(1, covered / visible) : 0;
            bands.add(new CoveredBand(
                    half.places(), set, layer.number(), layer.band().species(), covered, share));
        }
        return bands;
    }

    private static Panel panel(InlayRequest request, Design design) {
        if (request.face() == null && design.facePanels().size() == 1) {
            return design.panels().get(0);
        }
        return design.panels().stream()
                .filter(p -> p.face().equals(request.face()))
                .findFirst()
                .orElseThrow(() -> refuse(
                        "/inlays/face",
                        "UNKNOWN_FACE",
                        "This solid has no such face kind.",
                        request.face(),
                        "one of "
                                + String.join(
                                        ", ",
                                        design.facePanels().stream()
                                                .map(Panel::face)
                                                .toList())));
    }

    private ImpossibleDesignException tooLarge(InlayShape shape, Largest largest) {
        String reason = largest.limitedBy() == InlayLimit.HOLLOW
                ? "its pocket would come nearer than " + design.say(room.floor()) + " to the hollow"
                : "its pocket would break out through the bevelled seam";
        return refuse(
                "/inlays/shape/diameter",
                "INLAY_TOO_LARGE",
                "An inlay of " + design.unit().sayFinely(2 * shape.radius()) + " is too large: " + reason
                        + ". With a rim of " + design.say(room.rim()) + " the largest is "
                        + design.unit().sayFinely(largest.diameter()) + ".",
                Rounding.plain(request.shape().diameter(), SHOWN_DECIMALS),
                "at most " + design.unit().sayFinely(largest.diameter()));
    }

    static ImpossibleDesignException refuse(String path, String code, String message, String rejected, String allowed) {
        return new ImpossibleDesignException(List.of(new Violation(path, code, message, rejected, allowed)));
    }
}
