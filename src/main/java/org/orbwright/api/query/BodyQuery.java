package org.orbwright.api.query;

import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.orbwright.body.Body;
import org.orbwright.body.BodyOptions;
import org.orbwright.body.GlbWriter;
import org.orbwright.body.ObjWriter;
import org.orbwright.body.StlWriter;
import org.orbwright.body.ThreeMfWriter;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.drawing.WoodColours;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.FindingCode;
import org.orbwright.sheet.SheetCalculator;
import org.orbwright.sphere.SphereCalculator;

/** What a request for a body says beside its design. */
public class BodyQuery {
    private static final String PARTS = "parts";
    private static final String SPECIES = "species";
    private static final List<Format> FORMS = List.of(Format.STL, Format.OBJ, Format.THREE_MF, Format.GLB, Format.JSON);

    /** How a body is divided. */
    enum Parts {
        /** A part for each wood. */
        WOODS,
        /** All wood as one part. */
        ONE
    }

    @QueryParam(Format.PARAMETER)
    @Parameter(
            description = Format.DESCRIPTION,
            example = "stl",
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {"stl", "obj", "3mf", "glb", "json"}))
    String format;

    @QueryParam(SetQuery.NAME)
    @Parameter(description = SetQuery.DESCRIPTION)
    String set;

    @QueryParam(PARTS)
    @Parameter(
            description = "WOODS: a part for each wood. ONE: all wood as one part. If left out, ONE for STL without a"
                    + " species and for bodies without bands, and WOODS for all else.",
            example = "ONE",
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {"WOODS", "ONE"}))
    String parts;

    @QueryParam(SPECIES)
    @Parameter(description = "The one wood that is answered; all if left out.")
    String species;

    @QueryParam(FileUnit.NAME)
    @Parameter(
            description = FileUnit.DESCRIPTION,
            example = "mm",
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {"mm", "in"}))
    String unit;

    @Context
    Request request;

    /** Refuses a wrong form, unit, set or division, before anything is worked out. */
    public void check() {
        FileUnit.check(unit, Format.wanted(format, request, FORMS));
        SetQuery.asked(set);
        Query.constant(PARTS, parts, Parts.class, Parts.WOODS);
    }

    /**
     * Makes a body of all woods and writes it in the form that is asked for.
     *
     * @param told what is told with it
     */
    public Response answer(Answer told, Design design, Double deviation, Function<BodyOptions, Body> maker) {
        Format form = Format.wanted(format, request, FORMS);
        LengthUnit wanted = FileUnit.asked(unit, form, design.unit());
        boolean named = !Query.isEmpty(species);
        Parts usual = form == Format.STL && !named ? Parts.ONE : Parts.WOODS;
        boolean one = Query.constant(PARTS, parts, Parts.class, usual) == Parts.ONE;
        BandSet used = SetQuery.asked(set);
        if (one) {
            Query.leftOut(SPECIES, species, "where " + PARTS + " is ONE");
        }
        Body made = maker.apply(new BodyOptions(used, one, deviation));
        if (made.parts().isEmpty() && (named || form != Format.JSON)) {
            throw nothingLeft(design);
        }
        List<String> names = made.parts().stream().map(Body.Part::name).toList();
        if (form == Format.STL && !named && names.size() > 1) {
            throw Query.refuse(SPECIES, "MISSING", "", "one of " + String.join(", ", names));
        }
        Body body = named ? made.only(Query.name(SPECIES, species, names)) : made;
        return written(form, wanted, told, design, body);
    }

    /**
     * Writes a body of one part, whatever its wood, in the form that is asked for. What chooses among woods means
     * nothing for it and is refused.
     *
     * @param told what is told with it
     * @param name what it is called
     */
    public Response answerOne(Answer told, Design design, String name, Supplier<Body> maker) {
        Format form = Format.wanted(format, request, FORMS);
        LengthUnit wanted = FileUnit.asked(unit, form, design.unit());
        String where = "for the " + name + ", which has one part and no bands";
        Query.leftOut(SetQuery.NAME, set, where);
        Query.leftOut(SPECIES, species, where);
        if (Query.constant(PARTS, parts, Parts.class, Parts.ONE) != Parts.ONE) {
            throw Query.refuse(PARTS, "NOT_APPLICABLE", parts, "ONE or left out for the " + name);
        }
        return written(form, wanted, told, design, maker.get());
    }

    private static ImpossibleDesignException nothingLeft(Design design) {
        String thickness = design.say(design.thickness());
        return new ImpossibleDesignException(List.of(new Violation(
                "/panel/thickness",
                FindingCode.BREAK_THROUGH.name(),
                "Nothing is left of the sphere: the whole " + design.say(2 * design.sphereRadius())
                        + " sphere lies inside the hollow that panels of " + thickness + " leave.",
                thickness,
                "at least "
                        + design.sayAtLeast(SphereCalculator.calculate(design).smallestThickness()))));
    }

    private static Response written(Format form, LengthUnit unit, Answer told, Design design, Body body) {
        List<Notice> notices = told.notices();
        Object entity = switch (form) {
            case STL -> StlWriter.write(body.parts().get(0), unit, notices);
            case OBJ -> ObjWriter.write(body, unit, notices);
            case THREE_MF -> ThreeMfWriter.write(body, colours(design, body), unit, notices);
            case GLB -> GlbWriter.write(body, colours(design, body), notices);
            default -> SheetCalculator.body(told, body);
        };
        return Response.ok(entity, form.type()).build();
    }

    private static List<String> colours(Design design, Body body) {
        return WoodColours.of(design, body.parts().stream().map(Body.Part::name).toList());
    }
}
