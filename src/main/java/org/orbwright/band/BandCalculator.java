package org.orbwright.band;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.band.BandStack.Layer;
import org.orbwright.band.BandSurvival.BandView;
import org.orbwright.band.BandSurvival.FaceBands;
import org.orbwright.band.BandSurvival.SegmentBands;
import org.orbwright.band.BandSurvival.SpeciesShare;
import org.orbwright.band.BandSurvival.SphereShares;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.SphereKind;
import org.orbwright.design.SphereSet;

/** Says what is left of every band of a design. Areas are exact to rounding, see {@link SegmentSurface}. */
public final class BandCalculator {
    private final Design design;
    private final int stations;
    /** The surfaces of the pieces, in the order of panels and pieces. */
    private final List<SegmentSurface> surfaces = new ArrayList<>();

    private final double sphereArea;

    private BandCalculator(Design design, int stations) {
        this.design = design;
        this.stations = stations;
        double total = 0;
        for (Panel panel : design.panels()) {
            for (Piece piece : panel.pieces()) {
                SegmentSurface surface = SegmentSurface.of(panel, piece, design.sphereRadius());
                surfaces.add(surface);
                total += piece.perSphere() * surface.whole().visible();
            }
        }
        this.sphereArea = total;
    }

    /**
     * The survival of every band.
     *
     * @param stations stations of a profile from the edge middle to a corner, at least 2
     */
    public static BandSurvival calculate(Design design, int stations) {
        design.require("what is left of the bands depends", DesignPart.LAMINATIONS);
        BandCalculator calculator = new BandCalculator(design, stations);
        List<FaceBands> faces = new ArrayList<>();
        int next = 0;
        for (Panel panel : design.panels()) {
            List<SegmentBands> segments = new ArrayList<>();
            for (Piece piece : panel.pieces()) {
                segments.add(calculator.segmentBands(panel, piece, calculator.surfaces.get(next++)));
            }
            faces.add(new FaceBands(
                    panel.face(),
                    panel.places(),
                    panel.lamination().bandAngle(),
                    panel.lamination().sets(),
                    segments));
        }
        return new BandSurvival(faces, calculator.spheres(faces));
    }

    private SegmentBands segmentBands(Panel panel, Piece piece, SegmentSurface surface) {
        VisibleWidths widths = new VisibleWidths(surface, piece, panel.lamination(), stations);
        boolean oneWay = panel.lamination().palindromic();
        return new SegmentBands(
                piece.segment(),
                piece.mirrored(),
                piece.turned(),
                piece.perSphere(),
                piece.area(),
                surface.whole().visible(),
                views(panel, piece, surface, widths, BandSet.UPRIGHT),
                oneWay ? null : views(panel, piece, surface, widths, BandSet.INVERTED));
    }

    private List<BandView> views(Panel panel, Piece piece, SegmentSurface surface, VisibleWidths widths, BandSet set) {
        FlatSegment flat = new FlatSegment(piece.base(), piece.left(), piece.right());
        List<BandView> views = new ArrayList<>();
        Area below = surface.whole();
        double flatBelow = flat.area();
        for (Layer layer : BandStack.of(panel.lamination(), piece, set).layers()) {
            Area belowInner = layer.innermost() ? Area.NONE : surface.below(layer.inner());
            double flatBelowInner = layer.innermost() ? 0 : flat.areaBelow(layer.inner());
            views.add(view(piece, layer, below.minus(belowInner), flatBelow - flatBelowInner, widths));
            below = belowInner;
            flatBelow = flatBelowInner;
        }
        return views;
    }

    private BandView view(Piece piece, Layer layer, Area area, double flatArea, VisibleWidths widths) {
        double flat = Math.max(0, flatArea);
        double visible = Math.max(0, area.visible());
        VisibleWidths.Widths width = widths.of(layer);
        double survival = flat > 0 ? Math.max(0, Math.min(1, area.plan() / flat)) : 0;
        return new BandView(
                layer.number(),
                layer.band().species(),
                layer.band().width(),
                width.places(),
                flat,
                visible,
                survival,
                visible * piece.perSphere() / sphereArea,
                width.profile());
    }

    private List<SphereShares> spheres(List<FaceBands> faces) {
        List<SphereKind> kinds = new ArrayList<>();
        design.spheres().stream().filter(kind -> kind.set() == SphereSet.MIXED).forEach(kinds::add);
        kinds.add(design.sphere(BandSet.UPRIGHT));
        if (design.hasTwoSets()) {
            kinds.add(design.sphere(BandSet.INVERTED));
        }
        return kinds.stream().map(kind -> shares(faces, kind)).toList();
    }

    private SphereShares shares(List<FaceBands> faces, SphereKind kind) {
        Map<String, Double> areas = new LinkedHashMap<>();
        for (int i = 0; i < faces.size(); i++) {
            Panel panel = design.panels().get(i);
            for (BandSet set : BandSet.values()) {
                int panels = kind.panelsOf(design.solid(), panel.face(), set);
                if (panels == 0) {
                    continue;
                }
                boolean inverted = panel.lamination().used(set) == BandSet.INVERTED;
                double part = (double) panels / panel.kind().count();
                for (SegmentBands segment : faces.get(i).segments()) {
                    for (BandView view : inverted ? segment.inverted() : segment.upright()) {
                        areas.merge(view.species(), view.sphereArea() * segment.perSphere() * part, Double::sum);
                    }
                }
            }
        }
        List<SpeciesShare> shares = new ArrayList<>();
        areas.forEach((species, area) -> shares.add(new SpeciesShare(species, area, area / sphereArea)));
        return new SphereShares(kind.set(), shares);
    }
}
