package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertThrows;

import com.atlassian.oai.validator.restassured.OpenApiValidationFilter.OpenApiValidationException;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.builder.ResponseBuilder;
import io.restassured.filter.Filter;
import io.restassured.http.ContentType;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The check of answers against the contract is awake: each of these tampered answers is caught. */
@QuarkusTest
class WrongAnswerTest {

    @ParameterizedTest(name = "{0} changed to {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "\"bevel\":      | \"bevle\":",
                "\"bevel\":      | \"bevel\":-",
                "\"bevel\":5     | \"bevel\":95",
                "\"sides\":5     | \"sides\":5.5",
                "\"unit\":\"in\" | \"unit\":\"inch\"",
                "\"sides\":      | \"surplus\":1,\"sides\":"
            })
    void tamperedAnswer(String what, String with) {
        String design = Posted.twoSpheres().toString();
        assertThrows(
                OpenApiValidationException.class,
                () -> Contract.request()
                        .filter(tampering(what, with))
                        .contentType(ContentType.JSON)
                        .body(design)
                        .post("/v1/angles"));
    }

    private static Filter tampering(String what, String with) {
        return (request, answer, chain) -> {
            var real = chain.next(request, answer);
            return new ResponseBuilder()
                    .clone(real)
                    .setBody(real.asString().replaceFirst(what, with))
                    .build();
        };
    }
}
