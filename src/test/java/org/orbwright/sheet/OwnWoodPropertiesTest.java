package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.List;
import java.util.function.Function;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.document.Document;
import org.orbwright.document.Section;
import org.orbwright.fixture.DesignArbitraries;
import org.orbwright.fixture.Designs;
import org.orbwright.movement.Movements;
import org.orbwright.sheet.AnswerNumbers.Value;
import org.orbwright.source.Source;
import org.orbwright.turning.TurningRequest;
import org.orbwright.turning.TurningRequest.SpeedRequest;
import org.orbwright.wood.WoodRequest;
import org.orbwright.wood.WoodSpecies;
import org.orbwright.wood.WoodTable;

/** A wood of the document that is like a wood of the table gives the answers of that. */
@Source(INVARIANT)
class OwnWoodPropertiesTest {
    private static final String OWN = "own ";
    private static final List<String> TABLE = List.of("black walnut", "sugar maple", "black cherry");

    @Provide
    Arbitrary<Designs> designs() {
        return DesignArbitraries.designs();
    }

    private static WoodRequest likeTheTable(String name) {
        WoodSpecies wood = WoodTable.all().stream()
                .filter(known -> known.name().equals(name))
                .findFirst()
                .orElseThrow();
        return new WoodRequest(
                OWN + name,
                wood.radialCoefficient().orElseThrow(),
                wood.tangentialCoefficient().orElseThrow(),
                wood.density().orElseThrow());
    }

    private static Designs ofOwnWoods(Designs design) {
        return design.laminations(design.laminations().stream()
                        .map(lamination -> lamination.withBands(lamination.bands().stream()
                                .map(band -> new BandRequest(OWN + band.species(), band.width()))
                                .toList()))
                        .toList())
                .woods(TABLE.stream().map(OwnWoodPropertiesTest::likeTheTable).toArray(WoodRequest[]::new));
    }

    private static Document document(Designs design) {
        SpeedRequest speed = new SpeedRequest(300.0, 2.0, null);
        TurningRequest turning = new TurningRequest(null, null, null, null, speed, null, null);
        return Movements.of(design).moisture(11, 4, 10).document().with(Section.TURNING, turning);
    }

    private static void assertAlike(Designs design, Function<Answer, Record> part, Function<Document, Answer> address) {
        List<Value> table = AnswerNumbers.of(part.apply(address.apply(document(design))));
        List<Value> own = AnswerNumbers.of(part.apply(address.apply(document(ofOwnWoods(design)))));
        assertEquals(table.size(), own.size());
        for (int i = 0; i < table.size(); i++) {
            Object one = table.get(i).value();
            Object other = own.get(i).value();
            if (one instanceof Double number) {
                assertEquals(
                        number,
                        (Double) other,
                        1e-12 * Math.abs(number),
                        table.get(i).path());
            } else if (one instanceof String name && TABLE.contains(name)) {
                assertEquals(OWN + name, other, table.get(i).path());
            } else {
                assertEquals(one, other, table.get(i).path());
            }
        }
    }

    @Property(tries = 30, edgeCases = EdgeCasesMode.NONE)
    void movement(@ForAll("designs") Designs design) {
        assertAlike(design, Answer::movement, SheetCalculator::movement);
    }

    @Property(tries = 30, edgeCases = EdgeCasesMode.NONE)
    void massesOfTheYield(@ForAll("designs") Designs design) {
        assertAlike(design, Answer::yield, SheetCalculator::yields);
    }

    @Property(tries = 20, edgeCases = EdgeCasesMode.NONE)
    void speedsOfTheTurning(@ForAll("designs") Designs design) {
        assertAlike(design, answer -> answer.turning().speeds(), SheetCalculator::turning);
    }

    @Property(tries = 20, edgeCases = EdgeCasesMode.NONE)
    void massesOfTheBalance(@ForAll("designs") Designs design) {
        assertAlike(design, answer -> answer.balance().solid(), SheetCalculator::balance);
    }
}
