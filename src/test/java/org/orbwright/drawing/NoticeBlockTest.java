package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.fixture.PngTexts;
import org.orbwright.fixture.Slow;
import org.orbwright.notice.Notice;
import org.orbwright.notice.Notice.Kind;

/** STOPs above pictures: legible, and clear of all that is drawn. */
@Slow
class NoticeBlockTest {
    private static final Notice STOP = new Notice(
            Kind.STOP,
            "BREAK_THROUGH",
            "The 206 mm sphere breaks through to the hollow at the corners of the triangle panels, and the hollow"
                    + " reaches 10.26 mm beyond the sphere there.");
    private static final Notice WARN = new Notice(Kind.WARN, "SMALL_SEGMENT", "A side is only 40 mm <long> & \u00fc.");

    private static Drawing plain() {
        return DrawnDesigns.drawings(DrawnDesigns.example("dodecahedron-with-land"))
                .get("section");
    }

    private static List<Label> reversed(Drawing drawing) {
        return drawing.marks().stream()
                .filter(mark -> mark instanceof Label label && label.letters() == Letters.REVERSED)
                .map(Label.class::cast)
                .toList();
    }

    private static String written(Mark mark) {
        if (mark instanceof Label label) {
            return "%.3f %.3f %s".formatted(label.x(), label.y(), label.text());
        }
        if (mark instanceof Shade shade) {
            return "Shade %.2f %.2f %.2f".formatted(shade.x(), shade.y(), shade.radius());
        }
        PathData path = mark instanceof Area area
                ? area.path()
                : mark instanceof Paper paper
                        ? paper.path()
                        : mark instanceof Ink ink ? ink.path() : ((Line) mark).path();
        StringBuilder text = new StringBuilder(mark.getClass().getSimpleName());
        for (PathData.Command command : path.commands()) {
            if (command instanceof PathData.Move move) {
                text.append(" move %.2f %.2f".formatted(move.x(), move.y()));
            } else if (command instanceof PathData.Straight straight) {
                text.append(" to %.2f %.2f".formatted(straight.x(), straight.y()));
            } else if (command instanceof PathData.Arc arc) {
                text.append(" arc %.2f %.2f %b %b %.2f %.2f"
                        .formatted(arc.radiusX(), arc.radiusY(), arc.large(), arc.clockwise(), arc.x(), arc.y()));
            } else {
                text.append(" close");
            }
        }
        return text.toString();
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#examples")
    void theBlockLiesAboveAllThatIsDrawn(String example) {
        DrawnDesigns.drawings(DrawnDesigns.example(example)).forEach((name, drawing) -> {
            Drawing told = drawing.with(List.of(STOP, WARN));
            SvgDocument.of(told).check(told);
            told.marks().forEach(mark -> EveryDrawingTest.labelOnSheet(told, mark));
            double height = told.height() - drawing.height();
            int added = told.marks().size() - drawing.marks().size();
            List<Mark> block = told.marks().subList(0, added);
            assertEquals(written(new Ink(new Box(0, 0, drawing.width(), height).path())), written(block.get(0)));
            String words = block.subList(1, added).stream()
                    .map(mark -> ((Label) mark).text())
                    .collect(Collectors.joining(" "));
            assertEquals(STOP.line(), words, name);
            block.subList(1, added).forEach(mark -> {
                Label label = (Label) mark;
                assertTrue(label.y() + 0.3 * label.size() <= height, "ends in the block: " + label);
                assertTrue(label.size() >= drawing.width() / 50, "can be read: " + label);
            });
            List<String> lifted = told.marks().subList(added, told.marks().size()).stream()
                    .map(mark -> written(mark.lowered(-height)))
                    .toList();
            assertEquals(drawing.marks().stream().map(NoticeBlockTest::written).toList(), lifted, name);
        });
    }

    @Test
    void whiteLettersStandOnInk() {
        Drawing drawing = plain();
        Drawing told = drawing.with(List.of(STOP));
        int dots = 1000;
        BufferedImage image = EveryDrawingTest.image(told, dots);
        int bottom = (int) ((told.height() - drawing.height()) * dots / told.width());
        int ink = 0;
        int paper = 0;
        // Where the picture begins and ends, a dot may be half paper.
        for (int y = 1; y < bottom; y++) {
            for (int x = 0; x < dots; x++) {
                int colour = image.getRGB(x, y) & 0xffffff;
                ink += colour == 0x1c1c1c ? 1 : 0;
                paper += colour == 0xffffff ? 1 : 0;
            }
            assertEquals(0x1c1c1c, image.getRGB(dots - 5, y) & 0xffffff, "the block reaches across the picture");
        }
        assertTrue(ink > 0.6 * dots * bottom, ink + " dots of ink");
        assertTrue(paper > 0.04 * dots * bottom, paper + " dots of letters");
        assertEquals(0xffffff, image.getRGB(5, bottom + 3) & 0xffffff);
    }

    @Test
    void onlyStopsAreShownAndWarningsAreDescribed() {
        Drawing drawing = plain();
        Drawing told = drawing.with(List.of(WARN));
        assertEquals(drawing.height(), told.height());
        assertEquals(drawing.marks().size(), told.marks().size());
        assertEquals(WARN.line() + " " + drawing.description(), told.description());
        assertEquals(SvgWriter.write(drawing), SvgWriter.write(drawing.with(List.of())));
    }

    @Test
    void aPictureDoesNotGrowWithoutBoundsAndSaysWhatItLeavesOut() {
        Drawing drawing = plain();
        Drawing told = drawing.with(Collections.nCopies(100, STOP));
        assertTrue(told.height() - drawing.height() < 0.9 * drawing.width());
        List<Label> lines = reversed(told);
        assertTrue(lines.get(lines.size() - 1).text().contains("There are 100 STOPs."));
        assertEquals(100, told.description().split(STOP.code(), -1).length - 1);
    }

    @Test
    void aPictureOfDotsHasItsDescriptionInTheFile() {
        Drawing told = plain().with(List.of(STOP, WARN));
        Map<String, String> texts = PngTexts.of(PngRenderer.render(told, 200).bytes());
        assertEquals(Map.of("Title", told.title(), "Description", told.description()), texts);
        assertTrue(texts.get("Description").startsWith(STOP.line() + " " + WARN.line() + " "));
    }
}
