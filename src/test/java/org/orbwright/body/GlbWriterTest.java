package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.orbwright.body.Body.Part;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.fixture.Designs;
import org.orbwright.notice.Notice;
import org.orbwright.notice.Notice.Kind;
import org.orbwright.quantity.LengthUnit;

/** Binary glTF, read again by the words of the specification alone and measured against the STL of the same part. */
class GlbWriterTest {
    private static final List<String> COLOURS = List.of("#ffffff", "#808080", "#000a05");
    private final Design design = Designs.example("dodecahedron-two-spheres").build();
    private final Body sphere = BodyCalculator.sphere(design, new BodyOptions(BandSet.UPRIGHT, false, 1.0));

    /** A file: its description, and the bytes that this tells of. */
    private record Glb(JsonNode json, ByteBuffer binary) {
        static Glb of(byte[] bytes) throws IOException {
            ByteBuffer file = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
            byte[] magic = new byte[4];
            file.get(magic);
            assertArrayEquals(new byte[] {'g', 'l', 'T', 'F'}, magic);
            assertEquals(2, file.getInt());
            assertEquals(bytes.length, file.getInt());
            ByteBuffer json = chunk(file, "JSON");
            ByteBuffer binary = chunk(file, "BIN\0");
            assertEquals(0, file.remaining());
            byte[] text = new byte[json.remaining()];
            json.get(text);
            return new Glb(new ObjectMapper().readTree(text), binary);
        }

        /** Every chunk begins at a multiple of four bytes. */
        private static ByteBuffer chunk(ByteBuffer file, String type) {
            int length = file.getInt();
            assertEquals(0, length % 4);
            for (int i = 0; i < type.length(); i++) {
                assertEquals(type.charAt(i), file.get());
            }
            ByteBuffer chunk = file.slice(file.position(), length).order(ByteOrder.LITTLE_ENDIAN);
            file.position(file.position() + length);
            return chunk;
        }

        private ByteBuffer view(JsonNode accessor, int bytes) {
            JsonNode view =
                    json.path("bufferViews").path(accessor.path("bufferView").asInt());
            int length = view.path("byteLength").asInt();
            assertEquals(bytes, length);
            return binary.slice(view.path("byteOffset").asInt(), length).order(ByteOrder.LITTLE_ENDIAN);
        }

        /** The corners of the triangles of a primitive, three numbers each. */
        List<double[]> triangles(JsonNode primitive) {
            JsonNode places = json.path("accessors")
                    .path(primitive.at("/attributes/POSITION").asInt());
            JsonNode indices =
                    json.path("accessors").path(primitive.path("indices").asInt());
            assertEquals(
                    "5126 VEC3",
                    places.path("componentType").asText() + " "
                            + places.path("type").asText());
            assertEquals(
                    "5125 SCALAR",
                    indices.path("componentType").asText() + " "
                            + indices.path("type").asText());
            ByteBuffer floats = view(places, 12 * places.path("count").asInt());
            ByteBuffer whole = view(indices, 4 * indices.path("count").asInt());
            List<double[]> corners = new ArrayList<>();
            while (whole.hasRemaining()) {
                int at = 12 * whole.getInt();
                corners.add(new double[] {floats.getFloat(at), floats.getFloat(at + 4), floats.getFloat(at + 8)});
            }
            for (int axis = 0; axis < 3; axis++) {
                assertEquals(
                        end(corners, axis, 1), places.path("max").path(axis).floatValue(), 0);
                assertEquals(
                        -end(corners, axis, -1), places.path("min").path(axis).floatValue(), 0);
            }
            return corners;
        }
    }

    private static List<double[]> stl(Part part) {
        ByteBuffer file =
                ByteBuffer.wrap(StlWriter.write(part, LengthUnit.MM, List.of())).order(ByteOrder.LITTLE_ENDIAN);
        List<double[]> corners = new ArrayList<>();
        for (int i = 0; i < 3 * file.getInt(80); i++) {
            int at = 84 + 50 * (i / 3) + 12 * (1 + i % 3);
            corners.add(new double[] {file.getFloat(at), file.getFloat(at + 4), file.getFloat(at + 8)});
        }
        return corners;
    }

