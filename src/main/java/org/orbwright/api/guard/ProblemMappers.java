package org.orbwright.api.guard;

import io.quarkus.logging.Log;
import io.vertx.core.http.HttpClosedException;
import jakarta.ws.rs.NotSupportedException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.net.SocketException;
import java.nio.channels.ClosedChannelException;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.orbwright.api.cells.CellErrors;
import org.orbwright.api.wire.Problem;
import org.orbwright.api.wire.ProblemKind;
import org.orbwright.api.wire.RequestException;
import org.orbwright.api.wire.Sentences;
import org.orbwright.design.ImpossibleDesignException;

/**
 * Answers everything that goes wrong with a {@link Problem}. Only the caller's faults become 4xx: an exception that is
 * none of the named ones is a fault of the service, whatever its name.
 */
public class ProblemMappers {
    /** When a caller that was sent away may come again. */
    static final String RETRY_SECONDS = "1";

    private final Endpoints endpoints;

    ProblemMappers(Endpoints endpoints) {
        this.endpoints = endpoints;
    }

    /** A body is taken for what it is declared to be; without a declaration, or packed, it is not read. */
    @ServerRequestFilter
    public void refuseUndeclaredBody(ContainerRequestContext request) {
        if (!request.getMethod().equals("POST")) {
            return;
        }
        if (request.getHeaderString(HttpHeaders.CONTENT_TYPE) == null) {
            throw new NotSupportedException();
        }
        String packed = request.getHeaderString(HttpHeaders.CONTENT_ENCODING);
        if (packed != null && !packed.isBlank() && !packed.equalsIgnoreCase("identity")) {
            String detail = "The body has to be sent as it is, without the header Content-Encoding, not "
                    + Sentences.cut(packed) + ".";
            throw new RequestException(ProblemKind.UNSUPPORTED_MEDIA_TYPE, detail, List.of());
        }
    }

    /** The framework lists HEAD for every address, also for those that only take a body. */
    @ServerResponseFilter
    public void listMethods(ContainerRequestContext request, ContainerResponseContext answer) {
        if (request.getMethod().equals("OPTIONS") && answer.getHeaders().containsKey(HttpHeaders.ALLOW)) {
            answer.getHeaders()
                    .putSingle(
                            HttpHeaders.ALLOW,
                            endpoints.allowedAt(request.getUriInfo().getPath()));
        }
    }

    @ServerExceptionMapper
    public Response refused(RequestException refusal, ContainerRequestContext request) {
        Response answer = answer(Problem.of(refusal, path(request)), request);
        if (answer.getStatus() == ProblemKind.BUSY.status()) {
            answer.getHeaders().putSingle(HttpHeaders.RETRY_AFTER, Integer.toString(refusal.seconds()));
        }
        return answer;
    }

    @ServerExceptionMapper
    public Response impossible(ImpossibleDesignException impossible, ContainerRequestContext request) {
        return answer(Problem.of(impossible, path(request)), request);
    }

    @ServerExceptionMapper
    public Response web(WebApplicationException refusal, ContainerRequestContext request) {
        int status = refusal.getResponse().getStatus();
        if (status >= 500) {
            return fault(refusal, request);
        }
        ProblemKind kind = kind(status);
        String allow = endpoints.allowedAt(request.getUriInfo().getPath());
        Response answer = answer(Problem.of(kind, detail(kind, request, allow), path(request), List.of()), request);
        if (kind == ProblemKind.METHOD_NOT_ALLOWED) {
            answer.getHeaders().add(HttpHeaders.ALLOW, allow);
        }
        return answer;
    }

    /** Work that was interrupted though its caller is still there, as at the end of the service. */
    @ServerExceptionMapper
    public Response interrupted(CancellationException interrupted, ContainerRequestContext request) {
        Log.debugf(interrupted, "%s was interrupted", path(request));
        String detail = "The work was stopped before its end; ask again in a second.";
        return answer(Problem.of(ProblemKind.BUSY, detail, path(request), List.of()), request);
    }

    @ServerExceptionMapper
    public Response fault(Throwable fault, ContainerRequestContext request) {
        if (isCallerGone(fault)) {
            // Nobody is there to be answered, and callers must not be able to fill the log. An answer with a body to a
            // stream that was reset would cut off everybody else on its connection: the server closes it at that.
            Log.debugf(fault, "%s was given up by its caller", path(request));
            return Response.status(ProblemKind.REFUSED.status()).build();
        }
        return answer(logged(fault, request.getMethod() + " " + path(request)));
    }

    /** Logs a fault of the service under an id, and makes the problem that tells the id alone. */
    public static Problem logged(Throwable fault, String where) {
        UUID id = UUID.randomUUID();
        Log.errorf(fault, "%s failed, id %s", where, id);
        String detail =
                "The request was not at fault. Please report the id " + id + ", under which this is in the log.";
        return Problem.of(ProblemKind.INTERNAL_ERROR, detail, "urn:uuid:" + id, List.of());
    }

    /** Whether the connection broke; the service has no others than those of its callers when it works on a request. */
    private static boolean isCallerGone(Throwable fault) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof ClosedChannelException
                    || cause instanceof HttpClosedException
                    || cause instanceof SocketException) {
                return true;
            }
        }
        return false;
    }

    private static ProblemKind kind(int status) {
        return switch (status) {
            case 404 -> ProblemKind.NOT_FOUND;
            case 405 -> ProblemKind.METHOD_NOT_ALLOWED;
            case 406 -> ProblemKind.NOT_ACCEPTABLE;
            case 413 -> ProblemKind.BODY_TOO_LARGE;
            case 415 -> ProblemKind.UNSUPPORTED_MEDIA_TYPE;
            default -> ProblemKind.REFUSED;
        };
    }

    private String detail(ProblemKind kind, ContainerRequestContext request, String allow) {
        return switch (kind) {
            case NOT_FOUND -> "There is nothing at " + path(request) + ". The addresses are listed at /q/openapi.";
            case METHOD_NOT_ALLOWED ->
                request.getMethod() + " is not for " + path(request) + "; it takes " + allow + ".";
            case NOT_ACCEPTABLE ->
                path(request) + " answers with "
                        + String.join(
                                " or ",
                                endpoints.producedAt(request.getUriInfo().getPath()))
                        + insteadOf(request.getHeaderString(HttpHeaders.ACCEPT)) + ".";
            case BODY_TOO_LARGE -> "The body is larger than a design can be.";
            case UNSUPPORTED_MEDIA_TYPE ->
                "The body has to be sent with the header Content-Type: "
                        + endpoints.consumedAt(request.getUriInfo().getPath())
                        + insteadOf(request.getHeaderString(HttpHeaders.CONTENT_TYPE)) + ".";
            default -> "The request cannot be handled.";
        };
    }

    private static String insteadOf(String header) {
        return header == null ? "" : ", not " + Sentences.cut(header);
    }

    private static String path(ContainerRequestContext request) {
        return request.getUriInfo().getRequestUri().getRawPath();
    }

    private static Response answer(Problem problem, ContainerRequestContext request) {
        return CellErrors.told(problem, request).orElseGet(() -> answer(problem));
    }

    private static Response answer(Problem problem) {
        Response.ResponseBuilder answer =
                Response.status(problem.status()).type(Problem.MEDIA_TYPE).entity(problem);
        if (problem.status() == ProblemKind.BUSY.status()) {
            answer.header(HttpHeaders.RETRY_AFTER, RETRY_SECONDS);
        }
        return answer.build();
    }
}
