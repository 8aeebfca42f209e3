package org.orbwright.api;

import io.smallrye.common.annotation.Blocking;
import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.api.guard.Heavy;
import org.orbwright.api.guard.Kept;
import org.orbwright.api.query.Format;
import org.orbwright.api.query.PictureQuery;
import org.orbwright.api.wire.ProblemKind;
import org.orbwright.api.wire.RequestException;
import org.orbwright.api.wire.Sentences;
import org.orbwright.design.Violation;
import org.orbwright.drawing.SolidDrawing;
import org.orbwright.quantity.Describe;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.solid.SolidSummary;

/** The catalogue of solids. */
@Kept
@Path("/v1/solids")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Solids", description = "The catalogue of solids that a design may name.")
@NonBlocking
public class SolidsResource {

    @GET
    @Operation(
            operationId = "listSolids",
            summary = "The solids in brief",
            description = "The 5 Platonic, 13 Archimedean and 13 Catalan solids, by name.")
    public SolidList solids() {
        return new SolidList(SolidCatalogue.summaries());
    }

    @GET
    @Path("/{solid}")
    @Operation(
            operationId = "findSolid",
            summary = "One solid in full",
            description = "Counts, face kinds, distances and angles of a solid whose shortest edge is 1.")
    public Solid solid(
            @Parameter(
                            description = "The solid's name in the catalogue.",
                            example = "dodecahedron",
                            schema = @Schema(type = SchemaType.STRING, minLength = 1, maxLength = 60))
                    @PathParam("solid")
                    String solid) {
        return named(solid);
    }

    @GET
    @Path("/{solid}/picture")
    @Produces({Format.SVG_TYPE, Format.PNG_TYPE})
    @Operation(
            operationId = "drawSolid",
            summary = "A picture of a solid",
            description = "The solid with each face kind in a tone of its own, in orthographic projection, as SVG or as"
                    + " PNG. Its key names the face kinds.")
    @Heavy
    @Blocking
    public Response picture(
            @Parameter(
                            description = "The solid's name in the catalogue.",
                            example = "truncated-icosahedron",
                            schema = @Schema(type = SchemaType.STRING, minLength = 1, maxLength = 60))
                    @PathParam("solid")
                    String solid,
            @BeanParam PictureQuery query) {
        query.check();
        return query.answer(SolidDrawing.draw(named(solid)), List.of());
    }

    private static Solid named(String solid) {
        return SolidCatalogue.find(solid).orElseThrow(() -> unknown(solid));
    }

    private static RequestException unknown(String solid) {
        String name = Sentences.cut(solid);
        String nearest = "one of " + String.join(", ", SolidCatalogue.nearest(solid));
        String message = "There is no solid named \"" + name + "\"; the nearest names: "
                + String.join(", ", SolidCatalogue.nearest(solid)) + ".";
        return new RequestException(
                ProblemKind.UNKNOWN_SOLID,
                message,
                List.of(new Violation("solid", "UNKNOWN_SOLID", message, name, nearest)));
    }

    /** The solids in brief. */
    @Describe("The solids in brief.")
    public record SolidList(
            @Describe("The solids, by family and name.") List<SolidSummary> solids) {}
}
