package org.orbwright.body;

import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.body.Body.Part;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;
import org.orbwright.xml.Archive;

/**
 * Writes a body as 3MF (3MF Core Specification 1.3 of the 3MF Consortium): one object for each part with its wood as
 * base material, the unit of its coordinates, and the notices as the metadata Description.
 */
public final class ThreeMfWriter {
    private static final int DECIMALS = 8;
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    private static final String TYPES = HEAD
            + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
            + "<Default Extension=\"rels\""
            + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
            + "<Default Extension=\"model\" ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"/>"
            + "</Types>\n";
    private static final String RELATIONS = HEAD
            + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
            + "<Relationship Target=\"/3D/3dmodel.model\" Id=\"model\""
            + " Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/>"
            + "</Relationships>\n";

    private ThreeMfWriter() {}

    /**
     * The body as a file.
     *
     * @param body the body
     * @param colours a colour for each part, as {@code #rrggbb}
     * @param unit the unit of its coordinates
     * @param notices what it tells whoever opens it
     */
    public static byte[] write(Body body, List<String> colours, LengthUnit unit, List<Notice> notices) {
        Archive archive = new Archive();
        archive.addText("[Content_Types].xml", TYPES);
        archive.addText("_rels/.rels", RELATIONS);
        archive.addText("3D/3dmodel.model", model(body, colours, unit, notices));
        return archive.toBytes();
    }

    private static String model(Body body, List<String> colours, LengthUnit unit, List<Notice> notices) {
        StringBuilder xml = new StringBuilder(HEAD)
                .append("<model unit=\"")
                .append(unit == LengthUnit.MM ? "millimeter" : "inch")
                .append("\" xml:lang=\"en\" xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">\n")
                .append(metadata("Title", body.title()))
                .append(metadata(
                        "Description", notices.stream().map(Notice::line).collect(Collectors.joining(" "))))
                .append("<resources>\n<basematerials id=\"1\">\n");
        for (int i = 0; i < body.parts().size(); i++) {
            xml.append("<base name=\"")
                    .append(escaped(body.parts().get(i).name()))
                    .append("\" displaycolor=\"")
                    .append(colours.get(i))
                    .append("\"/>\n");
        }
        xml.append("</basematerials>\n");
        for (int i = 0; i < body.parts().size(); i++) {
            object(xml, i, body.parts().get(i), unit);
        }
        xml.append("</resources>\n<build>\n");
        for (int i = 0; i < body.parts().size(); i++) {
            xml.append("<item objectid=\"").append(i + 2).append("\"/>\n");
        }
        return xml.append("</build>\n</model>\n").toString();
    }

    /** A value under one of the names that the specification knows; nothing where there is none. */
    private static String metadata(String name, String value) {
        return value.isEmpty() ? "" : "<metadata name=\"" + name + "\">" + escaped(value) + "</metadata>\n";
    }

    private static void object(StringBuilder xml, int number, Part part, LengthUnit unit) {
        xml.append("<object id=\"")
                .append(number + 2)
                .append("\" type=\"model\" name=\"")
                .append(escaped(part.name()))
                .append("\" pid=\"1\" pindex=\"")
                .append(number)
                .append("\">\n<mesh>\n<vertices>\n");
        for (Vector3D vertex : part.mesh().vertices()) {
            xml.append("<vertex x=\"")
                    .append(number(vertex.getX(), unit))
                    .append("\" y=\"")
                    .append(number(vertex.getY(), unit))
                    .append("\" z=\"")
                    .append(number(vertex.getZ(), unit))
                    .append("\"/>\n");
        }
        xml.append("</vertices>\n<triangles>\n");
        for (Triangle t : part.mesh().triangles()) {
            xml.append("<triangle v1=\"")
                    .append(t.a())
                    .append("\" v2=\"")
                    .append(t.b())
                    .append("\" v3=\"")
                    .append(t.c())
                    .append("\"/>\n");
        }
        xml.append("</triangles>\n</mesh>\n</object>\n");
    }

    private static String number(double millimetres, LengthUnit unit) {
        return Rounding.plain(unit.fromMillimetres(millimetres), DECIMALS);
    }

    /** Text of the caller's in XML 1.0, which has no room for control characters. */
    private static String escaped(String text) {
        return text.replaceAll("[\\p{Cntrl}\\x{FFFE}\\x{FFFF}\\x{D800}-\\x{DFFF}]", "?")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace("\"", "&quot;");
    }
}
