package org.orbwright.api.contract;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.media.Content;
import org.eclipse.microprofile.openapi.models.media.MediaType;
import org.eclipse.microprofile.openapi.models.parameters.RequestBody;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.eclipse.microprofile.openapi.models.responses.APIResponses;
import org.jboss.jandex.IndexView;
import org.jboss.jandex.Type;
import org.orbwright.api.guard.Kept;
import org.orbwright.api.query.Format;
import org.orbwright.api.query.Stations;
import org.orbwright.api.wire.Problem;
import org.orbwright.quantity.Describe;
import org.orbwright.sheet.Caution;
import org.orbwright.sheet.Caution.Step;

/**
 * Completes the contract that is scanned from the resources: schemas from the records' descriptions, the problems that
 * each operation may answer with, and worked examples. It runs while the service is built.
 */
@OpenApiFilter(OpenApiFilter.RunStage.BUILD)
public class ContractFilter implements OASFilter {
    private static final String JSON = jakarta.ws.rs.core.MediaType.APPLICATION_JSON;

    private final IndexView classes;

    /** A filter of the contract of these classes. */
    public ContractFilter(IndexView classes) {
        this.classes = classes;
    }

    @Override
    public void filterOpenAPI(OpenAPI contract) {
        if (contract.getComponents() == null) {
            // Nothing was scanned: the service hands out the committed contract.
            return;
        }
        contract.getComponents().setSchemas(ContractSchemas.of(records()));
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

    private void complete(String path, Operation operation) {
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
            FileContents.nameFiles(answer);
            body.setDescription("The document.");
            body.setRequired(true);
            if (json(body.getContent()) != null) {
                Examples.addDesigns(json(body.getContent()));
            } else {
                // An annotation's example would become an object, which pages print over several lines.
                body.getContent().getMediaType(Format.NDJSON_TYPE).setExample(Examples.LINE);
            }
        }
        // Clients take the first answer for the one to ask for, so the problems follow it.
        APIResponses answers = OASFactory.createAPIResponses().addAPIResponse("200", answer);
        ProblemAnswers.addTo(answers, path.contains("{"), body != null);
        operation.setResponses(answers);
        CellContract.complete(operation);
        if (isKept(operation)) {
            CellContract.addKept(operation);
        }
    }

    /** The described records that resources take and answer, and the one that tells what is wrong. */
    private List<Class<?>> records() {
        Stream<Type> types = Stream.of(GET.class, POST.class)
                .flatMap(method -> classes.getAnnotations(method).stream())
                .map(found -> found.target().asMethod())
                .flatMap(method -> Stream.concat(Stream.of(method.returnType()), method.parameterTypes().stream()));
        return Stream.concat(types.map(type -> type.name().toString()), Stream.of(Problem.class.getName()))
                .distinct()
                .sorted()
                .<Class<?>>map(ContractFilter::load)
                .filter(type -> type.isAnnotationPresent(Describe.class))
                .toList();
    }

    private static Class<?> load(String name) {
        try {
            return name.contains(".") ? Class.forName(name) : void.class;
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Whether caches may keep what the operation answers. */
    private boolean isKept(Operation operation) {
        return classes.getAnnotations(org.eclipse.microprofile.openapi.annotations.Operation.class).stream()
                .filter(found -> found.value("operationId") != null)
                .filter(found -> found.value("operationId").asString().equals(operation.getOperationId()))
                .map(found -> found.target().asMethod())
                .anyMatch(method -> method.hasAnnotation(GET.class)
                        && method.declaringClass().hasDeclaredAnnotation(Kept.class));
    }

    /** Files for a router, a laser or a printer have no place for cautions, so their addresses have them. */
    private static void warn(Operation operation, Content content) {
        if (content.hasMediaType(Format.DXF_TYPE) || content.hasMediaType(Format.STL_TYPE)) {
            String cautions =
                    Step.OUTLINES.cautions().stream().map(Caution::text).collect(Collectors.joining(" "));
            operation.setDescription(operation.getDescription() + " Cautions: " + cautions);
        }
    }

    private static MediaType json(Content content) {
        return content.getMediaType(JSON);
    }
}
