package org.orbwright.api.query;

import java.util.Set;
import org.orbwright.quantity.LengthUnit;

/** The unit of the coordinates in a file, for programs that do not ask for it. */
final class FileUnit {
    static final String NAME = "unit";
    static final String DESCRIPTION = "The unit of the coordinates in a file for a machine; the document's if left out."
            + " Many slicers take every number for millimetres.";
    private static final Set<Format> WITH_CHOICE =
            Set.of(Format.STL, Format.OBJ, Format.THREE_MF, Format.DXF, Format.CUT);

    private FileUnit() {}

    /** Refuses a wrong unit, or one where a form leaves no choice. */
    static void check(String unit, Format form) {
        asked(unit, form, LengthUnit.MM);
    }

    /** The unit that is asked for, or that of the design; refused where a form leaves no choice. */
    static LengthUnit asked(String unit, Format form, LengthUnit designs) {
        if (!WITH_CHOICE.contains(form)) {
            Query.leftOut(NAME, unit, "of a form that has one unit alone");
        }
        return Query.constant(NAME, unit, LengthUnit.class, designs);
    }
}
