package org.orbwright.sheet;

import static org.orbwright.sheet.Caution.Step.BEVELLING;
import static org.orbwright.sheet.Caution.Step.CROSSCUTTING;
import static org.orbwright.sheet.Caution.Step.FINISHING;
import static org.orbwright.sheet.Caution.Step.GLUING;
import static org.orbwright.sheet.Caution.Step.INLAYING;
import static org.orbwright.sheet.Caution.Step.MOUNTING;
import static org.orbwright.sheet.Caution.Step.RIPPING;
import static org.orbwright.sheet.Caution.Step.SANDING;
import static org.orbwright.sheet.Caution.Step.TURNING;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.orbwright.assembly.AssemblyCalculator;
import org.orbwright.assembly.AssemblyPlan;
import org.orbwright.assembly.AssemblyRequest;
import org.orbwright.band.BandCalculator;
import org.orbwright.band.BandSurvival;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.diagnosis.Diagnosis;
import org.orbwright.diagnosis.DiagnosisCalculator;
import org.orbwright.diagnosis.DiagnosisRequest;
import org.orbwright.inlay.InlayCalculator;
import org.orbwright.inlay.InlayPlan;
import org.orbwright.inlay.InlayRequest;
import org.orbwright.jig.JigCalculator;
import org.orbwright.jig.JigPlan;
import org.orbwright.jig.JigRequest;
import org.orbwright.movement.Movement;
import org.orbwright.movement.MovementCalculator;
import org.orbwright.movement.MovementRequest;
import org.orbwright.segment.AngleCalculator;
import org.orbwright.segment.SawAngles;
import org.orbwright.segment.SegmentCalculator;
import org.orbwright.segment.SegmentPlan;
import org.orbwright.segment.Yield;
import org.orbwright.segment.YieldCalculator;
import org.orbwright.sphere.SphereCalculator;
import org.orbwright.sphere.SphereSizing;
import org.orbwright.stock.ShoppingList;
import org.orbwright.stock.StockCalculator;
import org.orbwright.stock.StockPlan;
import org.orbwright.stock.StockRequest;
import org.orbwright.tolerance.Tolerance;
import org.orbwright.tolerance.ToleranceCalculator;
import org.orbwright.tolerance.ToleranceRequest;
import org.orbwright.turning.Balance;
import org.orbwright.turning.BalanceCalculator;
import org.orbwright.turning.BalanceRequest;
import org.orbwright.turning.PathCalculator;
import org.orbwright.turning.PathRequest;
import org.orbwright.turning.ProgramWriter;
import org.orbwright.turning.ToolPath;
import org.orbwright.turning.TurningCalculator;
import org.orbwright.turning.TurningPlan;
import org.orbwright.turning.TurningRequest;

/** Puts the answers of the capabilities together with their findings and cautions. */
public final class SheetCalculator {
    private static final List<Caution> ANGLE_CAUTIONS = Cautions.of(CROSSCUTTING, BEVELLING);
    private static final List<Caution> SEGMENT_CAUTIONS = Cautions.of(CROSSCUTTING);
    private static final List<Caution> YIELD_CAUTIONS = Cautions.of(RIPPING, GLUING, CROSSCUTTING);
    private static final List<Caution> SPHERE_CAUTIONS = Cautions.of(MOUNTING, TURNING);
    private static final List<Caution> BAND_CAUTIONS = Cautions.of();
    private static final List<Caution> INLAY_CAUTIONS = Cautions.of(INLAYING, TURNING);
    private static final List<Caution> JIG_CAUTIONS = Cautions.ofJig();
    private static final List<Caution> TURNING_CAUTIONS = Cautions.of(MOUNTING, TURNING, SANDING, FINISHING);
    private static final List<Caution> BALANCE_CAUTIONS = Cautions.of(MOUNTING, TURNING);
    private static final List<Caution> MOVEMENT_CAUTIONS = Cautions.of(RIPPING, GLUING);
    private static final List<Caution> STOCK_CAUTIONS = Cautions.of(RIPPING, GLUING, CROSSCUTTING);
    private static final List<Caution> ASSEMBLY_CAUTIONS = Cautions.of(BEVELLING, GLUING, SANDING);
    private static final List<Caution> TOLERANCE_CAUTIONS = Cautions.of(CROSSCUTTING, BEVELLING, GLUING);
    private static final List<Caution> DIAGNOSIS_CAUTIONS = Cautions.of(CROSSCUTTING, BEVELLING, MOUNTING);

