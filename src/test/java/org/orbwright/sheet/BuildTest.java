package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.INVARIANT;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.SizeRequest;
import org.orbwright.design.SizeBy;
import org.orbwright.document.Document;
import org.orbwright.document.Section;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Stocks;
import org.orbwright.movement.MovementRequest;
import org.orbwright.movement.MovementRequest.ClimateRequest;
import org.orbwright.movement.MovementRequest.HomeRequest;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.source.Source;
import org.orbwright.tolerance.ToleranceRequest;

/** A whole build at once. */
@Source(CONTRACT)
@Slow
class BuildTest {
    private static final int STATIONS = 5;

    private static Document full() {
        ClimateRequest dry = new ClimateRequest(null, null, 8.0);
        ObjectNode boards = Stocks.oneWood(1);
        boards.remove("seams");
        boards.set("search", Stocks.read("{'work':0.1,'seconds':60}"));
        return Stocks.document(boards)
                .with(Section.TOLERANCE, new ToleranceRequest(null, null, 200, 1))
                .with(
                        Section.MOVEMENT,
                        new MovementRequest(dry, new HomeRequest(dry, new ClimateRequest(null, null, 11.0)), null));
    }

    private static Document smallest() {
        return Document.of(new DesignRequest(
                null,
                LengthUnit.IN,
                "dodecahedron",
                null,
                null,
                null,
                null,
                new SizeRequest(SizeBy.ACROSS_FLATS, 6.0),
                null,
                null,
                null,
                null,
                null,
                null));
    }

    @Test
    @Source(INVARIANT)
    void everyPartIsWhatItsOwnAddressAnswers() {
        Document document = full();
        Answer build = SheetCalculator.build(document, STATIONS);
        Map<Function<Document, Answer>, Function<Answer, Object>> parts = Map.of(
                SheetCalculator::angles,
                Answer::angles,
                SheetCalculator::segments,
                Answer::segments,
                SheetCalculator::yields,
                Answer::yield,
                SheetCalculator::sphere,
                Answer::sphere,
                d -> SheetCalculator.bands(d, STATIONS),
                Answer::bands,
                SheetCalculator::jig,
                Answer::jig,
                SheetCalculator::tolerance,
                Answer::tolerance,
                SheetCalculator::movement,
                Answer::movement,
                SheetCalculator::assembly,
                Answer::assembly,
                SheetCalculator::turning,
                Answer::turning);
        Set<Finding> all = new HashSet<>(build.findings());
        parts.forEach((address, part) -> {
            Answer single = address.apply(document);
            assertNotNull(part.apply(single));
            assertEquals(part.apply(single), part.apply(build));
            assertTrue(
                    all.containsAll(single.findings()), () -> single.findings().toString());
        });
        assertEquals(SheetCalculator.stock(document).stock(), build.stock());
        assertEquals(SheetCalculator.cuts(document).cuts(), build.cuts());
        assertEquals(SheetCalculator.purchases(document).purchases(), build.purchases());
        assertEquals(all.size(), build.findings().size(), "each finding stands once");
    }

    @Test
    void partsWithoutASectionAreLeftOutAndThoseThatAnyBuildNeedsAreNot() {
        Answer build = SheetCalculator.build(Designs.of("cube").document(), STATIONS);
        assertNotNull(build.jig());
        assertNotNull(build.assembly());
        assertNotNull(build.turning());
        for (Object part : new Object[] {
            build.stock(),
            build.cuts(),
            build.tolerance(),
            build.movement(),
            build.path(),
            build.balance(),
            build.solve()
        }) {
            assertNull(part);
        }
    }

    @Test
    void whatWaitsForSomethingIsLeftOutWithANoteOfWhatItWaitsFor() {
        Answer build = SheetCalculator.build(smallest(), STATIONS);
        assertNotNull(build.angles());
        assertNotNull(build.segments());
        assertNotNull(build.sphere());
        List<String> notes = build.findings().stream()
                .filter(finding -> finding.code() == FindingCode.PART_LEFT_OUT)
                .map(Finding::message)
                .toList();
        assertEquals(
                List.of(
                        "The part yield is left out. It waits for panel.thickness, laminations, saw.kerf, blank.length.",
                        "The part jig is left out. It waits for panel.thickness.",
                        "The part assembly is left out. It waits for panel.thickness, laminations.",
                        "The part bands is left out. It waits for laminations.",
                        "The part turning is left out. It waits for panel.thickness, laminations."),
                notes);
    }

    /** Stock comes before segments, these before the gluing, and that before the lathe. */
    @Test
    void findingsStandInTheOrderOfTheWork() {
        Document document = Stocks.document(Stocks.oneWood(3));
        List<Finding> findings = SheetCalculator.build(document, STATIONS).findings();
        List<Integer> places = new ArrayList<>();
        for (FindingCode code : List.of(
                FindingCode.STOCK_SHORT, FindingCode.SET_LEFT_OVER, FindingCode.NO_HALVES, FindingCode.BAND_THINNED)) {
            places.add(findings.stream().map(Finding::code).toList().indexOf(code));
        }
        assertEquals(places.stream().sorted().toList(), places, findings::toString);
        assertTrue(places.get(0) >= 0 && places.get(1) >= 0 && places.get(2) >= 0, findings::toString);
    }

    @Test
    void cautionsCoverEveryStepInTheOrderOfTheWork() {
        List<Caution.Step> steps = SheetCalculator.build(full(), STATIONS).cautions().stream()
                .map(Caution::step)
                .distinct()
                .toList();
        assertEquals(List.copyOf(EnumSet.allOf(Caution.Step.class)), steps);
    }

    @Test
    void theDocumentComesBackWholeAndFilledIn() {
        Document document = full();
        Document answered = SheetCalculator.build(document, STATIONS).document();
        assertEquals(3.2, answered.stock().allowances().ripKerf(), 1.0);
        assertEquals(document.tolerance().samples(), answered.tolerance().samples());
        assertNotNull(answered.jig());
        assertEquals(answered, SheetCalculator.build(answered, STATIONS).document());
    }
}
