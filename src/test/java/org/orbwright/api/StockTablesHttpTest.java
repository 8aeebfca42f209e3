package org.orbwright.api;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.api.wire.Problem;
import org.orbwright.fixture.Stocks;

/** Cut lists, shopping lists and pictures of boards over HTTP: by the header Accept, and with problems in words. */
@QuarkusTest
class StockTablesHttpTest {
    private static final String NAME = "=HYPERLINK(\"x\"), 6\" wide";
    private static final Pattern FRACTION =
            Pattern.compile("(?:(\\d+)(?= |$))? ?(?:(\\d+)/(\\d+))?( [+-] 0\\.\\d+)? in");

    /** Boards with a name that has everything a spreadsheet stumbles over, and one to buy. */
    private static ObjectNode stock() {
        ObjectNode stock = Stocks.oneWood(1);
        Stocks.boards(
                stock,
                "[{'species':'sugar maple','length':700,'width':90,'thickness':36,'count':2},"
                        + "{'species':'sugar maple','length':700,'width':100,'thickness':36,'price':1e-5}]");
        stock.withArray("boards").forEach(board -> ((ObjectNode) board).put("name", NAME));
        stock.withArray("offers")
                .addObject()
                .put("name", "+1 m")
                .put("species", "sugar maple")
                .put("length", 700)
                .put("width", 60)
                .put("thickness", 36)
                .put("price", 7.5)
                .put("most", 2);
        return stock;
    }

    private static RequestSpecification posted(ObjectNode stock) {
        return Contract.request()
                .contentType(ContentType.JSON)
                .body(Addresses.quick(Stocks.posted(stock)).toString());
    }

    /** The rows of a table; the STOPs of the JSON stand in as many lines before them. */
    private static List<List<String>> csv(String path, ObjectNode stock) {
        List<List<String>> lines = CsvReader.read(posted(stock)
                .accept("text/csv")
                .post(path)
                .then()
                .statusCode(200)
                .contentType(startsWith("text/csv"))
                .contentType(containsString("charset=UTF-8"))
                .extract()
                .asString());
        List<String> stops = new ArrayList<>();
        for (JsonNode finding : json(path, stock).path("findings")) {
            if (finding.path("severity").asText().equals("STOP")) {
                stops.add("STOP|" + finding.path("code").asText() + "|"
                        + finding.path("message").asText());
            }
        }
        List<List<String>> rows = lines.subList(stops.size(), lines.size());
        for (int i = 0; i < stops.size(); i++) {
            List<String> line = lines.get(i);
            assertEquals(stops.get(i), String.join("|", line.subList(0, 3)));
            assertEquals(Collections.nCopies(rows.get(0).size() - 3, ""), line.subList(3, line.size()));
        }
        return rows;
    }

    private static JsonNode json(String path, ObjectNode stock) {
        return Contract.json(posted(stock)
                .post(path)
                .then()
                .statusCode(200)
                .contentType(ContentType.JSON)
                .extract()
                .asString());
    }

    /** Every cell holds what the JSON holds at the name of its column, and a fraction what its length comes to. */
    private static void same(List<String> heading, List<String> row, JsonNode json) {
        assertEquals(heading.size(), row.size());
        for (int i = 0; i + 1 < heading.size(); i++) {
            if (heading.get(i).endsWith("Fraction")) {
                assertFraction(row.get(i - 1), row.get(i));
                continue;
            }
            JsonNode value = json.path(heading.get(i));
            String where = heading.get(i) + " of " + row;
            if (value.isNumber()) {
                assertEquals(0, new BigDecimal(value.asText()).compareTo(new BigDecimal(row.get(i))), where);
            } else if (value.isMissingNode()) {
                assertEquals("", row.get(i), where);
            } else {
                boolean formula = value.asText().matches("[=+@-].*");
                assertEquals((formula ? "'" : "") + value.asText(), row.get(i), where);
            }
        }
    }

