package org.orbwright.sheet;

import static java.util.Objects.requireNonNullElse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.orbwright.assembly.AssemblyCalculator;
import org.orbwright.assembly.AssemblyPlan;
import org.orbwright.assembly.AssemblyRequest;
import org.orbwright.band.BandCalculator;
import org.orbwright.band.BandSurvival;
import org.orbwright.band.WidthSolution;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.diagnosis.Diagnosis;
import org.orbwright.diagnosis.DiagnosisCalculator;
import org.orbwright.diagnosis.DiagnosisRequest;
import org.orbwright.document.Document;
import org.orbwright.document.Section;
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
import org.orbwright.segment.SegmentPlan;
import org.orbwright.segment.Yield;
import org.orbwright.segment.YieldCalculator;
import org.orbwright.sheet.Caution.Step;
import org.orbwright.sphere.SphereSizing;
import org.orbwright.stock.CutList;
import org.orbwright.stock.CutStep;
import org.orbwright.stock.Reach;
import org.orbwright.stock.ReachCalculator;
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
import org.orbwright.turning.ToolPath;
import org.orbwright.turning.TurningCalculator;
import org.orbwright.turning.TurningPlan;
import org.orbwright.turning.TurningRequest;

/**
 * An answer in the making. Each method adds one part with its findings and cautions. It also notes the section that the
 * part used, filled in.
 */
final class Work {
    private final Document document;
    private final Design design;
    private final Map<Section, Record> used = new EnumMap<>(Section.class);
    private final Set<Finding> findings = new LinkedHashSet<>();
    private final Set<Step> steps = EnumSet.noneOf(Step.class);
    private final SharedFindings shared;

    /** Worked out once, as the plan and both of its lists are read off it. */
    private StockPlan plan;

    private SawAngles angles;
    private SegmentPlan segments;
    private Yield yields;
    private SphereSizing sphere;
    private BandSurvival bands;
    private WidthSolution solve;
    private InlayPlan inlays;
    private JigPlan jig;
    private Tolerance tolerance;
    private Diagnosis diagnosis;
    private Movement movement;
    private StockPlan stock;
    private Reach reach;
    private List<CutStep> cuts;
    private ShoppingList purchases;
    private AssemblyPlan assembly;
    private TurningPlan turning;
    private ToolPath path;
    private Balance balance;

    /**
     * Begins with nothing but the design.
     *
     * @throws ImpossibleDesignException if the design cannot exist
     */
    Work(Document document) {
        this(document, document.design());
    }

    /**
     * Begins with a design in place of the document's own.
     *
     * @throws ImpossibleDesignException if the design cannot exist
     */
    Work(Document document, DesignRequest design) {
        this.document = document;
        this.design = Design.of(design);
        this.shared = new SharedFindings(this.design);
        found(UnitFindings.of(document.design(), "", document.unit()));
    }

    Design design() {
        return design;
    }

    private void found(List<Finding> more) {
        findings.addAll(more);
    }

    /** Notes a section that was used, filled in, with the slips of its unit as it was written. */
    private void use(Section section, Record filled) {
        used.put(section, filled);
        slips(section);
    }

    private void slips(Section section) {
        if (has(section)) {
            found(UnitFindings.of(document.sections().get(section), section.pointer(), document.unit()));
        }
    }

    /** The cautions of every step. */
    Work caution() {
        return carry(Part.WHOLE);
    }

    private Work carry(Part part) {
        steps.addAll(part.steps());
        return this;
    }

    Work angles() {
        angles = AngleCalculator.calculate(design);
        found(SegmentFindings.settings(angles));
        found(SegmentFindings.halves(design));
        return carry(Part.ANGLES);
    }

    Work segments() {
        segments = shared.plan();
        found(shared.segments());
        return carry(Part.SEGMENTS);
    }

    Work yields() {
        yields = YieldCalculator.calculate(design);
        found(shared.segments());
        found(YieldFindings.of(design, yields));
        found(WoodFindings.of(design));
        found(StripFindings.of(design));
        return carry(Part.YIELD);
    }

    Work sphere() {
        sphere = shared.sizing();
        found(shared.sphere());
        return carry(Part.SPHERE);
    }

    /** @param stations stations of a profile from the edge middle to a corner, at least 2 */
    Work bands(int stations) {
        bands = BandCalculator.calculate(design, stations);
        found(BandFindings.of(design, bands));
        found(StripFindings.of(design));
        return carry(Part.BANDS);
    }