    /** Where a larger request holds the design. */
    private static final String DESIGN = "/design";

    private SheetCalculator() {}

    /** The angles of a design. */
    public static AnglesAnswer angles(Design design) {
        SawAngles angles = AngleCalculator.calculate(design);
        List<Finding> findings = new ArrayList<>(SegmentFindings.settings(angles));
        findings.addAll(SegmentFindings.halves(design));
        return new AnglesAnswer(design.request(), angles, sorted(findings), ANGLE_CAUTIONS);
    }

    /** The segments of a design. */
    public static SegmentsAnswer segments(Design design) {
        SegmentPlan segments = SegmentCalculator.calculate(design);
        return new SegmentsAnswer(
                design.request(), segments, sorted(SegmentFindings.of(design, segments)), SEGMENT_CAUTIONS);
    }

    /** The yield of a design. */
    public static YieldAnswer yields(Design design) {
        Yield yield = YieldCalculator.calculate(design);
        List<Finding> findings = new ArrayList<>(SegmentFindings.of(design, SegmentCalculator.calculate(design)));
        findings.addAll(YieldFindings.of(design, yield));
        return new YieldAnswer(design.request(), yield, sorted(findings), YIELD_CAUTIONS);
    }

    /** The sphere that comes out of a design. */
    public static SphereAnswer sphere(Design design) {
        SphereSizing sphere = SphereCalculator.calculate(design);
        return new SphereAnswer(design.request(), sphere, sorted(SphereFindings.of(design, sphere)), SPHERE_CAUTIONS);
    }

    /**
     * What is left of every band of a design.
     *
     * @param design the design
     * @param stations stations of a profile from the edge middle to a corner, at least 2
     */
    public static BandsAnswer bands(Design design, int stations) {
        BandSurvival bands = BandCalculator.calculate(design, stations);
        return new BandsAnswer(design.request(), bands, sorted(BandFindings.of(design, bands)), BAND_CAUTIONS);
    }

    /**
     * The inlays of a design.
     *
     * @param request the inlay and its design, which keep their Bean Validation constraints
     * @throws ImpossibleDesignException if the design or the inlay cannot exist
     */
    public static InlayAnswer inlays(InlayRequest request) {
        Design design = Design.of(request.design(), DESIGN);
        InlayPlan plan = InlayCalculator.plan(request, design);
        List<Finding> findings = new ArrayList<>(SphereFindings.of(design, SphereCalculator.calculate(design)));
        findings.addAll(InlayFindings.of(design, plan));
        return new InlayAnswer(design.request(), plan, sorted(findings), INLAY_CAUTIONS);
    }

    /**
     * The set-ups of the saw for a design.
     *
     * @param request the design and what its settings are measured with, which keep their Bean Validation constraints
     * @throws ImpossibleDesignException if the design cannot exist
     */
    public static JigAnswer jig(JigRequest request) {
        Design design = Design.of(request.design(), DESIGN);
        JigPlan plan = JigCalculator.plan(request, design);
        List<Finding> findings = new ArrayList<>(SegmentFindings.settings(AngleCalculator.calculate(design)));
        findings.addAll(SegmentFindings.of(design, SegmentCalculator.calculate(design)));
        findings.addAll(JigFindings.of(design, plan));
        findings.addAll(sphereStops(design));
        List<Finding> within =
                findings.stream().map(finding -> finding.within(DESIGN)).toList();
        return new JigAnswer(design.request(), plan, sorted(within), JIG_CAUTIONS);
    }

