package org.orbwright.segment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.band.BandStack;
import org.orbwright.band.BandStack.Layer;
import org.orbwright.band.SegmentVolume;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.SphereKind;
import org.orbwright.segment.Yield.SpeciesInSphere;
import org.orbwright.segment.Yield.SphereYield;
import org.orbwright.solid.Solid;
import org.orbwright.wood.Woods;

/** The wood in the glued-up solid and in the finished sphere, by species. */
final class FinishedWood {
    /** Whether the wall is whole; there is no finished sphere to weigh where it breaks through. */
    private final boolean whole;

    private final Solid solid;
    private final Woods woods;
    private final List<Body> bodies = new ArrayList<>();

    FinishedWood(Design design) {
        this.whole = WholeWall.of(design);
        this.solid = design.solid();
        this.woods = design.woods();
        for (Panel panel : design.panels()) {
            for (Piece piece : panel.pieces()) {
                SegmentVolume solid = SegmentVolume.ofSolid(panel, piece, design.thickness());
                SegmentVolume sphere =
                        whole ? SegmentVolume.ofSphere(panel, piece, design.thickness(), design.sphereRadius()) : solid;
                bodies.add(new Body(panel, piece, solid, sphere));
            }
        }
    }

    /**
     * One piece as wood.
     *
     * @param panel its panel
     * @param solid its volume in the glued-up solid
     * @param sphere its volume in the finished sphere, or in the solid where there is no whole sphere
     */
    private record Body(Panel panel, Piece piece, SegmentVolume solid, SegmentVolume sphere) {}

    SphereYield sphere(SphereKind kind) {
        Map<String, Volumes> volumes = new LinkedHashMap<>();
        for (Body body : bodies) {
            int perPanel = body.piece.perSphere() / body.panel.kind().count();
            for (BandSet set : BandSet.values()) {
                int panels = kind.panelsOf(solid, body.panel.face(), set);
                if (panels > 0) {
                    add(volumes, body, body.panel.lamination().used(set), panels * perPanel);
                }
            }
        }
        List<SpeciesInSphere> species = new ArrayList<>();
        Double volume = whole ? 0.0 : null;
        Double mass = whole ? 0.0 : null;
        for (Map.Entry<String, Volumes> entry : volumes.entrySet()) {
            SpeciesInSphere wood = entry.getValue().of(entry.getKey(), woods, whole);
            species.add(wood);
            volume = Sums.add(volume, wood.sphereVolume());
            mass = Sums.add(mass, wood.sphereMass());
        }
        return new SphereYield(kind.set(), kind.inverted(), kind.count(), volume, mass, species);
    }

    private static void add(Map<String, Volumes> volumes, Body body, BandSet set, int count) {
        SegmentVolume solid = body.solid;
        SegmentVolume sphere = body.sphere;
        double solidBelow = solid.whole();
        double sphereBelow = sphere.whole();
        for (Layer layer :
                BandStack.of(body.panel.lamination(), body.piece, set).layers()) {
            double solidInner = layer.innermost() ? 0 : solid.below(layer.inner());
            double sphereInner = layer.innermost() ? 0 : sphere.below(layer.inner());
            volumes.computeIfAbsent(layer.band().species(), name -> new Volumes())
                    .add(count * (solidBelow - solidInner), count * (sphereBelow - sphereInner));
            solidBelow = solidInner;
            sphereBelow = sphereInner;
        }
    }

    /** Volumes of one species while they are added up. */
    private static final class Volumes {
        private double solid;
        private double sphere;

        void add(double inSolid, double inSphere) {
            solid += Math.max(0, inSolid);
            sphere += Math.max(0, inSphere);
        }

        SpeciesInSphere of(String species, Woods woods, boolean whole) {
            Double finished = whole ? Double.valueOf(sphere) : null;
            return new SpeciesInSphere(species, solid, finished, Sums.mass(woods, species, finished));
        }
    }
}
