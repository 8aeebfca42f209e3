package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Stocks;
import org.orbwright.fixture.Stocks.Planned;
import org.orbwright.stock.CutBoard;
import org.orbwright.stock.CutBoard.LaneCut;
import org.orbwright.stock.CutBoard.Section;
import org.orbwright.stock.StockPlan;

/** Boards are drawn as they are planned: what is written as SVG is read again and measured. */
@Slow
class BoardDrawingTest {
    /** Coordinates are written to a thousandth of a millimetre. */
    private static final double WRITTEN = 0.0021;

    private static List<Drawing> drawings(Planned planned) {
        return IntStream.rangeClosed(1, planned.plan().boards().size())
                .mapToObj(number -> BoardDrawing.draw(planned.design(), planned.plan(), number))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void areStructurallyValidSvg(Planned planned) {
        drawings(planned).forEach(drawing -> SvgDocument.of(drawing).check(drawing));
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void haveLabelsOnTheSheetThatHideNoOther(Planned planned) {
        for (Drawing drawing : drawings(planned)) {
            List<Envelope> labels = drawing.marks().stream()
                    .filter(Label.class::isInstance)
                    .map(mark -> room((Label) mark))
                    .toList();
            Envelope sheet = new Envelope(0, drawing.width(), 0, drawing.height());
            for (int i = 0; i < labels.size(); i++) {
                assertTrue(sheet.contains(labels.get(i)), drawing.title() + ": " + labels.get(i));
                for (int j = 0; j < i; j++) {
                    assertFalse(
                            labels.get(i).intersects(labels.get(j)),
                            drawing.title() + ": " + labels.get(i) + " and " + labels.get(j));
                }
            }
        }
    }

    private static Envelope room(Label label) {
        double width = Lettering.width(label.text(), label.size());
        double left =
                label.x() - (label.anchor() == Anchor.START ? 0 : label.anchor() == Anchor.MIDDLE ? width / 2 : width);
        return new Envelope(left, left + width, label.y() - 0.72 * label.size(), label.y());
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void showLanesAndKerfsToScaleFromAbove(Planned planned) {
        for (CutBoard board : planned.plan().boards()) {
            Drawing drawing = BoardDrawing.draw(planned.design(), planned.plan(), board.number());
            Envelope rough = outline(drawing, Pen.DASHED, 0);
            Envelope clear = outline(drawing, Pen.MEDIUM, 0);
            double along = rough.getWidth() / board.length();
            double across = rough.getHeight() / board.width();
            assertEquals(board.clearLength(), clear.getWidth() / along, WRITTEN / along);
            assertEquals(board.clearWidth(), clear.getHeight() / across, WRITTEN / across);
            double stretch = across / along;
            assertTrue(stretch < 1.005 || drawing.description().contains("times as large as along it"));
            List<Envelope> seen = areas(drawing, clear);
            List<Envelope> planned1 = new ArrayList<>();
            for (Section section : board.sections()) {
                if (section.isKept()) {
                    planned1.add(new Envelope(
                            clear.getMinX() + along * section.from(),
                            clear.getMinX() + along * section.to(),
                            clear.getMinY(),
                            clear.getMaxY()));
                }
                for (LaneCut lane : section.lanes()) {
                    planned1.add(new Envelope(
                            clear.getMinX() + along * section.from(),
                            clear.getMinX() + along * section.to(),
                            clear.getMinY() + across * lane.from(),
                            clear.getMinY() + across * lane.to()));
                }
            }
            same(planned1, seen);
        }
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void showStripsToScaleFromTheEnd(Planned planned) {
        for (CutBoard board : planned.plan().boards()) {
            Drawing drawing = BoardDrawing.draw(planned.design(), planned.plan(), board.number());
            List<Section> kinds = new SectionKinds(board)
                    .firsts().stream().filter(section -> !section.isKept()).toList();
            for (int kind = 0; kind < kinds.size(); kind++) {
                Envelope end = outline(drawing, Pen.MEDIUM, kind + 1);
                double scale = end.getWidth() / board.clearWidth();
                double deep = end.getHeight() / board.surfacedThickness();
                assertTrue(
                        Math.abs(deep / scale - 1) < 0.005
                                || drawing.description().contains("Their thickness is drawn"),
                        drawing.description());
                List<Envelope> expected = new ArrayList<>();
                for (LaneCut lane : kinds.get(kind).lanes()) {
                    if (lane.isKept()) {
                        expected.add(new Envelope(
                                end.getMinX() + scale * lane.from(),
                                end.getMinX() + scale * lane.to(),
                                end.getMinY(),
                                end.getMaxY()));
                    }
                    lane.strips()
                            .forEach(strip -> expected.add(new Envelope(
                                    end.getMinX() + scale * lane.from(),
                                    end.getMinX() + scale * lane.to(),
                                    end.getMinY() + deep * strip.from(),
                                    end.getMinY() + deep * strip.to())));
                }
                same(expected, areas(drawing, end));
            }
        }
    }

    private static void same(List<Envelope> expected, List<Envelope> seen) {
        Comparator<Envelope> order = Comparator.comparingDouble((Envelope box) -> Math.rint(box.getMinX() * 100))
                .thenComparing(Envelope::getMinY);
        List<Envelope> wanted = expected.stream().sorted(order).toList();
        List<Envelope> found = seen.stream().sorted(order).toList();
        assertEquals(wanted.size(), found.size());
        for (int i = 0; i < wanted.size(); i++) {
            assertEquals(wanted.get(i).getMinX(), found.get(i).getMinX(), WRITTEN);
            assertEquals(wanted.get(i).getMaxX(), found.get(i).getMaxX(), WRITTEN);
            assertEquals(wanted.get(i).getMinY(), found.get(i).getMinY(), WRITTEN);
            assertEquals(wanted.get(i).getMaxY(), found.get(i).getMaxY(), WRITTEN);
        }
    }

    /** The areas with a wood's tone inside a view, read from the SVG. */
    private static List<Envelope> areas(Drawing drawing, Envelope view) {
        Envelope inside = new Envelope(view);
        inside.expandBy(WRITTEN);
        return SvgDocument.of(drawing).elements().stream()
                .filter(element -> element.getAttribute("fill").startsWith("url(#wood-"))
                .flatMap(element -> Arrays.stream(element.getAttribute("d").split("(?=M)", -1)))
                .map(BoardDrawingTest::box)
                .filter(inside::contains)
                .toList();
    }

    private static Envelope outline(Drawing drawing, Pen pen, int which) {
        return drawing.marks().stream()
                .filter(mark -> mark instanceof Line line && line.pen() == pen)
                .map(mark -> box(((Line) mark).path().toString()))
                .skip(which)
                .findFirst()
                .orElseThrow();
    }

    private static Envelope box(String path) {
        Envelope box = new Envelope();
        for (String point : path.replaceAll("[MZ]", "").split("L", -1)) {
            String[] numbers = point.split(" ", -1);
            box.expandToInclude(new Coordinate(Double.parseDouble(numbers[0]), Double.parseDouble(numbers[1])));
        }
        return box;
    }

    /** Nothing on a board but waste is without its wood's tone, and no other wood's tone is on it. */
    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void showABoardInItsOwnWoodAlone(Planned planned) {
        Legend woods = new Legend(planned.design());
        for (CutBoard board : planned.plan().boards()) {
            Drawing drawing = BoardDrawing.draw(planned.design(), planned.plan(), board.number());
            String wood = woods.species().stream()
                    .filter(name -> planned.design()
                            .woods()
                            .among(board.species(), List.of(name))
                            .equals(List.of(planned.design().woods().oneName(name))))
                    .findFirst()
                    .orElseThrow();
            assertEquals(
                    Set.of(woods.tone(wood)),
                    drawing.marks().stream()
                            .filter(Area.class::isInstance)
                            .map(mark -> ((Area) mark).tone())
                            .collect(Collectors.toSet()),
                    drawing.title());
        }
    }

    private static Set<String> texts(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Label.class::isInstance)
                .map(mark -> ((Label) mark).text())
                .collect(Collectors.toSet());
    }

    @Test
    void callStripsByTheirFaceAndBand() {
        Set<String> texts = texts(drawings(Stocks.twoFaces()).get(0));
        assertTrue(texts.containsAll(Set.of("triangle, band 1", "square, band 1", "square, band 3")), texts::toString);
        assertTrue(texts.contains("s1: square, band 1, 24.8 mm wide"), texts::toString);
        assertTrue(texts.containsAll(Set.of("spare", "waste")), texts::toString);
        Set<String> one = texts(drawings(Stocks.exact()).get(0));
        assertTrue(one.stream().noneMatch(text -> text.contains("pentagon")), one::toString);
    }

    /** 24.8 / 25.6 in is 0.96875 in, and 1/32 less than an inch. */
    @Test
    void giveFractionsBesideInches() {
        Drawing drawing = drawings(Stocks.twoFacesInInches()).get(0);
        Set<String> texts = texts(drawing);
        assertTrue(texts.contains("s1: square, band 1, 0.969 (31/32) in wide"), texts::toString);
        String caption = String.join(" ", texts).replace('\u00a0', ' ');
        assertTrue(
                caption.contains("To the nearest 1/64, and what the true length is more (+) or less (-): "), caption);
        assertTrue(caption.contains("50.125 = 50 1/8; "), caption);
        assertFalse(texts(drawings(Stocks.twoFaces()).get(0)).stream().anyMatch(text -> text.contains("1/64")));
    }

    @Test
    void tellWhatIsKeptFromWaste() {
        Drawing drawing = drawings(Stocks.inches()).get(0);
        assertTrue(texts(drawing).containsAll(Set.of("keep 46.75", "left over, to keep", "waste")));
        assertTrue(drawing.description().contains("Section C, from 46.25 (46 1/4) to 93 in: left over, to keep."));
    }

    @Test
    void sayWhichBoardsAreToBeBought() {
        assertTrue(
                drawings(Stocks.bought()).get(0).title().startsWith("Board 1 of 2, to be bought: maple, hard maple, "));
        assertFalse(drawings(Stocks.exact()).get(0).title().contains("bought"));
    }

    @Test
    void sayInWordsWhatIsSeen() {
        String words = drawings(Stocks.exact()).get(0).description();
        assertTrue(words.contains("Section A, from 0 to 584 mm: 0 to 21 mm from the jointed edge band "), words);
        assertTrue(drawings(Stocks.longBoard()).get(0).description().contains("turned on its side and sliced"));
    }

    @Test
    void showASectionThatIsKeptWhole() {
        Planned planned = Stocks.exact();
        CutBoard board = planned.plan().boards().get(0);
        Section ripped = board.sections().get(0);
        Section whole = new Section(ripped.to() + 3.2, ripped.to() + 203.2, List.of(), 0);
        Drawing drawing = BoardDrawing.draw(planned.design(), with(planned.plan(), longer(board, ripped, whole)), 1);
        SvgDocument.of(drawing).check(drawing);
        assertTrue(drawing.description().contains("Section B, from 587.2 to 787.2 mm: left over, to keep."));
        assertTrue(drawing.marks().stream()
                .anyMatch(mark -> mark instanceof Label label && label.text().equals("keep 200")));
    }

    private static CutBoard longer(CutBoard board, Section... sections) {
        return new CutBoard(
                1,
                0,
                null,
                null,
                board.species(),
                0,
                800,
                board.width(),
                board.thickness(),
                800,
                board.clearWidth(),
                board.surfacedThickness(),
                0,
                0,
                List.of(sections),
                9.6);
    }

    private static StockPlan with(StockPlan plan, CutBoard board) {
        return with(plan, List.of(board));
    }

    private static StockPlan with(StockPlan plan, List<CutBoard> boards) {
        return new StockPlan(
                true,
                plan.allowances(),
                plan.species(),
                plan.strips(),
                plan.layers(),
                List.of(),
                List.of(),
                boards,
                plan.rack(),
                List.of(),
                plan.stages(),
                0,
                0);
    }

    @Test
    void needABoardThatIsCut() {
        StockPlan none = with(Stocks.exact().plan(), List.of());
        ImpossibleDesignException refused =
                assertThrows(ImpossibleDesignException.class, () -> BoardDrawing.count(none));
        assertEquals("NO_BOARD_CUT", refused.violations().get(0).code());
    }

    @Test
    void writeNoCharacterThatXmlForbids() {
        Drawing drawing = new Drawing("a\u0001b", "\ud800c", 10, 10, List.of(), List.of());
        String title = SvgDocument.of(drawing).elements().get(0).getTextContent();
        assertEquals("a\ufffdb", title);
    }
}
