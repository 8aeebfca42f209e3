package org.orbwright.notice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.orbwright.notice.Notice.Kind;

/** What files tell, as lines. */
class NoticeTest {
    @Test
    void aLineBeginsWithTheKindAndTheCode() {
        assertEquals("STOP BREAK_THROUGH: no wall", new Notice(Kind.STOP, "BREAK_THROUGH", "no wall").line());
    }

    @Test
    void stopsAreToldApart() {
        Notice stop = new Notice(Kind.STOP, "A", "a");
        assertEquals(
                List.of(stop),
                Notice.stops(List.of(new Notice(Kind.WARN, "B", "b"), stop, new Notice(Kind.CAUTION, "C", "c"))));
    }

    @Test
    void linesAreBrokenBetweenWords() {
        assertEquals(List.of("one two", "three", "four"), Notice.wrapped("one two three four", 8));
        assertEquals(List.of("one two"), Notice.wrapped(" one two ", 7));
        assertEquals(List.of(""), Notice.wrapped("", 7));
    }

    @Test
    void aWordLongerThanALineIsBroken() {
        assertEquals(List.of("a", "bcdef", "gh i"), Notice.wrapped("a bcdefgh i", 5));
    }

    @Property
    void nothingIsLostAndNoLineIsTooLong(
            @ForAll @CharRange(from = ' ', to = '$') String text, @ForAll @IntRange(min = 1, max = 30) int most) {
        List<String> lines = Notice.wrapped(text, most);
        lines.forEach(line -> assertTrue(line.length() <= most, lines::toString));
        assertEquals(text.replace(" ", ""), String.join("", lines).replace(" ", ""));
    }
}
