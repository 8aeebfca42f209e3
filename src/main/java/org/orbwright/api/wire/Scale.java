package org.orbwright.api.wire;

import java.lang.reflect.RecordComponent;
import java.util.EnumMap;
import java.util.Map;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;

/**
 * What a number is multiplied by on its way out, and the decimals that it keeps.
 *
 * @param factor from the service's own units to those of the answer
 * @param decimals the most decimals to write
 */
record Scale(double factor, int decimals) {
    /**
     * What is added to a whole number on its way out.
     *
     * @param component a component that holds whole numbers
     * @param asWritten whether it is in its author's numbers already
     */
    static int first(RecordComponent component, boolean asWritten) {
        return asWritten ? 0 : quantity(component).first();
    }

    private static Quantity quantity(RecordComponent component) {
        Describe describe = component.getAnnotation(Describe.class);
        return describe == null ? Quantity.NONE : describe.quantity();
    }

    /**
     * The scales of a component in either unit.
     *
     * @param component a component that holds a number
     * @param asWritten whether it is in its author's units and is only rounded
     */
    static Map<LengthUnit, Scale> of(RecordComponent component, boolean asWritten) {
        Quantity quantity = quantity(component);
        Map<LengthUnit, Scale> scales = new EnumMap<>(LengthUnit.class);
        for (LengthUnit unit : LengthUnit.values()) {
            scales.put(unit, new Scale(asWritten ? 1 : quantity.factor(unit), quantity.decimals(unit)));
        }
        return scales;
    }
}
