package org.orbwright.quantity;

/** The unit in which a design states its lengths and gets its answers. */
public enum LengthUnit {
    /** Millimetre. */
    MM("mm", 1.0, 2),
    /** Inch of exactly 25.4 mm (international yard and pound agreement of 1959; ISO 80000-3). */
    IN("in", 25.4, 3);

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
     * Writes a length for a sentence: to a hundredth of a millimetre or a thousandth of an inch, with its unit.
     *
     * @param lengthInMillimetres the length
     * @return for example {@code 12.5 mm}
     */
    public String say(double lengthInMillimetres) {
        return Rounding.plain(fromMillimetres(lengthInMillimetres), sentenceDecimals) + " " + symbol;
    }
}
