package org.orbwright.notice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;

class ArticleTest {
    @Test
    void theNamesThatTakeAn() {
        TreeSet<String> names = new TreeSet<>();
        for (Solid solid : SolidCatalogue.all()) {
            names.add(solid.name());
            solid.faceKinds().stream().map(FaceKind::face).forEach(names::add);
        }
        assertEquals(
                List.of("an icosahedron", "an icosidodecahedron", "an octagon", "an octahedron"),
                names.stream()
                        .map(Article::with)
                        .filter(text -> text.startsWith("an "))
                        .toList());
        assertEquals("a hexagon", Article.with("hexagon"));
        assertEquals("An octagon", Article.first("octagon"));
        assertEquals("A kite", Article.first("kite"));
    }

    /** Whoever writes an article before a name that is not known until a design is, is sent to the one function. */
    @Test
    void noTextEndsWithAnArticle() throws IOException {
        Pattern ends = Pattern.compile("\"(|[^\"]*[^a-zA-Z\"])an? \"", Pattern.CASE_INSENSITIVE);
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".java"))
                    .filter(path -> !path.endsWith("Article.java"))
                    .toList()) {
                Files.readAllLines(file).stream()
                        .filter(line -> ends.matcher(line).find())
                        .forEach(line -> found.add(file + ": " + line.strip()));
            }
        }
        assertEquals(List.of(), found);
    }
}
