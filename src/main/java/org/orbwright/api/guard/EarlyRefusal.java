package org.orbwright.api.guard;

import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.core.http.HttpVersion;
import org.orbwright.api.cells.CellErrors;
import org.orbwright.api.wire.AnswerJson;
import org.orbwright.api.wire.Problem;
import org.orbwright.api.wire.ProblemKind;

/** Answers a request before its body is read, and before anything else looks at it. */
final class EarlyRefusal {
    private EarlyRefusal() {}

    /** Sends the problem, or its text where a cell asks for that. */
    static void send(HttpServerRequest request, Problem problem) {
        HttpServerResponse answer = request.response();
        if (request.version() != HttpVersion.HTTP_2) {
            // The rest of the request is not read, so the connection cannot be used again. HTTP/2 resets the stream
            // alone.
            answer.putHeader(HttpHeaders.CONNECTION, "close");
        }
        if (problem.status() == ProblemKind.BUSY.status()) {
            answer.putHeader(HttpHeaders.RETRY_AFTER, ProblemMappers.RETRY_SECONDS);
        }
        CellErrors.told(problem, request.path(), request.query())
                .ifPresentOrElse(
                        told -> answer.setStatusCode(told.status())
                                .putHeader(HttpHeaders.CONTENT_TYPE, told.type())
                                .putHeader(HttpHeaders.CACHE_CONTROL, CellErrors.Told.CACHES)
                                .end(told.text()),
                        () -> answer.setStatusCode(problem.status())
                                .putHeader(HttpHeaders.CONTENT_TYPE, Problem.MEDIA_TYPE)
                                .end(Buffer.buffer(AnswerJson.write(problem))));
    }
}
