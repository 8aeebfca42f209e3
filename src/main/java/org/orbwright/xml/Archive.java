package org.orbwright.xml;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.function.Consumer;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A ZIP archive; the same parts give the same bytes. */
public final class Archive {
    /** No clock shows in the bytes. Entries of the first day of 1980 would get a forbidden extra field. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(2000, 1, 1, 0, 0);

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final ZipOutputStream zip = new ZipOutputStream(bytes);

    /** Adds a text that is not compressed, so that programs find it at a fixed place in the file. */
    public void addStored(String name, String text) {
        byte[] content = text.getBytes(StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(content);
        ZipEntry entry = new ZipEntry(name);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(content.length);
        entry.setCrc(sum.getValue());
        try {
            open(entry);
            zip.write(content);
            zip.closeEntry();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Adds an XML document. */
    public void add(String name, Consumer<Xml> part) {
        try {
            open(new ZipEntry(name));
            Writer text = new OutputStreamWriter(zip, StandardCharsets.UTF_8);
            Xml xml = new Xml(text);
            part.accept(xml);
            xml.end();
            text.flush();
            zip.closeEntry();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Adds what is no XML document. */
    public void addBytes(String name, byte[] content) {
        try {
            open(new ZipEntry(name));
            zip.write(content);
            zip.closeEntry();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void open(ZipEntry entry) throws IOException {
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
    }

    /** The finished archive. */
    public byte[] toBytes() {
        try {
            zip.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
