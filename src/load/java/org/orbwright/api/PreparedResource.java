package org.orbwright.api;

import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.orbwright.api.wire.AnswerJson;
import org.orbwright.document.Document;
import org.orbwright.sheet.SheetCalculator;

/**
 * What the service could do at best: reads and validates a design like every other address, and answers a sheet that
 * was prepared with the first request. Only in builds for load runs.
 */
@Path("/load/prepared")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@NonBlocking
public class PreparedResource {
    private static volatile byte[] prepared;

    /** A sheet of the same size as the real one, without computing it. */
    @POST
    @Operation(hidden = true)
    public Response prepared(Document document) {
        if (prepared == null) {
            prepared = AnswerJson.write(SheetCalculator.sheet(document, 9));
        }
        return Response.ok(prepared).build();
    }
}
