package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.geometry.euclidean.threed.Triangle3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.mesh.TriangleMesh;
import org.apache.commons.geometry.io.core.input.StreamGeometryInput;
import org.apache.commons.geometry.io.euclidean.threed.GeometryFormat3D;
import org.apache.commons.geometry.io.euclidean.threed.IO3D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.orbwright.body.Body.Part;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.fixture.Designs;
import org.orbwright.notice.Notice;
import org.orbwright.notice.Notice.Kind;
import org.orbwright.quantity.LengthUnit;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Files of bodies, read again: STL and OBJ by Commons Geometry, whose own volume is taken. */
class BodyFilesTest {
    private static final double MILLIMETRES = 25.4;
    private final Design design = Designs.example("dodecahedron-two-spheres").build();
    private final Body panel = BodyCalculator.panel(design, "pentagon", new BodyOptions(BandSet.UPRIGHT, false, null));

    private static TriangleMesh read(byte[] file, GeometryFormat3D format, double precision) {
        return IO3D.readTriangleMesh(
                new StreamGeometryInput(new ByteArrayInputStream(file)),
                format,
                Precision.doubleEquivalenceOfEpsilon(precision));
    }

    private static double volume(TriangleMesh mesh) {
        double six = 0;
        for (TriangleMesh.Face face : mesh.faces()) {
            Triangle3D triangle = face.getPolygon();
            six += triangle.getPoint1().dot(triangle.getPoint2().cross(triangle.getPoint3()));
        }
        return six / 6;
    }

    @Test
    void anStlIsInTheDesignsUnitAndSaysSo() {
        for (Part part : panel.parts()) {
            byte[] file = StlWriter.write(part, LengthUnit.IN, List.of());
            String header = new String(file, 0, 80, StandardCharsets.US_ASCII);
            assertTrue(header.startsWith("Lengths in in; " + part.name()), header);
            TriangleMesh mesh = read(file, GeometryFormat3D.STL, 1e-7);
            double cubicInches = part.volume() / Math.pow(MILLIMETRES, 3);
            assertEquals(part.mesh().triangles().size(), mesh.getFaceCount());
            assertEquals(cubicInches, volume(mesh), cubicInches * 1e-5);
        }
    }

    private static Notice stop(String code) {
        return new Notice(Kind.STOP, code, "Do not cut this.");
    }

    private static String header(String name, String... codes) {
        Mesh mesh =
                BodyCalculator.solid(Designs.of("cube").build()).parts().get(0).mesh();
        List<Notice> notices = new ArrayList<>(List.of(new Notice(Kind.WARN, "SMALL_SEGMENT", "Keep away.")));
        for (String code : codes) {
            notices.add(stop(code));
        }
        byte[] file = StlWriter.write(new Part(name, mesh, null), LengthUnit.MM, notices);
        assertEquals(84 + 50 * mesh.triangles().size(), file.length);
        assertEquals(
                mesh.triangles().size(), read(file, GeometryFormat3D.STL, 1e-6).getFaceCount());
        return new String(file, 0, 80, StandardCharsets.US_ASCII).replaceAll("\0+$", "");
    }

    @Test
    void theHeaderOfAnStlHasTheCodesOfTheStops() {
        // A file that begins with "solid" is taken for one of text.
        assertEquals("Lengths in mm; solid", header("solid"));
        assertEquals("Lengths in mm; STOP BREAK_THROUGH; solid", header("solid", "BREAK_THROUGH"));
        assertEquals("Lengths in mm; STOP A B; x", header("x", "A", "B", "A"));
        assertEquals(
                "Lengths in mm; STOP BREAK_THROUGH SEAMS_OPEN BAND_VANISHES BLANK_TOO_SHORT; solid".substring(0, 80),
                header("solid", "BREAK_THROUGH", "SEAMS_OPEN", "BAND_VANISHES", "BLANK_TOO_SHORT"));
        assertEquals(
                "Lengths in mm; STOP BREAK_THROUGH WALL_BELOW_MINIMUM SEAMS_OPEN BAND_VANISHES +;",
                header("solid", "BREAK_THROUGH", "WALL_BELOW_MINIMUM", "SEAMS_OPEN", "BAND_VANISHES", "BLANK_TOO_SHORT")
                        .stripTrailing());
    }

