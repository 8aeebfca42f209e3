package org.orbwright.api;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.api.wire.Problem;

/** The table of woods and the movement of a design through HTTP and the contract. */
@QuarkusTest
class WoodsHttpTest {
    private static ObjectNode example() {
        return Posted.only(Posted.lantern(), "movement");
    }

    private static ValidatableResponse answered(JsonNode request) {
        return Contract.request()
                .contentType(ContentType.JSON)
                .body(request.toString())
                .post("/v1/movement")
                .then()
                .statusCode(200);
    }

    private static void refused(JsonNode request, int status, String path, String code) {
        Contract.badRequest()
                .contentType(ContentType.JSON)
                .body(request.toString())
                .post("/v1/movement")
                .then()
                .statusCode(status)
                .contentType(Problem.MEDIA_TYPE)
                .body("violations", hasSize(1))
                .body("violations[0].path", equalTo(path))
                .body("violations[0].code", equalTo(code));
    }

    @Nested
    class Table {
        @Test
        void worksAreNamedInFullAtTheHead() {
            Contract.request()
                    .get("/v1/woods")
                    .then()
                    .statusCode(200)
                    .body("sources.woodHandbook", containsString("Table 13-5"))
                    .body("sources.forestInventory", containsString("NRS-38"))
                    .body("woods", hasSize(87))
                    .body("woods[0]", not(hasKey("mayAlsoMean")))
                    .body("woods.find { it.species == 'wenge' }", not(hasKey("specificGravity")))
                    .body("woods.find { it.species == 'wenge' }", not(hasKey("specificGravitySource")))
                    .body("woods.find { it.species == 'wenge' }", not(hasKey("density")));
        }

        @ParameterizedTest
        @CsvSource({
            "black walnut, black walnut",
            "EUROPEAN ASH, European ash",
            "HARD MAPLE, sugar maple",
            "red oak, red oak (commercial)",
            "red oak (commercial), red oak (commercial)"
        })
        void aWoodIsFoundByItsNamesWhateverTheirCase(String asked, String species) {
            Contract.request()
                    .get("/v1/woods/{species}", asked)
                    .then()
                    .statusCode(200)
                    .body("species", equalTo(species));
        }

        @Test
        void everyValueNamesItsSource() {
            Contract.request()
                    .get("/v1/woods/{species}", "Black Walnut")
                    .then()
                    .statusCode(200)
                    .body("coefficientsSource", equalTo("FPL-GTR-190 Table 13-5"))
                    .body("specificGravitySource", equalTo("USDA FIA REF_SPECIES WOOD_SPGR_MC12VOL_DRYWT"))
                    .body("$", not(hasKey("mayAlsoMean")));
        }

        @Test
        void aNameOfSeveralWoodsSaysWhatElseItMayMean() {
            Contract.request()
                    .get("/v1/woods/{species}", "walnut")
                    .then()
                    .statusCode(200)
                    .body("species", equalTo("European walnut"))
                    .body("mayAlsoMean", equalTo(List.of("black walnut")));
        }

        @Test
        void anUnknownWoodIsToldSimilarOnes() {
            Contract.badRequest()
                    .get("/v1/woods/{species}", "curly mapel")
                    .then()
                    .statusCode(404)
                    .body("type", equalTo("/problems/unknown-wood"))
                    .body("violations[0].path", equalTo("species"))
                    .body("violations[0].rejected", equalTo("curly mapel"))
                    .body("violations[0].allowed", containsString("sugar maple"));
        }

        @Test
        void aWoodLikeNoneIsToldWhereTheNamesAre() {
            Contract.badRequest()
                    .get("/v1/woods/zebrano")
                    .then()
                    .statusCode(404)
                    .body(
                            "detail",
                            equalTo("There is no wood named \"zebrano\" in the table. The names are listed at"
                                    + " /v1/woods."));
        }
    }

    @Nested
    class Answers {
        @Test
        void degreesCelsiusStayInInches() {
            ObjectNode request = Posted.with(Posted.twoSpheres(), "movement", example());
            String moisture = "movement.moisture.driest";
            answered(request)
                    .body(moisture, equalTo(answered(example()).extract().<Float>path(moisture)))
                    .body("movement.laminations[0].bands[0].thickness", equalTo(1.1f));
        }

        @Test
        void findingsPointIntoTheDocument() {
            answered(example())
                    .body("findings.code", hasItem("STOCK_MOISTURE_FAR"))
                    .body("findings.field", hasItem("/movement/stock"))
                    .body("findings.field", hasItem("/laminations/0/bands/1/species"));
        }

        @Test
        void grainMayBeLeftOut() {
            ObjectNode request = example();
            ((ObjectNode) request.path("movement")).remove("grain");
            answered(request).body("movement.laminations[0].bands.ringAngle", equalTo(List.of(0, 0, 0, 0, 0)));
        }
    }

    @Nested
    class OfTheDocument {
        private ObjectNode with(String woods) {
            ObjectNode request = example();
            request.set("woods", Contract.json(woods));
            return request;
        }

