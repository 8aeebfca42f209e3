package org.orbwright.turning;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Violation;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.Holding.ReachEnd;
import org.orbwright.turning.Holding.Seat;
import org.orbwright.turning.TurningRequest.CupRequest;
import org.orbwright.turning.TurningRequest.DiscsRequest;
import org.orbwright.turning.TurningRequest.ScrewsRequest;

/** Holds the work between discs and the sphere between cups; lengths in millimetres. */
final class HoldingCalculator {
    /** Room for a tool beside what holds the work. Common practice, no source. */
    private static final double USUAL_CLEARANCE = 5;
    /** Directions of a solid that are the same agree to 1e-14, others differ by more than 1e-3. */
    private static final double SAME_DIRECTION = 1e-9;
    /** Latitude up to which belts about two axes, square to each other, reach all of a sphere. */
    private static final double NEEDED_FOR_TWO = Math.PI / 4;
    /** The same for three axes. */
    private static final double NEEDED_FOR_THREE = Math.asin(1 / Math.sqrt(3));

    private final Design design;
    private final Solid solid;
    private final double radius;
    private final Vector3D axis;
    private final DiscsRequest discs;
    private final double clearance;

    private HoldingCalculator(TurningRequest request, Design design, double radius) {
        this.design = design;
        this.solid = design.solid();
        this.radius = radius;
        this.axis = LatheAxis.direction(request.axis(), solid);
        this.discs = request.discs() == null ? new DiscsRequest(null, null, null, null, null) : request.discs();
        this.clearance = room(discs, design);
    }

    /**
     * The discs and what the tool reaches.
     *
     * @param radius of the sphere as it leaves the tool
     */
    static Holding discs(TurningRequest request, Design design, double radius) {
        return new HoldingCalculator(request, design, radius).holding(request.axis());
    }

    /** Room that a tool needs beside the discs. */
    static double room(DiscsRequest discs, Design design) {
        return discs == null || discs.clearance() == null
                ? USUAL_CLEARANCE
                : design.unit().toMillimetres(discs.clearance());
    }

    private Holding holding(AxisRequest asked) {
        double swing = 0;
        for (Face face : solid.faces()) {
            Vector3D land = solid.normal(face).multiply(design.land());
            for (int place = 0; place < face.vertices().size(); place++) {
                Vector3D corner =
                        solid.corner(face, place).multiply(design.edge()).add(land);
                swing = Math.max(swing, 2 * corner.cross(axis).norm());
            }
        }
        Seat head = seat(axis);
        Seat tail = seat(axis.negate());
        double whole = 4 * Math.PI * radius * radius;
        double reached = whole - head.capArea() - tail.capArea();
        return new Holding(
                asked == null ? Through.FACE : asked.through(),
                asked == null || asked.number() == null ? 0 : asked.number(),
                swing,
                head,
                tail,
                reached,
                reached / whole);
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
        double seat = seatDistance(end, largest == null ? diameter / 2 : 0);
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
                screws == null ? null : Double.valueOf(holeInSphere(screws, seat)),
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

    /** A screw's depth less the wood that is turned away above it. */
    private double holeInSphere(ScrewsRequest screws, double seat) {
        double circle = design.unit().toMillimetres(screws.circle()) / 2;
        double above = circle >= radius ? seat : seat - Math.sqrt((radius - circle) * (radius + circle));
        return Math.max(0, design.unit().toMillimetres(screws.bite()) - above);
    }

    /**
     * How far from the centre a ring about the axis comes to rest: where the first face stops it that faces this end.
     */
    private double seatDistance(Vector3D end, double ring) {
        double distance = Double.POSITIVE_INFINITY;
        for (int f = 0; f < solid.faces().size(); f++) {
            Vector3D normal = solid.normal(solid.faces().get(f));
            double cos = normal.dot(end);
            if (cos > SAME_DIRECTION) {
                double sin = normal.cross(end).norm();
                distance = Math.min(distance, (panel(f).faceDistance() - ring * sin) / cos);
            }
        }
        return distance;
    }

    /** Diameter of the largest ring that rests clear of the sphere by the tool's room. */
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

    /**
     * The cups and what they leave free.
     *
     * @throws ImpossibleDesignException if the cup is as wide as the sphere
     */
    static CupHold cups(CupRequest cup, Design design) {
        double radius = design.sphereRadius();
        double rim = design.unit().toMillimetres(cup.rim()) / 2;
        if (rim >= radius) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/cup/rim",
                    "CUP_TOO_WIDE",
                    "A sphere of " + design.say(2 * radius) + " falls through a cup of " + design.say(2 * rim) + ".",
                    String.valueOf(cup.rim()),
                    "a diameter below " + design.sayAtMost(2 * radius))));
        }
        double clearance =
                cup.clearance() == null ? USUAL_CLEARANCE : design.unit().toMillimetres(cup.clearance());
        double distance = Math.sqrt((radius - rim) * (radius + rim));
        double sine = Math.max(0, (distance - clearance) / radius);
        double latitude = Math.asin(sine);
        double leftByTwo = leftByTwo(sine);
        double leftByThree = leftByThree(sine);
        return new CupHold(
                Math.asin(rim / radius),
                distance,
                radius - distance,
                rim * radius / distance,
                latitude,
                sine,
                latitude >= NEEDED_FOR_TWO
                        ? Integer.valueOf(2)
                        : latitude >= NEEDED_FOR_THREE ? Integer.valueOf(3) : null,
                latitude - NEEDED_FOR_TWO,
                latitude - NEEDED_FOR_THREE,
                2 * sine - 1 + leftByTwo,
                1 - 3 * (1 - sine) + 3 * leftByTwo - leftByThree,
                leftByTwo,
                leftByThree);
    }

    /**
     * Share of a sphere that lies beyond a latitude on both of two axes that are square to each other: four lunes, each
     * bounded by two circles. By Gauss and Bonnet a lune's area is 2 pi less the turns of its sides and at its corners.
     */
    static double leftByTwo(double sine) {
        return 2 * sine * sine >= 1
                ? 0
                : (2 * Math.PI - 2 * sine * (Math.PI - 2 * start(sine)) - 2 * corner(sine)) / Math.PI;
    }

    /** The same for three axes: eight triangles. */
    static double leftByThree(double sine) {
        return 3 * sine * sine >= 1
                ? 0
                : 2 * (2 * Math.PI - 3 * sine * (Math.PI / 2 - 2 * start(sine)) - 3 * corner(sine)) / Math.PI;
    }

    /** Where on the circle of one latitude the other latitude begins. */
    private static double start(double sine) {
        return Math.asin(sine / Math.sqrt(1 - sine * sine));
    }

    /** Turn from one circle to the other where they cross. */
    private static double corner(double sine) {
        return Math.acos(-sine * sine / (1 - sine * sine));
    }
}
