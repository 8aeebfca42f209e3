package org.orbwright.cell;

import static org.orbwright.cell.Parameter.ACROSS_FLATS;
import static org.orbwright.cell.Parameter.BANDS;
import static org.orbwright.cell.Parameter.BLANK_LENGTH;
import static org.orbwright.cell.Parameter.KERF;
import static org.orbwright.cell.Parameter.SOLID;
import static org.orbwright.cell.Parameter.THICKNESS;
import static org.orbwright.cell.Parameter.UNIT;

import java.util.Set;

/** How much of a design a number depends on: the rest may be left out. */
public enum Inputs {
    /** Angles: the solid alone. */
    SHAPE,
    /** Sizes of the solid and of its segments. */
    SIZE,
    /** What a blank gives. */
    BLANK,
    /** The sphere and its wall. */
    WALL,
    /** What is left of the bands. */
    SURVIVAL,
    /** Everything. */
    DESIGN;

    /** Whether the parameter may not be left out; of the three sizes, the size across flats stands for all. */
    boolean includes(Parameter parameter) {
        return parameters().contains(parameter);
    }

    private Set<Parameter> parameters() {
        return switch (this) {
            case SHAPE -> Set.of(SOLID);
            case SIZE -> Set.of(SOLID, UNIT, ACROSS_FLATS);
            case BLANK -> Set.of(SOLID, UNIT, ACROSS_FLATS, KERF, BLANK_LENGTH);
            case WALL -> Set.of(SOLID, UNIT, ACROSS_FLATS, THICKNESS);
            case SURVIVAL -> Set.of(SOLID, UNIT, ACROSS_FLATS, BANDS);
            case DESIGN -> Set.of(SOLID, UNIT, ACROSS_FLATS, THICKNESS, BANDS, KERF, BLANK_LENGTH);
        };
    }

    /** The parameters that may not be left out, in words. */
    public String words() {
        return switch (this) {
            case SHAPE -> "solid";
            case SIZE -> "solid, unit and a size";
            case BLANK -> "solid, unit, a size, kerf and blankLength";
            case WALL -> "solid, unit, a size and thickness";
            case SURVIVAL -> "solid, unit, a size and bands";
            case DESIGN -> "solid, unit, a size, thickness, bands, kerf and blankLength";
        };
    }
}
