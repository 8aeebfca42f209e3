package org.orbwright.api;

import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.api.guard.Heavy;
import org.orbwright.api.query.DesignQuery;
import org.orbwright.api.query.FaceQuery;
import org.orbwright.api.query.Format;
import org.orbwright.api.query.PictureQuery;
import org.orbwright.api.query.Query;
import org.orbwright.api.query.SegmentQuery;
import org.orbwright.api.query.SetQuery;
import org.orbwright.api.query.SphereSetQuery;
import org.orbwright.api.query.Stations;
import org.orbwright.assembly.NetCalculator;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Places;
import org.orbwright.document.Document;
import org.orbwright.drawing.BoardDrawing;
import org.orbwright.drawing.Drawing;
import org.orbwright.drawing.NetDrawing;
import org.orbwright.drawing.SawSetUpDrawing;
import org.orbwright.drawing.SectionDrawing;
import org.orbwright.drawing.SphereLook;
import org.orbwright.drawing.SurvivalDrawing;
import org.orbwright.jig.JigPlan.JigFace;
import org.orbwright.jig.JigPlan.JigSegment;
import org.orbwright.jig.TipCut.CutSide;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;

/** Draws a design. */
@Path("/v1/drawings")
@Consumes(MediaType.APPLICATION_JSON)
@Produces({DrawingsResource.SVG, DrawingsResource.PNG})
@Tag(
        name = "Drawings",
        description =
                "Pictures of a design, as SVG in millimetres or as PNG by the header Accept. STOPs stand above the"
                        + " picture, and with the WARNs in its description. In DXF both are comments at the head, and STOPs"
                        + " are texts on the layer NOTE too.")
@Heavy
public class DrawingsResource {
    static final String SVG = Format.SVG_TYPE;
    static final String PNG = Format.PNG_TYPE;
    /** More than any plan has: a wrong number is refused before the plan is searched for. */
    private static final int MOST_BOARDS = 100_000;

    @POST
    @Path("/sphere")
    @Operation(
            operationId = "drawSphere",
            summary = "The finished sphere",
            description = "The sphere with the bands of every panel and the seams, in orthographic projection. It is"
                    + " seen from any direction or square to one of its panels, in one set or in both side by side."
                    + " A ring marks a panel's middle, or its number where numbers are asked for and have room.")
    public Response sphere(
            Document document,
            @BeanParam SphereSetQuery set,
            @Parameter(
                            description =
                                    "Where the eye stands around the solid's third axis, in degrees from its first"
                                            + " axis, -360 to 360; 25 if left out.",
                            example = "25",
                            schema = @Schema(type = SchemaType.NUMBER, minimum = "-360", maximum = "360"))
                    @QueryParam("azimuth")
                    String azimuth,
            @Parameter(
                            description = "Number of the panel whose middle faces the eye, from 1, instead of azimuth"
                                    + " and elevation.",
                            schema = @Schema(type = SchemaType.INTEGER, minimum = "1"))
                    @QueryParam("panel")
                    String panel,
            @Parameter(
                            description =
                                    "How far the eye stands above the plane of the first two axes, in degrees, -90"
                                            + " to 90; 20 if left out.",
                            example = "20",
                            schema = @Schema(type = SchemaType.NUMBER, minimum = "-90", maximum = "90"))
                    @QueryParam("elevation")
                    String elevation,
            @Parameter(
                            description =
                                    "Whether the panels' numbers stand on discs, true or false; false if left out. A"
                                            + " disc hides the wood below it.",
                            example = "true",
                            schema = @Schema(type = SchemaType.BOOLEAN))
                    @QueryParam("numbers")
                    String numbers,
            @Parameter(
                            description =
                                    "Whether a light from the upper left shades the sphere, true or false; false if"
                                            + " left out. The woods then have their colours alone, without hatches.",
                            example = "true",
                            schema = @Schema(type = SchemaType.BOOLEAN))
                    @QueryParam("light")
                    String light,
            @BeanParam PictureQuery query) {
        query.check();
        Design design = Design.of(document.design());
        SphereLook look = new SphereLook(
                Math.toRadians(Query.number("azimuth", azimuth, -360, 360, "25")),
                Math.toRadians(Query.number("elevation", elevation, -90, 90, "20")),
                Query.flag("numbers", numbers),
                Query.flag("light", light));
        if (!Query.isEmpty(panel)) {
            Query.leftOut("azimuth", azimuth, "where a panel is named");
            Query.leftOut("elevation", elevation, "where a panel is named");
            int faces = design.solid().faces().size();
            look = look.facing(design.solid(), Query.whole("panel", panel, 1, faces, "1"));
        }
        return query.answer(
                set.draw(design, look), SheetCalculator.turned(document).notices());
    }

    @POST
    @Path("/survival")
    @Operation(
            operationId = "drawSurvival",
            summary = "What is left of the bands along the base",
            description = "The visible width of every band from the edge middle to the corners, as a plot.")
    public Response survival(
            Document document,
            @BeanParam FaceQuery face,
            @Parameter(
                            description =
                                    "Which lamination of the face kind, where every other segment has its own; the"
                                            + " first if left out.",
                            example = "ALL")
                    @QueryParam("places")
                    String places,
            @BeanParam SetQuery set,
            @Parameter(description = "Stations from the edge middle to a corner.", example = "31")
                    @QueryParam(Stations.NAME)
                    String stations,
            @BeanParam PictureQuery query) {
        query.check();
        Design checked = Design.of(document.design());
        int count = Query.whole(Stations.NAME, stations, Stations.FEWEST, Stations.MOST, "31");
        String kind = face.panel(checked).face();
        List<String> halves = checked.panels().stream()
                .filter(panel -> panel.face().equals(kind))
                .map(panel -> panel.places().name())
                .toList();
        Places half = Places.valueOf(Query.name("places", places, halves));
        Drawing drawing = SurvivalDrawing.draw(checked, kind, half, checked.set(set.asked()), count);
        return query.answer(drawing, SheetCalculator.turned(document).notices());
    }

