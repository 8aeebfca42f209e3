package org.orbwright.api.guard;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The bodies that are under way, bounded in number and in bytes. Bytes count until the request has been answered, since
 * they are held so long. Where there is no room for one more, the oldest unfinished body has to go: an honest caller's
 * is complete within moments.
 *
 * @param <B> a body
 */
final class UnfinishedBodies<B> {
    private final int most;
    private final long mostBytes;
    private final Map<B, Long> held = new HashMap<>();
    private final Set<B> unfinished = new LinkedHashSet<>();
    private long bytes;

    /**
     * No body.
     *
     * @param most bodies that may be unfinished at once
     * @param mostBytes that all of them and the finished ones may have together
     */
    UnfinishedBodies(int most, long mostBytes) {
        this.most = most;
        this.mostBytes = mostBytes;
    }

    /** One more body; those that have to go for it. */
    synchronized List<B> begin(B body) {
        held.put(body, 0L);
        unfinished.add(body);
        return makeRoom();
    }

    /**
     * More bytes of a body; those that have to go for them, which may be that body itself if no other is unfinished.
     */
    synchronized List<B> grow(B body, int more) {
        if (held.computeIfPresent(body, (same, its) -> its + more) != null) {
            bytes += more;
        }
        return makeRoom();
    }

    /** The body is complete and cannot be sent away any more. */
    synchronized void complete(B body) {
        unfinished.remove(body);
    }

    /** The request has ended. */
    synchronized void forget(B body) {
        unfinished.remove(body);
        Long its = held.remove(body);
        bytes -= its == null ? 0 : its;
    }

    /** How many are unfinished. */
    synchronized int count() {
        return unfinished.size();
    }

    /** How many bytes are held. */
    synchronized long bytes() {
        return bytes;
    }

    private List<B> makeRoom() {
        List<B> gone = new ArrayList<>();
        while (unfinished.size() > most || (bytes > mostBytes && !unfinished.isEmpty())) {
            B oldest = unfinished.iterator().next();
            forget(oldest);
            gone.add(oldest);
        }
        return gone;
    }
}
