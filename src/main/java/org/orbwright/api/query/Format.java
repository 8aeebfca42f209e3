package org.orbwright.api.query;

import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Variant;
import java.util.List;
import org.orbwright.api.wire.Csv;

/**
 * The forms in which answers can be had, by the header Accept or, for tools that cannot set it, by the query parameter
 * {@code format}.
 */
public enum Format {
    /** Binary STL. */
    STL("stl", Format.STL_TYPE),
    /** Wavefront OBJ. */
    OBJ("obj", Format.OBJ_TYPE),
    /** 3MF. */
    THREE_MF("3mf", Format.THREE_MF_TYPE),
    /** Binary glTF. */
    GLB("glb", Format.GLB_TYPE),
    /** The numbers. */
    JSON("json", MediaType.APPLICATION_JSON),
    /** Scalable vector graphics. */
    SVG("svg", Format.SVG_TYPE),
    /** Portable network graphics. */
    PNG("png", Format.PNG_TYPE),
    /** Drawing interchange. */
    DXF("dxf", Format.DXF_TYPE),
    /**
     * What is cut, as scalable vector graphics; had by the query parameter alone, since pictures have the media type.
     */
    CUT("cut", Format.SVG_TYPE),
    /** Comma separated values. */
    CSV("csv", Csv.MEDIA_TYPE),
    /** Rows in XML. */
    XML("xml", MediaType.APPLICATION_XML),
    /** Files in an archive. */
    ZIP("zip", Format.ZIP_TYPE),
    /** Pages. */
    PDF("pdf", Format.PDF_TYPE),
    /** A page for a screen. */
    HTML("html", MediaType.TEXT_HTML);

    /** JSON, a line each. */
    public static final String NDJSON_TYPE = "application/x-ndjson";

    /** Binary STL. */
    public static final String STL_TYPE = "model/stl";
    /** Wavefront OBJ. */
    public static final String OBJ_TYPE = "model/obj";
    /** 3MF. */
    public static final String THREE_MF_TYPE = "model/3mf";
    /** Binary glTF. */
    public static final String GLB_TYPE = "model/gltf-binary";
    /** Scalable vector graphics. */
    public static final String SVG_TYPE = "image/svg+xml";
    /** Portable network graphics. */
    public static final String PNG_TYPE = "image/png";
    /** Drawing interchange. */
    public static final String DXF_TYPE = "image/vnd.dxf";
    /** An archive. */
    public static final String ZIP_TYPE = "application/zip";
    /** Pages. */
    public static final String PDF_TYPE = "application/pdf";
    /** The query parameter. */
    public static final String PARAMETER = "format";
    /** What it means. */
    public static final String DESCRIPTION =
            "The form of the answer, for tools that cannot set the header Accept; it goes before that header.";

    private final String word;
    private final String type;

    Format(String word, String type) {
        this.word = word;
        this.type = type;
    }

    /** The media type. */
    public String type() {
        return type;
    }

    /** The word in the query, which ends the name of a file too. */
    public String word() {
        return word;
    }

    /**
     * The form that is asked for.
     *
     * @param parameter the query parameter, null for none
     * @param request the request, with its header
     * @param offered the forms that there are, the usual one first
     */
    public static Format wanted(String parameter, Request request, List<Format> offered) {
        if (!Query.isEmpty(parameter)) {
            String word = Query.name(
                    PARAMETER,
                    parameter,
                    offered.stream().map(form -> form.word).toList());
            return offered.stream()
                    .filter(form -> form.word.equals(word))
                    .findFirst()
                    .orElseThrow();
        }
        List<Variant> variants = Variant.mediaTypes(offered.stream()
                        .map(form -> form.type)
                        .distinct()
                        .map(MediaType::valueOf)
                        .toArray(MediaType[]::new))
                .build();
        Variant wanted = request.selectVariant(variants);
        return offered.stream()
                .filter(form -> wanted != null && wanted.getMediaType().equals(MediaType.valueOf(form.type)))
                .findFirst()
                .orElse(offered.get(0));
    }
}