    /** What is found of the bands, without their numbers. */
    Work foundBands() {
        found(shared.bands());
        found(StripFindings.of(design));
        return carry(Part.BANDS);
    }

    /** The widths that were found for the wishes of the document. */
    Work solve(WidthSolution solution) {
        solve = solution;
        use(
                Section.SOLVE,
                document.solve()
                        .filled(
                                solution.face(),
                                solution.set(),
                                solution.bands().size()));
        found(SolveFindings.of(design, solution));
        return this;
    }

    Work inlays() {
        InlayRequest section = Section.INLAYS
                .required(document.inlays(), "the inlay depends", design, DesignPart.THICKNESS, DesignPart.LAMINATIONS)
                .filled(design);
        inlays = InlayCalculator.plan(section, design);
        use(Section.INLAYS, section.plugged(inlays.chips(), design.unit()));
        found(shared.sphere());
        found(InlayFindings.of(design, inlays));
        return carry(Part.INLAYS);
    }

    Work jig() {
        JigRequest section =
                (document.jig() == null ? new JigRequest(null, null) : document.jig()).filled(design.unit());
        jig = JigCalculator.plan(section, design);
        use(Section.JIG, section);
        found(SegmentFindings.settings(AngleCalculator.calculate(design)));
        found(shared.segments());
        found(JigFindings.of(design, jig));
        found(shared.sphereStops());
        return carry(Part.JIG);
    }

    private ToleranceRequest toleranceSection() {
        return requireNonNullElse(document.tolerance(), ToleranceRequest.USUAL).filled(design.unit());
    }

    private double glueBridges() {
        return design.unit().toMillimetres(toleranceSection().glueBridges());
    }

    Work tolerance() {
        ToleranceRequest section = toleranceSection();
        tolerance = ToleranceCalculator.calculate(section, design);
        use(Section.TOLERANCE, section);
        found(ToleranceFindings.of(design, tolerance));
        return carry(Part.TOLERANCE);
    }

    Work diagnosis() {
        DiagnosisRequest written = document.diagnosis();
        boolean thickness = written != null && written.needsThickness();
        DesignPart[] parts = thickness ? new DesignPart[] {DesignPart.THICKNESS} : new DesignPart[0];
        DiagnosisRequest section = Section.DIAGNOSIS
                .required(written, "the diagnosis depends", design, parts)
                .filled(design.unit());
        diagnosis = DiagnosisCalculator.calculate(section, design, glueBridges());
        use(Section.DIAGNOSIS, section);
        found(DiagnosisFindings.of(design, diagnosis));
        return carry(Part.DIAGNOSIS);
    }

    Diagnosis measured() {
        return diagnosis;
    }

    Work movement() {
        MovementRequest section = Section.MOVEMENT
                .required(
                        document.movement(),
                        "the movement depends",
                        design,
                        DesignPart.THICKNESS,
                        DesignPart.LAMINATIONS)
                .filled();
        movement = MovementCalculator.calculate(section, design);
        use(Section.MOVEMENT, section);
        found(MovementFindings.of(design, movement));
        found(WoodFindings.of(design));
        return carry(Part.MOVEMENT);
    }

    /** Worked out once, with its findings, as the plan and both of its lists are read off it. */
    private StockPlan plan() {
        if (plan == null) {
            StockRequest written =
                    Section.STOCK.required(document.stock(), "the stock plan depends", design, DesignPart.values());
            plan = StockCalculator.plan(written, design);
            StockRequest section = written.filled(design.request().saw().kerf());
            use(Section.STOCK, section);
            found(StockFindings.of(section, design, plan));
            found(WoodFindings.of(design));
            found(StockFindings.blanks(section, design));
            found(StripFindings.of(design));
            found(StripFindings.planed(section, design));
            found(shared.segments());
            found(shared.stops());
            carry(Part.STOCK);
        }
        return plan;
    }

    /** How the boards are cut. */
    Work stock() {
        stock = plan();
        return this;
    }

    /** What the boards on the rack give. */
    Work reach() {
        StockRequest written =
                Section.STOCK.required(document.stock(), "what boards give depends", design, DesignPart.values());
        reach = ReachCalculator.reach(written, document.design(), design);
        StockRequest section = written.filled(design.request().saw().kerf());
        use(Section.STOCK, section);
        found(StockFindings.reach(section, design, reach));
        found(WoodFindings.of(design));
        return carry(Part.STOCK);
    }

