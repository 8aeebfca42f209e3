package org.orbwright.api;

import java.lang.invoke.LambdaMetafactory;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.RecordComponent;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;

/**
 * Turns the accessors of record components into functions. Unlike a reflective call such a function is compiled in line
 * and boxes nothing, which matters where an answer has some hundreds of numbers. Method handles that are called as such
 * would save the classes that are made here while the service starts, but were slower under a mixed load, now and then
 * by half.
 */
final class Accessors {
    private static final MethodHandles.Lookup LOOKUP = MethodHandles.lookup();

    private Accessors() {}

    @SuppressWarnings("unchecked")
    static ToDoubleFunction<Object> ofDouble(RecordComponent component) {
        return (ToDoubleFunction<Object>) function(component, ToDoubleFunction.class, "applyAsDouble", double.class);
    }

    @SuppressWarnings("unchecked")
    static ToLongFunction<Object> ofWhole(RecordComponent component) {
        return (ToLongFunction<Object>) function(component, ToLongFunction.class, "applyAsLong", long.class);
    }

    @SuppressWarnings("unchecked")
    static Function<Object, Object> ofObject(RecordComponent component) {
        return (Function<Object, Object>) function(component, Function.class, "apply", Object.class);
    }

    private static Object function(RecordComponent component, Class<?> type, String method, Class<?> result) {
        try {
            MethodHandle accessor = LOOKUP.unreflect(component.getAccessor());
            MethodType generic = MethodType.methodType(result, Object.class);
            MethodType exact = MethodType.methodType(
                    result.isPrimitive() ? result : accessor.type().wrap().returnType(),
                    component.getDeclaringRecord());
            return LambdaMetafactory.metafactory(LOOKUP, method, MethodType.methodType(type), generic, accessor, exact)
                    .getTarget()
                    .invoke();
        } catch (Throwable e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }
}
