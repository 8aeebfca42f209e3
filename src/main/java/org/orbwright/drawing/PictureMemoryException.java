package org.orbwright.drawing;

/** A picture has not the memory that it takes, now or ever. */
public final class PictureMemoryException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int widest;

    private PictureMemoryException(String message, int widest) {
        super(message);
        this.widest = widest;
    }

    /** Other pictures hold the memory now. */
    static PictureMemoryException heldByOthers() {
        return new PictureMemoryException("other pictures hold the memory", 0);
    }

    /** The picture takes more than all; {@code widest} dots wide it would not. */
    static PictureMemoryException tooLarge(int widest) {
        return new PictureMemoryException("the picture takes more memory than all pictures may", Math.max(1, widest));
    }

    /** Whether the same picture may have the memory later. */
    public boolean passes() {
        return widest == 0;
    }

    /** How many dots wide the picture could be, 1 or more; 0 if it {@link #passes()}. */
    public int widest() {
        return widest;
    }
}