    Work cuts() {
        cuts = CutList.of(plan(), design.unit());
        return this;
    }

    Work purchases() {
        purchases = ShoppingList.of(plan());
        return this;
    }

    Work assembly() {
        AssemblyRequest section = (document.assembly() == null ? AssemblyRequest.USUAL : document.assembly()).filled();
        assembly = AssemblyCalculator.plan(section, design);
        use(Section.ASSEMBLY, section);
        found(AssemblyFindings.of(assembly));
        found(shared.sphereStops());
        found(SegmentFindings.halves(design));
        return carry(Part.ASSEMBLY);
    }

    private TurningRequest turningSection() {
        TurningRequest section =
                (document.turning() == null ? TurningRequest.USUAL : document.turning()).filled(design.unit());
        use(Section.TURNING, section);
        return section;
    }

    Work turning() {
        TurningRequest section = turningSection();
        turning = TurningCalculator.plan(section, design);
        found(TurningFindings.of(section, design, turning));
        found(WoodFindings.of(design));
        found(shared.sphere());
        return carry(Part.LATHE);
    }

    Work balance() {
        TurningRequest held = turningSection();
        BalanceRequest section = (document.balance() == null ? BalanceRequest.USUAL : document.balance()).filled();
        balance = BalanceCalculator.calculate(section, held, design);
        use(Section.BALANCE, section);
        found(BalanceFindings.of(held, design, balance));
        found(WoodFindings.of(design, BalanceCalculator.woodFields(section, design)));
        shared.sphere().stream()
                .filter(finding -> finding.code() == FindingCode.BREAK_THROUGH)
                .forEach(findings::add);
        return carry(Part.BALANCE);
    }

    Work path() {
        PathRequest section =
                Section.PATH.required(document.path(), "the path depends").filled(design.unit());
        path = PathCalculator.path(section, turningSection(), design);
        use(Section.PATH, section);
        found(PathFindings.of(section, design, path));
        found(shared.sphere());
        return carry(Part.PATH);
    }

    /** Angles and segments, with what makes panels of them useless. */
    Work sawn() {
        found(shared.stops());
        return angles().segments();
    }

    /** The sphere, with what happens to the bands on it. */
    Work turned() {
        sphere();
        found(shared.bands());
        return this;
    }

    /**
     * Adds a part if the document states what it depends on, and a note of what it waits for otherwise.
     *
     * @param name the part's name
     * @param part adds it
     */
    Work where(String name, Runnable part) {
        try {
            part.run();
        } catch (ImpossibleDesignException e) {
            if (!e.violations().stream().allMatch(Violation::isMissing)) {
                throw e;
            }
            String fields = e.violations().stream().map(Violation::field).collect(Collectors.joining(", "));
            findings.add(FindingCode.PART_LEFT_OUT.note(
                    "The part " + name + " is left out. It waits for " + fields + ".",
                    e.violations().get(0).path()));
        }
        return this;
    }

    /** Whether the document has a section. */
    boolean has(Section section) {
        return document.sections().containsKey(section);
    }

    /** The answer, its findings gravest first. */
    Answer answer() {
        return answer(Document.of(design.request(), used), gravestFirst());
    }

    /** The same with the whole document as it should now be. */
    Answer answer(Function<NextDocument, Document> next) {
        return answer(next.apply(new NextDocument(filled(), design)), gravestFirst());
    }

    /** The answer of a build, its findings in the order of the work. */
    Answer build() {
        document.sections().keySet().forEach(this::slips);
        return answer(filled(), new ArrayList<>(findings));
    }

    /** The whole document, as far as it was used with everything filled in. */
    Document filled() {
        return document.with(design.request(), used);
    }

    private List<Finding> gravestFirst() {
        List<Finding> sorted = new ArrayList<>(findings);
        sorted.sort(Comparator.comparing(Finding::severity));
        return sorted;
    }

    private Answer answer(Document now, List<Finding> sorted) {
        return new Answer(
                now,
                angles,
                segments,
                yields,
                sphere,
                bands,
                solve,
                inlays,
                jig,
                tolerance,
                diagnosis,
                movement,
                stock,
                reach,
                cuts,
                purchases,
                assembly,
                turning,
                path,
                balance,
                null,
                sorted,
                Caution.of(steps));
    }
}
