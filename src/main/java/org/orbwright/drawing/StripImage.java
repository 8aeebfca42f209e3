package org.orbwright.drawing;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.Raster;
import java.awt.image.RenderedImage;
import java.awt.image.SampleModel;
import java.awt.image.WritableRaster;
import java.util.Vector;

/**
 * A picture of dots of which no more than a strip exists at a time: each is a tile as wide as the picture, and is drawn
 * when a dot of it is asked for. Whoever reads from top to bottom has each strip drawn once.
 */
final class StripImage implements RenderedImage {
    private static final int DOTS_PER_STRIP = 1 << 20;

    private final SVGDocument document;
    private final int width;
    private final int height;
    private final BufferedImage strip;
    /** Which strip was drawn last; -1 before the first. */
    private int drawn = -1;

    /** The document, {@code width} by {@code height} dots large. */
    StripImage(SVGDocument document, int width, int height) {
        this.document = document;
        this.width = width;
        this.height = height;
        strip = new BufferedImage(width, rows(width, height), BufferedImage.TYPE_INT_RGB);
    }

    /** The dots that are held of a picture at a time. */
    static long dots(int width, int height) {
        return (long) width * rows(width, height);
    }

    private static int rows(int width, int height) {
        return Math.min(height, Math.max(1, DOTS_PER_STRIP / width));
    }

    private void draw(int number) {
        if (number == drawn) {
            return;
        }
        Graphics2D graphics = strip.createGraphics();
        // A sheet may end within the last dots, and the strip before must not show there.
        graphics.setBackground(Color.WHITE);
        graphics.clearRect(0, 0, width, strip.getHeight());
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.translate(0, -number * strip.getHeight());
        document.render(null, graphics, new ViewBox(0, 0, width, height));
        graphics.dispose();
        drawn = number;
    }

    /** The strip; drawn over when another one is asked for. */
    @Override
    public Raster getTile(int column, int row) {
        draw(row);
        return strip.getRaster().createTranslatedChild(0, row * strip.getHeight());
    }

    /** A part that lies within one strip. */
    @Override
    public Raster getData(Rectangle part) {
        int row = part.y / strip.getHeight();
        if (row != (part.y + part.height - 1) / strip.getHeight()) {
            throw new IllegalArgumentException("rows of two strips are asked for at once: " + part);
        }
        return getTile(0, row).createChild(part.x, part.y, part.width, part.height, part.x, part.y, null);
    }

    @Override
    public Raster getData() {
        return getData(new Rectangle(width, height));
    }

    @Override
    public WritableRaster copyData(WritableRaster target) {
        target.setRect(getData(target.getBounds()));
        return target;
    }

    @Override
    public ColorModel getColorModel() {
        return strip.getColorModel();
    }

    @Override
    public SampleModel getSampleModel() {
        return strip.getSampleModel();
    }

    @Override
    public int getWidth() {
        return width;
    }

    @Override
    public int getHeight() {
        return height;
    }

    @Override
    public int getMinX() {
        return 0;
    }

    @Override
    public int getMinY() {
        return 0;
    }

    @Override
    public int getNumXTiles() {
        return 1;
    }

    @Override
    public int getNumYTiles() {
        return (height - 1) / strip.getHeight() + 1;
    }

    @Override
    public int getMinTileX() {
        return 0;
    }

    @Override
    public int getMinTileY() {
        return 0;
    }

    @Override
    public int getTileWidth() {
        return width;
    }

    @Override
    public int getTileHeight() {
        return strip.getHeight();
    }

    @Override
    public int getTileGridXOffset() {
        return 0;
    }

    @Override
    public int getTileGridYOffset() {
        return 0;
    }

    @Override
    public Vector<RenderedImage> getSources() {
        return null;
    }

    @Override
    public Object getProperty(String name) {
        return Image.UndefinedProperty;
    }

    @Override
    public String[] getPropertyNames() {
        return null;
    }
}
