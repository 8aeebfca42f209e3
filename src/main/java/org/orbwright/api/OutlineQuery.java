package org.orbwright.api;

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
import org.orbwright.drawing.Drawing;
import org.orbwright.drawing.DxfWriter;
import org.orbwright.drawing.Outline;
import org.orbwright.drawing.OutlineDrawing;
import org.orbwright.drawing.OutlineSheet;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.LengthUnit;

/** What a request for an outline says of the form of its answer. */
public class OutlineQuery {
    private static final List<Form> FORMS = List.of(Form.SVG, Form.PNG, Form.DXF);

    @QueryParam("width")
    @Parameter(description = "Width of a PNG in dots.", example = PictureQuery.DEFAULT_WIDTH)
    String width;

    @QueryParam(Form.PARAMETER)
    @Parameter(
            description = Form.DESCRIPTION,
            example = "dxf",
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {"svg", "png", "dxf"}))
    String format;

    @Context
    Request request;

    /** Writes outlines, and what they tell, in the form that is asked for. */
    Response answer(Design design, List<Notice> notices, Supplier<OutlineSheet> sheet) {
        return answer(
                design.unit(),
                notices,
                () -> OutlineDrawing.draw(design, sheet.get()),
                () -> sheet.get().outline());
    }

    /** The same where a picture shows more than the outlines. */
    Response answer(LengthUnit unit, List<Notice> notices, Supplier<Drawing> drawing, Supplier<Outline> outline) {
        Form form = Form.wanted(format, request, FORMS);
        PictureQuery.refuseUselessWidth(form, width);
        return form == Form.DXF
                ? Response.ok(DxfWriter.write(outline.get(), unit, notices), form.type())
                        .build()
                : PictureQuery.written(form, drawing.get().with(notices), width);
    }
}
