package org.orbwright.design;

import java.util.ArrayList;
import java.util.List;

/** Collects the rules that a design breaks. */
final class Violations {
    private final List<Violation> found = new ArrayList<>();

    void add(String path, String code, String message, String rejected, String allowed) {
        add(new Violation(path, code, message, rejected, allowed));
    }

    void add(Violation violation) {
        found.add(violation);
    }

    List<Violation> all() {
        return found;
    }

    void throwIfAny() {
        if (!found.isEmpty()) {
            throw new ImpossibleDesignException(found);
        }
    }
}
