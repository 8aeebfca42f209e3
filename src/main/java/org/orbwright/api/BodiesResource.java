package org.orbwright.api;

import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.api.guard.Heavy;
import org.orbwright.api.query.BodyQuery;
import org.orbwright.api.query.DesignQuery;
import org.orbwright.api.query.DeviationQuery;
import org.orbwright.api.query.FaceQuery;
import org.orbwright.api.query.Format;
import org.orbwright.api.query.SegmentQuery;
import org.orbwright.body.BodyCalculator;
import org.orbwright.body.WorkBodies;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.document.Document;
import org.orbwright.inlay.InlayRequest.ShapeRequest;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;
import org.orbwright.turning.Holding.Seat;

/** Bodies of a design for CAD and CAM. */
@Path("/v1/bodies")
@Consumes(MediaType.APPLICATION_JSON)
@Produces({Format.STL_TYPE, Format.OBJ_TYPE, Format.THREE_MF_TYPE, Format.GLB_TYPE, MediaType.APPLICATION_JSON})
@Tag(
        name = "Bodies",
        description = "Bodies of a design as closed meshes, and their numbers as JSON. STL and OBJ have no place for a"
                + " unit: coordinates are in the design's unit or the one that is asked for, which the head of the file"
                + " says. STL holds one part: all wood, or the one wood that is named. OBJ, 3MF and GLB hold a part for"
                + " each wood. GLB is glTF 2.0 for viewers: in metres, its second axis upright, in the colours of the"
                + " woods. STOPs and WARNs are comments in OBJ, the metadata Description in 3MF and"
                + " asset.extras.notices in GLB. The 80 letters of STL's header hold the codes of the STOPs; a plus"
                + " stands for those that there is no room for.")
@Heavy
public class BodiesResource {
    private static final String THICKEST = "1000";

    @POST
    @Path("/segment")
    @Operation(
            operationId = "buildSegment",
            summary = "A segment as it is sawn",
            description = "One segment before bevelling: its tip over the origin, its base towards the negative second"
                    + " axis, its inner face at height 0.")
    public Response segment(
            Document document, @BeanParam FaceQuery face, @BeanParam SegmentQuery segment, @BeanParam BodyQuery query) {
        query.check();
        Design checked = Design.of(document.design());
        Panel panel = face.panel(checked);
        return query.answer(
                SheetCalculator.sawn(document),
                checked,
                null,
                options -> BodyCalculator.segment(checked, panel, segment.piece(panel), options));
    }

    @POST
    @Path("/panel")
    @Operation(
            operationId = "buildPanel",
            summary = "A bevelled panel",
            description =
                    "The first panel of a face kind with its bevel and land: its centre over the origin, the first"
                            + " base towards the negative second axis, its inner face at height 0.")
    public Response panel(Document document, @BeanParam FaceQuery face, @BeanParam BodyQuery query) {
        query.check();
        Design checked = Design.of(document.design());
        String kind = face.panel(checked).face();
        return query.answer(
                SheetCalculator.sawn(document), checked, null, options -> BodyCalculator.panel(checked, kind, options));
    }

    @POST
    @Path("/solid")
    @Operation(
            operationId = "buildSolid",
            summary = "The glued-up solid without its hollow",
            description = "The glued-up solid as if it were full, as one part around the origin: what a CAM program"
                    + " takes for the stock.")
    public Response solid(Document document, @BeanParam BodyQuery query) {
        query.check();
        Design checked = Design.of(document.design());
        return query.answerOne(SheetCalculator.turned(document), checked, "solid", () -> BodyCalculator.solid(checked));
    }

    @POST
    @Path("/shell")
    @Operation(
            operationId = "buildShell",
            summary = "The glued-up solid with its hollow",
            description = "All bevelled panels glued together, around the origin.")
    public Response shell(Document document, @BeanParam BodyQuery query) {
        query.check();
        Design checked = Design.of(document.design());
        return query.answer(
                SheetCalculator.turned(document), checked, null, options -> BodyCalculator.shell(checked, options));
    }

    @POST
    @Path("/sphere")
    @Operation(
            operationId = "buildSphere",
            summary = "The finished sphere with its hollow",
            description = "The wood that is left of all panels on the finished sphere, around the origin. Its triangles"
                    + " lie inside what is round, none deeper than the deviation.")
    public Response sphere(Document document, @BeanParam DeviationQuery deviation, @BeanParam BodyQuery query) {
        query.check();
        Design checked = Design.of(document.design());
        return query.answer(
                SheetCalculator.turned(document),
                checked,
                deviation.millimetres(checked),
                options -> BodyCalculator.sphere(checked, options));
    }

    @POST
    @Path("/disc")
    @Operation(
            operationId = "buildDisc",
            summary = "A mounting disc",
            description = "The mounting disc at one end of the axis, with the hole through its middle, around the third"
                    + " axis. Holes of screws are left out.")
    public Response disc(
            Document document,
            @Parameter(description = DesignQuery.END, example = "HEAD") @QueryParam("end") String end,
            @Parameter(
                            description = "Its thickness in the design's unit; what its screws ask for if left out.",
                            example = "20",
                            schema = @Schema(type = SchemaType.NUMBER, minimum = "0.001", maximum = THICKEST))
                    @QueryParam("thickness")
                    String thickness,
            @BeanParam DeviationQuery deviation,
            @BeanParam BodyQuery query) {
        query.check();
        Design checked = Design.of(document.design());
        Answer told = SheetCalculator.turning(document);
        Seat seat = DesignQuery.seat(told.turning(), end);
        double thick = DesignQuery.thickness(seat, thickness, checked);
        double hole = DesignQuery.centreHole(told.document().turning(), checked);
        return query.answerOne(
                told,
                checked,
                "disc",
                () -> WorkBodies.disc(checked, seat, hole, thick, deviation.millimetres(checked)));
    }

    @POST
    @Path("/pocket")
    @Operation(
            operationId = "buildPocket",
            summary = "The wood that is cut out for an inlay",
            description = "The pocket as a body, where the bevelled panel's body has its panel.")
    public Response pocket(Document document, @BeanParam DeviationQuery deviation, @BeanParam BodyQuery query) {
        query.check();
        Design checked = Design.of(document.design());
        Answer told = SheetCalculator.pocket(document);
        ShapeRequest shape = told.document().inlays().shape();
        if (shape.sides() != null) {
            deviation.leftOut("pocket with " + shape.sides() + " sides");
        }
        return query.answerOne(
                told,
                checked,
                "pocket",
                () -> WorkBodies.pocket(checked, shape, told.inlays(), deviation.millimetres(checked)));
    }
}
