package org.orbwright.api;

import jakarta.validation.Validator;
import jakarta.ws.rs.core.CacheControl;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Supplier;
import java.util.zip.CRC32C;
import org.orbwright.cell.Cell;
import org.orbwright.cell.CellTable;
import org.orbwright.cell.Needs;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;

/**
 * The answer to a spreadsheet: what was asked for, with a tag for caches, or a line of text that says what is wrong.
 * Spreadsheets hide the text of every answer but 200, so they may ask to be told in the cell.
 */
final class CellAnswer {
    private static final String UTF_8 = ";charset=UTF-8";
    /** An answer changes only with the service itself: an hour is long for a shop's day and short for an upgrade. */
    private static final int FRESH_SECONDS = 3600;
    /** What a cell can show in a line or two. */
    private static final int LONGEST_ERROR = 250;

    private CellAnswer() {}

    /** A cell's value. */
    static Response value(String name, CellQuery query, Validator validator, Request request) {
        try {
            Cell cell = Cell.of(name).orElseThrow(() -> unknown("cell", name, Cell.names()));
            SheetPath path = new SheetPath(query.choices(SheetPath.choices(cell.path()), name));
            String value = path.value(SheetJson.of(query.design(cell.needs(), validator)), cell.path())
                    .orElse("");
            return cached(value, MediaType.TEXT_PLAIN, request);
        } catch (RequestException e) {
            return refused(e.kind().status(), e.getMessage(), query);
        } catch (ImpossibleDesignException e) {
            return refused(ProblemKind.IMPOSSIBLE_DESIGN.status(), Sentences.summary(e.violations()), query);
        }
    }

    /** A table of the design in the query. */
    static Response table(String name, CellQuery query, Validator validator, Request request) {
        String type = CellTableWriter.type(query.text(CellQuery.FORMAT).orElse(null), request);
        Supplier<String> table = () -> {
            CellTable found = table(name);
            SheetPath path = new SheetPath(query.choices(SheetPath.choices(found.path()), name));
            return CellTableWriter.write(found, path, query.design(Needs.DESIGN, validator), type);
        };
        if (!query.errorsAsText()) {
            return cached(table.get(), type, request);
        }
        try {
            return cached(table.get(), type, request);
        } catch (RequestException e) {
            return uncached(200, CellTableWriter.error(error(e.getMessage()), type), type);
        } catch (ImpossibleDesignException e) {
            return uncached(200, CellTableWriter.error(error(Sentences.summary(e.violations())), type), type);
        }
    }

    /** The table of a name. */
    static CellTable table(String name) {
        return CellTable.of(name).orElseThrow(() -> unknown("table", name, CellTable.names()));
    }

    private static RequestException unknown(String kind, String name, List<String> names) {
        String shown = Sentences.cut(name);
        String allowed = "one of " + String.join(", ", names);
        String message = "There is no " + kind + " named \"" + shown + "\"; the names are listed at /v1/cell.";
        return new RequestException(
                ProblemKind.UNKNOWN_CELL,
                message,
                List.of(new Violation(kind, "UNKNOWN_CELL", message, shown, allowed)));
    }

    private static Response refused(int status, String message, CellQuery query) {
        return uncached(query.errorsAsText() ? 200 : status, error(message), MediaType.TEXT_PLAIN);
    }

    private static String error(String message) {
        String text = "ERROR: " + message;
        return text.length() <= LONGEST_ERROR ? text : text.substring(0, LONGEST_ERROR - 3) + "...";
    }

    private static Response cached(String text, String type, Request request) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        CRC32C sum = new CRC32C();
        sum.update(bytes);
        EntityTag tag = new EntityTag(Long.toHexString(sum.getValue()) + "-" + bytes.length);
        CacheControl cache = new CacheControl();
        cache.setNoTransform(false);
        cache.setMaxAge(FRESH_SECONDS);
        Response.ResponseBuilder known = request.evaluatePreconditions(tag);
        Response.ResponseBuilder answer = known != null ? known : Response.ok(bytes, type + UTF_8);
        return answer.tag(tag).cacheControl(cache).build();
    }

    private static Response uncached(int status, String text, String type) {
        CacheControl cache = new CacheControl();
        cache.setNoTransform(false);
        cache.setNoStore(true);
        return Response.status(status)
                .type(type + UTF_8)
                .entity(text)
                .cacheControl(cache)
                .build();
    }
}