    private static double volume(List<double[]> corners) {
        double six = 0;
        for (int i = 0; i < corners.size(); i += 3) {
            double[] a = corners.get(i);
            double[] b = corners.get(i + 1);
            double[] c = corners.get(i + 2);
            six += a[0] * (b[1] * c[2] - b[2] * c[1])
                    + a[1] * (b[2] * c[0] - b[0] * c[2])
                    + a[2] * (b[0] * c[1] - b[1] * c[0]);
        }
        return six / 6;
    }

    /** The farthest way along an axis, or against it. */
    private static double end(List<double[]> corners, int axis, int sign) {
        return corners.stream().mapToDouble(corner -> sign * corner[axis]).max().orElseThrow();
    }

    @Test
    void everyWoodIsThatOfTheStlInMetresWithTheThirdAxisUp() throws IOException {
        Glb file = Glb.of(GlbWriter.write(sphere, COLOURS, List.of()));
        JsonNode primitives = file.json().at("/meshes/0/primitives");
        assertEquals(3, sphere.parts().size());
        assertEquals(3, primitives.size());
        for (int i = 0; i < 3; i++) {
            Part part = sphere.parts().get(i);
            List<double[]> metres = file.triangles(primitives.path(i));
            List<double[]> millimetres = stl(part);
            assertEquals(millimetres.size(), metres.size());
            double volume = volume(millimetres);
            assertTrue(volume > 0);
            assertEquals(volume, 1e9 * volume(metres), 1e-5 * volume);
            double size = design.sphereRadius();
            assertEquals(end(millimetres, 0, 1), 1000 * end(metres, 0, 1), 1e-6 * size);
            assertEquals(end(millimetres, 2, 1), 1000 * end(metres, 1, 1), 1e-6 * size);
            assertEquals(end(millimetres, 2, -1), 1000 * end(metres, 1, -1), 1e-6 * size);
            assertEquals(end(millimetres, 1, 1), 1000 * end(metres, 2, -1), 1e-6 * size);
            assertEquals(end(millimetres, 1, -1), 1000 * end(metres, 2, 1), 1e-6 * size);
            JsonNode material = file.json()
                    .path("materials")
                    .path(primitives.path(i).path("material").asInt());
            assertEquals(part.name(), material.path("name").asText());
        }
        assertEquals(
                file.binary().capacity(),
                file.json().at("/buffers/0/byteLength").asInt());
        assertEquals("2.0", file.json().at("/asset/version").asText());
        assertEquals(0, file.json().at("/scenes/0/nodes/0").asInt());
    }

    @Test
    void coloursAreLinear() throws IOException {
        JsonNode materials =
                Glb.of(GlbWriter.write(sphere, COLOURS, List.of())).json().path("materials");
        // IEC 61966-2-1: half of full scale is 0.2159 of the light; below 0.04045 the curve is straight.
        double[][] expected = {{1, 1, 1}, {0.21586, 0.21586, 0.21586}, {0, 10 / 255.0 / 12.92, 5 / 255.0 / 12.92}};
        for (int i = 0; i < 3; i++) {
            JsonNode colour = materials.path(i).at("/pbrMetallicRoughness/baseColorFactor");
            for (int channel = 0; channel < 3; channel++) {
                assertEquals(expected[i][channel], colour.path(channel).asDouble(), 1e-5);
            }
            assertEquals(1, colour.path(3).asDouble());
        }
    }

    @Test
    void namesAndNoticesAreEscaped() throws IOException {
        Part part = new Part("\"ma\\ple\"\n\ud800 ö", sphere.parts().get(0).mesh(), null);
        List<Notice> notices = List.of(
                new Notice(Kind.STOP, "BAND_VANISHES", "Band \"1\" vanishes."),
                new Notice(Kind.WARN, "SMALL_SEGMENT", "Keep away."));
        JsonNode json = Glb.of(GlbWriter.write(new Body("a\tb", List.of(part), 0), COLOURS, notices))
                .json();
        assertEquals("\"ma\\ple\"?? ö", json.at("/materials/0/name").asText());
        assertEquals("a?b", json.at("/nodes/0/name").asText());
        assertEquals(
                "STOP BAND_VANISHES: Band \"1\" vanishes.",
                json.at("/asset/extras/notices/0").asText());
        assertEquals(
                "WARN SMALL_SEGMENT: Keep away.",
                json.at("/asset/extras/notices/1").asText());
    }
}
