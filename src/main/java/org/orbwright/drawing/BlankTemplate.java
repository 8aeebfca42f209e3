package org.orbwright.drawing;

import static org.orbwright.drawing.TemplateSheet.LETTERS;
import static org.orbwright.drawing.TemplateSheet.MARGIN;

import java.util.List;
import org.orbwright.design.Band;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.segment.SegmentPlan.Cut;
import org.orbwright.segment.SegmentPlan.FaceSegments;
import org.orbwright.segment.SegmentPlan.Layout;
import org.orbwright.segment.SegmentPlan.SegmentCut;

/**
 * A blank at true size, the edge of its first band below: its glue lines, where finished edges lie, how far the kerf
 * goes, and where each cut meets both edges, counted from the left end.
 */
public final class BlankTemplate {
    private BlankTemplate() {}

    /** The cuts of a blank for a panel, from which one kind of segment is cut. */
    public static Drawing draw(Design design, Panel panel, FaceSegments face, SegmentCut segment) {
        TemplateSheet sheet = new TemplateSheet();
        double length = design.blankLength();
        double last = 2 * MARGIN;
        double first = last + face.blankWidth();
        sheet.outline(List.of(
                new Point(MARGIN, last),
                new Point(MARGIN + length, last),
                new Point(MARGIN + length, first),
                new Point(MARGIN, first)));
        double glued = first;
        List<Band> bands = panel.lamination().bands();
        for (Band band : bands.subList(0, bands.size() - 1)) {
            glued -= band.width();
            sheet.line(Callout.line(MARGIN, glued, MARGIN + length, glued), Pen.THIN);
        }
        for (Cut cut : segment.cuts()) {
            double x = MARGIN + cut.firstBandEdge();
            double far = MARGIN + cut.lastBandEdge();
            sheet.line(Callout.line(x, first, far, last), Pen.MEDIUM);
            double kerf = design.kerf() * Math.hypot(far - x, face.blankWidth()) / face.blankWidth();
            // The first cut leaves its kerf before the first segment, all others behind theirs.
            double beyond = cut.number() == 0 ? -kerf : kerf;
            if (Math.min(x, far) + beyond >= MARGIN && Math.max(x, far) + beyond <= MARGIN + length) {
                sheet.line(Callout.line(x + beyond, first, far + beyond, last), Pen.DASHED);
            }
            // Two cuts come close to each other at every tip: their labels stand in two rows.
            double row = cut.number() % 2 == 0 ? 1.5 : 2.7;
            String number = cut.number() + ": ";
            sheet.label(
                    x,
                    first + row * LETTERS,
                    Anchor.MIDDLE,
                    number + design.unit().sayNumber(cut.firstBandEdge()));
            sheet.label(
                    far,
                    last - (row - 1) * LETTERS,
                    Anchor.MIDDLE,
                    number + design.unit().sayNumber(cut.lastBandEdge()));
        }
        String edges = face.layout() == Layout.STICKS ? "sides of sticks" : "finished legs";
        sheet.label(
                MARGIN,
                MARGIN - 2.4 * LETTERS,
                Anchor.START,
                "The edge of the first band is below. Thick lines are " + edges + ", thin ones glue lines;");
        sheet.label(
                MARGIN,
                MARGIN - LETTERS,
                Anchor.START,
                "the kerf of " + design.say(design.kerf())
                        + " lies between a thick line and its dashed one. Numbers: cut, and how far from the end.");
        String name = "Marks on a blank: " + DrawnFace.name(panel) + ", " + segment.segment()
                + (segment.mirrored() ? "*" : "");
        return sheet.drawing(name, length + 2 * MARGIN, first + MARGIN);
    }
}
