package org.orbwright.drawing;

/** A picture of dots as a file, for which memory is held until it is closed, once or more often. */
public final class Picture implements AutoCloseable {
    private final byte[] bytes;
    private final PictureMemory.Share share;

    Picture(byte[] bytes, PictureMemory.Share share) {
        this.bytes = bytes;
        this.share = share;
        share.keep(bytes.length);
    }

    /** The file itself, which nobody else uses. */
    public byte[] bytes() {
        return bytes;
    }

    @Override
    public void close() {
        share.keep(0);
    }
}
