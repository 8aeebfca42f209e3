package org.orbwright.api;

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
     * The scales of a component in either unit.
     *
     * @param component a component that holds a number
     * @param asWritten whether it is in its author's units and is only rounded
     */
    static Map<LengthUnit, Scale> of(RecordComponent component, boolean asWritten) {
        Describe describe = component.getAnnotation(Describe.class);
        Quantity quantity = describe == null ? Quantity.NONE : describe.quantity();
        Map<LengthUnit, Scale> scales = new EnumMap<>(LengthUnit.class);
        for (LengthUnit unit : LengthUnit.values()) {
            scales.put(unit, new Scale(asWritten ? 1 : quantity.factor(unit), quantity.decimals(unit)));
        }
        return scales;
    }
}
