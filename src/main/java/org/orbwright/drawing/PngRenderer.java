package org.orbwright.drawing;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import java.awt.image.RenderedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import org.orbwright.xml.XmlText;

/**
 * Renders a drawing as a picture of dots, in process and without a screen. Title and description go into the file as
 * texts under the keywords of PNG (ISO/IEC 15948, 11.3.4.2).
 */
public final class PngRenderer {
    static {
        System.setProperty("java.awt.headless", "true");
        // The cache is a file in the folder for temporary files, which is small in a container; a picture fits into
        // memory.
        ImageIO.setUseCache(false);
    }

    /** What a dot takes while its strip is drawn. */
    private static final int BYTES_PER_DOT = 4;

    /**
     * How many dots share a byte of the file, at worst: a lit sphere, whose tones run into each other, takes a byte for
     * six. For a moment there are two copies of the file.
     */
    private static final int DOTS_PER_BYTE = 3;

    /** What the SVG's text, its bytes and the document read from them take for a character, measured as 6 to 8. */
    private static final int BYTES_PER_CHARACTER = 8;

    /**
     * A quarter of all memory. What is in use before anybody asks for anything (24 MB) and other work need the rest.
     */
    private static final PictureMemory MEMORY =
            new PictureMemory(Runtime.getRuntime().maxMemory() / 4);

    private PngRenderer() {}

    /**
     * The drawing as a PNG file of a width in dots; the height follows from the sheet. Large pictures wait for each
     * other, and take memory until they are closed.
     *
     * @throws PictureMemoryException if there is not the memory for it
     */
    public static Picture render(Drawing drawing, int width) {
        return render(drawing, width, MEMORY);
    }

    static Picture render(Drawing drawing, int width, PictureMemory memory) {
        byte[] svg = SvgWriter.write(drawing).getBytes(StandardCharsets.UTF_8);
        if (!memory.holds(need(drawing, svg, width))) {
            throw PictureMemoryException.tooLarge(widest(drawing, svg, width, memory));
        }
        PictureMemory.Share share = memory.take(need(drawing, svg, width));
        boolean done = false;
        try {
            Picture picture = new Picture(draw(drawing, svg, width), share);
            done = true;
            return picture;
        } finally {
            if (!done) {
                share.keep(0);
            }
        }
    }

    private static int height(Drawing drawing, int width) {
        return (int) Math.max(1, Math.round(width * drawing.height() / drawing.width()));
    }

    /** The bytes that are taken at most while a picture is made. */
    private static long need(Drawing drawing, byte[] svg, int width) {
        int height = height(drawing, width);
        return BYTES_PER_DOT * StripImage.dots(width, height)
                + (long) width * height / DOTS_PER_BYTE
                + (long) BYTES_PER_CHARACTER * svg.length;
    }

    private static int widest(Drawing drawing, byte[] svg, int width, PictureMemory memory) {
        int fits = 0;
        int over = width;
        while (over - fits > 1) {
            int middle = (fits + over) / 2;
            if (memory.holds(need(drawing, svg, middle))) {
                fits = middle;
            } else {
                over = middle;
            }
        }
        return fits;
    }

    private static byte[] draw(Drawing drawing, byte[] svg, int width) {
        try {
            SVGDocument document =
                    new SVGLoader().load(new ByteArrayInputStream(svg), null, LoaderContext.createDefault());
            if (document == null) {
                throw new IllegalStateException("The drawing is no SVG document: " + drawing.title());
            }
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            write(new StripImage(document, width, height(drawing, width)), drawing, png);
            return png.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(RenderedImage image, Drawing drawing, OutputStream png) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(png)) {
            IIOMetadata metadata =
                    writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), null);
            IIOMetadataNode texts = new IIOMetadataNode("iTXt");
            texts.appendChild(text("Title", drawing.title()));
            texts.appendChild(text("Description", drawing.description()));
            IIOMetadataNode root = new IIOMetadataNode(metadata.getNativeMetadataFormatName());
            root.appendChild(texts);
            metadata.mergeTree(metadata.getNativeMetadataFormatName(), root);
            writer.setOutput(out);
            writer.write(new IIOImage(image, null, metadata));
        } finally {
            writer.dispose();
        }
    }

    private static IIOMetadataNode text(String keyword, String words) {
        IIOMetadataNode text = new IIOMetadataNode("iTXtEntry");
        text.setAttribute("keyword", keyword);
        text.setAttribute("compressionFlag", "FALSE");
        text.setAttribute("compressionMethod", "0");
        text.setAttribute("languageTag", "en");
        text.setAttribute("translatedKeyword", "");
        text.setAttribute("text", XmlText.legal(words));
        return text;
    }
}
