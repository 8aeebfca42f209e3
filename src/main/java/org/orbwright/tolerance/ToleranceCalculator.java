package org.orbwright.tolerance;

import static org.orbwright.tolerance.ErrorSource.BEVEL;
import static org.orbwright.tolerance.ErrorSource.PANEL_THICKNESS;
import static org.orbwright.tolerance.ErrorSource.STOP_BLOCK;
import static org.orbwright.tolerance.ErrorSource.TIP_ANGLE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.quantity.Rounding;
import org.orbwright.solid.EdgeKind;
import org.orbwright.sphere.SphereCalculator;
import org.orbwright.sphere.SphereSizing;
import org.orbwright.sphere.SphereSizing.FaceSizing;
import org.orbwright.sphere.SphereSizing.SphereLimit;
import org.orbwright.tolerance.Tolerance.SettingLimits;
import org.orbwright.tolerance.Tolerance.SolidTolerance;

/**
 * What errors of cutting do to a solid. The model:
 *
 * <ul>
 *   <li>A setting error is the same, with its sign, in every piece. It does not cancel between neighbours along a
 *       blank. With a fixed mitre gauge the blank is turned over between cuts, so that a gauge that is off by d leans
 *       every leg by d more and makes every tip angle larger by 2 d, upright or inverted. Where a gauge is swung from
 *       one side to the other, an error of its zero leans one leg more and the other less, and the tip angle stays
 *       right. So the request states the error of the tip angle itself, half of it in either leg.
 *   <li>Scatter is normally distributed and independent from piece to piece. One cut is a leg of two neighbours along
 *       the blank, which makes the tip angles of both larger or smaller. A panel of one set holds none of the two
 *       together; where upright and inverted segments are alike, they have to be mixed, for a panel of n segments in
 *       the order of the blank has a scatter that is sqrt(2 - 1/n) times as large. Every edge of a panel has a bevel
 *       cut of its own.
 *   <li>Gaps of a panel follow from its tip angles alone: {@code sum times joint length}, all in one joint, measured at
 *       the corner of the rim or at the tips. The stop and the tip angle set the height of a segment, which is its base
 *       distance; a blank that is narrower leaves the tips blunt.
 *   <li>A panel is bevelled to one outline of its segments' mean base distance, inner face down, with a fence above the
 *       blade that bears on the rim ({@link org.orbwright.jig.JigCalculator} sets the saw up so): a blade that comes up
 *       through the table can leave a land in no other way. The seam meets the outline at one height over the inner
 *       face, whatever the thickness is. So panels are flush in the hollow, what they are too thick is added to their
 *       land and shows outside, and outlines open no seams: two bevels alone do, over the length along which they
 *       touch, {@code sum times seam length}. A panel with a larger outline sits further out. That a panel which is too
 *       thin by more than its land has a shorter seam face is left out.
 *   <li>Legs that lean from square open every joint of a panel that is pressed flat, on one of its faces: by the
 *       thickness times the lean of both legs ({@link PanelLean}). With a fixed gauge and the blank turned over between
 *       cuts both legs lean alike; with a gauge that is swung, one leans as much as the other the other way, and they
 *       meet. A tilt that drifts along the cut evens out where the blank is turned over.
 *   <li>Seams are taken as flat; what glue and clamps bend is left out.
 * </ul>
 *
 * <p>Closed forms are of the first order in the errors. Uncertainties are propagated linearly (JCGM 100:2008, 5.1.2,
 * the clause from memory). The simulation takes exact gaps.
 */
public final class ToleranceCalculator {
    private final Design design;
    private final CuttingErrors errors;
    private final double glueBridges;
    private final Map<String, PanelErrors> panels = new LinkedHashMap<>();

    private ToleranceCalculator(ToleranceRequest request, Design design) {
        this.design = design;
        this.errors = CuttingErrors.of(request, design);
        this.glueBridges = design.unit().toMillimetres(request.glueBridges());
        for (Panel panel : design.facePanels()) {
            panels.put(panel.face(), new PanelErrors(design, panel, errors));
        }
    }

    /**
     * What errors of cutting do to a design.
     *
     * @param request a request that keeps its Bean Validation constraints
     * @param design the request's design
     * @throws ImpossibleDesignException if an error is as large as what is cut
     */
    public static Tolerance calculate(ToleranceRequest request, Design design) {
        design.require("the effect of errors depends", DesignPart.THICKNESS);
        ToleranceRequest filled = request.filled(design.unit());
        return new ToleranceCalculator(filled, design).tolerance(filled);
    }

