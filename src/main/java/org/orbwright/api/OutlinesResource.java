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
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.api.guard.Heavy;
import org.orbwright.api.query.DesignQuery;
import org.orbwright.api.query.FaceQuery;
import org.orbwright.api.query.Format;
import org.orbwright.api.query.OutlineQuery;
import org.orbwright.api.query.SegmentQuery;
import org.orbwright.api.query.SetQuery;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.document.Document;
import org.orbwright.drawing.LatheOutlines;
import org.orbwright.drawing.PanelDrawing;
import org.orbwright.drawing.PanelOutline;
import org.orbwright.drawing.PocketOutline;
import org.orbwright.drawing.SegmentDrawing;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;
import org.orbwright.turning.Holding.Seat;

/** Draws what is cut out, for the eye and for a CAD program. */
@Path("/v1/drawings")
@Consumes(MediaType.APPLICATION_JSON)
@Produces({Format.SVG_TYPE, Format.PNG_TYPE, Format.DXF_TYPE})
@Tag(name = "Drawings")
@Heavy
public class OutlinesResource {
    @POST
    @Path("/panel")
    @Operation(
            operationId = "drawPanel",
            summary = "The flat panel of a face kind",
            description = "Segments and bands of one panel at true size, with the line beyond which the wood is turned"
                    + " away. As DXF (ASCII): closed outlines of panel, inner face and"
                    + " bands, on a layer each.")
    public Response panel(
            Document document, @BeanParam FaceQuery face, @BeanParam SetQuery set, @BeanParam OutlineQuery query) {
        query.check();
        Design checked = Design.of(document.design());
        String kind = face.panel(checked).face();
        BandSet asked = checked.set(set.asked());
        return query.answer(
                checked.unit(),
                SheetCalculator.sawn(document).notices(),
                () -> PanelDrawing.draw(checked, kind, asked),
                () -> PanelOutline.of(checked, kind, asked));
    }

    @POST
    @Path("/segment")
    @Operation(
            operationId = "drawSegment",
            summary = "One segment with its bands",
            description = "A segment at true size with base, base distance and legs, where its bevel ends, and the line"
                    + " beyond which the wood is turned away. A rule beside it has the width of each band and the distance"
                    + " of each glue line from the base. As DXF (ASCII), the tip at the origin.")
    public Response segment(
            Document document,
            @BeanParam FaceQuery face,
            @BeanParam SegmentQuery segment,
            @BeanParam SetQuery set,
            @BeanParam OutlineQuery query) {
        query.check();
        Design checked = Design.of(document.design());
        Panel panel = face.panel(checked);
        Piece piece = segment.piece(panel);
        BandSet asked = checked.set(set.asked());
        return query.answer(
                checked.unit(),
                SheetCalculator.sawn(document).notices(),
                () -> SegmentDrawing.draw(checked, panel, piece, asked),
                () -> PanelOutline.ofSegment(checked, panel, piece, asked));
    }

    @POST
    @Path("/disc")
    @Operation(
            operationId = "drawDisc",
            summary = "A mounting disc",
            description = "The mounting disc at one end of the axis with its hole and the circle of its screws. As DXF"
                    + " (ASCII), with true circles around the origin.")
    public Response disc(
            Document document,
            @Parameter(description = DesignQuery.END, example = "HEAD") @QueryParam("end") String end,
            @BeanParam OutlineQuery query) {
        query.check();
        Design checked = Design.of(document.design());
        Answer told = SheetCalculator.turning(document);
        Seat seat = DesignQuery.seat(told.turning(), end);
        return query.answer(
                checked,
                told.notices(),
                () -> LatheOutlines.disc(checked, told.document().turning(), seat));
    }

    @POST
    @Path("/templates")
    @Operation(
            operationId = "drawTemplates",
            summary = "Ring gauges and templates",
            description = "For each chord that the request lists a ring gauge, and a template whose hollow edge has the"
                    + " sphere's radius. As DXF (ASCII), with true arcs.")
    public Response templates(Document document, @BeanParam OutlineQuery query) {
        query.check();
        Design checked = Design.of(document.design());
        Answer told = SheetCalculator.turning(document);
        return query.answer(checked, told.notices(), () -> LatheOutlines.templates(checked, told.turning()));
    }

    @POST
    @Path("/pocket")
    @Operation(
            operationId = "drawPocket",
            summary = "The pocket for an inlay",
            description = "The pocket on its panel, seen from outside. As DXF (ASCII),"
                    + " the panel's centre at the origin.")
    public Response pocket(Document document, @BeanParam OutlineQuery query) {
        query.check();
        Design checked = Design.of(document.design());
        Answer told = SheetCalculator.pocket(document);
        return query.answer(
                checked,
                told.notices(),
                () -> PocketOutline.of(checked, told.document().inlays().shape(), told.inlays()));
    }
}
