package org.orbwright.api.cells;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import java.util.regex.Pattern;
import org.orbwright.api.wire.Csv;
import org.orbwright.api.wire.Problem;

/**
 * What is wrong, in a line of text that a cell can show. Spreadsheets hide the text of every answer but 200, so they
 * may ask to be told with that; an answer to a cell is plain text in any case.
 */
public final class CellErrors {
    private static final String CELLS = "/v1/cell/";
    private static final String TABLES = "/v1/table/";
    private static final Pattern AS_TEXT = Pattern.compile("(^|.*&)errors=text(&.*|$)");
    private static final Pattern XML = Pattern.compile("(^|.*&)format=xml(&.*|$)");
    /** What a cell can show in a line or two. */
    private static final int LONGEST = 250;

    private CellErrors() {}

    /** What is told: the text of an answer with its status and media type. */
    public record Told(int status, String type, String text) {
        public static final String CACHES = "no-store";
    }

    /** The answer to a spreadsheet; nothing if the problem is to be told as problems are. */
    public static Optional<Response> told(Problem problem, ContainerRequestContext request) {
        URI address = request.getUriInfo().getRequestUri();
        return told(problem, address.getRawPath(), address.getRawQuery())
                .map(told -> Response.status(told.status())
                        .type(told.type())
                        .entity(told.text())
                        .header(HttpHeaders.CACHE_CONTROL, Told.CACHES)
                        .build());
    }

    /**
     * The same for an address.
     *
     * @param path its path as it was sent
     * @param stated its query as it was sent, or null
     */
    public static Optional<Told> told(Problem problem, String path, String stated) {
        String query = stated == null ? "" : stated;
        boolean cell = path.startsWith(CELLS);
        boolean asText = AS_TEXT.matcher(query).matches();
        if (!cell && !(asText && path.startsWith(TABLES))) {
            return Optional.empty();
        }
        String line = line(problem.detail());
        String table = XML.matcher(query).matches() ? CellTableWriter.XML : Csv.MEDIA_TYPE;
        return Optional.of(new Told(
                asText ? 200 : problem.status(),
                (cell ? MediaType.TEXT_PLAIN : table) + ";charset=UTF-8",
                cell ? line : CellTableWriter.error(line, table)));
    }

    /** What is wrong, as a cell shows it. */
    static String line(String detail) {
        String line = "ERROR: " + detail;
        return line.length() <= LONGEST ? line : line.substring(0, LONGEST - 3) + "...";
    }
}
