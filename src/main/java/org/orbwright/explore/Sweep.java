package org.orbwright.explore;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Set;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.document.Document;
import org.orbwright.document.ExploreRequest;
import org.orbwright.document.ExploreRequest.VaryRequest;
import org.orbwright.document.Section;
import org.orbwright.explore.RecordPath.Target;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.Finding;
import org.orbwright.sheet.Finding.Severity;
import org.orbwright.sheet.SheetCalculator;

/**
 * The rows of a sweep, computed one at a time as they are asked for, so that a sweep takes no more memory than one
 * sheet and ends when nobody asks any more.
 */
public final class Sweep implements Iterator<SweepRow> {
    /** Stations of the sheets' profiles; an output may point at them. */
    private static final int STATIONS = 9;
    /** A range's values are rounded to this many decimals, so that they read as they are meant. */
    private static final int STEP_DECIMALS = 9;

    /** The parts of a sheet that numbers are taken from. */
    private static final Set<String> PARTS = Set.of("angles", "segments", "yield", "sphere", "bands");

    private final Document document;
    private final List<RecordPath> fields;
    private final List<Boolean> whole;
    private final List<List<Double>> values;
    private final List<RecordPath> outputs;
    private final List<String> fieldNames;
    private final List<String> outputNames;
    private final long size;
    private long next;

    private Sweep(
            Document document,
            ExploreRequest request,
            List<RecordPath> fields,
            List<Boolean> whole,
            List<List<Double>> values,
            List<RecordPath> outputs) {
        this.document = document;
        this.fieldNames = request.vary().stream().map(VaryRequest::field).toList();
        this.outputNames = request.outputs();
        this.fields = fields;
        this.whole = whole;
        this.values = values;
        this.outputs = outputs;
        this.size = designs(values);
    }

    /**
     * Checks a sweep and makes it ready.
     *
     * @param document a document that keeps its Bean Validation constraints
     * @throws ImpossibleDesignException if the document has no sweep, a pointer leads nowhere, or there are too many
     *     designs
     */
    public static Sweep of(Document document) {
        return of(document, ExploreRequest.MAX_DESIGNS);
    }

    /**
     * The same with another limit, for a sweep that is not computed within one request.
     *
     * @param most the most designs
     */
    public static Sweep of(Document document, long most) {
        ExploreRequest request = Section.EXPLORE.required(document.explore(), "the sweep depends");
        List<Violation> broken = new ArrayList<>();
        List<RecordPath> fields = new ArrayList<>();
        List<Boolean> whole = new ArrayList<>();
        List<List<Double>> values = new ArrayList<>();
        for (int i = 0; i < request.vary().size(); i++) {
            VaryRequest vary = request.vary().get(i);
            String path = "/explore/vary/" + i;
            RecordPath field = RecordPath.parse(vary.field());
            Target target = field == null ? null : field.follow(document);
            if (target == null || !isNumber(target)) {
                broken.add(new Violation(
                        path + "/field",
                        "NOT_A_NUMBER_FIELD",
                        "The design has no field for a number at this pointer.",
                        vary.field(),
                        "a pointer such as /sphere/diameter or /laminations/0/bands/0/width"));
            } else {
                fields.add(field);
                whole.add(target.component().getType() == Integer.class);
            }
            List<Double> wanted = values(vary, path, broken);
            values.add(wanted);
            if (target != null && isNumber(target)) {
                FieldBounds.of(target.component()).check(wanted, path, broken);
            }
        }
        checkSize(values, most, broken);
        checkOnce(request, broken);
        List<RecordPath> outputs = outputs(request, broken);
        if (!broken.isEmpty()) {
            throw new ImpossibleDesignException(broken);
        }
        return new Sweep(document, request, fields, whole, values, outputs);
    }

    /** Number of designs. */
    public long size() {
        return size;
    }

    /** JSON pointers of the varied fields, in the order of a row's inputs. */
    public List<String> fields() {
        return fieldNames;
    }

    /** JSON pointers of the wanted numbers, in the order of a row's outputs. */
    public List<String> outputs() {
        return outputNames;
    }

    @Override
    public boolean hasNext() {
        return next < size;
    }

