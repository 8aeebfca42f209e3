package org.orbwright.api.wire;

import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.ext.Provider;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveResourceInfo;
import org.jboss.resteasy.reactive.server.spi.ServerMessageBodyWriter;
import org.jboss.resteasy.reactive.server.spi.ServerRequestContext;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.quantity.Rounding;
import org.orbwright.sheet.Answer;
import org.orbwright.stock.CutStep;
import org.orbwright.stock.ShoppingRow;
import org.orbwright.turning.PathMove;

/**
 * Writes an answer that is also a table as comma separated values: the STOPs, then the components of its rows as the
 * columns, with the numbers as {@link AnswerJson} writes them, and the unit as the last. In lists for people a length
 * in inches has its fraction beside it.
 */
@Provider
@Produces(Csv.MEDIA_TYPE)
public class TableWriter implements ServerMessageBodyWriter<Answer> {
    private static final String UNIT = "unit";
    /** What follows the name of a column of lengths in the name of the column of their fractions. */
    private static final String FRACTION = "Fraction";

    private static final ClassValue<List<Column>> COLUMNS = new ClassValue<>() {
        @Override
        protected List<Column> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents()).map(Column::of).toList();
        }
    };

    @Override
    public boolean isWriteable(Class<?> type, Type genericType, ResteasyReactiveResourceInfo method, MediaType media) {
        return type == Answer.class;
    }

    @Override
    public boolean isWriteable(Class<?> type, Type genericType, Annotation[] annotations, MediaType media) {
        return type == Answer.class;
    }

    @Override
    public void writeResponse(Answer answer, Type genericType, ServerRequestContext context) {
        context.serverResponse().end(toCsv(answer));
    }

    @Override
    public void writeTo(
            Answer answer,
            Class<?> type,
            Type genericType,
            Annotation[] annotations,
            MediaType media,
            MultivaluedMap<String, Object> headers,
            OutputStream body)
            throws IOException {
        body.write(toCsv(answer));
    }

    /** The one table of an answer, after its STOPs. */
    public static byte[] toCsv(Answer answer) {
        return toCsv(answer, rowType(answer), rows(answer));
    }

    /** One of an answer's tables, after its STOPs. */
    public static byte[] toCsv(Answer answer, Class<? extends Record> type, List<? extends Record> rows) {
        List<Column> columns = COLUMNS.get(type);
        LengthUnit unit = answer.document().unit();
        boolean fractions = unit == LengthUnit.IN && type != PathMove.class;
        List<String> heading = new ArrayList<>();
        columns.forEach(column -> heading.addAll(column.heading(fractions)));
        heading.add(UNIT);
        StringBuilder csv = new StringBuilder(Csv.stops(Notice.stops(answer.notices()), heading.size()));
        csv.append(Csv.line(heading));
        for (Record row : rows) {
            List<String> cells = new ArrayList<>();
            columns.forEach(column -> cells.addAll(column.cells(row, unit, fractions)));
            cells.add(unit.symbol());
            csv.append(Csv.line(cells));
        }
        return csv.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** The rows of the one part that is a table. */
    private static List<? extends Record> rows(Answer answer) {
        if (answer.path() != null) {
            return answer.path().moves();
        }
        return answer.cuts() != null ? answer.cuts() : answer.purchases().rows();
    }

    private static Class<? extends Record> rowType(Answer answer) {
        if (answer.path() != null) {
            return PathMove.class;
        }
        return answer.cuts() != null ? CutStep.class : ShoppingRow.class;
    }

    /** A component of the rows. */
    private record Column(String name, boolean isLength, int first, Method read, Map<LengthUnit, Scale> scales) {
        static Column of(RecordComponent component) {
            Describe describe = component.getAnnotation(Describe.class);
            return new Column(
                    component.getName(),
                    describe != null && describe.quantity() == Quantity.LENGTH,
                    Scale.first(component, false),
                    component.getAccessor(),
                    Scale.of(component, false));
        }

        List<String> heading(boolean fractions) {
            return fractions && isLength ? List.of(name, name + FRACTION) : List.of(name);
        }

        List<String> cells(Record row, LengthUnit unit, boolean fractions) {
            Object value = value(row);
            String cell = cell(value, unit);
            return fractions && isLength ? List.of(cell, fraction((Double) value, unit)) : List.of(cell);
        }

        private Object value(Record row) {
            try {
                return read.invoke(row);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("cannot read " + name, e);
            }
        }

        /** With its unit: a spreadsheet would take 3/4 for a day in spring. */
        private static String fraction(Double millimetres, LengthUnit unit) {
            return millimetres == null ? "" : Csv.text(unit.fraction(millimetres) + " " + unit.symbol());
        }

        private String cell(Object value, LengthUnit unit) {
            if (value == null) {
                return "";
            }
            if (value instanceof Double number) {
                Scale scale = scales.get(unit);
                return Rounding.plain(number * scale.factor(), scale.decimals());
            }
            return value instanceof Integer whole ? Integer.toString(whole + first) : Csv.text(text(value));
        }

        private static String text(Object value) {
            return value instanceof Enum<?> constant ? WireNames.of(constant) : (String) value;
        }
    }
}
