package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Stocks.Planned;
import org.orbwright.jig.JigCalculator;
import org.orbwright.jig.JigPlan.JigFace;
import org.orbwright.jig.JigRequest;
import org.orbwright.jig.TipCut.CutSide;

/**
 * The key of a picture names what is drawn: no wood more and none less. Both are read from the marks alone; which tone
 * a wood has follows from the order of the bands in the design.
 */
@Slow
class LegendTest {
    /** A tone and how much of it is hidden. */
    private record Look(int tone, double hidden) {}

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#examples")
    void namesTheWoodsOfAllAreasOfAnExample(String example) {
        all(DrawnDesigns.example(example));
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#solids")
    void namesTheWoodsOfAllAreasOnEverySolid(String solid) {
        all(DrawnDesigns.on(solid, 0, 30, 0, null));
    }

    @Test
    void namesTheWoodsOfTiltedBands() {
        all(DrawnDesigns.on("snub-cube", -35, 30, 2, null));
    }

    private static void all(Design design) {
        Map<String, Drawing> drawings = new LinkedHashMap<>(DrawnDesigns.drawings(design));
        for (Panel panel : design.panels()) {
            for (Piece piece : panel.pieces()) {
                drawings.put(
                        "segment " + panel.face() + panel.places() + piece.segment(),
                        SegmentDrawing.draw(design, panel, piece, BandSet.UPRIGHT));
            }
        }
        drawings.forEach((name, drawing) -> check(name, drawing, design));
    }

    private static void check(String name, Drawing drawing, Design design) {
        int first = keyStart(drawing);
        Map<String, Integer> key = new TreeMap<>();
        for (int i = first; i < drawing.marks().size(); i += 2) {
            key.put(
                    ((Label) drawing.marks().get(i + 1)).text(),
                    ((Area) drawing.marks().get(i)).tone());
        }
        Set<Integer> drawn = new TreeSet<>();
        for (Mark mark : drawing.marks().subList(0, first)) {
            if (mark instanceof Area area) {
                assertFalse(area.path().isEmpty(), name);
                drawn.add(area.tone());
            }
        }
        assertEquals(drawn, new TreeSet<>(key.values()), name);
        assertEquals(new TreeSet<>(drawing.species()), key.keySet(), name);
        Map<String, Integer> tones = tones(design);
        key.forEach((wood, tone) -> assertEquals(tones.get(wood), tone, name + ": " + wood));
    }

    /** Where the pairs of a box and its name begin with which a drawing ends. */
    private static int keyStart(Drawing drawing) {
        List<Mark> marks = drawing.marks();
        int start = marks.size();
        while (start >= 2 && marks.get(start - 1) instanceof Label && marks.get(start - 2) instanceof Area) {
            start -= 2;
        }
        return start;
    }

    private static Map<String, Integer> tones(Design design) {
        Set<String> woods = new LinkedHashSet<>();
        design.panels().forEach(panel -> panel.lamination().bands().forEach(band -> woods.add(band.species())));
        List<String> names = List.copyOf(woods);
        List<Integer> tones = Tones.of(names);
        Map<String, Integer> byName = new TreeMap<>();
        for (int i = 0; i < names.size(); i++) {
            byName.put(names.get(i), tones.get(i));
        }
        return byName;
    }

    /**
     * A sphere so small that the seams, where panels reach farthest out, lie within the second band: at 150 mm from
     * face to centre a dodecahedron has base and seam at 92.7 and 176.3 mm, and 122 * 92.7 / 176.3 is less than 0.7 of
     * the base.
     */
    @Test
    void leavesOutAWoodThatIsTurnedAway() {
        Design design = DrawnDesigns.on("dodecahedron", 0, 90, 0, 244.0);
        Panel panel = design.panels().get(0);
        List<String> sphere = SphereDrawing.draw(design, design.sphere(BandSet.UPRIGHT), 0.5, 0.4, false)
                .species();
        List<String> segment = SegmentDrawing.draw(design, panel, panel.pieces().get(0), BandSet.UPRIGHT)
                .species();
        assertEquals(List.of("sugar maple", "wood with a name of its own"), sphere);
        assertEquals(List.of("black walnut", "sugar maple", "wood with a name of its own"), segment);
        all(design);
    }

    /** A blank has all bands; there is no key beside it, so its tones have to be those of the other pictures. */
    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#examples")
    void aBlankAtTheSawHasTheTonesOfItsLamination(String example) {
        Design design = DrawnDesigns.example(example);
        Map<String, Integer> tones = tones(design);
        for (JigFace face :
                JigCalculator.plan(new JigRequest(null, null), design).faces()) {
            Panel panel = design.facePanels().stream()
                    .filter(each -> each.face().equals(face.face()))
                    .findFirst()
                    .orElseThrow();
            Set<Integer> expected = new TreeSet<>();
            panel.lamination().bands().forEach(band -> expected.add(tones.get(band.species())));
            Drawing drawing = SawSetUpDrawing.leg(
                    design, DrawnFace.of(design, face.face()), face.segments().get(0), CutSide.LEFT);
            Set<Integer> drawn = new TreeSet<>();
            drawing.marks().stream().filter(Area.class::isInstance).forEach(mark -> drawn.add(((Area) mark).tone()));
            assertEquals(expected, drawn, drawing.title());
        }
    }

    /** A board is of one wood: its key has the shades of its tone, and waste as crossed lines. */
    @ParameterizedTest
    @MethodSource("org.orbwright.fixture.Stocks#all")
    void namesAllLooksOfABoard(Planned planned) {
        for (int number = 1; number <= planned.plan().boards().size(); number++) {
            Drawing drawing = BoardDrawing.draw(planned.design(), planned.plan(), number);
            List<Mark> marks = drawing.marks();
            int start = boardKeyStart(drawing);
            List<Look> key = looks(marks.subList(start, marks.size()));
            assertEquals(Set.copyOf(looks(marks.subList(0, start))), Set.copyOf(key), drawing.title());
            assertEquals(1, key.stream().map(Look::tone).distinct().count(), "one board is of one wood");
            assertEquals(
                    "waste", ((Label) marks.get(marks.size() - 1)).text(), "waste has lines alone, no tone of a wood");
            assertTrue(marks.get(marks.size() - 2) instanceof Line);
        }
    }

    private static List<Look> looks(List<Mark> marks) {
        List<Look> looks = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            if (marks.get(i) instanceof Area area) {
                boolean covered = area.pen() == Pen.NONE;
                looks.add(new Look(area.tone(), covered ? ((Paper) marks.get(i + 1)).opacity() : 0));
            }
        }
        return looks;
    }

    /** The key has as many names as the drawing says, each the last mark of its look. */
    private static int boardKeyStart(Drawing drawing) {
        int names = 0;
        int start = drawing.marks().size();
        while (names <= drawing.species().size()) {
            start--;
            names += drawing.marks().get(start) instanceof Label ? 1 : 0;
        }
        return start + 1;
    }
}
