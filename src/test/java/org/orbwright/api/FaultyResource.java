package org.orbwright.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Addresses that fail on purpose, in tests only. */
@Path("/faulty")
@Produces(MediaType.APPLICATION_JSON)
public class FaultyResource {

    /** An answer that has no JSON. */
    public record Endless(double length) {}

    @GET
    @Path("/answer")
    @Operation(hidden = true)
    public Endless answer() {
        return new Endless(Double.NaN);
    }

    @GET
    @Path("/code")
    @Operation(hidden = true)
    public Endless code() {
        throw new IllegalArgumentException("secret inner workings");
    }
}
