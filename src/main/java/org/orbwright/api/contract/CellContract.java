package org.orbwright.api.contract;

import java.util.List;
import java.util.Set;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.eclipse.microprofile.openapi.models.parameters.Parameter.In;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.orbwright.api.cells.CellQuery;
import org.orbwright.api.cells.CellResource;
import org.orbwright.cell.Cell;
import org.orbwright.cell.CellTable;
import org.orbwright.cell.Parameter;

/** Completes the operations that spreadsheets call: their many parameters, and answers that are plain text. */
public final class CellContract {
    private static final String CELL = "readCell";
    private static final Set<String> OPERATIONS = Set.of(CELL, "readTable");
    private static final int LONGEST_TEXT = 4096;
    /** Those that exclude the size across flats; pages fill in every example at once. */
    private static final List<Parameter> OTHER_SIZES = List.of(Parameter.EDGE, Parameter.SPHERE_DIAMETER);

    private CellContract() {}

    /** Completes the operation if it is one of those. */
    static void complete(Operation operation) {
        if (!OPERATIONS.contains(operation.getOperationId())) {
            return;
        }
        boolean table = !operation.getOperationId().equals(CELL);
        List<String> choices = Cell.choices(table ? CellTable.BANDS.path() : Cell.BLADE_TILT.path());
        for (Parameter parameter : Parameter.values()) {
            boolean fits = parameter.selects() ? choices.contains(parameter.text()) : !OTHER_SIZES.contains(parameter);
            operation.addParameter(parameter(parameter.text(), parameter.words(), fits ? parameter.example() : null));
        }
        operation.addParameter(parameter(CellQuery.ERRORS, CellQuery.ERRORS_DESCRIPTION, CellQuery.AS_TEXT));
        if (table) {
            operation.addParameter(parameter(CellQuery.FORMAT, CellResource.FORMAT, "xml"));
        }
        addKept(operation);
        if (!table) {
            List.of("400", "404", "406", "414", "422")
                    .forEach(status -> operation.getResponses().addAPIResponse(status, refusal()));
        } else {
            ProblemAnswers.addRefusals(operation.getResponses());
        }
    }

    /** Adds what is answered to a caller that has the answer. */
    static void addKept(Operation operation) {
        operation
                .getResponses()
                .addAPIResponse(
                        "304",
                        OASFactory.createAPIResponse().description("The answer is the one that the caller has."));
    }

    private static org.eclipse.microprofile.openapi.models.parameters.Parameter parameter(
            String name, String words, String example) {
        return OASFactory.createParameter()
                .name(name)
                .in(In.QUERY)
                .description(words)
                .example(example)
                .schema(OASFactory.createSchema().addType(SchemaType.STRING).maxLength(LONGEST_TEXT));
    }

    private static APIResponse refusal() {
        return OASFactory.createAPIResponse()
                .description("A line of text that says what is wrong.")
                .content(OASFactory.createContent()
                        .addMediaType(
                                "text/plain",
                                OASFactory.createMediaType()
                                        .schema(OASFactory.createSchema().addType(SchemaType.STRING))));
    }
}
