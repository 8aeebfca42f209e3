package org.orbwright.api.query;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.orbwright.api.wire.ProblemKind;
import org.orbwright.api.wire.RequestException;
import org.orbwright.design.Violation;
import org.orbwright.drawing.Drawing;
import org.orbwright.drawing.Picture;
import org.orbwright.drawing.PictureMemoryException;
import org.orbwright.drawing.PngRenderer;
import org.orbwright.drawing.SvgWriter;
import org.orbwright.notice.Notice;

/** What a request for a picture says of the form of its answer. */
public class PictureQuery {
    static final String DEFAULT_WIDTH = "1200";

    private static final List<Format> FORMS = List.of(Format.SVG, Format.PNG);

    @QueryParam("width")
    @Parameter(description = "Width of a PNG in dots.", example = DEFAULT_WIDTH)
    String width;

    @QueryParam(Format.PARAMETER)
    @Parameter(
            description = Format.DESCRIPTION,
            example = "png",
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {"svg", "png"}))
    String format;

    @Context
    Request request;

    @Context
    RoutingContext exchange;

    /** Refuses a wrong form or width, before anything is worked out. */
    public void check() {
        check(Format.wanted(format, request, FORMS), width);
    }

    /** The same for a form. */
    static void check(Format form, String width) {
        refuseUselessWidth(form, width);
        Query.width(width, DEFAULT_WIDTH);
    }

    /** Writes a picture, and what it tells, in the form that is asked for. */
    public Response answer(Drawing drawing, List<Notice> notices) {
        check();
        return written(Format.wanted(format, request, FORMS), drawing.with(notices), width, exchange);
    }

    /** Only a PNG has dots. */
    private static void refuseUselessWidth(Format form, String width) {
        if (form != Format.PNG && width != null && !width.isEmpty()) {
            throw Query.refuse("width", "USELESS", width, "left out of what is not a PNG");
        }
    }

    /** A picture in a form. */
    static Response written(Format form, Drawing drawing, String width, RoutingContext exchange) {
        int dots = Query.width(width, DEFAULT_WIDTH);
        return form == Format.PNG
                ? Response.ok(png(drawing, dots, exchange), form.type()).build()
                : Response.ok(SvgWriter.write(drawing), form.type() + ";charset=UTF-8")
                        .build();
    }

    /** Its memory is given back when the answer has gone out, or the caller has. */
    private static byte[] png(Drawing drawing, int dots, RoutingContext exchange) {
        try {
            Picture picture = PngRenderer.render(drawing, dots);
            exchange.addEndHandler(end -> picture.close());
            // Whoever has left before is not told of.
            if (exchange.response().closed()) {
                picture.close();
            }
            return picture.bytes();
        } catch (PictureMemoryException e) {
            throw e.passes() ? busy() : tooLarge(dots, e.widest());
        }
    }

    private static RequestException busy() {
        String detail = "Other pictures hold the memory; ask again in a second.";
        return new RequestException(ProblemKind.BUSY, detail, List.of());
    }

    private static RequestException tooLarge(int dots, int widest) {
        String allowed = "at most " + widest + " in this service's memory";
        String message = "width must be " + allowed + ", but is " + dots + ".";
        return new RequestException(
                ProblemKind.PICTURE_TOO_LARGE,
                message,
                List.of(new Violation("width", "TOO_LARGE", message, String.valueOf(dots), allowed)));
    }
}
