package org.orbwright.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.DesignRequest;
import org.orbwright.diagnosis.DialInRequest;
import org.orbwright.diagnosis.DialSetting;
import org.orbwright.document.Document;
import org.orbwright.document.PaperPart;
import org.orbwright.document.PaperRequest;
import org.orbwright.document.PaperSize;
import org.orbwright.drawing.Drawing;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Stocks;
import org.orbwright.paper.ShopSheet.Advice;
import org.orbwright.paper.ShopSheet.Picture;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.paper.ShopSheet.Step;
import org.orbwright.paper.ShopSheet.Table;
import org.orbwright.paper.ShopSheet.Text;
import org.orbwright.paper.ShopSheet.Value;
import org.orbwright.sheet.Caution;
import org.orbwright.sheet.Finding;
import org.orbwright.sheet.FindingCode;
import org.orbwright.sheet.SheetCalculator;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.solid.SolidSummary;
import org.orbwright.stock.CutStep;

/** What stands on a sheet, and where. */
@Slow
class ShopSheetCalculatorTest {
    /** What is done on each page of the worked document with every section; its panels are not made in halves. */
    private static final Map<String, List<Caution.Step>> DONE = Map.ofEntries(
            Map.entry("The design in brief", List.of(Caution.Step.GENERAL)),
            Map.entry("Bands that are seen on the sphere", List.of()),
            Map.entry("Movement of the wood", List.of()),
            Map.entry(
                    "Cutting the boards", List.of(Caution.Step.SURFACING, Caution.Step.RIPPING, Caution.Step.RESAWING)),
            Map.entry("Strips", List.of(Caution.Step.RIPPING)),
            Map.entry("Blanks", List.of(Caution.Step.GLUING, Caution.Step.SURFACING)),
            Map.entry("Crosscutting the segments", List.of(Caution.Step.SETTING_UP, Caution.Step.CROSSCUTTING)),
            Map.entry("Closing test", List.of()),
            Map.entry("Trials of the saw", List.of()),
            Map.entry("Gluing the panels", List.of(Caution.Step.GLUING)),
            Map.entry("Bevelling the panels", List.of(Caution.Step.SETTING_UP, Caution.Step.BEVELLING)),
            Map.entry("Inlays", List.of(Caution.Step.CROSSCUTTING, Caution.Step.INLAYING)),
            Map.entry("Gluing the solid", List.of(Caution.Step.GLUING)),
            Map.entry("Balance on the lathe", List.of(Caution.Step.MOUNTING, Caution.Step.BALANCING)),
            Map.entry("Mounting between discs", List.of(Caution.Step.MOUNTING)),
            Map.entry(
                    "Roughing to the sphere",
                    List.of(Caution.Step.TURNING, Caution.Step.MILLING, Caution.Step.REVERSING)),
            Map.entry("Sanding and finishing", List.of(Caution.Step.SANDING, Caution.Step.FINISHING)),
            Map.entry("Full-size templates", List.of(Caution.Step.OUTLINES)));

    private static ShopSheet sheet(Designs design) {
        return ShopSheetCalculator.sheet(design.document());
    }

