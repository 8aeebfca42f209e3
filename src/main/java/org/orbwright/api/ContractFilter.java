package org.orbwright.api;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.List;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.media.Content;
import org.eclipse.microprofile.openapi.models.media.MediaType;
import org.eclipse.microprofile.openapi.models.parameters.RequestBody;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.eclipse.microprofile.openapi.models.responses.APIResponses;
import org.orbwright.assembly.AssemblyRequest;
import org.orbwright.band.WidthRequest;
import org.orbwright.band.WidthSolution;
import org.orbwright.design.DesignRequest;
import org.orbwright.diagnosis.DiagnosisRequest;
import org.orbwright.explore.SweepRequest;
import org.orbwright.inlay.InlayRequest;
import org.orbwright.jig.JigRequest;
import org.orbwright.movement.MovementRequest;
import org.orbwright.paper.ShopSheetRequest;
import org.orbwright.sheet.AnglesAnswer;
import org.orbwright.sheet.AssemblyAnswer;
import org.orbwright.sheet.BalanceAnswer;
import org.orbwright.sheet.BandsAnswer;
import org.orbwright.sheet.BodyAnswer;
import org.orbwright.sheet.CutsAnswer;
import org.orbwright.sheet.DiagnosisAnswer;
import org.orbwright.sheet.InlayAnswer;
import org.orbwright.sheet.JigAnswer;
import org.orbwright.sheet.MovementAnswer;
import org.orbwright.sheet.PathAnswer;
import org.orbwright.sheet.PurchasesAnswer;
import org.orbwright.sheet.SegmentsAnswer;
import org.orbwright.sheet.Sheet;
import org.orbwright.sheet.SphereAnswer;
import org.orbwright.sheet.StockAnswer;
import org.orbwright.sheet.ToleranceAnswer;
import org.orbwright.sheet.TurningAnswer;
import org.orbwright.sheet.YieldAnswer;
import org.orbwright.solid.Solid;
import org.orbwright.stock.StockRequest;
import org.orbwright.tolerance.ToleranceRequest;
import org.orbwright.turning.BalanceRequest;
import org.orbwright.turning.PathRequest;
import org.orbwright.turning.TurningRequest;

/**
 * Completes the contract that is scanned from the resources: schemas from the records' descriptions, the problems that
 * each operation may answer with, and worked examples. It runs while the service is built.
 */
@OpenApiFilter(OpenApiFilter.RunStage.BUILD)
public class ContractFilter implements OASFilter {
    private static final String JSON = jakarta.ws.rs.core.MediaType.APPLICATION_JSON;
    private static final List<Class<? extends Record>> ROOTS = List.of(
            DesignRequest.class,
            AnglesAnswer.class,
            SegmentsAnswer.class,
            YieldAnswer.class,
            SphereAnswer.class,
            BandsAnswer.class,
            Sheet.class,
            WidthRequest.class,
            WidthSolution.class,
            InlayRequest.class,
            InlayAnswer.class,
            JigRequest.class,
            JigAnswer.class,
            PathRequest.class,
            PathAnswer.class,
            BodyAnswer.class,
            TurningRequest.class,
            TurningAnswer.class,
            BalanceRequest.class,
            BalanceAnswer.class,
            MovementRequest.class,
            MovementAnswer.class,
            SweepRequest.class,
            StockRequest.class,
            StockAnswer.class,
            CutsAnswer.class,
            PurchasesAnswer.class,
            AssemblyRequest.class,
            AssemblyAnswer.class,
            ToleranceRequest.class,
            ToleranceAnswer.class,
            DiagnosisRequest.class,
            DiagnosisAnswer.class,
            ShopSheetRequest.class,
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
        contract.getPaths()
                .getPathItems()
                .forEach((path, item) -> item.getOperations().values().forEach(operation -> complete(path, operation)));
    }

    private static void complete(String path, Operation operation) {
        APIResponse answer = operation.getResponses().getAPIResponse("200");
        answer.setDescription(operation.getSummary() + ".");
        FileContents.describe(answer.getContent());
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
            body.setDescription("The request.");
            body.setRequired(true);
            if (json(body.getContent()) != null) {
                Examples.addRequests(operation.getOperationId(), json(body.getContent()));
            }
        }
        // Clients take the first answer for the one to ask for, so the problems follow it.
        APIResponses answers = OASFactory.createAPIResponses().addAPIResponse("200", answer);
        ProblemAnswers.addTo(answers, path.contains("{"), body != null);
        operation.setResponses(answers);
        CellContract.complete(operation);
    }

    private static MediaType json(Content content) {
        return content.getMediaType(JSON);
    }
}
