package org.orbwright.notice;

import java.util.Locale;

/** The indefinite article before a word that is not known until a design is: a solid's or a face kind's name. */
public final class Article {
    private Article() {}

    /**
     * A name with its article, as in "an icosahedron". Names begin as they are spoken: of those with a vowel none
     * begins with the sound of "you".
     */
    public static String with(String name) {
        return ("aeiou".indexOf(name.charAt(0)) < 0 ? "a " : "an ") + name;
    }

    /** The same at the beginning of a sentence. */
    public static String first(String name) {
        String text = with(name);
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
