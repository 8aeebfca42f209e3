package org.orbwright.api;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.CacheControl;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What is wrong, in a line of text that a cell can show. Spreadsheets hide the text of every answer but 200, so they
 * may ask to be told with that; an answer to a cell is plain text in any case.
 */
final class CellErrors {
    private static final String CELLS = "/v1/cell/";
    private static final String TABLES = "/v1/table/";
    private static final Pattern AS_TEXT = Pattern.compile("(^|.*&)errors=text(&.*|$)");
    private static final Pattern XML = Pattern.compile("(^|.*&)format=xml(&.*|$)");
    /** What a cell can show in a line or two. */
    private static final int LONGEST = 250;

    private CellErrors() {}

    /** The answer to a spreadsheet; nothing if the problem is to be told as problems are. */
    static Optional<Response> told(Problem problem, ContainerRequestContext request) {
        URI address = request.getUriInfo().getRequestUri();
        String query = address.getRawQuery() == null ? "" : address.getRawQuery();
        boolean cell = address.getRawPath().startsWith(CELLS);
        boolean asText = AS_TEXT.matcher(query).matches();
        if (!cell && !(asText && address.getRawPath().startsWith(TABLES))) {
            return Optional.empty();
        }
        String line = line(problem.detail());
        String table = XML.matcher(query).matches() ? CellTableWriter.XML : Csv.MEDIA_TYPE;
        CacheControl cache = new CacheControl();
        cache.setNoTransform(false);
        cache.setNoStore(true);
        return Optional.of(Response.status(asText ? 200 : problem.status())
                .type((cell ? MediaType.TEXT_PLAIN : table) + ";charset=UTF-8")
                .entity(cell ? line : CellTableWriter.error(line, table))
                .cacheControl(cache)
                .build());
    }

    private static String line(String detail) {
        String line = "ERROR: " + detail;
        return line.length() <= LONGEST ? line : line.substring(0, LONGEST - 3) + "...";
    }
}
