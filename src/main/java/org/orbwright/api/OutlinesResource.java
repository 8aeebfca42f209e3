package org.orbwright.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.function.Supplier;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.drawing.Drawing;
import org.orbwright.drawing.DxfWriter;
import org.orbwright.drawing.Outline;
import org.orbwright.drawing.PanelDrawing;
import org.orbwright.drawing.PanelOutline;
import org.orbwright.drawing.PngRenderer;
import org.orbwright.drawing.SvgWriter;
import org.orbwright.quantity.LengthUnit;

/** Draws what is cut out, for the eye and for a CAD program. */
@Path("/v1/drawings")
@Consumes(MediaType.APPLICATION_JSON)
@Produces({Form.SVG_TYPE, Form.PNG_TYPE, Form.DXF_TYPE})
@Tag(name = "Drawings")
public class OutlinesResource {
    private static final String FACE = "Name of the face kind; the first of the solid if left out.";
    private static final String SET = "The set of segments; UPRIGHT if left out.";
    private static final String WIDTH = "Width of a PNG in dots.";
    private static final String DEFAULT_WIDTH = "1200";
    private static final List<Form> FORMS = List.of(Form.SVG, Form.PNG, Form.DXF);

    @POST
    @Path("/panel")
    @Operation(
            operationId = "drawPanel",
            summary = "The flat panel of a face kind",
            description = "Segments and bands of one panel at true size, with the line beyond which the wood is turned"
                    + " away. As DXF (release 12, ASCII) in the design's unit: closed outlines of panel, inner face and"
                    + " bands, on a layer each.")
    public Response panel(
            DesignRequest design,
            @Parameter(description = FACE, example = "pentagon") @QueryParam("face") String face,
            @Parameter(description = SET, example = "UPRIGHT") @QueryParam("set") String set,
            @Parameter(description = WIDTH, example = DEFAULT_WIDTH) @QueryParam("width") String width,
            @Parameter(
                            description = Form.DESCRIPTION,
                            example = "dxf",
                            schema =
                                    @Schema(
                                            type = SchemaType.STRING,
                                            enumeration = {"svg", "png", "dxf"}))
                    @QueryParam(Form.PARAMETER)
                    String format,
            @Context Request request) {
        Design checked = Design.of(design);
        String kind = DesignQuery.panel(checked, face).face();
        BandSet asked = Query.constant("set", set, BandSet.class, BandSet.UPRIGHT);
        return answer(
                Form.wanted(format, request, FORMS),
                () -> PanelDrawing.draw(checked, kind, asked),
                () -> PanelOutline.of(checked, kind, asked),
                width,
                checked.unit());
    }

    private static Response answer(
            Form form, Supplier<Drawing> drawing, Supplier<Outline> outline, String width, LengthUnit unit) {
        int dots = Query.width(width, DEFAULT_WIDTH);
        return switch (form) {
            case PNG ->
                Response.ok(PngRenderer.render(drawing.get(), dots), form.type())
                        .build();
            case DXF ->
                Response.ok(DxfWriter.write(outline.get(), unit), form.type()).build();
            default ->
                Response.ok(SvgWriter.write(drawing.get()), form.type() + ";charset=UTF-8")
                        .build();
        };
    }
}
