package org.orbwright.api.cells;

import io.vertx.core.http.HttpServerRequest;
import jakarta.validation.Validator;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.orbwright.api.wire.CacheTag;
import org.orbwright.api.wire.ProblemKind;
import org.orbwright.api.wire.RequestException;
import org.orbwright.api.wire.Sentences;
import org.orbwright.cell.Cell;
import org.orbwright.cell.CellTable;
import org.orbwright.cell.Inputs;
import org.orbwright.cell.Parameter;
import org.orbwright.design.Violation;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.FindingCode;

/** The answer to a spreadsheet: what was asked for, with a tag for caches. What is wrong, {@link CellErrors} says. */
public final class CellAnswer {
    private static final String UTF_8 = ";charset=UTF-8";

    private static final String WOODS = "woods of GET /v1/woods";

    private CellAnswer() {}

    /** A cell's value. */
    static Response value(String name, HttpServerRequest request, Validator validator) {
        return cached(value(name, request.query(), validator), MediaType.TEXT_PLAIN, request);
    }

    /** A cell's value as a cell shows it that asks for errors in text. */
    static String shown(String name, String query, Validator validator) {
        try {
            return value(name, query, validator);
        } catch (RequestException refusal) {
            return CellErrors.line(refusal.getMessage());
        }
    }

    private static String value(String name, String stated, Validator validator) {
        CellQuery query = new CellQuery(CellQuery.OF_A_CELL, stated);
        Cell cell = Cell.of(name).orElseThrow(() -> unknown("cell", name, Cell.names()));
        SheetPath path = new SheetPath(query.choices(cell.choices(), name));
        Answer sheet = SheetJson.answer(query.document(cell.needs(), validator));
        Optional<String> value = path.value(SheetJson.of(sheet), cell.path());
        if (value.isEmpty() && cell == Cell.SPHERE_MASS) {
            refuseUnknownWoods(sheet);
        }
        return value.orElse("");
    }

    /** An empty cell would be read as nothing to weigh. A sphere that breaks through has no mass either, and a STOP. */
    private static void refuseUnknownWoods(Answer sheet) {
        List<Violation> unknown = sheet.findings().stream()
                .filter(finding -> finding.code() == FindingCode.DENSITY_UNKNOWN)
                .map(finding -> new Violation(
                        Parameter.BANDS.text(), finding.code().name(), unknownWood(finding.message()), null, WOODS))
                .toList();
        if (!unknown.isEmpty()) {
            throw RequestException.invalid(unknown);
        }
    }

    /** A cell cannot state a wood's own density. */
    private static String unknownWood(String message) {
        return message.replace(" State it in woods.", " GET /v1/woods lists the woods that are known.");
    }

    /** A table of the design in the query. */
    static Response table(String name, HttpServerRequest request, Request accepted, Validator validator) {
        CellQuery query = new CellQuery(CellQuery.OF_A_TABLE, request.query());
        String type = CellTableWriter.type(query.text(CellQuery.FORMAT).orElse(null), accepted);
        CellTable table = table(name);
        SheetPath path = new SheetPath(query.choices(Cell.choices(table.path()), name));
        return cached(
                CellTableWriter.write(table, path, query.document(Inputs.DESIGN, validator), type), type, request);
    }

    /** The table of a name. */
    static CellTable table(String name) {
        return CellTable.of(name).orElseThrow(() -> unknown("table", name, CellTable.names()));
    }

    private static RequestException unknown(String kind, String name, List<String> names) {
        String shown = Sentences.cut(name);
        String allowed = "one of " + String.join(", ", names);
        String message = "There is no " + kind + " named \"" + shown + "\". The names are listed at /v1/cell.";
        return new RequestException(
                ProblemKind.UNKNOWN_CELL,
                message,
                List.of(new Violation(kind, "UNKNOWN_CELL", message, shown, allowed)));
    }

    private static Response cached(String text, String type, HttpServerRequest request) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        EntityTag tag = CacheTag.of(bytes);
        Response.ResponseBuilder answer =
                CacheTag.isKnown(tag, request.headers().getAll(HttpHeaders.IF_NONE_MATCH))
                        ? Response.notModified()
                        : Response.ok(bytes, type + UTF_8);
        return answer.tag(tag)
                .cacheControl(CacheTag.control())
                .header(HttpHeaders.VARY, HttpHeaders.ACCEPT_ENCODING)
                .build();
    }
}
