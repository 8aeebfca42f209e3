package org.orbwright.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.solid.Solid;
import org.orbwright.wood.Woods;

/**
 * A design that can exist, checked against its solid; lengths in millimetres, angles in radians. A part that was left
 * out is not a number here, and asking for it throws: whoever can do without asks {@link #has} first.
 *
 * @param request the request, with everything filled in that was left out
 * @param solid the solid, at unit edge
 * @param edge length of the solid's shortest edge, at the joint distance
 * @param thickness thickness of the panels
 * @param land height of the land
 * @param woods the woods that the names in it mean
 * @param panels one for each lamination, in the order of the solid's face kinds; without bands where none are known
 * @param spheres the spheres that are made, those that are alike together
 * @param kerf width of the saw cut
 * @param endTrim length cut off each end of a blank
 * @param blankLength length of a blank
 * @param sphereRadius radius of the finished sphere
 * @param turningAllowance wood to be turned away at the lowest face
 * @param minimumWall thinnest acceptable wall
 */
public record Design(
        DesignRequest request,
        Solid solid,
        double edge,
        double thickness,
        double land,
        Woods woods,
        List<Panel> panels,
        List<SphereKind> spheres,
        double kerf,
        double endTrim,
        double blankLength,
        double sphereRadius,
        double turningAllowance,
        double minimumWall) {

    public Design {
        panels = List.copyOf(panels);
        spheres = List.copyOf(spheres);
    }

    /**
     * Checks a request against its solid and brings it to millimetres and radians.
     *
     * @param request a request that keeps its Bean Validation constraints
     * @throws ImpossibleDesignException if it cannot exist, with every rule that it breaks
     */
    public static Design of(DesignRequest request) {
        return new DesignBuilder(request).build();
    }

    /** Whether a part was stated. */
    public boolean has(DesignPart part) {
        return switch (part) {
            case THICKNESS -> !Double.isNaN(thickness);
            case LAMINATIONS -> request.laminations() != null;
            case KERF -> !Double.isNaN(kerf);
            case BLANK_LENGTH -> !Double.isNaN(blankLength);
        };
    }

    /**
     * Makes sure of parts that something depends on.
     *
     * @param what what depends on them, as the subject of a sentence: "the yield depends"
     * @throws ImpossibleDesignException if any of them was left out, with all that were
     */
    public void require(String what, DesignPart... parts) {
        List<Violation> missing = missing(what, parts);
        if (!missing.isEmpty()) {
            throw new ImpossibleDesignException(missing);
        }
    }

    /** The parts that were left out of those that something depends on; see {@link #require}. */
    public List<Violation> missing(String what, DesignPart... parts) {
        return Stream.of(parts)
                .filter(part -> !has(part))
                .map(part -> part.missing(what))
                .toList();
    }

    /** Thickness of the panels. */
    @Override
    public double thickness() {
        return given(thickness, DesignPart.THICKNESS);
    }

    /** Width of the saw cut. */
    @Override
    public double kerf() {
        return given(kerf, DesignPart.KERF);
    }

    /** Length of a blank. */
    @Override
    public double blankLength() {
        return given(blankLength, DesignPart.BLANK_LENGTH);
    }

    private double given(double length, DesignPart part) {
        require("this answer depends", part);
        return length;
    }

    /** The same design with another sphere, in millimetres, whatever the request says. */
    public Design withSphereRadius(double radius) {
        return new Design(
                request,
                solid,
                edge,
                thickness,
                land,
                woods,
                panels,
                spheres,
                kerf,
                endTrim,
                blankLength,
                radius,
                turningAllowance,
                minimumWall);
    }

    /** One panel for each face kind, for what does not depend on the lamination. */
    public List<Panel> facePanels() {
        List<Panel> distinct = new ArrayList<>();
        for (Panel panel : panels) {
            if (panel.places() != Places.EVEN) {
                distinct.add(panel);
            }
        }
        return distinct;
    }

    /**
     * The panel that a segment of a face belongs to.
     *
     * @param face name of the face kind
     * @param place place of the segment in the face's list, from 0
     */
    public Panel panelAt(String face, int place) {
        for (Panel panel : panels) {
            if (panel.face().equals(face) && panel.places().include(place)) {
                return panel;
            }
        }
        throw new IllegalArgumentException("The design has no face kind " + face);
    }

    /** The woods of the bands by their names as written, each with the JSON pointer to the first band of it. */
    public Map<String, String> woodFields() {
        Map<String, String> fields = new LinkedHashMap<>();
        for (Panel panel : panels) {
            List<Band> bands = panel.lamination().bands();
            for (int i = 0; i < bands.size(); i++) {
                fields.putIfAbsent(bands.get(i).species(), panel.lamination().pointer() + "/bands/" + i + "/species");
            }
        }
        return fields;
    }

    /** The unit of the request and its answers. */
    public LengthUnit unit() {
        return request.unit();
    }

    /** The first of the spheres that are made, or one whose panels are all of the set that is asked for. */
    public SphereKind sphere(BandSet asked) {
        return asked == null ? spheres.get(0) : SphereKind.of(asked, 1, solid);
    }

    /**
     * A sphere of each set.
     *
     * @throws ImpossibleDesignException where sawing gives one set, or where each sphere has panels of both
     */
    public List<SphereKind> sphereOfEachSet() {
        if (!hasTwoSets()) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/laminations",
                    "ONE_SET",
                    "Sawing gives one set of segments here, so there are no two spheres to compare.",
                    null,
                    "straight bands that differ when the blank is turned around")));
        }
        if (spheres.get(0).set() == SphereSet.MIXED) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/sets",
                    "SETS_MIXED",
                    "Each sphere of this design has panels of both sets, so there are no two spheres to compare.",
                    String.valueOf(request.sets()),
                    "TWINS, UPRIGHT or INVERTED")));
        }
        return Stream.of(BandSet.values())
                .map(set -> SphereKind.of(set, 1, solid))
                .toList();
    }

    /** The set that is asked for, or else the one that the first panel is made from. */
    public BandSet set(BandSet asked) {
        return asked == null ? spheres.get(0).panels().get(0) : asked;
    }

    /** Layers that a panel is glued up of. */
    public int layers() {
        return request.panel().layers();
    }

    /** Spare segments of each kind, in each set that is used. */
    public int spareSegments() {
        return request.spares().segments();
    }

    /** Spare strips of each band. */
    public int spareStrips() {
        return request.spares().strips();
    }

    /** The sets that panels of a face kind are made from, over all spheres. */
    public List<BandSet> setsMade(String face) {
        return Stream.of(BandSet.values())
                .filter(set -> panelsOf(face, set) > 0)
                .toList();
    }

    /** Whether sawing gives two sets of segments for any of the panels. */
    public boolean hasTwoSets() {
        return panels.stream().anyMatch(panel -> panel.lamination().sets() == 2);
    }

    /** The sets that the segments of a lamination are used from; the only one that there is where sawing gives one. */
    public List<BandSet> setsOf(Panel panel) {
        if (panel.lamination().sets() == 1) {
            return List.of(panel.lamination().used(BandSet.UPRIGHT));
        }
        return Stream.of(BandSet.values())
                .filter(set -> panelsOf(panel.face(), set) > 0)
                .toList();
    }

    /** How many panels of a face kind are made from a set, in all spheres together. */
    public int panelsOf(String face, BandSet set) {
        return spheres.stream()
                .mapToInt(kind -> kind.count() * kind.panelsOf(solid, face, set))
                .sum();
    }

    /** Number of spheres wanted. */
    public int copies() {
        return request.copies();
    }

    /** The smallest face distance. */
    public double smallestFaceDistance() {
        return solid.inradius() * edge + land;
    }

    /** Seam radius, the same for every edge of these solids. */
    public double seamRadius() {
        return solid.midradius() * edge;
    }

    /** Writes a length of which more is enough, rounded up, in the design's unit. */
    public String sayAtLeast(double millimetres) {
        return unit().sayAtLeast(millimetres);
    }

    /** Writes a length of which less is enough, rounded down, in the design's unit. */
    public String sayAtMost(double millimetres) {
        return unit().sayAtMost(millimetres);
    }

    /** Writes a length for a sentence, in the design's unit. */
    public String say(double millimetres) {
        return unit().say(millimetres);
    }
}
