package org.orbwright.body;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.body.Body.Part;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.Rounding;

/**
 * Writes a body as glTF 2.0 in one binary file, for viewers and web pages (Khronos Group, glTF 2.0 Specification,
 * section "GLB File Format"): one mesh with a primitive for each part in the colour of its wood. The format wants
 * metres and an upright second axis, so the body's third axis becomes the second. Normals are left out: viewers have to
 * shade flat then. Coordinates have single precision. Notices stand in the extras of the asset.
 */
public final class GlbWriter {
    private static final int MAGIC = 0x46546c67;
    private static final int VERSION = 2;
    private static final int JSON = 0x4e4f534a;
    private static final int BINARY = 0x004e4942;
    private static final int HEADER = 12;
    private static final int CHUNK_HEADER = 8;
    private static final int ALIGNMENT = 4;
    /** Three numbers of four bytes each: a corner's coordinates, or a triangle's corners. */
    private static final int TRIPLE = 12;

    private static final int FLOATS = 5126;
    private static final int WHOLE_NUMBERS = 5125;
    private static final int CORNERS = 34962;
    private static final int TRIANGLES = 34963;
    private static final double METRE = 1000;
    private static final int COLOUR_DECIMALS = 6;

    private final Body body;
    private final List<String> colours;
    private final byte[] bytes;
    private final ByteBuffer binary;
    private final List<String> views = new ArrayList<>();
    private final List<String> accessors = new ArrayList<>();
    private final List<String> primitives = new ArrayList<>();

    private GlbWriter(Body body, List<String> colours) {
        this.body = body;
        this.colours = colours;
        int triples = body.parts().stream()
                .mapToInt(part ->
                        part.mesh().vertices().size() + part.mesh().triangles().size())
                .sum();
        this.bytes = new byte[TRIPLE * triples];
        this.binary = little(bytes);
    }

    /** The body as a file, with a colour for each part as {@code #rrggbb} and notices for whoever opens it. */
    public static byte[] write(Body body, List<String> colours, List<Notice> notices) {
        return new GlbWriter(body, colours).file(notices);
    }

    private byte[] file(List<Notice> notices) {
        body.parts().forEach(this::primitive);
        byte[] json = json(notices).getBytes(StandardCharsets.UTF_8);
        int padding = -json.length & (ALIGNMENT - 1);
        byte[] whole = new byte[HEADER + 2 * CHUNK_HEADER + json.length + padding + bytes.length];
        ByteBuffer file = little(whole).putInt(MAGIC).putInt(VERSION).putInt(whole.length);
        file.putInt(json.length + padding).putInt(JSON).put(json);
        for (int i = 0; i < padding; i++) {
            file.put((byte) ' ');
        }
        file.putInt(bytes.length).putInt(BINARY).put(bytes);
        return whole;
    }

    private static ByteBuffer little(byte[] bytes) {
        return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    private void primitive(Part part) {
        int start = binary.position();
        float[] low = {Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY};
        float[] high = {Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY};
        for (Vector3D vertex : part.mesh().vertices()) {
            double[] turned = {vertex.getX(), vertex.getZ(), -vertex.getY()};
            for (int axis = 0; axis < turned.length; axis++) {
                float metres = (float) (turned[axis] / METRE);
                binary.putFloat(metres);
                low[axis] = Math.min(low[axis], metres);
                high[axis] = Math.max(high[axis], metres);
            }
        }
        int corners = accessor(start, CORNERS, FLOATS, part.mesh().vertices().size(), "VEC3", range(low, high));
        start = binary.position();
        for (Triangle triangle : part.mesh().triangles()) {
            binary.putInt(triangle.a()).putInt(triangle.b()).putInt(triangle.c());
        }
        int indices = accessor(
                start, TRIANGLES, WHOLE_NUMBERS, 3 * part.mesh().triangles().size(), "SCALAR", "");
        primitives.add("{\"attributes\":{\"POSITION\":" + corners + "},\"indices\":" + indices + ",\"material\":"
                + primitives.size() + "}");
    }

    /** Describes what was written since the start. */
    private int accessor(int start, int target, int numbers, int count, String type, String range) {
        views.add("{\"buffer\":0,\"byteOffset\":" + start + ",\"byteLength\":" + (binary.position() - start)
                + ",\"target\":" + target + "}");
        accessors.add("{\"bufferView\":" + accessors.size() + ",\"componentType\":" + numbers + ",\"count\":" + count
                + ",\"type\":\"" + type + "\"" + range + "}");
        return accessors.size() - 1;
    }

    private static String range(float[] low, float[] high) {
        return ",\"min\":" + numbers(low) + ",\"max\":" + numbers(high);
    }

    private static String numbers(float[] numbers) {
        return "[" + numbers[0] + "," + numbers[1] + "," + numbers[2] + "]";
    }

    private String json(List<Notice> notices) {
        List<String> materials = new ArrayList<>();
        for (int i = 0; i < body.parts().size(); i++) {
            materials.add("{\"name\":" + text(body.parts().get(i).name())
                    + ",\"pbrMetallicRoughness\":{\"baseColorFactor\":" + linear(colours.get(i))
                    + ",\"metallicFactor\":0,\"roughnessFactor\":0.8}}");
        }
        String title = text(body.title());
        List<String> told = notices.stream().map(notice -> text(notice.line())).toList();
        return "{\"asset\":{\"version\":\"2.0\",\"generator\":\"Orbwright\",\"extras\":{\"notices\":" + list(told)
                + "}},\"scene\":0,\"scenes\":[{\"name\":" + title + ",\"nodes\":[0]}],\"nodes\":[{\"name\":" + title
                + ",\"mesh\":0}],\"meshes\":[{\"name\":" + title + ",\"primitives\":" + list(primitives)
                + "}],\"materials\":" + list(materials) + ",\"accessors\":" + list(accessors) + ",\"bufferViews\":"
                + list(views) + ",\"buffers\":[{\"byteLength\":" + bytes.length + "}]}";
    }

    private static String list(List<String> members) {
        return members.stream().collect(Collectors.joining(",", "[", "]"));
    }

    /** The colour in the linear scale that the format wants, by the curve of sRGB (IEC 61966-2-1). */
    private static String linear(String colour) {
        StringBuilder text = new StringBuilder("[");
        for (int i = 1; i < colour.length(); i += 2) {
            double share = Integer.parseInt(colour.substring(i, i + 2), 16) / 255.0;
            double linear = share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
            text.append(Rounding.plain(linear, COLOUR_DECIMALS)).append(',');
        }
        return text.append("1]").toString();
    }

    /** Text of the caller's as a string of JSON (RFC 8259, section 7). */
    private static String text(String text) {
        return "\""
                + text.replaceAll("[\\p{Cntrl}\\x{D800}-\\x{DFFF}]", "?")
                        .replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                + "\"";
    }
}
