package org.orbwright.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.document.Document;
import org.orbwright.document.PaperRequest;
import org.orbwright.notice.Article;
import org.orbwright.paper.ShopSheet.Bar;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.Finding;
import org.orbwright.sheet.SheetCalculator;

/** Puts the numbers of a build into the order of the work. */
public final class ShopSheetCalculator {
    private static final Bar METRIC_BAR = new Bar(100, "100 mm");
    private static final Bar INCH_BAR = new Bar(101.6, "4 in");

    /** The sheet prints no profiles of bands; these are the fewest. */
    private static final int STATIONS = 2;

    private ShopSheetCalculator() {}

    /**
     * The sheet of a build.
     *
     * @param document a document that keeps its Bean Validation constraints
     * @throws ImpossibleDesignException if the design, or what a section says of it, cannot exist
     */
    public static ShopSheet sheet(Document document) {
        Answer build = SheetCalculator.build(document, STATIONS);
        Answers answers = new Answers(Design.of(document.design()), build);
        Design design = answers.design();
        boolean metric = design.unit() == LengthUnit.MM;
        PaperRequest paper =
                (document.paper() == null ? new PaperRequest(null, null) : document.paper()).filled(design.unit());
        List<Section> sections = new ArrayList<>();
        sections.add(DesignSections.brief(answers));
        if (answers.build().movement() != null) {
            sections.add(OtherSections.movement(answers));
        }
        if (answers.stock() != null) {
            sections.add(StockSections.cuts(answers));
        }
        if (answers.yields() != null) {
            sections.add(DesignSections.strips(answers));
            sections.add(DesignSections.blanks(answers));
        }
        if (answers.jig() != null) {
            sections.add(SawSections.crosscuts(answers));
            sections.add(SawSections.closingTest(answers));
        }
        if (answers.assembly() != null) {
            sections.add(GluingSections.panels(answers));
        }
        if (answers.jig() != null) {
            sections.add(SawSections.bevels(answers));
        }
        if (answers.build().inlays() != null) {
            sections.add(OtherSections.inlays(answers));
        }
        if (answers.assembly() != null) {
            sections.add(GluingSections.solid(answers));
        }
        if (answers.build().balance() != null) {
            sections.add(OtherSections.balance(answers));
        }
        if (answers.turning() != null) {
            sections.add(LatheSections.mounting(answers));
            sections.add(LatheSections.roughing(answers));
            sections.add(LatheSections.finishing(answers));
        }
        boolean wanted = paper.templates() && answers.turning() != null;
        Templates templates = wanted ? Templates.of(answers, paper.size()) : new Templates(List.of(), List.of());
        if (wanted) {
            sections.add(templates.section(answers, metric ? METRIC_BAR : INCH_BAR));
        }
        return new ShopSheet(
                title(design),
                paper.size(),
                byGravity(answers.findings()),
                sections,
                metric ? METRIC_BAR : INCH_BAR,
                templates.printed());
    }

    /** The first page has the gravest first: what must not be cut is read before all else. */
    private static List<Finding> byGravity(List<Finding> findings) {
        return findings.stream().sorted(Comparator.comparing(Finding::severity)).toList();
    }

    private static String title(Design design) {
        String name = design.request().name();
        return name == null || name.isBlank()
                ? "Sphere from " + Article.with(design.solid().name())
                : name;
    }
}
