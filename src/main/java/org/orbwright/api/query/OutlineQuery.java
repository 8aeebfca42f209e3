package org.orbwright.api.query;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.function.Supplier;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.orbwright.design.Design;
import org.orbwright.drawing.CutWriter;
import org.orbwright.drawing.Drawing;
import org.orbwright.drawing.DxfRelease;
import org.orbwright.drawing.DxfWriter;
import org.orbwright.drawing.Outline;
import org.orbwright.drawing.OutlineDrawing;
import org.orbwright.drawing.OutlineSheet;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.LengthUnit;

/** What a request for an outline says of the form of its answer. */
public class OutlineQuery {
    private static final String RELEASE = "dxf";
    private static final List<Format> FORMS = List.of(Format.SVG, Format.PNG, Format.DXF, Format.CUT);

    @QueryParam("width")
    @Parameter(description = "Width of a PNG in dots.", example = PictureQuery.DEFAULT_WIDTH)
    String width;

    @QueryParam(Format.PARAMETER)
    @Parameter(
            description = Format.DESCRIPTION + " cut: an SVG at true size that has nothing but what is cut.",
            example = "png",
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {"svg", "png", "dxf", "cut"}))
    String format;

    @QueryParam(RELEASE)
    @Parameter(
            description = "Release of a DXF: R2000 (AC1015) if left out, or R12 (AC1009) for older programs.",
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {"R2000", "R12"}))
    String release;

    @QueryParam(FileUnit.NAME)
    @Parameter(
            description = FileUnit.DESCRIPTION,
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {"mm", "in"}))
    String unit;

    @Context
    Request request;

    @Context
    RoutingContext exchange;

    /** Refuses a wrong form or what does not go with it, before anything is worked out. */
    public void check() {
        Format form = Format.wanted(format, request, FORMS);
        PictureQuery.check(form, width);
        FileUnit.check(unit, form);
        if (form != Format.DXF) {
            Query.leftOut(RELEASE, release, "of what is not a DXF");
        }
        Query.constant(RELEASE, release, DxfRelease.class, DxfRelease.R2000);
    }

    /** Writes outlines, and what they tell, in the form that is asked for. */
    public Response answer(Design design, List<Notice> notices, Supplier<OutlineSheet> sheet) {
        return answer(
                design.unit(),
                notices,
                () -> OutlineDrawing.draw(design, sheet.get()),
                () -> sheet.get().outline());
    }

    /** The same where a picture shows more than the outlines. */
    public Response answer(
            LengthUnit designs, List<Notice> notices, Supplier<Drawing> drawing, Supplier<Outline> outline) {
        Format form = Format.wanted(format, request, FORMS);
        LengthUnit wanted = FileUnit.asked(unit, form, designs);
        DxfRelease asked = Query.constant(RELEASE, release, DxfRelease.class, DxfRelease.R2000);
        return switch (form) {
            case DXF ->
                Response.ok(DxfWriter.write(outline.get(), asked, wanted, notices), form.type())
                        .build();
            case CUT ->
                Response.ok(CutWriter.write(outline.get(), wanted, notices), form.type() + ";charset=UTF-8")
                        .build();
            default -> PictureQuery.written(form, drawing.get().with(notices), width, exchange);
        };
    }
}
