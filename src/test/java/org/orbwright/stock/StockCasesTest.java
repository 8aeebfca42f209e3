package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Stocks;
import org.orbwright.stock.StockPlan.PlanProof;
import org.orbwright.stock.StockPlan.SpeciesStock;

/**
 * Trials with invented racks for which an independent prototype has plans, places of seams and clearance checked.
 * Source of the figures: that prototype.
 */
@DisplayName("plans of an independent prototype")
@Slow
class StockCasesTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private static SpeciesStock outcome(String file, String wood) {
        ObjectNode document = read(file);
        ObjectNode request = (ObjectNode) document.remove("stock");
        request.set("design", document);
        request.set("search", Stocks.read("{'work':4,'seconds':120}"));
        return Stocks.planned(file, request).plan().species().stream()
                .filter(one -> one.species().equals(wood))
                .findFirst()
                .orElseThrow();
    }

    private static ObjectNode read(String file) {
        try (InputStream in = StockCasesTest.class.getResourceAsStream("/cases/" + file + ".json")) {
            return (ObjectNode) JSON.readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest(name = "{0}: {1} of 30 strips of ash")
    @CsvSource({"stock-offcuts-alone, 10", "stock-long-board-alone, 25", "stock-both-boards, 28"})
    void boardsGiveAsManyStripsAsThePrototypeFinds(String file, int supplied) {
        SpeciesStock ash = outcome(file, "ash");
        assertAll(
                () -> assertEquals(30, ash.needed()),
                () -> assertEquals(supplied, ash.supplied()),
                () -> assertTrue(ash.fewestMissing()),
                () -> assertTrue(ash.proved()),
                () -> assertEquals(PlanProof.EVERY_PLAN, ash.proof()));
    }

    @Test
    void oneStripOfWalnutIsMissingWhereThreeWere() {
        SpeciesStock walnut = outcome("stock-fewest-missing", "black walnut");
        assertEquals(1, walnut.missing());
        assertTrue(walnut.fewestMissing());
    }
}
