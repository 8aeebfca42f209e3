package org.orbwright.turning;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Violation;
import org.orbwright.quantity.Numbering;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.Holding.ReachEnd;
import org.orbwright.turning.Holding.Seat;
import org.orbwright.turning.TurningRequest.DiscsRequest;
import org.orbwright.turning.TurningRequest.ScrewsRequest;

/** Holds the work between discs; lengths in millimetres. */
final class HoldingCalculator {
    /** Directions of a solid that are the same agree to 1e-14, others differ by more than 1e-3. */
    private static final double SAME_DIRECTION = 1e-9;

    private final Design design;
    private final Solid solid;
    private final double radius;
    private final Vector3D axis;
    private final DiscsRequest discs;
    private final double clearance;
    private final double swing;

    private HoldingCalculator(TurningRequest request, Design design, double radius) {
        this.design = design;
        this.solid = design.solid();
        this.radius = radius;
        this.axis = LatheAxis.direction(request.axis(), solid);
        this.discs = request.discs();
        this.clearance = design.unit().toMillimetres(discs.clearance());
        this.swing = swing();
    }

    /**
     * The discs and what the tool reaches.
     *
     * @param radius of the sphere as it leaves the tool
     * @throws ImpossibleDesignException if the solid has no such axis, a ring passes over it, or holes and screws do
     *     not fit the discs
     */
    static Holding discs(TurningRequest request, Design design, double radius) {
        return new HoldingCalculator(request, design, radius).holding(request.axis());
    }

    /** Diameter of the solid about the axis. */
    private double swing() {
        double widest = 0;
        for (Face face : solid.faces()) {
            for (Vector3D corner : outline(face)) {
                widest = Math.max(widest, 2 * corner.cross(axis).norm());
            }
        }
        return widest;
    }

    /** The corners of a panel's outer face. */
    private List<Vector3D> outline(Face face) {
        Vector3D land = solid.normal(face).multiply(design.land());
        List<Vector3D> corners = new ArrayList<>();
        for (int place = 0; place < face.vertices().size(); place++) {
            corners.add(solid.corner(face, place).multiply(design.edge()).add(land));
        }
        return corners;
    }

    private Holding holding(AxisRequest asked) {
        Seat head = seat(axis);
        Seat tail = seat(axis.negate());
        check(Math.min(head.disc(), tail.disc()));
        double whole = 4 * Math.PI * radius * radius;
        double reached = whole - head.capArea() - tail.capArea();
        return new Holding(
                asked.through(), Numbering.place(asked.number()), swing, head, tail, reached, reached / whole);
    }

