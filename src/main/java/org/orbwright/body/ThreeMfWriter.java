package org.orbwright.body;

import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.body.Body.Part;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;
import org.orbwright.xml.Archive;
import org.orbwright.xml.Xml;
import org.orbwright.xml.XmlText;

/**
 * Writes a body as 3MF (3MF Core Specification 1.3 of the 3MF Consortium): an object with its wood as base material for
 * each part, one object that they are the components of, the unit of its coordinates, and the notices as the metadata
 * Description. Only that one object is built, so that the parts stay together.
 */
public final class ThreeMfWriter {
    private static final int DECIMALS = 8;
    private static final String SCHEMAS = "http://schemas.openxmlformats.org/package/2006/";
    private static final String MATERIALS = "1";
    /** Number of the first part's object. */
    private static final int FIRST = 2;

    private final Body body;
    private final List<String> colours;
    private final LengthUnit unit;
    private final List<Notice> notices;

    private ThreeMfWriter(Body body, List<String> colours, LengthUnit unit, List<Notice> notices) {
        this.body = body;
        this.colours = colours;
        this.unit = unit;
        this.notices = notices;
    }

    /** The body as a file, with a colour for each part as {@code #rrggbb} and notices for whoever opens it. */
    public static byte[] write(Body body, List<String> colours, LengthUnit unit, List<Notice> notices) {
        Archive archive = new Archive();
        archive.add("[Content_Types].xml", ThreeMfWriter::types);
        archive.add("_rels/.rels", ThreeMfWriter::relations);
        archive.add("3D/3dmodel.model", new ThreeMfWriter(body, colours, unit, notices)::model);
        return archive.toBytes();
    }

    private static void types(Xml xml) {
        xml.open("Types", "xmlns", SCHEMAS + "content-types").empty("Default", "Extension", "rels");
        xml.attributes("ContentType", "application/vnd.openxmlformats-package.relationships+xml");
        xml.empty("Default", "Extension", "model");
        xml.attributes("ContentType", "application/vnd.ms-package.3dmanufacturing-3dmodel+xml")
                .close(1);
    }

    private static void relations(Xml xml) {
        xml.open("Relationships", "xmlns", SCHEMAS + "relationships").empty("Relationship");
        xml.attributes("Target", "/3D/3dmodel.model", "Id", "model");
        xml.attributes("Type", "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel")
                .close(1);
    }

    private void model(Xml xml) {
        xml.open("model", "unit", unit == LengthUnit.MM ? "millimeter" : "inch", "xml:lang", "en");
        xml.attributes("xmlns", "http://schemas.microsoft.com/3dmanufacturing/core/2015/02");
        xml.text("metadata", body.title(), "name", "Title");
        if (!notices.isEmpty()) {
            String told = notices.stream().map(Notice::line).collect(Collectors.joining(" "));
            xml.text("metadata", told, "name", "Description");
        }
        xml.open("resources").open("basematerials", "id", MATERIALS);
        for (int i = 0; i < body.parts().size(); i++) {
            xml.empty("base", "name", name(body.parts().get(i).name()), "displaycolor", colours.get(i));
        }
        xml.close(1);
        for (int i = 0; i < body.parts().size(); i++) {
            part(xml, i, body.parts().get(i));
        }
        String whole = String.valueOf(FIRST + body.parts().size());
        xml.open("object", "id", whole, "type", "model", "name", name(body.title()))
                .open("components");
        for (int i = 0; i < body.parts().size(); i++) {
            xml.empty("component", "objectid", String.valueOf(FIRST + i));
        }
        xml.close(3).open("build").empty("item", "objectid", whole).close(2);
    }

    private void part(Xml xml, int number, Part part) {
        String id = String.valueOf(FIRST + number);
        xml.open("object", "id", id, "type", "model", "name", name(part.name()));
        xml.attributes("pid", MATERIALS, "pindex", String.valueOf(number)).open("mesh vertices");
        for (Vector3D vertex : part.mesh().vertices()) {
            xml.empty("vertex", "x", number(vertex.getX()), "y", number(vertex.getY()), "z", number(vertex.getZ()));
        }
        xml.close(1).open("triangles");
        for (Triangle t : part.mesh().triangles()) {
            xml.empty(
                    "triangle", "v1", String.valueOf(t.a()), "v2", String.valueOf(t.b()), "v3", String.valueOf(t.c()));
        }
        xml.close(3);
    }

    private String number(double millimetres) {
        return Rounding.plain(unit.fromMillimetres(millimetres), DECIMALS);
    }

    /** A name of the caller's as a value of an attribute, which has one line. */
    private static String name(String text) {
        return XmlText.legal(text).replaceAll("[\\t\\n]", " ");
    }
}
