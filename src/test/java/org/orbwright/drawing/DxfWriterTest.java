package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.band.BandCalculator;
import org.orbwright.band.BandSurvival.BandView;
import org.orbwright.band.BandSurvival.FaceBands;
import org.orbwright.band.BandSurvival.SegmentBands;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.drawing.Outline.At;
import org.orbwright.drawing.Outline.Chain;
import org.orbwright.drawing.Outline.Layer;
import org.orbwright.drawing.Outline.LayerKind;
import org.orbwright.fixture.Designs;
import org.orbwright.notice.Notice;
import org.orbwright.notice.Notice.Kind;
import org.orbwright.quantity.LengthUnit;

/** Outlines as drawing interchange files, measured after they are read again. */
class DxfWriterTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "dodecahedron-two-spheres",
                "dodecahedron-with-land",
                "cube-with-chevrons",
                "rhombic-triacontahedron",
                "deltoidal-hexecontahedron-upright-bands",
                "truncated-icosidodecahedron"
            })
    void theBandsOfAPanelHaveTheirFlatAreas(String name) {
        Design design = Designs.example(name).build();
        for (Panel panel : design.facePanels()) {
            Outline outline = PanelOutline.of(design, panel.face(), BandSet.UPRIGHT);
            for (DxfRelease release : DxfRelease.values()) {
                hasFlatAreas(DxfFile.of(DxfWriter.write(outline, release, LengthUnit.MM, List.of())), design, panel);
            }
        }
    }

    private static void hasFlatAreas(DxfFile file, Design design, Panel panel) {
        double panels = panel.kind().count();
        double whole = 0;
        for (String layer : new TreeSet<>(file.layers())) {
            if (layer.startsWith("BAND_")) {
                double expected = flatArea(design, panel.face(), layer) / panels;
                assertEquals(expected, file.area(layer), 1e-6 * panel.kind().area() * design.edge() * design.edge());
                whole += expected;
            }
        }
        assertEquals(whole, file.area("OUTLINE"), whole * 1e-9);
        double inner = (panel.faceDistance() - design.thickness()) / panel.jointDistance();
        assertEquals(whole * inner * inner, file.area("BEVEL"), whole * 1e-9);
        assertTrue(file.area("SPHERE_RIM") < file.area("OUTLINE"));
    }

    private static double flatArea(Design design, String face, String layer) {
        double area = 0;
        for (FaceBands bands : BandCalculator.calculate(design, 2).faces()) {
            for (SegmentBands segment : bands.face().equals(face) ? bands.segments() : List.<SegmentBands>of()) {
                for (BandView band : segment.upright()) {
                    boolean same = layer.equals(
                            "BAND_" + band.species().toUpperCase(Locale.ROOT).replace(' ', '_'));
                    area += same ? band.flatArea() * segment.perSphere() : 0;
                }
            }
        }
        return area;
    }

    @Test
    void coordinatesAreInTheDesignsUnitAndTheFileSaysSo() {
        Design design = Designs.example("dodecahedron-two-spheres").build();
        Outline outline = PanelOutline.of(design, "pentagon", BandSet.UPRIGHT);
        DxfFile inches = DxfFile.of(DxfWriter.write(outline, DxfRelease.R12, LengthUnit.IN, List.of()));
        DxfFile millimetres = DxfFile.of(DxfWriter.write(outline, DxfRelease.R2000, LengthUnit.MM, List.of()));
        // Drawing interchange file reference: $INSUNITS is 1 for inches and 4 for millimetres.
        assertEquals("1", inches.header("$INSUNITS"));
        assertEquals("4", millimetres.header("$INSUNITS"));
        assertEquals("AC1009", inches.header("$ACADVER"));
        assertEquals("AC1015", millimetres.header("$ACADVER"));
        assertEquals(millimetres.area("OUTLINE"), inches.area("OUTLINE") * 25.4 * 25.4, 1e-5);
        assertTrue(inches.pairs().get(0).value().endsWith("lengths in in"));
    }

    @Test
    void layersHaveNamesThatReleaseTwelveAllows() {
        List<Outline.Shape> shapes = new ArrayList<>();
        List<At> square = List.of(new At(0, 0), new At(1, 0), new At(1, 1), new At(0, 1));
        for (String wood : List.of("Ahorn, gedämpft", "ahorn gedampft", "a b", "A-B", "x".repeat(60), "x".repeat(61))) {
            shapes.add(new Chain(Layer.band(wood, shapes.size()), square, true));
        }
        DxfFile file = read(new Outline("line\nbreak, übel", shapes), DxfRelease.R12);
        Set<String> names = new TreeSet<>(file.layers());
        // The plain layer 0 and the note's come to them.
        assertEquals(shapes.size() + 2, names.size());
        names.forEach(layer -> assertTrue(layer.matches("[A-Z0-9_]{1,31}"), layer));
        assertEquals("line?break, ?bel; lengths in mm", file.pairs().get(0).value());
    }

    @Test
    void noticesAreCommentsAndStopsAreTextsOnALayerOfTheirOwnBelowTheOutlines() {
        Design design = Designs.example("dodecahedron-with-land").build();
        Outline outline = PanelOutline.of(design, "pentagon", BandSet.UPRIGHT);
        String wood = "\u00fc\n  0\nCIRCLE\n 8\nOUTLINE\n" + "x".repeat(300);
        List<Notice> notices = List.of(
                new Notice(Kind.STOP, "BREAK_THROUGH", "The sphere breaks through at the corners. ".repeat(10)),
                new Notice(Kind.STOP, "BAND_VANISHES", wood),
                new Notice(Kind.WARN, "SMALL_SEGMENT", "Keep away."));
        DxfFile plain = read(outline, DxfRelease.R2000);
        DxfFile told = DxfFile.of(DxfWriter.write(outline, DxfRelease.R2000, LengthUnit.MM, notices));
        List<String> comments = told.pairs().stream()
                .filter(pair -> pair.code() == 999)
                .map(DxfFile.Pair::value)
                .toList();
        assertEquals(
                comments,
                told.pairs().subList(0, comments.size()).stream()
                        .map(DxfFile.Pair::value)
                        .toList());
        // Autodesk, DXF Reference, "Group Code Value Types": at most 255 letters before release 2000.
        comments.forEach(comment -> assertTrue(comment.length() <= 255 && comment.matches("[ -~]*"), comment));
        String all = String.join(" ", comments);
        assertTrue(all.contains("STOP BREAK_THROUGH: The sphere breaks through"), all);
        assertTrue(all.contains("STOP BAND_VANISHES: ??  0?CIRCLE?"), all);
        assertTrue(all.contains("WARN SMALL_SEGMENT: Keep away."), all);

        int outlines = plain.entities().size() - 1;
        List<DxfFile.Entity> texts =
                told.entities().subList(outlines, told.entities().size());
        for (int i = 0; i < outlines; i++) {
            assertEquals(
                    plain.entities().get(i).groups(), told.entities().get(i).groups());
        }
        double low = Double.parseDouble(told.pairs()
                .get(told.pairs().indexOf(new DxfFile.Pair(9, "$EXTMIN")) + 2)
                .value());
        double size = 2 * Math.abs(low);
        double last = low;
        for (DxfFile.Entity text : texts) {
            assertEquals("TEXT", text.type());
            assertEquals("NOTE", text.layer());
            assertTrue(text.number(40) > size / 60, "can be read");
            assertTrue(text.number(20) + text.number(40) < last, "below the line before");
            last = text.number(20);
        }
        String words = texts.stream().map(text -> text.groups().get(1)).collect(Collectors.joining(" "));
        assertTrue(words.contains("STOP BREAK_THROUGH: The sphere"), words);
        assertTrue(words.contains("STOP BAND_VANISHES: "), words);
        assertFalse(words.contains("SMALL_SEGMENT"), words);
    }

    private static DxfFile read(Outline outline, DxfRelease release) {
        return DxfFile.of(DxfWriter.write(outline, release, LengthUnit.MM, List.of()));
    }

    /** A plate of 40 by 20 whose lower edge is hollowed over a chord of 20 that rises by 5: a radius of 12.5. */
    private static final Chain PLATE = new Chain(
            Layer.of(LayerKind.OUTLINE),
            List.of(new At(10, 0), new At(20, 0), new At(20, 20), new At(-20, 20), new At(-20, 0), new At(-10, 0)),
            true,
            -0.5);

    @ParameterizedTest
    @EnumSource(DxfRelease.class)
    void anArcClosesAnOutlineSoThatAMachineFindsOneContour(DxfRelease release) {
        DxfFile file = read(new Outline("plate", List.of(PLATE)), release);
        assertEquals(2, file.entities().size());
        assertTrue(file.entities().get(0).closed());
        // The area of a circle's segment of rise 5 and radius 12.5, as an integral in closed form.
        double hollow = 12.5 * 12.5 * Math.acos(7.5 / 12.5) - 7.5 * 10;
        assertEquals(800 - hollow, file.area("OUTLINE"), 1e-5);
    }

    @Test
    void anArcThatBulgesOutwardsTakesRoom() {
        Chain bow =
                new Chain(Layer.of(LayerKind.OUTLINE), List.of(new At(10, 0), new At(0, 9), new At(-10, 0)), true, 0.5);
        assertEquals(-5, OutlineExtent.of(new Outline("bow", List.of(bow))).low(), 1e-12);
        assertEquals(12.5, PLATE.radius(), 1e-12);
        assertEquals(new At(0, 5), PLATE.middle());
    }

    @Test
    void everyHandleIsThereOnceAndEveryOwnerIsThere() {
        Design design = Designs.example("dodecahedron-with-land").build();
        DxfFile file = read(PanelOutline.of(design, "pentagon", BandSet.UPRIGHT), DxfRelease.R2000);
        List<DxfFile.Pair> pairs = file.pairs();
        int body = pairs.indexOf(new DxfFile.Pair(2, "TABLES"));
        Set<String> handles = new TreeSet<>(Set.of("0"));
        for (DxfFile.Pair pair : pairs.subList(body, pairs.size())) {
            if (pair.code() == 5 || pair.code() == 105) {
                assertTrue(handles.add(pair.value()), pair::toString);
            }
        }
        for (DxfFile.Pair pair : pairs.subList(body, pairs.size())) {
            if (pair.code() == 330 || pair.code() == 350) {
                assertTrue(handles.contains(pair.value()), pair::toString);
            }
        }
        // ezdxf, "DXF File Structure", section "Minimal DXF Content".
        int seed = Integer.parseInt(file.header("$HANDSEED"), 16);
        assertTrue(handles.stream().allMatch(handle -> Integer.parseInt(handle, 16) < seed));
        for (String section : List.of("HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS")) {
            assertTrue(pairs.contains(new DxfFile.Pair(2, section)), section);
        }
        for (String name : List.of("*Active", "ByBlock", "ByLayer", "ACAD", "*Model_Space", "*Paper_Space")) {
            assertTrue(pairs.contains(new DxfFile.Pair(2, name)), name);
        }
        assertTrue(pairs.contains(new DxfFile.Pair(3, "ACAD_GROUP")));
    }

    @Test
    void everyWoodHasAColourThatNoOtherLayerHas() {
        Set<Integer> colours = new TreeSet<>();
        for (LayerKind kind : LayerKind.values()) {
            colours.add(kind.colour());
        }
        int kinds = colours.size() - 1;
        for (int tone = 0; tone < 64; tone++) {
            int colour = Layer.band("wood", tone).colour();
            colours.add(colour);
            // Autodesk's index: hues from 10 to 249 in steps of ten; 10, 50, 90 and so on are those of 1 to 6.
            assertTrue(colour >= 10 && colour < 250 && colour / 10 % 4 != 1, () -> String.valueOf(colour));
        }
        assertEquals(kinds + 64, colours.size());
        Design design = Designs.example("dodecahedron-two-spheres").build();
        DxfFile file = read(PanelOutline.of(design, "pentagon", BandSet.UPRIGHT), DxfRelease.R2000);
        List<String> bands = file.layerValues(62).entrySet().stream()
                .filter(layer -> layer.getKey().startsWith("BAND_"))
                .map(Map.Entry::getValue)
                .toList();
        assertEquals(3, bands.size());
        assertEquals(3, Set.copyOf(bands).size());
    }
}
