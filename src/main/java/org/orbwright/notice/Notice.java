package org.orbwright.notice;

import java.util.ArrayList;
import java.util.List;

/**
 * Something that a file tells whoever opens it.
 *
 * @param kind how much it matters
 * @param code its stable code, in capitals
 * @param text a sentence or two, which may hold words of the caller's
 */
public record Notice(Kind kind, String code, String text) {

    /** How much a notice matters. */
    public enum Kind {
        /** Do not cut this. */
        STOP,
        /** Cut it only if that is meant. */
        WARN,
        /** Good to know. */
        NOTE,
        /** Standing advice on a hazard. */
        CAUTION
    }

    /** The notice as one line. It begins with the kind and the code, never with words of the caller's. */
    public String line() {
        return kind + " " + code + ": " + text;
    }

    /** The STOPs among notices. */
    public static List<Notice> stops(List<Notice> notices) {
        return notices.stream().filter(notice -> notice.kind() == Kind.STOP).toList();
    }

    /**
     * A text in lines, broken between words where it can be.
     *
     * @param most the most letters of a line
     */
    public static List<String> wrapped(String text, int most) {
        List<String> lines = new ArrayList<>();
        String rest = text.strip();
        while (rest.length() > most) {
            int blank = rest.lastIndexOf(' ', most);
            int end = blank > 0 ? blank : most;
            lines.add(rest.substring(0, end).strip());
            rest = rest.substring(end).strip();
        }
        lines.add(rest);
        return lines;
    }
}
