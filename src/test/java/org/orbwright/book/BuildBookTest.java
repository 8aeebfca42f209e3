package org.orbwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.document.Document;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.sheet.SheetCalculator;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.solid.SolidSummary;

/** The names of the files of a build, for every solid and for panels of two laminations. */
@Slow
class BuildBookTest {
    /** What POSIX calls portable (IEEE Std 1003.1-2017, 3.282, from memory), in small letters. */
    private static final Pattern PORTABLE = Pattern.compile("([a-z]+/)?[a-z0-9-]+\\.[a-z0-9]+");

    static Stream<Document> documents() {
        return Stream.concat(
                SolidCatalogue.summaries().stream()
                        .map(SolidSummary::name)
                        .map(solid -> Designs.of(solid).document()),
                Stream.of("truncated-octahedron-alternating", "cube-with-chevrons", "dodecahedron-two-spheres")
                        .map(example -> Designs.example(example).document()));
    }

    @ParameterizedTest
    @MethodSource("documents")
    void everyNameIsPortableAndItsOwn(Document document) {
        List<BookFile> files = BuildBook.files(document, SheetCalculator.build(document, 2));
        List<String> names = files.stream().map(BookFile::name).toList();
        assertEquals(names.size(), Set.copyOf(names).size(), names::toString);
        names.forEach(name -> assertTrue(PORTABLE.matcher(name).matches(), name));
    }
}
