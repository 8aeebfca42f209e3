package org.orbwright.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.document.Document;
import org.orbwright.document.PaperPart;
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

    /** A section of the sheet: its part, when a build has it, and what is written. */
    private record Card(PaperPart part, Predicate<Answers> there, Function<Answers, Section> section) {}

    /** All sections but the templates, in the order of the work. */
    private static final List<Card> CARDS = List.of(
            new Card(PaperPart.SUMMARY, answers -> true, DesignSections::brief),
            new Card(
                    PaperPart.BANDS,
                    answers -> answers.build().bands() != null,
                    answers -> SummarySections.bands(answers.build())),
            new Card(PaperPart.MOVEMENT, answers -> answers.build().movement() != null, OtherSections::movement),
            new Card(PaperPart.BOARDS, answers -> answers.stock() != null, StockSections::cuts),
            new Card(PaperPart.STRIPS, answers -> answers.yields() != null, DesignSections::strips),
            new Card(PaperPart.BLANKS, answers -> answers.yields() != null, DesignSections::blanks),
            new Card(PaperPart.SEGMENTS, answers -> answers.jig() != null, SawSections::crosscuts),
            new Card(PaperPart.SEGMENTS, answers -> answers.jig() != null, SawSections::closingTest),
            new Card(PaperPart.TRIALS, answers -> answers.jig() != null, TrialSection::trials),
            new Card(PaperPart.PANELS, answers -> answers.assembly() != null, GluingSections::panels),
            new Card(PaperPart.BEVELS, answers -> answers.jig() != null, SawSections::bevels),
            new Card(PaperPart.INLAYS, answers -> answers.build().inlays() != null, OtherSections::inlays),
            new Card(PaperPart.SOLID, answers -> answers.assembly() != null, GluingSections::solid),
            new Card(PaperPart.BALANCE, answers -> answers.build().balance() != null, OtherSections::balance),
            new Card(PaperPart.TURNING, answers -> answers.turning() != null, LatheSections::mounting),
            new Card(PaperPart.TURNING, answers -> answers.turning() != null, LatheSections::roughing),
            new Card(PaperPart.FINISH, answers -> answers.turning() != null, LatheSections::finishing));

    private ShopSheetCalculator() {}

    /**
     * The sheet of a build, for a document that keeps its Bean Validation constraints.
     *
     * @throws ImpossibleDesignException if the design, or what a section says of it, cannot exist
     */
    public static ShopSheet sheet(Document document) {
        return sheet(document, SheetCalculator.build(document, STATIONS));
    }

    /** The sheet of a build that is calculated already. */
    public static ShopSheet sheet(Document document, Answer build) {
        Design design = Design.of(document.design());
        LengthUnit unit = design.unit();
        Bar bar = unit == LengthUnit.MM ? METRIC_BAR : INCH_BAR;
        PaperRequest paper = (document.paper() == null ? new PaperRequest(null, null) : document.paper()).filled(unit);
        Answers answers = new Answers(design, build, paper);
        Set<PaperPart> missing = new LinkedHashSet<>(document.paper() == null ? List.of() : asked(document.paper()));
        List<Section> sections = new ArrayList<>();
        if (!answers.prints(PaperPart.SUMMARY)) {
            sections.add(DesignSections.before(answers));
        }
        for (Card card : CARDS) {
            if (answers.prints(card.part()) && card.there().test(answers)) {
                sections.add(card.section().apply(answers));
                missing.remove(card.part());
            }
        }
        Templates templates = new Templates(List.of(), List.of());
        if (answers.prints(PaperPart.TEMPLATES) && answers.turning() != null) {
            templates = Templates.of(answers, paper.size());
            sections.add(templates.section(answers, bar));
            missing.remove(PaperPart.TEMPLATES);
        }
        return new ShopSheet(
                title(document),
                paper.size(),
                byGravity(answers.findings()),
                missing.stream().map(PaperPart::name).toList(),
                sections,
                bar,
                templates.printed());
    }

    private static List<PaperPart> asked(PaperRequest paper) {
        return paper.parts() == null ? List.of() : paper.parts();
    }

    /** The first page has the gravest first: what must not be cut is read before all else. */
    private static List<Finding> byGravity(List<Finding> findings) {
        return findings.stream().sorted(Comparator.comparing(Finding::severity)).toList();
    }

    /** What a document's build is called. */
    public static String title(Document document) {
        String name = document.name();
        return name == null || name.isBlank() ? "Sphere from " + Article.with(document.solid()) : name;
    }
}