    private Tolerance tolerance(ToleranceRequest request) {
        List<PanelTolerance> gaps =
                panels.values().stream().map(p -> p.tolerance(glueBridges)).toList();
        List<SeamTolerance> seams =
                design.solid().edgeKinds().stream().map(this::seam).toList();
        return new Tolerance(
                glueBridges,
                gaps,
                seams,
                design.panels().stream()
                        .map(part -> panels.get(part.face()).lines(part))
                        .toList(),
                solid(),
                limits(gaps, seams),
                new GapSimulator(design, errors, glueBridges).run(request.samples(), request.seed()));
    }

    private SeamTolerance seam(EdgeKind edge) {
        PanelErrors one = panels.get(edge.face());
        PanelErrors other = panels.get(edge.neighbour());
        double length = JointLengths.seam(design, one.panel(), other.panel());
        double angleSum = 2 * errors.of(BEVEL).setting();
        ErrorBudget opening =
                new BudgetBuilder(errors).add(BEVEL, Derivatives.of(-length, 2)).build();
        SeamSide side = angleSum < 0 ? SeamSide.INSIDE : SeamSide.OUTSIDE;
        Derivatives thickness = one.rimByThickness().minus(other.rimByThickness());
        return new SeamTolerance(
                edge.face(),
                edge.neighbour(),
                edge.count(),
                length,
                angleSum,
                Math.abs(opening.shift()),
                angleSum == 0 ? null : side,
                opening,
                step(one, other).add(PANEL_THICKNESS, thickness).build(),
                step(one, other).build(),
                errors.bevelLimit(glueBridges / (2 * length)));
    }

    private BudgetBuilder step(PanelErrors one, PanelErrors other) {
        return new BudgetBuilder(errors)
                .add(STOP_BLOCK, one.edgeByStop().minus(other.edgeByStop()))
                .add(TIP_ANGLE, one.edgeByTip().minus(other.edgeByTip()));
    }

    private SolidTolerance solid() {
        PanelErrors lowest = panels.values().stream()
                .reduce((p, q) -> q.panel().faceDistance() < p.panel().faceDistance() ? q : p)
                .orElseThrow();
        SphereSizing sphere = SphereCalculator.calculate(design);
        ErrorBudget largest = sphere.largestLimitedBy() == SphereLimit.FLATS
                ? budget(lowest, 2)
                : new BudgetBuilder(errors)
                        .add(STOP_BLOCK, lowest.edgeByStop().times(2))
                        .add(TIP_ANGLE, lowest.edgeByTip().times(2))
                        .build();
        // Without a parallel face opposite, one face counts for both sides.
        double faces = lowest.panel().kind().opposite() ? Math.sqrt(2) : 2;
        return new SolidTolerance(budget(lowest, faces), largest, thinnestWall(sphere));
    }

    /** Twice the face distance, where one face counts for both sides or each for its own. */
    private ErrorBudget budget(PanelErrors lowest, double independent) {
        return lowest.face(new BudgetBuilder(errors), 2, independent).build();
    }

    private ErrorBudget thinnestWall(SphereSizing sphere) {
        FaceSizing thinnest = sphere.faces().get(0);
        for (FaceSizing face : sphere.faces()) {
            thinnest = thinnest(face) < thinnest(thinnest) ? face : thinnest;
        }
        return panels.get(thinnest.face())
                .wall(thinnest.wall().corner() <= thinnest.wall().faceCentre());
    }

    private static double thinnest(FaceSizing face) {
        return Math.min(face.wall().corner(), face.wall().faceCentre());
    }

    private static SettingLimits limits(List<PanelTolerance> panels, List<SeamTolerance> seams) {
        double tip = panels.stream()
                .mapToDouble(PanelTolerance::largestTipAngleError)
                .min()
                .orElseThrow();
        double bevel = seams.stream()
                .mapToDouble(SeamTolerance::largestBevelError)
                .min()
                .orElseThrow();
        double gauge = Rounding.down(Math.toDegrees(tip) / 2, Quantity.ANGLE.decimals(LengthUnit.MM));
        double square = panels.stream()
                .mapToDouble(panel -> panel.square().largestError())
                .min()
                .orElseThrow();
        return new SettingLimits(tip, Math.toRadians(gauge), bevel, square);
    }
}
