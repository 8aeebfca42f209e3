package org.orbwright.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.SphereKind;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;
import org.orbwright.turning.Balance.HeldBody;
import org.orbwright.turning.Balance.PanelMass;
import org.orbwright.turning.BalanceRequest.OddPanelRequest;

/** Balances the work on the lathe: adds up the masses of all panels and where they lie. */
public final class BalanceCalculator {
    /** Standard acceleration of free fall in metres per second squared (3rd General Conference on Weights, 1901). */
    private static final double FREE_FALL = 9.80665;
    /** A centre of mass that is nearer to the axis than this, in millimetres, is on it; sums are exact to 1e-10. */
    private static final double ON_AXIS = 1e-7;

    private final BalanceRequest request;
    /** Turns a minute, or null for no forces. */
    private final Double turns;

    private final SphereKind sphere;
    private final Solid solid;
    private final Vector3D axis;
    private final Densities densities;
    private final Map<Integer, OddPanelRequest> odd;
    private final PanelMasses masses;

    private BalanceCalculator(BalanceRequest request, TurningRequest turning, Design design) {
        this.request = request;
        this.turns = turning.speed() == null ? null : turning.speed().turns();
        this.sphere = design.spheres().get(0);
        this.solid = design.solid();
        this.axis = LatheAxis.direction(turning.axis(), solid);
        this.odd = OddPanels.of(request, design);
        this.densities = new Densities(request, design);
        this.masses = new PanelMasses(design);
    }

    /**
     * Balances a sphere of a design, of twins an upright one.
     *
     * @param request a section that keeps its Bean Validation constraints
     * @param turning the axis, and the speed that forces are stated at
     * @throws ImpossibleDesignException if it speaks of a panel, a wood or an axis that the design has not, or a wood's
     *     density is not known
     */
    public static Balance calculate(BalanceRequest request, TurningRequest turning, Design design) {
        design.require("the balance depends", DesignPart.THICKNESS, DesignPart.LAMINATIONS);
        return new BalanceCalculator(request.filled(), turning.filled(design.unit()), design).calculate();
    }

    /** The woods of the work by their names as written, each with the JSON pointer to the first field with it. */
    public static Map<String, String> woodFields(BalanceRequest request, Design design) {
        return Densities.fields(request, design);
    }

    /**
     * The wood of one panel, in the frame of the solid.
     *
     * @param mass in kilograms
     * @param moment mass times place, in kilogram-millimetres
     */
    record Weighed(double mass, Vector3D moment) {
        Weighed plus(Weighed other) {
            return new Weighed(mass + other.mass, moment.add(other.moment));
        }
    }

    /**
     * The wood of one panel.
     *
     * @param inSolid in the glued-up solid
     * @param inSphere in the finished sphere; null where it breaks through
     */
    record PanelWood(Weighed inSolid, Weighed inSphere) {}

    private Balance calculate() {
        List<PanelMass> panels = new ArrayList<>();
        Weighed inSolid = new Weighed(0, Vector3D.ZERO);
        Weighed inSphere = masses.whole() ? inSolid : null;
        for (int f = 0; f < solid.faces().size(); f++) {
            Face face = solid.faces().get(f);
            OddPanelRequest other = odd.get(f);
            BandSet set = sphere.panels().get(f);
            PanelWood wood = masses.of(face, set, species -> densities.of(species, other));
            panels.add(new PanelMass(
                    f,
                    face.kind(),
                    set,
                    wood.inSolid.mass,
                    wood.inSphere == null ? null : Double.valueOf(wood.inSphere.mass)));
            inSolid = inSolid.plus(wood.inSolid);
            inSphere = inSphere == null ? null : inSphere.plus(wood.inSphere);
        }
        return new Balance(densities.taken(), panels, held(inSolid), inSphere == null ? null : held(inSphere));
    }

    private HeldBody held(Weighed body) {
        Vector3D centre = body.moment.multiply(1 / body.mass);
        double along = axis.dot(centre);
        Vector3D off = centre.subtract(axis.multiply(along));
        boolean balanced = off.norm() < ON_AXIS;
        double offAxis = balanced ? 0 : off.norm();
        double turning = body.mass + request.mounting();
        double eccentricity = body.mass * offAxis / turning;
        Integer heavy = balanced ? null : nearest(off);
        Double angular = turns == null ? null : Double.valueOf(turns * 2 * Math.PI / 60);
        // Kilograms times metres per second squared; the eccentricity is in millimetres.
        Double force = angular == null ? null : Double.valueOf(turning * eccentricity / 1000 * angular * angular);
        return new HeldBody(
                body.mass,
                turning,
                offAxis,
                Math.abs(along) < ON_AXIS ? 0 : along,
                heavy,
                heavy == null ? null : Double.valueOf(angle(across(heavy), off)),
                body.mass * offAxis,
                eccentricity,
                angular == null ? null : Double.valueOf(eccentricity * angular),
                force,
                force == null ? null : Double.valueOf(force / (turning * FREE_FALL)));
    }

    /** The panel whose middle lies nearest to a direction, seen along the axis. */
    private int nearest(Vector3D direction) {
        int nearest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int f = 0; f < solid.faces().size(); f++) {
            if (across(f).norm() > ON_AXIS) {
                double turn = Math.abs(angle(across(f), direction));
                // Of panels that are equally near the first is named; their directions agree to the last bits only.
                if (turn < least - ON_AXIS) {
                    least = turn;
                    nearest = f;
                }
            }
        }
        return nearest;
    }

    /** Direction of a panel's middle, seen along the axis. */
    private Vector3D across(int panel) {
        Vector3D normal = solid.normal(solid.faces().get(panel));
        return normal.subtract(axis.multiply(axis.dot(normal)));
    }

    /** From one direction across the axis to another, counter-clockwise seen against the axis from its named end. */
    private double angle(Vector3D from, Vector3D to) {
        return Math.atan2(axis.dot(from.cross(to)), from.dot(to));
    }
}
