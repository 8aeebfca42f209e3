package org.orbwright.tolerance;

/**
 * How a length depends on one error of several pieces, to first order.
 *
 * @param together the sum of its derivatives: how far it shifts when all pieces are off alike
 * @param independent the root of the sum of their squares, 0 or more: what the scatter of single pieces is multiplied
 *     by
 */
record Derivatives(double together, double independent) {

    /** One piece. */
    static Derivatives of(double derivative) {
        return new Derivatives(derivative, Math.abs(derivative));
    }

    /** Several pieces with one derivative. */
    static Derivatives of(double derivative, int pieces) {
        return new Derivatives(derivative * pieces, Math.abs(derivative) * Math.sqrt(pieces));
    }

    /** The same times a factor. */
    Derivatives times(double factor) {
        return new Derivatives(together * factor, independent * Math.abs(factor));
    }

    /** With other pieces. */
    Derivatives plus(Derivatives other) {
        return new Derivatives(together + other.together, Math.hypot(independent, other.independent));
    }

    /** Less other pieces. */
    Derivatives minus(Derivatives other) {
        return plus(other.times(-1));
    }
}
