package org.orbwright.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Unmodifiable copies of lists that validation has not seen yet, and that may therefore be null or hold nulls. */
public final class Copies {
    private Copies() {}

    /** A copy, or null for none. */
    public static <T> List<T> of(List<T> list) {
        return list == null ? null : Collections.unmodifiableList(new ArrayList<>(list));
    }
}
