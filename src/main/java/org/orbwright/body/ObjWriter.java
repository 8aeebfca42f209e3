package org.orbwright.body;

import java.io.StringWriter;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.body.Body.Part;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.LengthUnit;

/**
 * Writes a body as Wavefront OBJ, an object for each part. The format has no place for a unit: it is said in a comment
 * at the head, as the notices are.
 */
public final class ObjWriter {
    /** What readers take for the end of a line, and all other letters that nobody sees. */
    private static final String LINE_ENDS = "[\\p{Cc}\\p{Zl}\\p{Zp}]";

    private ObjWriter() {}

    /** The body as a file. */
    public static String write(Body body, LengthUnit unit, List<Notice> notices) {
        StringWriter text = new StringWriter();
        var obj = new org.apache.commons.geometry.io.euclidean.threed.obj.ObjWriter(text);
        obj.writeComment(body.title() + "; lengths in " + unit.symbol());
        notices.forEach(notice -> obj.writeComment(notice.line().replaceAll(LINE_ENDS, " ")));
        Set<String> names = new HashSet<>();
        for (Part part : body.parts()) {
            int first = obj.getVertexCount();
            obj.writeObjectName(name(part.name(), names));
            for (Vector3D vertex : part.mesh().vertices()) {
                obj.writeVertex(vertex.multiply(1 / unit.millimetres()));
            }
            for (Triangle t : part.mesh().triangles()) {
                obj.writeFace(first + t.a(), first + t.b(), first + t.c());
            }
        }
        obj.close();
        return text.toString();
    }

    /** Names end at a space for some readers; objects of one name would be one object, so that a number tells apart. */
    private static String name(String part, Set<String> taken) {
        String plain = part.strip().replaceAll("[\\s\\p{Cntrl}]+", "_");
        String name = plain;
        for (int number = 2; !taken.add(name); number++) {
            name = plain + "_" + number;
        }
        return name;
    }
}
