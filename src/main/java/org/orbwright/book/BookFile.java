package org.orbwright.book;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * A file of a build, whose content is made when it is written. Its name has its folder before a slash: lower-case
 * letters, digits, hyphens and full stops.
 */
public record BookFile(String name, String what, Supplier<byte[]> content) {

    /** A file of text. */
    public static BookFile text(String name, String what, Supplier<String> content) {
        return new BookFile(name, what, () -> content.get().getBytes(StandardCharsets.UTF_8));
    }

    /** Words as a part of a name that every file system takes; an asterisk marks a mirror image. */
    static String name(String... words) {
        return Arrays.stream(words)
                .map(word -> word.replace("*", "-mirrored").toLowerCase(Locale.ROOT))
                .map(word -> word.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", ""))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining("-"));
    }
}
