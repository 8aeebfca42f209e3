package org.orbwright.sheet;

import java.util.List;
import org.orbwright.assembly.AssemblyPlan;
import org.orbwright.band.BandSurvival;
import org.orbwright.band.WidthSolution;
import org.orbwright.body.BodyNumbers;
import org.orbwright.diagnosis.Diagnosis;
import org.orbwright.document.Document;
import org.orbwright.inlay.InlayPlan;
import org.orbwright.jig.JigPlan;
import org.orbwright.movement.Movement;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.Describe;
import org.orbwright.segment.SawAngles;
import org.orbwright.segment.SegmentPlan;
import org.orbwright.segment.Yield;
import org.orbwright.sphere.SphereSizing;
import org.orbwright.stock.CutStep;
import org.orbwright.stock.LaminationNames;
import org.orbwright.stock.Reach;
import org.orbwright.stock.ShoppingList;
import org.orbwright.stock.StockPlan;
import org.orbwright.tolerance.Tolerance;
import org.orbwright.turning.Balance;
import org.orbwright.turning.ToolPath;
import org.orbwright.turning.TurningPlan;

/** What is answered to a document, at every address: the parts that the address is about, and null for all others. */
@Describe("What is answered to a document: the parts that the address is about. Each part bears the name of its"
        + " address.")
public record Answer(
        @Describe("The document as far as this answer used it, with everything filled in that was left out. Where an"
                + " address works out what the document should say, it is the whole document as it should now be.")
        Document document,

        @Describe(value = "Angles of the saw.", optional = true)
        SawAngles angles,

        @Describe(value = "Sizes and counts of the segments.", optional = true)
        SegmentPlan segments,

        @Describe(value = "Blanks, strips and wood.", optional = true)
        Yield yield,

        @Describe(value = "The sphere, its removal and its wall.", optional = true)
        SphereSizing sphere,

        @Describe(value = "What is left of every band.", optional = true)
        BandSurvival bands,

        @Describe(value = "The widths that give what should be seen.", optional = true)
        WidthSolution solve,

        @Describe(value = "Inlays and their pockets.", optional = true)
        InlayPlan inlays,

        @Describe(value = "Set-ups of the saw.", optional = true)
        JigPlan jig,

        @Describe(value = "What errors of cutting do.", optional = true)
        Tolerance tolerance,

        @Describe(value = "What measurements tell.", optional = true)
        Diagnosis diagnosis,

        @Describe(value = "Movement of the wood.", optional = true)
        Movement movement,

        @Describe(value = "How the boards are cut.", optional = true)
        StockPlan stock,

        @Describe(value = "What the boards on the rack give.", optional = true)
        Reach reach,

        @Describe(value = "The cut list in working order, one board after the other.", optional = true)
        List<CutStep> cuts,

        @Describe(value = "What to buy.", optional = true) ShoppingList purchases,

        @Describe(value = "The order of gluing.", optional = true)
        AssemblyPlan assembly,

        @Describe(value = "The work on the lathe.", optional = true)
        TurningPlan turning,

        @Describe(value = "A cutter's way over the sphere.", optional = true)
        ToolPath path,

        @Describe(value = "How the work is in balance.", optional = true)
        Balance balance,

        @Describe(value = "The numbers of a body.", optional = true)
        BodyNumbers body,

        @Describe("What these parts get wrong or nearly wrong: gravest first, and for a whole build in the order of the"
                + " work.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the steps that these parts are about, in the order of the work.")
        List<Caution> cautions) {

    /** Copies the lists, and calls the strips of a cut list by the document's laminations. */
    public Answer {
        cuts = cuts == null ? null : LaminationNames.of(document.laminations()).on(cuts);
        findings = List.copyOf(findings);
        cautions = List.copyOf(cautions);
    }

    /** The numbers of a body in place of these parts, with their findings. */
    Answer withBody(BodyNumbers numbers) {
        return new Answer(
                document,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                numbers,
                findings,
                Caution.of(cutBy().steps()));
    }

    /** How a body that is made by these parts is cut. */
    private Part cutBy() {
        if (turning != null) {
            return Part.DISC;
        }
        return inlays != null ? Part.POCKET : Part.BODY;
    }

    /** What a file tells of these parts where it has no place for findings: STOPs and WARNs. */
    public List<Notice> notices() {
        return findings.stream()
                .filter(finding -> finding.severity() != Finding.Severity.NOTE)
                .map(Finding::notice)
                .toList();
    }
}
