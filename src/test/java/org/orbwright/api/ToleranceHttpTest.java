package org.orbwright.api;

import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.api.wire.Problem;

/** Tolerances and diagnoses through HTTP and the contract. */
@QuarkusTest
class ToleranceHttpTest {
    private static ObjectNode tolerance() {
        ObjectNode request = Posted.only(Posted.lantern(), "tolerance");
        section(request).put("samples", 2000);
        return request;
    }

    private static ObjectNode section(ObjectNode request) {
        return (ObjectNode) request.path("tolerance");
    }

    private static ObjectNode diagnosis() {
        return Posted.only(Posted.lantern(), "diagnosis");
    }

    private static ObjectNode errors(String json) {
        ObjectNode request = tolerance();
        section(request).set("errors", Contract.json(json));
        return request;
    }

    private static ObjectNode only(String part) {
        ObjectNode request = diagnosis();
        ((ObjectNode) request.path("diagnosis")).retain(part);
        return request;
    }

    private static ValidatableResponse answered(String address, JsonNode request) {
        return Contract.request()
                .contentType(ContentType.JSON)
                .body(request.toString())
                .post(address)
                .then()
                .statusCode(200);
    }

    private static ValidatableResponse refused(
            String address, JsonNode request, int status, String path, String code, String rejected) {
        return Contract.badRequest()
                .contentType(ContentType.JSON)
                .body(request.toString())
                .post(address)
                .then()
                .statusCode(status)
                .contentType(Problem.MEDIA_TYPE)
                .body("violations", hasSize(1))
                .body("violations[0].path", equalTo(path))
                .body("violations[0].code", equalTo(code))
                .body("violations[0].rejected", equalTo(rejected));
    }

    @Nested
    class Tolerances {
        @Test
        void segmentsTooSmallAreStopped() {
            answered("/v1/tolerance", errors("{\"tipAngle\":{\"setting\":-0.1}}"))
                    .body("tolerance.panels[0].angleSum", equalTo(-0.5f))
                    .body("tolerance.panels[0].gap", equalTo(0.566f))
                    .body("tolerance.panels[0].opensAt", equalTo("RIM"))
                    .body("tolerance.seams[0]", not(hasKey("opensAt")))
                    .body("tolerance.simulation.allBridged", equalTo(0))
                    .body("findings.code", equalTo(List.of("GAP_BEYOND_GLUE", "GAPS_LIKELY")))
                    .body("findings[0].severity", equalTo("STOP"))
                    .body("findings[0].field", equalTo("/tolerance/errors/tipAngle/setting"))
                    .body("findings[0].message", containsString("to within 0.0176 degrees"));
        }

        @Test
        void bevelsTooLargeAreStopped() {
            answered("/v1/tolerance", errors("{\"bevel\":{\"setting\":0.2}}"))
                    .body("tolerance.seams[0].opensAt", equalTo("OUTSIDE"))
                    .body("findings.code", equalTo(List.of("GAP_BEYOND_GLUE", "GAPS_LIKELY")))
                    .body("findings[0].field", equalTo("/tolerance/errors/bevel/setting"));
        }

        @Test
        void aLimitThatWasAnsweredGivesNoFinding() {
            ValidatableResponse limits = answered("/v1/tolerance", errors("{}")).body("findings", empty());
            float tip = limits.extract().path("tolerance.limits.tipAngle");
            float bevel = limits.extract().path("tolerance.limits.bevel");
            answered("/v1/tolerance", errors("{\"tipAngle\":{\"setting\":" + tip + "}}"))
                    .body("findings.code", not(hasItem("GAP_BEYOND_GLUE")));
            answered("/v1/tolerance", errors("{\"bevel\":{\"setting\":" + -bevel + "}}"))
                    .body("findings.code", not(hasItem("GAP_BEYOND_GLUE")));
            answered("/v1/tolerance", errors("{\"bevel\":{\"setting\":" + -(bevel + 0.0003f) + "}}"))
                    .body("findings.code", hasItem("GAP_BEYOND_GLUE"));
        }

