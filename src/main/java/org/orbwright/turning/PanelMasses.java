package org.orbwright.turning;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.band.BandStack;
import org.orbwright.band.BandStack.Layer;
import org.orbwright.band.SegmentMoment;
import org.orbwright.band.SegmentVolume;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.segment.WholeWall;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;
import org.orbwright.turning.BalanceCalculator.PanelWood;
import org.orbwright.turning.BalanceCalculator.Weighed;

/** Weighs panels where they lie in the solid. */
final class PanelMasses {
    private static final double KILOGRAMS = 1e-9;

    private final Design design;
    private final boolean whole;
    private final Map<List<Object>, Layers> layers = new HashMap<>();

    PanelMasses(Design design) {
        this.design = design;
        this.whole = WholeWall.of(design);
    }

    /** Volume and first moment of one band of a segment, in the segment's frame. */
    private record Wood(String species, double volume, Vector3D moment) {}

    /** The bands of a segment in the solid and in the sphere. */
    private record Layers(List<Wood> inSolid, List<Wood> inSphere) {}

    /** Whether there is a whole sphere. */
    boolean whole() {
        return whole;
    }

    /**
     * Weighs a panel.
     *
     * @param face its face
     * @param set the set of its segments
     * @param density density of a wood, in kilograms per cubic metre
     */
    PanelWood of(Face face, BandSet set, ToDoubleFunction<String> density) {
        Weighed inSolid = new Weighed(0, Vector3D.ZERO);
        Weighed inSphere = whole ? inSolid : null;
        for (int place = 0; place < face.segments().size(); place++) {
            Layers wood = layers(face, place, set);
            Frame frame = Frame.of(design.solid(), face, place);
            inSolid = inSolid.plus(weigh(wood.inSolid, frame, density));
            inSphere = whole ? inSphere.plus(weigh(wood.inSphere, frame, density)) : null;
        }
        return new PanelWood(inSolid, inSphere);
    }

    private static Weighed weigh(List<Wood> woods, Frame frame, ToDoubleFunction<String> density) {
        Weighed sum = new Weighed(0, Vector3D.ZERO);
        for (Wood wood : woods) {
            double kilograms = density.applyAsDouble(wood.species) * KILOGRAMS;
            sum = sum.plus(new Weighed(
                    kilograms * wood.volume, frame.place(wood.moment).multiply(kilograms)));
        }
        return sum;
    }

    private Layers layers(Face face, int place, BandSet wanted) {
        Panel panel = design.panelAt(face.kind(), place);
        Piece piece = panel.pieceOf(face.segments().get(place), place);
        BandSet set = panel.lamination().used(wanted);
        return layers.computeIfAbsent(List.of(panel, piece, set), key -> layers(panel, piece, set));
    }

    private Layers layers(Panel panel, Piece piece, BandSet set) {
        double thickness = design.thickness();
        double radius = design.sphereRadius();
        BandStack stack = BandStack.of(panel.lamination(), piece, set);
        List<Wood> inSolid = woods(
                stack, SegmentVolume.ofSolid(panel, piece, thickness), SegmentMoment.ofSolid(panel, piece, thickness));
        List<Wood> inSphere = whole
                ? woods(
                        stack,
                        SegmentVolume.ofSphere(panel, piece, thickness, radius),
                        SegmentMoment.ofSphere(panel, piece, thickness, radius))
                : List.of();
        return new Layers(inSolid, inSphere);
    }

    private static List<Wood> woods(BandStack stack, SegmentVolume volume, SegmentMoment moment) {
        double[] below = {volume.whole()};
        return stack.layers().stream()
                .map(layer -> {
                    double outer = below[0];
                    below[0] = layer.innermost() ? 0 : volume.below(layer.inner());
                    return wood(layer, Math.max(0, outer - below[0]), moment);
                })
                .toList();
    }

    private static Wood wood(Layer layer, double volume, SegmentMoment moment) {
        return new Wood(layer.band().species(), volume, moment.of(layer));
    }

    /**
     * How a segment lies in the solid.
     *
     * @param across from the panel's centre square to the base
     * @param along along the base, to the right seen from outside
     * @param out outwards
     */
    private record Frame(Vector3D across, Vector3D along, Vector3D out) {
        static Frame of(Solid solid, Face face, int place) {
            Vector3D out = solid.normal(face);
            Vector3D from = solid.corner(face, place);
            Vector3D to = solid.corner(face, (place + 1) % face.vertices().size());
            Vector3D along = to.subtract(from).normalize();
            return new Frame(along.cross(out), along, out);
        }

        Vector3D place(Vector3D inSegment) {
            return across.multiply(inSegment.getX())
                    .add(along.multiply(inSegment.getY()))
                    .add(out.multiply(inSegment.getZ()));
        }
    }
}