    /**
     * How the work is in balance on the lathe.
     *
     * @param request the design and what differs from panel to panel, which keep their Bean Validation constraints
     * @throws ImpossibleDesignException if the design cannot exist, or has no such panel, wood or axis
     */
    public static BalanceAnswer balance(BalanceRequest request) {
        Design design = Design.of(request.design(), DESIGN);
        Balance balance = BalanceCalculator.calculate(request, design);
        List<Finding> findings = new ArrayList<>(BalanceFindings.of(request, design, balance));
        SphereFindings.of(design, SphereCalculator.calculate(design)).stream()
                .filter(finding -> finding.code() == FindingCode.BREAK_THROUGH)
                .forEach(finding -> findings.add(finding.within(DESIGN)));
        return new BalanceAnswer(design.request(), balance, sorted(findings), BALANCE_CAUTIONS);
    }

    /**
     * The work on the lathe from the glued-up solid to the finished sphere.
     *
     * @param request the design and how it is held, turned and finished, which keep their Bean Validation constraints
     * @throws ImpossibleDesignException if the design cannot exist, or the work cannot be held or measured like that
     */
    public static TurningAnswer turning(TurningRequest request) {
        Design design = Design.of(request.design(), DESIGN);
        TurningPlan plan = TurningCalculator.plan(request, design);
        List<Finding> findings = new ArrayList<>(TurningFindings.of(request, design, plan));
        SphereFindings.of(design, SphereCalculator.calculate(design))
                .forEach(finding -> findings.add(finding.within(DESIGN)));
        return new TurningAnswer(design.request(), plan, sorted(findings), TURNING_CAUTIONS);
    }

    /**
     * The way of a cutter over the sphere.
     *
     * @param request the design, the machine and the cutter, which keep their Bean Validation constraints
     * @throws ImpossibleDesignException if the design cannot exist, or the cutter, its holder or the machine does not
     *     suffice
     */
    public static PathAnswer path(PathRequest request) {
        Design design = Design.of(request.design(), DESIGN);
        ToolPath path = PathCalculator.path(request, design);
        List<Finding> findings = new ArrayList<>(PathFindings.of(request, design, path));
        SphereFindings.of(design, SphereCalculator.calculate(design))
                .forEach(finding -> findings.add(finding.within(DESIGN)));
        return new PathAnswer(design.request(), path, sorted(findings), Cautions.ofPath());
    }

    /**
     * The same as a program for a machine.
     *
     * @param request the design, the machine and the cutter, which keep their Bean Validation constraints
     * @throws ImpossibleDesignException as for the path
     */
    public static String program(PathRequest request) {
        PathAnswer answer = path(request);
        List<String> advice = new ArrayList<>();
        answer.cautions().forEach(caution -> advice.add(caution.text()));
        answer.findings().forEach(finding -> advice.add(finding.severity() + ": " + finding.message()));
        return ProgramWriter.write(request, Design.of(request.design(), DESIGN), answer.path(), advice);
    }

    /**
     * The movement of a design's wood.
     *
     * @param request the design with its moisture and grain, which keep their Bean Validation constraints
     * @throws ImpossibleDesignException if the design, or moisture and grain as they are stated, cannot exist
     */
    public static MovementAnswer movement(MovementRequest request) {
        Design design = Design.of(request.design(), DESIGN);
        Movement movement = MovementCalculator.calculate(request, design);
        return new MovementAnswer(
                design.request(), movement, sorted(MovementFindings.of(design, movement)), MOVEMENT_CAUTIONS);
    }

    /**
     * How the boards at hand are cut to the strips of a design.
     *
     * @param request the design and the boards, which keep their Bean Validation constraints
     * @throws ImpossibleDesignException if the design cannot exist, or there are too many boards
     */
    public static StockAnswer stock(StockRequest request) {
        Design design = Design.of(request.design(), DESIGN);
        StockPlan plan = StockCalculator.plan(request, design);
        List<Finding> findings = new ArrayList<>(StockFindings.of(request, design, plan));
        SegmentFindings.of(design, SegmentCalculator.calculate(design))
                .forEach(finding -> findings.add(finding.within(DESIGN)));
        return new StockAnswer(design.request(), plan, sorted(findings), STOCK_CAUTIONS);
    }

    /**
     * The cut list of the boards at hand.
     *
     * @param request the design and the boards, which keep their Bean Validation constraints
     * @throws ImpossibleDesignException if the design cannot exist, or there are too many boards
     */
    public static CutsAnswer cuts(StockRequest request) {
        StockAnswer answer = stock(request);
        return new CutsAnswer(answer.design(), answer.rows(), answer.findings(), answer.cautions());
    }

