package org.orbwright.body;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.band.BandStack;
import org.orbwright.band.BandStack.Layer;
import org.orbwright.band.FlatSegment;
import org.orbwright.band.SegmentVolume;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;

/** Volumes of woods in closed form, for the numbers beside a mesh. */
final class WoodVolumes {
    private final Design design;
    private final BodyKind kind;
    private final Map<Segment, SegmentVolume> known = new HashMap<>();

    private record Segment(Panel panel, Piece piece) {}

    WoodVolumes(Design design, BodyKind kind) {
        this.design = design;
        this.kind = kind;
    }

    /** The volume of each wood in some segments. */
    Map<String, Double> byWood(List<SegmentPlace> places) {
        Map<String, Double> volumes = new HashMap<>();
        for (SegmentPlace place : places) {
            Panel panel = place.panel();
            double below = whole(panel, place.piece());
            for (Layer layer :
                    BandStack.of(panel.lamination(), place.piece(), place.set()).layers()) {
                double belowInner = layer.innermost() ? 0 : below(panel, place.piece(), layer);
                volumes.merge(layer.band().species(), Math.max(0, below - belowInner), Double::sum);
                below = belowInner;
            }
        }
        return volumes;
    }

    /** The volume of some segments, whatever their wood. */
    double of(List<SegmentPlace> places) {
        double volume = 0;
        for (SegmentPlace place : places) {
            volume += whole(place.panel(), place.piece());
        }
        return volume;
    }

    private double whole(Panel panel, Piece piece) {
        return kind == BodyKind.SEGMENT
                ? design.thickness() * piece.area()
                : volume(panel, piece).whole();
    }

    private double below(Panel panel, Piece piece, Layer layer) {
        return kind == BodyKind.SEGMENT
                ? design.thickness() * FlatSegment.of(piece).areaBelow(layer.inner())
                : volume(panel, piece).below(layer.inner());
    }

    private SegmentVolume volume(Panel panel, Piece piece) {
        return known.computeIfAbsent(new Segment(panel, piece), key -> switch (kind) {
            case SPHERE -> SegmentVolume.ofSphere(panel, piece, design.thickness(), design.sphereRadius());
            case SOLID -> SegmentVolume.ofSolid(panel, piece, panel.faceDistance());
            default -> SegmentVolume.ofSolid(panel, piece, design.thickness());
        });
    }
}
