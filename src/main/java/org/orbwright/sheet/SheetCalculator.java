package org.orbwright.sheet;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;

/** Puts the answers of the capabilities together. */
public final class SheetCalculator {
    private SheetCalculator() {}

    /** Angles. */
    public static AnglesAnswer angles(Design design) {
        return sample(AnglesAnswer.class, design);
    }

    /** Segments. */
    public static SegmentsAnswer segments(Design design) {
        return sample(SegmentsAnswer.class, design);
    }

    /** Yield. */
    @SuppressWarnings("NamedLikeContextualKeyword")
    public static YieldAnswer yield(Design design) {
        return sample(YieldAnswer.class, design);
    }

    /** Sphere. */
    public static SphereAnswer sphere(Design design) {
        return sample(SphereAnswer.class, design);
    }

    /** Bands. */
    public static BandsAnswer bands(Design design, int stations) {
        return sample(BandsAnswer.class, design);
    }

    /** Sheet. */
    public static Sheet sheet(Design design, int stations) {
        return sample(Sheet.class, design);
    }

    private static <T> T sample(Class<T> type, Design design) {
        try {
            RecordComponent[] components = type.getRecordComponents();
            Object[] values = Arrays.stream(components)
                    .map(component -> value(component, design))
                    .toArray();
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object value(RecordComponent component, Design design) {
        Class<?> type = component.getType();
        Describe describe = component.getAnnotation(Describe.class);
        if (type == List.class) {
            Class<?> element = (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
            return List.of(sample(element, design), sample(element, design));
        }
        if (type == DesignRequest.class) {
            return design.request();
        }
        if (type.isRecord()) {
            return sample(type, design);
        }
        String example = describe.example();
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants())
                    .filter(constant -> example.contains(constant.toString()))
                    .findFirst()
                    .orElseThrow();
        }
        if (type == String.class) {
            return example.substring(1, example.length() - 1);
        }
        if (type == int.class || type == Integer.class) {
            return Integer.valueOf(example);
        }
        return type == boolean.class
                ? (Object) Boolean.valueOf(example)
                : (Object) (Double.parseDouble(example) / describe.quantity().factor(design.unit()));
    }
}
