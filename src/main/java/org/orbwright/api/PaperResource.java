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
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.api.guard.Heavy;
import org.orbwright.api.query.Format;
import org.orbwright.document.Document;
import org.orbwright.paper.HtmlWriter;
import org.orbwright.paper.PdfWriter;
import org.orbwright.paper.ShopSheet;
import org.orbwright.paper.ShopSheetCalculator;

/** What goes to the bench on paper. */
@Path("/v1/shop-sheet")
@Consumes(MediaType.APPLICATION_JSON)
@Produces({Format.PDF_TYPE, MediaType.TEXT_HTML})
@Tag(name = "Paper", description = "What goes to the bench on paper.")
@Heavy
public class PaperResource {
    private static final List<Format> FORMS = List.of(Format.PDF, Format.HTML);

    @POST
    @Operation(
            operationId = "writeShopSheet",
            summary = "The numbers of a build in the order of the work, for the bench",
            description = "Set-up by set-up from the strips to the finished sphere: settings, check boxes, blanks for"
                    + " measured"
                    + " values, cautions at their step, findings on the first page, drawings; in inches with"
                    + " fractions to 1/64 in. As PDF with full-size templates on as many pages as they take,"
                    + " crosses where pages meet and a bar that proves the print's scale; or as a page of HTML"
                    + " without templates, by the header Accept or by format. The same request gives the same"
                    + " bytes. These numbers say what fits, not what is safe.")
    @APIResponse(
            responseCode = "200",
            description = "The sheet.",
            content = {
                @Content(mediaType = Format.PDF_TYPE, schema = @Schema(type = SchemaType.STRING, format = "binary")),
                @Content(mediaType = MediaType.TEXT_HTML, schema = @Schema(type = SchemaType.STRING))
            })
    public Response sheet(
            Document document,
            @Parameter(
                            description = "pdf or html, for callers that cannot set the header Accept; it goes before"
                                    + " the header.",
                            example = "pdf")
                    @QueryParam("format")
                    String format,
            @Context Request http) {
        Format form = Format.wanted(format, http, FORMS);
        ShopSheet sheet = ShopSheetCalculator.sheet(document);
        return form == Format.HTML
                ? Response.ok(HtmlWriter.write(sheet), MediaType.TEXT_HTML + ";charset=UTF-8")
                        .build()
                : Response.ok(PdfWriter.write(sheet), Format.PDF_TYPE).build();
    }
}
