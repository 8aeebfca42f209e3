package org.orbwright.body;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.io.euclidean.threed.stl.BinaryStlWriter;
import org.orbwright.body.Body.Part;
import org.orbwright.quantity.LengthUnit;

/**
 * Writes one part of a body as binary STL. The format has no place for a unit: coordinates are in the design's unit,
 * which is said in the header's text, and single precision.
 */
public final class StlWriter {
    private static final int HEADER = 80;

    private StlWriter() {}

    /** The part as a file. */
    public static byte[] write(Part part, LengthUnit unit) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Mesh mesh = part.mesh();
        try (BinaryStlWriter stl = new BinaryStlWriter(bytes)) {
            stl.writeHeader(header(part.name(), unit), mesh.triangles().size());
            for (Triangle triangle : mesh.triangles()) {
                stl.writeTriangle(
                        scaled(mesh.corner(triangle, 0), unit),
                        scaled(mesh.corner(triangle, 1), unit),
                        scaled(mesh.corner(triangle, 2), unit),
                        mesh.normal(triangle));
            }
        }
        return bytes.toByteArray();
    }

    /** It must not begin like the text form of the format. */
    private static byte[] header(String name, LengthUnit unit) {
        byte[] header = new byte[HEADER];
        byte[] text = ("Lengths in " + unit.symbol() + "; " + name.replaceAll("[^ -~]", "?"))
                .getBytes(StandardCharsets.US_ASCII);
        System.arraycopy(text, 0, header, 0, Math.min(text.length, HEADER));
        return header;
    }

    private static Vector3D scaled(Vector3D point, LengthUnit unit) {
        return point.multiply(1 / unit.millimetres());
    }
}
