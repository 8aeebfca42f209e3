package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.orbwright.sheet.Caution.Step;
import org.orbwright.source.Source;

/** How cautions read, and that none of the usual ones is missing. */
@Source(CONTRACT)
class CautionTest {
    private static final int MOST_WORDS = 25;

    private static String said(Step step) {
        return String.join(" ", step.cautions().stream().map(Caution::text).toList());
    }

    private static List<String> sentences(Caution caution) {
        return List.of(caution.text().split("(?<=\\.) ", -1));
    }

    @ParameterizedTest
    @EnumSource(Step.class)
    void eachIsShortAndSaidOnce(Step step) {
        assertFalse(step.cautions().isEmpty());
        assertEquals(step.cautions().size(), new HashSet<>(step.cautions()).size());
        for (Caution caution : step.cautions()) {
            assertEquals(step, caution.step());
            assertTrue(caution.text().endsWith("."), caution.text());
            assertTrue(caution.text().length() < 250, caution.text());
            for (String sentence : sentences(caution)) {
                assertTrue(sentence.split(" ", -1).length <= MOST_WORDS, sentence);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Step.class)
    void nothingIsCalledSafe(Step step) {
        for (Caution caution : step.cautions()) {
            for (String sentence : sentences(caution)) {
                assertTrue(!sentence.contains("safe") || sentence.matches("(.* not .*|No .*)"), sentence);
            }
        }
    }

    /** Common practice, no source, but for what the steps name in their comments. */
    @ParameterizedTest
    @CsvSource({
        "GENERAL, machine's manual",
        "GENERAL, local rules",
        "GENERAL, toxic",
        "SURFACING, 355 mm",
        "SURFACING, 13 mm",
        "SURFACING, snipe",
        "SURFACING, throw short and thin pieces back",
        "RIPPING, riving knife",
        "RIPPING, trapped between fence and blade",
        "RIPPING, Sheet No 16",
        "RESAWING, push stick",
        "RESAWING, Sheet No 31",
        "GLUING, cure fully",
        "GLUING, gloves",
        "SETTING_UP, 'Unplug the saw before a bar, a block, a gauge or a hand touches the blade'",
        "CROSSCUTTING, 100 mm",
        "CROSSCUTTING, 162 mm (6 3/8 in)",
        "CROSSCUTTING, clamp them in a jig",
        "DISC_SANDING, small pieces",
        "DISC_SANDING, Heat",
        "BEVELLING, unplugged",
        "BEVELLING, wedge",
        "OUTLINES, smoke",
        "OUTLINES, fire",
        "OUTLINES, router",
        "INLAYING, Unplug the router",
        "MOUNTING, inspect every seam",
        "BALANCING, Screw or bolt it",
        "TURNING, all of them are taken off (Milton",
        "TURNING, gloves",
        "TURNING, hair",
        "TURNING, cloth",
        "TURNING, calliper",
        "TURNING, lowest speed",
        "TURNING, Sheet No 28",
        "REVERSING, slip",
        "MILLING, run it in air first",
        "SANDING, never wrap it around the work",
        "FINISHING, gloves",
        "FINISHING, fresh air",
        "FINISHING, ignite by themselves"
    })
    void theUsualHazardsAreNamed(Step step, String words) {
        assertTrue(said(step).contains(words), () -> said(step));
    }

    @Test
    void everyStepThatMakesDustSaysSo() {
        Set<Step> dusty = EnumSet.complementOf(
                EnumSet.of(Step.GENERAL, Step.GLUING, Step.SETTING_UP, Step.MOUNTING, Step.BALANCING, Step.FINISHING));
        for (Step step : dusty) {
            assertTrue(said(step).contains("respirator"), step::name);
        }
    }

    @Test
    void eyesAndEarsAreProtectedAtEveryMachineThatCuts() {
        for (Step step : List.of(
                Step.SURFACING,
                Step.RIPPING,
                Step.RESAWING,
                Step.CROSSCUTTING,
                Step.DISC_SANDING,
                Step.BEVELLING,
                Step.OUTLINES,
                Step.INLAYING,
                Step.MILLING)) {
            assertTrue(said(step).contains("Wear eye and hearing protection."), step::name);
        }
        for (Step step : List.of(Step.TURNING, Step.REVERSING)) {
            assertTrue(said(step).contains("face shield"), step::name);
            assertTrue(said(step).contains("hearing protection"), step::name);
        }
    }

    @Test
    void everyStepBelongsToAnAnswerOfItsOwn() {
        Set<Step> carried = EnumSet.of(Step.GENERAL);
        Stream.of(Part.values()).filter(part -> part != Part.WHOLE).forEach(part -> carried.addAll(part.steps()));
        assertEquals(EnumSet.allOf(Step.class), carried);
        assertEquals(Arrays.asList(Step.values()), Part.WHOLE.steps());
    }
}