        @Test
        void aNarrowBlankLeavesAHole() {
            answered("/v1/tolerance", errors("{\"blankWidth\":{\"setting\":-0.11}}"))
                    .body("findings.code", equalTo(List.of("TIPS_BLUNT")));
            answered("/v1/tolerance", errors("{\"blankWidth\":{\"setting\":-0.09}}"))
                    .body("findings", empty());
        }

        @Test
        void theSameSeedGivesTheSameAnswer() {
            String first = answered("/v1/tolerance", tolerance()).extract().asString();
            assertEquals(first, answered("/v1/tolerance", tolerance()).extract().asString());
        }

        @Test
        void whatIsLeftOutHasItsDefault() {
            ObjectNode request = tolerance();
            section(request).retain("errors");
            answered("/v1/tolerance", request)
                    .body("tolerance.glueBridges", equalTo(0.1f))
                    .body("tolerance.simulation.samples", equalTo(100_000))
                    .body("tolerance.simulation.seed", equalTo(1));
        }

        @Test
        void inchesAndMillimetresAgree() {
            ObjectNode request =
                    errors("{\"tipAngle\":{\"setting\":-0.05,\"scatter\":0.01},\"stop\":{\"setting\":0.01}}");
            answered("/v1/tolerance", Posted.with(Posted.twoSpheres(), "tolerance", request))
                    .body("tolerance.glueBridges", equalTo(0.1f))
                    .body("tolerance.panels[0].baseDistance.contributions[0].shift", equalTo(0.00688f));
        }

        /** As much as may be asked for: a million of the largest solids. */
        @Test
        void aMillionOfTheLargestSolidsAreAnsweredInTime() {
            ObjectNode request = tolerance();
            section(request).put("samples", 1_000_000);
            ObjectNode largest = Posted.with(Posted.fixture("truncated-icosidodecahedron"), "tolerance", request);
            assertTimeout(
                    Duration.ofSeconds(30),
                    () -> answered("/v1/tolerance", largest).body("tolerance.seams.count.sum()", equalTo(180)));
        }

        @ParameterizedTest
        @CsvSource({
            "samples, 99, /tolerance/samples",
            "samples, 1000001, /tolerance/samples",
            "seed, -1, /tolerance/seed",
            "glueBridges, -0.1, /tolerance/glueBridges",
            "glueBridges, 101, /tolerance/glueBridges"
        })
        void boundsOfTheContract(String field, String value, String path) {
            ObjectNode request = tolerance();
            section(request).set(field, Contract.json(value));
            refused("/v1/tolerance", request, 400, path, "OUT_OF_RANGE", value);
        }

        @Test
        void anOptionalObjectIsLeftOutAndNotNull() {
            refused("/v1/tolerance", errors("{\"stop\":null}"), 400, "/tolerance/errors/stop", "WRONG_TYPE", "null");
        }

        @Test
        void wrongErrors() {
            refused(
                    "/v1/tolerance",
                    errors("{\"tipAngle\":{\"scatter\":-1}}"),
                    400,
                    "/tolerance/errors/tipAngle/scatter",
                    "OUT_OF_RANGE",
                    "-1");
            refused("/v1/tolerance", errors("{\"tilt\":{}}"), 400, "/tolerance/errors/tilt", "UNKNOWN_FIELD", "tilt");
            refused("/v1/tolerance", errors("null"), 400, "/tolerance/errors", "WRONG_TYPE", "null");
            refused("/v1/tolerance", errors("{\"stop\":0.1}"), 400, "/tolerance/errors/stop", "WRONG_TYPE", "0.1");
        }

        @Test
        void anErrorAsLargeAsWhatIsCut() {
            refused(
                            "/v1/tolerance",
                            errors("{\"panelThickness\":{\"setting\":-24,\"scatter\":1}}"),
                            422,
                            "/tolerance/errors/panelThickness",
                            "ERROR_TOO_LARGE",
                            "-24 with a scatter of 1")
                    .body("violations[0].allowed", containsString("less than 28 mm"));
        }
    }

    @Nested
    class Diagnoses {
        @Test
        void everyPartIsAnswered() {
            answered("/v1/diagnosis", diagnosis())
                    .body("diagnosis", hasKey("panel"))
                    .body("diagnosis", hasKey("seam"))
                    .body("diagnosis", hasKey("acrossFlats"))
                    .body("diagnosis", hasKey("faceDistances"))
                    .body("diagnosis", hasKey("tilt"))
                    .body("diagnosis.comparisons.agree", equalTo(List.of(true, true, true, true)))
                    .body("findings", empty());
        }

