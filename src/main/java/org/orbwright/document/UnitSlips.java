package org.orbwright.document;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;

/** Finds lengths that were probably stated in the wrong unit: those outside what is usual for their field. */
public final class UnitSlips {
    private static final ClassValue<List<CheckedField>> PARTS = new ClassValue<>() {
        @Override
        protected List<CheckedField> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .map(CheckedField::of)
                    .toList();
        }
    };

    /** A range converted from the other unit may miss its end by the last bits of a double. */
    private static final double EXACT = 1e-9;

    private final LengthUnit unit;
    private final List<UnitSlip> slips = new ArrayList<>();

    private UnitSlips(LengthUnit unit) {
        this.unit = unit;
    }

    /**
     * A length outside what is usual.
     *
     * @param pointer JSON pointer to it
     * @param value the length as it was written, in the document's unit
     * @param from the least that is usual, in millimetres
     * @param to the most that is usual, in millimetres
     */
    public record UnitSlip(String pointer, double value, double from, double to) {
        /** Whether a length in millimetres is usual for the field. */
        public boolean isUsual(double millimetres) {
            return millimetres >= from * (1 - EXACT) && millimetres <= to * (1 + EXACT);
        }
    }

    /** A component of a record, and what is usual for it or for the items of its list; null where nothing is. */
    private record CheckedField(String name, Method accessor, Range usual) {
        static CheckedField of(RecordComponent component) {
            return new CheckedField(
                    component.getName(), component.getAccessor(), Range.of(component.getAnnotation(Describe.class)));
        }

        Object of(Record whole) {
            try {
                return accessor.invoke(whole);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("cannot read " + accessor, e);
            }
        }
    }

    private record Range(double from, double to) {
        static Range of(Describe describe) {
            return describe == null || describe.usual().length == 0
                    ? null
                    : new Range(describe.usual()[0], describe.usual()[1]);
        }
    }

    /**
     * The slips in part of a document.
     *
     * @param part the design or a section, as it was written
     * @param pointer JSON pointer to it
     * @param unit the document's unit
     */
    public static List<UnitSlip> of(Record part, String pointer, LengthUnit unit) {
        UnitSlips found = new UnitSlips(unit);
        found.walk(part, pointer, null);
        return found.slips;
    }

    private void walk(Object value, String pointer, Range usual) {
        if (value instanceof Record whole) {
            for (CheckedField part : PARTS.get(whole.getClass())) {
                walk(part.of(whole), pointer + "/" + part.name(), part.usual());
            }
        } else if (value instanceof List<?> items) {
            for (int i = 0; i < items.size(); i++) {
                walk(items.get(i), pointer + "/" + i, usual);
            }
        } else if (value instanceof Double length && usual != null && length != 0) {
            UnitSlip slip = new UnitSlip(pointer, length, usual.from(), usual.to());
            if (!slip.isUsual(unit.toMillimetres(Math.abs(length)))) {
                slips.add(slip);
            }
        }
    }
}