    /** The fraction is read again: whole inches, sixty-fourths or less, and the rest to a thousandth. */
    private static void assertFraction(String decimal, String fraction) {
        if (decimal.isEmpty()) {
            assertEquals("", fraction);
            return;
        }
        Matcher parts = FRACTION.matcher(fraction);
        assertTrue(parts.matches(), fraction);
        double sum = parts.group(1) == null ? 0 : Double.parseDouble(parts.group(1));
        if (parts.group(2) != null) {
            assertTrue(64 % Integer.parseInt(parts.group(3)) == 0, fraction);
            sum += Double.parseDouble(parts.group(2)) / Double.parseDouble(parts.group(3));
        }
        if (parts.group(4) != null) {
            sum += Double.parseDouble(parts.group(4).replace(" ", ""));
        }
        assertEquals(Double.parseDouble(decimal), sum, 0.0005001, fraction);
    }

    @Test
    void theCutListIsTheSameAsJsonAndAsCsv() {
        List<List<String>> rows = csv("/v1/stock/cuts", stock());
        JsonNode cuts = json("/v1/stock/cuts", stock()).path("cuts");
        assertEquals(cuts.size() + 1, rows.size());
        assertEquals(
                "board,name,species,step,operation,section,lane,setting,position,part,length,width,thickness,label,left,"
                        + "waste,lamination,band,piece,unit",
                String.join(",", rows.get(0)));
        for (int i = 0; i < cuts.size(); i++) {
            same(rows.get(0), rows.get(i + 1), cuts.path(i));
            assertEquals("mm", rows.get(i + 1).get(rows.get(0).size() - 1));
        }
        assertEquals("'" + NAME, rows.get(1).get(1));
    }

    @Test
    void lengthsAreInTheUnitOfTheDesign() {
        ObjectNode stock = stock();
        List<List<String>> millimetres = csv("/v1/stock/cuts", stock);
        assertEquals("700", millimetres.get(1).get(10));
        ObjectNode inches = Stocks.example();
        inches.set("design", Posted.twoSpheres());
        Stocks.boards(inches, "[{'species':'black walnut','length':60.125,'width':6,'thickness':1.5}]");
        inches.remove(List.of("offers", "allowances", "seams"));
        List<List<String>> rows = csv("/v1/stock/cuts", inches);
        assertEquals(
                "board,name,species,step,operation,section,lane,setting,settingFraction,position,positionFraction,part,"
                        + "length,lengthFraction,width,widthFraction,thickness,thicknessFraction,label,left,"
                        + "leftFraction,waste,wasteFraction,lamination,band,piece,unit",
                String.join(",", rows.get(0)));
        assertEquals("60.125", rows.get(1).get(12));
        assertEquals("60 1/8 in", rows.get(1).get(13));
        assertEquals("in", rows.get(1).get(26));
        JsonNode cuts = json("/v1/stock/cuts", inches).path("cuts");
        for (int i = 0; i < cuts.size(); i++) {
            same(rows.get(0), rows.get(i + 1), cuts.path(i));
        }
    }

    @Test
    void theShoppingListHasPurchasesATotalAndWhatIsShort() {
        List<List<String>> rows = csv("/v1/stock/purchases", stock());
        JsonNode shopping = json("/v1/stock/purchases", stock()).path("purchases");
        List<String> heading = rows.get(0);
        assertEquals(
                "row,count,name,species,length,width,thickness,boardFeet,cubicMetres,costEach,cost,unit",
                String.join(",", heading));
        int purchases = shopping.path("purchases").size();
        assertEquals(1, purchases);
        ObjectNode purchase = (ObjectNode) shopping.at("/purchases/0");
        same(heading, rows.get(1), purchase.put("row", "PURCHASE").put("costEach", 7.5));
        assertEquals("'+1 m", rows.get(1).get(2));
        same(heading, rows.get(2), ((ObjectNode) shopping.path("total")).put("row", "TOTAL"));
        JsonNode missing = shopping.path("missing");
        assertFalse(missing.isEmpty());
        assertEquals(3 + missing.size(), rows.size());
        for (int i = 0; i < missing.size(); i++) {
            same(heading, rows.get(3 + i), ((ObjectNode) missing.path(i)).put("row", "MISSING"));
        }
    }

