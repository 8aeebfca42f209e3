package org.orbwright.paper;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.drawing.Drawing;
import org.orbwright.paper.ShopSheet.Bar;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.quantity.LengthUnit;

/** Puts the numbers of a build into the order of the work. */
public final class ShopSheetCalculator {
    private static final Bar METRIC_BAR = new Bar(100, "100 mm");
    private static final Bar INCH_BAR = new Bar(101.6, "4 in");

    private ShopSheetCalculator() {}

    /**
     * The sheet of a design.
     *
     * @param request a request that keeps its Bean Validation constraints
     * @throws ImpossibleDesignException if the design cannot exist
     */
    public static ShopSheet sheet(ShopSheetRequest request) {
        Answers answers = Answers.of(request.design(), "/design");
        Design design = answers.design();
        boolean metric = design.unit() == LengthUnit.MM;
        PaperSize paper = request.paper() != null ? request.paper() : metric ? PaperSize.A4 : PaperSize.LETTER;
        List<Section> sections = new ArrayList<>();
        sections.add(DesignSections.brief(answers));
        sections.add(DesignSections.strips(answers));
        sections.add(DesignSections.blanks(answers));
        sections.add(SawSections.crosscuts(answers));
        sections.add(SawSections.closingTest(answers));
        sections.add(GluingSections.panels(answers));
        sections.add(SawSections.bevels(answers));
        sections.add(GluingSections.solid(answers));
        sections.add(LatheSections.mounting(answers));
        sections.add(LatheSections.roughing(answers));
        sections.add(LatheSections.finishing(answers));
        boolean wanted = request.templates() == null || request.templates();
        Templates templates = wanted ? Templates.of(answers, paper) : new Templates(List.of(), List.of());
        if (wanted) {
            sections.add(templates.section(answers, metric ? METRIC_BAR : INCH_BAR));
        }
        List<Drawing> printed = templates.printed();
        return new ShopSheet(
                title(design), paper, answers.findings(), sections, metric ? METRIC_BAR : INCH_BAR, printed);
    }

    private static String title(Design design) {
        String name = design.request().name();
        return name == null || name.isBlank()
                ? "Sphere from a " + design.solid().name()
                : name;
    }
}
