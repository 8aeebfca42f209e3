package org.orbwright.api;

import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.api.query.Stations;
import org.orbwright.document.Document;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;

/** Takes a whole design and answers one part of it, or all parts at once. */
@Path("/v1")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Design", description = "A whole design goes in; each address answers one part of it.")
@NonBlocking
public class SheetResource {
    @POST
    @Path("/angles")
    @Operation(
            operationId = "calculateAngles",
            summary = "Bevels, blade tilts and mitre gauge settings",
            description = "Per face kind and edge kind of the solid: dihedral angle, bevel, blade tilt, mitre gauge"
                    + " setting, tip and base angles.")
    public Answer angles(Document document) {
        return SheetCalculator.angles(document);
    }

    @POST
    @Path("/segments")
    @Operation(
            operationId = "calculateSegments",
            summary = "Sizes and counts of the segments, and the cuts along a blank",
            description = "Per face kind: base, base distance, legs, stop distance, counts, and where each cut crosses"
                    + " the blank.")
    public Answer segments(Document document) {
        return SheetCalculator.segments(document);
    }

    @POST
    @Path("/yield")
    @Operation(
            operationId = "calculateYield",
            summary = "Blanks, strips, leftovers and wood",
            description = "Blanks and strips for the wanted copies, upright and inverted sets, segments left over,"
                    + " volume and mass of each wood.")
    public Answer yields(Document document) {
        return SheetCalculator.yields(document);
    }

    @POST
    @Path("/sphere")
    @Operation(
            operationId = "calculateSphere",
            summary = "Sphere, removal, wall and land",
            description = "Across flats, largest and chosen sphere, removal and wall at face centre, edge middle and"
                    + " corner, smallest panel thickness, limits of the land, mounting discs.")
    public Answer sphere(Document document) {
        return SheetCalculator.sphere(document);
    }

    @POST
    @Path("/bands")
    @Operation(
            operationId = "calculateBands",
            summary = "What is left of every band on the sphere",
            description = "Per band: flat width, visible width at the edge middle and at the corners, areas, survival,"
                    + " share of the sphere, and a profile along the base.")
    public Answer bands(Document document, @QueryParam(Stations.NAME) String stations) {
        int count = Stations.parse(stations);
        return SheetCalculator.bands(document, count);
    }

    @POST
    @Path("/sheet")
    @Operation(
            operationId = "calculateSheet",
            summary = "Everything that is needed before the first cut",
            description = "The answers of angles, segments, yield, sphere and bands together, with all findings and"
                    + " cautions.")
    public Answer sheet(Document document, @QueryParam(Stations.NAME) String stations) {
        int count = Stations.parse(stations);
        return SheetCalculator.sheet(document, count);
    }
}