        @Test
        void movementMassesAndTheDocumentFollowThem() {
            ObjectNode request = with("[{\"name\":\"Plum\",\"radialCoefficient\":0.0018,"
                    + "\"tangentialCoefficient\":0.0035,\"density\":720}]");
            ((ObjectNode) request.at("/laminations/0/bands/1")).put("species", "plum");
            answered(request)
                    .body("movement.laminations[0].bands[1].ringAngle", equalTo(90))
                    .body("movement.laminations[0].bands[1].widthCoefficient", equalTo(0.0018f))
                    .body("movement.laminations[0].bands[1].thicknessCoefficient", equalTo(0.0035f))
                    .body("movement.species.find { it.species == 'plum' }.solidsAtStock", greaterThan(0f))
                    .body("document.woods", hasSize(1))
                    .body("document.woods[0].name", equalTo("Plum"))
                    .body("findings.code", not(hasItem("MOVEMENT_UNKNOWN")))
                    .body("findings.code", not(hasItem("OWN_WOOD")));
        }

        @Test
        void overrulingTheTableIsTold() {
            answered(with("[{\"name\":\"sugar maple\",\"tangentialCoefficient\":0.004}]"))
                    .body("movement.laminations[0].bands[1].species", equalTo("sugar maple"))
                    .body("findings.find { it.code == 'OWN_WOOD' }.field", equalTo("/woods/0"));
        }

        @Test
        void rulesAreTold() {
            refused(with("[{\"name\":\"plum\"}]"), 422, "/woods/0", "WOOD_WITHOUT_NUMBERS");
            refused(
                    with("[{\"name\":\"plum\",\"density\":700},{\"name\":\"PLUM\",\"density\":720}]"),
                    422,
                    "/woods/1/name",
                    "WOOD_TWICE");
            refused(with("[{\"density\":700}]"), 400, "/woods/0/name", "MISSING");
            refused(
                    with("[{\"name\":\"plum\",\"tangentialCoefficient\":0.35}]"),
                    400,
                    "/woods/0/tangentialCoefficient",
                    "OUT_OF_RANGE");
            refused(with("[{\"name\":\"plum\",\"density\":0.72}]"), 400, "/woods/0/density", "OUT_OF_RANGE");
        }

        @Test
        void noMoreThanSixtyMayBeStated() {
            String woods = IntStream.range(0, 61)
                    .mapToObj(i -> "{\"name\":\"wood " + i + "\",\"density\":700}")
                    .collect(Collectors.joining(",", "[", "]"));
            refused(with(woods), 400, "/woods", "WRONG_LENGTH");
        }
    }

    @Nested
    class Refusals {
        private ObjectNode with(String field, String json) {
            ObjectNode request = example();
            int slash = field.indexOf('/');
            ObjectNode movement = (ObjectNode) request.path("movement");
            ObjectNode parent = slash < 0 ? movement : (ObjectNode) movement.path(field.substring(0, slash));
            parent.set(field.substring(slash + 1), Contract.json(json));
            return request;
        }

        @Test
        void bothAirAndMoistureContent() {
            refused(
                    with("stock", "{\"temperature\":20,\"relativeHumidity\":50,\"moistureContent\":9}"),
                    422,
                    "/movement/stock/moistureContent",
                    "CONFLICTING_MOISTURE");
        }

        @Test
        void neitherAirNorMoistureContent() {
            refused(with("home/dampest", "{}"), 422, "/movement/home/dampest", "MOISTURE_MISSING");
        }

        @Test
        void airWithoutHumidity() {
            refused(
                    with("home/driest", "{\"temperature\":20}"),
                    422,
                    "/movement/home/driest/relativeHumidity",
                    "MOISTURE_MISSING");
        }

        @Test
        void driestSeasonDamperThanTheDampest() {
            refused(with("home/driest", "{\"moistureContent\":13}"), 422, "/movement/home/driest", "SEASONS_REVERSED");
        }

        @Test
        void unknownBand() {
            refused(with("grain", "[{\"band\":6}]"), 422, "/movement/grain/0/band", "UNKNOWN_BAND");
        }

        @Test
        void orientationAndRingAngle() {
            refused(
                    with("grain", "[{\"band\":1,\"orientation\":\"RIFT_SAWN\",\"ringAngle\":45}]"),
                    422,
                    "/movement/grain/0/ringAngle",
                    "CONFLICTING_GRAIN");
        }

        @Test
        void rulesOfTheContract() {
            refused(with("grain", "[{\"band\":0}]"), 400, "/movement/grain/0/band", "OUT_OF_RANGE");
            refused(
                    with("grain", "[{\"band\":1,\"orientation\":\"PLAIN\"}]"),
                    400,
                    "/movement/grain/0/orientation",
                    "UNKNOWN_VALUE");
            refused(with("stock", "{\"moistureContent\":251}"), 400, "/movement/stock/moistureContent", "OUT_OF_RANGE");
            refused(with("home/dampest", "null"), 400, "/movement/home/dampest", "MISSING");
        }

        @Test
        void boundsAreSaidWithTheirUnit() {
            Contract.badRequest()
                    .contentType(ContentType.JSON)
                    .body(with("stock", "{\"temperature\":300,\"relativeHumidity\":99}")
                            .toString())
                    .post("/v1/movement")
                    .then()
                    .statusCode(400)
                    .body("violations", hasSize(2))
                    .body("violations[0].allowed", equalTo("0 to 98 in percent"))
                    .body("violations[1].allowed", equalTo("-1.1 to 100 in degrees Celsius"));
        }
    }
}
