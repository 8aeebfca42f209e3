package org.orbwright.quantity;

/** The unit in which a design states its lengths and gets its answers. */
public enum LengthUnit {
    /** Millimetre. */
    MM("mm", 1.0, 2),
    /** Inch of exactly 25.4 mm, since 1 July 1959 (L. V. Judson, addendum to NBS Circular 572). */
    IN("in", 25.4, 3);

    private static final int FINEST_DECIMALS = 9;
    /** A length that lies on a step up to the last bits of a double lies on it. */
    private static final double EXACT = 1e-9;

    private final String symbol;
    private final double millimetres;
    private final int sentenceDecimals;

    LengthUnit(String symbol, double millimetres, int sentenceDecimals) {
        this.symbol = symbol;
        this.millimetres = millimetres;
        this.sentenceDecimals = sentenceDecimals;
    }

    /** The unit's name in a design: {@code mm} or {@code in}. */
    public String symbol() {
        return symbol;
    }

    /** Which of two usual lengths is meant: one that is common in shops that work in mm, or one in inches. */
    public double usual(double inMillimetres, double inInches) {
        return this == MM ? inMillimetres : inInches;
    }

    /** Millimetres in one of this unit. */
    public double millimetres() {
        return millimetres;
    }

    /** Converts a length of this unit to millimetres. */
    public double toMillimetres(double length) {
        return length * millimetres;
    }

    /** Converts millimetres to this unit. */
    public double fromMillimetres(double lengthInMillimetres) {
        return lengthInMillimetres / millimetres;
    }

    /**
     * Writes a length for a sentence: to a hundredth of a millimetre or a thousandth of an inch, with its unit. What is
     * so small that nothing would be left of it is written more finely.
     *
     * @param lengthInMillimetres the length
     * @return for example {@code 12.5 mm}
     */
    public String say(double lengthInMillimetres) {
        return sayNumber(lengthInMillimetres) + " " + symbol;
    }

    /** Writes a length as {@link #say} does, where its unit is said elsewhere. */
    public String sayNumber(double lengthInMillimetres) {
        double length = fromMillimetres(lengthInMillimetres);
        String text = Rounding.plain(length, sentenceDecimals);
        return text.equals("0") && length != 0 ? Rounding.plain(length, FINEST_DECIMALS) : text;
    }

    /**
     * The nearest sixty-fourth of an inch with the signed rest, as {@link Fractions} writes it; empty in millimetres.
     */
    public String fraction(double lengthInMillimetres) {
        return this == IN ? Fractions.of(fromMillimetres(lengthInMillimetres)) : "";
    }

    /**
     * Writes a length as {@link #sayNumber} does, in inches with its fraction in brackets.
     *
     * @return for example {@code 3.144 (3 9/64 + 0.003)}, and {@code 3} for what is the same both ways
     */
    public String sayWithFraction(double lengthInMillimetres) {
        String number = sayNumber(lengthInMillimetres);
        String fraction = fraction(lengthInMillimetres);
        return fraction.isEmpty() || fraction.equals(number) ? number : number + " (" + fraction + ")";
    }

    /** Writes a length beside another one, as finely as it takes to tell them apart. */
    public String sayApart(double lengthInMillimetres, double otherInMillimetres) {
        double length = fromMillimetres(lengthInMillimetres);
        int decimals = Rounding.decimalsApart(length, fromMillimetres(otherInMillimetres), sentenceDecimals);
        return decimals == sentenceDecimals
                ? say(lengthInMillimetres)
                : Rounding.plain(length, decimals) + " " + symbol;
    }

    /** Writes a length of which more is enough, never less than it is. */
    public String sayAtLeast(double lengthInMillimetres) {
        return say(stepped(lengthInMillimetres, Math.ceil(inSteps(lengthInMillimetres) - EXACT)));
    }

    /** Writes a length of which less is enough, never more than it is. */
    public String sayAtMost(double lengthInMillimetres) {
        return say(stepped(lengthInMillimetres, Math.floor(inSteps(lengthInMillimetres) + EXACT)));
    }

    /** Writes a length as finely as answers do, for sums that have to come out. */
    public String sayFinely(double lengthInMillimetres) {
        return Rounding.plain(fromMillimetres(lengthInMillimetres), Quantity.LENGTH.decimals(this)) + " " + symbol;
    }

    private double inSteps(double lengthInMillimetres) {
        return fromMillimetres(lengthInMillimetres) * Math.pow(10, sentenceDecimals);
    }

    /** A whole number of the steps that sentences are written in; what is below one step stays as it is. */
    private double stepped(double lengthInMillimetres, double steps) {
        return steps < 1 ? lengthInMillimetres : toMillimetres(steps / Math.pow(10, sentenceDecimals));
    }
}
