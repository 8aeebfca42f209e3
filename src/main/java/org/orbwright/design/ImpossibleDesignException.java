package org.orbwright.design;

import java.util.List;

/** A well-formed design that cannot exist, with every rule that it breaks. */
public final class ImpossibleDesignException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Violation> violations;

    /** @param violations the broken rules, at least one */
    public ImpossibleDesignException(List<Violation> violations) {
        super(violations.get(0).message());
        this.violations = List.copyOf(violations);
    }

    /** The broken rules, in the order in which they were found. */
    public List<Violation> violations() {
        return violations;
    }
}