    @Test
    void anObjHasItsNoticesInComments() {
        List<Notice> notices = List.of(
                new Notice(Kind.STOP, "BAND_VANISHES", "Band 1 (ash\nv 1 2 3\u2028f 1 2 3\rv 4 5 6) vanishes."),
                new Notice(Kind.WARN, "SMALL_SEGMENT", "Keep away."));
        String file = ObjWriter.write(panel, LengthUnit.MM, notices);
        List<String> comments =
                file.lines().filter(line -> line.startsWith("#")).toList();
        assertEquals(
                List.of(
                        "# STOP BAND_VANISHES: Band 1 (ash v 1 2 3 f 1 2 3 v 4 5 6) vanishes.",
                        "# WARN SMALL_SEGMENT: Keep away."),
                comments.subList(1, comments.size()));
        assertEquals(
                ObjWriter.write(panel, LengthUnit.MM, List.of()).lines().skip(1).toList(),
                file.lines().skip(3).toList());
    }

    @Test
    void aThreeMfHasItsNoticesAsDescription() throws Exception {
        List<String> colours = List.of("#000000", "#111111", "#222222");
        List<Notice> notices = List.of(
                new Notice(Kind.STOP, "BAND_VANISHES", "Band 1 (<ash> & \"oak\") vanishes."),
                new Notice(Kind.WARN, "SMALL_SEGMENT", "Keep away."));
        Element told = model(ThreeMfWriter.write(panel, colours, LengthUnit.MM, notices));
        Element plain = model(ThreeMfWriter.write(panel, colours, LengthUnit.MM, List.of()));
        // 3MF Core Specification 1.3, "Metadata": Title and Description are names that it knows, and no name stands
        // twice.
        assertEquals(List.of("Title", "Description"), metadata(told));
        assertEquals(List.of("Title"), metadata(plain));
        assertEquals(
                "STOP BAND_VANISHES: Band 1 (<ash> & \"oak\") vanishes. WARN SMALL_SEGMENT: Keep away.",
                elements(told, "metadata").get(1).getTextContent());
    }

    private static List<String> metadata(Element model) {
        return elements(model, "metadata").stream()
                .map(element -> element.getAttribute("name"))
                .toList();
    }

