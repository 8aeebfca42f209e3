package org.orbwright.api.wire;

import jakarta.ws.rs.core.CacheControl;
import jakarta.ws.rs.core.EntityTag;
import java.util.List;
import java.util.regex.Pattern;
import java.util.zip.CRC32C;

/** What caches are told of answers that change only with the service itself. */
public final class CacheTag {
    /** An hour is long for a shop's day and short for an upgrade. */
    private static final int FRESH_SECONDS = 3600;

    private static final Pattern TAG = Pattern.compile("\"([^\"]*)\"");

    private CacheTag() {}

    /** The tag of an answer. */
    public static EntityTag of(byte[] answer) {
        CRC32C sum = new CRC32C();
        sum.update(answer);
        return new EntityTag(Long.toHexString(sum.getValue()) + "-" + answer.length);
    }

    /** How long an answer may be kept. */
    public static CacheControl control() {
        CacheControl cache = new CacheControl();
        cache.setNoTransform(false);
        cache.setMaxAge(FRESH_SECONDS);
        return cache;
    }

    /** Whether the caller has the answer: caches that compress it make its tag weak (RFC 9110, 13.1.2). */
    public static boolean isKnown(EntityTag tag, List<String> known) {
        return known.stream()
                .anyMatch(each -> each.strip().equals("*")
                        || TAG.matcher(each)
                                .results()
                                .anyMatch(found -> found.group(1).equals(tag.getValue())));
    }
}
