package org.orbwright.body;

/** A triangle by the numbers of its corners, counter-clockwise seen from outside. */
public record Triangle(int a, int b, int c) {
    /** A corner by its place, from 0; the first follows on the last. */
    public int corner(int place) {
        return switch (place % 3) {
            case 0 -> a;
            case 1 -> b;
            default -> c;
        };
    }
}
