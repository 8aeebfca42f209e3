package org.orbwright.design;

import static java.util.Objects.requireNonNullElse;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.DesignRequest.PanelRequest;
import org.orbwright.design.DesignRequest.SphereRequest;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.quantity.Rounding;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.wood.Woods;

/** Checks a request against its solid, rule by rule, and builds the design. */
final class DesignBuilder {
    /**
     * Smallest base distance in millimetres: below that nothing is wood, and counts along a blank grow out of bounds.
     */
    private static final double SMALLEST_BASE = 0.01;
    /** Half of what a diameter in an answer is rounded to: an answered diameter may be posted back. */
    private static final double ANSWER_ROUNDING = 1e-4;

    /** Enough decimals to find a value again in a request. */
    private static final int SHOWN_DECIMALS = 6;

    /** Defaults of the turning allowance: a length, and the share of the measure across flats that caps it. */
    private static final double USUAL_ALLOWANCE = 2;

    private static final double USUAL_ALLOWANCE_INCHES = 0.08;
    private static final double USUAL_ALLOWANCE_SHARE = 0.02;
    /** Defaults of the minimum wall: a length, and the share of the sphere's radius that caps it. */
    private static final double USUAL_WALL = 6;

    private static final double USUAL_WALL_INCHES = 0.25;
    private static final double USUAL_WALL_SHARE = 0.2;

    private final DesignRequest request;
    private final LengthUnit unit;
    private final Violations violations = new Violations();
    private final PanelRequest panel;
    private final SphereRequest sphere;
    private final double land;

    DesignBuilder(DesignRequest request) {
        this.request = request;
        this.unit = request.unit();
        this.panel = request.panel() == null ? new PanelRequest(null, null) : request.panel();
        this.sphere = request.sphere() == null ? new SphereRequest(null, null, null) : request.sphere();
        this.land = unit.toMillimetres(requireNonNullElse(panel.land(), 0.0));
    }

    Design build() {
        Solid solid = solid();
        Double statedAllowance = sphere.turningAllowance();
        double allowance = unit.toMillimetres(
                statedAllowance != null
                        ? statedAllowance
                        : usualAllowance(request.size().value()));
        double edge = edge(solid, allowance);
        if (statedAllowance == null && request.size().by() != SizeBy.SPHERE_DIAMETER) {
            allowance = unit.toMillimetres(usualAllowance(unit.fromMillimetres(2 * smallestFace(solid, edge))));
        }
        checkBase(solid, edge);
        double thickness = length(panel.thickness());
        checkPanel(solid, edge, thickness);
        LaminationMatcher matcher = new LaminationMatcher(request, violations);
        matcher.checkNames(solid);
        OwnWoods.check(request.woods(), violations);
        List<Panel> panels = new ArrayList<>();
        for (FaceKind kind : solid.faceKinds()) {
            for (Lamination lamination : matcher.match(solid, kind, edge)) {
                panels.add(panel(solid, kind, edge, lamination));
            }
        }
        double radius = sphereRadius(solid, edge, allowance);
        Double statedWall = sphere.minimumWall();
        double wall = unit.toMillimetres(statedWall != null ? statedWall : usualWall(unit.fromMillimetres(radius)));
        checkWall(radius, wall);
        boolean twoSets = panels.stream().anyMatch(each -> each.lamination().sets() == 2);
        List<SphereKind> spheres = SphereKinds.of(request, solid, twoSets, violations);
        violations.throwIfAny();
        SphereRequest workedOut = new SphereRequest(
                unit.fromMillimetres(2 * radius), unit.fromMillimetres(allowance), unit.fromMillimetres(wall));
        DesignRequest completed = CompletedRequest.of(request, panels, workedOut);
        CompletedBounds.check(request, completed, violations);
        violations.throwIfAny();
        return new Design(
                completed,
                solid,
                edge,
                thickness,
                land,
                Woods.of(request.woods()),
                panels,
                spheres,
                length(request.saw() == null ? null : request.saw().kerf()),
                request.saw() == null
                        ? 0
                        : unit.toMillimetres(requireNonNullElse(request.saw().endTrim(), 0.0)),
                length(request.blank() == null ? null : request.blank().length()),
                radius,
                allowance,
                wall);
    }

    /** A length in millimetres, or not a number where it was left out. */
    private double length(Double stated) {
        return stated == null ? Double.NaN : unit.toMillimetres(stated);
    }

    /** Rounded as answers are, so that a document that was answered means the same when it is posted again. */
    private double usualAllowance(double acrossFlats) {
        double usual = unit == LengthUnit.MM ? USUAL_ALLOWANCE : USUAL_ALLOWANCE_INCHES;
        return rounded(Math.min(usual, USUAL_ALLOWANCE_SHARE * acrossFlats));
    }

    private double usualWall(double sphereRadius) {
        double usual = unit == LengthUnit.MM ? USUAL_WALL : USUAL_WALL_INCHES;
        return rounded(Math.min(usual, USUAL_WALL_SHARE * Math.max(0, sphereRadius)));
    }

    private double rounded(double length) {
        return Rounding.round(length, Quantity.LENGTH.decimals(unit));
    }

    private double smallestFace(Solid solid, double edge) {
        return solid.inradius() * edge + land;
    }

