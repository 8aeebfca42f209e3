package org.orbwright.api;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.media.Content;
import org.eclipse.microprofile.openapi.models.media.MediaType;
import org.eclipse.microprofile.openapi.models.parameters.RequestBody;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.eclipse.microprofile.openapi.models.responses.APIResponses;
import org.orbwright.document.Document;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.Caution;
import org.orbwright.sheet.Caution.Step;
import org.orbwright.solid.Solid;

/**
 * Completes the contract that is scanned from the resources: schemas from the records' descriptions, the problems that
 * each operation may answer with, and worked examples. It runs while the service is built.
 */
@OpenApiFilter(OpenApiFilter.RunStage.BUILD)
public class ContractFilter implements OASFilter {
    private static final String JSON = jakarta.ws.rs.core.MediaType.APPLICATION_JSON;
    private static final List<Class<? extends Record>> ROOTS = List.of(
            Document.class,
            Answer.class,
            Solid.class,
            SolidsResource.SolidList.class,
            DesignsResource.DesignList.class,
            WoodsResource.WoodList.class,
            CellResource.CellList.class,
            Problem.class);

    @Override
    public void filterOpenAPI(OpenAPI contract) {
        if (contract.getComponents() == null) {
            // Nothing was scanned: the service hands out the committed contract.
            return;
        }
        contract.getComponents().setSchemas(ContractSchemas.of(ROOTS));
        ProblemAnswers.addTo(contract.getComponents());
        Examples.addTo(contract.getComponents());
        AccessContract.addTo(contract);
        contract.addServer(
                OASFactory.createServer().url("/").description("The service that handed out this contract."));
        contract.addServer(OASFactory.createServer()
                .url("http://localhost:8080")
                .description("A service on this machine, with its usual port."));
        contract.getPaths()
                .getPathItems()
                .forEach((path, item) -> item.getOperations().values().forEach(operation -> complete(path, operation)));
    }

    private static void complete(String path, Operation operation) {
        APIResponse answer = operation.getResponses().getAPIResponse("200");
        answer.setDescription(operation.getSummary() + ".");
        FileContents.describe(answer.getContent());
        warn(operation, answer.getContent());
        MediaType json = json(answer.getContent());
        if (json != null) {
            Examples.addAnswers(operation.getOperationId(), json);
        }
        if (operation.getParameters() != null) {
            operation.getParameters().stream()
                    .filter(parameter -> parameter.getName().equals(Stations.NAME))
                    .filter(parameter -> parameter.getDescription() == null)
                    .forEach(Stations::describe);
        }
        RequestBody body = operation.getRequestBody();
        if (body != null) {
            FileNames.describe(answer);
            body.setDescription("The document.");
            body.setRequired(true);
            if (json(body.getContent()) != null) {
                Examples.addDesigns(json(body.getContent()));
            } else {
                // An annotation's example would become an object, which pages print over several lines.
                body.getContent().getMediaType(BandDesignResource.NDJSON).setExample(BatchResource.EXAMPLE);
            }
        }
        // Clients take the first answer for the one to ask for, so the problems follow it.
        APIResponses answers = OASFactory.createAPIResponses().addAPIResponse("200", answer);
        ProblemAnswers.addTo(answers, path.contains("{"), body != null);
        operation.setResponses(answers);
        CellContract.complete(operation);
        if (path.matches("/v1/(solids|designs|woods)(/.*)?")) {
            CellContract.addKept(operation);
        }
    }

    /** Files for a router, a laser or a printer have no place for cautions, so their addresses have them. */
    private static void warn(Operation operation, Content content) {
        if (content.hasMediaType(Form.DXF_TYPE) || content.hasMediaType(Form.STL_TYPE)) {
            String cautions =
                    Step.OUTLINES.cautions().stream().map(Caution::text).collect(Collectors.joining(" "));
            operation.setDescription(operation.getDescription() + " Cautions: " + cautions);
        }
    }

    private static MediaType json(Content content) {
        return content.getMediaType(JSON);
    }
}
