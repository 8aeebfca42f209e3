package org.orbwright.api;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import jakarta.enterprise.inject.Instance;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.ext.Provider;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.orbwright.api.guard.StreamWriter;
import org.orbwright.api.guard.WorkPermits;
import org.orbwright.api.query.Format;
import org.orbwright.api.wire.Csv;
import org.orbwright.api.wire.Limits;
import org.orbwright.explore.Sweep;
import org.orbwright.explore.SweepRow;
import org.orbwright.sheet.Finding.Severity;

/** Writes a sweep row by row as it is computed. */
@Provider
@Produces({Format.NDJSON_TYPE, Csv.MEDIA_TYPE})
public class SweepWriter extends StreamWriter<Sweep> {
    private static final JsonFactory JSON = JsonFactory.builder().build();
    /** Where the codes of a severity's findings stand. */
    private static final Map<Severity, String> CODES =
            new EnumMap<>(Map.of(Severity.STOP, "stops", Severity.WARN, "warns", Severity.NOTE, "notes"));

    private static final String PROBLEM = "problem";

    SweepWriter(Instance<Limits> limits, Instance<WorkPermits> places) {
        super(Sweep.class, limits, places);
    }

    @Override
    public void write(Sweep sweep, MediaType media, OutputStream body, BooleanSupplier left) throws IOException {
        if (media.getSubtype().equals("csv")) {
            writeCsv(sweep, body, left);
        } else {
            writeLines(sweep, body, left);
        }
    }

    private static void writeLines(Sweep sweep, OutputStream body, BooleanSupplier left) throws IOException {
        JsonGenerator json = JSON.createGenerator(body, JsonEncoding.UTF8)
                .disable(JsonGenerator.Feature.FLUSH_PASSED_TO_STREAM)
                .setRootValueSeparator(null);
        while (sweep.hasNext() && !left.getAsBoolean()) {
            SweepRow row = sweep.next();
            json.writeStartObject();
            writeNumbers(json, sweep.fields(), row.inputs());
            writeNumbers(json, sweep.outputs(), row.outputs());
            for (Map.Entry<Severity, String> name : CODES.entrySet()) {
                String[] codes = row.codes().get(name.getKey()).toArray(String[]::new);
                if (codes.length > 0) {
                    json.writeFieldName(name.getValue());
                    json.writeArray(codes, 0, codes.length);
                }
            }
            if (row.problem() != null) {
                json.writeStringField(PROBLEM, row.problem());
            }
            json.writeEndObject();
            json.writeRaw('\n');
        }
        json.flush();
    }

    private static void writeNumbers(JsonGenerator json, List<String> names, List<Double> numbers) throws IOException {
        for (int i = 0; i < numbers.size(); i++) {
            if (numbers.get(i) != null) {
                json.writeFieldName(names.get(i));
                json.writeNumber(Csv.plain(numbers.get(i)));
            }
        }
    }

    private static void writeCsv(Sweep sweep, OutputStream body, BooleanSupplier left) throws IOException {
        Writer csv = new OutputStreamWriter(body, StandardCharsets.UTF_8);
        csv.write(heading(sweep));
        while (sweep.hasNext() && !left.getAsBoolean()) {
            csv.write(line(sweep.next(), sweep.outputs().size()));
        }
        csv.flush();
    }

    /** The heading of a sweep's rows as CSV. */
    public static String heading(Sweep sweep) {
        List<String> heading = new ArrayList<>(sweep.fields());
        heading.addAll(sweep.outputs());
        heading.addAll(CODES.values());
        heading.add(PROBLEM);
        return Csv.line(heading.stream().map(Csv::text).toList());
    }

    /**
     * A row of a sweep as one line of CSV.
     *
     * @param outputs how many numbers were wanted
     */
    public static String line(SweepRow row, int outputs) {
        List<String> cells = new ArrayList<>();
        row.inputs().forEach(number -> cells.add(Csv.plain(number)));
        for (int i = 0; i < outputs; i++) {
            Double number = row.problem() == null ? row.outputs().get(i) : null;
            cells.add(number == null ? "" : Csv.plain(number));
        }
        CODES.keySet()
                .forEach(severity -> cells.add(String.join(" ", row.codes().get(severity))));
        cells.add(row.problem() == null ? "" : Csv.text(row.problem()));
        return Csv.line(cells);
    }
}
