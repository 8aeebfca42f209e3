package org.orbwright.api;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.RecordComponent;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;

/**
 * Turns the accessors of record components into functions that box nothing, which matters where an answer has some
 * hundreds of numbers. They are method handles, of which those of one type share their code: classes made for each of
 * them, as lambdas would be, took a tenth of the service's start.
 */
final class Accessors {
    private static final MethodHandles.Lookup LOOKUP = MethodHandles.lookup();

    private Accessors() {}

    static ToDoubleFunction<Object> ofDouble(RecordComponent component) {
        MethodHandle accessor = accessor(component, double.class);
        return answer -> {
            try {
                return (double) accessor.invokeExact(answer);
            } catch (Throwable e) {
                throw unreadable(component, e);
            }
        };
    }

    static ToLongFunction<Object> ofWhole(RecordComponent component) {
        MethodHandle accessor = accessor(component, long.class);
        return answer -> {
            try {
                return (long) accessor.invokeExact(answer);
            } catch (Throwable e) {
                throw unreadable(component, e);
            }
        };
    }

    static Function<Object, Object> ofObject(RecordComponent component) {
        MethodHandle accessor = accessor(component, Object.class);
        return answer -> {
            try {
                return (Object) accessor.invokeExact(answer);
            } catch (Throwable e) {
                throw unreadable(component, e);
            }
        };
    }

    private static MethodHandle accessor(RecordComponent component, Class<?> result) {
        try {
            return LOOKUP.unreflect(component.getAccessor()).asType(MethodType.methodType(result, Object.class));
        } catch (IllegalAccessException e) {
            throw unreadable(component, e);
        }
    }

    private static IllegalStateException unreadable(RecordComponent component, Throwable cause) {
        return new IllegalStateException("cannot read " + component, cause);
    }
}
