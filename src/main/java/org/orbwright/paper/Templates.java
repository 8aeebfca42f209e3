package org.orbwright.paper;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.document.PaperSize;
import org.orbwright.drawing.BlankTemplate;
import org.orbwright.drawing.Drawing;
import org.orbwright.drawing.SegmentTemplate;
import org.orbwright.drawing.TemplateDrawing;
import org.orbwright.paper.ShopSheet.Bar;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.segment.SegmentPlan.FaceSegments;
import org.orbwright.segment.SegmentPlan.SegmentCut;
import org.orbwright.sheet.Caution.Step;
import org.orbwright.turning.Roughing;
import org.orbwright.turning.Roughing.RingGauge;

/** The full-size templates of a design that are printed, and for each that is not, what it is and why. */
record Templates(List<Drawing> printed, List<String> leftOut) {
    /** A template of more tiles is no longer put together exactly. Chosen, no source. */
    private static final int MOST_TILES = 24;
    /** All templates of a sheet together. Chosen, no source. */
    private static final int MOST_TILES_OF_ALL = 100;

    Templates {
        printed = List.copyOf(printed);
        leftOut = List.copyOf(leftOut);
    }

    /** The templates of a design that do not take too many pages. */
    static Templates of(Answers answers, PaperSize paper) {
        List<Drawing> printed = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        long all = 0;
        for (Drawing drawing : all(answers, paper)) {
            long tiles = Tiling.of(drawing, paper).tiles();
            if (tiles > MOST_TILES) {
                leftOut.add("Left out: " + drawing.title() + ". It would take " + tiles
                        + " tiles, and a template has at most " + MOST_TILES + ".");
            } else if (all + tiles > MOST_TILES_OF_ALL) {
                leftOut.add("Left out: " + drawing.title() + ". With it the templates would take more than "
                        + MOST_TILES_OF_ALL + " tiles.");
            } else {
                all += tiles;
                printed.add(drawing);
            }
        }
        return new Templates(printed, leftOut);
    }

    /** Whole ring gauges are handier; a quarter of each is printed where that saves a page. */
    private static List<Drawing> all(Answers answers, PaperSize paper) {
        List<RingGauge> gauges = answers.turning().roughing().gauges();
        List<Drawing> others = others(answers);
        List<Drawing> whole = new ArrayList<>(others);
        whole.add(TemplateDrawing.rings(answers.design(), gauges));
        List<Drawing> quarters = new ArrayList<>(others);
        quarters.add(TemplateDrawing.quarterRings(answers.design(), gauges));
        return Plates.of(quarters, paper).size() < Plates.of(whole, paper).size() ? quarters : whole;
    }

    private static List<Drawing> others(Answers answers) {
        Design design = answers.design();
        List<Drawing> drawings = new ArrayList<>();
        List<FaceSegments> faces = answers.segments().faces();
        for (Panel panel : design.panels()) {
            for (Piece piece : panel.sawn()) {
                for (BandSet set : design.setsOf(panel)) {
                    drawings.add(SegmentTemplate.draw(design, panel, piece, set));
                }
            }
        }
        for (Panel panel : design.facePanels()) {
            drawings.add(TemplateDrawing.panel(design, panel));
        }
        Roughing roughing = answers.turning().roughing();
        drawings.add(TemplateDrawing.profile(design, 2 * design.sphereRadius(), "finished sphere"));
        if (roughing.turnedDiameter() > 2 * design.sphereRadius()) {
            drawings.add(TemplateDrawing.profile(design, roughing.turnedDiameter(), "sphere before sanding"));
        }
        for (int i = 0; i < faces.size(); i++) {
            for (SegmentCut segment : faces.get(i).segments()) {
                if (segment.perBlank() != null && segment.perBlank() > 0) {
                    drawings.add(BlankTemplate.draw(design, design.panels().get(i), faces.get(i), segment));
                }
            }
        }
        return drawings;
    }

    /** What is said of the templates before they are used. */
    Section section(Answers answers, Bar bar) {
        SetUp section = answers.section("Full-size templates").cautions(Step.OUTLINES);
        section.text(
                "The templates follow in the PDF. Print them at 100 % (\"actual size\"), without fitting to the page."
                        + " On every page stands a bar of "
                        + bar.text()
                        + ": measure it before a template is used. Where a template takes several pages, cut along the"
                        + " dashed line of one page and lay the crosses onto those of its neighbour. The middle of a"
                        + " line is the edge. Paper stretches with damp: templates show and check, settings are made"
                        + " by the numbers.");
        section.check("The bar measures " + bar.text() + " on every page.");
        leftOut.forEach(section::text);
        return section.build();
    }
}