    private Solid solid() {
        return SolidCatalogue.find(request.solid()).orElseThrow(() -> {
            String nearest = String.join(", ", SolidCatalogue.nearest(request.solid()));
            violations.add(
                    "/solid",
                    "UNKNOWN_SOLID",
                    "There is no solid named \"" + request.solid() + "\". The nearest names are: " + nearest + ".",
                    request.solid(),
                    "one of the names at /v1/solids, such as " + nearest);
            return new ImpossibleDesignException(violations.all());
        });
    }

    private double edge(Solid solid, double allowance) {
        double value = unit.toMillimetres(request.size().value());
        double edge = Size.of(request.size().by(), value).edge(solid, land, allowance);
        if (edge <= 0) {
            violations.add(
                    "/size/value",
                    "TOO_SMALL_FOR_LAND",
                    "The size leaves nothing below a land of " + unit.say(land) + " on every side.",
                    shown(value),
                    "a size that is larger than the lands on both sides");
            violations.throwIfAny();
        }
        return edge;
    }

    private void checkBase(Solid solid, double edge) {
        for (FaceKind kind : solid.faceKinds()) {
            double base = kind.baseDistance() * edge;
            if (base < SMALLEST_BASE) {
                violations.add(
                        "/size/value",
                        "SEGMENTS_TOO_SMALL",
                        "The segments of the " + kind.face() + " panels are only " + unit.say(base) + " high.",
                        shown(unit.toMillimetres(request.size().value())),
                        "a size with segments of at least " + unit.sayAtLeast(SMALLEST_BASE));
                violations.throwIfAny();
            }
        }
    }

    private void checkPanel(Solid solid, double edge, double thickness) {
        double smallest = smallestFace(solid, edge);
        if (thickness >= smallest) {
            violations.add(
                    "/panel/thickness",
                    "PANEL_TOO_THICK",
                    "Panels of " + unit.say(thickness) + " leave no hollow: the lowest face is only "
                            + unit.say(smallest) + " from the solid's centre.",
                    shown(thickness),
                    "less than " + unit.sayAtMost(smallest));
        }
        if (land >= thickness) {
            violations.add(
                    "/panel/land",
                    "LAND_TOO_HIGH",
                    "A land of " + unit.say(land) + " leaves no bevel on panels of " + unit.say(thickness) + ".",
                    shown(land),
                    "less than " + unit.sayAtMost(thickness));
        }
    }

    private double sphereRadius(Solid solid, double edge, double allowance) {
        double smallest = smallestFace(solid, edge);
        double seam = solid.midradius() * edge;
        Double asked = sphere.diameter();
        boolean bySphere = request.size().by() == SizeBy.SPHERE_DIAMETER;
        if (bySphere && asked != null && !asked.equals(request.size().value())) {
            violations.add(
                    "/sphere/diameter",
                    "CONFLICTING_DIAMETERS",
                    "The size already states the sphere's diameter, and this is another one.",
                    Rounding.plain(asked, SHOWN_DECIMALS),
                    "nothing, or the same as size.value");
        }
        if (bySphere || asked != null) {
            double radius = unit.toMillimetres(bySphere ? request.size().value() : asked) / 2;
            checkSphere(radius, Math.max(smallest, seam));
            return radius;
        }
        double radius = Math.min(smallest, seam) - allowance;
        if (radius <= 0) {
            violations.add(
                    "/sphere/turningAllowance",
                    "ALLOWANCE_TOO_LARGE",
                    "The turning allowance leaves no sphere: the largest is " + unit.say(2 * Math.min(smallest, seam))
                            + " in diameter.",
                    shown(allowance),
                    "less than " + unit.say(Math.min(smallest, seam)));
        }
        return radius;
    }

    /** A diameter that was answered, and so rounded, must not be refused. */
    private void checkSphere(double radius, double largest) {
        if (radius > largest + ANSWER_ROUNDING) {
            violations.add(
                    "/sphere/diameter",
                    "SPHERE_TOO_LARGE",
                    "A sphere of " + unit.say(2 * radius)
                            + " in diameter is larger than the seams allow: this solid has wood all round for "
                            + unit.sayAtMost(2 * largest) + " at most.",
                    shown(2 * radius),
                    "at most " + unit.sayAtMost(2 * largest));
        }
    }

    private void checkWall(double radius, double wall) {
        if (radius > 0 && wall >= radius) {
            violations.add(
                    "/sphere/minimumWall",
                    "WALL_TOO_THICK",
                    "A wall of " + unit.say(wall) + " leaves no hollow in a sphere of " + unit.say(2 * radius)
                            + " in diameter.",
                    shown(wall),
                    "less than " + unit.sayAtMost(radius));
        }
    }

    private Panel panel(Solid solid, FaceKind kind, double edge, Lamination lamination) {
        double joint = kind.distance() * edge;
        return new Panel(
                kind,
                joint,
                joint + land,
                kind.baseDistance() * edge,
                kind.cornerRadius() * edge,
                lamination,
                PieceFinder.pieces(solid, kind, edge, lamination));
    }

    private String shown(double millimetres) {
        return Rounding.plain(unit.fromMillimetres(millimetres), SHOWN_DECIMALS);
    }
}
