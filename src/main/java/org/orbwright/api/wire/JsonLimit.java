package org.orbwright.api.wire;

import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.util.Optional;

/** How large the parts of a body's JSON may be. */
enum JsonLimit {
    LEVELS(64, "Document nesting", "The JSON is nested more than 64 levels deep", "at most 64 levels"),
    NUMBER(64, "Number", "A number in the JSON has more than 64 characters", "numbers of at most 64 characters"),
    TEXT(100_000, "String", "A text in the JSON has more than 100000 characters", "texts of at most 100000 characters"),
    NAME(256, "Name", "A field's name in the JSON has more than 256 characters", "names of at most 256 characters");

    private final int most;
    private final String parserWord;
    private final String exceeded;
    private final String allowed;

    JsonLimit(int most, String parserWord, String exceeded, String allowed) {
        this.most = most;
        this.parserWord = parserWord;
        this.exceeded = exceeded;
        this.allowed = allowed;
    }

    /** The limit that is exceeded. The parser says it in no other way than by the first words of its message. */
    static Optional<JsonLimit> exceededIn(StreamConstraintsException refusal) {
        for (JsonLimit limit : values()) {
            if (refusal.getOriginalMessage().startsWith(limit.parserWord)) {
                return Optional.of(limit);
            }
        }
        return Optional.empty();
    }

    int most() {
        return most;
    }

    /** What is wrong where this is exceeded. */
    String exceeded() {
        return exceeded;
    }

    String allowed() {
        return allowed;
    }
}
