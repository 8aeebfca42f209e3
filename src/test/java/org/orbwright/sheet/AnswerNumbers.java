package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** Every value of an answer, found by walking through its records. */
final class AnswerNumbers {
    private final List<Value> values = new ArrayList<>();

    private AnswerNumbers() {}

    /** One value, with the path to it and the kind of number that it is. */
    record Value(String path, Object value, Quantity quantity) {}

    /** All values of an answer. */
    static List<Value> of(Record answer) {
        AnswerNumbers numbers = new AnswerNumbers();
        numbers.walk("", answer, Quantity.NONE);
        return numbers.values;
    }

    /** All values of the parts of a sheet that are computed from its geometry. */
    static List<Value> ofGeometry(Answer sheet) {
        List<Value> all = new ArrayList<>();
        for (Record part : List.of(sheet.angles(), sheet.segments(), sheet.yield(), sheet.sphere(), sheet.bands())) {
            all.addAll(of(part));
        }
        return all;
    }

    private void walk(String path, Object value, Quantity quantity) {
        if (value instanceof Record) {
            for (RecordComponent component : value.getClass().getRecordComponents()) {
                Describe describe = component.getAnnotation(Describe.class);
                walk(
                        path + "/" + component.getName(),
                        read(component, value),
                        describe == null ? Quantity.NONE : describe.quantity());
            }
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                walk(path + "/" + i, list.get(i), quantity);
            }
        } else {
            values.add(new Value(path, value, quantity));
        }
    }

    private static Object read(RecordComponent component, Object record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    static void assertFinite(List<Value> values) {
        for (Value value : values) {
            if (value.value() instanceof Double number) {
                assertTrue(Double.isFinite(number), () -> value.path() + " is " + number);
            }
        }
    }

    /**
     * Checks that the second answer is the first with every length times a factor.
     *
     * @param size a length of the first design, by which differences are measured
     */
    static void assertScaled(List<Value> plain, List<Value> scaled, double factor, double size) {
        assertEquals(plain.size(), scaled.size());
        for (int i = 0; i < plain.size(); i++) {
            Value one = plain.get(i);
            Value other = scaled.get(i);
            assertEquals(one.path(), other.path());
            if (one.value() instanceof Double number && one.quantity() != Quantity.NONE) {
                double power = Math.pow(factor, dimension(one.quantity()));
                double whole = Math.pow(size * factor, dimension(one.quantity()));
                double tolerance = 1e-9 * (Math.abs(number) * power + whole);
                assertEquals(number * power, (Double) other.value(), tolerance, one.path());
            } else {
                assertEquals(one.value(), other.value(), one.path());
            }
        }
    }

    private static int dimension(Quantity quantity) {
        return switch (quantity) {
            case LENGTH, VELOCITY, SURFACE_SPEED -> 1;
            case AREA, GRAMS, STRESS, MILLILITRES -> 2;
            case VOLUME, BOARD_FEET, CUBIC_METRES, MASS -> 3;
            case IMBALANCE, FORCE -> 4;
            case NONE,
                    PLAIN,
                    NUMBER,
                    ANGLE,
                    CATALOGUE_ANGLE,
                    UNIT_EDGE,
                    RATIO,
                    SHARE,
                    DENSITY,
                    PERCENT,
                    CELSIUS,
                    MOVEMENT,
                    MONEY,
                    SPREAD,
                    MINUTES,
                    TURNS -> 0;
        };
    }
}