    private static Element model(byte[] file) throws Exception {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.getName().endsWith(".model")) {
                    return DocumentBuilderFactory.newInstance()
                            .newDocumentBuilder()
                            .parse(new ByteArrayInputStream(zip.readAllBytes()))
                            .getDocumentElement();
                }
            }
        }
        throw new AssertionError("no model");
    }

    @Test
    void commonsGeometryFindsTheSameVolumeInsideTheSurface() {
        Body one = BodyCalculator.panel(design, "pentagon", new BodyOptions(BandSet.UPRIGHT, true, null));
        TriangleMesh mesh =
                read(StlWriter.write(one.parts().get(0), LengthUnit.MM, List.of()), GeometryFormat3D.STL, 1e-4);
        double expected = one.parts().get(0).volume();
        assertEquals(expected, mesh.toTree().getSize(), expected * 1e-5);
    }

    @Test
    void anObjHasAnObjectForEachWood() {
        String file = ObjWriter.write(panel, LengthUnit.MM, List.of());
        List<String> objects =
                file.lines().filter(line -> line.startsWith("o ")).toList();
        assertEquals(List.of("o sugar_maple", "o black_cherry", "o black_walnut"), objects);
        assertTrue(file.startsWith("# Bevelled pentagon panel of the dodecahedron; lengths in mm"), file);
        TriangleMesh mesh = read(file.getBytes(StandardCharsets.UTF_8), GeometryFormat3D.OBJ, 1e-7);
        double expected = panel.parts().stream().mapToDouble(Part::volume).sum();
        assertEquals(expected, volume(mesh), expected * 1e-9);
    }

    @Test
    void woodsWhoseNamesDifferOnlyInBlanksStayObjectsOfTheirOwn() {
        Mesh mesh = panel.parts().get(0).mesh();
        List<Part> parts = List.of(
                new Part("sugar maple", mesh, null),
                new Part("sugar_maple_2", mesh, null),
                new Part("sugar_maple", mesh, null));
        List<String> objects = ObjWriter.write(new Body("alike", parts, 0), LengthUnit.MM, List.of())
                .lines()
                .filter(line -> line.startsWith("o "))
                .toList();
        assertEquals(List.of("o sugar_maple", "o sugar_maple_2", "o sugar_maple_3"), objects);
    }

    @Test
    void aThreeMfSaysItsUnitAndEscapesNames() throws Exception {
        Part part = new Part("<\"maple\" & ash>\n\u0001.", panel.parts().get(0).mesh(), null);
        byte[] file =
                ThreeMfWriter.write(new Body("a < b", List.of(part), 0), List.of("#f3ead3"), LengthUnit.IN, List.of());
        List<String> names = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                names.add(entry.getName());
            }
        }
        assertEquals(List.of("[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model"), names);
        Element model = model(file);
        assertEquals("inch", model.getAttribute("unit"));
        assertEquals(
                List.of("<\"maple\" & ash> \ufffd.", "a < b"),
                elements(model, "object").stream()
                        .map(o -> o.getAttribute("name"))
                        .toList());
        Element base = elements(model, "base").get(0);
        assertEquals("<\"maple\" & ash> \ufffd.", base.getAttribute("name"));
        assertEquals("#f3ead3", base.getAttribute("displaycolor"));
    }

    private static List<Element> elements(Element parent, String name) {
        NodeList found = parent.getElementsByTagName(name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    @Test
    void everyPartOfA3mfIsInItsWoodAndItsUnitAndOneObjectOfAllIsBuilt() throws Exception {
        byte[] file = ThreeMfWriter.write(panel, List.of("#000000", "#111111", "#222222"), LengthUnit.IN, List.of());
        Element model = model(file);
        List<Element> objects = elements(model, "object");
        List<Element> items = elements(model, "item");
        assertEquals(4, objects.size());
        // 3MF Core Specification 1.3, "Components": an object is made up of objects that stand before it.
        assertEquals(
                objects.subList(0, 3).stream().map(o -> o.getAttribute("id")).toList(),
                elements(objects.get(3), "component").stream()
                        .map(o -> o.getAttribute("objectid"))
                        .toList());
        assertEquals(List.of(), elements(objects.get(3), "mesh"));
        assertEquals(1, items.size());
        assertEquals(objects.get(3).getAttribute("id"), items.get(0).getAttribute("objectid"));
        for (int i = 0; i < 3; i++) {
            Element object = objects.get(i);
            Part part = panel.parts().get(i);
            assertEquals(part.name(), object.getAttribute("name"));
            assertEquals(String.valueOf(i), object.getAttribute("pindex"));
            // An id is a number from 1, and the one of the woods is taken.
            assertTrue(Integer.parseInt(object.getAttribute("id")) > 1);
            List<Element> vertices = elements(object, "vertex");
            assertEquals(part.mesh().vertices().size(), vertices.size());
            for (int v = 0; v < vertices.size(); v++) {
                Vector3D inches = Vector3D.of(
                        Double.parseDouble(vertices.get(v).getAttribute("x")),
                        Double.parseDouble(vertices.get(v).getAttribute("y")),
                        Double.parseDouble(vertices.get(v).getAttribute("z")));
                Vector3D expected = part.mesh().vertices().get(v);
                assertEquals(0, expected.distance(inches.multiply(MILLIMETRES)), 1e-6);
            }
        }
        assertEquals(
                4, objects.stream().map(o -> o.getAttribute("id")).distinct().count());
    }

    @Test
    void anObjIsInTheDesignsUnit() {
        byte[] file = ObjWriter.write(panel, LengthUnit.IN, List.of()).getBytes(StandardCharsets.UTF_8);
        double cubicInches = panel.parts().stream().mapToDouble(Part::volume).sum() / Math.pow(MILLIMETRES, 3);
        assertEquals(cubicInches, volume(read(file, GeometryFormat3D.OBJ, 1e-9)), cubicInches * 1e-9);
    }

    @Test
    void theSameBodyIsTheSameFile() {
        assertFalse(panel.parts().isEmpty());
        List<String> colours = List.of("#000000", "#111111", "#222222");
        Body again = BodyCalculator.panel(design, "pentagon", new BodyOptions(BandSet.UPRIGHT, false, null));
        assertArrayEquals(
                ThreeMfWriter.write(panel, colours, LengthUnit.MM, List.of()),
                ThreeMfWriter.write(again, colours, LengthUnit.MM, List.of()));
    }
}
