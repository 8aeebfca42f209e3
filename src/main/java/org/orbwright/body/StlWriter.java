package org.orbwright.body;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.io.euclidean.threed.stl.BinaryStlWriter;
import org.orbwright.body.Body.Part;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.LengthUnit;

/**
 * Writes one part of a body as binary STL, in single precision. The format has no place for a unit or for notices but
 * the 80 letters of its header: the unit of the coordinates, then the codes of the STOPs, then what the part is.
 */
public final class StlWriter {
    private static final int HEADER = 80;
    private static final String STOP = "STOP ";
    private static final String MORE = " +";
    private static final String END = "; ";

    private StlWriter() {}

    /** The part as a file; its STOPs are told by their codes. */
    public static byte[] write(Part part, LengthUnit unit, List<Notice> notices) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Mesh mesh = part.mesh();
        try (BinaryStlWriter stl = new BinaryStlWriter(bytes)) {
            stl.writeHeader(header(part.name(), unit, notices), mesh.triangles().size());
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
    private static byte[] header(String name, LengthUnit unit, List<Notice> notices) {
        String start = "Lengths in " + unit.symbol() + "; ";
        byte[] header = new byte[HEADER];
        byte[] text = (start + stops(notices, HEADER - start.length()) + name.replaceAll("[^ -~]", "?"))
                .getBytes(StandardCharsets.US_ASCII);
        System.arraycopy(text, 0, header, 0, Math.min(text.length, HEADER));
        return header;
    }

    /** The codes of the STOPs, each once, as far as there is room; a plus stands for the others. */
    private static String stops(List<Notice> notices, int room) {
        StringBuilder text = new StringBuilder();
        for (String code :
                Notice.stops(notices).stream().map(Notice::code).distinct().toList()) {
            String next = (text.isEmpty() ? STOP : " ") + code;
            if (text.length() + next.length() + MORE.length() > room) {
                return text + MORE + END;
            }
            text.append(next);
        }
        return text.isEmpty() ? "" : text + END;
    }

    private static Vector3D scaled(Vector3D point, LengthUnit unit) {
        return point.multiply(1 / unit.millimetres());
    }
}
