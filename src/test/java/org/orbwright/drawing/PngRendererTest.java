package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CancellationException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;

/** Pictures that are drawn in strips, against pictures that are drawn at once, and the memory that they take. */
class PngRendererTest {
    private static final Drawing PANEL = panel();
    /** More rows than a strip has, so that strips meet within the picture. */
    private static final int WIDTH = 1500;

    private static Drawing panel() {
        Design design = DrawnDesigns.example("dodecahedron-two-spheres");
        return PanelDrawing.draw(design, "pentagon", BandSet.UPRIGHT);
    }

    /**
     * Dots of edges and hatches may differ a little, as they are rounded from another origin; a seam would differ much.
     */
    @Test
    void stripsJoinWithoutASeam() throws Exception {
        BufferedImage strips;
        try (Picture picture = PngRenderer.render(PANEL, WIDTH)) {
            strips = ImageIO.read(new ByteArrayInputStream(picture.bytes()));
        }
        BufferedImage whole = whole(strips.getWidth(), strips.getHeight());
        assertTrue(StripImage.dots(WIDTH, whole.getHeight()) < (long) WIDTH * whole.getHeight());
        int apart = 0;
        int differing = 0;
        for (int y = 0; y < whole.getHeight(); y++) {
            for (int x = 0; x < WIDTH; x++) {
                int most = 0;
                for (int shift = 0; shift < 24; shift += 8) {
                    int one = strips.getRGB(x, y) >> shift & 0xff;
                    int other = whole.getRGB(x, y) >> shift & 0xff;
                    most = Math.max(most, Math.abs(one - other));
                }
                apart = Math.max(apart, most);
                differing += most > 2 ? 1 : 0;
            }
        }
        assertTrue(apart <= 32, "apart by " + apart + " of 255");
        assertTrue(differing < WIDTH * whole.getHeight() / 200, differing + " dots differ");
    }

    private static BufferedImage whole(int width, int height) {
        byte[] svg = SvgWriter.write(PANEL).getBytes(StandardCharsets.UTF_8);
        SVGDocument document = new SVGLoader().load(new ByteArrayInputStream(svg), null, LoaderContext.createDefault());
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setBackground(Color.WHITE);
        graphics.clearRect(0, 0, width, height);
        document.render(null, graphics, new ViewBox(0, 0, width, height));
        graphics.dispose();
        return image;
    }

    @Test
    void saysHowWideAPictureThatFitsMayBe() {
        PictureMemory small = new PictureMemory(1_000_000);
        PictureMemoryException refusal =
                assertThrows(PictureMemoryException.class, () -> PngRenderer.render(PANEL, 4000, small));
        assertFalse(refusal.passes());
        int widest = refusal.widest();
        PngRenderer.render(PANEL, widest, small).close();
        assertEquals(
                widest,
                assertThrows(PictureMemoryException.class, () -> PngRenderer.render(PANEL, widest + 1, small))
                        .widest());
    }

    @Test
    void memoryIsHeldUntilAPictureIsClosed() {
        PictureMemory memory = new PictureMemory(3_000_000);
        Picture first = PngRenderer.render(PANEL, 500, memory);
        int held = first.bytes().length;
        memory.take(3_000_000 - held - 2048);
        assertTrue(assertThrows(PictureMemoryException.class, () -> memory.take(4096))
                .passes());
        first.close();
        first.close();
        memory.take(held).keep(0);
    }

    @Test
    void whoIsInterruptedWaitsNoMore() {
        PictureMemory memory = new PictureMemory(1);
        memory.take(1);
        Thread.currentThread().interrupt();
        assertThrows(CancellationException.class, () -> memory.take(1));
        assertTrue(Thread.interrupted());
    }
}
