package org.orbwright.api;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.orbwright.api.query.Format;
import org.orbwright.api.query.Query;
import org.orbwright.api.query.SetQuery;
import org.orbwright.api.wire.RequestReader;
import org.orbwright.document.Document;

/**
 * Names the files that are made of a posted document (RFC 6266): its own name, what the address makes of it and which
 * part was asked for. A browser shows pictures and pages, and saves everything else.
 */
public class FileNames {
    private static final List<Format> SHOWN = List.of(Format.SVG, Format.PNG, Format.PDF, Format.HTML);
    /** Common practice for programs of RS-274, no source. */
    private static final String PROGRAM = "nc";

    /** By their media types; what is cut has that of pictures. */
    private static final Map<String, Format> FORMS = Arrays.stream(Format.values())
            .filter(form -> form != Format.JSON && form != Format.CUT)
            .collect(Collectors.toMap(Format::type, form -> form));
    /** The parameters that choose a part. */
    private static final List<String> PARTS =
            List.of("face", "segment", "places", "end", "board", "species", SetQuery.NAME);

    /** What some file system or some browser takes for something else, and what cannot be seen. */
    private static final Pattern ODD = Pattern.compile("[<>:\"/\\\\|?*%;\\p{Cc}\\p{Cf}\\s]+");

    private static final Pattern AT_THE_ENDS = Pattern.compile("^[. ]+|[. ]+$");
    private static final Pattern AT_THE_SLASH = Pattern.compile(".*/([^/]+)/?");
    private static final int LONGEST = 80;

    /** Adds the header to an answer that is a file. */
    @ServerResponseFilter
    public void name(ContainerRequestContext request, ContainerResponseContext answer) {
        if (answer.getStatus() == 200
                && answer.getMediaType() != null
                && request.getProperty(RequestReader.DOCUMENT) instanceof Document document) {
            String type = answer.getMediaType().getType() + "/"
                    + answer.getMediaType().getSubtype();
            if (isFile(type)) {
                boolean named =
                        document.name() != null && !clean(document.name()).isEmpty();
                String title = named ? document.name() : document.solid();
                answer.getHeaders().putSingle(HttpHeaders.CONTENT_DISPOSITION, header(title, what(request), type));
            }
        }
    }

    /**
     * The header.
     *
     * @param title what the design is called
     * @param what what is made of it
     * @param type the media type
     */
    static String header(String title, String what, String type) {
        Format form = FORMS.get(type);
        String end = " - " + what + "." + (form == null ? PROGRAM : form.word());
        String name = clean(title) + end;
        String ascii = Normalizer.normalize(name, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^ -~]", "_");
        String header =
                (form != null && SHOWN.contains(form) ? "inline" : "attachment") + "; filename=\"" + ascii + "\"";
        return ascii.equals(name) ? header : header + "; filename*=UTF-8''" + encoded(name);
    }

    /** Whether an answer of this media type is a file. */
    public static boolean isFile(String type) {
        return FORMS.containsKey(type) || type.equals(MediaType.TEXT_PLAIN);
    }

    private static String what(ContainerRequestContext request) {
        String path = AT_THE_SLASH.matcher(request.getUriInfo().getPath()).replaceFirst("$1");
        MultivaluedMap<String, String> query = request.getUriInfo().getQueryParameters();
        String parts = PARTS.stream()
                .map(query::getFirst)
                .filter(part -> !Query.isEmpty(part))
                .map(part -> " " + clean(part))
                .collect(Collectors.joining());
        boolean cut = Format.CUT.word().equals(query.getFirst(Format.PARAMETER));
        return path.replace('-', ' ') + parts + (cut ? " " + Format.CUT.word() : "");
    }

    private static String clean(String text) {
        String plain = ODD.matcher(text).replaceAll(" ");
        int end = plain.offsetByCodePoints(0, Math.min(LONGEST, plain.codePointCount(0, plain.length())));
        return AT_THE_ENDS.matcher(plain.substring(0, end)).replaceAll("");
    }

    private static String encoded(String name) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8)
                .replace("+", "%20")
                .replace("*", "%2A");
    }
}
