package org.orbwright.quantity;

/** Inches as a rule shows them: to the nearest sixty-fourth, with what is left over in thousandths. */
final class Fractions {
    private static final int PARTS = 64;
    private static final int DECIMALS = 3;

    private Fractions() {}

    /**
     * The nearest sixty-fourth, reduced, and what the true measure is more (+) or less (-) than it, to a thousandth.
     *
     * @param inches a length of less than 1e15 in
     * @return for example {@code 3 9/64 + 0.003}
     */
    static String of(double inches) {
        long parts = Math.round(Math.abs(inches) * PARTS);
        boolean below = inches < 0;
        String rest = Rounding.plain(inches - (below ? -parts : parts) / (double) PARTS, DECIMALS);
        StringBuilder text = new StringBuilder(below && parts > 0 ? "-" : "");
        long whole = parts / PARTS;
        long remainder = parts % PARTS;
        if (whole > 0 || remainder == 0) {
            text.append(whole);
        }
        if (remainder > 0) {
            int halvings = Long.numberOfTrailingZeros(remainder);
            text.append(whole > 0 ? " " : "").append(remainder >> halvings);
            text.append('/').append(PARTS >> halvings);
        }
        if (!rest.equals("0")) {
            text.append(rest.startsWith("-") ? " - " : " + ").append(rest.replace("-", ""));
        }
        return text.toString();
    }
}
