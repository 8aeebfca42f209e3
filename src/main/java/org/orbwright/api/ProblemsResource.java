package org.orbwright.api;

import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.StringWriter;
import java.util.Arrays;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.api.wire.ProblemKind;
import org.orbwright.api.wire.RequestException;
import org.orbwright.xml.Xml;

/** The pages that the types of problems point to. */
@Path(ProblemKind.PAGES)
@Produces(MediaType.TEXT_HTML)
@Tag(name = "Problems", description = "What each kind of problem means, and what to do about it.")
@NonBlocking
public class ProblemsResource {

    @GET
    @Operation(
            operationId = "listProblems",
            summary = "All kinds of problem",
            description = "A page with every kind of problem, its status and what to do.")
    @APIResponse(
            responseCode = "200",
            description = "The page.",
            content = @Content(mediaType = MediaType.TEXT_HTML, schema = @Schema(type = SchemaType.STRING)))
    public Response all() {
        return page("Problems", Arrays.asList(ProblemKind.values()));
    }

    @GET
    @Path("/{problem}")
    @Operation(
            operationId = "explainProblem",
            summary = "One kind of problem",
            description = "A page that says what a kind of problem means, and what to do about it.")
    @APIResponse(
            responseCode = "200",
            description = "The page.",
            content = @Content(mediaType = MediaType.TEXT_HTML, schema = @Schema(type = SchemaType.STRING)))
    public Response one(
            @Parameter(
                            description = "The last part of a problem's type.",
                            example = "invalid-request",
                            schema = @Schema(type = SchemaType.STRING, minLength = 1, maxLength = 60))
                    @PathParam("problem")
                    String problem) {
        List<ProblemKind> found = Arrays.stream(ProblemKind.values())
                .filter(kind -> kind.slug().equals(problem))
                .toList();
        if (found.isEmpty()) {
            throw new RequestException(
                    ProblemKind.NOT_FOUND,
                    "There is no kind of problem of that name; /problems lists them.",
                    List.of());
        }
        return page(found.get(0).title(), found);
    }

    private static Response page(String title, List<ProblemKind> kinds) {
        StringWriter text = new StringWriter();
        Xml page = Xml.html(text, title);
        page.text("h1", title);
        for (ProblemKind kind : kinds) {
            if (kinds.size() > 1) {
                page.open("h2").text("a", kind.title(), "href", kind.uri()).close(1);
            }
            page.text("p", "Status " + kind.status() + ", type " + kind.uri()).text("p", kind.help());
        }
        page.end();
        return Response.ok(text.toString(), MediaType.TEXT_HTML + ";charset=UTF-8")
                .build();
    }
}
