package org.orbwright.drawing;

import java.util.concurrent.CancellationException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * The memory that all pictures may take together. A share is taken before a picture is drawn, and is held until the
 * picture has been handed over: callers that read slowly hold files meanwhile.
 */
final class PictureMemory {
    private static final int KIBIBYTE = 1024;
    private static final int WAIT_SECONDS = 5;

    /** In KiB, as a semaphore counts no further than an int does. */
    private final int most;

    private final Semaphore free;

    /** So many bytes. */
    PictureMemory(long most) {
        this.most = kibibytes(most);
        free = new Semaphore(this.most, true);
    }

    private static int kibibytes(long bytes) {
        return (int) Math.min(Integer.MAX_VALUE, (bytes + KIBIBYTE - 1) / KIBIBYTE);
    }

    /** Whether so many bytes could be had if nobody else held any. */
    boolean holds(long bytes) {
        return kibibytes(bytes) <= most;
    }

    /**
     * Waits a little for so many bytes.
     *
     * @throws PictureMemoryException if others keep holding them
     * @throws CancellationException if the thread is interrupted, since nobody waits for the picture any more
     */
    Share take(long bytes) {
        int wanted = kibibytes(bytes);
        try {
            if (!free.tryAcquire(wanted, WAIT_SECONDS, TimeUnit.SECONDS)) {
                throw PictureMemoryException.heldByOthers();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("the wait for memory was interrupted");
        }
        return new Share(wanted);
    }

    /** What is held. */
    final class Share {
        private int held;

        private Share(int held) {
            this.held = held;
        }

        /** Gives back all but so many bytes; with 0 all, once or more often. */
        synchronized void keep(long bytes) {
            int kept = Math.min(held, kibibytes(bytes));
            free.release(held - kept);
            held = kept;
        }
    }
}
