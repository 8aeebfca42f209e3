package org.orbwright.solid;

import java.util.function.Supplier;

/** What is computed when it is first asked for, once, whichever thread asks. */
final class Lazy<T> implements Supplier<T> {
    private final Supplier<T> compute;
    private volatile T value;

    Lazy(Supplier<T> compute) {
        this.compute = compute;
    }

    @Override
    public T get() {
        T known = value;
        return known == null ? computeOnce() : known;
    }

    private synchronized T computeOnce() {
        if (value == null) {
            value = compute.get();
        }
        return value;
    }
}
