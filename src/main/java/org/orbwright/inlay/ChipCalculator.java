package org.orbwright.inlay;

import java.util.Comparator;
import java.util.List;
import org.orbwright.band.BandLine;
import org.orbwright.band.SegmentSurface;
import org.orbwright.band.VisibleWidths;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.inlay.ChipPlan.ChipHole;
import org.orbwright.inlay.ChipPlan.Plug;
import org.orbwright.inlay.ChipPlan.Recut;
import org.orbwright.inlay.InlayCalculator.Segment;
import org.orbwright.inlay.InlayRequest.ChipMeasure;
import org.orbwright.inlay.InlayRequest.ChipRequest;
import org.orbwright.quantity.Rounding;
import org.orbwright.solid.SegmentKind;

/**
 * The hole that chipped tips leave. A chip is a prism square to the panel over a triangle at the tip. Turning leaves
 * the part of it that lies above its bottom: that part is inside the circle at which the sphere meets the bottom's
 * plane. So the hole reaches to the chips' farthest corner or to that circle, whichever is nearer. Closed form.
 */
final class ChipCalculator {
    private static final int SHOWN_DECIMALS = 6;
    /** What differs by less is the same length, in millimetres: less than the last digit of an answer. */
    private static final double EXACT = 1e-6;

    private final ChipRequest request;
    private final Design design;
    private final PocketRoom room;
    private final List<Segment> segments;
    private final double length;
    private final double depth;

    private ChipCalculator(ChipRequest request, Design design, PocketRoom room, List<Segment> segments) {
        this.request = request;
        this.design = design;
        this.room = room;
        this.segments = segments;
        this.length = design.unit().toMillimetres(request.length());
        this.depth =
                request.depth() == null ? design.thickness() : design.unit().toMillimetres(request.depth());
    }

    /**
     * What the chips of a panel do.
     *
     * @param request the chips, filled in
     * @param room the room for a plug
     * @param segments the panel's segments in their places
     * @param bases directions of their bases
     * @param stated the inlay that is stated, or null
     * @throws ImpossibleDesignException if the segments cannot be chipped so
     */
    static ChipPlan plan(
            ChipRequest request,
            Design design,
            PocketRoom room,
            List<Segment> segments,
            double[] bases,
            InlayShape stated) {
        ChipCalculator calculator = new ChipCalculator(request, design, room, segments);
        calculator.check();
        ChipHole hole = calculator.hole(stated);
        return new ChipPlan(
                hole,
                hole.vanishes() ? null : calculator.plug(hole, bases),
                room.panel().kind().segments().stream().map(calculator::recut).toList());
    }

    private void check() {
        double longest = Double.POSITIVE_INFINITY;
        for (Segment segment : segments) {
            Piece piece = segment.placed().piece();
            SegmentSurface surface = segment.surface();
            for (double slope : new double[] {-piece.left() / piece.base(), piece.right() / piece.base()}) {
                double along = onAxis() ? 1 / Math.hypot(1, slope) : 1;
                longest = Math.min(longest, surface.reach(slope) * along);
            }
        }
        if (length >= longest) {
            throw InlayCalculator.refuse(
                    "/inlays/chips/length",
                    "CHIP_TOO_LONG",
                    "A chip of " + design.say(length) + " does not end inside the segment: on the finished sphere the"
                            + " segment reaches " + design.sayAtMost(longest) + " from its tip.",
                    Rounding.plain(request.length(), SHOWN_DECIMALS),
                    "less than " + design.sayAtMost(longest));
        }
        if (depth > design.thickness() + EXACT) {
            throw InlayCalculator.refuse(
                    "/inlays/chips/depth",
                    "CHIP_TOO_DEEP",
                    "A chip of " + design.say(depth) + " is deeper than the panel, which is "
                            + design.say(design.thickness()) + " thick.",
                    Rounding.plain(request.depth(), SHOWN_DECIMALS),
                    "at most " + design.say(design.thickness()));
        }
        if (request.tips() != null && request.tips() > segments.size()) {
            throw InlayCalculator.refuse(
                    "/inlays/chips/tips",
                    "MORE_TIPS_THAN_SEGMENTS",
                    request.tips() + " tips cannot be chipped in a panel of " + segments.size() + " segments.",
                    String.valueOf(request.tips()),
                    "at most " + segments.size());
        }
    }

    private ChipHole hole(InlayShape stated) {
        Panel panel = room.panel();
        double radius = room.radius();
        double corner = segments.stream()
                .mapToDouble(segment -> corner(segment.placed().piece()))
                .max()
                .orElseThrow();
        double bottom = panel.faceDistance() - Math.min(depth, design.thickness());
        boolean vanishes = room.top() - bottom < EXACT;
        double kept = vanishes ? 0 : Math.sqrt((radius - bottom) * (radius + bottom));
        double reach = Math.min(corner, kept);
        List<Double> areas = segments.stream()
                .map(segment -> vanishes ? 0.0 : area(segment, kept))
                .sorted(Comparator.reverseOrder())
                .toList();
        int tips = request.tips() == null ? segments.size() : request.tips();
        return new ChipHole(
                tips,
                2 * corner,
                panel.faceDistance() - room.top(),
                vanishes,
                2 * reach,
                2 * VisibleWidths.arc(segments.get(0).surface(), reach),
                Math.atan2(reach, room.height(reach)),
                areas.get(0),
                areas.stream().limit(tips).mapToDouble(Double::doubleValue).sum(),
                stated == null ? null : reach <= stated.innerRadius() + EXACT);
    }

    private boolean onAxis() {
        return request.measured() == ChipMeasure.ALONG_AXIS;
    }

    /** The farthest corner of a chip from the tip. */
    private double corner(Piece piece) {
        double longer = Math.max(piece.left(), piece.right()) / piece.base();
        return onAxis() ? length * Math.hypot(1, longer) : length;
    }

    /** The line along which the wood breaks off is square to the tip axis, or to the middle between both legs. */
    private double area(Segment segment, double kept) {
        Piece piece = segment.placed().piece();
        double left = Math.atan2(piece.left(), piece.base());
        double right = Math.atan2(piece.right(), piece.base());
        BandLine line = onAxis()
                ? BandLine.of(length, 0)
                : BandLine.of(length * Math.cos((left + right) / 2), (right - left) / 2);
        return corner(piece) <= kept
                ? segment.surface().below(line).visible()
                : segment.surface().within(kept, line).visible();
    }

    private Plug plug(ChipHole hole, double[] bases) {
        double step = design.unit().toMillimetres(request.plugStep());
        double diameter = step * Math.max(1, Math.ceil((hole.diameter() - EXACT) / step));
        Double largest = room.any() ? room.largest(new InlayShape(0, 0), bases).diameter() : null;
        boolean fits = largest != null && diameter <= largest + EXACT;
        double pocket = room.depth(diameter / 2);
        double floor = Math.max(0, design.thickness() - pocket);
        return new Plug(hole.diameter(), diameter, pocket, floor, largest, fits);
    }

    /**
     * The first leg stays. The new tip lies on it where the chip ends, so that the segment was larger in the ratio of
     * their distances from the base.
     */
    private Recut recut(SegmentKind kind) {
        double base = kind.baseDistance() * design.edge();
        double left = kind.baseLeft() * design.edge();
        double right = kind.baseRight() * design.edge();
        double wider = length * (onAxis() ? 1 : base / Math.hypot(base, right));
        double further = (left + right) * wider / base;
        return new Recut(
                kind.segment(), wider, further, further * base / Math.hypot(base, left), left + right + further);
    }
}