    /**
     * What to buy for a design, beside the boards at hand.
     *
     * @param request the design and the boards, which keep their Bean Validation constraints
     * @throws ImpossibleDesignException if the design cannot exist, or there are too many boards
     */
    public static PurchasesAnswer purchases(StockRequest request) {
        StockAnswer answer = stock(request);
        ShoppingList shopping = ShoppingList.of(answer.stock());
        return new PurchasesAnswer(answer.design(), shopping, answer.findings(), answer.cautions());
    }

    /**
     * The order in which a design is glued up.
     *
     * @param request the design and the glue, which keep their Bean Validation constraints
     * @throws ImpossibleDesignException if the design cannot exist
     */
    public static AssemblyAnswer assembly(AssemblyRequest request) {
        Design design = Design.of(request.design(), DESIGN);
        AssemblyPlan plan = AssemblyCalculator.plan(request, design);
        List<Finding> findings = new ArrayList<>(AssemblyFindings.of(plan));
        sphereStops(design).forEach(finding -> findings.add(finding.within(DESIGN)));
        SegmentFindings.halves(design).forEach(finding -> findings.add(finding.within(DESIGN)));
        return new AssemblyAnswer(design.request(), plan, sorted(findings), ASSEMBLY_CAUTIONS);
    }

    /**
     * What errors of cutting do to a design.
     *
     * @param request the design and the errors, which keep their Bean Validation constraints
     * @throws ImpossibleDesignException if the design cannot exist, or an error leaves nothing of what is cut
     */
    public static ToleranceAnswer tolerance(ToleranceRequest request) {
        Design design = Design.of(request.design(), DESIGN);
        Tolerance tolerance = ToleranceCalculator.calculate(request, design);
        return new ToleranceAnswer(
                design.request(), tolerance, sorted(ToleranceFindings.of(design, tolerance)), TOLERANCE_CAUTIONS);
    }

    /**
     * What measurements on test pieces and shells say of a design's settings.
     *
     * @param request the design and the measurements, which keep their Bean Validation constraints
     * @throws ImpossibleDesignException if the design cannot exist, or a measurement cannot be
     */
    public static DiagnosisAnswer diagnosis(DiagnosisRequest request) {
        Design design = Design.of(request.design(), DESIGN);
        Diagnosis diagnosis = DiagnosisCalculator.calculate(request, design);
        return new DiagnosisAnswer(
                design.request(), diagnosis, sorted(DiagnosisFindings.of(design, diagnosis)), DIAGNOSIS_CAUTIONS);
    }

    /**
     * All parts at once.
     *
     * @param design the design
     * @param stations stations of a profile from the edge middle to a corner, at least 2
     */
    public static Sheet sheet(Design design, int stations) {
        SawAngles angles = AngleCalculator.calculate(design);
        SegmentPlan segments = SegmentCalculator.calculate(design);
        Yield yield = YieldCalculator.calculate(design);
        SphereSizing sphere = SphereCalculator.calculate(design);
        BandSurvival bands = BandCalculator.calculate(design, stations);
        List<Finding> findings = new ArrayList<>(SphereFindings.of(design, sphere));
        findings.addAll(BandFindings.of(design, bands));
        findings.addAll(SegmentFindings.settings(angles));
        findings.addAll(SegmentFindings.of(design, segments));
        findings.addAll(SegmentFindings.halves(design));
        findings.addAll(YieldFindings.of(design, yield));
        return new Sheet(design.request(), angles, segments, yield, sphere, bands, sorted(findings), Cautions.all());
    }

    /** What makes the whole work useless, whatever part of it is asked for. */
    private static List<Finding> sphereStops(Design design) {
        return SphereFindings.of(design, SphereCalculator.calculate(design)).stream()
                .filter(finding -> finding.severity() == Finding.Severity.STOP)
                .toList();
    }

    private static List<Finding> sorted(List<Finding> findings) {
        return findings.stream().sorted(Comparator.comparing(Finding::severity)).toList();
    }
}
