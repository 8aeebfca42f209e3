package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.document.UnitSlips;
import org.orbwright.document.UnitSlips.UnitSlip;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;

/** Lengths that were probably stated in the wrong unit. */
final class UnitFindings {
    private static final int WRITTEN_DECIMALS = 9;

    private UnitFindings() {}

    /**
     * A warning for each field with such a length; where items of a list slip alike, for the first of them.
     *
     * @param part the design or a section, as it was written
     * @param pointer JSON pointer to it
     */
    static List<Finding> of(Record part, String pointer, LengthUnit unit) {
        Map<String, List<UnitSlip>> alike = new LinkedHashMap<>();
        for (UnitSlip slip : UnitSlips.of(part, pointer, unit)) {
            alike.computeIfAbsent(slip.pointer().replaceAll("/\\d+", "/*"), field -> new ArrayList<>())
                    .add(slip);
        }
        return alike.values().stream().map(slips -> finding(slips, unit)).toList();
    }

    private static Finding finding(List<UnitSlip> slips, LengthUnit unit) {
        UnitSlip slip = slips.get(0);
        LengthUnit other = unit == LengthUnit.MM ? LengthUnit.IN : LengthUnit.MM;
        double meant = other.toMillimetres(slip.value());
        int more = slips.size() - 1;
        String message = slip.pointer().substring(1).replace('/', '.') + " is "
                + Rounding.plain(slip.value(), WRITTEN_DECIMALS) + " " + unit.symbol() + ", which is "
                + other.say(unit.toMillimetres(slip.value())) + ". Usual values are " + unit.say(slip.from()) + " to "
                + unit.say(slip.to()) + "."
                + (slip.isUsual(Math.abs(meant))
                        ? " If " + other.symbol() + " was meant, write " + unit.sayNumber(meant) + "."
                        : "")
                + (more > 0 ? " " + more + " more like it " + (more == 1 ? "is" : "are") + " unusual too." : "");
        return FindingCode.UNIT_SLIP.warn(message, slip.pointer());
    }
}
