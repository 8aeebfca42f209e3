package org.orbwright.source;

import java.lang.reflect.Method;
import java.util.List;
import org.junit.platform.commons.annotation.Testable;
import org.junit.platform.commons.support.AnnotationSupport;
import org.junit.platform.commons.support.ReflectionSupport;

/**
 * A test method of any kind: plain, parameterised, repeated or a property.
 *
 * @param name class and method
 * @param source what it rests on, or null if it does not say so
 */
record Check(String capability, String name, Source source) {

    /** The checks of a capability, found in the compiled classes of its package. */
    static List<Check> of(String capability) {
        return ReflectionSupport.findAllClassesInPackage("org.orbwright." + capability, any -> true, any -> true)
                .stream()
                .flatMap(type -> List.of(type.getDeclaredMethods()).stream())
                .filter(method -> AnnotationSupport.isAnnotated(method, Testable.class))
                .map(method -> new Check(capability, name(method), source(method)))
                .toList();
    }

    private static String name(Method method) {
        String type = method.getDeclaringClass().getName();
        return type.substring(type.lastIndexOf('.') + 1) + "." + method.getName();
    }

    /** That of the method, or else that of the class around it which states one. */
    private static Source source(Method method) {
        Source source = method.getAnnotation(Source.class);
        for (Class<?> type = method.getDeclaringClass();
                source == null && type != null;
                type = type.getEnclosingClass()) {
            source = type.getAnnotation(Source.class);
        }
        return source;
    }

    @Override
    public String toString() {
        String what = source == null ? "" : source.value() + " " + source.text();
        return capability + " " + name + ": " + what;
    }
}
