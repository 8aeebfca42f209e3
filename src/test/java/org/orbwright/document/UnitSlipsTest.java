package org.orbwright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.document.UnitSlips.UnitSlip;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.tolerance.ToleranceRequest;
import org.orbwright.tolerance.ToleranceRequest.ErrorsRequest;
import org.orbwright.tolerance.ToleranceRequest.LengthErrorRequest;
import org.orbwright.turning.TurningRequest.RoughingRequest;

/** What is usual for the lengths of a document, and what is found outside. */
class UnitSlipsTest {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
            .build();

    @Test
    void everyLengthOfADocumentHasAUsualRangeThatHoldsItsExample() throws IOException {
        List<RecordComponent> lengths = new ArrayList<>();
        for (Class<?> type : reachable(Document.class)) {
            for (RecordComponent component : type.getRecordComponents()) {
                Describe describe = component.getAnnotation(Describe.class);
                if (describe != null && describe.quantity() == Quantity.LENGTH) {
                    lengths.add(component);
                }
            }
        }
        assertTrue(lengths.size() > 70, "the walk finds the document's lengths");
        for (RecordComponent length : lengths) {
            Describe describe = length.getAnnotation(Describe.class);
            String name = length.getDeclaringRecord().getSimpleName() + "." + length.getName();
            assertEquals(2, describe.usual().length, name);
            double from = describe.usual()[0];
            double to = describe.usual()[1];
            assertTrue(0 < from && from < to, name);
            String example = describe.example();
            double[] values = example.startsWith("[")
                    ? JSON.readValue(example, double[].class)
                    : new double[] {Double.parseDouble(example)};
            for (double value : values) {
                assertTrue(from <= value && value <= to, name + " has the example " + example + " in mm");
            }
        }
    }

    @Test
    void onlyLengthsHaveAUsualRange() {
        for (Class<?> type : reachable(Document.class)) {
            for (RecordComponent component : type.getRecordComponents()) {
                Describe describe = component.getAnnotation(Describe.class);
                if (describe != null && describe.quantity() != Quantity.LENGTH) {
                    assertEquals(0, describe.usual().length, component::toString);
                }
            }
        }
    }

    static Stream<Path> worked() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/designs"))) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("worked")
    void workedDocumentsHaveNoSlip(Path file) throws IOException {
        assertEquals(List.of(), slips(JSON.readValue(file.toFile(), Document.class)));
    }

    @ParameterizedTest
    @MethodSource("worked")
    @DisplayName("the main measures of every worked document slip as soon as its unit is the wrong one")
    void workedDocumentsInTheWrongUnitSlip(Path file) throws IOException {
        String text = Files.readString(file);
        String other = text.contains("\"unit\": \"mm\"")
                ? text.replace("\"unit\": \"mm\"", "\"unit\": \"in\"")
                : text.replace("\"unit\": \"in\"", "\"unit\": \"mm\"");
        List<String> pointers = slips(JSON.readValue(other, Document.class)).stream()
                .map(UnitSlip::pointer)
                .toList();
        for (String pointer : List.of("/size/value", "/panel/thickness", "/saw/kerf", "/blank/length")) {
            assertTrue(pointers.contains(pointer), () -> pointer + " in " + pointers);
        }
    }

    @Test
    void itemsOfListsAreNamedByTheirPlace() {
        assertEquals(
                List.of(new UnitSlip("/turning/roughing/rings/1", 2, 10, 1500)),
                UnitSlips.of(new RoughingRequest(null, null, List.of(60.0, 2.0)), "/turning/roughing", LengthUnit.MM));
    }

    @Test
    void endsOfTheRangeAreUsualInBothUnits() {
        assertEquals(List.of(), rings(LengthUnit.MM, 10, 1500));
        assertEquals(List.of(), rings(LengthUnit.IN, 10 / 25.4, 1500 / 25.4));
        assertEquals(2, rings(LengthUnit.MM, 9.99, 1500.1).size());
        assertEquals(2, rings(LengthUnit.IN, 0.393, 59.06).size());
    }

    @Test
    void nothingIsNeverASlipAndLessThanNothingIsOneByItsSize() {
        assertEquals(List.of(), errors(0));
        assertEquals(List.of(), errors(-0.1));
        assertEquals(List.of("/tolerance/errors/stop/setting"), errors(-25.4));
    }

    private static List<UnitSlip> rings(LengthUnit unit, double... rings) {
        List<Double> all = new ArrayList<>();
        for (double ring : rings) {
            all.add(ring);
        }
        return UnitSlips.of(new RoughingRequest(null, null, all), "", unit);
    }

    private static List<String> errors(double setting) {
        ErrorsRequest errors =
                new ErrorsRequest(null, null, null, null, null, new LengthErrorRequest(setting, null), null, null);
        return UnitSlips.of(new ToleranceRequest(errors, null, null, null), "/tolerance", LengthUnit.MM).stream()
                .map(UnitSlip::pointer)
                .toList();
    }

    private static List<UnitSlip> slips(Document document) {
        List<UnitSlip> slips = new ArrayList<>(UnitSlips.of(document.design(), "", document.unit()));
        document.sections()
                .forEach((section, written) -> slips.addAll(UnitSlips.of(written, section.pointer(), document.unit())));
        return slips;
    }

    private static Set<Class<?>> reachable(Class<?> root) {
        Set<Class<?>> found = new LinkedHashSet<>();
        List<Class<?>> open = new ArrayList<>(List.of(root));
        while (!open.isEmpty()) {
            Class<?> type = open.remove(0);
            if (type.isRecord() && found.add(type)) {
                for (RecordComponent component : type.getRecordComponents()) {
                    Type generic = component.getGenericType();
                    open.add(
                            generic instanceof ParameterizedType list
                                    ? (Class<?>) list.getActualTypeArguments()[0]
                                    : component.getType());
                }
            }
        }
        return found;
    }
}
