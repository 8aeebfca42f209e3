package org.orbwright.quantity;

/**
 * The kinds of number in an answer, with the number of decimals that each is rounded to on the way out. Nothing is
 * rounded before that; the decimals never lose a hundredth of a millimetre or a thousandth of a degree.
 */
public enum Quantity {
    /** Not a measured number: text, a count, a flag, or a record of its own. */
    NONE(0, ""),
    /** A number of an answer without a unit, or in a unit that its description names. */
    PLAIN(0, ""),
    /**
     * The number of a panel, a corner, a seam or a pass: its place in a list inside, which begins at 0, from 1 outside.
     */
    NUMBER(0, "as a number from 1"),
    /** A length, millimetres inside, the design's unit outside. */
    LENGTH(1, "in the design's unit"),
    /** An area, square millimetres inside, the design's unit squared outside. */
    AREA(2, "in the design's unit squared"),
    /** A volume, cubic millimetres inside, the design's unit cubed outside. */
    VOLUME(3, "in the design's unit cubed"),
    /** A volume, cubic millimetres inside, board feet of 144 cubic inches outside. */
    BOARD_FEET(0, "in board feet (144 cubic inches)"),
    /** A volume, cubic millimetres inside, cubic metres outside. */
    CUBIC_METRES(0, "in cubic metres"),
    /** An angle, radians inside, degrees outside. */
    ANGLE(0, "in degrees"),
    /** An angle of the catalogue of solids, radians inside, degrees with ten decimals outside. */
    CATALOGUE_ANGLE(0, "in degrees"),
    /** A length, area or volume of a solid whose shortest edge is one long. */
    UNIT_EDGE(0, "for a shortest edge of 1, squared for areas and cubed for volumes"),
    /** A share of a whole, 0 to 1. */
    RATIO(0, "as a share, 1 for the whole"),
    /** A share of a whole of which four decimals are enough. */
    SHARE(0, "as a share, 1 for the whole"),
    /** A mass in kilograms. */
    MASS(0, "in kilograms"),
    /** A density in kilograms per cubic metre. */
    DENSITY(0, "in kilograms per cubic metre"),
    /** A share in hundredths, such as a moisture content; the same inside and outside. */
    PERCENT(0, "in percent"),
    /** A temperature in degrees Celsius, whatever the unit of lengths is. */
    CELSIUS(0, "in degrees Celsius"),
    /** How far a wood moves: a share of a dimension for each percent of moisture content. */
    MOVEMENT(0, "as a share of the dimension for each percent of moisture content"),
    /** An amount of money. */
    MONEY(0, "in the currency of the prices"),
    /** A small mass, kilograms inside, grams outside. */
    GRAMS(0, "in grams"),
    /** A mass of glue on an area; the same inside and outside, whatever the unit of lengths is. */
    SPREAD(0, "in grams per square metre"),
    /** A time in minutes; the same inside and outside. */
    MINUTES(0, "in minutes"),
    /** A mass times its distance from an axis, kilograms and millimetres inside, grams outside. */
    IMBALANCE(0, "in gram-millimetres"),
    /** A force in newtons. */
    FORCE(0, "in newtons"),
    /** A speed in millimetres per second, whatever the unit of lengths is. */
    VELOCITY(0, "in millimetres per second"),
    /** A speed of a surface in metres per second, whatever the unit of lengths is. */
    SURFACE_SPEED(0, "in metres per second"),
    /** A speed of turning. */
    TURNS(0, "in revolutions per minute"),
    /** A stress in megapascals. */
    STRESS(0, "in megapascals"),
    /** A small volume of a liquid, cubic millimetres inside. */
    MILLILITRES(0, "in millilitres");

    private static final double CUBIC_MILLIMETRES_PER_BOARD_FOOT = 144 * 25.4 * 25.4 * 25.4;

    private final int lengthPower;
    private final String unitPhrase;

    Quantity(int lengthPower, String unitPhrase) {
        this.lengthPower = lengthPower;
        this.unitPhrase = unitPhrase;
    }

    /** How the contract names the unit of this quantity, for example {@code in degrees}. */
    public String unitPhrase() {
        return unitPhrase;
    }

    /** The factor from the service's own units (millimetres, radians) to those of an answer in the given unit. */
    public double factor(LengthUnit unit) {
        return switch (this) {
            case LENGTH, AREA, VOLUME -> Math.pow(unit.millimetres(), -lengthPower);
            case BOARD_FEET -> 1 / CUBIC_MILLIMETRES_PER_BOARD_FOOT;
            case CUBIC_METRES -> 1e-9;
            case MILLILITRES -> 1e-3;
            case ANGLE, CATALOGUE_ANGLE -> 180 / Math.PI;
            case GRAMS, IMBALANCE -> 1000;
            case NONE,
                    PLAIN,
                    NUMBER,
                    UNIT_EDGE,
                    RATIO,
                    SHARE,
                    MASS,
                    DENSITY,
                    PERCENT,
                    CELSIUS,
                    MOVEMENT,
                    MONEY,
                    SPREAD,
                    MINUTES,
                    FORCE,
                    VELOCITY,
                    SURFACE_SPEED,
                    TURNS,
                    STRESS -> 1;
        };
    }

    /**
     * The unit of a number of an answer, as a table writes it beside the number; empty where there is none.
     *
     * @param unit the unit of the answer's lengths
     */
    public String symbol(LengthUnit unit) {
        return switch (this) {
            case LENGTH -> unit.symbol();
            case AREA, VOLUME -> unit.symbol() + lengthPower;
            case BOARD_FEET -> "board feet";
            case CUBIC_METRES -> "m3";
            case ANGLE, CATALOGUE_ANGLE -> "degrees";
            case RATIO, SHARE -> "share";
            case MASS -> "kg";
            case DENSITY -> "kg/m3";
            case PERCENT -> "%";
            case CELSIUS -> "degrees Celsius";
            case MOVEMENT -> "share/%";
            case GRAMS -> "g";
            case SPREAD -> "g/m2";
            case MINUTES -> "min";
            case IMBALANCE -> "g mm";
            case FORCE -> "N";
            case VELOCITY -> "mm/s";
            case SURFACE_SPEED -> "m/s";
            case TURNS -> "1/min";
            case STRESS -> "MPa";
            case MILLILITRES -> "ml";
            case NONE, PLAIN, NUMBER, UNIT_EDGE, MONEY -> "";
        };
    }

    /** What is added to a whole number on its way out, so that the first of a list is not called 0. */
    public int first() {
        return this == NUMBER ? Numbering.FIRST : 0;
    }

    /** The number of decimals of an answer in the given unit. */
    public int decimals(LengthUnit unit) {
        boolean metric = unit == LengthUnit.MM;
        return switch (this) {
            case LENGTH -> metric ? 4 : 5;
            case AREA -> metric ? 3 : 6;
            case VOLUME -> metric ? 1 : 5;
            case BOARD_FEET, ANGLE, SHARE, MASS, PERCENT, CELSIUS, MONEY, FORCE -> 4;
            case PLAIN, RATIO, STRESS -> 6;
            case CUBIC_METRES, MOVEMENT -> 8;
            case CATALOGUE_ANGLE -> 10;
            case NUMBER -> 0;
            case NONE, UNIT_EDGE -> 12;
            case GRAMS, SPREAD, MINUTES, IMBALANCE, VELOCITY, SURFACE_SPEED, MILLILITRES -> 3;
            case DENSITY, TURNS -> 1;
        };
    }
}
