package org.orbwright.api;

import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.function.Function;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.orbwright.body.Body;
import org.orbwright.body.BodyOptions;
import org.orbwright.body.ObjWriter;
import org.orbwright.body.StlWriter;
import org.orbwright.body.ThreeMfWriter;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.drawing.WoodColours;
import org.orbwright.sheet.BodyAnswer;

/** What a request for a body says beside its design. */
public class BodyQuery {
    private static final List<Form> FORMS = List.of(Form.STL, Form.OBJ, Form.THREE_MF, Form.JSON);
    private static final double FINEST = 1e-6;
    private static final double COARSEST = 1000;

    /** How a body is divided. */
    enum Parts {
        /** A part for each wood. */
        WOODS,
        /** All wood as one part. */
        ONE
    }

    @QueryParam(Form.PARAMETER)
    @Parameter(
            description = Form.DESCRIPTION,
            example = "stl",
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {"stl", "obj", "3mf", "json"}))
    String format;

    @QueryParam("set")
    @Parameter(description = DesignQuery.SET, example = "UPRIGHT")
    String set;

    @QueryParam("parts")
    @Parameter(
            description = "WOODS: a part for each wood. ONE: all wood as one part. If left out, ONE for STL without a"
                    + " species, and WOODS for all else.",
            example = "WOODS",
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {"WOODS", "ONE"}))
    String parts;

    @QueryParam("species")
    @Parameter(description = "The one wood that is answered; all if left out.", example = "sugar maple")
    String species;

    @Context
    Request request;

    /** Makes a body and writes it in the form that is asked for. */
    Response answer(Design design, Function<BodyOptions, Body> maker) {
        return answer(design, null, maker);
    }

    /** The same for a body that is round somewhere. */
    Response answer(Design design, String deviation, Function<BodyOptions, Body> maker) {
        Form form = Form.wanted(format, request, FORMS);
        boolean named = species != null && !species.isEmpty();
        Parts usual = form == Form.STL && !named ? Parts.ONE : Parts.WOODS;
        boolean one = Query.constant("parts", parts, Parts.class, usual) == Parts.ONE;
        BandSet wanted = Query.constant("set", set, BandSet.class, BandSet.UPRIGHT);
        Body made = maker.apply(new BodyOptions(wanted, one, millimetres(deviation, design)));
        List<String> names = made.parts().stream().map(Body.Part::name).toList();
        if (form == Form.STL && !named && names.size() > 1) {
            throw Query.refuse("species", "MISSING", "", "one of " + String.join(", ", names));
        }
        Body body = named ? made.only(Query.name("species", species, names)) : made;
        return written(form, design, body);
    }

    private static Response written(Form form, Design design, Body body) {
        Object entity = switch (form) {
            case STL -> StlWriter.write(body.parts().get(0), design.unit());
            case OBJ -> ObjWriter.write(body, design.unit());
            case THREE_MF ->
                ThreeMfWriter.write(
                        body,
                        WoodColours.of(
                                design,
                                body.parts().stream().map(Body.Part::name).toList()),
                        design.unit());
            default -> BodyAnswer.of(design, body);
        };
        return Response.ok(entity, form.type()).build();
    }

    private static Double millimetres(String deviation, Design design) {
        if (deviation == null || deviation.isEmpty()) {
            return null;
        }
        return design.unit().toMillimetres(Query.number("deviation", deviation, FINEST, COARSEST, deviation));
    }
}
