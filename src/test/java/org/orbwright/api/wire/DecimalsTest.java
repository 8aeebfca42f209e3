package org.orbwright.api.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;
import org.orbwright.sheet.Answer;
import org.orbwright.solid.Solid;
import org.orbwright.wood.Wood;

/** Every number of an answer has no more decimals than are documented (src/docs/numbers.md). */
class DecimalsTest {
    private static final int USUAL = 6;
    private static final Pattern NUMBER = Pattern.compile("\\d\\.(\\d+)");
    /** Fields with 8 decimals. */
    private static final Pattern FINE = Pattern.compile("\"[a-zA-Z]*(CubicMetres|Coefficient)\"");

    @Test
    void everyFractionOfAnAnswerSaysWhatKindOfNumberItIs() {
        List<String> without = new ArrayList<>();
        Set<Class<?>> seen = new HashSet<>();
        for (Class<?> root : List.of(Answer.class, Solid.class, Wood.class)) {
            collect(root, seen, without);
        }
        assertEquals(List.of(), without);
        assertTrue(seen.size() > 50);
    }

    private static void collect(Class<?> type, Set<Class<?>> seen, List<String> without) {
        if (!type.isRecord() || FieldRules.isRequest(type) || !seen.add(type)) {
            return;
        }
        for (RecordComponent component : type.getRecordComponents()) {
            Class<?> element = component.getGenericType() instanceof ParameterizedType list
                            && list.getActualTypeArguments()[0] instanceof Class<?> of
                    ? of
                    : component.getType();
            Describe describe = component.getAnnotation(Describe.class);
            boolean fraction = element == double.class || element == Double.class;
            if (fraction && (describe == null || describe.quantity() == Quantity.NONE)) {
                without.add(type.getSimpleName() + "." + component.getName());
            }
            collect(element, seen, without);
        }
    }

    @Test
    void noExampleHasANumberWithMoreDecimals() throws IOException {
        List<String> longer = new ArrayList<>();
        int numbers = 0;
        try (Stream<Path> files = Files.walk(Path.of("src/main/resources/examples"))) {
            for (Path file : files.filter(Files::isRegularFile)
                    .filter(path -> !path.getParent().endsWith("findSolid"))
                    .toList()) {
                for (String line : Files.readAllLines(file)) {
                    int most = FINE.matcher(line).find() ? 8 : USUAL;
                    for (Matcher number = NUMBER.matcher(line); number.find(); numbers++) {
                        if (number.group(1).length() > most) {
                            longer.add(file.getParent().getFileName() + ": " + line.strip());
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), longer);
        assertTrue(numbers > 1000);
    }
}
