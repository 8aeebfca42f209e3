package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.stock.CuttingProblem.BoardKind;

/** Lengths of pieces for strips of 600 mm. */
class PieceLengthsTest {
    private static final String SEED = "20261125";
    private static final double STRIP = 600;
    private static final int ALL = 100;

    private static BoardKind board(double length, double width) {
        return new BoardKind(length, width, 20, 1, 0, length * width * 20);
    }

    private static List<Double> lengths(SeamRules rules, double kerf, List<Double> cuts, BoardKind... boards) {
        return new PieceLengths(STRIP, rules, kerf, List.of(new SeamedStrip(STRIP, rules, cuts)))
                .of(List.of(boards), ALL);
    }

    @Property(tries = 500, seed = SEED)
    void everyPieceIsFromTheShortestToWhatLeavesRoomForIt(
            @ForAll @Size(max = 4) List<@DoubleRange(min = 1, max = 4000) Double> boards,
            @ForAll @Size(max = 4) List<@DoubleRange(min = 1, max = 599) Double> cuts,
            @ForAll @DoubleRange(min = 30, max = 300) double smallest,
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll @IntRange(min = 1, max = 3) int most,
            @ForAll @DoubleRange(min = 0, max = 5) double kerf) {
        SeamRules rules = new SeamRules(share * smallest, smallest, 40, most);
        List<Double> lengths = lengths(
                rules,
                kerf,
                cuts,
                boards.stream().map(length -> board(length, 40)).toArray(BoardKind[]::new));
        assertEquals(STRIP, lengths.get(0));
        lengths.stream()
                .skip(1)
                .forEach(length -> assertTrue(
                        length >= smallest - 1e-5 && length <= STRIP - smallest + share * smallest + 1e-5,
                        lengths::toString));
    }

    @Property(tries = 500, seed = SEED)
    void noLengthIsListedTwice(
            @ForAll @Size(max = 4) List<@DoubleRange(min = 1, max = 4000) Double> boards,
            @ForAll @IntRange(min = 1, max = 3) int most) {
        List<Double> lengths = new ArrayList<>(lengths(
                new SeamRules(0, 100, 40, most),
                3,
                List.of(),
                boards.stream().map(length -> board(length, 40)).toArray(BoardKind[]::new)));
        lengths.sort(Double::compare);
        for (int i = 1; i < lengths.size(); i++) {
            assertTrue(lengths.get(i) - lengths.get(i - 1) > 1e-6, lengths::toString);
        }
    }

    @Property(tries = 300, seed = SEED)
    void aShortListIsTheBeginningOfALongOne(
            @ForAll @Size(max = 4) List<@DoubleRange(min = 1, max = 4000) Double> boards,
            @ForAll @IntRange(min = 1, max = 24) int most) {
        List<BoardKind> kinds = boards.stream().map(length -> board(length, 40)).toList();
        PieceLengths lengths = new PieceLengths(STRIP, new SeamRules(0, 100, 40, 2), 3, List.of());
        List<Double> all = lengths.of(kinds, ALL);
        assertEquals(all.subList(0, Math.min(most, all.size())), lengths.of(kinds, most));
    }

    @Test
    void withoutSeamsThereIsTheWholeStripAlone() {
        assertEquals(List.of(STRIP), lengths(new SeamRules(0, STRIP, 0, 0), 3, List.of(), board(500, 40)));
    }

    @Test
    @DisplayName("hand calculation: 1000 mm are a strip and 400 mm; 200 mm beside them; 200 is half of 400 mm too")
    void whatABoardHasToSpareAndWhatIsWantedBesideIt() {
        // Halves of a strip; spare and beside it; shortest and beside it; half of the spare, then a third.
        assertEquals(
                List.of(600.0, 300.0, 400.0, 200.0, 100.0, 500.0, 400.0 / 3, 600 - 400.0 / 3),
                lengths(new SeamRules(0, 100, 40, 1), 0, List.of(), board(1000, 40)));
    }

    @Test
    @DisplayName("hand calculation: 1003 - 600 - 3 = 400 mm to spare, of which a kerf leaves two of 198.5 mm")
    void aKerfIsLostBesideEachStripAndBetweenParts() {
        assertEquals(
                List.of(600.0, 300.0, 400.0, 200.0, 100.0, 500.0, 198.5, 401.5, 394.0 / 3, 600 - 394.0 / 3),
                lengths(new SeamRules(0, 100, 40, 1), 3, List.of(), board(1003, 40)));
    }

    @Test
    @DisplayName("hand calculation: with a seam of 40 mm, halves are 320 mm, and beside 400 mm go 240 mm")
    void piecesAreLongerByTheirOverlap() {
        List<Double> lengths = lengths(new SeamRules(40, 100, 40, 1), 0, List.of(), board(400, 40));
        assertEquals(List.of(600.0, 320.0, 400.0, 240.0, 100.0, 540.0), lengths.subList(0, 6));
    }

    @Test
    @DisplayName("hand calculation: 400 mm reach the cut at 350 mm, beyond which are 250 mm")
    void whatIsWantedForASeamOnACut() {
        assertEquals(
                List.of(600.0, 300.0, 400.0, 200.0, 250.0),
                lengths(new SeamRules(0, 100, 40, 1), 0, List.of(350.0), board(400, 40))
                        .subList(0, 5));
    }

    @Test
    @DisplayName("hand calculation: two seams: thirds of 200 mm; beside twice 250 mm go 100, beside 250 twice 175 mm")
    void twoSeamsWantThreePieces() {
        assertEquals(
                List.of(600.0, 300.0, 200.0, 250.0, 350.0, 100.0, 175.0),
                lengths(new SeamRules(0, 100, 40, 2), 0, List.of(), board(250, 40))
                        .subList(0, 7));
    }

    @Test
    void theLengthsOfMostWoodComeFirst() {
        List<Double> lengths =
                lengths(new SeamRules(0, 100, 40, 1), 0, List.of(), board(450, 40), board(260, 100), board(520, 10));
        // 520 mm leave less than the shortest piece beside them.
        assertEquals(List.of(600.0, 300.0, 260.0, 340.0, 450.0, 150.0), lengths.subList(0, 6));
    }

    @Test
    void aBoardShorterThanTheShortestPieceGivesNoLength() {
        assertEquals(
                lengths(new SeamRules(0, 100, 40, 1), 0, List.of()),
                lengths(new SeamRules(0, 100, 40, 1), 0, List.of(), board(99, 40)));
    }
}
