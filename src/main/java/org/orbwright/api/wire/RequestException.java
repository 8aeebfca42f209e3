package org.orbwright.api.wire;

import java.util.List;
import org.orbwright.design.Violation;

/** A request that is refused before the core sees it. */
public final class RequestException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final ProblemKind kind;
    private final transient List<Violation> violations;
    private final int seconds;

    public RequestException(ProblemKind kind, String detail, List<Violation> violations) {
        this(kind, detail, violations, 1);
    }

    private RequestException(ProblemKind kind, String detail, List<Violation> violations, int seconds) {
        super(detail);
        this.kind = kind;
        this.seconds = seconds;
        this.violations = List.copyOf(violations);
    }

    /** A refusal with one or more broken rules, told by the first of them. */
    public static RequestException invalid(List<Violation> violations) {
        return new RequestException(ProblemKind.INVALID_REQUEST, Sentences.summary(violations), violations);
    }

    /** A refusal for want of room, and after how many seconds there should be some. */
    public static RequestException busy(String detail, int seconds) {
        return new RequestException(ProblemKind.BUSY, detail, List.of(), seconds);
    }

    /** After how many seconds a request that was sent away may come again. */
    public int seconds() {
        return seconds;
    }

    ProblemKind kind() {
        return kind;
    }

    List<Violation> violations() {
        return violations;
    }
}
