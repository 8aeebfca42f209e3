package org.orbwright.api.wire;

import java.util.Arrays;
import java.util.List;
import org.orbwright.quantity.LengthUnit;

/** How constants are written in JSON: a length unit by its symbol, every other constant by its name. */
public final class WireNames {
    private WireNames() {}

    /** The name of a constant. */
    public static String of(Object constant) {
        return constant instanceof LengthUnit unit ? unit.symbol() : ((Enum<?>) constant).name();
    }

    /** The names of all constants of an enumeration, in their order. */
    public static List<String> all(Class<?> enumeration) {
        return Arrays.stream(enumeration.getEnumConstants()).map(WireNames::of).toList();
    }
}
