package org.orbwright.api.wire;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.sheet.Answer;

/** The unit of every value of an answer, from its description: the contract, the scale and the tables agree in it. */
public final class AnswerUnits {
    private static final ClassValue<Map<String, FieldRules>> FIELDS = new ClassValue<>() {
        @Override
        protected Map<String, FieldRules> computeValue(Class<?> type) {
            return FieldRules.of(type).stream().collect(Collectors.toMap(FieldRules::name, Function.identity()));
        }
    };

    private AnswerUnits() {}

    /**
     * The unit of a value.
     *
     * @param pointer JSON pointer to it
     * @param unit the unit of the answer's lengths
     * @return its symbol; empty for a text, a flag, a count and the number of something
     */
    public static String of(String pointer, LengthUnit unit) {
        FieldRules field = null;
        Class<?> type = Answer.class;
        for (String step : pointer.substring(1).split("/", -1)) {
            if (type == List.class) {
                type = field.element();
            } else {
                field = FIELDS.get(type).get(step);
                type = field.isList() ? List.class : field.element();
            }
        }
        Quantity quantity =
                field.describe() == null ? Quantity.NONE : field.describe().quantity();
        return quantity.symbol(unit);
    }
}
