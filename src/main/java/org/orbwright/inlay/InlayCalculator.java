package org.orbwright.inlay;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.band.BandLine;
import org.orbwright.band.BandStack;
import org.orbwright.band.BandStack.Layer;
import org.orbwright.band.SegmentSurface;
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
import org.orbwright.inlay.InlayPlan.TipHole;
import org.orbwright.inlay.InlayRequest.ShapeKind;
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
    private final InlayShape shape;
    private final double rim;
    private final double floor;
    private final double radius;
    private final List<Segment> segments;

    private InlayCalculator(InlayRequest request, Design design, Panel panel, InlayShape shape) {
        this.request = request;
        this.design = design;
        this.panel = panel;
        this.shape = shape;
        this.rim = design.unit().toMillimetres(request.rimThickness());
        this.floor = design.unit().toMillimetres(request.floor());
        this.radius = design.sphereRadius();
        this.segments = segments();
    }

    /**
     * Plans the inlays of a request.
     *
     * @param asked a section that keeps its Bean Validation constraints
     * @param design the design
     * @throws ImpossibleDesignException if the inlay cannot be let in
     */
    public static InlayPlan plan(InlayRequest asked, Design design) {
        design.require("the pocket of an inlay depends", DesignPart.THICKNESS, DesignPart.LAMINATIONS);
        InlayRequest request =
                asked.filled(design.unit(), design.request().sphere().minimumWall());
        Panel panel = panel(request, design);
        boolean disc = request.shape().kind() == ShapeKind.DISC;
        if (disc != (request.shape().sides() == null)) {
            throw refuse(
                    "/inlays/shape/sides",
                    "SIDES_DO_NOT_FIT",
                    "A polygon takes a number of sides, and a disc takes none.",
                    disc ? String.valueOf(request.shape().sides()) : null,
                    disc ? "no sides" : "3 to 24 sides");
        }
        double size = design.unit().toMillimetres(request.shape().diameter()) / 2;
        InlayShape shape = new InlayShape(size, disc ? 0 : request.shape().sides());
        return new InlayCalculator(request, design, panel, shape).plan();
    }

    private InlayPlan plan() {
        Largest largest = largest();
        if (2 * shape.radius() > largest.diameter() + EXACT) {
            throw tooLarge(largest);
        }
        double depth = depth(shape.radius());
        double bottom = panel.faceDistance() - depth;
        SegmentSurface surface = segments.get(0).surface();
        Pocket pocket = new Pocket(
                depth,
                design.thickness() - floor,
                rim,
                Math.min(radius, panel.faceDistance()) - bottom,
                design.thickness() - depth,
                2 * surface.arc(shape.radius()),
                segments.stream().mapToDouble(s -> area(s, null, true)).sum());
        return new InlayPlan(
                panel.face(),
                pocket,
                largest,
                tips(surface),
                coveredBands(),
                new PanelMotifs(request, design, panel).share());
    }

    /** Depth of the pocket whose bottom lies below the sphere, at the rim, by the rim's thickness. */
    private double depth(double size) {
        return panel.faceDistance() - height(size) + rim;
    }

    private double height(double size) {
        return Math.min(panel.faceDistance(), Math.sqrt(Math.max(0, (radius - size) * (radius + size))));
    }

    private Largest largest() {
        double lowestRim = panel.faceDistance() - design.thickness() + floor + rim;
        double top = Math.min(radius, panel.faceDistance());
        if (lowestRim >= top) {
            double wall = top - lowestRim + floor + rim;
            throw refuse(
                    "/inlays/floor",
                    "NO_ROOM_FOR_INLAY",
                    wall <= 0
                            ? "The sphere breaks through at the middle of the face: there is no wall for an inlay."
                            : "A rim of " + design.say(rim) + " and a floor of " + design.say(floor)
                                    + " do not fit into the wall: it is " + design.say(wall)
                                    + " at the middle of the face.",
                    Rounding.plain(request.floor(), SHOWN_DECIMALS),
                    "a rim and a floor that are together less than the wall");
        }
        double byHollow = Math.sqrt((radius - lowestRim) * (radius + lowestRim));
        double bySeam = bySeam();
        return byHollow <= bySeam
                ? new Largest(2 * byHollow, InlayLimit.HOLLOW)
                : new Largest(2 * bySeam, InlayLimit.SEAM);
    }

    /**
     * Where the pocket's lower edge meets the seam plane: {@code height(r) - rim = slope r}, with the flat and the
     * sphere.
     */
    private double bySeam() {
        double cos = Math.cos(shape.nearestCorner(directions()));
        double slope = panel.jointDistance() / panel.baseDistance() * cos;
        double square = 1 + slope * slope;
        double onSphere = (-slope * rim + Math.sqrt(square * radius * radius - rim * rim)) / square;
        double onFlat = (panel.faceDistance() - rim) / slope;
        double atSeam = height(onSphere) < panel.faceDistance() ? onSphere : onFlat;
        // A land rises straight from the panel's outline, which the pocket may not cross either.
        return Math.min(atSeam, panel.baseDistance() / cos);
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
    private record Segment(PlacedPiece placed, SegmentSurface surface) {}

    private TipHole tips(SegmentSurface surface) {
        double chip = design.unit().toMillimetres(request.chipOut());
        if (chip >= panel.baseDistance() || chip >= radius) {
            throw refuse(
                    "/inlays/chipOut",
                    "CHIP_OUT_TOO_LONG",
                    "Tips chipped by " + design.say(chip) + " leave nothing of the segments, which are "
                            + design.say(panel.baseDistance()) + " high.",
                    Rounding.plain(request.chipOut(), SHOWN_DECIMALS),
                    "less than " + design.say(Math.min(panel.baseDistance(), radius)));
        }
        return new TipHole(2 * chip, 2 * surface.arc(chip), 2 * chip, chip <= shape.innerRadius());
    }

    private double[] directions() {
        return segments.stream()
                .mapToDouble(segment -> segment.placed.direction())
                .toArray();
    }

    private double bandArea(Panel half, BandSet set, int place, boolean inlaid) {
        double area = 0;
        for (Segment segment : segments) {
            if (segment.placed.panel().equals(half)) {
                Layer layer = BandStack.of(half.lamination(), segment.placed.piece(), set)
                        .layers()
                        .get(place);
                double below = area(segment, layer.outermost() ? null : layer.outer(), inlaid);
                double belowInner = layer.innermost() ? 0 : area(segment, layer.inner(), inlaid);
                area += Math.max(0, below - belowInner);
            }
        }
        return area;
    }

    private double area(Segment segment, BandLine line, boolean inlaid) {
        if (inlaid) {
            return shape.covered(segment.surface(), segment.placed.direction(), line)
                    .visible();
        }
        return (line == null ? segment.surface().whole() : segment.surface().below(line)).visible();
    }

    private List<CoveredBand> coveredBands() {
        List<CoveredBand> bands = new ArrayList<>();
        for (Panel half : design.panels()) {
            if (!half.face().equals(panel.face())) {
                continue;
            }
            for (BandSet set : design.setsOf(half)) {
                bands.addAll(coveredBands(half, set));
            }
        }
        return bands;
    }

    /** The bands of a panel of one set, from the base to the tip. */
    private List<CoveredBand> coveredBands(Panel half, BandSet set) {
        List<CoveredBand> bands = new ArrayList<>();
        List<Layer> layers =
                BandStack.of(half.lamination(), half.pieces().get(0), set).layers();
        for (int place = 0; place < layers.size(); place++) {
            Layer layer = layers.get(place);
            double visible = bandArea(half, set, place, false);
            double covered = bandArea(half, set, place, true);
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

    private ImpossibleDesignException tooLarge(Largest largest) {
        String reason = largest.limitedBy() == InlayLimit.HOLLOW
                ? "its pocket would come nearer than " + design.say(floor) + " to the hollow"
                : "its pocket would break out through the bevelled seam";
        return refuse(
                "/inlays/shape/diameter",
                "INLAY_TOO_LARGE",
                "An inlay of " + design.unit().sayFinely(2 * shape.radius()) + " is too large: " + reason
                        + ". With a rim of " + design.say(rim) + " the largest is "
                        + design.unit().sayFinely(largest.diameter()) + ".",
                Rounding.plain(request.shape().diameter(), SHOWN_DECIMALS),
                "at most " + design.unit().sayFinely(largest.diameter()));
    }

    static ImpossibleDesignException refuse(String path, String code, String message, String rejected, String allowed) {
        return new ImpossibleDesignException(List.of(new Violation(path, code, message, rejected, allowed)));
    }
}