        @ParameterizedTest
        @CsvSource({"panel, 1", "seam, 2", "acrossFlats, 1", "faceDistances, 1", "tilt, 1"})
        void eachPartStandsAlone(String part, int parts) {
            // The panels of a trio are compared among themselves.
            answered("/v1/diagnosis", only(part))
                    .body("diagnosis", hasKey(part))
                    .body("diagnosis.size()", equalTo(parts));
        }

        @Test
        void theCorrectionOfATestPanelIsSetOnBothLegs() {
            answered("/v1/diagnosis", only("panel"))
                    .body("diagnosis.panel.tipAngleError.value", equalTo(-0.0627f))
                    .body("diagnosis.panel.mitreGaugeChange.value.toDouble()", closeTo(0.0627 / 2, 1e-4));
        }

        @Test
        void readingsThatSayNothingAreNoted() {
            ObjectNode request = only("panel");
            ((ObjectNode) request.at("/diagnosis/panel/gap")).put("value", 0.01);
            answered("/v1/diagnosis", request)
                    .body("findings.code", equalTo(List.of("BELOW_RESOLUTION")))
                    .body("findings.field", equalTo(List.of("/diagnosis/panel")));
        }

        @Test
        void aShellThatIsTooSmallIsWarnedOf() {
            ObjectNode request = only("acrossFlats");
            ((ObjectNode) request.at("/diagnosis/acrossFlats/2")).put("value", 171.5);
            answered("/v1/diagnosis", request)
                    .body("findings.code", hasItems("SPHERE_BEYOND_SHELL"))
                    .body("findings[0].message", containsString("171.5 mm"));
            ((ObjectNode) request.at("/diagnosis/acrossFlats/2")).put("value", 172);
            answered("/v1/diagnosis", request).body("findings", empty());
        }

        @Test
        void nothingMeasured() {
            refused("/v1/diagnosis", only("nothing"), 422, "/diagnosis", "NOTHING_MEASURED", null)
                    .body(
                            "violations[0].allowed",
                            equalTo("at least one of panel, seam, acrossFlats, faceDistances, tilt, dialIn"));
        }

        @Test
        void wrongReadings() {
            ObjectNode request = only("panel");
            ((ObjectNode) request.at("/diagnosis/panel/gap")).put("resolution", 0);
            refused("/v1/diagnosis", request, 400, "/diagnosis/panel/gap/resolution", "OUT_OF_RANGE", "0");
            ObjectNode side = only("panel");
            ((ObjectNode) side.at("/diagnosis/panel")).put("opensAt", "INSIDE");
            refused("/v1/diagnosis", side, 400, "/diagnosis/panel/opensAt", "UNKNOWN_VALUE", "INSIDE");
            ObjectNode few = only("faceDistances");
            ArrayNode faces = (ArrayNode) few.at("/diagnosis/faceDistances/faces");
            while (faces.size() > 3) {
                faces.remove(3);
            }
            refused("/v1/diagnosis", few, 400, "/diagnosis/faceDistances/faces", "WRONG_LENGTH", null);
        }

        @Test
        void absurdReadings() {
            ObjectNode request = only("panel");
            ((ObjectNode) request.at("/diagnosis/panel/gap")).put("value", 100_000);
            refused("/v1/diagnosis", request, 422, "/diagnosis/panel/gap/value", "GAP_TOO_LARGE", "100000");
            ObjectNode far = only("acrossFlats");
            ((ObjectNode) far.at("/diagnosis/acrossFlats/0")).put("value", 0);
            refused("/v1/diagnosis", far, 422, "/diagnosis/acrossFlats/0/value", "MEASURE_FAR_OFF", "0");
            ObjectNode unknown = only("faceDistances");
            ((ObjectNode) unknown.at("/diagnosis/faceDistances/faces/0")).put("face", 13);
            refused("/v1/diagnosis", unknown, 422, "/diagnosis/faceDistances/faces/0/face", "UNKNOWN_FACE", "13");
        }
    }
}