    private Seat seat(Vector3D end) {
        Through at = null;
        Integer number = null;
        for (Through through : Through.values()) {
            List<Vector3D> directions = LatheAxis.directions(through, solid);
            for (int i = 0; i < directions.size() && at == null; i++) {
                if (directions.get(i).distance(end) < SAME_DIRECTION) {
                    at = through;
                    number = i;
                }
            }
        }
        Double largest = at == Through.FACE ? Double.valueOf(2 * panel(number).baseDistance()) : null;
        double diameter = discs.diameter() != null
                ? design.unit().toMillimetres(discs.diameter())
                : largest != null ? largest : largestRing(end);
        double seat =
                largest == null ? ringSeat(end, diameter / 2) : panel(number).faceDistance();
        if (seat == Double.NEGATIVE_INFINITY) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/turning/discs/diameter",
                    "RING_PASSES_OVER",
                    "A ring of " + design.say(diameter) + " passes over the solid, which is " + design.say(swing)
                            + " wide about this axis.",
                    String.valueOf(discs.diameter()),
                    "a diameter below " + design.sayAtMost(swing))));
        }
        double neck = discs.neck() == null ? diameter : design.unit().toMillimetres(discs.neck());
        ScrewsRequest screws = discs.screws();
        double hole = discs.centreHole() == null ? 0 : design.unit().toMillimetres(discs.centreHole());
        double byDisc = Math.max(-1, Math.min(1, (seat - clearance) / radius));
        double byNeck = neck / 2 >= radius ? 0 : Math.sqrt(1 - neck / 2 / radius * (neck / 2 / radius));
        double sine = Math.max(0, Math.min(byDisc, byNeck));
        ReachEnd ends = sine >= 1 ? ReachEnd.NOTHING : byDisc <= byNeck ? ReachEnd.DISC : ReachEnd.NECK;
        return new Seat(
                at,
                number,
                largest,
                diameter,
                seat,
                largest == null ? null : Double.valueOf(glued(Math.min(diameter, largest), hole)),
                screws == null
                        ? null
                        : Double.valueOf(
                                Math.max(clearance, design.unit().toMillimetres(screws.length() - screws.bite()))),
                screws == null ? null : Double.valueOf(holeInSphere(screws, end)),
                Math.asin(sine),
                ends,
                2 * radius * Math.sqrt(1 - sine * sine),
                2 * Math.PI * radius * radius * (1 - sine));
    }

    private Panel panel(int face) {
        return design.panelAt(solid.faces().get(face).kind(), 0);
    }

    private static double glued(double diameter, double hole) {
        return Math.max(0, Math.PI / 4 * (diameter - hole) * (diameter + hole));
    }

    private void check(double narrowest) {
        List<Violation> broken = new ArrayList<>();
        if (discs.centreHole() != null && design.unit().toMillimetres(discs.centreHole()) >= narrowest) {
            broken.add(new Violation(
                    "/turning/discs/centreHole",
                    "HOLE_TOO_WIDE",
                    "A hole of " + length(discs.centreHole()) + " leaves nothing of a disc of " + design.say(narrowest)
                            + ".",
                    String.valueOf(discs.centreHole()),
                    "a diameter below " + design.sayAtMost(narrowest)));
        }
        ScrewsRequest screws = discs.screws();
        if (screws != null && design.unit().toMillimetres(screws.circle()) >= narrowest) {
            broken.add(new Violation(
                    "/turning/discs/screws/circle",
                    "SCREWS_BESIDE_DISC",
                    "Screws on a circle of " + length(screws.circle()) + " do not pass through a disc of "
                            + design.say(narrowest) + ".",
                    String.valueOf(screws.circle()),
                    "a diameter below " + design.sayAtMost(narrowest)));
        }
        if (screws != null && screws.bite() >= screws.length()) {
            broken.add(new Violation(
                    "/turning/discs/screws/bite",
                    "BITE_TOO_DEEP",
                    "Screws of " + length(screws.length()) + " that go " + length(screws.bite())
                            + " into the panel leave no disc below their heads.",
                    String.valueOf(screws.bite()),
                    "a depth below " + design.sayAtMost(design.unit().toMillimetres(screws.length()))));
        }
        if (!broken.isEmpty()) {
            throw new ImpossibleDesignException(broken);
        }
    }

    private String length(double stated) {
        return design.say(design.unit().toMillimetres(stated));
    }

    /** A screw's depth in the wood less the wood that is taken away above it, where that is least. */
    private double holeInSphere(ScrewsRequest screws, Vector3D end) {
        double finished = design.sphereRadius();
        double bite = design.unit().toMillimetres(screws.bite());
        double circle = design.unit().toMillimetres(screws.circle()) / 2;
        if (circle >= finished) {
            return 0;
        }
        double above = lowestSurface(end, circle) - Math.sqrt((finished - circle) * (finished + circle));
        return Math.min(bite, Math.max(0, bite - above));
    }

    /** Lowest height along the axis of the solid's surface on a circle about it. */
    private double lowestSurface(Vector3D end, double circle) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int f = 0; f < solid.faces().size(); f++) {
            Vector3D normal = solid.normal(solid.faces().get(f));
            double cos = normal.dot(end);
            if (cos > SAME_DIRECTION) {
                double sin = normal.cross(end).norm();
                lowest = Math.min(lowest, (panel(f).faceDistance() - circle * sin) / cos);
            }
        }
        return lowest;
    }

    /**
     * How far from the centre a ring about the axis comes to rest: on the highest wood that stands in its circle, which
     * is on a panel's rim, or in the middle of a panel that leans. A ring within the gap that lands leave at a corner
     * or an edge rests on the corners around it. Below all numbers where there is no wood.
     */
    private double ringSeat(Vector3D end, double ring) {
        double highest = Double.NEGATIVE_INFINITY;
        double nearest = Double.POSITIVE_INFINITY;
        double top = 0;
        for (Face face : solid.faces()) {
            List<Vector3D> corners = outline(face);
            Vector3D normal = solid.normal(face);
            double cos = normal.dot(end);
            Vector3D lean = normal.subtract(end.multiply(cos));
            Vector3D middle = null;
            if (cos > SAME_DIRECTION && lean.norm() > SAME_DIRECTION) {
                double height = (corners.get(0).dot(normal) + ring * lean.norm()) / cos;
                middle = end.multiply(height).subtract(lean.normalize().multiply(ring));
            }
            for (int i = 0; i < corners.size(); i++) {
                Vector3D from = corners.get(i);
                Vector3D to = corners.get((i + 1) % corners.size());
                highest = Math.max(highest, highestCrossing(from, to, end, ring));
                nearest = Math.min(nearest, from.cross(end).norm());
                top = Math.max(top, from.dot(end));
                boolean inside = middle != null
                        && to.subtract(from).cross(middle.subtract(from)).dot(normal) >= 0;
                middle = inside ? middle : null;
            }
            highest = middle == null ? highest : Math.max(highest, middle.dot(end));
        }
        return highest == Double.NEGATIVE_INFINITY && ring <= nearest ? top : highest;
    }

    /** Highest place along the axis where a side of a panel is as far from the axis as a ring. */
    private static double highestCrossing(Vector3D from, Vector3D to, Vector3D end, double ring) {
        Vector3D side = to.subtract(from);
        Vector3D out = from.subtract(end.multiply(from.dot(end)));
        Vector3D along = side.subtract(end.multiply(side.dot(end)));
        double square = along.normSq();
        double half = out.dot(along);
        double root = half * half - square * (out.normSq() - ring * ring);
        double highest = Double.NEGATIVE_INFINITY;
        if (square > 0 && root >= 0) {
            for (double sign : new double[] {-1, 1}) {
                double share = (-half + sign * Math.sqrt(root)) / square;
                if (share >= 0 && share <= 1) {
                    highest = Math.max(highest, from.dot(end) + share * side.dot(end));
                }
            }
        }
        return highest;
    }

    /** Diameter of the largest ring on which the wood stands clear of the sphere by the tool's room all around. */
    private double largestRing(Vector3D end) {
        double least = Double.POSITIVE_INFINITY;
        for (int f = 0; f < solid.faces().size(); f++) {
            Vector3D normal = solid.normal(solid.faces().get(f));
            double cos = normal.dot(end);
            double sin = normal.cross(end).norm();
            if (cos > SAME_DIRECTION && sin > SAME_DIRECTION) {
                least = Math.min(least, (panel(f).faceDistance() - (radius + clearance) * cos) / sin);
            }
        }
        return 2 * Math.max(0, least);
    }
}
