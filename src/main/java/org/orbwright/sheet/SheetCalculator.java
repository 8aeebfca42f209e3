package org.orbwright.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.orbwright.band.SolveRequest;
import org.orbwright.band.SolvedDesign;
import org.orbwright.band.WidthSolver;
import org.orbwright.body.Body;
import org.orbwright.body.BodyNumbers;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.document.Document;
import org.orbwright.document.Section;
import org.orbwright.notice.Notice;
import org.orbwright.turning.ProgramWriter;

/**
 * Answers documents, each address its own parts. A document keeps its Bean Validation constraints; what cannot exist,
 * and what lacks something that the answer cannot do without, is refused with an {@link ImpossibleDesignException}.
 */
public final class SheetCalculator {
    private SheetCalculator() {}

    /** The angles of a design. */
    public static Answer angles(Document document) {
        return new Work(document).angles().answer();
    }

    /** The segments of a design. */
    public static Answer segments(Document document) {
        return new Work(document).segments().answer();
    }

    /** The yield of a design. */
    public static Answer yields(Document document) {
        return new Work(document).yields().answer();
    }

    /** The sphere that comes out of a design. */
    public static Answer sphere(Document document) {
        return new Work(document).sphere().answer();
    }

    /**
     * What is left of every band of a design.
     *
     * @param stations stations of a profile from the edge middle to a corner, at least 2
     */
    public static Answer bands(Document document, int stations) {
        return new Work(document).bands(stations).answer();
    }

    /**
     * Angles, segments, yield, sphere and bands, as far as the document states what they depend on.
     *
     * @param stations stations of a profile from the edge middle to a corner, at least 2
     */
    public static Answer sheet(Document document, int stations) {
        return sheet(new Work(document), stations).answer();
    }

    private static Work sheet(Work work, int stations) {
        return work.caution()
                .sphere()
                .where("bands", () -> work.bands(stations))
                .angles()
                .segments()
                .where("yield", work::yields);
    }

    /** The inlays of a design. */
    public static Answer inlays(Document document) {
        return new Work(document).inlays().answer();
    }

    /** The same for those who cannot do without a pocket. */
    public static Answer pocket(Document document) {
        Answer answer = inlays(document);
        if (answer.inlays().pocket() == null) {
            throw new ImpossibleDesignException(List.of(Violation.missing(
                    "/inlays/shape",
                    "the inlay's shape",
                    "the pocket depends",
                    "a shape, or chips that a plug hides")));
        }
        return answer;
    }

    /** The set-ups of the saw. */
    public static Answer jig(Document document) {
        return new Work(document).jig().answer();
    }

    /** What errors of cutting do. */
    public static Answer tolerance(Document document) {
        return new Work(document).tolerance().answer();
    }

    /** What measurements on test pieces and shells say of the settings, and the document with what was measured. */
    public static Answer diagnosis(Document document) {
        Work work = new Work(document).diagnosis();
        return work.answer(next -> next.diagnosis(work.measured()));
    }

    /** The movement of the wood. */
    public static Answer movement(Document document) {
        return new Work(document).movement().answer();
    }

    /** How the boards at hand are cut to strips, and the document with blanks no longer than they need to be. */
    public static Answer stock(Document document) {
        return new Work(document).stock().answer(NextDocument::stock);
    }

    /** What the boards on the rack give: how large, how many, from which blanks. */
    public static Answer reach(Document document) {
        return new Work(document).reach().answer();
    }

    /** The cut list of the boards at hand. */
    public static Answer cuts(Document document) {
        return new Work(document).cuts().answer();
    }

    /** What to buy beside the boards at hand. */
    public static Answer purchases(Document document) {
        return new Work(document).purchases().answer();
    }

    /** The order of gluing. */
    public static Answer assembly(Document document) {
        return new Work(document).assembly().answer();
    }

    /** The work on the lathe from the glued-up solid to the finished sphere. */
    public static Answer turning(Document document) {
        return new Work(document).turning().answer();
    }

    /** How the work on the lathe is in balance. */
    public static Answer balance(Document document) {
        return new Work(document).balance().answer();
    }

    /** The way of a cutter over the sphere. */
    public static Answer path(Document document) {
        return new Work(document).path().answer();
    }

    /** The same as a program for a machine. */
    public static String program(Document document) {
        Answer path = path(document);
        return program(path, path.findings());
    }

    /**
     * The way of a cutter as a program for a machine.
     *
     * @param path the answer of a way
     * @param findings what its head tells beside the cautions; a STOP is read before all else
     */
    public static String program(Answer path, List<Finding> findings) {
        Map<String, Notice> cautions = new LinkedHashMap<>();
        path.cautions().forEach(caution -> cautions.putIfAbsent(caution.text(), caution.notice()));
        return ProgramWriter.write(
                path.document().path(),
                path.document().turning(),
                Design.of(path.document().design()),
                path.path(),
                Stream.concat(findings.stream().map(Finding::notice), cautions.values().stream())
                        .toList());
    }

    /** What is told with a picture, an outline or a body of segments and panels: their findings. */
    public static Answer sawn(Document document) {
        return new Work(document).sawn().answer();
    }

    /** What is told with a picture or a body of the solid and of the sphere: their findings. */
    public static Answer turned(Document document) {
        return new Work(document).turned().answer();
    }

    /**
     * The numbers of a body.
     *
     * @param told what is told with the body
     */
    public static Answer body(Answer told, Body body) {
        return told.withBody(BodyNumbers.of(body));
    }

    /** The flat widths that give what should be seen, and the document with these widths. */
    public static Answer solve(Document document) {
        SolvedDesign solution = solution(document);
        Work work =
                new Work(document, solution.design()).solve(solution.widths()).foundBands();
        return work.answer(
                next -> work.filled().with(solution.opened(work.design().request()), Map.of()));
    }

    private static SolvedDesign solution(Document document) {
        SolveRequest section = Section.SOLVE.required(document.solve(), "the search for widths depends");
        return WidthSolver.solve(section, document.design());
    }

    /**
     * Every part that the document has a section for, beside what any build needs: the parts of a sheet, the set-ups of
     * the saw, the gluing and the work on the lathe. What waits for something is left out with a note.
     *
     * @param stations stations of the bands' profile, at least 2
     */
    public static Answer build(Document document, int stations) {
        Work work = new Work(document).caution();
        optional(work, Section.SOLVE, () -> work.solve(solution(document).widths()));
        optional(work, Section.MOVEMENT, work::movement);
        optional(work, Section.STOCK, () -> work.stock().cuts().purchases());
        work.where("yield", work::yields).segments().angles();
        work.where("jig", work::jig);
        optional(work, Section.TOLERANCE, work::tolerance);
        optional(work, Section.DIAGNOSIS, work::diagnosis);
        optional(work, Section.INLAYS, work::inlays);
        work.where("assembly", work::assembly).sphere().where("bands", () -> work.bands(stations));
        work.where("turning", work::turning);
        optional(work, Section.BALANCE, work::balance);
        optional(work, Section.PATH, work::path);
        return work.build();
    }

    private static void optional(Work work, Section section, Runnable part) {
        if (work.has(section)) {
            work.where(section.text(), part);
        }
    }
}
