package org.orbwright.drawing;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Semaphore;
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

    private static final int BYTES_PER_DOT = 4;
    private static final int KIBIBYTE = 1024;

    /** The memory that all pictures may take together, a quarter of all, in KiB. */
    private static final int MOST =
            (int) Math.min(Integer.MAX_VALUE, Runtime.getRuntime().maxMemory() / 4 / KIBIBYTE);

    private static final Semaphore MEMORY = new Semaphore(MOST, true);

    private PngRenderer() {}

    /**
     * The drawing as a PNG file of a width in dots; the height follows from the sheet. Large pictures wait for each
     * other: a few of the largest at once would take all memory.
     */
    public static byte[] render(Drawing drawing, int width) {
        int height = (int) Math.max(1, Math.round(width * drawing.height() / drawing.width()));
        int memory = (int) Math.min(MOST, (long) width * height * BYTES_PER_DOT / KIBIBYTE);
        MEMORY.acquireUninterruptibly(memory);
        try {
            return render(drawing, width, height);
        } finally {
            MEMORY.release(memory);
        }
    }

    private static byte[] render(Drawing drawing, int width, int height) {
        try {
            BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
            Graphics2D graphics = image.createGraphics();
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            load(drawing).render(null, graphics, new ViewBox(0, 0, width, height));
            graphics.dispose();
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            write(image, drawing, png);
            return png.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(BufferedImage image, Drawing drawing, OutputStream png) throws IOException {
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

    private static SVGDocument load(Drawing drawing) {
        byte[] svg = SvgWriter.write(drawing).getBytes(StandardCharsets.UTF_8);
        SVGDocument document = new SVGLoader().load(new ByteArrayInputStream(svg), null, LoaderContext.createDefault());
        if (document == null) {
            throw new IllegalStateException("The drawing is no SVG document: " + drawing.title());
        }
        return document;
    }
}
