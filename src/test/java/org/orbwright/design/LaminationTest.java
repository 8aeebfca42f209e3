package org.orbwright.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.CONTRACT;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.source.Source;

/** Which laminations read the same from both edges of a blank. */
@Source(CONTRACT)
class LaminationTest {

    /** Bands as "W12 M8": the wood's letter, and the width. */
    private static Lamination lamination(String words, double angle) {
        List<Band> bands = new ArrayList<>();
        for (String word : words.split(" ", -1)) {
            bands.add(new Band(word.substring(0, 1), Double.parseDouble(word.substring(1))));
        }
        return new Lamination(0, Places.ALL, angle, false, bands);
    }

    @ParameterizedTest(name = "{0}: {1} sets")
    @CsvSource({
        "W20, 1",
        "W8 W8, 1",
        "W8 M8, 2",
        "W8 W9, 2",
        "W9 W8, 2",
        "W12 M8 W12, 1",
        "W12 M8 C12, 2",
        "W12 M8 W11, 2",
        "W9 M8 M8 W9, 1",
        "W9 M8 C8 W9, 2",
        "W9 M8 W9 M8, 2",
        "W9 M8 M7 W9, 2",
        "W9 C3 M8 C3 W9, 1"
    })
    void setsOfALamination(String words, int sets) {
        Lamination lamination = lamination(words, 0);
        assertEquals(sets, lamination.sets());
        assertEquals(sets == 2 ? BandSet.INVERTED : BandSet.UPRIGHT, lamination.used(BandSet.INVERTED));
        assertEquals(BandSet.UPRIGHT, lamination.used(BandSet.UPRIGHT));
        assertEquals(1, lamination(words, 1).sets(), "tilted bands have one set");
    }

    @Test
    @DisplayName("widths that differ by half a thousandth of a millimetre are one width")
    void aSawDoesNotTellWidthsApartThatRoundingDoes() {
        assertEquals(1, lamination("W12 M8 W12.0005", 0).sets());
        assertEquals(2, lamination("W12 M8 W12.0015", 0).sets());
    }
}