    @Override
    public SweepRow next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        return row(next++);
    }

    /**
     * One row by its number, without those before it; safe for use by several threads. A row's number is written in
     * mixed radix: each field has a digit, and that of the last field changes fastest.
     *
     * @param number from 0 to below {@link #size()}
     */
    public SweepRow row(long number) {
        Double[] inputs = new Double[values.size()];
        long rest = Objects.checkIndex(number, size);
        for (int i = inputs.length - 1; i >= 0; i--) {
            int count = values.get(i).size();
            inputs[i] = values.get(i).get((int) (rest % count));
            rest /= count;
        }
        return row(List.of(inputs));
    }

    private SweepRow row(List<Double> inputs) {
        Object varied = document;
        for (int i = 0; i < fields.size(); i++) {
            Object value = whole.get(i) ? (Object) inputs.get(i).intValue() : (Object) inputs.get(i);
            varied = fields.get(i).with(varied, value);
        }
        try {
            Answer sheet = SheetCalculator.sheet((Document) varied, STATIONS);
            List<Double> numbers = new ArrayList<>();
            for (RecordPath output : outputs) {
                numbers.add(number(output.follow(sheet), document.unit()));
            }
            return new SweepRow(inputs, Collections.unmodifiableList(numbers), codes(sheet.findings()), null);
        } catch (ImpossibleDesignException e) {
            return new SweepRow(inputs, List.of(), codes(List.of()), e.getMessage());
        }
    }

    private static Map<Severity, List<String>> codes(List<Finding> findings) {
        Map<Severity, List<String>> codes = new EnumMap<>(Severity.class);
        for (Severity severity : Severity.values()) {
            codes.put(
                    severity,
                    findings.stream()
                            .filter(finding -> finding.severity() == severity)
                            .map(finding -> finding.code().name())
                            .distinct()
                            .toList());
        }
        return codes;
    }

    /** A number of a sheet in the unit of the answer, rounded as there; null if it is not there or is none. */
    private static Double number(Target target, LengthUnit unit) {
        if (target == null || !(target.value() instanceof Number number)) {
            return null;
        }
        Describe describe =
                target.component() == null ? null : target.component().getAnnotation(Describe.class);
        if (describe == null) {
            return number.doubleValue();
        }
        if (number instanceof Integer whole) {
            return (double) (whole + describe.quantity().first());
        }
        double value = number.doubleValue() * describe.quantity().factor(unit);
        return Rounding.round(value, describe.quantity().decimals(unit));
    }

    private static boolean isNumber(Target target) {
        return target.component() != null
                && (target.component().getType() == Double.class
                        || target.component().getType() == Integer.class);
    }

    private static List<Double> values(VaryRequest vary, String path, List<Violation> broken) {
        boolean list = vary.values() != null;
        boolean range = vary.from() != null && vary.to() != null && vary.count() != null;
        boolean anyOfRange = vary.from() != null || vary.to() != null || vary.count() != null;
        if (list == anyOfRange || (!list && !range)) {
            broken.add(new Violation(
                    path,
                    "VALUES_OR_RANGE",
                    "A varied field takes either a list of values, or from, to and count.",
                    null,
                    "values, or all of from, to and count"));
            return List.of();
        }
        if (list) {
            return vary.values();
        }
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < vary.count(); i++) {
            double step = (vary.to() - vary.from()) * i / (vary.count() - 1);
            values.add(Rounding.round(vary.from() + step, STEP_DECIMALS));
        }
        return values;
    }

    /** Number of combinations; the largest long where they are more. */
    private static long designs(List<List<Double>> values) {
        long designs = 1;
        for (List<Double> list : values) {
            designs = designs > Long.MAX_VALUE / Math.max(1, list.size()) ? Long.MAX_VALUE : designs * list.size();
        }
        return designs;
    }

    private static void checkSize(List<List<Double>> values, long most, List<Violation> broken) {
        long designs = designs(values);
        if (designs > most) {
            broken.add(new Violation(
                    "/explore/vary",
                    "TOO_MANY_DESIGNS",
                    "The sweep has " + designs + " designs.",
                    String.valueOf(designs),
                    "at most " + most + " designs"));
        }
    }

    private static void checkOnce(ExploreRequest request, List<Violation> broken) {
        List<String> names = request.vary().stream().map(VaryRequest::field).toList();
        for (int i = 0; i < names.size(); i++) {
            if (names.indexOf(names.get(i)) < i) {
                broken.add(new Violation(
                        "/explore/vary/" + i + "/field",
                        "FIELD_TWICE",
                        "This field is varied already.",
                        names.get(i),
                        "another field"));
            }
        }
    }

    private static List<RecordPath> outputs(ExploreRequest request, List<Violation> broken) {
        List<RecordPath> outputs = new ArrayList<>();
        for (int i = 0; i < request.outputs().size(); i++) {
            String pointer = request.outputs().get(i);
            RecordPath output = RecordPath.parse(pointer);
            if (output == null || !PARTS.contains(output.first()) || !output.leadsToNumber(Answer.class)) {
                broken.add(new Violation(
                        "/explore/outputs/" + i,
                        "NOT_A_NUMBER_OF_THE_SHEET",
                        "A sheet has no number at this pointer.",
                        pointer,
                        "a pointer such as /sphere/thinnestWall"));
            }
            if (request.outputs().indexOf(pointer) < i) {
                broken.add(new Violation(
                        "/explore/outputs/" + i,
                        "OUTPUT_TWICE",
                        "This number is wanted already.",
                        pointer,
                        "each once"));
            }
            outputs.add(output);
        }
        return outputs;
    }
}