    /** 30.1 is 0.00625 more than 30 3/32. */
    @Test
    void theShoppingListHasFractionsBesideInches() {
        ObjectNode inches = Stocks.twoFaces("in", 25.6);
        inches.withArray("offers")
                .addObject()
                .put("species", "red alder")
                .put("length", 30.1)
                .put("width", 5.3125)
                .put("thickness", 1.5)
                .put("price", 7.5);
        inches.withArray("boards").remove(1);
        List<List<String>> rows = csv("/v1/stock/purchases", inches);
        assertEquals(
                "row,count,name,species,length,lengthFraction,width,widthFraction,thickness,thicknessFraction,"
                        + "boardFeet,cubicMetres,costEach,cost,unit",
                String.join(",", rows.get(0)));
        assertEquals(
                List.of("30.1", "30 3/32 + 0.006 in", "5.3125", "5 5/16 in", "1.5", "1 1/2 in"),
                rows.get(1).subList(4, 10));
        assertEquals(List.of("", "", "", "", "", ""), rows.get(2).subList(4, 10));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "*/*|application/json",
                "text/csv;q=0.4, application/json;q=0.9|application/json",
                "text/csv, application/json;q=0.9|text/csv",
                "text/html, text/csv;q=0.1|text/csv"
            })
    void theFormIsTheOneThatIsLikedBest(String accept, String answered) {
        for (String path : List.of("/v1/stock/cuts", "/v1/stock/purchases")) {
            posted(stock()).accept(accept).post(path).then().statusCode(200).contentType(startsWith(answered));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/v1/stock/cuts", "/v1/stock/purchases"})
    void problemsAreProblemsWhateverIsAccepted(String path) {
        Contract.badRequest()
                .contentType(ContentType.JSON)
                .accept("text/csv")
                .body("{\"unit\":\"mm\",\"solid\":\"cube\"}")
                .post(path)
                .then()
                .statusCode(400)
                .contentType(Problem.MEDIA_TYPE)
                .body("violations[0].path", equalTo("/size"));
        Contract.badRequest()
                .contentType(ContentType.JSON)
                .accept("image/png")
                .body(Addresses.quick(Stocks.posted(stock())).toString())
                .post(path)
                .then()
                .statusCode(406)
                .contentType(Problem.MEDIA_TYPE)
                .body("detail", equalTo(path + " answers with application/json or text/csv, not image/png."));
    }

    @Test
    void aBoardIsDrawnByItsNumber() throws IOException {
        String first = posted(stock())
                .post("/v1/drawings/board")
                .then()
                .statusCode(200)
                .contentType(startsWith("image/svg+xml"))
                .body(containsString("<title id=\"title\">Board 1 of "))
                .extract()
                .asString();
        assertEquals(
                first,
                posted(stock())
                        .queryParam("board", 1)
                        .post("/v1/drawings/board")
                        .asString());
        byte[] png = posted(stock())
                .accept("image/png")
                .queryParam("board", 2)
                .queryParam("width", 321)
                .post("/v1/drawings/board")
                .then()
                .statusCode(200)
                .contentType("image/png")
                .extract()
                .asByteArray();
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        assertEquals(321, image.getWidth());
        assertTrue(image.getHeight() > 200);
    }

    /** What no plan can have is refused before a plan is searched for, so that its bound is a wide one. */
    @ParameterizedTest
    @ValueSource(strings = {"0", "99", "two", "-1"})
    void aBoardBeyondThePlanIsRefusedWithThoseThatThereAre(String number) {
        int boards = number.equals("99")
                ? json("/v1/stock", stock()).at("/stock/boards").size()
                : 100_000;
        Contract.badRequest()
                .contentType(ContentType.JSON)
                .body(Addresses.quick(Stocks.posted(stock())).toString())
                .queryParam("board", number)
                .post("/v1/drawings/board")
                .then()
                .statusCode(400)
                .contentType(Problem.MEDIA_TYPE)
                .body("violations", hasSize(1))
                .body("violations[0].path", equalTo("board"))
                .body("violations[0].rejected", equalTo(number))
                .body("violations[0].allowed", equalTo("a whole number, 1 to " + boards));
    }

    @Test
    void aPlanWithoutABoardHasNothingToDraw() {
        ObjectNode stock = stock();
        stock.remove("offers");
        Stocks.boards(stock, "[]");
        Contract.badRequest()
                .contentType(ContentType.JSON)
                .body(Addresses.quick(Stocks.posted(stock)).toString())
                .post("/v1/drawings/board")
                .then()
                .statusCode(422)
                .body("violations[0].path", equalTo("/stock/boards"))
                .body("violations[0].code", equalTo("NO_BOARD_CUT"));
        assertEquals(1, csv("/v1/stock/cuts", stock).size());
    }
}