    private static Section section(ShopSheet sheet, String title) {
        return sheet.sections().stream()
                .filter(section -> section.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    private static Value value(Section section, String label) {
        return section.steps().stream()
                .filter(Value.class::isInstance)
                .map(Value.class::cast)
                .filter(value -> value.label().startsWith(label))
                .findFirst()
                .orElseThrow();
    }

    private static String texts(Section section) {
        StringBuilder texts = new StringBuilder();
        section.steps().stream()
                .filter(step -> !(step instanceof Picture))
                .forEach(step -> texts.append(step).append('\n'));
        return texts.toString();
    }

    /** Check values that the trade knows (common practice, no source), as in the README's worked example. */
    @Test
    void theKnownDodecahedronHasItsKnownNumbers() {
        ShopSheet sheet = sheet(Designs.example("dodecahedron-two-spheres"));
        assertEquals(
                "31.72",
                value(section(sheet, "Bevelling the panels"), "Blade tilt").number());
        assertEquals(
                "36",
                value(section(sheet, "Crosscutting the segments"), "Mitre gauge")
                        .number());
        Value base = value(section(sheet, "Crosscutting the segments"), "Stop to blade");
        assertEquals("3.143", base.number());
        assertEquals("in", base.unit());
        assertEquals("3 9/64 + 0.003", base.fraction());
        assertEquals("10", value(section(sheet, "Blanks"), "Blanks").number());
    }

    /** A blank for each of the four kinds of stick is counted, which together are all blanks. */
    @Test
    void sticksAcrossTheBlankHaveTheirAngleAndWidth() {
        Section blanks = section(sheet(Designs.example("deltoidal-hexecontahedron-upright-bands")), "Blanks");
        assertEquals("90", value(blanks, "Band angle").number());
        assertEquals("0", value(blanks, "Mitre gauge from square").number());
        assertEquals("12", value(blanks, "Blanks").number());
        int sum = 0;
        for (String letter : List.of("A", "A*", "B", "B*")) {
            sum += Integer.parseInt(blanks.steps().stream()
                    .filter(step -> step instanceof Value value && value.label().equals("Blanks for segment " + letter))
                    .map(step -> ((Value) step).number())
                    .findFirst()
                    .orElseThrow());
        }
        assertEquals(12, sum);
        assertTrue(texts(blanks).contains("Cuts are square to its edge."), texts(blanks));
    }

    /** A cube 200 across flats has a base distance of 100; across bands at 60 degrees that is 100 / sin 60 = 115.47. */
    @Test
    void sticksThatLeanAreWiderAlongTheEdge() {
        Section blanks = section(
                sheet(Designs.of("cube").acrossFlats(200).bands(60, List.of(Designs.band("sugar maple", null)))),
                "Blanks");
        assertEquals("60", value(blanks, "Band angle").number());
        assertEquals("30", value(blanks, "Mitre gauge from square").number());
        assertEquals("100", value(blanks, "Width of a stick").number());
        assertEquals("115.47", value(blanks, "The same along").number());
        assertTrue(texts(blanks).contains("cuts lean to the left."), texts(blanks));
    }

    @Test
    void aFenceIsNotNamedWhereThereIsNoLand() {
        String without = texts(section(sheet(Designs.example("dodecahedron-two-spheres")), "Bevelling the panels"));
        assertTrue(without.contains("There is no land"), without);
        assertFalse(without.contains("bears on a fence"), without);
        assertFalse(without.contains("Fence to"), without);
        String with = texts(section(sheet(Designs.example("dodecahedron-with-land")), "Bevelling the panels"));
        assertTrue(with.contains("the land, which bears on a fence"), with);
        assertTrue(with.contains("Fence to where"), with);
    }

    /** 60 segments are wanted; a blank gives 12, six of each set, or all 12 where the sets are alike. */
    @Test
    void theSetThatIsCutIsNamedWhereBothComeOut() {
        String one =
                texts(section(sheet(Designs.example("dodecahedron-with-land").copies(1)), "Crosscutting the segments"));
        assertTrue(one.contains("Cut 60 upright segments. Left over: "), one);
        String pair = texts(section(sheet(Designs.example("dodecahedron-two-spheres")), "Crosscutting the segments"));
        assertTrue(
                pair.contains("Cut 60 upright and 60 inverted segments. Left over: 0 upright and 0 inverted."), pair);
        String alike = texts(section(
                sheet(Designs.example("deltoidal-hexecontahedron-upright-bands")), "Crosscutting the segments"));
        assertTrue(alike.contains("Cut 60 segments. Left over: "), alike);
        assertFalse(alike.contains("inverted"), alike);
    }

    /** The corner of the hollow is 60 sqrt 3 = 103.92 from the centre, 13.92 beyond the sphere. */
    @Test
    void aSphereThatBreaksThroughHasNoThinnestWall() {
        ShopSheet sheet = sheet(Designs.of("cube").diameter(180.0).thickness(40));
        for (String title : List.of("The design in brief", "Sanding and finishing")) {
            assertEquals(
                    "13.92",
                    value(section(sheet, title), "No wall: the hollow reaches beyond the sphere by")
                            .number());
            assertFalse(texts(section(sheet, title)).contains("Thinnest wall"), title);
        }
    }

    /** 4 pi 86^2 = 92,941 square millimetres. */
    @Test
    void largeMeasuresAreInLargeUnits() {
        ShopSheet sheet = sheet(Designs.of("cube").diameter(172.0));
        Value surface = value(section(sheet, "Sanding and finishing"), "Surface");
        assertEquals("929.4 cm²", surface.number() + " " + surface.unit());
        Value glued = value(section(sheet, "Gluing the solid"), "Length of all");
        assertEquals("m", glued.unit());
        assertEquals("", glued.fraction());
    }

    @Test
    void blanksOfHalfTheSegmentsHaveAHeadingThatReads() {
        ShopSheet sheet = sheet(Designs.example("truncated-octahedron-alternating"));
        String strips = texts(section(sheet, "Strips"));
        assertTrue(strips.contains("Strips for blanks of the hexagon's odd segments"), strips);
        assertTrue(strips.contains("Strips for square blanks"), strips);
        assertTrue(texts(section(sheet, "Blanks")).contains("Blanks of the hexagon's odd segments"));
    }

    @Test
    void theRingGaugesOfALargeSphereTakeOnePage() {
        ShopSheet large = sheet(Designs.example("deltoidal-hexecontahedron-upright-bands"));
        Drawing quarter = rings(large);
        assertEquals("Ring gauges, a quarter of each", quarter.title());
        assertEquals(1, Tiling.of(quarter, large.paper()).tiles());
        Drawing whole = rings(sheet(Designs.example("dodecahedron-two-spheres")));
        assertEquals("Ring gauges: cut one circle from each print", whole.title());
    }

    private static Drawing rings(ShopSheet sheet) {
        return sheet.templates().stream()
                .filter(template -> template.title().startsWith("Ring gauges"))
                .findFirst()
                .orElseThrow();
    }

    /** 20 mm of walnut and 1 mm for planing; a panel of 28 mm and 2 mm for flattening the blank. */
    @Test
    void stripsAreRippedToTheSizesOfTheCutList() {
        ObjectNode boards = Stocks.oneWood(1);
        ShopSheet planned = ShopSheetCalculator.sheet(Stocks.document(boards));
        assertEquals(List.of("1", "sugar maple", "21", "30", "20"), row(planned));
        CutStep strip = SheetCalculator.cuts(Stocks.document(boards)).cuts().stream()
                .filter(step -> step.band() != null && step.band() == 4)
                .findFirst()
                .orElseThrow();
        assertEquals(30, strip.thickness(), 1e-9);
        assertTrue(texts(section(planned, "Cutting the boards")).contains("Settings are measured"));
        assertTrue(cuts(planned).stream().anyMatch(row -> row.get(6).equals("band 4")));
        ShopSheet unplanned = sheet(Designs.example("dodecahedron-with-land"));
        assertEquals(List.of("1", "black walnut", "20", "28", "20"), row(unplanned));
        assertTrue(unplanned.sections().stream().noneMatch(each -> each.title().equals("Cutting the boards")));
    }

    private static List<List<String>> cuts(ShopSheet sheet) {
        return section(sheet, "Cutting the boards").steps().stream()
                .filter(ShopSheet.Table.class::isInstance)
                .map(step -> (ShopSheet.Table) step)
                .filter(table -> table.headings().get(0).equals("Step"))
                .flatMap(table -> table.rows().stream())
                .toList();
    }

    /** The strip of 24.8 / 25.6 in is 31/32 in wide. */
    @Test
    void theCutListOnPaperHasFractionsAndTheNamesOfStrips() {
        List<List<String>> rows = cuts(ShopSheetCalculator.sheet(Stocks.document(Stocks.twoFaces("in", 25.6))));
        List<String> strip = rows.stream()
                .filter(row -> row.get(6).equals("square, band 1"))
                .findFirst()
                .orElseThrow();
        assertEquals("0.969 (31/32)", strip.get(4));
        assertEquals("board", rows.get(0).get(6));
    }

    @Test
    void offersWithoutANameAreBoughtByTheirSizes() {
        ObjectNode boards = Stocks.twoFaces("mm", 1);
        boards.set(
                "offers", Stocks.read("[{'species':'red alder','length':2000,'width':100,'thickness':26,'price':7}]"));
        boards.withArray("boards").remove(1);
        ShopSheet sheet = ShopSheetCalculator.sheet(Stocks.document(boards));
        List<String> row = section(sheet, "Cutting the boards").steps().stream()
                .filter(ShopSheet.Table.class::isInstance)
                .map(step -> ((ShopSheet.Table) step).rows().get(0))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("-", "red alder", "2000", "100", "26"), row.subList(1, 6));
    }

    /** Without saw and blank nothing is laid out along a blank, and no template of one is printed. */
    @Test
    void aDesignWithoutBlanksIsPrintedWithoutThem() {
        DesignRequest r = Designs.of("cube").request();
        ShopSheet sheet = ShopSheetCalculator.sheet(Document.of(new DesignRequest(
                null,
                r.unit(),
                r.solid(),
                1,
                null,
                null,
                null,
                r.size(),
                r.panel(),
                r.laminations(),
                r.woods(),
                null,
                null,
                r.sphere())));
        List<String> titles = sheet.sections().stream().map(Section::title).toList();
        assertTrue(titles.contains("Full-size templates"), titles::toString);
        assertTrue(!titles.contains("Blanks") && !titles.contains("Strips"), titles::toString);
    }

    @Test
    void everySectionOfTheDocumentIsPrinted() throws IOException {
        ShopSheet sheet = ShopSheetCalculator.sheet(tide());
        List<String> titles = sheet.sections().stream().map(Section::title).toList();
        for (String title :
                List.of("Movement of the wood", "Cutting the boards", "Strips", "Inlays", "Balance on the lathe")) {
            assertTrue(titles.contains(title), titles::toString);
        }
        String inlays = texts(section(sheet, "Inlays"));
        // As /v1/inlays has it, by the same numbers.
        assertTrue(inlays.contains("[knot, 1, "), inlays);
        for (String told : List.of("gannet", "the blade then enters at the thin tip", "Plug that hides it, diameter")) {
            assertTrue(inlays.contains(told), inlays);
        }
    }

    private static Document tide() throws IOException {
        try (InputStream in = Designs.class.getResourceAsStream("/designs/icosahedron-mixed.json")) {
            return JsonMapper.builder()
                    .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
                    .build()
                    .readValue(in, Document.class);
        }
    }

    private static List<String> row(ShopSheet sheet) {
        return section(sheet, "Strips").steps().stream()
                .filter(Table.class::isInstance)
                .map(Table.class::cast)
                .findFirst()
                .orElseThrow()
                .rows()
                .get(0)
                .subList(0, 5);
    }

    @Test
    void paperGoesWithTheUnitAndMillimetresHaveNoFractions() {
        assertEquals(
                PaperSize.LETTER,
                sheet(Designs.example("dodecahedron-two-spheres")).paper());
        ShopSheet metric = sheet(Designs.example("dodecahedron-with-land"));
        assertEquals(PaperSize.A4, metric.paper());
        for (Section section : metric.sections()) {
            section.steps().stream()
                    .filter(Value.class::isInstance)
                    .forEach(step -> assertEquals("", ((Value) step).fraction()));
        }
    }

    @Test
    void everyStageHasTheCautionsOfWhatIsDoneThereOnce() throws IOException {
        ShopSheet sheet = ShopSheetCalculator.sheet(tide());
        assertEquals(
                DONE.keySet(), sheet.sections().stream().map(Section::title).collect(Collectors.toSet()));
        for (Section section : sheet.sections()) {
            assertEquals(
                    DONE.get(section.title()).stream()
                            .flatMap(step -> step.cautions().stream())
                            .map(Caution::text)
                            .distinct()
                            .toList(),
                    cautions(section),
                    section.title());
        }
    }

    private static List<String> cautions(Section section) {
        return section.steps().stream()
                .filter(Advice.class::isInstance)
                .map(step -> ((Advice) step).caution().text())
                .toList();
    }

    private static List<String> texts(Caution.Step step) {
        return step.cautions().stream().map(Caution::text).toList();
    }

    @Test
    void halvesAreTruedWithTheCautionsOfTheDiscSander() {
        assertTrue(cautions(section(sheet(Designs.of("cube")), "Gluing the panels"))
                .containsAll(texts(Caution.Step.DISC_SANDING)));
    }

    @Test
    void sticksAreSawnWithTheCautionsOfCrosscutting() {
        assertTrue(cautions(section(sheet(Designs.example("deltoidal-hexecontahedron-upright-bands")), "Blanks"))
                .containsAll(texts(Caution.Step.CROSSCUTTING)));
    }

    @Test
    void findingsComeGravestFirstAndOnce() {
        List<Finding> findings =
                sheet(Designs.example("dodecahedron-vanishing-rim")).findings();
        assertEquals(FindingCode.BAND_VANISHES, findings.get(0).code());
        assertEquals(
                findings.size(),
                findings.stream().map(Finding::message).distinct().count());
    }

    @Test
    void templatesOfTooManyPagesAreLeftOutInWords() {
        ShopSheet sheet = sheet(Designs.of("dodecahedron").acrossFlats(20_000).blank(60_000));
        List<String> texts = section(sheet, "Full-size templates").steps().stream()
                .filter(Text.class::isInstance)
                .map(step -> ((Text) step).text())
                .toList();
        assertTrue(texts.stream().anyMatch(text -> text.startsWith("Left out: Pentagon panel")), texts::toString);
        assertTrue(sheet.templates().isEmpty());
    }

    @Test
    void templatesAreNotThereWhereTheyAreNotWanted() {
        ShopSheet sheet = ShopSheetCalculator.sheet(Designs.of("cube")
                .document(
                        org.orbwright.document.Section.PAPER,
                        new PaperRequest(PaperSize.A4, List.of(PaperPart.BEVELS, PaperPart.SUMMARY))));
        assertTrue(sheet.templates().isEmpty());
        assertEquals(
                List.of("The design in brief", "Bevelling the panels"),
                sheet.sections().stream().map(Section::title).toList());
        assertEquals(List.of(), sheet.missing());
    }

    /** What fits is not what is safe: that is said whatever is printed, and trial cuts have their cautions. */
    @Test
    void aPartAloneHasItsCautions() {
        ShopSheet trials = ShopSheetCalculator.sheet(Designs.of("cube")
                .document(org.orbwright.document.Section.PAPER, new PaperRequest(null, List.of(PaperPart.TRIALS))));
        assertEquals(texts(Caution.Step.GENERAL), cautions(section(trials, "Before the first cut")));
        assertTrue(cautions(section(trials, "Trials of the saw")).containsAll(texts(Caution.Step.CROSSCUTTING)));
        assertTrue(cautions(section(trials, "Trials of the saw")).containsAll(texts(Caution.Step.BEVELLING)));
    }

    /** Two blanks of one face kind have woods of their own, and their tiles must not be mixed up. */
    @ParameterizedTest
    @MethodSource("solids")
    void noTwoTemplatesHaveOneTitle(String solid) {
        titlesDiffer(sheet(Designs.of(solid)));
    }

    @Test
    void templatesOfHalvesDiffer() {
        titlesDiffer(sheet(Designs.example("truncated-octahedron-alternating")));
    }

    private static void titlesDiffer(ShopSheet sheet) {
        List<String> titles = sheet.templates().stream().map(Drawing::title).toList();
        assertEquals(titles.size(), Set.copyOf(titles).size(), titles::toString);
    }

    /** A set-up, a board and a section are fitted to the sheet; panels, nets and spheres have their own size. */
    @Test
    void onlyWhatIsDrawnAtItsSizeHasAScale() throws IOException {
        for (Section section : ShopSheetCalculator.sheet(tide()).sections()) {
            for (Step step : section.steps()) {
                if (step instanceof Picture picture) {
                    String title = picture.drawing().title();
                    boolean fitted = title.matches("Section.*|Board.*|Bevel.*|Segment .* leg, from above");
                    assertEquals(!fitted, picture.trueSize(), title);
                }
            }
        }
    }

    @Test
    void aPartThatTheBuildDoesNotHaveIsTold() {
        ShopSheet sheet = ShopSheetCalculator.sheet(Designs.of("cube")
                .document(
                        org.orbwright.document.Section.PAPER,
                        new PaperRequest(null, List.of(PaperPart.BOARDS, PaperPart.INLAYS, PaperPart.BEVELS))));
        assertEquals(List.of("BOARDS", "INLAYS"), sheet.missing());
        assertTrue(sheet.opening().contains("Not printed, since the document has nothing for it: BOARDS, INLAYS."));
    }

    /** The columns are the components of a trial, so that what is written down can be sent. */
    @Test
    void trialsAreWrittenDownAsTheDiagnosisReadsThem() {
        ShopSheet sheet = sheet(Designs.example("dodecahedron-with-land"));
        Table table = section(sheet, "Trials of the saw").steps().stream()
                .filter(Table.class::isInstance)
                .map(Table.class::cast)
                .findFirst()
                .orElseThrow();
        assertEquals(
                Arrays.stream(DialInRequest.TrialRequest.class.getRecordComponents())
                        .map(RecordComponent::getName)
                        .toList(),
                table.headings().subList(2, table.headings().size()));
        for (DialSetting setting : DialSetting.values()) {
            assertTrue(
                    table.rows().stream()
                            .anyMatch(
                                    row -> row.get(0).startsWith(setting.name().toLowerCase(Locale.ROOT))),
                    setting.name());
        }
    }

    static Stream<String> solids() {
        return SolidCatalogue.summaries().stream().map(SolidSummary::name);
    }

    @ParameterizedTest
    @MethodSource("solids")
    void everySolidHasASheet(String solid) {
        ShopSheet sheet = sheet(Designs.of(solid));
        assertEquals(14, sheet.sections().size());
        assertTrue(PdfWriter.write(sheet).length > 10_000);
        assertTrue(HtmlWriter.write(sheet).endsWith("</html>"));
    }
}