    @POST
    @Path("/section")
    @Operation(
            operationId = "drawSection",
            summary = "Sections through the wood",
            description =
                    "Sections through the middle of each panel and an edge middle, and through the farthest corner:"
                            + " solid, hollow, wall and sphere.")
    public Response section(
            Document document,
            @Parameter(description = "Name of a face kind; all of the solid if left out.", example = "triangle")
                    @QueryParam("face")
                    String face,
            @BeanParam PictureQuery query) {
        query.check();
        Design checked = Design.of(document.design());
        Drawing drawing = Query.isEmpty(face)
                ? SectionDrawing.draw(checked)
                : SectionDrawing.draw(checked, DesignQuery.panel(checked, face).face());
        return query.answer(drawing, SheetCalculator.turned(document).notices());
    }

    @POST
    @Path("/board")
    @Operation(
            operationId = "drawBoard",
            summary = "A board with its cuts",
            description =
                    "One board of the plan for a design and the boards at hand: from above with its crosscuts and rips,"
                            + " and from the end, once for each way in which its sections are ripped.")
    public Response board(
            Document document,
            @Parameter(
                            description = "The board's number in the plan, from 1; 1 if left out.",
                            example = "1",
                            schema = @Schema(type = SchemaType.INTEGER, minimum = "1"))
                    @QueryParam("board")
                    String board,
            @BeanParam PictureQuery query) {
        query.check();
        Query.whole("board", board, 1, MOST_BOARDS, "1");
        Answer told = SheetCalculator.stock(document);
        int number = Query.whole("board", board, 1, BoardDrawing.count(told.stock()), "1");
        return query.answer(BoardDrawing.draw(Design.of(document.design()), told.stock(), number), told.notices());
    }

    @POST
    @Path("/net")
    @Operation(
            operationId = "drawNet",
            summary = "The panels laid flat",
            description = "The outer faces of the panels of one sphere at true size, laid flat as they are taped"
                    + " together. There is a net for each cap, or one for the whole solid where the section assembly"
                    + " asks for it. It shows bands, and numbers on discs. It shows hinges with the gap that a land"
                    + " asks for. Every free edge has the number of the panel that it is glued to. The panels fold"
                    + " away from the tape: turn the taped sheet over, then fold up.")
    public Response net(Document document, @BeanParam SetQuery set, @BeanParam PictureQuery query) {
        query.check();
        Design design = Design.of(document.design());
        return query.answer(
                NetDrawing.draw(
                        design, design.sphere(set.asked()), NetCalculator.calculate(document.assembly(), design)),
                SheetCalculator.turned(document).notices());
    }

    @POST
    @Path("/set-up")
    @Operation(
            operationId = "drawSetUp",
            summary = "The set-up at the saw for one cut",
            description = "For the crosscut along a leg, from above: blade with its kerf, mitre gauge, stop, the blank"
                    + " with its bands and where a hold-down presses. For the bevel, along the blade: table, tilted"
                    + " blade, fence and panel. Guards and hold-downs are left out of the picture; use them as the"
                    + " machine's manual says. The numbers are those of /v1/jig: they say what fits, not what is safe.")
    public Response setUp(
            Document document,
            @BeanParam FaceQuery face,
            @BeanParam SegmentQuery segment,
            @Parameter(
                            description = "Which cut: LEFT_LEG or RIGHT_LEG of the segment, or BEVEL of the panel;"
                                    + " LEFT_LEG if left out.",
                            example = "LEFT_LEG")
                    @QueryParam("cut")
                    String cut,
            @BeanParam PictureQuery query) {
        query.check();
        Design checked = Design.of(document.design());
        Panel panel = face.panel(checked);
        String letter = segment.piece(panel).segment();
        SawCut asked = Query.constant("cut", cut, SawCut.class, SawCut.LEFT_LEG);
        Answer told = SheetCalculator.jig(document);
        JigFace set = told.jig().faces().stream()
                .filter(each -> each.face().equals(panel.face()))
                .findFirst()
                .orElseThrow();
        JigSegment leg = set.segments().stream()
                .filter(each -> each.segment().equals(letter))
                .findFirst()
                .orElseThrow();
        Drawing drawing = switch (asked) {
            case LEFT_LEG -> SawSetUpDrawing.leg(checked, panel, leg, CutSide.LEFT);
            case RIGHT_LEG -> SawSetUpDrawing.leg(checked, panel, leg, CutSide.RIGHT);
            case BEVEL -> SawSetUpDrawing.bevel(checked, set);
        };
        return query.answer(drawing, told.notices());
    }

    /** A cut at the saw. */
    enum SawCut {
        /** The crosscut along a segment's left leg. */
        LEFT_LEG,
        /** The crosscut along its right leg. */
        RIGHT_LEG,
        /** The bevel of a panel's edges. */
        BEVEL
    }
}
