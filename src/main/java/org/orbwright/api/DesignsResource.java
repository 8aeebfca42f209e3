package org.orbwright.api;

import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.api.guard.Kept;
import org.orbwright.api.wire.DesignLibrary;
import org.orbwright.api.wire.ProblemKind;
import org.orbwright.api.wire.RequestException;
import org.orbwright.api.wire.Sentences;
import org.orbwright.design.Violation;
import org.orbwright.document.Document;
import org.orbwright.quantity.Describe;

/** The worked designs that come with the service. */
@Kept
@Path("/v1/designs")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Designs", description = "Worked designs to start from.")
@NonBlocking
public class DesignsResource {

    @GET
    @Operation(
            operationId = "listDesigns",
            summary = "The worked designs by name",
            description = "Complete designs that can be fetched, changed and posted.")
    public DesignList designs() {
        return new DesignList(DesignLibrary.all().entrySet().stream()
                .map(entry -> new DesignTitle(entry.getKey(), entry.getValue().title()))
                .toList());
    }

    @GET
    @Path("/{design}")
    @Operation(
            operationId = "findDesign",
            summary = "One worked design",
            description = "A complete design as it is written, ready to be posted.")
    @APIResponse(
            responseCode = "200",
            description = "The design.",
            content =
                    @Content(mediaType = MediaType.APPLICATION_JSON, schema = @Schema(implementation = Document.class)))
    public Response design(
            @Parameter(
                            description = "The design's name in the list of worked designs.",
                            example = "icosahedron-mixed",
                            schema = @Schema(type = SchemaType.STRING, minLength = 1, maxLength = 60))
                    @PathParam("design")
                    String design) {
        return Response.ok(DesignLibrary.find(design)
                        .orElseThrow(() -> unknown(design))
                        .json())
                .build();
    }

    private static RequestException unknown(String design) {
        String name = Sentences.cut(design);
        String names = "one of " + String.join(", ", DesignLibrary.all().keySet());
        String message = "There is no design named \"" + name + "\". The names are listed at /v1/designs.";
        return new RequestException(
                ProblemKind.UNKNOWN_DESIGN,
                message,
                List.of(new Violation("design", "UNKNOWN_DESIGN", message, name, names)));
    }

    /** The worked designs by name. */
    @Describe("The worked designs by name.")
    public record DesignList(
            @Describe("The designs, in the order of their names.")
            List<DesignTitle> designs) {}

    /** The name and title of a worked design. */
    @Describe("The name and title of a worked design.")
    public record DesignTitle(
            @Describe(value = "The name in the address.", example = "\"icosahedron-mixed\"")
            String name,

            @Describe(value = "The design's title.", example = "\"Tide lamp (invented)\"")
            String title) {}
}
