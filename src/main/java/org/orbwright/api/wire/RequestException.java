package org.orbwright.api.wire;

import java.util.List;
import org.orbwright.design.Violation;

/** A request that is refused before the core sees it. */
public final class RequestException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final ProblemKind kind;
    private final transient List<Violation> violations;

    public RequestException(ProblemKind kind, String detail, List<Violation> violations) {
        super(detail);
        this.kind = kind;
        this.violations = List.copyOf(violations);
    }

    /** A refusal with one or more broken rules, told by the first of them. */
    public static RequestException invalid(List<Violation> violations) {
        return new RequestException(ProblemKind.INVALID_REQUEST, Sentences.summary(violations), violations);
    }

    ProblemKind kind() {
        return kind;
    }

    List<Violation> violations() {
        return violations;
    }
}
