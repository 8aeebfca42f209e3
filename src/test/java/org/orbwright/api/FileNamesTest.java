package org.orbwright.api;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What files are called (RFC 6266). */
@QuarkusTest
class FileNamesTest {
    private static final String PNG = "image/png";

    @ParameterizedTest
    @CsvSource({
        "drawings/panel, svg, inline, panel.svg",
        "drawings/panel?face=triangle, png, inline, panel triangle.png",
        "drawings/segment?face=triangle&segment=A&set=UPRIGHT, dxf, attachment, segment triangle A UPRIGHT.dxf",
        "drawings/board?board=1, svg, inline, board 1.svg",
        "bodies/solid, stl, attachment, solid.stl",
        "bodies/shell, 3mf, attachment, shell.3mf",
        "bodies/panel?species=red alder, obj, attachment, panel red alder.obj",
        "shop-sheet, pdf, inline, shop sheet.pdf",
        "shop-sheet, html, inline, shop sheet.html",
        "table/bands, csv, attachment, bands.csv",
        "table/bands/, xml, attachment, bands.xml",
    })
    void aFileIsNamedByTheDesignAndWhatItIs(String address, String format, String kind, String name) {
        Contract.request()
                .contentType(ContentType.JSON)
                .queryParam("format", format)
                .body(Posted.worked().toString())
                .post("/v1/" + address)
                .then()
                .statusCode(200)
                .header("Content-Disposition", equalTo(kind + "; filename=\"Tide lamp (invented) - " + name + "\""));
    }

    @ParameterizedTest
    @CsvSource({
        "stock/cuts, text/csv, attachment; filename=\"Tide lamp (invented) - cuts.csv\"",
        "turning/path, text/csv, attachment; filename=\"Tide lamp (invented) - path.csv\"",
        "turning/program, text/plain, attachment; filename=\"Tide lamp (invented) - program.nc\"",
        "bands/explore, text/csv, attachment; filename=\"Tide lamp (invented) - explore.csv\"",
    })
    void soIsAList(String address, String type, String header) {
        Contract.request()
                .contentType(ContentType.JSON)
                .accept(type)
                .body(Posted.worked().toString())
                .post("/v1/" + address)
                .then()
                .statusCode(200)
                .header("Content-Disposition", equalTo(header));
    }

    @Test
    void aDesignWithoutANameIsNamedByItsSolid() {
        ObjectNode design = Posted.worked();
        design.remove("name");
        Contract.request()
                .contentType(ContentType.JSON)
                .body(design.toString())
                .post("/v1/drawings/sphere")
                .then()
                .header("Content-Disposition", equalTo("inline; filename=\"icosahedron - sphere.svg\""));
    }

    @ParameterizedTest
    @CsvSource({"/v1/sheet, 17.0, 200", "/v1/drawings/panel, 47.0, 422"})
    void whatIsNoFileHasNoName(String address, String width, int status) {
        Contract.request()
                .contentType(ContentType.JSON)
                .body(Posted.worked().toString().replace("17.0", width))
                .post(address)
                .then()
                .statusCode(status)
                .header("Content-Disposition", nullValue());
    }

    /** RFC 6266, 4.3: the encoded name goes before the plain one where a browser knows both. */
    @Test
    void otherLettersAreEncodedBesideAPlainName() {
        assertEquals(
                "inline; filename=\"Kugel fur Zoe _ - panel.png\";"
                        + " filename*=UTF-8''Kugel%20f%C3%BCr%20Zo%C3%AB%20%E7%90%83%20-%20panel.png",
                FileNames.header("Kugel f\u00fcr Zo\u00eb \u7403", "panel", PNG));
    }

    @Test
    void nothingInANameEndsItOrLeadsElsewhere() {
        assertEquals(
                "inline; filename=\"etc a b c d - panel.png\"",
                FileNames.header("../etc\\a\"b\r\nc;\u202ed", "panel", PNG));
        String longest = FileNames.header("\ud83c\udf32".repeat(120), "panel", PNG);
        assertTrue(longest.contains("%F0%9F%8C%B2".repeat(80) + "%20"));
        assertFalse(longest.contains("%3F"));
    }
}
