package org.orbwright.explore;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A JSON pointer (RFC 6901) into a tree of records and lists, whose components are named as in JSON. */
final class RecordPath {
    private final List<String> steps;

    private RecordPath(List<String> steps) {
        this.steps = steps;
    }

    /** Reads a pointer; null if it is none. */
    static RecordPath parse(String pointer) {
        if (!pointer.startsWith("/")) {
            return null;
        }
        List<String> steps = new ArrayList<>();
        for (String step : pointer.substring(1).split("/", -1)) {
            steps.add(step.replace("~1", "/").replace("~0", "~"));
        }
        return new RecordPath(steps);
    }

    /**
     * What a pointer leads to.
     *
     * @param component the component of a record that it names last
     * @param value its value, or null
     */
    record Target(RecordComponent component, Object value) {}

    /** Follows the path from a record; null if there is no such place. */
    Target follow(Object root) {
        Object value = root;
        RecordComponent component = null;
        for (String step : steps) {
            if (value instanceof List<?> list) {
                int index = index(step, list.size());
                if (index < 0) {
                    return null;
                }
                value = list.get(index);
                component = null;
            } else {
                component = value instanceof Record ? component(value.getClass(), step) : null;
                if (component == null) {
                    return null;
                }
                value = read(component, value);
            }
        }
        return new Target(component, value);
    }

    /** The first step of the path. */
    String first() {
        return steps.get(0);
    }

    /** Whether the path leads to a number in records of a type, however long their lists are. */
    boolean leadsToNumber(Class<?> root) {
        Class<?> type = root;
        boolean list = false;
        for (String step : steps) {
            if (list) {
                list = false;
                if (index(step, Integer.MAX_VALUE) < 0) {
                    return false;
                }
                continue;
            }
            RecordComponent component = type.isRecord() ? component(type, step) : null;
            if (component == null) {
                return false;
            }
            list = component.getType() == List.class;
            type = list ? elementType(component) : component.getType();
        }
        return !list && (type == double.class || type == int.class || Number.class.isAssignableFrom(type));
    }

    private static Class<?> elementType(RecordComponent component) {
        Type element = ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
        return (Class<?>) element;
    }

    /** A copy of a record in which the place that the path leads to holds another value; the path has been followed. */
    Object with(Object root, Object value) {
        return with(root, 0, value);
    }

    private Object with(Object at, int depth, Object value) {
        if (depth == steps.size()) {
            return value;
        }
        if (at instanceof List<?> list) {
            List<Object> copy = new ArrayList<>(list);
            int index = index(steps.get(depth), list.size());
            copy.set(index, with(copy.get(index), depth + 1, value));
            return copy;
        }
        RecordComponent[] components = at.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            Object old = read(components[i], at);
            values[i] = components[i].getName().equals(steps.get(depth)) ? with(old, depth + 1, value) : old;
        }
        try {
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            return at.getClass().getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static int index(String step, int size) {
        boolean digits = step.matches("0|[1-9][0-9]{0,4}");
        int index = digits ? Integer.parseInt(step) : -1;
        return index < size ? index : -1;
    }

    private static RecordComponent component(Class<?> type, String name) {
        for (RecordComponent component : type.getRecordComponents()) {
            if (component.getName().equals(name)) {
                return component;
            }
        }
        return null;
    }

    private static Object read(RecordComponent component, Object owner) {
        try {
            return component.getAccessor().invoke(owner);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
    }
}
