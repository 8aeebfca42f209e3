package org.orbwright.api;

import static io.restassured.RestAssured.given;

import com.atlassian.oai.validator.OpenApiInteractionValidator;
import com.atlassian.oai.validator.report.LevelResolver;
import com.atlassian.oai.validator.report.ValidationReport;
import com.atlassian.oai.validator.restassured.OpenApiValidationFilter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.io.UncheckedIOException;

/** The contract as the running service publishes it, and requests whose every answer is checked against it. */
final class Contract {
    static final ObjectMapper JSON = new ObjectMapper();

    private static final String TEXT = given().get("/q/openapi?format=json").asString();
    private static final OpenApiValidationFilter STRICT = new OpenApiValidationFilter(
            OpenApiInteractionValidator.createForInlineApiSpecification(TEXT).build());
    private static final OpenApiValidationFilter ANSWERS_ONLY =
            new OpenApiValidationFilter(OpenApiInteractionValidator.createForInlineApiSpecification(TEXT)
                    .withLevelResolver(LevelResolver.create()
                            .withLevel("validation.request", ValidationReport.Level.IGNORE)
                            .build())
                    .build());

    private Contract() {}

    /** The contract itself. */
    static JsonNode document() {
        return json(TEXT);
    }

    /** A request that keeps to the contract, to an answer that does. */
    static RequestSpecification request() {
        return given().filter(STRICT);
    }

    /** A request that breaks the contract on purpose, to an answer that still keeps to it. */
    static RequestSpecification badRequest() {
        return given().filter(ANSWERS_ONLY);
    }

    static JsonNode json(String text) {
        try {
            return JSON.readTree(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
